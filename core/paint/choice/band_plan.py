"""The plan of one band: its two voices, its alternatives, its tone-down ladder."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from fractions import Fraction
from functools import lru_cache

from core.errors import BoxError
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.choice.alternatives import MOST, alternatives, to_avoid
from core.paint.choice.band_ways import BandWays, is_paper
from core.paint.choice.blues import is_blue, is_orange, may_hold_blue
from core.paint.choice.classroom import Built
from core.paint.choice.closest_plan import closest_planned, reach_of
from core.paint.choice.describe import describe, describe_built
from core.paint.choice.preference import Chosen, against, remarks, told_apart
from core.paint.choice.runs import ALONE, Parts, Place, best_load_ml
from core.paint.mixture.mix import Mix, bare_paper, make_mix
from core.paint.options import BandChoice
from core.paint.pigment.catalogue import Paint
from core.paint.pigment.hues import offsets
from core.paint.pigment.primaries import Primary, lacking, primaries_for
from core.paint.planned import Alternative, BandMix, PlannedMix
from core.paint.reasons import Reason
from core.paint.toning.tone_down import Ladder, tone_down_ladder
from core.paint.toning.toners import toners
from core.reading.reading import ColourReading

CLEARLY_CLOSER = 1.5
"""Delta E 2000: what the model can tell; only beyond it a closest mix is worth showing."""

SIDE_DEG = 60.0
"""Up to two steps of the wheel from a hue a paint is of its side."""

WORTH_A_LOOK = 1.5
"""What an alternative may cost more than the chosen mix, on the scale of its price."""


# Without it the edits of benchmarks/memories.py take 1.2 times as long.
@lru_cache(maxsize=96)
def plan_colour(ways: BandWays, place: Place = ALONE) -> BandMix:
    """Plan one colour; the letter is left empty.

    Parameters
    ----------
    ways : BandWays
        What may be built for it.
    place : Place
        What the bands beside it ask of it.

    Raises
    ------
    BoxError
        More paints are pinned than one mix can hold, or no paint has a part.
    """
    box, target, choice = ways.box, ways.target, ways.choice
    paints, built = ways.paints, ways.built
    steerable = {frozenset(item.mix.keys) for item in built}
    closest = closest_planned(box, paints, target, choice.pinned, steerable)
    first: Built | None = None
    others: Sequence[Built] = ()
    if choice.parts is not None:
        chosen, others = _by_hand(box, target, choice), built
    elif is_paper(target, choice):
        chosen = describe(box, target, "paper", bare_paper(), why=(Reason("paper"),))
    elif built:
        first, *others = _preferred_first(built, place.prefer)
        if place.shared is not None and place.prefer == frozenset(first.mix.keys):
            load_ml = best_load_ml(box, place.shared, target)[0]
            taken = replace(first, mix=make_mix(box, dict(place.shared), load_ml))
        else:
            taken = first
        chosen = describe_built(box, target, taken, choice.pinned)
    else:
        chosen = _without_structure(box, target, closest)
    reach = reach_of(closest, target)
    if chosen.verdict == "matches":
        reach = "reached"
    elif reach != "reached" and chosen.kind == "classroom":
        lacks = lacking(paints, target.hue.family)
        if lacks:
            chosen, reach = _for_want_of(chosen, lacks), "lacks"
    known = Chosen(chosen, first, target, place)
    show = _closest_beside(box, known, closest, built)
    shown = frozenset(show.mix.keys) if show is not None else frozenset()
    others = [
        item
        for item in others
        if item.price <= built[0].price + WORTH_A_LOOK and frozenset(item.mix.keys) != shown
    ]
    return BandMix(
        "",
        target,
        chosen,
        show,
        _alternatives(box, paints, known, others, choice.pinned),
        _ladder(box, paints, target, chosen),
        reach,
    )


def _for_want_of(chosen: PlannedMix, lacks: tuple[Primary, ...]) -> PlannedMix:
    """A mix of a box without a primary: that says it all."""
    alone = chosen.why[:1] and chosen.why[0].code == "no neighbours"
    return replace(chosen, lacks=lacks, why=() if alone else chosen.why)


def _closest_beside(
    box: Box, chosen: Chosen, closest: PlannedMix, built: Sequence[Built]
) -> PlannedMix | None:
    """The closest mix when it is clearly closer, with what is odd about it; else None."""
    own = chosen.planned
    if own.kind == "paper" or closest.mix.parts == own.mix.parts:
        return None
    if closest.delta_E_2000 >= own.delta_E_2000 - CLEARLY_CLOSER:
        return None
    if not _on_its_side(box, closest.mix, chosen.target):
        return None
    if closest.why:
        return closest
    keys = frozenset(closest.mix.keys)
    way = next((item for item in built if frozenset(item.mix.keys) == keys), None)
    if way is None:
        return closest
    why = (
        *against(chosen, way, closest.mix, closest.delta_E_2000),
        *remarks(box, own, closest.mix),
    )
    return replace(closest, why=told_apart(why))


def _on_its_side(box: Box, mix: Mix, target: ColourReading) -> bool:
    """Whether at least half of a mix is paint of the hue's side of the wheel.

    A blue of seven parts crimson may come nearer as a number; nobody would follow it. Nor is a
    blue toned with a yellow alone that is to stay blue.
    """
    family, hue = target.hue.family, target.hue.wheel_deg
    if family is None or hue is None:
        return True
    if is_blue(hue, family) and not may_hold_blue([box.paint(key) for key in mix.keys], hue):
        return False
    off = offsets(tuple(box.paint(key) for key in mix.keys), hue)
    groups = primaries_for(family)
    return (
        sum(
            mix.share(key)
            for key in mix.keys
            if box.paint(key).group in groups or abs(off.get(key, 180.0)) <= SIDE_DEG
        )
        >= 0.5
    )


def _by_hand(box: Box, target: ColourReading, choice: BandChoice) -> PlannedMix:
    parts = {key: count for key, count in choice.parts or () if count > 0}
    if not parts:
        raise BoxError(translate("mix", "A mix needs at least one part: give some paint a part."))
    load = choice.load_ml if choice.load_ml is not None else load_for(box, parts, target)
    mix = make_mix(box, parts, load)
    return describe(box, target, "by hand", mix, why=(Reason("by hand"),))


def load_for(box: Box, parts: dict[str, int], target: ColourReading) -> float:
    """The load, in millilitres, at which fixed parts come nearest a colour."""
    return best_load_ml(box, tuple(sorted(parts.items())), target)[0]


def _without_structure(box: Box, target: ColourReading, closest: PlannedMix) -> PlannedMix:
    """No paint stands near the hue: the closest mix has to do, and says so."""
    reason = Reason("no neighbours", (), target.hue.family or target.hue.leaning)
    return describe(box, target, "classroom", closest.mix, why=(reason, *closest.why))


def _alternatives(
    box: Box,
    paints: tuple[Paint, ...],
    chosen: Chosen,
    others: Sequence[Built],
    pinned: tuple[str, ...],
) -> tuple[Alternative, ...]:
    target = chosen.target
    found = alternatives(
        box, chosen, ((item, describe_built(box, target, item, pinned)) for item in others)
    )
    if len(found) >= MOST:
        return found
    # A paint that is offered in an alternative is not advised against in the next line.
    offered = {key for item in found for key in item.planned.mix.keys}
    allowed = frozenset(paint.key for paint in paints) - offered
    avoid = to_avoid(box, target, chosen.planned, allowed)
    if avoid is None:
        return found
    compared, reasons = avoid
    item = describe(box, target, "classroom", compared.mix)
    return (*found, Alternative(item, False, reasons))


def _preferred_first(built: Sequence[Built], prefer: frozenset[str]) -> Sequence[Built]:
    """Put the mix of the preferred paints first, when there is one."""
    for number, item in enumerate(built):
        if frozenset(item.mix.keys) == prefer:
            return [item, *built[:number], *built[number + 1 :]]
    return built


def _ladder(
    box: Box, paints: tuple[Paint, ...], target: ColourReading, chosen: PlannedMix
) -> Ladder | None:
    """The chosen mix without its toner, and the toner put back step by step."""
    mix = chosen.mix
    if not mix.parts:
        return None
    if chosen.toners:
        share = chosen.toner_share
        parts = {key: count for key, count in mix.parts if key not in chosen.toners}
        toned = tuple((key, count) for key, count in mix.parts if key in chosen.toners)
        if len(toned) == 1:
            toned = ((toned[0][0], 1),)
        base = make_mix(box, parts, mix.load_ml * (1 - float(share)))
        return _rungs(box.only(mix.keys), base, toned, target, share)
    allowed = box.only((*(paint.key for paint in paints), *mix.keys))
    best = toners(allowed, mix, target.hue.wheel_deg)
    if not best:
        return None
    hue = target.hue.wheel_deg
    if hue is not None and is_blue(hue, target.hue.family):  # taught one way, wanted or not
        best = tuple(sorted(best, key=lambda item: not is_orange(box.paint(item.parts[0][0]))))
    toner = best[0].parts
    used = box.only((*mix.keys, *(key for key, _ in toner)))
    return _rungs(used, mix, toner, target, Fraction(0) if chosen.verdict == "matches" else None)


# benchmarks/cache_hits.py: 123 calls, 36 misses of 0.7 ms.
@lru_cache(maxsize=96)
def _rungs(
    box: Box, base: Mix, toner: Parts, target: ColourReading, share: Fraction | None
) -> Ladder:
    return tone_down_ladder(box, base, dict(toner), target, share)

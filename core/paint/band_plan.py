"""The plan of one band: its two voices, its alternatives, its tone-down ladder."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

import numpy as np

from core.colour import delta_E_2000
from core.errors import BoxError
from core.i18n import translate
from core.paint.alternatives import MOST, alternatives, built_differently, to_avoid
from core.paint.box import Box
from core.paint.catalogue import Paint
from core.paint.classroom import Built, classroom_mixes_kept
from core.paint.closest_plan import closest_planned, reach_of
from core.paint.describe import describe, describe_built
from core.paint.measured import paper_Lab
from core.paint.mix import Mix, bare_paper, make_mix
from core.paint.options import BandChoice
from core.paint.planned import Alternative, BandMix, PlannedMix, Reason
from core.paint.runs import Parts, best_load_ml
from core.paint.tone_down import Ladder, tone_down_ladder
from core.paint.toners import toners
from core.reading import ColourReading

CLEARLY_CLOSER = 1.5
"""Delta E 2000: what the model can tell; only beyond it a closest mix is worth showing."""

WORTH_A_LOOK = 1.5
"""What an alternative may cost more than the chosen mix, on the scale of its price."""

TRIED_ABOVE = 4.0
"""How much dearer than a band's best a set of paints may be to be considered for a whole run."""

PAPER_WITHIN = 2.0
"""A band this near the paper needs no paint."""


@lru_cache(maxsize=512)
def plan_colour(
    target: ColourReading,
    box: Box,
    choice: BandChoice,
    allow_white: bool = False,
    forbidden: tuple[str, ...] = (),
    prefer: frozenset[str] = frozenset(),
    shared: Parts | None = None,
) -> BandMix:
    """Plan one colour; the letter is left empty.

    Parameters
    ----------
    target : ColourReading
    box : Box
    choice : BandChoice
    allow_white : bool
    forbidden : tuple of str
    prefer : frozenset of str
        Paints to use when a teacher would build the colour from them: those of the bands beside.
    shared : parts or None
        The parts in which they are used there, if this band shares that mix.

    Raises
    ------
    BoxError
        A wish names a paint that is not in the box, or leaves no paint to use.
    """
    paints = usable_paints(box, choice, allow_white, forbidden)
    built = _built(box, paints, target, choice)
    steerable = {frozenset(item.mix.keys) for item in built}
    closest = closest_planned(box, paints, target, choice.pinned, steerable)
    others: list[Built] = []
    if choice.parts is not None:
        chosen, others = _by_hand(box, target, choice), built
    elif _is_paper(target, choice):
        chosen = describe(box, target, "paper", bare_paper(), why=(Reason("paper"),))
    elif built:
        first, *others = _preferred_first(built, prefer)
        if shared is not None and prefer == frozenset(first.mix.keys):
            mix = make_mix(box, dict(shared), best_load_ml(box, shared, target)[0])
            first = replace(first, mix=mix)
        chosen = describe_built(box, target, first, choice.pinned)
    else:
        chosen = _without_structure(box, target, closest)
    show_closest = (
        closest.delta_E_2000 < chosen.delta_E_2000 - CLEARLY_CLOSER
        and closest.mix.parts != chosen.mix.parts
    )
    shown = frozenset(closest.mix.keys) if show_closest else frozenset()
    others = [
        item
        for item in others
        if item.price <= built[0].price + WORTH_A_LOOK and frozenset(item.mix.keys) != shown
    ]
    return BandMix(
        "",
        target,
        chosen,
        closest if show_closest else None,
        _alternatives(box, paints, target, chosen, others, choice.pinned),
        _ladder(box, target, chosen),
        reach_of(closest, target),
    )


def usable_paints(
    box: Box, choice: BandChoice, allow_white: bool, forbidden: tuple[str, ...]
) -> tuple[Paint, ...]:
    """Paints a search may use; pinned ones always.

    Raises
    ------
    BoxError
        See `plan_colour`.
    """
    wished = {*choice.pinned, *(key for key, _ in choice.parts or ())}
    strange = [key for key in sorted(wished) if key not in box.by_key]
    if strange:
        raise BoxError(
            translate("mix", "{paint} is not in this box: choose one that is.").format(
                paint=strange[0].replace("_", " ")
            )
        )
    banned = {*forbidden, *choice.forbidden} - set(choice.pinned)
    paints = tuple(
        paint
        for paint in box.paints
        if paint.key in wished
        or (paint.key not in banned and (allow_white or paint.group != "white"))
    )
    if not paints:
        raise BoxError(translate("mix", "No paint is left to mix with: allow one again."))
    return paints


def set_prices(
    target: ColourReading,
    box: Box,
    choice: BandChoice,
    allow_white: bool = False,
    forbidden: tuple[str, ...] = (),
) -> dict[frozenset[str], float]:
    """What a band's best mix of each sensible set of paints costs; the rest as `plan_colour`.

    Empty when there is nothing to choose: parts set by hand, bare paper, or no sensible set.
    """
    if choice.parts is not None or _is_paper(target, choice):
        return {}
    built = _built(box, usable_paints(box, choice, allow_white, forbidden), target, choice)
    return {
        frozenset(item.mix.keys): item.price
        for item in built
        if item.price <= built[0].price + TRIED_ABOVE
    }


def own_mix(
    target: ColourReading,
    box: Box,
    choice: BandChoice,
    allow_white: bool,
    forbidden: tuple[str, ...],
    keys: frozenset[str],
) -> Mix | None:
    """A band's best mix of one set of paints; None when a teacher would not build it so."""
    built = _built(box, usable_paints(box, choice, allow_white, forbidden), target, choice)
    return next((item.mix for item in built if frozenset(item.mix.keys) == keys), None)


def _built(
    box: Box, paints: tuple[Paint, ...], target: ColourReading, choice: BandChoice
) -> list[Built]:
    pinned = frozenset(choice.pinned)
    return built_differently(classroom_mixes_kept(box, paints, target, pinned))


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


def _is_paper(target: ColourReading, choice: BandChoice) -> bool:
    """Whether the paper itself is the band's colour, or the nearest that paint could come."""
    if choice.pinned:
        return False
    gap = float(delta_E_2000(np.array(paper_Lab()), np.array(target.Lab)))
    lighter = target.Lab[0] >= paper_Lab()[0] and target.hue.family is None
    return lighter or gap <= PAPER_WITHIN


def _without_structure(box: Box, target: ColourReading, closest: PlannedMix) -> PlannedMix:
    """No paint stands near the hue: the closest mix has to do, and says so."""
    reason = Reason("no neighbours", (), target.hue.family or target.hue.leaning)
    return describe(box, target, "classroom", closest.mix, why=(reason, *closest.why))


def _alternatives(
    box: Box,
    paints: tuple[Paint, ...],
    target: ColourReading,
    chosen: PlannedMix,
    others: list[Built],
    pinned: tuple[str, ...],
) -> tuple[Alternative, ...]:
    described = (describe_built(box, target, item, pinned) for item in others)
    found = alternatives(box, chosen, described)
    if len(found) >= MOST:
        return found
    # A paint that is offered in an alternative is not advised against in the next line.
    offered = {key for item in found for key in item.planned.mix.keys}
    allowed = frozenset(paint.key for paint in paints) - offered
    avoid = to_avoid(box, target, chosen, allowed)
    if avoid is None:
        return found
    compared, reasons = avoid
    item = describe(box, target, "classroom", compared.mix)
    return (*found, Alternative(item, False, reasons))


def _preferred_first(built: list[Built], prefer: frozenset[str]) -> list[Built]:
    """Put the mix of the preferred paints first, when there is one."""
    for number, item in enumerate(built):
        if frozenset(item.mix.keys) == prefer:
            return [item, *built[:number], *built[number + 1 :]]
    return built


def _ladder(box: Box, target: ColourReading, chosen: PlannedMix) -> Ladder | None:
    """The chosen mix without its toner, and the toner put back step by step."""
    mix = chosen.mix
    if not mix.parts:
        return None
    if chosen.toner is not None:
        parts = dict(mix.parts)
        toner_share = mix.share(chosen.toner)
        del parts[chosen.toner]
        base = make_mix(box, parts, mix.load_ml * (1 - toner_share))
        return _rungs(box.only(mix.keys), base, ((chosen.toner, 1),), target)
    best = toners(box, mix, target.hue.wheel_deg)
    if not best:
        return None
    toner = best[0].parts
    used = box.only((*mix.keys, *(key for key, _ in toner)))
    return _rungs(used, mix, toner, target)


@lru_cache(maxsize=256)
def _rungs(box: Box, base: Mix, toner: Parts, target: ColourReading) -> Ladder:
    return tone_down_ladder(box, base, dict(toner), target)

"""The plan of one band: its two voices, its alternatives, its tone-down ladder."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from core.colour import delta_E_2000
from core.errors import BoxError
from core.i18n import translate
from core.paint.alternatives import MOST, alternatives, built_differently, to_avoid
from core.paint.box import Box
from core.paint.catalogue import Paint
from core.paint.classroom import Built, classroom_mixes, measured_keys
from core.paint.closest import closest_mixes
from core.paint.compare import faults_of, too_hue
from core.paint.measured import FULL_LOAD_ML, measured_paints, paper_Lab
from core.paint.mix import Mix, bare_paper, make_mix
from core.paint.options import BandChoice
from core.paint.planned import Alternative, BandMix, Kind, PlannedMix, Reach, Reason
from core.paint.refine import best_load
from core.paint.shortfall import MATCHES_WITHIN, shortfall, verdict
from core.paint.strength import mix_half_load, strength_of
from core.paint.tone_down import Ladder, tone_down_ladder
from core.paint.toners import toners
from core.reading import ColourReading

CLEARLY_CLOSER = 1.5
"""Delta E 2000: what the model can tell; only beyond it a closest mix is worth showing."""

PAPER_WITHIN = 2.0
"""A band this near the paper needs no paint."""


@lru_cache(maxsize=512)
def plan_colour(
    target: ColourReading,
    box: Box,
    choice: BandChoice,
    allow_white: bool = False,
    forbidden: tuple[str, ...] = (),
) -> BandMix:
    """Plan one colour; the letter is left empty.

    Raises
    ------
    BoxError
        A wish names a paint that is not in the box, or leaves no paint to use.
    """
    paints = usable_paints(box, choice, allow_white, forbidden)
    closest = _closest(box, paints, target, choice)
    built = _built(box, paints, target, choice)
    if choice.parts is not None:
        chosen = _by_hand(box, target, choice)
        planned: list[PlannedMix] = []
    elif _is_paper(target, choice):
        chosen, planned = describe(box, target, "paper", bare_paper(), why=(Reason("paper"),)), []
    else:
        planned = [describe_built(box, target, item, choice) for item in built]
        chosen = planned[0] if planned else _without_structure(box, target, closest)
    show_closest = closest.delta_E_2000 < chosen.delta_E_2000 - CLEARLY_CLOSER and dict(
        closest.mix.parts
    ) != dict(chosen.mix.parts)
    return BandMix(
        "",
        target,
        chosen,
        closest if show_closest else None,
        _alternatives(box, paints, target, chosen, planned),
        _ladder(box, target, chosen),
        _reach(closest, target),
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


def describe(
    box: Box,
    target: ColourReading,
    kind: Kind,
    mix: Mix,
    base: tuple[str, ...] = (),
    toner: str | None = None,
    why: tuple[Reason, ...] = (),
) -> PlannedMix:
    """A mix with everything that is said of it for a band."""
    colour = mix.colour
    difference = float(delta_E_2000(np.array(mix.Lab), np.array(target.Lab)))
    short = shortfall(colour, target)
    return PlannedMix(
        kind,
        mix,
        base or mix.keys,
        toner,
        strength_of(box, mix),
        difference,
        verdict(difference),
        short,
        faults_of(short, mix),
        too_hue(short, target),
        why,
    )


def describe_built(box: Box, target: ColourReading, built: Built, choice: BandChoice) -> PlannedMix:
    """The same for a teacher's mix."""
    structure = built.structure
    hue = target.hue.family or target.hue.leaning
    why = [Reason("at hue" if len(structure.base) == 1 else "either side", structure.base, hue)]
    if structure.toner is not None:
        why.append(Reason("toned", (structure.toner,)))
    if choice.pinned:
        why.append(Reason("pinned", choice.pinned))
    return describe(
        box, target, "classroom", built.mix, structure.base, structure.toner, tuple(why)
    )


def _built(
    box: Box, paints: tuple[Paint, ...], target: ColourReading, choice: BandChoice
) -> list[Built]:
    pinned = frozenset(choice.pinned)
    return built_differently(classroom_mixes(box, paints, target, pinned))


def _closest(
    box: Box, paints: tuple[Paint, ...], target: ColourReading, choice: BandChoice
) -> PlannedMix:
    """Whatever comes nearest, with what is odd about it."""
    names: dict[str, str] = {}
    for paint in paints:
        if paint.key in choice.pinned or paint.measured_as not in names:
            names[paint.measured_as] = paint.key
    must = frozenset(box.paint(key).measured_as for key in choice.pinned)
    found = closest_mixes(measured_keys(paints), [target.Lab], must)[0]
    if not len(found.cost):
        raise BoxError(
            translate("mix", "These pinned paints cannot stand in one mix: pin up to three.")
        )
    data = measured_paints()
    parts = {names[data.keys[i]]: int(n) for i, n in enumerate(found.parts[0]) if n}
    mix = make_mix(box, parts, float(found.load_ml[0]))
    return describe(box, target, "closest", mix, why=_oddities(box, mix))


def _oddities(box: Box, mix: Mix) -> tuple[Reason, ...]:
    reasons = []
    groups = {box.paint(key).group: key for key in mix.keys}
    if "black" in groups:
        reasons.append(Reason("black", (groups["black"],)))
    if "white" in groups:
        reasons.append(Reason("white", (groups["white"],)))
    tiny = tuple(key for key in mix.keys if box.paint(key).is_strong and mix.share(key) < 0.25)
    if tiny and "black" not in groups:
        reasons.append(Reason("tiny strong", tiny))
    if len(mix.parts) > 1 and not reasons:
        reasons.append(Reason("hard to steer", mix.keys))
    if mix.total > 8:
        reasons.append(Reason("many parts"))
    return tuple(reasons)


def _by_hand(box: Box, target: ColourReading, choice: BandChoice) -> PlannedMix:
    parts = {key: count for key, count in choice.parts or () if count > 0}
    if not parts:
        raise BoxError(translate("mix", "A mix needs at least one part: give some paint a part."))
    load = choice.load_ml if choice.load_ml is not None else load_for(box, parts, target)
    mix = make_mix(box, parts, load)
    return describe(box, target, "by hand", mix, why=(Reason("by hand"),))


def load_for(box: Box, parts: dict[str, int], target: ColourReading) -> float:
    """The load, in millilitres, at which fixed parts come nearest a colour."""
    vector = box.load_vector({key: float(count) for key, count in parts.items()})
    columns = np.flatnonzero(vector)
    shares = vector[columns] / vector.sum()
    half = mix_half_load(box, parts)
    # Several starts: along one mix's washes the difference may dip twice.
    starts = np.log(np.minimum(half * np.array([0.3, 2.0, 12.0]), FULL_LOAD_ML))
    logs, Lab = best_load(
        np.repeat(columns[None], len(starts), axis=0),
        np.repeat(np.log(shares)[None], len(starts), axis=0),
        starts,
        np.repeat(np.array(target.Lab)[None], len(starts), axis=0),
    )
    nearest = int(np.argmin(delta_E_2000(Lab, np.array(target.Lab))))
    return float(np.exp(logs[nearest]))


def _is_paper(target: ColourReading, choice: BandChoice) -> bool:
    gap = float(delta_E_2000(np.array(paper_Lab()), np.array(target.Lab)))
    return not choice.pinned and gap <= PAPER_WITHIN


def _without_structure(box: Box, target: ColourReading, closest: PlannedMix) -> PlannedMix:
    """No paint stands near the hue: the closest mix has to do, and says so."""
    reason = Reason("no neighbours", (), target.hue.family or target.hue.leaning)
    return describe(box, target, "classroom", closest.mix, why=(reason, *closest.why))


def _alternatives(
    box: Box,
    paints: tuple[Paint, ...],
    target: ColourReading,
    chosen: PlannedMix,
    planned: list[PlannedMix],
) -> tuple[Alternative, ...]:
    found = alternatives(box, target, chosen, planned)
    avoid = to_avoid(box, target, chosen, frozenset(paint.key for paint in paints))
    if avoid is not None and len(found) < MOST:
        compared, reasons = avoid
        taken = {frozenset(item.planned.mix.keys) for item in found}
        if frozenset(compared.mix.keys) not in taken:
            item = describe(box, target, "classroom", compared.mix)
            found = (*found, Alternative(item, False, reasons))
    return found


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
        return tone_down_ladder(box, base, {chosen.toner: 1}, target)
    best = toners(box, mix)
    if not best:
        return None
    return tone_down_ladder(box, mix, dict(best[0].parts), target)


def _reach(closest: PlannedMix, target: ColourReading) -> Reach:
    if closest.delta_E_2000 <= MATCHES_WITHIN:
        return "reached"
    short = closest.falls_short
    if target.munsell.value > closest.mix.colour.munsell.value + 0.2 and short.chroma > -1:
        return "too light"
    if short.chroma < -0.7:
        return "too intense"
    if short.value > 0.4:
        return "too dark"
    return "out of reach"

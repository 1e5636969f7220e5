"""Everything that is said of one mix for one band, as numbers and reasons."""

from __future__ import annotations

import numpy as np

from core.colour import delta_E_2000
from core.paint.box.box import Box
from core.paint.choice.blues import is_blue, is_orange
from core.paint.choice.classroom import Built
from core.paint.choice.faults import found_faults, greatest_fault
from core.paint.mixture.mix import Mix
from core.paint.mixture.shortfall import leans_towards, shortfall, verdict
from core.paint.mixture.strength import strength_of
from core.paint.pigment.hues import paint_deg, turn
from core.paint.pigment.primaries import all_primaries, make_together, primaries_for
from core.paint.planned import Kind, PlannedMix
from core.paint.reasons import Reason
from core.reading.reading import ColourReading
from core.reading.wheel import Family

ACROSS_DEG = 40.0
"""A toner this near the opposite stands across the wheel; further off it turns the hue too."""

STEERS_WITHIN_DEG = 75.0
"""A paint this near a grey's leaning turns the grey towards it."""

LEANS_FROM = 0.5
"""Munsell chroma from which a grey's leaning is worth a word (ISCC-NBS: below it is neutral)."""


def describe(
    box: Box,
    target: ColourReading,
    kind: Kind,
    mix: Mix,
    base: tuple[str, ...] = (),
    toners: tuple[str, ...] = (),
    why: tuple[Reason, ...] = (),
) -> PlannedMix:
    """A mix with everything that is said of it for a band."""
    colour = mix.colour
    difference = float(delta_E_2000(np.array(mix.Lab), np.array(target.Lab)))
    short = shortfall(colour, target)
    told = verdict(difference)
    faults, too = found_faults(short, mix, target)
    if told == "matches":
        faults, too = (), None  # a match has no complaint
    elif not faults and too is None:
        faults, too = greatest_fault(short, colour, target)
    return PlannedMix(
        kind,
        mix,
        base or mix.keys,
        toners,
        strength_of(box, mix),
        difference,
        told,
        short,
        faults,
        too,
        why,
    )


def describe_built(
    box: Box, target: ColourReading, built: Built, pinned: tuple[str, ...] = ()
) -> PlannedMix:
    """The same for a teacher's mix."""
    structure = built.structure
    hue = target.hue.family or target.hue.leaning
    if structure.toner is None:
        why = [_hue_of(box, structure.base, hue, target)]
    elif structure.greys and len(structure.base) == 2:
        yellow, blue = structure.base
        if target.hue.family is None:
            why = [Reason("three primaries", built.mix.keys)]
        else:
            orange = Reason("toned by orange", (structure.toner, yellow))
            why = [_hue_of(box, (blue,), hue, target), orange]
    elif structure.greys:
        why = [Reason("greys", (*structure.base, structure.toner))]
        if structure.steer is not None:
            why.append(_steered(box, structure.steer, target))
    elif hue is None:  # a grey without any leaning: nothing stands nearest it, and all grey it
        why = [Reason("greys", built.mix.keys)]
    else:
        held = structure.steer is not None
        why = [
            _hue_of(box, structure.base, hue, target),
            _toned(box, target, structure.toner, held),
        ]
        if structure.steer is not None:
            why.append(Reason("holds", (structure.steer,), "green"))
    if pinned:
        why.append(Reason("pinned", pinned))
    return describe(
        box, target, "classroom", built.mix, *_base_and_toners(target, built), tuple(why)
    )


def _base_and_toners(
    target: ColourReading, built: Built
) -> tuple[tuple[str, ...], tuple[str, ...]]:
    """Which of a mix's paints make the hue, and which tone it down."""
    structure, keys = built.structure, built.mix.keys
    base, toner, steer = structure.base, structure.toner, structure.steer
    if toner is None:
        return base, ()
    if target.hue.family is not None and structure.greys and len(base) == 2:
        _, blue = base  # the other two are the orange that tones it
        return (blue,), tuple(key for key in keys if key != blue)
    if structure.greys and len(base) == 2:  # of three primaries the least part does the toning
        least = min(keys, key=built.mix.share)
        return tuple(key for key in keys if key != least), (least,)
    if not structure.greys and steer is not None:
        return base, (toner, steer)
    return base, (toner,)


def _steered(box: Box, steer: str, target: ColourReading) -> Reason:
    """What a third paint does to a grey of a blue and a brown, which by itself is greenish."""
    paint, leaning, place = box.paint(steer), target.hue.leaning, paint_deg(box.paint(steer))
    hue = target.hue.wheel_deg
    if leaning is None or target.munsell.chroma < LEANS_FROM or hue is None or place is None:
        return Reason("steers", (steer,))
    if abs(turn(hue, place)) <= STEERS_WITHIN_DEG:
        return Reason("steers", (steer,), leaning)
    if paint.group == "red":
        return Reason("holds", (steer,), "green")
    if paint.group in ("yellow", "green") and "green" in leaning:
        return Reason("steers", (steer,), "green")
    return Reason("steers", (steer,))


def _hue_of(box: Box, base: tuple[str, ...], hue: Family | None, target: ColourReading) -> Reason:
    if len(base) == 1:
        return Reason("at hue", base, hue)
    one, other = (box.paint(key) for key in base)
    if make_together(one, other, target.hue.family):
        return Reason("two primaries", base, hue)
    return Reason("either side", base, hue)


def _toned(box: Box, target: ColourReading, toner: str, held: bool) -> Reason:
    """Whether the toner stands across the wheel, or turns the hue as well where it is not held."""
    start, place = target.hue.wheel_deg, paint_deg(box.paint(toner))
    if start is not None and is_blue(start, target.hue.family) and is_orange(box.paint(toner)):
        return Reason("toned by earth", (toner,))
    if held or start is None or place is None or target.hue.family is None:
        return Reason("toned", (toner,))
    away = turn(start, place)
    if 180 - abs(away) <= ACROSS_DEG:
        return Reason("toned", (toner,))
    return Reason("toned and turned", (toner,), leans_towards(start, away))


def _unsteerable(box: Box, mix: Mix, family: Family | None) -> Reason:
    """What is odd about paints nobody builds a hue from; of primaries one says which is odd."""
    if family is None or not all_primaries(box.paint(key) for key in mix.keys):
        return Reason("hard to steer", mix.keys)
    strange = [key for key in mix.keys if box.paint(key).group not in primaries_for(family)]
    if not strange:
        return Reason("hard to steer", mix.keys)
    return Reason("more paints") if len(mix.keys) > 2 else Reason("turns hue", tuple(strange[:1]))


def oddities(
    box: Box, mix: Mix, steerable: bool, family: Family | None = None
) -> tuple[Reason, ...]:
    """What a teacher would find odd about a mix found by colour difference alone.

    Parameters
    ----------
    box : Box
    mix : Mix
    steerable : bool
        Whether a teacher would build the hue from these paints.
    family : str or None
        The band's hue.
    """
    reasons = []
    groups = {box.paint(key).group: key for key in mix.keys}
    if "black" in groups:
        reasons.append(Reason("black", (groups["black"],)))
    if "white" in groups:
        reasons.append(Reason("white", (groups["white"],)))
    strong = tuple(key for key in mix.keys if box.paint(key).is_strong)
    tiny = tuple(key for key in strong if mix.share(key) < 0.25)
    if not {"black", "white"} & set(groups):
        if len(mix.parts) > 1 and not steerable:
            reasons.append(_unsteerable(box, mix, family))
        if tiny:
            reasons.append(Reason("tiny strong", tiny))
        elif strong:
            reasons.append(Reason("stains", strong))
    if mix.total > 8:
        reasons.append(Reason("many parts"))
    return tuple(reasons)

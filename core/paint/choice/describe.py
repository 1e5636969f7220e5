"""Everything that is said of one mix for one band, as numbers and reasons."""

from __future__ import annotations

import numpy as np

from core.colour import delta_E_2000
from core.paint.box.box import Box
from core.paint.choice.classroom import Built
from core.paint.choice.faults import faults_of, greatest_fault, too_hue
from core.paint.mixture.mix import Mix
from core.paint.mixture.shortfall import leans_towards, shortfall, verdict
from core.paint.mixture.strength import strength_of
from core.paint.pigment.hues import paint_deg, turn
from core.paint.planned import Kind, PlannedMix
from core.paint.reasons import Reason
from core.reading.reading import ColourReading
from core.reading.wheel import Family

ACROSS_DEG = 40.0
"""A toner this near the opposite stands across the wheel; further off it turns the hue too."""

LEANS_FROM = 0.5
"""Munsell chroma from which a grey's leaning is worth a word (ISCC-NBS: below it is neutral)."""


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
    told = verdict(difference)
    faults, too = faults_of(short, mix), too_hue(short, target)
    if told != "matches" and not faults and too is None:
        faults, too = greatest_fault(short, target)
    return PlannedMix(
        kind,
        mix,
        base or mix.keys,
        toner,
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
        why = [_hue_of(structure.base, hue)]
    elif structure.greys and len(structure.base) == 2:
        yellow, blue = structure.base
        if target.hue.family is None:
            why = [Reason("three primaries", built.mix.keys)]
        else:
            orange = Reason("toned by orange", (structure.toner, yellow))
            why = [_hue_of((blue,), hue), orange]
    elif structure.greys:
        why = [Reason("greys", (*structure.base, structure.toner))]
        if structure.steer is not None:
            leaning = hue if target.munsell.chroma >= LEANS_FROM else None
            why.append(Reason("steers", (structure.steer,), leaning))
    elif hue is None:  # a grey without any leaning: nothing stands nearest it, and all grey it
        why = [Reason("greys", built.mix.keys)]
    else:
        why = [_hue_of(structure.base, hue), _toned(box, target, structure.toner)]
    if pinned:
        why.append(Reason("pinned", pinned))
    base, toner = structure.base, structure.toner
    if structure.greys and len(base) == 2:  # of three primaries the least part does the toning
        base, toner = built.mix.keys[:-1], built.mix.keys[-1]
    return describe(box, target, "classroom", built.mix, base, toner, tuple(why))


def _hue_of(base: tuple[str, ...], hue: Family | None) -> Reason:
    return Reason("at hue" if len(base) == 1 else "either side", base, hue)


def _toned(box: Box, target: ColourReading, toner: str) -> Reason:
    """Whether the toner stands across the wheel, or turns the hue as well."""
    start, place = target.hue.wheel_deg, paint_deg(box.paint(toner))
    if start is None or place is None or target.hue.family is None:
        return Reason("toned", (toner,))
    away = turn(start, place)
    if 180 - abs(away) <= ACROSS_DEG:
        return Reason("toned", (toner,))
    return Reason("toned and turned", (toner,), leans_towards(start, away))


def oddities(box: Box, mix: Mix, steerable: bool) -> tuple[Reason, ...]:
    """What a teacher would find odd about a mix found by colour difference alone.

    Parameters
    ----------
    box : Box
    mix : Mix
    steerable : bool
        Whether a teacher would build the hue from these paints.
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
            reasons.append(Reason("hard to steer", mix.keys))
        if tiny:
            reasons.append(Reason("tiny strong", tiny))
        elif strong:
            reasons.append(Reason("stains", strong))
    if mix.total > 8:
        reasons.append(Reason("many parts"))
    return tuple(reasons)

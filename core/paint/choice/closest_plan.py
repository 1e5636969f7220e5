"""The closest mix as a plan shows it, and whether a box reaches a band at all."""

from __future__ import annotations

from functools import lru_cache

from core.errors import BoxError
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.choice.classroom import pigment_keys
from core.paint.choice.describe import describe, oddities
from core.paint.mixture.mix import Mix, make_mix
from core.paint.mixture.shortfall import MATCHES_WITHIN
from core.paint.pigment.catalogue import Paint
from core.paint.pigment.measured import FULL_LOAD_ML
from core.paint.planned import PlannedMix, Reach
from core.paint.search.closest import closest_mixes
from core.reading.reading import ColourReading

LIGHT_FROM_VALUE = 6.5
"""From this Munsell value a band is light, and the white of the paper can help it."""


def closest_planned(
    box: Box,
    paints: tuple[Paint, ...],
    target: ColourReading,
    pinned: tuple[str, ...],
    steerable: set[frozenset[str]],
) -> PlannedMix:
    """Whatever comes nearest to a band, with what is odd about it.

    Parameters
    ----------
    box : Box
    paints : tuple of Paint
        Those that may be used.
    target : ColourReading
    pinned : tuple of str
        Paints it has to hold.
    steerable : set of frozensets of str
        Sets of paints from which a teacher would build the colour.

    Raises
    ------
    BoxError
        More paints are pinned than one mix can hold.
    """
    mix = _closest_mix(box, paints, target, pinned)
    why = oddities(box, mix, frozenset(mix.keys) in steerable, target.hue.family)
    return describe(box, target, "closest", mix, why=why)


# Parts set by hand leave it as it is: without it thirty such edits take 1.1 times as long.
@lru_cache(maxsize=96)
def _closest_mix(
    box: Box, paints: tuple[Paint, ...], target: ColourReading, pinned: tuple[str, ...]
) -> Mix:
    names: dict[str, str] = {}
    for paint in paints:
        if paint.key in pinned or paint.pigment not in names:
            names[paint.pigment] = paint.key
    must = frozenset(box.paint(key).pigment for key in pinned)
    data = box.pigments
    found = closest_mixes(pigment_keys(box, paints), [target.Lab], must, pigments=data)[0]
    if not len(found.cost):
        raise BoxError(
            translate("mix", "These pinned paints cannot stand in one mix: pin up to three.")
        )
    parts = {names[data.keys[i]]: int(n) for i, n in enumerate(found.parts[0]) if n}
    return make_mix(box, parts, float(found.load_ml[0]))


def reach_of(closest: PlannedMix, target: ColourReading) -> Reach:
    """Whether a box reaches a band, by its closest mix; else in what the band goes beyond it."""
    if closest.delta_E_2000 <= MATCHES_WITHIN:
        return "reached"
    short = closest.falls_short
    light = target.munsell.value >= LIGHT_FROM_VALUE
    if light and short.value < -0.2 and short.chroma > -1:
        return "too light"
    if short.chroma < -0.7:
        return "too intense"
    if short.value > 0.4 and closest.mix.load_ml >= FULL_LOAD_ML * 0.9:
        return "too dark"
    if short.chroma > 1:
        return "too dull"
    return "out of reach"

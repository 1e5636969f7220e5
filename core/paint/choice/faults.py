"""The box's paints of one group side by side: which blue, and why."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from core.colour import delta_E_2000
from core.paint.box.box import Box
from core.paint.mixture.mix import Mix, mix_of_known_colour
from core.paint.mixture.shortfall import (
    MAIN_HUES,
    Fault,
    MainHue,
    Shortfall,
    leans_towards,
    shortfall,
    verdict,
)
from core.paint.pigment.catalogue import Group, Paint
from core.paint.pigment.measured import FULL_LOAD_ML
from core.paint.search.refine import refine
from core.reading.quality import Verdict
from core.reading.reading import ColourReading, read_colour

TOUCHY_DELTA_E = 6.0
"""A change by one part beyond this is more than a class will overlook."""

PART_PRICE = 0.1
"""Delta E 2000 a further part must gain."""

HUE_SEEN, VALUE_SEEN, CHROMA_SEEN = 3.0, 0.4, 1.0
"""From here a fault is named: CIELAB units of hue, Munsell value, Munsell chroma."""

_STRONG, _MIDDLE_L = 20.0, 60.0
"""CIELAB chroma and lightness of a colour that has a hue beyond doubt."""


@dataclass(frozen=True)
class PaintCompared:
    """One paint in the role it would play for a band.

    Attributes
    ----------
    paint : str
        Paint key.
    mix : Mix
        The best it does: alone, or in the place of its relative in the band's mix.
    delta_E_2000 : float
    verdict : Verdict
    faults : tuple of Fault
        What is wrong with the best it does.
    too : MainHue or None
        The main hue it errs towards ("violet"), when the eye would notice.
    one_part_more : float
        Delta E 2000 between the mix and the mix with one part more of this paint.
    """

    paint: str
    mix: Mix
    delta_E_2000: float
    verdict: Verdict
    faults: tuple[Fault, ...]
    too: MainHue | None
    one_part_more: float


def compare_group(
    box: Box, group: Group, target: ColourReading, mix: Mix | None = None
) -> tuple[PaintCompared, ...]:
    """Every paint of a group in the same role, the closest first.

    Parameters
    ----------
    box : Box
    group : Group
    target : ColourReading
        The band.
    mix : Mix, optional
        The band's mix: its paint of the group is exchanged. Without one, or when it holds no
        paint of the group, each paint is tried alone.
    """
    members = [paint for paint in box.paints if paint.group == group]
    if not members:
        return ()
    place = [key for key in (mix.keys if mix else ()) if box.paint(key).group == group]
    others = [key for key in (mix.keys if mix else ()) if key not in place] if place else []
    tried = make_best(box, [[paint.key, *others] for paint in members], target, mix)
    compared = [judge(box, paint, best, target) for paint, best in zip(members, tried, strict=True)]
    return tuple(sorted(compared, key=lambda item: item.delta_E_2000))


def make_best(
    box: Box, sets: list[list[str]], target: ColourReading, like: Mix | None = None
) -> list[Mix]:
    """For each set of paints, the whole parts that come nearest a colour; few are preferred.

    Parameters
    ----------
    box : Box
    sets : list of lists of str
        Paints that must all be used; two standing in for one measured paint count as one.
    target : ColourReading
    like : Mix, optional
        A mix whose load to begin from.
    """
    data = box.pigments
    names: list[dict[int, str]] = []
    start = np.zeros((len(sets), len(data.keys)))
    total = like.load_ml if like is not None else 0.002
    for number, keys in enumerate(sets):
        named: dict[int, str] = {}
        for key in keys:
            named.setdefault(data.index(box.paint(key).pigment), key)
        start[number, list(named)] = total / len(named)
        names.append(named)
    columns = [tuple(sorted(named)) for named in names]
    aims = np.repeat(np.array([target.Lab]), len(sets), axis=0)
    found = refine(columns, start, aims, keep=12, pigments=data)
    cost = found.delta_E + PART_PRICE * found.parts.sum(axis=1)
    mixes = []
    for number, named in enumerate(names):
        rows = np.flatnonzero(found.start == number)
        row = int(rows[np.argmin(cost[rows])])
        parts = {named[column]: int(found.parts[row, column]) for column in columns[number]}
        L, a, b = found.Lab[row].tolist()
        mixes.append(mix_of_known_colour(box, parts, float(found.load_ml[row]), (L, a, b)))
    return mixes


def judge(box: Box, paint: Paint, mix: Mix, target: ColourReading) -> PaintCompared:
    """Say what a mix lacks, and how it bears one part too much of a paint."""
    difference = float(delta_E_2000(np.array(mix.Lab), np.array(target.Lab)))
    faults, too = found_faults(shortfall(mix.colour, target), mix, target)
    return PaintCompared(
        paint.key,
        mix,
        difference,
        verdict(difference),
        faults,
        too,
        one_part_more(box, mix, paint.key),
    )


def faults_of(short: Shortfall, mix: Mix) -> tuple[Fault, ...]:
    """Faults of value and intensity, named when the eye would notice them."""
    faults: list[Fault] = []
    at_full = mix.load_ml >= FULL_LOAD_ML * 0.98
    if short.value > VALUE_SEEN:
        faults.append("too weak" if at_full else "too light")
    elif short.value < -VALUE_SEEN:
        faults.append("too dark")
    if short.chroma > CHROMA_SEEN:
        faults.append("too intense")
    elif short.chroma < -CHROMA_SEEN:
        faults.append("too dull")
    return tuple(faults)


def too_hue(short: Shortfall, mix: ColourReading, band: ColourReading) -> MainHue | None:
    """The main hue a mix errs towards, when the eye would notice."""
    if abs(short.hue_Lab) < HUE_SEEN:
        return None
    return errs_towards(short, mix, band)


def errs_towards(short: Shortfall, mix: ColourReading, band: ColourReading) -> MainHue | None:
    """The main hue a mix goes towards from its band, however little; None where it goes nowhere.

    A near neutral has hardly a hue that could turn: there it is the hue of the step from one to
    the other.
    """
    place, turned = band.hue.wheel_deg, short.hue_deg
    if band.hue.family is not None and place is not None and turned is not None:
        return leans_towards(place, turned)
    step = np.subtract(mix.Lab, band.Lab)[1:]
    length = float(np.hypot(*step))
    if length == 0.0:
        return None
    a, b = (step * _STRONG / length).tolist()
    deg = read_colour((_MIDDLE_L, a, b)).hue.wheel_deg
    return None if deg is None else MAIN_HUES[round(deg / 60) % 6]


def found_faults(
    short: Shortfall, mix: Mix, band: ColourReading
) -> tuple[tuple[Fault, ...], MainHue | None]:
    """What the eye would notice: faults of value and intensity, and the hue the mix errs towards.

    A near neutral has hardly an intensity: the colour it has become is named instead.
    """
    faults, too = faults_of(short, mix), too_hue(short, mix.colour, band)
    if too is None and band.hue.family is None and "too intense" in faults:
        too = errs_towards(short, mix.colour, band)
    if too is not None and band.hue.family is None:
        faults = tuple(fault for fault in faults if fault not in ("too intense", "too dull"))
    return faults, too


def greatest_fault(
    short: Shortfall, mix: ColourReading, band: ColourReading
) -> tuple[tuple[Fault, ...], MainHue | None]:
    """The one thing to name where a mix is off though nothing in it stands out: fault and hue."""
    hue = abs(short.hue_Lab) / HUE_SEEN
    value, chroma = abs(short.value) / VALUE_SEEN, abs(short.chroma) / CHROMA_SEEN
    neutral = band.hue.family is None
    if hue > max(value, chroma) or (neutral and short.chroma > 0 and chroma > value):
        towards = errs_towards(short, mix, band)
        if towards is not None:
            return (), towards
    if value > chroma:
        return ("too light" if short.value > 0 else "too dark",), None
    return ("too intense" if short.chroma > 0 else "too dull",), None


def one_part_more(box: Box, mix: Mix, key: str) -> float:
    """Delta E 2000 that one part too much of a paint makes; 0 when the mix lacks the paint."""
    return _one_part_more(box.only(mix.keys), mix, key) if key in mix.keys else 0.0


# benchmarks/cache_hits.py: 1,075 calls, 160 misses of 0.1 ms.
@lru_cache(maxsize=2048)
def _one_part_more(box: Box, mix: Mix, key: str) -> float:
    loads = mix.loads_ml
    loads[key] += mix.load_ml_per_unit
    spoiled = box.pigments.Lab(box.load_vector(loads))
    return float(delta_E_2000(spoiled, np.array(mix.Lab)))

"""The classroom mix: as a teacher would write it on the board.

Every candidate is built as `roles.structures` allows; the exact film says how near it comes, and
small prices say how easily a class can follow: fewer paints, fewer parts, no strong stainer where
a weaker paint serves, never a strong stainer as the tiny part. Differences below what the model
itself can tell (1.5 delta E 2000) hardly count against simplicity.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.paint.box import Box
from core.paint.catalogue import Paint
from core.paint.measured import measured_paints
from core.paint.metric import local_metric
from core.paint.mix import Mix, make_mix
from core.paint.recipes import nearest_rows, recipes_of
from core.paint.refine import refine
from core.paint.roles import Structure, structures
from core.paint.strength import mix_half_load
from core.progress import ShouldStop, step
from core.reading import ColourReading

TELLS_APART = 1.5
"""Delta E 2000 the model is good for; smaller differences are as good as none."""

TELLS_APART_GREY = 2.2
"""Near grey, delta E 2000 sees leanings nobody names."""

THICKEST, THICK_PRICE = 40.0, 0.6
"""In half loads of the mix: beyond this it is body colour, and every doubling costs."""

SETS = 20
PAINT_PRICE, PART_PRICE = 0.6, 0.07
MANY_PRICE, EASY_COUNT = 0.1, 6
TINY_STRONG_PRICE, STRONG_PRICE = 3.0, 0.8
MOST_TONER, MOST_TONER_GREY = 1 / 3, 1 / 2


@dataclass(frozen=True)
class Built:
    """A mix, how it is built, and what stands against it.

    Attributes
    ----------
    mix : Mix
    structure : Structure
    delta_E_2000 : float
        To the target.
    price : float
        Difference and simplicity together; the smallest is the classroom mix.
    """

    mix: Mix
    structure: Structure
    delta_E_2000: float
    price: float


def classroom_mixes(
    box: Box,
    paints: tuple[Paint, ...],
    target: ColourReading,
    pinned: frozenset[str] = frozenset(),
    should_stop: ShouldStop | None = None,
) -> tuple[Built, ...]:
    """Teacher's mixes for one colour, the best of every set of paints, the best set first.

    Parameters
    ----------
    box : Box
    paints : tuple of Paint
        Those of the box that may be used.
    target : ColourReading
    pinned : frozenset of str
        Paints every mix has to hold.

    Returns
    -------
    tuple of Built
        Empty when the paints cannot make the hue in any way a teacher would write down.
    """
    step(0.0, None, should_stop)
    ways = [way for way in structures(paints, target) if pinned <= way.keys]
    if not ways:
        return ()
    starts = _nearest_starts(box, measured_keys(paints), ways, target)
    step(0.0, None, should_stop)
    data = measured_paints()
    aim = np.array(target.Lab)
    columns = [
        tuple(sorted(data.index(box.paint(key).measured_as) for key in way.keys))
        for way, _ in starts
    ]
    found = refine(
        columns,
        np.array([load for _, load in starts]),
        np.repeat(aim[None], len(starts), axis=0),
        keep=12,
    )
    best: dict[int, tuple[float, int]] = {}
    for row, start in enumerate(found.start.tolist()):
        way = starts[start][0]
        parts = _named(box, way, found.parts[row])
        price = _price(box, paints, target, way, parts, float(found.delta_E[row]))
        if price is not None:
            price += _thick_price(box, parts, float(found.load_ml[row]))
        if price is not None and price < best.get(start, (np.inf, 0))[0]:
            best[start] = (price, row)
    built = []
    for start, (price, row) in best.items():
        way = starts[start][0]
        mix = make_mix(box, _named(box, way, found.parts[row]), float(found.load_ml[row]))
        built.append(Built(mix, way, float(found.delta_E[row]), price))
    return tuple(sorted(built, key=lambda item: item.price))


def measured_keys(paints: tuple[Paint, ...]) -> tuple[str, ...]:
    """Whose measurements some paints use: in the data's order, without repeats."""
    used = {paint.measured_as for paint in paints}
    return tuple(key for key in measured_paints().keys if key in used)


def _nearest_starts(
    box: Box, keys: tuple[str, ...], ways: list[Structure], target: ColourReading
) -> list[tuple[Structure, NDArray[np.float64]]]:
    """The most promising structures, each with a rough load of the 13 measured paints."""
    recipes = recipes_of(keys)
    number = {frozenset(subset): i for i, subset in enumerate(recipes.subsets)}
    aim = np.array(target.Lab)
    distance, row = nearest_rows(recipes, local_metric(aim), aim)
    scored = []
    for way in ways:
        measured = {box.paint(key).measured_as for key in way.keys}
        if len(measured) < len(way.keys):  # two names for one measured paint
            continue
        subset = number[frozenset(keys.index(key) for key in measured)]
        load = np.zeros(len(measured_paints().keys))
        load[recipes.rows] = recipes.shares[row[subset]] * recipes.load_ml[row[subset]]
        cost = distance[subset] + way.price + PAINT_PRICE * len(way.keys)
        scored.append((float(cost), way, load))
    scored.sort(key=lambda item: item[0])
    return [(way, load) for _, way, load in scored[:SETS]]


def _named(box: Box, way: Structure, parts: NDArray[np.int64]) -> dict[str, int]:
    data = measured_paints()
    return {
        key: int(parts[data.index(box.paint(key).measured_as)])
        for key in box.keys
        if key in way.keys
    }


def _thick_price(box: Box, parts: dict[str, int], load_ml: float) -> float:
    """What it costs to lay a mix thicker than any wash."""
    times = load_ml / mix_half_load(box, parts)
    return THICK_PRICE * max(0.0, math.log2(times / THICKEST))


def _price(
    box: Box,
    paints: tuple[Paint, ...],
    target: ColourReading,
    way: Structure,
    parts: dict[str, int],
    delta_E: float,
) -> float | None:
    """What a mix costs, or None when a teacher would not write it so."""
    total = sum(parts.values())
    if way.toner is not None:
        most = MOST_TONER if target.munsell.chroma >= 3 else MOST_TONER_GREY
        if parts[way.toner] / total > most + 1e-9:
            return None
    tells = TELLS_APART_GREY if target.hue.family is None else TELLS_APART
    price = float(np.hypot(delta_E, tells)) - tells + way.price
    price += PAINT_PRICE * (len(parts) - 1)
    price += PART_PRICE * total + MANY_PRICE * max(0, total - EASY_COUNT)
    for key, count in parts.items():
        paint = box.paint(key)
        if not paint.is_strong:
            continue
        weaker = any(other.group == paint.group and not other.is_strong for other in paints)
        if weaker:
            price += TINY_STRONG_PRICE if count / total < 0.25 else STRONG_PRICE
    return price

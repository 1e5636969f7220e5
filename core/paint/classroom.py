"""The classroom mix: as a teacher would write it on the board.

Every candidate is built as `roles.structures` allows; the exact film says how near it comes, and
small prices say how easily a class can follow: fewer paints, fewer parts, no strong stainer where
a weaker paint serves, never a strong stainer as the tiny part. Differences below what the model
itself can tell (1.5 delta E 2000) hardly count against simplicity.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from core.paint.box import Box
from core.paint.catalogue import Paint
from core.paint.measured import measured_paints
from core.paint.mix import Mix, mix_of_known_colour
from core.paint.recipes import nearest_rows, whole_table
from core.paint.refine import refine
from core.paint.roles import Structure, structures
from core.paint.shortfall import MATCHES_WITHIN
from core.progress import ShouldStop, step
from core.reading import ColourReading

TELLS_APART = 1.5
"""Delta E 2000 the model is good for; smaller differences are as good as none."""

TELLS_APART_GREY = 2.2
"""Near grey, delta E 2000 sees leanings nobody names."""

THICKEST, THICK_PRICE = 20.0, 1.0
"""In half loads of the mix: beyond this it is body colour, and every doubling costs."""

SEEN_SLOPE = 0.5
"""What every delta E 2000 beyond a match costs besides: now the class sees it."""

SETS = 20
PAINT_PRICE, PART_PRICE = 0.7, 0.07
MANY_PRICE, EASY_COUNT = 0.15, 6
LARGEST_PART, MOST_PARTS = 7, 9
"""Nobody keeps count of eleven brush loads of one paint."""

TINY_STRONG_PRICE, STRONG_PRICE = 3.0, 2.6
MOST_TONER, MOST_TONER_GREY, MOST_TONER_PAIR = 1 / 3, 1 / 2, 3 / 4


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
    starts = _nearest_starts(box, ways, target)
    step(0.0, None, should_stop)
    aim = np.array(target.Lab)
    judges = [_Judge(box, paints, target, way) for way, _ in starts]
    found = refine(
        [judge.columns for judge in judges],
        np.array([load for _, load in starts]),
        np.repeat(aim[None], len(starts), axis=0),
        keep=12,
    )
    best: dict[int, tuple[float, int]] = {}
    rows = zip(found.start.tolist(), found.parts, found.delta_E.tolist(), strict=True)
    for row, (start, parts, delta_E) in enumerate(rows):
        price = judges[start].price(parts, delta_E, float(found.load_ml[row]))
        if price is not None and price < best.get(start, (np.inf, 0))[0]:
            best[start] = (price, row)
    built = []
    for start, (price, row) in best.items():
        counts = judges[start].counts(found.parts[row])
        L, a, b = found.Lab[row].tolist()
        mix = mix_of_known_colour(box, counts, float(found.load_ml[row]), (L, a, b))
        built.append(Built(mix, starts[start][0], float(found.delta_E[row]), price))
    return tuple(sorted(built, key=lambda item: item.price))


@lru_cache(maxsize=256)
def classroom_mixes_kept(
    box: Box,
    paints: tuple[Paint, ...],
    target: ColourReading,
    pinned: frozenset[str] = frozenset(),
) -> tuple[Built, ...]:
    """`classroom_mixes`, remembered: a plan asks again when only a neighbour has changed."""
    return classroom_mixes(box, paints, target, pinned)


def measured_keys(paints: tuple[Paint, ...]) -> tuple[str, ...]:
    """Whose measurements some paints use: in the data's order, without repeats."""
    used = {paint.measured_as for paint in paints}
    return tuple(key for key in measured_paints().keys if key in used)


def _nearest_starts(
    box: Box, ways: list[Structure], target: ColourReading
) -> list[tuple[Structure, NDArray[np.float64]]]:
    """The most promising structures, each with a rough load of the 13 measured paints."""
    recipes, data = whole_table(), measured_paints()
    distance, row = nearest_rows(target.Lab)
    scored = []
    for way in ways:
        measured = {box.paint(key).measured_as for key in way.keys}
        if len(measured) < len(way.keys):  # two names for one measured paint
            continue
        subset = recipes.number[frozenset(data.index(key) for key in measured)]
        cost = distance[subset] + way.price + PAINT_PRICE * len(way.keys)
        scored.append((float(cost), way, int(row[subset])))
    scored.sort(key=lambda item: item[0])
    return [(way, recipes.load(row)) for _, way, row in scored[:SETS]]


class _Judge:
    """Prices the ways of counting one set of paints."""

    def __init__(
        self, box: Box, paints: tuple[Paint, ...], target: ColourReading, way: Structure
    ) -> None:
        data = measured_paints()
        column = {key: data.index(box.paint(key).measured_as) for key in way.keys}
        self._keys = tuple(sorted(way.keys, key=column.__getitem__))
        self.columns = tuple(column[key] for key in self._keys)
        self._pick = np.array(self.columns)
        self._toner = None if way.toner is None else self._keys.index(way.toner)
        self._most_toner = MOST_TONER if target.munsell.chroma >= 3 else MOST_TONER_GREY
        if way.greys:
            self._most_toner = MOST_TONER_PAIR
        self._tells = TELLS_APART_GREY if target.hue.family is None else TELLS_APART
        self._base_price = way.price + PAINT_PRICE * (len(self._keys) - 1)
        self._per_half = [1 / box.paint(key).half_load_ml for key in self._keys]
        self._replaceable = [
            number
            for number, key in enumerate(self._keys)
            if box.paint(key).is_strong and _has_weaker(paints, box.paint(key))
        ]

    def counts(self, parts: NDArray[np.int64]) -> dict[str, int]:
        """Parts of the box's paints, from a vector of all measured ones."""
        return dict(zip(self._keys, parts[self._pick].tolist(), strict=True))

    def price(self, parts: NDArray[np.int64], delta_E: float, load_ml: float) -> float | None:
        """What a mix costs, or None when a teacher would not write it so."""
        counts: list[int] = parts[self._pick].tolist()
        total = sum(counts)
        if total > MOST_PARTS or max(counts) > LARGEST_PART:
            return None
        if self._toner is not None and counts[self._toner] / total > self._most_toner + 1e-9:
            return None
        price = math.hypot(delta_E, self._tells) - self._tells + self._base_price
        price += SEEN_SLOPE * max(0.0, delta_E - MATCHES_WITHIN)
        price += PART_PRICE * total + MANY_PRICE * max(0, total - EASY_COUNT)
        for number in self._replaceable:
            price += TINY_STRONG_PRICE if counts[number] / total < 0.25 else STRONG_PRICE
        half_loads = (
            load_ml / total * sum(n * per for n, per in zip(counts, self._per_half, strict=True))
        )
        return price + THICK_PRICE * max(0.0, math.log2(max(half_loads, 1e-9) / THICKEST))


def _has_weaker(paints: tuple[Paint, ...], paint: Paint) -> bool:
    """Whether a paint of the same group stains less strongly."""
    return any(other.group == paint.group and not other.is_strong for other in paints)

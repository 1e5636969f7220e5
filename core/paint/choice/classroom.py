"""The classroom mix: as a teacher would write it on the board.

Every candidate is built as `roles.structures` allows; the exact film says how near it comes, and
small prices say how easily a class can follow: fewer paints, fewer parts, no strong stainer where
a weaker paint serves, never a strong stainer as the tiny part. Differences below what the model
itself can tell (1.5 delta E 2000) hardly count against simplicity.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from core.paint.box.box import Box
from core.paint.choice.judge import PAINT_PRICE, Judge
from core.paint.choice.roles import structures
from core.paint.choice.structure import Structure
from core.paint.mixture.mix import Mix, mix_of_known_colour
from core.paint.pigment.catalogue import Paint
from core.paint.reasons import Cost
from core.paint.search.recipes import nearest_rows, whole_table
from core.paint.search.refine import refine
from core.progress import ShouldStop, step
from core.reading.reading import ColourReading

SETS = 20
"""How many of the most promising structures the exact film judges."""


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
    costs : tuple of Cost
        What the price is made of.
    """

    mix: Mix
    structure: Structure
    delta_E_2000: float
    price: float
    costs: tuple[Cost, ...] = ()


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
    judges = [Judge(box, paints, target, way) for way, _ in starts]
    found = refine(
        [judge.columns for judge in judges],
        np.array([load for _, load in starts]),
        np.repeat(aim[None], len(starts), axis=0),
        keep=12,
        pigments=box.pigments,
    )
    best: dict[int, tuple[float, int, tuple[Cost, ...]]] = {}
    rows = zip(found.start.tolist(), found.parts, found.delta_E.tolist(), strict=True)
    for row, (start, parts, delta_E) in enumerate(rows):
        costs = judges[start].costs(parts, delta_E, float(found.load_ml[row]))
        if costs is None:
            continue
        price = sum(cost.price for cost in costs)
        if start not in best or price < best[start][0]:
            best[start] = (price, row, costs)
    built = []
    for start, (price, row, costs) in best.items():
        counts = judges[start].counts(found.parts[row])
        L, a, b = found.Lab[row].tolist()
        mix = mix_of_known_colour(box, counts, float(found.load_ml[row]), (L, a, b))
        built.append(Built(mix, starts[start][0], float(found.delta_E[row]), price, costs))
    return tuple(sorted(built, key=lambda item: item.price))


@lru_cache(maxsize=96)
def classroom_mixes_kept(
    box: Box,
    paints: tuple[Paint, ...],
    target: ColourReading,
    pinned: frozenset[str] = frozenset(),
) -> tuple[Built, ...]:
    """`classroom_mixes`, remembered: a plan asks again when only a neighbour has changed.

    Without it the edits of benchmarks/memories.py take 1.25 times as long.
    """
    return classroom_mixes(box, paints, target, pinned)


def pigment_keys(box: Box, paints: tuple[Paint, ...]) -> tuple[str, ...]:
    """The rows of the box's pigments that some paints are: in their order, without repeats."""
    used = {paint.pigment for paint in paints}
    return tuple(key for key in box.pigments.keys if key in used)


def _nearest_starts(
    box: Box, ways: list[Structure], target: ColourReading
) -> list[tuple[Structure, NDArray[np.float64]]]:
    """The most promising structures, each with a rough load of the box's pigments."""
    data = box.pigments
    recipes = whole_table(data)
    distance, row = nearest_rows(target.Lab, data)
    scored = []
    for way in ways:
        rows = {box.paint(key).pigment for key in way.keys}
        if len(rows) < len(way.keys):  # two names for one measured paint
            continue
        subset = recipes.number[frozenset(data.index(key) for key in rows)]
        cost = distance[subset] + way.price + PAINT_PRICE * len(way.keys)
        scored.append((float(cost), way, int(row[subset])))
    scored.sort(key=lambda item: item[0])
    return [(way, recipes.load(row)) for _, way, row in scored[:SETS]]

"""What could be mixed at all: sets of one to three paints, and small whole parts."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache, cached_property, lru_cache
from itertools import combinations, product
from math import gcd

import numpy as np
from numpy.typing import NDArray

from core.memory import Memory
from core.paint.pigment.fast_film import coarse_Lab
from core.paint.pigment.measured import FULL_LOAD_ML, half_load_ml, measured_paints
from core.paint.pigment.pigments import Pigments
from core.paint.search.metric import local_metric

MAX_PAINTS = 3
MAX_PARTS = 12
COARSE_PARTS = 6
"""The first look goes through parts up to this sum only."""

Triple = tuple[float, float, float]
_Rows = tuple[NDArray[np.float64], NDArray[np.int64]]
known: Memory[_Rows] = Memory(64)
"""By paints and colour: the bands of a sky, and of the one before."""

LOADS = 14
FAINTEST = 0.05
"""The faintest wash looked at, as a share of the mix's own half load."""


# benchmarks/cache_hits.py: 533 calls, 6 misses of 0.07 ms.
@cache
def whole_parts(paints: int, most: int = MAX_PARTS) -> NDArray[np.int64]:
    """All ways of giving each of `paints` paints at least one part, without a common factor.

    Returns
    -------
    ndarray, shape (n, paints), int
        Sums up to `most`, the smallest sums first.
    """
    ways = [
        way
        for way in product(range(1, most + 1), repeat=paints)
        if sum(way) <= most and gcd(*way) == 1
    ]
    return np.array(sorted(ways, key=lambda way: (sum(way), way)))


@dataclass(frozen=True, eq=False)
class Recipes:
    """The coarse table of the mixes of all paints that are searched.

    Attributes
    ----------
    pigments : Pigments
        The paints; a column is one of their `searched` rows.
    subsets : tuple of tuples of int
        Sets of one to three rows of the pigments.
    first : ndarray, shape (subsets,), int
        Where each subset's rows begin; they stand together.
    shares : ndarray, shape (rows, columns), float
        Each paint's share of the load.
    load_ml : ndarray, shape (rows,), float
    Lab : ndarray, shape (rows, 3), float32
        Rough: see `fast_film.coarse_Lab`.
    """

    pigments: Pigments
    subsets: tuple[tuple[int, ...], ...]
    first: NDArray[np.int64]
    shares: NDArray[np.float64]
    load_ml: NDArray[np.float64]
    Lab: NDArray[np.float32]

    @cached_property
    def number(self) -> dict[frozenset[int], int]:
        """Which of the subsets a set of rows of the pigments is."""
        return {frozenset(subset): place for place, subset in enumerate(self.subsets)}

    @cached_property
    def members(self) -> NDArray[np.bool_]:
        """Which of the pigments each subset holds, shape (subsets, paints)."""
        held = np.zeros((len(self.subsets), len(self.pigments.keys)), dtype=bool)
        for place, subset in enumerate(self.subsets):
            held[place, list(subset)] = True
        return held

    def load(self, row: int) -> NDArray[np.float64]:
        """The load of each of the pigments in a row, shape (paints,)."""
        load = np.zeros(len(self.pigments.keys))
        load[list(self.pigments.searched)] = self.shares[row] * self.load_ml[row]
        return load


def whole_table(pigments: Pigments | None = None) -> Recipes:
    """The coarse table of the measured paints: every box of them uses its own part of it.

    Parameters
    ----------
    pigments : Pigments, optional
        Other paints than the measured ones: the table of a box with paints of its own.
    """
    return _table(pigments or measured_paints())


# A table is some nine megabytes; a class has one box with paints of its own, seldom two.
# benchmarks/cache_hits.py: 456 calls; a table takes 50 to 70 ms.
@lru_cache(maxsize=3)
def _table(pigments: Pigments) -> Recipes:
    rows = pigments.searched
    keys = [pigments.keys[row] for row in rows]
    subsets = [
        subset
        for size in range(1, MAX_PAINTS + 1)
        for subset in combinations(range(len(keys)), size)
    ]
    blocks, first = [], []
    at = 0
    for subset in subsets:
        ways = whole_parts(len(subset), COARSE_PARTS)
        block = np.zeros((len(ways), len(keys)))
        block[:, subset] = ways / ways.sum(axis=1, keepdims=True)
        blocks.append(block)
        first.append(at)
        at += len(ways) * LOADS
    shares = np.concatenate(blocks)
    halves = pigments.half_loads_ml or tuple(map(half_load_ml, pigments.keys))
    half = np.array([halves[row] for row in rows])
    faint = FAINTEST / (shares / half).sum(axis=1)
    steps = np.linspace(0, 1, LOADS)
    load_ml = np.exp(np.log(faint)[:, None] * (1 - steps) + np.log(FULL_LOAD_ML) * steps).ravel()
    shares = np.repeat(shares, LOADS, axis=0)
    Lab = coarse_Lab(shares * load_ml[:, None], pigments)
    sets = tuple(tuple(rows[column] for column in subset) for subset in subsets)
    return Recipes(pigments, sets, np.array(first), shares, load_ml, Lab)


def forget_tables() -> None:
    """Know no table any more; for benchmarks, which time the first time."""
    _table.cache_clear()


def nearest_rows(
    target: Triple, pigments: Pigments | None = None
) -> tuple[NDArray[np.float64], NDArray[np.int64]]:
    """The row of every subset of the whole table that comes closest to a colour; remembered.

    Parameters
    ----------
    target : tuple of 3 floats
        CIELAB.
    pigments : Pigments, optional
        As for `whole_table`.

    Returns
    -------
    distance : ndarray, shape (subsets,), float
        Roughly delta E 2000. Not to be written to.
    row : ndarray, shape (subsets,), int
    """
    recipes = whole_table(pigments)
    key = recipes.pigments, target
    found = known.get(key)
    if found is None:
        found = known.put(key, _nearest_rows(recipes, np.array(target)))
    return found


def _nearest_rows(recipes: Recipes, target: NDArray[np.float64]) -> _Rows:
    metric = local_metric(target).T.astype(np.float32)
    gap = (recipes.Lab - target.astype(np.float32)) @ metric
    squared = np.einsum("ij,ij->i", gap, gap)
    best = np.minimum.reduceat(squared, recipes.first)
    ends = np.append(recipes.first[1:], len(squared))
    hit = np.flatnonzero(squared == np.repeat(best, ends - recipes.first))
    row = hit[np.searchsorted(hit, recipes.first)]
    return np.sqrt(best.astype(np.float64)), row

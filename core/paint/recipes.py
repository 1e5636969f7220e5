"""What could be mixed at all: sets of one to three paints, and small whole parts."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from itertools import combinations, product
from math import gcd

import numpy as np
from numpy.typing import NDArray

from core.paint.fast_film import coarse_Lab
from core.paint.measured import FULL_LOAD_ML, half_load_ml, measured_paints

MAX_PAINTS = 3
MAX_PARTS = 12
COARSE_PARTS = 6
"""The first look goes through parts up to this sum only."""

LOADS = 14
FAINTEST = 0.05
"""The faintest wash looked at, as a share of the mix's own half load."""


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
    """A coarse table of the mixes of some measured paints.

    Attributes
    ----------
    keys : tuple of str
        Measured paints; the columns' meaning.
    subsets : tuple of tuples of int
        Sets of one to three columns.
    first : ndarray, shape (subsets,), int
        Where each subset's rows begin; they stand together.
    shares : ndarray, shape (rows, paints), float
        Each paint's share of the load.
    load_ml : ndarray, shape (rows,), float
    Lab : ndarray, shape (rows, 3), float32
        Rough: see `fast_film.coarse_Lab`.
    """

    keys: tuple[str, ...]
    subsets: tuple[tuple[int, ...], ...]
    first: NDArray[np.int64]
    shares: NDArray[np.float64]
    load_ml: NDArray[np.float64]
    Lab: NDArray[np.float32]

    @property
    def rows(self) -> list[int]:
        """Row of every key in the measured data."""
        data = measured_paints()
        return [data.index(key) for key in self.keys]


@cache
def recipes_of(keys: tuple[str, ...]) -> Recipes:
    """The coarse table for some measured paints; kept, since a box changes seldom.

    Parameters
    ----------
    keys : tuple of str
        Measured paints, without repeats.
    """
    whole = whole_table()
    if keys == whole.keys:
        return whole
    column = [whole.keys.index(key) for key in keys]
    number = {frozenset(subset): i for i, subset in enumerate(whole.subsets)}
    ends = np.append(whole.first[1:], len(whole.load_ml))
    subsets = [
        subset
        for size in range(1, min(MAX_PAINTS, len(keys)) + 1)
        for subset in combinations(range(len(keys)), size)
    ]
    rows, first, at = [], [], 0
    for subset in subsets:
        place = number[frozenset(column[c] for c in subset)]
        block = np.arange(whole.first[place], ends[place])
        rows.append(block)
        first.append(at)
        at += len(block)
    taken = np.concatenate(rows)
    return Recipes(
        keys,
        tuple(subsets),
        np.array(first),
        whole.shares[taken][:, column],
        whole.load_ml[taken],
        whole.Lab[taken],
    )


@cache
def whole_table() -> Recipes:
    """The coarse table of all measured paints, from which every box's is taken."""
    keys = measured_paints().keys
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
    half = np.array([half_load_ml(key) for key in keys])
    faint = FAINTEST / (shares / half).sum(axis=1)
    steps = np.linspace(0, 1, LOADS)
    load_ml = np.exp(np.log(faint)[:, None] * (1 - steps) + np.log(FULL_LOAD_ML) * steps).ravel()
    shares = np.repeat(shares, LOADS, axis=0)
    Lab = coarse_Lab(shares * load_ml[:, None], list(range(len(keys))))
    return Recipes(keys, tuple(subsets), np.array(first), shares, load_ml, Lab)


def nearest_rows(
    recipes: Recipes, metric: NDArray[np.float64], target: NDArray[np.float64]
) -> tuple[NDArray[np.float64], NDArray[np.int64]]:
    """The row of every subset that comes closest to a colour.

    Parameters
    ----------
    recipes : Recipes
    metric : ndarray, shape (3, 3)
        `local_metric` of the target.
    target : ndarray, shape (3,)
        CIELAB.

    Returns
    -------
    distance : ndarray, shape (subsets,), float
        Roughly delta E 2000.
    row : ndarray, shape (subsets,), int
    """
    gap = (recipes.Lab - target.astype(np.float32)) @ metric.T.astype(np.float32)
    squared = np.einsum("ij,ij->i", gap, gap)
    best = np.minimum.reduceat(squared, recipes.first)
    ends = np.append(recipes.first[1:], len(squared))
    hit = np.flatnonzero(squared == np.repeat(best, ends - recipes.first))
    row = hit[np.searchsorted(hit, recipes.first)]
    return np.sqrt(best.astype(np.float64)), row

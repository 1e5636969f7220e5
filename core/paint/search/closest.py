"""The closest mix: whatever the box reaches best, by colour difference alone."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour import delta_E_2000
from core.paint.pigment.measured import measured_paints
from core.paint.pigment.pigments import Pigments
from core.paint.search.recipes import COARSE_PARTS, Recipes, nearest_rows, whole_table
from core.paint.search.refine import PART_COST, Refined, refine
from core.progress import ShouldStop, step

SUBSETS = 24
"""How many sets of paints the exact film judges for each colour."""

FAR_OFF = 8.0
"""Delta E 2000 from which the nearest mix is looked for in the whole table as well."""

MOST_LIGHTNESS_WEIGHT = 1.75
"""The greatest S_L of CIEDE2000: 1 + 0.015 * 50^2 / sqrt(20 + 50^2)."""

PAINT_COST = 0.5
"""Delta E 2000 a further paint must gain to be worth opening."""


@dataclass(frozen=True, eq=False)
class Candidates:
    """Mixes found for one target, the simplest good one first.

    Attributes
    ----------
    parts : ndarray, shape (n, paints), int
        By row of the pigments.
    load_ml, delta_E, cost : ndarray, shape (n,), float
        Load, CIEDE2000 to the target, and the difference with what simplicity costs.
    Lab : ndarray, shape (n, 3), float
    """

    parts: NDArray[np.int64]
    load_ml: NDArray[np.float64]
    Lab: NDArray[np.float64]
    delta_E: NDArray[np.float64]
    cost: NDArray[np.float64]


def closest_mixes(
    keys: tuple[str, ...],
    targets: ArrayLike,
    must: frozenset[str] = frozenset(),
    should_stop: ShouldStop | None = None,
    pigments: Pigments | None = None,
) -> tuple[Candidates, ...]:
    """Mixes of one to three paints near each target.

    Parameters
    ----------
    keys : tuple of str
        Rows of the pigments that may be used, without repeats.
    targets : array_like, shape (n, 3), float
        CIELAB.
    must : frozenset of str
        Rows every mix has to hold.
    should_stop : callable, optional
    pigments : Pigments, optional
        The measured paints without it.

    Returns
    -------
    tuple of Candidates, one a target
        Empty candidates when `must` cannot be met.
    """
    targets = np.atleast_2d(np.asarray(targets, dtype=np.float64))
    data = pigments or measured_paints()
    recipes = whole_table(data)
    lacking = np.array([key not in keys for key in data.keys])
    needed = np.array([key in must for key in data.keys])
    allowed = ~(recipes.members & lacking).any(axis=1)
    allowed &= (recipes.members | ~needed).all(axis=1)
    columns: list[tuple[int, ...]] = []
    loads, aims, owner = [], [], []
    for number, target in enumerate(targets):
        step(0.0, None, should_stop)
        L, a, b = target.tolist()
        distance, row = nearest_rows((L, a, b), data)
        distance = np.where(allowed, distance, np.inf)
        for subset in np.argsort(distance)[:SUBSETS].tolist():
            if not np.isfinite(distance[subset]):
                break
            columns.append(recipes.subsets[subset])
            loads.append(recipes.load(int(row[subset])))
            aims.append(target)
            owner.append(number)
    if not columns:
        none = np.zeros((0, len(data.keys)), np.int64)
        empty = Candidates(none, np.zeros(0), np.zeros((0, 3)), np.zeros(0), np.zeros(0))
        return (empty,) * len(targets)
    found = refine(columns, np.array(loads), np.array(aims), pigments=data)
    owners = np.array(owner)[found.start]
    each = []
    for number, target in enumerate(targets):
        mine = owners == number
        if found.delta_E[mine].min() > FAR_OFF:
            found, mine = _with_nearest_row(found, mine, recipes, allowed, target)
        each.append(_sorted(found, mine))
        owners = np.append(owners, np.full(len(found.delta_E) - len(owners), -1))
    return tuple(each)


def _with_nearest_row(
    found: Refined,
    chosen: NDArray[np.bool_],
    recipes: Recipes,
    allowed: NDArray[np.bool_],
    target: NDArray[np.float64],
) -> tuple[Refined, NDArray[np.bool_]]:
    """Add the coarse table's nearest mix: far from a colour its metric no longer points the way."""
    ends = np.append(recipes.first[1:], len(recipes.load_ml))
    usable = np.repeat(allowed, ends - recipes.first)
    # Lightness alone tells most rows to be further off than what was found: CIEDE2000 never
    # divides it by more than this.
    found_gap = found.delta_E[chosen].min()
    usable &= np.abs(recipes.Lab[:, 0] - target[0]) <= MOST_LIGHTNESS_WEIGHT * found_gap
    if not usable.any():
        return found, chosen
    rows = np.flatnonzero(usable)
    row = int(rows[np.argmin(delta_E_2000(recipes.Lab[rows].astype(np.float64), target))])
    shares = recipes.shares[row]
    whole = next(
        n for n in range(1, COARSE_PARTS + 1) if np.allclose(shares * n, np.round(shares * n))
    )
    data = recipes.pigments
    parts = np.zeros((1, len(data.keys)), dtype=np.int64)
    parts[0, list(data.searched)] = np.round(shares * whole).astype(np.int64)
    load = recipes.load_ml[row : row + 1]
    Lab = data.Lab(parts / whole * load[:, None])
    more = Refined(
        np.append(found.start, -1),
        np.concatenate([found.parts, parts]),
        np.append(found.load_ml, load),
        np.concatenate([found.Lab, Lab]),
        np.append(found.delta_E, delta_E_2000(Lab, target)),
    )
    return more, np.append(chosen, True)


def _sorted(found: Refined, chosen: NDArray[np.bool_]) -> Candidates:
    parts, delta_E = found.parts[chosen], found.delta_E[chosen]
    paints = (parts > 0).sum(axis=1)
    cost = delta_E + PAINT_COST * (paints - 1) + PART_COST * parts.sum(axis=1)
    order = np.argsort(cost, kind="stable")
    return Candidates(
        parts[order],
        found.load_ml[chosen][order],
        found.Lab[chosen][order],
        delta_E[order],
        cost[order],
    )

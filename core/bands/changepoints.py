"""Where a profile of colours changes: the exact best cuts for every number of pieces at once."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Cuts:
    """The best way to cut a profile into a number of pieces.

    Attributes
    ----------
    cost : float
        Weighted sum of squared distances from each sample to its piece's mean.
    at : tuple of int
        Sample numbers at which the second, third... piece begins.
    """

    cost: float
    at: tuple[int, ...]


def best_cuts(profile: Floats, weights: Floats, *, most: int, shortest: int = 1) -> dict[int, Cuts]:
    """Cut a profile into 1, 2, ... `most` pieces of constant colour, each way the best there is.

    Parameters
    ----------
    profile : ndarray, shape (n, d), float64
        One colour a sample, in a space where distances mean something.
    weights : ndarray, shape (n,), float64
        How much each sample counts, >= 0, not all 0.
    most : int
        The largest number of pieces wanted.
    shortest : int
        Fewest samples in a piece.

    Returns
    -------
    dict of int to Cuts
        By number of pieces. Numbers that do not fit into n samples are left out.

    Notes
    -----
    Dynamic programming over the last cut: O(most * n^2), ~15 ms for n = 400. Method: Bellman, 1961,
    "On the approximation of curves by line segments using dynamic programming"; the same as
    the `Dynp` search of the ruptures library with an l2 cost, which the tests compare.
    """
    n = len(profile)
    if n == 0 or weights.shape != (n,) or (weights < 0).any() or not weights.sum() > 0:
        raise ValueError("a profile needs samples, and weights that are not all 0")
    cost = _piece_costs(profile, weights)
    start, end = np.arange(n)[:, None], np.arange(1, n + 1)[None, :]
    cost[end - start < shortest] = np.inf
    # best[j]: least cost of samples 0..j in so many pieces; last[k][j]: where the last begins.
    best = cost[0].copy()
    last: list[NDArray[np.intp]] = []
    answer: dict[int, Cuts] = {}
    for pieces in range(1, min(most, n) + 1):
        if pieces > 1:
            total = best[:-1, None] + cost[1:, :]
            begins = np.argmin(total, axis=0)
            best = total[begins, np.arange(n)]
            last.append(begins + 1)
        if not np.isfinite(best[-1]):
            break
        answer[pieces] = Cuts(float(best[-1]), _trace(last, n))
    return answer


def _piece_costs(profile: Floats, weights: Floats) -> Floats:
    """Cost, shape (n, n), of one piece from sample i to sample j, both included."""
    # Centring first keeps the difference of squares from losing digits.
    centred = profile - np.average(profile, axis=0, weights=weights)
    columns = np.column_stack(
        [weights, weights[:, None] * centred, weights * (centred**2).sum(axis=1)]
    )
    sums = np.vstack([np.zeros(columns.shape[1]), np.cumsum(columns, axis=0)])
    weight, *firsts, second = (s[None, 1:] - s[:-1, None] for s in sums.T)
    square = sum(first**2 for first in firsts)
    with np.errstate(divide="ignore", invalid="ignore"):
        cost: Floats = second - np.where(weight > 0, square / weight, 0.0)
    return np.maximum(cost, 0.0)


def _trace(last: list[NDArray[np.intp]], n: int) -> tuple[int, ...]:
    cuts: list[int] = []
    end = n - 1
    for begins in reversed(last):
        cuts.append(int(begins[end]))
        end = cuts[-1] - 1
    return tuple(reversed(cuts))

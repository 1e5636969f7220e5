"""Skylines: for every column of the grid, how many cells from the top are sky."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.bands.grid import Grid

Floats32 = NDArray[np.float32]
Skyline = NDArray[np.intp]
"""Shape (columns,): 0 where nothing is sky, `rows` where the column is sky to the bottom."""

_REACH = 3
"""Cells averaged above and below an edge."""

_DARK_ABOVE = 0.25
"""Weight of an edge with the darker side above: the sky is mostly the brighter one."""


def signed_edges(grid: Grid) -> Floats32:
    """How strong an edge lies above each cell.

    Returns
    -------
    ndarray, shape (rows + 1, columns), float32
        Distance in the working space between the colours above and below; small weight where
        the lower side is the brighter. The first and last row are 0: there is no other side.
    """
    rows = grid.rows
    sums = np.zeros((rows + 1, grid.columns, 3), dtype=np.float32)
    np.cumsum(grid.work, axis=0, out=sums[1:])
    at = np.arange(rows + 1)
    top, bottom = np.maximum(at - _REACH, 0), np.minimum(at + _REACH, rows)
    above = (sums - sums[top]) / np.maximum(at - top, 1)[:, None, None]
    below = (sums[bottom] - sums) / np.maximum(bottom - at, 1)[:, None, None]
    step = above - below
    strength = np.sqrt((step**2).sum(axis=-1))
    strength *= np.where(step[..., 0] > 0, 1.0, _DARK_ABOVE)
    strength[[0, -1]] = 0.0
    return np.asarray(strength, dtype=np.float32)


def best_skyline(gain: Floats32, edges: Floats32, *, stiffness: float) -> Skyline:
    """The skyline with the largest sum of gains and edges, paying for every jump.

    Parameters
    ----------
    gain : ndarray, shape (rows, columns)
        How much better each cell goes with the sky than with the ground.
    edges : ndarray, shape (rows + 1, columns)
        Reward for a skyline at each height.
    stiffness : float
        Price of one cell's difference between neighbouring columns.

    Notes
    -----
    Exact (Viterbi). The cheapest way from any height to any other at a price per cell is two
    running minima, so a column costs O(rows).
    """
    rows, columns = gain.shape
    cost = np.zeros((rows + 1, columns), dtype=np.float64)
    np.cumsum(-2.0 * gain, axis=0, out=cost[1:])
    cost -= edges
    slope = stiffness * np.arange(rows + 1)
    paths = np.empty_like(cost)
    paths[:, 0] = cost[:, 0]
    for column in range(1, columns):
        before = paths[:, column - 1]
        rising = np.minimum.accumulate(before - slope) + slope
        falling = np.minimum.accumulate((before + slope)[::-1])[::-1] - slope
        paths[:, column] = cost[:, column] + np.minimum(rising, falling)
    skyline = np.empty(columns, dtype=np.intp)
    skyline[-1] = np.argmin(paths[:, -1])
    heights = np.arange(rows + 1)
    for column in range(columns - 2, -1, -1):
        jump = stiffness * np.abs(heights - skyline[column + 1])
        skyline[column] = np.argmin(paths[:, column] + jump)
    return skyline


def first_guesses(grid: Grid, edges: Floats32, *, most_rows: int = 3) -> list[Skyline]:
    """Skylines to start a search from: some follow the first strong edge, some are level."""
    guesses = [_first_strong_edge(edges, threshold) for threshold in (6.0, 12.0)]
    rows = edges.mean(axis=1)
    quiet = max(2, grid.rows // 16)
    for _ in range(most_rows):
        at = int(np.argmax(rows))
        if rows[at] <= 0:
            break
        guesses.append(np.full(grid.columns, at, dtype=np.intp))
        rows[max(0, at - quiet) : at + quiet + 1] = 0
    return guesses


def _first_strong_edge(edges: Floats32, threshold: float) -> Skyline:
    strong = edges >= threshold
    first = np.argmax(strong, axis=0)
    skyline: Skyline = np.where(strong.any(axis=0), first, edges.shape[0] - 1)
    return skyline


def is_sky(skyline: Skyline, rows: int) -> NDArray[np.bool_]:
    """The cells above a skyline, shape (rows, columns)."""
    return np.asarray(np.arange(rows)[:, None] < skyline[None, :])

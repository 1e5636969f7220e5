"""Skylines: for every column of the grid, how many cells from the top are sky."""

from __future__ import annotations

from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from core.bands.grid import Grid
from core.colour.working_space import dot

Floats32 = NDArray[np.float32]
Skyline = NDArray[np.intp]
"""Shape (columns,): 0 where nothing is sky, `rows` where the column is sky to the bottom."""

_REACH = 3
"""Cells averaged above and below an edge."""

DARK_ABOVE = 0.25
"""Weight of an edge with the darker side above: the sky is mostly the brighter one."""


def edge_strengths(grid: Grid) -> tuple[Floats32, Floats32]:
    """How strong an edge is above each cell.

    Returns
    -------
    signed : ndarray, shape (rows + 1, columns), float32
        Distance in the working space between the colours above and below; small weight where
        the lower side is the brighter. The first and last row are 0: there is no other side.
    unsigned : ndarray, shape (rows + 1, columns), float32
        The same with full weight everywhere.
    """
    step = np.stack([steps_at(grid, row, _REACH) for row in range(grid.rows + 1)])
    unsigned = np.sqrt(dot(step, step))
    unsigned[[0, -1]] = 0.0
    signed = unsigned * np.where(step[..., 0] > 0, 1.0, DARK_ABOVE)
    return signed.astype(np.float32), unsigned.astype(np.float32)


def steps_at(grid: Grid, skyline: Skyline | int, reach: int) -> Floats32:
    """Mean colour just above minus just below a skyline, shape (columns, 3).

    `reach` is the number of cells averaged on either side; nearer to the top or bottom,
    as many as there are.
    """
    columns = np.arange(grid.columns)
    sums = grid.sums
    top, bottom = np.maximum(skyline - reach, 0), np.minimum(skyline + reach, grid.rows)
    here = sums[skyline, columns]
    above = (here - sums[top, columns]) / np.reshape(np.maximum(skyline - top, 1), (-1, 1))
    below = (sums[bottom, columns] - here) / np.reshape(np.maximum(bottom - skyline, 1), (-1, 1))
    return np.asarray(above - below, dtype=np.float32)


def best_skylines(gains: Floats32, edges: Floats32, *, stiffness: float) -> NDArray[np.intp]:
    """The skylines with the largest sums of gains and edges, paying for every jump.

    Parameters
    ----------
    gains : ndarray, shape (n, rows, columns)
        For each skyline how much better a cell goes with the sky than with the ground.
    edges : ndarray, shape (n, rows + 1, columns), or (1, rows + 1, columns) for all
        Reward for a skyline at each height.
    stiffness : float
        Price of one cell's difference between neighbouring columns.

    Returns
    -------
    ndarray, shape (n, columns), intp

    Notes
    -----
    Exact (Viterbi). The cheapest way from any height to any other at a price per cell is two
    running minima, so a column costs O(rows). All skylines take a step together: a column is
    too little work for NumPy to be called once for each of them.
    """
    n, rows, columns = gains.shape
    # A column of the grid is a row here: what is added up is then together in memory.
    paths = np.zeros((columns, n, rows + 1), dtype=np.float64)
    np.cumsum(-2.0 * gains.transpose(2, 0, 1), axis=2, out=paths[:, :, 1:])
    paths -= edges.transpose(2, 0, 1)
    slope = stiffness * np.arange(rows + 1)
    rising, falling = np.empty((n, rows + 1)), np.empty((n, rows + 1))
    for before, here in pairwise(paths):
        np.minimum.accumulate(np.subtract(before, slope, out=rising), axis=1, out=rising)
        rising += slope
        np.add(before, slope, out=falling)
        backwards = falling[:, ::-1]
        np.minimum.accumulate(backwards, axis=1, out=backwards)
        falling -= slope
        here += np.minimum(rising, falling, out=rising)
    skylines = np.empty((n, columns), dtype=np.intp)
    skylines[:, -1] = np.argmin(paths[-1], axis=1)
    # From a height to every other: the jumps' prices are one row, read from another start.
    jumps = stiffness * np.abs(np.arange(-rows, rows + 1))
    jumps_from = np.lib.stride_tricks.sliding_window_view(jumps, rows + 1)[::-1]
    for column in range(columns - 2, -1, -1):
        total = paths[column] + jumps_from[skylines[:, column + 1]]
        skylines[:, column] = np.argmin(total, axis=1)
    return skylines


def first_guesses(grid: Grid, signed: Floats32, unsigned: Floats32) -> list[Skyline]:
    """Skylines to start a search from: some follow the first strong edge, some are level."""
    guesses = [_first_strong_edge(signed, threshold) for threshold in (6.0, 12.0)]
    quiet = max(2, grid.rows // 16)
    levels: list[int] = []
    for edges, wanted in ((signed, 3), (unsigned, 1)):
        rows = edges.mean(axis=1)
        for level in levels:
            rows[max(0, level - quiet) : level + quiet + 1] = 0
        for _ in range(wanted):
            at = int(np.argmax(rows))
            if rows[at] > 0:
                levels.append(at)
            rows[max(0, at - quiet) : at + quiet + 1] = 0
    return guesses + [np.full(grid.columns, level, dtype=np.intp) for level in levels]


def _first_strong_edge(edges: Floats32, threshold: float) -> Skyline:
    strong = edges >= threshold
    first = np.argmax(strong, axis=0)
    skyline: Skyline = np.where(strong.any(axis=0), first, edges.shape[0] - 1)
    return skyline


def is_sky(skyline: Skyline, rows: int) -> NDArray[np.bool_]:
    """The cells above a skyline, shape (rows, columns)."""
    return np.asarray(np.arange(rows)[:, None] < skyline[None, :])

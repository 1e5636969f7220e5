"""The sky as the eye takes it in from a few steps away: means over a coarse grid, and what
changes from row to row set apart.

Grain and JPEG blocks vanish in the means. A wash that grades downwards is the same in every
column, so the median step from one row to the next holds all of it; without those steps only what
differs inside a row is left: clouds, a glow between them.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.bands.ranks import row_medians
from core.colour.working_space import srgb8_to_W_fast

Floats32 = NDArray[np.float32]
Bools = NDArray[np.bool_]

COLUMNS, ROWS = 96, 128
"""The grid's size at most; a smaller photo gets one cell a pixel."""

_FINER = 3
"""Pixels looked at along each side of a cell, at most."""

_BESIDE = 0.03
"""How far apart two cells compared across an edge are, as a share of the width."""

_LEAST_COVER = 0.5
"""A cell with less sky than this share says nothing."""


@dataclass(frozen=True, eq=False)
class Cells:
    """A sky in coarse cells.

    Attributes
    ----------
    colours : ndarray, shape (rows, columns, 3), float32
        Mean of each cell's sky in the working space.
    steps : ndarray, shape (rows, 3), float32
        What the sky changes by from the top down to each row, the same for all columns.
    level : ndarray, shape (rows, columns, 3), float32
        `colours` without `steps`.
    weights : ndarray, shape (rows, columns), float32
        Share of each cell that is sky; 0 where that is too little.
    beside, below : int
        How many cells across and down make a short distance.
    """

    colours: Floats32
    steps: Floats32
    level: Floats32
    weights: Floats32
    beside: int
    below: int

    @property
    def rows(self) -> int:
        """Cells from top to bottom."""
        return int(self.weights.shape[0])

    def rows_between(self, top: float, bottom: float) -> tuple[int, int]:
        """First row, and the one after the last, between two heights: at least one.

        Parameters
        ----------
        top, bottom : float
            Fractions of the photo's height.
        """
        first = min(max(round(top * self.rows), 0), self.rows - 1)
        return first, min(max(round(bottom * self.rows), first + 1), self.rows)

    def steps_at(self, y: NDArray[np.floating]) -> Floats32:
        """`steps` at heights, shape (n,), as fractions of the photo's height; shape (n, 3)."""
        row = np.clip(y * self.rows - 0.5, 0, self.rows - 1)
        low = row.astype(np.intp)
        high = np.minimum(low + 1, self.rows - 1)
        share = (row - low)[:, None].astype(np.float32)
        at: Floats32 = self.steps[low] * (1 - share) + self.steps[high] * share
        return at


def make_cells(pixels: NDArray[np.uint8], sky: Bools) -> Cells:
    """Sum a photo up.

    Parameters
    ----------
    pixels : ndarray, shape (h, w, 3), uint8
        sRGB.
    sky : ndarray, shape (h, w), bool
        The usable pixels, as in `Proposal.sky`.
    """
    height, width = sky.shape
    rows, columns = min(height, ROWS), min(width, COLUMNS)
    down, across = _evenly(height, rows * _FINER), _evenly(width, columns * _FINER)
    at = np.ix_(down, across)
    seen = sky[at].astype(np.float32)
    work = srgb8_to_W_fast(pixels[at]) * seen[..., None]
    row_starts = np.arange(rows) * len(down) // rows
    column_starts = np.arange(columns) * len(across) // columns

    def summed(plane: Floats32) -> Floats32:
        by_row = np.add.reduceat(plane, row_starts, axis=0)
        return np.asarray(np.add.reduceat(by_row, column_starts, axis=1), dtype=np.float32)

    counts = summed(seen)
    colours = (summed(work) / np.maximum(counts, 1.0)[..., None]).astype(np.float32)
    cover = counts / summed(np.ones_like(seen))
    weights = np.where(cover >= _LEAST_COVER, cover, 0).astype(np.float32)
    steps = _steps(colours, weights > 0)
    beside = max(1, round(_BESIDE * columns))
    below = max(1, round(_BESIDE * width / height * rows))
    return Cells(colours, steps, colours - steps[:, None], weights, beside, below)


def _steps(colours: Floats32, seen: Bools) -> Floats32:
    """What most columns change by from the top down to each row."""
    change = np.diff(colours, axis=0)
    usual = row_medians(change, seen[1:] & seen[:-1])
    steps = np.zeros((len(colours), 3), dtype=np.float32)
    np.cumsum(usual, axis=0, out=steps[1:])
    return steps


def _evenly(length: int, most: int) -> NDArray[np.intp]:
    """At most `most` numbers spread evenly over 0..length."""
    count = min(length, most)
    return ((np.arange(count) + 0.5) * length / count).astype(np.intp)

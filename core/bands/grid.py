"""The small picture on which the sky is searched: colours and texture on a coarse grid."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import srgb8_to_W_fast
from core.photo import Photo

Floats32 = NDArray[np.float32]

COLUMNS, ROWS = 144, 144
"""The grid's size, whatever the photo's shape; smaller photos get one cell a pixel."""

_FINER = 3
"""Pixels looked at along each side of a cell, at most: texture needs several."""


@dataclass(frozen=True)
class Grid:
    """A photo in coarse cells.

    Attributes
    ----------
    work : ndarray, shape (rows, columns, 3), float32
        Mean colour of each cell in the working space.
    texture : ndarray, shape (rows, columns), float32
        Mean step of lightness between pixels inside the cell.
    opaque : ndarray, shape (rows, columns), bool
        False where most of the cell is transparent.
    fine : ndarray, shape (fine rows, fine columns, 3), float32
        The pixels looked at, in the working space: up to three along each side of a cell.
    fine_opaque : ndarray, shape (fine rows, fine columns), bool
    sums : ndarray, shape (rows + 1, columns, 3), float32
        Sums of `work` over the cells above.
    """

    work: Floats32
    texture: Floats32
    opaque: NDArray[np.bool_]
    fine: Floats32
    fine_opaque: NDArray[np.bool_]
    sums: Floats32

    @property
    def rows(self) -> int:
        """Cells from top to bottom."""
        return int(self.work.shape[0])

    @property
    def columns(self) -> int:
        """Cells from left to right."""
        return int(self.work.shape[1])


def make_grid(photo: Photo) -> Grid:
    """The photo in at most `ROWS` x `COLUMNS` cells."""
    height, width = photo.pixels.shape[:2]
    down = _evenly(height, ROWS * _FINER)
    across = _evenly(width, COLUMNS * _FINER)
    work = srgb8_to_W_fast(photo.pixels[np.ix_(down, across)])
    rows = _starts(len(down), ROWS)
    columns = _starts(len(across), COLUMNS)
    light = work[..., 0]
    steps = np.zeros_like(light)
    steps[:, 1:] += np.abs(np.diff(light, axis=1))
    steps[1:, :] += np.abs(np.diff(light, axis=0))
    cells = [_means(plane, rows, columns) for plane in np.moveaxis(work, -1, 0)]
    if photo.opaque is None:
        fine_opaque = np.ones(light.shape, dtype=bool)
    else:
        fine_opaque = photo.opaque[np.ix_(down, across)]
    opaque = _means(fine_opaque.astype(np.float32), rows, columns) > 0.5
    texture = _means(steps, rows, columns)
    cell_work = np.stack(cells, axis=-1)
    sums = np.pad(np.cumsum(cell_work, axis=0), ((1, 0), (0, 0), (0, 0)))
    return Grid(cell_work, texture, opaque, work, fine_opaque, sums)


def _evenly(length: int, most: int) -> NDArray[np.intp]:
    """At most `most` numbers spread evenly over 0..length."""
    count = min(length, most)
    return ((np.arange(count) + 0.5) * length / count).astype(np.intp)


def _starts(length: int, most: int) -> NDArray[np.intp]:
    """Where each of at most `most` even pieces of 0..length begins."""
    count = min(length, most)
    return (np.arange(count) * length // count).astype(np.intp)


def _means(plane: Floats32, rows: NDArray[np.intp], columns: NDArray[np.intp]) -> Floats32:
    sums = np.add.reduceat(np.add.reduceat(plane, rows, axis=0), columns, axis=1)
    tall = np.diff(np.append(rows, plane.shape[0]))
    wide = np.diff(np.append(columns, plane.shape[1]))
    means: Floats32 = (sums / (tall[:, None] * wide)).astype(np.float32)
    return means

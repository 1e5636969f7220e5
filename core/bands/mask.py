"""Which pixels a reading may use: the sky, without what stands in front of it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.bands.grid import Grid
from core.bands.skyline import Skyline

Bools = NDArray[np.bool_]

LEAST_COVERAGE = 0.08
"""A row with less sky than this share tells nothing of the sky."""

_FAR = 4.5
"""Robust standard deviations from its row's median at which a pixel is something else."""

_LEAST_SIGMA = 4.0
"""Working-space units: in a flat sky grain and wisps of cloud would look far."""


def fine_mask(grid: Grid, skyline: Skyline) -> Bools:
    """The usable pixels among the grid's fine ones.

    Left out: transparent pixels, everything below the skyline, and what stands out darker or
    more intense than its row (a kite, a mast, branches). Clouds stay: they are sky. Below
    the last row with any sky all pixels count: whoever drags the horizon down there means it.
    """
    rows, columns = grid.fine.shape[:2]
    per_row, per_column = rows / grid.rows, columns / grid.columns
    # One cell of margin: the skyline is no finer than the grid.
    ends = np.where(skyline < grid.rows, np.maximum(skyline - 1, 0), skyline) * per_row
    # Straight from column to column: steps would show in the veil.
    middles = (np.arange(grid.columns) + 0.5) * per_column - 0.5
    end_of_column = np.interp(np.arange(columns), middles, ends)
    above = np.arange(rows)[:, None] + 0.5 < end_of_column[None, :]
    mask: Bools = above & grid.fine_opaque
    covered = np.flatnonzero(mask.mean(axis=1) >= LEAST_COVERAGE)
    mask &= ~_stands_out(grid.fine, mask)
    beyond = int(covered[-1]) + 1 if len(covered) else 0
    mask[beyond:] = grid.fine_opaque[beyond:]
    return mask


def _stands_out(fine: NDArray[np.float32], mask: Bools) -> Bools:
    middle = row_medians(fine, mask)[:, None, :]
    away = fine - middle
    distance = np.sqrt((away**2).sum(axis=-1))
    sigma = 1.4826 * row_medians(distance[..., None], mask)
    far = distance > _FAR * np.maximum(sigma, _LEAST_SIGMA)
    lighter = away[..., 0] > 0
    # Twice the working space's a and b: a kite's chroma is far above a cloud's.
    duller = np.hypot(fine[..., 1], fine[..., 2]) < np.hypot(middle[..., 1], middle[..., 2]) + 6
    return np.asarray(far & ~(lighter & duller))


def row_medians(values: NDArray[np.float32], mask: Bools) -> NDArray[np.float32]:
    """Median of each row over the mask.

    Parameters
    ----------
    values : ndarray, shape (rows, columns, d)
    mask : ndarray, shape (rows, columns), bool

    Returns
    -------
    ndarray, shape (rows, d)
        0 for a row without any pixel in the mask.
    """
    rows, columns, d = values.shape
    counts = mask.sum(axis=1)
    low, high = np.maximum(counts - 1, 0) // 2, np.minimum(counts // 2, columns - 1)
    medians = np.empty((rows, d), dtype=np.float32)
    at = np.arange(rows)
    for channel in range(d):
        plane = np.where(mask, values[..., channel], np.float32(np.inf))
        plane.sort(axis=1)
        medians[:, channel] = (plane[at, low] + plane[at, high]) / 2
    medians[counts == 0] = 0.0
    return medians


def whole_mask(fine: Bools, height: int, width: int, opaque: Bools | None) -> Bools:
    """A fine mask at the size of the photo's working copy."""
    rows, columns = fine.shape
    down = np.arange(height) * rows // height
    across = np.arange(width) * columns // width
    mask: Bools = fine[down][:, across]
    if opaque is not None:
        mask &= opaque
    mask.flags.writeable = False
    return mask

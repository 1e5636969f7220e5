"""Which pixels a reading may use: the sky, without what stands in front of it."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.bands.grid import Grid
from core.bands.ranks import row_medians
from core.bands.skyline import Skyline
from core.colour.working_space import dot

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
    more intense than its row (a kite, a mast, branches). Clouds stay, and so does a glow between
    dark ones: they are sky. Below the last row with any sky all pixels count: whoever drags the
    horizon down there means it.
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
    far = _stands_out(grid.fine, mask)
    mask &= ~far | _clouds(far, mask)
    beyond = int(covered[-1]) + 1 if len(covered) else 0
    mask[beyond:] = grid.fine_opaque[beyond:]
    return mask


def _stands_out(fine: NDArray[np.float32], mask: Bools) -> Bools:
    middle = row_medians(fine, mask)[:, None, :]
    away = fine - middle
    distance = np.sqrt(dot(away, away))
    sigma = 1.4826 * row_medians(distance[..., None], mask)
    far = distance > _FAR * np.maximum(sigma, _LEAST_SIGMA)
    lighter = away[..., 0] > 0
    # Twice the working space's a and b: a kite's chroma is far above a cloud's.
    duller = np.hypot(fine[..., 1], fine[..., 2]) < np.hypot(middle[..., 1], middle[..., 2]) + 6
    return np.asarray(far & ~(lighter & duller))


_CLOUD_SHARE = 0.08
"""Of its rows, that whatever stands out must cover to be clouds: kites and birds cover less."""

_CLOUD_ROWS = 0.04
"""Rows, as a share of the height, over which that is counted."""

_CELL = 3
"""Fine pixels along each side of the cells on which it is seen what hangs together."""


def _clouds(far: Bools, mask: Bools) -> Bools:
    """Of what stands out, that which floats free of the land and covers much of its rows."""
    rows, columns = far.shape
    down, across = np.arange(0, rows, _CELL), np.arange(0, columns, _CELL)

    def share(plane: Bools) -> NDArray[np.float32]:
        sums = np.add.reduceat(plane.astype(np.float32), down, axis=0)
        return np.asarray(np.add.reduceat(sums, across, axis=1), dtype=np.float32)

    here = share(far) > 0
    if not here.any():
        return np.zeros_like(far)
    # What hangs together with the land, over a gap of one cell too, stands on it.
    held = _grown(share(~mask) > 0, 2) & here
    while True:
        more = _grown(held, 2) & here
        if np.array_equal(more, held):
            break
        held = more
    floating = here & ~held
    reach = max(1, round(_CLOUD_ROWS * len(down)))
    covered = np.convolve(
        floating.mean(axis=1), np.full(2 * reach + 1, 1 / (2 * reach + 1)), "same"
    )
    kept = _grown(floating & (covered >= _CLOUD_SHARE)[:, None], 1)
    whole = np.repeat(np.repeat(kept, _CELL, axis=0), _CELL, axis=1)
    return np.asarray(whole[:rows, :columns] & far)


def _grown(cells: Bools, by: int) -> Bools:
    """Cells with all those within `by` of them, across, down and aslant."""
    grown = cells
    for axis in (0, 1):
        wide = np.pad(grown, [(by, by) if a == axis else (0, 0) for a in (0, 1)])
        length = cells.shape[axis]
        parts = [wide.take(range(k, k + length), axis=axis) for k in range(2 * by + 1)]
        grown = np.logical_or.reduce(parts)
    return np.asarray(grown)


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

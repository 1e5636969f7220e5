"""How much paint is at each place of a straightened sheet."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats, averaged

_ROWS = 256


def density_of(painted: NDArray[np.float32]) -> Floats:
    """Optical density (256, columns), over the three channels together.

    `painted` (h, w, 3) is linear light over paper white.
    """
    red, green, blue = np.moveaxis(density_map(painted, _ROWS), -1, 0)
    return np.asarray(red + green + blue)


def density_map(painted: NDArray[np.floating], rows: int) -> Floats:
    """Optical density (rows, columns, 3), natural log, of linear light (h, w, 3)."""
    small = _smaller(painted.astype(np.float32, copy=False), rows)
    return np.asarray(-np.log(np.clip(small.astype(np.float64), 0.004, 1.0)))


def _smaller(picture: NDArray[np.float32], rows: int) -> NDArray[np.float32]:
    cut = averaged(picture, max(1, len(picture) // rows))
    h, w = cut.shape[:2]
    if h == rows:
        return cut
    return _stretched(_stretched(cut, rows, 0), max(1, round(w * rows / h)), 1)


def _stretched(picture: NDArray[np.float32], size: int, axis: int) -> NDArray[np.float32]:
    """`picture` with `size` rows (axis 0) or columns (1), linear between its own; the first and
    last stay what they are, as in `scipy.ndimage.zoom` of order 1, which does both axes and the
    channels at once and takes three times as long."""
    last = picture.shape[axis] - 1
    at = np.linspace(0, last, size)
    low = at.astype(np.intp)
    share = (at - low).astype(np.float32)[:, None, None]
    share = share if axis == 0 else share.swapaxes(0, 1)
    before = picture.take(low, axis=axis)
    after = picture.take(np.minimum(low + 1, last), axis=axis)
    return np.asarray(before + (after - before) * share)

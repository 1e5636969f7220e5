"""How much paint is at each place of a straightened sheet."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats

_ROWS = 256


def density_of(painted: NDArray[np.float32]) -> Floats:
    """Optical density (256, columns), over the three channels together.

    `painted` (h, w, 3) is linear light over paper white.
    """
    return np.asarray(density_map(painted, _ROWS).sum(axis=-1))


def density_map(painted: NDArray[np.floating], rows: int) -> Floats:
    """Optical density (rows, columns, 3), natural log, of linear light (h, w, 3)."""
    small = _smaller(painted.astype(np.float32, copy=False), rows)
    return np.asarray(-np.log(np.clip(small.astype(np.float64), 0.004, 1.0)))


def _smaller(picture: NDArray[np.float32], rows: int) -> NDArray[np.float32]:
    from scipy.ndimage import zoom  # deferred: start-up time

    block = max(1, len(picture) // rows)
    h, w = picture.shape[0] // block, picture.shape[1] // block
    cut = picture[: h * block, : w * block].reshape(h, block, w, block, 3).mean(axis=(1, 3))
    if h == rows:
        return np.asarray(cut)
    return np.asarray(zoom(cut, (rows / h, rows / h, 1), order=1))

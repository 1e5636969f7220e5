"""How far a large picture is reduced, and the reduction itself, in linear light."""

from __future__ import annotations

from math import ceil, sqrt

import numpy as np
from numpy.typing import NDArray

_NARROW = 4


def wanted_factor(
    width: int, height: int, max_pixels: int, factors: tuple[int, ...] | None = None
) -> int:
    """By which whole number a picture is divided to have at most `max_pixels`.

    A narrow panorama may keep twice as many, since its rows decide how exactly a line can be.

    Parameters
    ----------
    factors : tuple of int or None
        The factors a decoder offers, ascending; the last is taken when none suffices.

    >>> wanted_factor(6000, 4000, 3_500_000, (1, 2, 4, 8))
    4
    """
    offered = factors or range(1, ceil(sqrt(width * height / max_pixels)) + 2)
    enough = [factor for factor in offered if width * height <= max_pixels * factor**2]
    factor = enough[0] if enough else offered[-1]
    finer = [f for f in offered if f < factor and width * height <= 2 * max_pixels * f**2]
    if finer and max(width, height) >= _NARROW * min(width, height):
        return finer[0]
    return factor


def block_sums(rows: NDArray[np.float32], factor: int) -> NDArray[np.float32]:
    """Sums over blocks of `factor` rows and columns; blocks at the edges may hold fewer.

    Parameters
    ----------
    rows : ndarray, shape (n, width, channels), float32
    factor : int

    Returns
    -------
    ndarray, shape (ceil(n / factor), ceil(width / factor), channels), float32
    """
    if factor == 1:
        return rows
    rows = _padded(rows, 0, factor)
    down = sum((rows[i::factor] for i in range(1, factor)), rows[0::factor])
    down = _padded(down, 1, factor)
    return sum((down[:, i::factor] for i in range(1, factor)), down[:, 0::factor])


def block_sizes(rows: int, width: int, factor: int) -> NDArray[np.float32]:
    """How many pixels each block holds, shape (blocks down, blocks across, 1)."""
    down = np.minimum(factor, rows - np.arange(0, rows, factor))
    across = np.minimum(factor, width - np.arange(0, width, factor))
    return (down[:, np.newaxis] * across)[..., np.newaxis].astype(np.float32)


def _padded(array: NDArray[np.float32], axis: int, factor: int) -> NDArray[np.float32]:
    missing = -array.shape[axis] % factor
    if missing == 0:
        return array
    widths = [(0, missing if i == axis else 0) for i in range(array.ndim)]
    return np.pad(array, widths)

"""A photo worked out a few rows at a time.

The arrays of a whole photo are tens of megabytes, and every step over them waits for the memory;
a few rows stay in the processor's cache. What comes out is the same, bit for bit.
"""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import map_coordinates

Floats = NDArray[np.float64]

ROWS = 24


def strips(height: int) -> Iterator[slice]:
    """The rows of a picture, `ROWS` at a time, from the top."""
    for top in range(0, height, ROWS):
        yield slice(top, min(height, top + ROWS))


def sheet_places(
    inverse: Floats, rows: slice, size: tuple[int, int], k: float
) -> tuple[Floats, Floats]:
    """Where on the flat sheet each pixel of some rows of the photo looks: x and y, (rows, w).

    Parameters
    ----------
    inverse : (3, 3) float64
        From the photo, without its lens, to the sheet.
    size : (width, height) of the whole photo
    k : float
        The lens, as in `simulator.camera.undistort`.
    """
    width, half = size[0], np.hypot(*size) / 2
    centre_x, centre_y = size[0] / 2, size[1] / 2
    across = (np.arange(width)[None] + 0.5 - centre_x) / half
    down = (np.arange(rows.start, rows.stop)[:, None] + 0.5 - centre_y) / half
    stretch = half * (1 + k * (across**2 + down**2))
    x, y = centre_x + across * stretch, centre_y + down * stretch
    u, v, t = (row[0] * x + row[1] * y + row[2] for row in inverse)
    return u / t, v / t


def cover_of(x: Floats, y: Floats, width: float, height: float, scale: float) -> Floats:
    """Share of each pixel that a sheet of this size covers, seen at its places x and y."""
    cover = np.clip(x * scale + 0.5, 0, 1)
    for inside in (width - x, y, height - y):
        inside = inside * scale
        inside += 0.5
        cover *= np.clip(inside, 0, 1, out=inside)
    return cover


def lay(picture: Floats, layers: list[Floats], x: Floats, y: Floats, cover: Floats) -> None:
    """Lay a sheet over rows of a picture, in place; beside the sheet nothing is looked up.

    Parameters
    ----------
    picture : (rows, w, 3) float64, contiguous
    layers : (H, W) float64 a channel
        The sheet.
    """
    on = np.flatnonzero(cover)
    if not len(on):
        return
    at = np.stack([y.ravel()[on], x.ravel()[on]])
    share = cover.ravel()[on]
    pixels = picture.reshape(-1, 3)
    for c, layer in enumerate(layers):
        seen = map_coordinates(layer, at, order=1, mode="nearest")
        ground = pixels[on, c]
        seen -= ground
        seen *= share
        seen += ground
        pixels[on, c] = seen


def softened(picture: Floats, rows: slice, sigma: float) -> Floats:
    """Some rows of `gaussian_filter(picture, (sigma, sigma, 0))`, for a radius of two pixels."""
    if int(4 * sigma + 0.5) != 2:
        raise ValueError(f"a radius of two pixels is meant, not a deviation of {sigma}")
    weights = np.exp(-0.5 / (sigma * sigma) * np.arange(-2, 3) ** 2)
    far, near, own = (weights / weights.sum())[:3]
    high = len(picture)
    reach = np.arange(rows.start - 2, rows.stop + 2)
    reach = np.where(reach < 0, -1 - reach, np.where(reach >= high, 2 * high - 1 - reach, reach))
    tall = picture[reach]
    mixed = np.empty((len(reach) - 4, picture.shape[1] + 4, 3))
    _weigh(mixed[:, 2:-2], [tall[k : len(tall) - 4 + k] for k in range(5)], (far, near, own))
    mixed[:, 1], mixed[:, 0] = mixed[:, 2], mixed[:, 3]
    mixed[:, -2], mixed[:, -1] = mixed[:, -3], mixed[:, -4]
    wide = picture.shape[1]
    result = np.empty((len(mixed), wide, 3))
    _weigh(result, [mixed[:, k : wide + k] for k in range(5)], (far, near, own))
    return result


def _weigh(into: Floats, taps: list[Any], weights: tuple[float, float, float]) -> None:
    """The middle tap first, then pairs from outside in, as SciPy adds them."""
    far, near, own = weights
    np.multiply(taps[2], own, out=into)
    for a, b, weight in ((taps[0], taps[4], far), (taps[1], taps[3], near)):
        pair = a + b
        pair *= weight
        into += pair

"""A photo worked out a few rows at a time.

The arrays of a whole photo are tens of megabytes, and every step over them waits for the memory;
a few rows stay in the processor's cache. What comes out is the same, bit for bit.
"""

from __future__ import annotations

from collections.abc import Iterator

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
    """Some rows of `gaussian_filter(picture, (sigma, sigma, 0))`, added up as SciPy does."""
    reach = int(4 * sigma + 0.5)
    weights = np.exp(-0.5 / (sigma * sigma) * np.arange(-reach, reach + 1) ** 2)
    weights /= weights.sum()
    high, wide = picture.shape[:2]
    near = np.arange(rows.start - reach, rows.stop + reach)
    near = np.where(near < 0, -1 - near, np.where(near >= high, 2 * high - 1 - near, near))
    tall = picture[near]
    mixed = np.empty((len(near) - 2 * reach, wide + 2 * reach, 3))
    inner = mixed[:, reach : reach + wide]
    _weigh(inner, [tall[k : k + len(mixed)] for k in range(2 * reach + 1)], weights)
    mixed[:, :reach] = inner[:, reach - 1 :: -1]
    mixed[:, reach + wide :] = inner[:, : wide - reach - 1 : -1]
    result = np.empty((len(mixed), wide, 3))
    _weigh(result, [mixed[:, k : k + wide] for k in range(2 * reach + 1)], weights)
    return result


def _weigh(into: Floats, taps: list[Floats], weights: Floats) -> None:
    """The middle tap first, then pairs from outside in."""
    middle = len(taps) // 2
    np.multiply(taps[middle], weights[middle], out=into)
    for k in range(middle):
        pair = taps[k] + taps[-1 - k]
        pair *= weights[k]
        into += pair

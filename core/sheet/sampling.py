"""Colours of a picture between its pixels."""

from __future__ import annotations

from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats

_AT_ONCE = 1 << 13  # places at a time: what they need stays in the processor's cache

Number = TypeVar("Number", np.float32, np.float64)


def sampled(picture: NDArray[Number], at: Floats) -> NDArray[Number]:
    """Bilinear interpolation of all channels at once; what is outside repeats the edge.

    Parameters
    ----------
    picture : (h, w, c)
    at : (..., 2) float64
        x, y; 0, 0 is the middle of the first pixel.

    Returns
    -------
    (..., c)
        What `scipy.ndimage.map_coordinates` gives a channel at a time, order 1, "nearest".
    """
    h, w, channels = picture.shape
    flat = picture.reshape(-1, channels)
    places = at.reshape(-1, 2)
    right, below = min(1, w - 1), w if h > 1 else 0
    found = np.empty((len(places), channels), dtype=picture.dtype)
    for start in range(0, len(places), _AT_ONCE):
        part = slice(start, start + _AT_ONCE)
        left, across = _between(places[part, 0], w, picture.dtype)
        top, down = _between(places[part, 1], h, picture.dtype)
        first = (top * w + left).astype(np.intp)
        # As one long row: numpy takes several times as long for many rows of three.
        a, b, c, d = (
            flat.take(corner, axis=0, mode="clip").reshape(-1)  # none is outside
            for corner in (first, first + right, first + below, first + (below + right))
        )
        across, down = np.repeat(across, channels), np.repeat(down, channels)
        upper, lower = _mixed(a, b, across), _mixed(c, d, across)
        found[part] = _mixed(upper, lower, down).reshape(-1, channels)
    return found.reshape(*at.shape[:-1], channels)


def _between(
    at: Floats, size: int, dtype: np.dtype[Number]
) -> tuple[NDArray[np.int32], NDArray[Number]]:
    """The pixel at or before each place, and how far the place is on the way to the next."""
    inside = np.minimum(np.maximum(at, 0), size - 1)
    first = np.minimum(inside.astype(np.int32), max(size - 2, 0))
    return first, (inside - first).astype(dtype)


def _mixed(one: NDArray[Number], other: NDArray[Number], share: NDArray[Number]) -> NDArray[Number]:
    other -= one  # in place: nobody else's
    other *= share
    other += one
    return other

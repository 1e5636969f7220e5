"""Colours of a picture between its pixels."""

from __future__ import annotations

from typing import TypeVar

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats

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
    x = np.clip(at[..., 0], 0, w - 1)
    y = np.clip(at[..., 1], 0, h - 1)
    left = np.minimum(x.astype(np.intp), max(w - 2, 0))
    top = np.minimum(y.astype(np.intp), max(h - 2, 0))
    across = (x - left)[..., None].astype(picture.dtype)
    down = (y - top)[..., None].astype(picture.dtype)
    first = top * w + left
    right, below = min(1, w - 1), w if h > 1 else 0

    def between(
        one: NDArray[Number], other: NDArray[Number], share: NDArray[Number]
    ) -> NDArray[Number]:
        other -= one  # in place: these arrays are large, and nobody else's
        other *= share
        other += one
        return other

    def row(start: NDArray[np.intp]) -> NDArray[Number]:
        return between(flat.take(start, axis=0), flat.take(start + right, axis=0), across)

    return between(row(first), row(first + below), down)

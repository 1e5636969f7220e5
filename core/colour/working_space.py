"""The working colour space of the sheet check: Oklab times 100 with a and b doubled.

Distances in it follow what an eye notices well enough to find edges and lines, and cost little;
what is said to a user is computed in CIELAB and Munsell instead.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import NDArray

from core.colour import linear_to_Oklab, srgb8_to_linear

Floats = NDArray[np.float64]

_SCALE = np.array([100.0, 200.0, 200.0])

# Björn Ottosson, 2020, "A perceptual color space for image processing": the inverse matrices.
_OKLAB_TO_ROOTS = np.array(
    [
        [1.0, 0.3963377774, 0.2158037573],
        [1.0, -0.1055613458, -0.0638541728],
        [1.0, -0.0894841775, -1.2914855480],
    ]
)
_LMS_TO_LINEAR = np.array(
    [
        [4.0767416621, -3.3077115913, 0.2309699292],
        [-1.2684380046, 2.6097574011, -0.3413193965],
        [-0.0041960863, -0.7034186147, 1.7076147010],
    ]
)


def linear_to_W(linear: Floats) -> Floats:
    """Working colours (..., 3) of linear light (..., 3)."""
    return np.asarray(linear_to_Oklab(np.clip(linear, 0.0, None)) * _SCALE, dtype=np.float64)


def W_to_linear(W: Floats) -> Floats:
    """Linear light (..., 3) of working colours (..., 3): `linear_to_W` undone."""
    roots = (W / _SCALE) @ _OKLAB_TO_ROOTS.T
    return np.asarray((roots**3) @ _LMS_TO_LINEAR.T, dtype=np.float64)


def srgb8_to_W(pixels: NDArray[np.uint8]) -> Floats:
    """Working colours (..., 3) of 8-bit sRGB (..., 3)."""
    return linear_to_W(srgb8_to_linear(pixels).astype(np.float64))


def thinned(picture: NDArray[Any], rows: int) -> NDArray[Any]:
    """Every n-th row and column of a picture, so that at most about `rows` rows remain.

    Sheets and skies are summed up by medians, which need no averaging first.
    """
    n = max(1, round(len(picture) / rows))
    return picture[n // 2 :: n, n // 2 :: n] if min(picture.shape[:2]) > n else picture


def shrunk(linear: NDArray[np.float32], longest: int) -> tuple[NDArray[np.float32], int]:
    """`linear` (h, w, 3) averaged over whole blocks so that no side exceeds `longest` much.

    Returns
    -------
    ndarray, int
        The smaller picture and the block size; rows and columns that fill no block are cut off.
    """
    block = max(1, -(-max(linear.shape[:2]) // longest))
    if block == 1:
        return linear, 1
    h, w = linear.shape[0] // block, linear.shape[1] // block
    if h == 0 or w == 0:
        return linear, 1
    cut = linear[: h * block, : w * block]
    return cut.reshape(h, block, w, block, -1).mean(axis=(1, 3), dtype=np.float32), block

"""The working colour space of bands and sheets: Oklab times 100 with a and b doubled.

Doubling makes a step of hue or intensity weigh about as much as a step of lightness; one unit is
then roughly one just visible step. Distances in it follow what an eye notices well enough to find
bands, edges and lines, and cost little; what is said to a user is computed in CIELAB and Munsell.
"""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour.lab import (
    LINEAR_TO_LMS,
    LINEAR_TO_XYZ,
    LMS_TO_OKLAB,
    XYZ_to_Lab,
    linear_to_Oklab,
)
from core.colour.srgb import srgb8_to_linear

Floats = NDArray[np.float64]
Floats32 = NDArray[np.float32]

_OKLAB_TO_W = np.array([100.0, 200.0, 200.0])
_AT_ONCE = 1 << 13  # pixels converted at a time: what they need stays in the processor's cache
_WEIGHTS = np.tile(_OKLAB_TO_W, _AT_ONCE)
_LMS_TO_W = LMS_TO_OKLAB * _OKLAB_TO_W[:, None]
_W_TO_LMS = np.linalg.inv(_LMS_TO_W)
_LMS_TO_LINEAR = np.linalg.inv(LINEAR_TO_LMS)
_LMS_TO_XYZ = LINEAR_TO_XYZ @ _LMS_TO_LINEAR

# numpy's cube root takes 25 ns a number, this table 4 ns. The colour is off by 0.025 dE00 at most,
# just above black (measured against scikit-image).
_STEPS = (1 << 18) - 1
_CBRT = np.cbrt(np.arange(_STEPS + 1) / _STEPS).astype(np.float32)
_LINEAR_TO_STEPS = (LINEAR_TO_LMS * _STEPS).astype(np.float32)


def linear_to_W(linear: ArrayLike) -> Floats:
    """Working colours, shape (..., 3), of linear light, shape (..., 3); below 0 counts as 0."""
    light = np.asarray(linear)
    pixels = light.reshape(-1, 3)
    W = np.empty(pixels.shape)
    for start in range(0, len(pixels), _AT_ONCE):
        part = slice(start, start + _AT_ONCE)
        W[part] = linear_to_Oklab(np.maximum(pixels[part], 0.0, dtype=np.float64))
        # As one long row: numpy takes five times as long for many rows of three.
        flat = W[part].reshape(-1)
        flat *= _WEIGHTS[: len(flat)]
    return W.reshape(light.shape)


def linear_to_W_planes(linear: NDArray[np.floating]) -> Floats:
    """`linear_to_W` of (..., 3) with its channels first, (3, ...), in two thirds of the time."""
    pixels = linear.reshape(-1, 3)
    W = np.empty((3, len(pixels)))
    light = np.empty((3, _AT_ONCE))
    for start in range(0, len(pixels), _AT_ONCE):
        part = pixels[start : start + _AT_ONCE].T
        lms = LINEAR_TO_LMS @ np.maximum(part, 0.0, out=light[:, : part.shape[1]])
        oklab = LMS_TO_OKLAB @ np.cbrt(lms, out=lms)
        np.multiply(oklab, _OKLAB_TO_W[:, None], out=W[:, start : start + _AT_ONCE])
    return W.reshape(3, *linear.shape[:-1])


def W_to_linear(W: ArrayLike) -> Floats:
    """Linear light, shape (..., 3), of working colours, shape (..., 3)."""
    return np.asarray(_W_to_LMS(W) @ _LMS_TO_LINEAR.T, dtype=np.float64)


def W_to_Lab(W: ArrayLike) -> Floats:
    """CIELAB (D65), shape (..., 3), of working colours, shape (..., 3)."""
    return XYZ_to_Lab(_W_to_LMS(W) @ _LMS_TO_XYZ.T)


def srgb8_to_W(rgb8: NDArray[np.uint8]) -> Floats:
    """Working colours, shape (..., 3), of 8-bit sRGB, shape (..., 3)."""
    return linear_to_W(srgb8_to_linear(rgb8))


def srgb8_to_W_fast(rgb8: NDArray[np.uint8]) -> Floats32:
    """`srgb8_to_W` in float32 and from a table, for whole photos."""
    linear = srgb8_to_linear(rgb8).reshape(-1, 3)
    steps = linear @ _LINEAR_TO_STEPS.T
    steps += 0.5
    np.clip(steps, 0, _STEPS, out=steps)
    root = _CBRT[steps.astype(np.int32)]
    W: Floats32 = root @ _LMS_TO_W.astype(np.float32).T
    return W.reshape(rgb8.shape)


def _W_to_LMS(W: ArrayLike) -> Floats:
    lms: Floats = (np.asarray(W, dtype=np.float64) @ _W_TO_LMS.T) ** 3
    return lms


def dot(one: NDArray[Any], other: NDArray[Any]) -> NDArray[Any]:
    """Sum of products of two arrays (..., 3) over their channels, shape (...).

    The same as `(one * other).sum(-1)`, which takes five times as long for so short an axis.
    """
    products: NDArray[Any] = one[..., 0] * other[..., 0]
    products += one[..., 1] * other[..., 1]
    products += one[..., 2] * other[..., 2]
    return products


def dot_planes(one: NDArray[Any], other: NDArray[Any]) -> NDArray[Any]:
    """`dot` of two arrays (3, ...) whose channels come first."""
    products: NDArray[Any] = one * other
    return np.asarray(products[0] + products[1] + products[2])


def brightness(picture: NDArray[Any]) -> NDArray[Any]:
    """Mean of the three channels of a picture (..., 3), shape (...); seven times as fast as
    numpy's mean over so short an axis, and the same."""
    bright: NDArray[Any] = picture[..., 0] + picture[..., 1]
    bright += picture[..., 2]
    bright /= picture.dtype.type(3)
    return bright


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
    if block == 1 or min(linear.shape[:2]) < block:
        return linear, 1
    return averaged(linear, block), block


def averaged(linear: NDArray[np.float32], block: int) -> NDArray[np.float32]:
    """`linear` (h, w, 3) averaged over blocks; rows and columns that fill none are cut off."""
    h, w = linear.shape[0] // block, linear.shape[1] // block
    # Rows first, then columns, a channel at a time: long runs, which numpy adds up fastest.
    rows = linear[: h * block, : w * block].reshape(h, block, -1)
    summed = _added([rows[:, k] for k in range(block)])
    channels, pace = linear.shape[2], linear.shape[2] * block
    means = np.empty((h, w, channels), dtype=np.float32)
    for c in range(channels):
        each = _added([summed[:, k + c :: pace] for k in range(0, pace, channels)])
        means[..., c] = each / np.float32(block * block)
    return means


def _added(parts: list[NDArray[np.float32]]) -> NDArray[np.float32]:
    """The sum of arrays of one shape, in their order."""
    if len(parts) == 1:
        return parts[0]
    total = parts[0] + parts[1]
    for part in parts[2:]:
        total += part
    return total

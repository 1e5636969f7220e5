"""sRGB and linear light.

Every average in this program is taken of linear light or of a perceptual space; the numbers of
a picture file are neither.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

# IEC 61966-2-1:1999, equations 5 to 8 (the 2003 amendment keeps these constants).
_KNEE_ENCODED = 0.04045
_KNEE_LINEAR = 0.0031308

_AT_ONCE = 1 << 15  # numbers looked up at a time: their indices stay in the processor's cache
_CELLS = 1 << 14  # of 0..1: narrow enough that at most one 8-bit code begins in each


def srgb_to_linear(rgb: ArrayLike) -> Floats:
    """Linear light of encoded sRGB.

    Parameters
    ----------
    rgb : array_like, shape (...), float
        Encoded sRGB, 0..1. Values outside continue the curve: negative ones as its mirror.

    Returns
    -------
    ndarray, shape (...), float64
        Linear light, 0..1. NaN stays NaN.

    Notes
    -----
    Source: IEC 61966-2-1:1999, section 4.
    """
    rgb = np.asarray(rgb, dtype=np.float64)
    size = np.abs(rgb)
    curve = ((size + 0.055) / 1.055) ** 2.4
    return np.where(size <= _KNEE_ENCODED, rgb / 12.92, np.copysign(curve, rgb))


def linear_to_srgb(linear: ArrayLike) -> Floats:
    """Encoded sRGB of linear light; the inverse of `srgb_to_linear`, nothing clipped.

    Parameters
    ----------
    linear : array_like, shape (...), float
        Linear light, 0..1; values outside continue the curve.

    Returns
    -------
    ndarray, shape (...), float64
        Encoded sRGB. NaN stays NaN.

    Notes
    -----
    Source: IEC 61966-2-1:1999, section 4.
    """
    linear = np.asarray(linear, dtype=np.float64)
    size = np.abs(linear)
    curve = 1.055 * size ** (1 / 2.4) - 0.055
    return np.where(size <= _KNEE_LINEAR, linear * 12.92, np.copysign(curve, linear))


LINEAR_OF_8BIT: NDArray[np.float32] = srgb_to_linear(np.arange(256) / 255.0).astype(np.float32)
"""Linear light of the 256 codes of an 8-bit channel."""
LINEAR_OF_8BIT.flags.writeable = False


def srgb8_to_linear(rgb8: NDArray[np.uint8]) -> NDArray[np.float32]:
    """Linear light of 8-bit sRGB, by a look-up of 256 numbers.

    Parameters
    ----------
    rgb8 : ndarray, shape (...), uint8
        Encoded sRGB, 0..255.

    Returns
    -------
    ndarray, shape (...), float32
        Linear light, 0..1.
    """
    codes = rgb8.reshape(-1)
    linear = np.empty(codes.shape, dtype=np.float32)
    for start in range(0, len(codes), _AT_ONCE):
        part = slice(start, start + _AT_ONCE)
        LINEAR_OF_8BIT.take(codes[part], out=linear[part], mode="clip")  # none is outside
    return linear.reshape(rgb8.shape)


@cache
def _codes_of_linear() -> tuple[NDArray[np.uint8], NDArray[np.float32]]:
    """The 8-bit code at the start of each cell of linear light, and where the next one begins."""
    code = np.arange(1, 256)
    # The least float32 of each code, by halving: numbers above 0 are in the order of their bits.
    below, least = np.zeros(255, np.uint32), np.full(255, np.float32(1).view(np.uint32))
    for _ in range(32):
        middle = (below + least) // 2
        reached = np.floor(linear_to_srgb(middle.view(np.float32)) * 255 + 0.5) >= code
        below, least = np.where(reached, below, middle), np.where(reached, middle, least)
    begins = np.append(least.view(np.float32), np.float32(np.inf))
    cells = np.arange(_CELLS + 1, dtype=np.float32) / np.float32(_CELLS)
    first = np.searchsorted(begins, cells, side="right").astype(np.uint8)
    return first, begins[first]


def linear_to_srgb8(linear: NDArray[np.float32]) -> NDArray[np.uint8]:
    """The nearest 8-bit code of linear light, by a look-up: a sixth of the curve's time.

    Parameters
    ----------
    linear : ndarray, shape (...), float32
        Linear light; clipped to 0..1.

    Returns
    -------
    ndarray, shape (...), uint8
        What `linear_to_srgb` gives, times 255 and rounded, halves up.
    """
    first, begins = _codes_of_linear()
    light = linear.reshape(-1)
    codes = np.empty(light.shape, dtype=np.uint8)
    for start in range(0, len(light), _AT_ONCE):
        part = np.minimum(np.maximum(light[start : start + _AT_ONCE], 0), 1)
        cell = (part * np.float32(_CELLS)).astype(np.intp)  # exact: a power of two
        code = first.take(cell, mode="clip")
        code += part >= begins.take(cell, mode="clip")
        codes[start : start + _AT_ONCE] = code
    return codes.reshape(linear.shape)


def srgb_to_hex(rgb: ArrayLike) -> str:
    """`#rrggbb` of one encoded colour, 0..1; values outside are clipped.

    >>> srgb_to_hex((1, 0.5, 0))
    '#ff8000'
    """
    codes = np.rint(np.clip(np.asarray(rgb, dtype=np.float64), 0, 1) * 255).astype(int)
    red, green, blue = codes.tolist()
    return f"#{red:02x}{green:02x}{blue:02x}"


def hex_to_srgb(text: str) -> Floats:
    """Encoded sRGB, shape (3,), 0..1, of `#rrggbb`.

    Raises
    ------
    ValueError
        The text is not a hash and six hexadecimal digits.
    """
    digits = text.removeprefix("#")
    if len(digits) != 6:
        raise ValueError(f"not a colour of the form #rrggbb: {text!r}")
    return np.array([int(digits[i : i + 2], 16) for i in (0, 2, 4)], dtype=np.float64) / 255


def veiled(colour: str, veil: str, share: float) -> str:
    """`#rrggbb` of a colour under a veil, as a screen lays it: in encoded numbers.

    Parameters
    ----------
    colour, veil : str
        `#rrggbb`.
    share : float
        How much of the veil is seen, 0..1.

    Examples
    --------
    >>> veiled("#000000", "#ffffff", 0.2)
    '#333333'
    """
    return srgb_to_hex((1 - share) * hex_to_srgb(colour) + share * hex_to_srgb(veil))

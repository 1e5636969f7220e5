"""Munsell value and luminance factor."""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour.lab import LINEAR_TO_XYZ
from core.colour.srgb import srgb_to_linear

Floats = NDArray[np.float64]

# ASTM D1535-08, equation for Y in percent of the perfect reflecting diffuser: the polynomial of
# Newhall, Nickerson and Judd (1943) times 0.975, rounded to five digits.
_Y_OF_V = (0.00081939, -0.020484, 0.23352, -0.22533, 1.1914, 0.0)  # highest power first
_Y_SLOPE = (5 * 0.00081939, -4 * 0.020484, 3 * 0.23352, -2 * 0.22533, 1.1914)


def munsell_Y(value: ArrayLike) -> Floats:
    """Luminance factor Y in percent, shape (...), of Munsell value 0..10.

    Notes
    -----
    Source: ASTM D1535-08, section on the relation of Y and V.
    """
    return np.asarray(np.polyval(_Y_OF_V, np.asarray(value, dtype=np.float64)))


def munsell_value(Y: ArrayLike) -> Floats:
    """Munsell value of luminance factor Y.

    Parameters
    ----------
    Y : array_like, shape (...), float
        Luminance factor in percent, 0..100; white is 100.

    Returns
    -------
    ndarray, shape (...), float64
        Munsell value, 0..10; the polynomial of `munsell_Y` inverted to 1e-10.

    Raises
    ------
    ValueError
        Y outside 0..100; the message gives the offending value.

    Notes
    -----
    Source: ASTM D1535-08.
    """
    Y = np.asarray(Y, dtype=np.float64)
    outside = (Y < 0) | (Y > 100)
    if outside.any():
        raise ValueError(f"luminance factor outside 0..100 percent: {Y[outside].flat[0]}")
    return value_of_Y(Y)


def value_of_Y(Y: Floats) -> Floats:
    """`munsell_value` of percents known to be within 0..100.

    Newton's steps from a table's answer; the error squares with each.
    """
    table_V, table_Y = _value_table()
    V = np.interp(Y, table_Y, table_V)
    for _ in range(2):
        V = V - (np.polyval(_Y_OF_V, V) - Y) / np.polyval(_Y_SLOPE, V)
    return np.clip(V, 0.0, 10.0)


@cache
def _value_table() -> tuple[Floats, Floats]:
    V = np.linspace(0, 10, 513)
    return V, munsell_Y(V)


@cache
def _fast_value_tables() -> tuple[NDArray[np.float32], NDArray[np.float32], NDArray[np.float32]]:
    """Share of Y of 65536 codes of each channel, and value (with its steps) of 4097 shares."""
    linear = srgb_to_linear(np.arange(65536) / 65535)
    shares = (LINEAR_TO_XYZ[1][:, None] * linear).astype(np.float32)
    value = value_of_Y(np.linspace(0, 100, 4097))
    return shares, value.astype(np.float32), np.diff(value, append=value[-1]).astype(np.float32)


def fast_value(rgb: NDArray[np.float32]) -> NDArray[np.float32]:
    """Munsell value of encoded sRGB within 0..1, shape (3, n) -> (n,), to 0.001."""
    shares, value, step = _fast_value_tables()
    codes = (rgb * np.float32(65535) + np.float32(0.5)).astype(np.uint16)
    place = shares[0].take(codes[0]) + shares[1].take(codes[1]) + shares[2].take(codes[2])
    place *= np.float32(4096)
    whole = np.minimum(place.astype(np.intp), 4096)
    return np.asarray(value.take(whole) + step.take(whole) * (place - whole.astype(np.float32)))

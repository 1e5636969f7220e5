"""Linear sRGB to CIE XYZ, CIELAB and Oklab, and back. D65, 2 degree observer throughout."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour.srgb import linear_to_srgb, srgb_to_linear

Floats = NDArray[np.float64]

# Primaries and white of IEC 61966-2-1:1999, table 1 (those of ITU-R BT.709), as x, y.
_PRIMARIES = ((0.64, 0.33), (0.30, 0.60), (0.15, 0.06))
_WHITE_xy = (0.3127, 0.3290)


def xy_to_XYZ(x: float, y: float) -> Floats:
    """XYZ, shape (3,), with Y = 1 of a chromaticity."""
    return np.array([x / y, 1.0, (1 - x - y) / y], dtype=np.float64)


def _matrix_of_primaries() -> Floats:
    """The matrix that takes linear (1, 1, 1) to the white exactly.

    The standard prints it with four decimals, which would leave white with a trace of colour.
    """
    columns = np.stack([xy_to_XYZ(x, y) for x, y in _PRIMARIES], axis=1)
    shares = np.linalg.solve(columns, xy_to_XYZ(*_WHITE_xy))
    matrix: Floats = columns * shares
    return matrix


LINEAR_TO_XYZ: Floats = _matrix_of_primaries()
XYZ_TO_LINEAR: Floats = np.linalg.inv(LINEAR_TO_XYZ).astype(np.float64)
WHITE_XYZ: Floats = LINEAR_TO_XYZ.sum(axis=1)
"""XYZ of D65 with Y = 1."""

# CIE 15:2018, section 8.2.1: (6/29)^3 and its slope, as fractions.
_EPSILON = (6 / 29) ** 3
_SLOPE = (29 / 6) ** 2 / 3


def linear_to_XYZ(linear: ArrayLike) -> Floats:
    """XYZ, shape (..., 3), of linear sRGB, shape (..., 3). Y is 1 for white."""
    return np.asarray(linear, dtype=np.float64) @ LINEAR_TO_XYZ.T


def XYZ_to_linear(XYZ: ArrayLike) -> Floats:
    """Linear sRGB, shape (..., 3), of XYZ, shape (..., 3). Outside sRGB it leaves 0..1."""
    return np.asarray(XYZ, dtype=np.float64) @ XYZ_TO_LINEAR.T


def XYZ_to_Lab(XYZ: ArrayLike) -> Floats:
    """CIELAB of XYZ under D65.

    Parameters
    ----------
    XYZ : array_like, shape (..., 3), float
        Y is 1 for white. Slightly negative values are allowed: the line near black goes on.

    Returns
    -------
    ndarray, shape (..., 3), float64
        L* 0..100, a*, b*. NaN stays NaN.

    Notes
    -----
    Source: CIE 15:2018, section 8.2.1.
    """
    t = np.asarray(XYZ, dtype=np.float64) / WHITE_XYZ
    f = np.where(t > _EPSILON, np.cbrt(t), _SLOPE * t + 4 / 29)
    x, y, z = f[..., 0], f[..., 1], f[..., 2]
    Lab = np.empty(f.shape)
    Lab[..., 0], Lab[..., 1], Lab[..., 2] = 116 * y - 16, 500 * (x - y), 200 * (y - z)
    return Lab


def Lab_to_XYZ(Lab: ArrayLike) -> Floats:
    """XYZ, shape (..., 3), of CIELAB, shape (..., 3); the inverse of `XYZ_to_Lab`."""
    Lab = np.asarray(Lab, dtype=np.float64)
    y = (Lab[..., 0] + 16) / 116
    f = np.empty(Lab.shape)
    f[..., 0], f[..., 1], f[..., 2] = y + Lab[..., 1] / 500, y, y - Lab[..., 2] / 200
    t: Floats = np.where(f > 6 / 29, f**3, (f - 4 / 29) / _SLOPE)
    return t * WHITE_XYZ


def srgb_to_Lab(rgb: ArrayLike) -> Floats:
    """CIELAB, shape (..., 3), of encoded sRGB 0..1, shape (..., 3)."""
    return XYZ_to_Lab(linear_to_XYZ(srgb_to_linear(rgb)))


def Lab_to_srgb(Lab: ArrayLike) -> Floats:
    """Encoded sRGB, shape (..., 3), clipped to 0..1, of CIELAB, shape (..., 3)."""
    return np.clip(linear_to_srgb(XYZ_to_linear(Lab_to_XYZ(Lab))), 0.0, 1.0)


def in_srgb_gamut(Lab: ArrayLike, tolerance: float = 1e-6) -> NDArray[np.bool_]:
    """Whether sRGB holds the colour.

    Parameters
    ----------
    Lab : array_like, shape (..., 3)
    tolerance : float
        In linear light; the default only forgives rounding.

    Returns
    -------
    ndarray, shape (...), bool
        False for NaN.
    """
    linear = XYZ_to_linear(Lab_to_XYZ(Lab))
    inside = (linear >= -tolerance) & (linear <= 1 + tolerance)
    return np.asarray(inside.all(axis=-1))


def Lab_to_LCh(Lab: ArrayLike) -> Floats:
    """L*, C*ab and h_ab in degrees 0..360, shape (..., 3), of CIELAB, shape (..., 3)."""
    Lab = np.asarray(Lab, dtype=np.float64)
    a, b = Lab[..., 1], Lab[..., 2]
    hue_deg = np.degrees(np.arctan2(b, a)) % 360
    return np.stack([Lab[..., 0], np.hypot(a, b), hue_deg], axis=-1)


# Oklab's two matrices. Source: Björn Ottosson, 2020, "A perceptual color space for image
# processing", the version of 2021-01-25 that starts from linear sRGB.
LINEAR_TO_LMS = np.array(
    [
        [0.4122214708, 0.5363325363, 0.0514459929],
        [0.2119034982, 0.6806995451, 0.1073969566],
        [0.0883024619, 0.2817188376, 0.6299787005],
    ]
)
LMS_TO_OKLAB = np.array(
    [
        [0.2104542553, 0.7936177850, -0.0040720468],
        [1.9779984951, -2.4285922050, 0.4505937099],
        [0.0259040371, 0.7827717662, -0.8086757660],
    ]
)


def linear_to_Oklab(linear: ArrayLike) -> Floats:
    """Oklab, shape (..., 3), L 0..1, of linear sRGB, shape (..., 3)."""
    lms = np.cbrt(np.asarray(linear, dtype=np.float64) @ LINEAR_TO_LMS.T)
    oklab: Floats = lms @ LMS_TO_OKLAB.T
    return oklab

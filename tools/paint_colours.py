"""Spectrum to colour for the paint scripts: CIE 1931 2 degrees, D65, 380-780 nm in 10 nm steps.

The weights are ASTM E308 tables computed by colour-science (a tool here, never loaded by the
program): bands beyond 380-780 nm are added to the end bands as the standard says. They are
scaled in the last digits so that a perfect white gives exactly the D65 white of sRGB.
"""

from __future__ import annotations

from functools import cache

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour import XYZ_to_Lab, linear_to_XYZ, srgb_to_Lab


@cache
def weights(step_nm: int = 10) -> NDArray[np.float64]:
    """Shape (bands, 3): XYZ = R @ weights, Y = 1 for a perfect white."""
    import colour
    from colour.colorimetry import (
        adjust_tristimulus_weighting_factors_ASTME308,
        tristimulus_weighting_factors_ASTME2022,
    )

    cmfs = colour.MSDS_CMFS["CIE 1931 2 Degree Standard Observer"]
    d65 = colour.SDS_ILLUMINANTS["D65"]
    cmfs = cmfs.copy().align(colour.SpectralShape(360, 830, 1))
    d65 = d65.copy().align(cmfs.shape)
    wide = colour.SpectralShape(360, 360 + 470 // step_nm * step_nm, step_nm)
    full = tristimulus_weighting_factors_ASTME2022(cmfs, d65, wide, 1)
    narrow = colour.SpectralShape(380, 780, step_nm)
    table = adjust_tristimulus_weighting_factors_ASTME308(full, wide, narrow)
    white = linear_to_XYZ(np.ones(3))
    return table / table.sum(axis=0) * white


def spectrum_to_Lab(R: ArrayLike) -> NDArray[np.float64]:
    """CIELAB of reflectances, shape (..., 41) to (..., 3)."""
    return XYZ_to_Lab(np.asarray(R) @ weights())


def srgb8_to_Lab(rgb8: ArrayLike) -> NDArray[np.float64]:
    """CIELAB of 8-bit sRGB numbers, shape (..., 3)."""
    return srgb_to_Lab(np.asarray(rgb8) / 255.0)

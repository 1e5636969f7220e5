"""Colour differences."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]


def delta_E_76(Lab1: ArrayLike, Lab2: ArrayLike) -> Floats:
    """Distance in CIELAB (CIE 1976), shape (...), of colours of shape (..., 3)."""
    gap = np.asarray(Lab1, dtype=np.float64) - np.asarray(Lab2, dtype=np.float64)
    distance: Floats = np.sqrt((gap**2).sum(axis=-1))
    return distance


def delta_E_2000(Lab1: ArrayLike, Lab2: ArrayLike) -> Floats:
    """CIEDE2000 with all three weights 1.

    Parameters
    ----------
    Lab1, Lab2 : array_like, shape (..., 3), float
        CIELAB; the shapes broadcast against each other. The order does not matter.

    Returns
    -------
    ndarray, shape (...), float64
        The difference. NaN where a colour has NaN.

    Notes
    -----
    Source: G. Sharma, W. Wu, E. N. Dalal, 2005, "The CIEDE2000 color-difference formula:
    implementation notes, supplementary test data, and mathematical observations", Color
    Research and Application 30(1), 21-30, equations 2 to 22. Their rules where a hue is
    undefined or two hues are across the seam are kept.
    """
    Lab1 = np.asarray(Lab1, dtype=np.float64)
    Lab2 = np.asarray(Lab2, dtype=np.float64)
    L1, a1, b1 = Lab1[..., 0], Lab1[..., 1], Lab1[..., 2]
    L2, a2, b2 = Lab2[..., 0], Lab2[..., 1], Lab2[..., 2]

    C7 = ((np.hypot(a1, b1) + np.hypot(a2, b2)) / 2) ** 7
    stretch = 1 + 0.5 * (1 - np.sqrt(C7 / (C7 + 25.0**7)))
    a1, a2 = a1 * stretch, a2 * stretch
    C1, C2 = np.hypot(a1, b1), np.hypot(a2, b2)
    h1 = np.degrees(np.arctan2(b1, a1)) % 360
    h2 = np.degrees(np.arctan2(b2, a2)) % 360

    no_hue = C1 * C2 == 0
    # Exact opposites count as "not across" in the paper; rounding must not decide that.
    half = 180 + 1e-9
    step = h2 - h1
    step = np.where(step > half, step - 360, np.where(step < -half, step + 360, step))
    step = np.where(no_hue, 0.0, step)
    dH = 2 * np.sqrt(C1 * C2) * np.sin(np.radians(step / 2))

    total = h1 + h2
    across = np.abs(h1 - h2) > half
    mean_hue = np.where(
        no_hue,
        total,
        np.where(~across, total / 2, np.where(total < 360, total / 2 + 180, total / 2 - 180)),
    )
    mean_L = (L1 + L2) / 2
    mean_C = (C1 + C2) / 2

    T = (
        1
        - 0.17 * np.cos(np.radians(mean_hue - 30))
        + 0.24 * np.cos(np.radians(2 * mean_hue))
        + 0.32 * np.cos(np.radians(3 * mean_hue + 6))
        - 0.20 * np.cos(np.radians(4 * mean_hue - 63))
    )
    S_L = 1 + 0.015 * (mean_L - 50) ** 2 / np.sqrt(20 + (mean_L - 50) ** 2)
    S_C = 1 + 0.045 * mean_C
    S_H = 1 + 0.015 * mean_C * T
    R_C = 2 * np.sqrt(mean_C**7 / (mean_C**7 + 25.0**7))
    R_T = -R_C * np.sin(np.radians(60 * np.exp(-(((mean_hue - 275) / 25) ** 2))))

    l_part, c_part, h_part = (L2 - L1) / S_L, (C2 - C1) / S_C, dH / S_H
    squared = l_part**2 + c_part**2 + h_part**2 + R_T * c_part * h_part
    # Rounding can leave -1e-17 for equal colours.
    difference: Floats = np.sqrt(np.maximum(squared, 0.0))
    return difference

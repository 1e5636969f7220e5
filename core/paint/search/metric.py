"""CIEDE2000 near one colour, as a linear map: what least squares and quick sorting need."""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]


def local_metric(Lab: ArrayLike) -> Floats:
    """A matrix M with |M (Lab2 - Lab)| = delta E 2000 for small steps.

    Parameters
    ----------
    Lab : array_like, shape (..., 3), float

    Returns
    -------
    ndarray, shape (..., 3, 3), float64

    Notes
    -----
    The weighting functions of Sharma, Wu and Dalal (2005), equations 4 to 21, held at `Lab`.
    """
    Lab = np.asarray(Lab, dtype=np.float64)
    L, a, b = Lab[..., 0], Lab[..., 1], Lab[..., 2]
    C7 = np.hypot(a, b) ** 7
    stretch = 1.5 - 0.5 * np.sqrt(C7 / (C7 + 25.0**7))
    a = a * stretch
    C = np.hypot(a, b)
    h = np.degrees(np.arctan2(b, a)) % 360

    def cos(degrees: Floats) -> Floats:
        turned: Floats = np.cos(np.radians(degrees))
        return turned

    T = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.2 * cos(4 * h - 63)
    S_L = 1 + 0.015 * (L - 50) ** 2 / np.sqrt(20 + (L - 50) ** 2)
    S_C, S_H = 1 + 0.045 * C, 1 + 0.015 * C * T
    turn = 30 * np.exp(-(((h - 275) / 25) ** 2))
    R_T = -np.sin(np.radians(2 * turn)) * 2 * np.sqrt(C**7 / (C**7 + 25.0**7))

    safe = np.maximum(C, 1e-9)
    cos_h, sin_h = np.where(C > 1e-9, a / safe, 1.0), np.where(C > 1e-9, b / safe, 0.0)
    M = np.zeros((*Lab.shape[:-1], 3, 3))
    M[..., 0, 0] = 1 / S_L
    # dC and dH by a, b; then the cross term is folded in by completing the square.
    dC = np.stack([cos_h * stretch, sin_h], axis=-1) / S_C[..., None]
    dH = np.stack([-sin_h * stretch, cos_h], axis=-1) / S_H[..., None]
    M[..., 1, 1:] = dC + (R_T / 2)[..., None] * dH
    M[..., 2, 1:] = np.sqrt(1 - (R_T / 2) ** 2)[..., None] * dH
    return M

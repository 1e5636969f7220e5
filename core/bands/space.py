"""The space in which bands are searched and summed up: Oklab x 100, a and b doubled.

Doubling makes a step of hue or intensity weigh about as much as a step of lightness; one unit is
then roughly one just visible step. Colours are handed on in CIELAB.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour.lab import _LINEAR_TO_LMS, _LMS_TO_OKLAB, LINEAR_TO_XYZ, XYZ_to_Lab
from core.colour.srgb import srgb8_to_linear

Floats = NDArray[np.float64]
Floats32 = NDArray[np.float32]

_OKLAB_TO_WORK = np.array([100.0, 200.0, 200.0])
_LMS_TO_WORK = _LMS_TO_OKLAB * _OKLAB_TO_WORK[:, None]
_WORK_TO_LMS = np.linalg.inv(_LMS_TO_WORK)
_LMS_TO_XYZ = LINEAR_TO_XYZ @ np.linalg.inv(_LINEAR_TO_LMS)

# numpy's cube root takes 25 ns a number, this table 4 ns. The colour is off by 0.025 dE00 at most,
# just above black (measured against scikit-image).
_STEPS = (1 << 18) - 1
_CBRT = np.cbrt(np.arange(_STEPS + 1) / _STEPS).astype(np.float32)
_LINEAR_TO_STEPS = (_LINEAR_TO_LMS * _STEPS).astype(np.float32)


def srgb8_to_work(rgb8: NDArray[np.uint8]) -> Floats32:
    """Working space, shape (..., 3), float32, of 8-bit sRGB, shape (..., 3)."""
    linear = srgb8_to_linear(rgb8).reshape(-1, 3)
    steps = linear @ _LINEAR_TO_STEPS.T
    steps += 0.5
    np.clip(steps, 0, _STEPS, out=steps)
    root = _CBRT[steps.astype(np.int32)]
    work: Floats32 = root @ _LMS_TO_WORK.astype(np.float32).T
    return work.reshape(rgb8.shape)


def work_to_Lab(work: ArrayLike) -> Floats:
    """CIELAB (D65), shape (..., 3), of working-space colours, shape (..., 3)."""
    lms = (np.asarray(work, dtype=np.float64) @ _WORK_TO_LMS.T) ** 3
    return XYZ_to_Lab(lms @ _LMS_TO_XYZ.T)

"""The naive ways to mix, on the measured rows: what a program does that knows no pigments.

Each takes the measured colours of the two single paints, at the very quantities in the mixture:
more than a painter's box tells.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray
from paint_colours import spectrum_to_Lab, weights
from paint_dataset import Measured

from core.colour import XYZ_to_Lab, XYZ_to_linear, linear_to_XYZ

Floats = NDArray[np.float64]


def naive_Lab(data: Measured) -> dict[str, Floats]:
    """CIELAB, shape (n, 3), of all samples by three naive ways; NaN for single paints."""
    single = {
        (int(np.argmax(load)), round(float(load.max()), 3)): R
        for load, R in zip(data.load[data.single], data.R[data.single], strict=True)
    }
    ways: dict[str, Floats] = {
        name: np.full((len(data.load), 3), np.nan)
        for name in ("linear RGB", "multiplied reflectances", "K/S in RGB")
    }
    for row in np.flatnonzero(~data.single):
        paints = data.pair[row]
        loads = data.load[row, paints]
        R = np.array([single[p, round(float(q), 3)] for p, q in zip(paints, loads, strict=True)])
        share = (loads / loads.sum())[:, None]
        rgb = np.clip(XYZ_to_linear(R @ weights()), 1e-3, 1)
        ways["linear RGB"][row] = _of_linear((share * rgb).sum(axis=0))
        ways["multiplied reflectances"][row] = spectrum_to_Lab(R.prod(axis=0) / data.paper)
        ratio = (share * (1 - rgb) ** 2 / (2 * rgb)).sum(axis=0)
        ways["K/S in RGB"][row] = _of_linear(1 + ratio - np.sqrt(ratio**2 + 2 * ratio))
    return ways


def _of_linear(rgb: Floats) -> Floats:
    return XYZ_to_Lab(linear_to_XYZ(rgb))

"""The thirteen measured paints, and the colour of any mixture of them.

Loads are given in millilitres as the dataset gives them: how much of a prepared paint lay on one
swatch. They compare mixes with one another; they are not a dose for a class (see `strength`).
"""

from __future__ import annotations

from functools import cache
from pathlib import Path

import numpy as np
from numpy.typing import ArrayLike

from core.paint.pigment.pigments import Floats, Pigments

DATA_PATH = Path(__file__).parent / "data" / "measured_paints.npz"

FULL_LOAD_ML = 0.16
"""The most paint measured on a swatch; nothing heavier is ever proposed."""


TINTED_ML = 0.1
"""A layer of white that hides the paper well: what tinting strength is taken on."""

VISIBLE = slice(4, 33)
"""420 to 700 nm: beyond, the eye hardly answers."""


@cache
def measured_paints() -> Pigments:
    """The shipped measurements, read once; made by tools/build_paint_data.py."""
    with np.load(DATA_PATH) as file:
        keys = tuple(str(key) for key in file["keys"])
        return Pigments(
            keys=keys,
            K=file["K"].astype(np.float64),
            S=file["S"].astype(np.float64),
            crowding=float(file["crowding"]),
            paper=file["paper"].astype(np.float64),
            weights=file["weights"].astype(np.float64),
            coarse_weights=file["coarse_weights"].astype(np.float64),
            searched=tuple(range(len(keys))),
        )


def load_reflectance(load_ml: ArrayLike) -> Floats:
    """Reflectance, shape (..., 41), of loads of the measured paints, shape (..., 13)."""
    return measured_paints().reflectance(load_ml)


def spectrum_to_Lab(reflectance: ArrayLike) -> Floats:
    """CIELAB, shape (..., 3), of reflectances at 380..780 nm, shape (..., 41)."""
    return measured_paints().spectrum_to_Lab(reflectance)


def load_Lab(load_ml: ArrayLike) -> Floats:
    """CIELAB, shape (..., 3), of loads of the measured paints, shape (..., 13)."""
    return spectrum_to_Lab(load_reflectance(load_ml))


@cache
def paper_Lab() -> tuple[float, float, float]:
    """The bare paper: the lightest a wash can be."""
    L, a, b = load_Lab(np.zeros(len(measured_paints().keys))).tolist()
    return L, a, b


@cache
def half_load_ml(key: str) -> float:
    """The load at which a paint has taken half the light from its strongest band.

    The yardstick by which washes of strong and weak paints compare: a hundredth of this is a
    breath of colour for either, a hundredfold of it covers.
    """
    data = measured_paints()
    row = data.index(key)
    loads = np.geomspace(1e-6, FULL_LOAD_ML, 400)
    layer = np.zeros((len(loads), len(data.keys)))
    layer[:, row] = loads
    kept = load_reflectance(layer) / data.paper
    strongest = kept[:, VISIBLE].min(axis=1)
    below = strongest <= 0.5
    if not below.any():  # a white takes almost nothing: full strength stands for half
        return FULL_LOAD_ML
    return float(loads[np.argmax(below)])


@cache
def parts_to_tint_white(key: str, to_L: float = 60.0) -> float:
    """Tinting strength: parts of a paint that bring one part of white down to L* 60.

    Small is strong. Taken on `TINTED_ML` of white.
    """
    data = measured_paints()
    parts = np.geomspace(1e-4, 100, 500)
    layer = np.zeros((len(parts), len(data.keys)))
    layer[:, data.index("chinese_white")] = TINTED_ML
    layer[:, data.index(key)] += TINTED_ML * parts
    L = load_Lab(layer)[:, 0]
    below = to_L >= L
    return float(parts[np.argmax(below)]) if below.any() else float("inf")

"""The thirteen measured paints, and the colour of any mixture of them.

Loads are given in millilitres as the dataset gives them: how much of a prepared paint lay on one
swatch. They compare mixes with one another; they are not a dose for a class (see `strength`).
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cache
from pathlib import Path

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour import XYZ_to_Lab
from core.paint.pigment.film import film_reflectance

Floats = NDArray[np.float64]

DATA_PATH = Path(__file__).parent / "data" / "measured_paints.npz"

FULL_LOAD_ML = 0.16
"""The most paint measured on a swatch; nothing heavier is ever proposed."""


@dataclass(frozen=True, eq=False)
class MeasuredPaints:
    """What was fitted to the measurements; made by tools/build_paint_data.py.

    Attributes
    ----------
    keys : tuple of str
        Names of the paints, the order of all rows.
    K, S : ndarray, shape (paints, 41), float
        Absorption and scattering per hundredth of a millilitre, 380..780 nm in 10 nm steps.
    crowding : float
        See `core.paint.pigment.film.layer_KS`.
    paper : ndarray, shape (41,), float
        Reflectance of the bare paper.
    weights : ndarray, shape (41, 3), float
        Reflectance @ weights = XYZ under D65, 2 degrees (ASTM E308, 10 nm).
    coarse_weights : ndarray, shape (21, 3), float
        The same for every second band (ASTM E308, 20 nm), for the search's first look.
    """

    keys: tuple[str, ...]
    K: Floats
    S: Floats
    crowding: float
    paper: Floats
    weights: Floats
    coarse_weights: Floats

    def index(self, key: str) -> int:
        """Row of a paint."""
        return self.keys.index(key)


@cache
def measured_paints() -> MeasuredPaints:
    """The shipped measurements, read once."""
    with np.load(DATA_PATH) as file:
        return MeasuredPaints(
            keys=tuple(str(key) for key in file["keys"]),
            K=file["K"].astype(np.float64),
            S=file["S"].astype(np.float64),
            crowding=float(file["crowding"]),
            paper=file["paper"].astype(np.float64),
            weights=file["weights"].astype(np.float64),
            coarse_weights=file["coarse_weights"].astype(np.float64),
        )


def load_reflectance(load_ml: ArrayLike) -> Floats:
    """Reflectance of a dried layer.

    Parameters
    ----------
    load_ml : array_like, shape (..., 13), float
        Millilitres of each measured paint, in the order of `MeasuredPaints.keys`, >= 0.

    Returns
    -------
    ndarray, shape (..., 41), float64
        0..1 at 380..780 nm; the bare paper where nothing is.
    """
    data = measured_paints()
    hundredths = np.asarray(load_ml, float) * 100
    return film_reflectance(hundredths, data.K, data.S, data.crowding, data.paper)


def spectrum_to_Lab(reflectance: ArrayLike) -> Floats:
    """CIELAB, shape (..., 3), of reflectances at 380..780 nm, shape (..., 41)."""
    return XYZ_to_Lab(np.asarray(reflectance, float) @ measured_paints().weights)


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
    visible = slice(4, 33)  # 420 to 700 nm: beyond, the eye hardly answers
    strongest = kept[:, visible].min(axis=1)
    below = strongest <= 0.5
    if not below.any():  # a white takes almost nothing: full strength stands for half
        return FULL_LOAD_ML
    return float(loads[np.argmax(below)])


@cache
def parts_to_tint_white(key: str, to_L: float = 60.0) -> float:
    """Tinting strength: parts of a paint that bring one part of white down to L* 60.

    Small is strong. Taken at 0.1 mL of white, a layer that hides the paper well.
    """
    data = measured_paints()
    parts = np.geomspace(1e-4, 100, 500)
    layer = np.zeros((len(parts), len(data.keys)))
    layer[:, data.index("chinese_white")] = 0.1
    layer[:, data.index(key)] += 0.1 * parts
    L = load_Lab(layer)[:, 0]
    below = to_L >= L
    return float(parts[np.argmax(below)]) if below.any() else float("inf")

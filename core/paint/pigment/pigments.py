"""The paints a box is computed with: the measured ones, and the box's own beside them."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour import XYZ_to_Lab
from core.paint.pigment.film import film_reflectance

Floats = NDArray[np.float64]


@dataclass(frozen=True, eq=False)
class Pigments:
    """Absorption and scattering of some paints, and the paper they lie on.

    One object stands for one world of paints: it is compared and hashed by what it is, so that
    what was worked out with it is kept by it. A box gives its own as `Box.pigments`; boxes
    without paints of their own share `measured_paints()`.

    Attributes
    ----------
    keys : tuple of str
        Names of the paints, the order of all rows; the measured ones first.
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
    searched : tuple of int
        Rows among which mixes are looked for.
    half_loads_ml : tuple of float
        Of each row: see `core.paint.pigment.measured.half_load_ml`; empty for the measured alone,
        whose are worked out when they are asked for.
    """

    keys: tuple[str, ...]
    K: Floats
    S: Floats
    crowding: float
    paper: Floats
    weights: Floats
    coarse_weights: Floats
    searched: tuple[int, ...]
    half_loads_ml: tuple[float, ...] = ()

    def index(self, key: str) -> int:
        """Row of a paint."""
        return self.keys.index(key)

    def reflectance(self, load_ml: ArrayLike) -> Floats:
        """Reflectance of a dried layer.

        Parameters
        ----------
        load_ml : array_like, shape (..., paints), float
            Millilitres of each paint, in the order of `keys`, >= 0.

        Returns
        -------
        ndarray, shape (..., 41), float64
            0..1 at 380..780 nm; the bare paper where nothing is.
        """
        hundredths = np.asarray(load_ml, float) * 100
        return film_reflectance(hundredths, self.K, self.S, self.crowding, self.paper)

    def Lab(self, load_ml: ArrayLike) -> Floats:
        """CIELAB, shape (..., 3), of loads, shape (..., paints)."""
        return self.spectrum_to_Lab(self.reflectance(load_ml))

    def spectrum_to_Lab(self, reflectance: ArrayLike) -> Floats:
        """CIELAB, shape (..., 3), of reflectances at 380..780 nm, shape (..., 41)."""
        return XYZ_to_Lab(np.asarray(reflectance, float) @ self.weights)

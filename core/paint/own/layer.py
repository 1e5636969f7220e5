"""The film once more, with its slopes: what a fit by least squares needs."""

from __future__ import annotations

import numpy as np

from core.colour.lab import WHITE_XYZ
from core.paint.pigment.film import INNER_REFLECTION, through_surface
from core.paint.pigment.pigments import Floats

_LEAST_H = 1e-6


def film_slopes(K: Floats, S: Floats, ground: Floats) -> tuple[Floats, Floats, Floats]:
    """Reflectance of layers over paper, and how it changes with their K and S.

    Parameters
    ----------
    K, S : ndarray, shape (n, 41), float
        Of the whole layer, > 0.
    ground : ndarray, shape (41,), float
        The paper as light inside meets it, see `film.paper_inside`.

    Returns
    -------
    R, by_K, by_S : ndarrays, shape (n, 41)
    """
    h = np.maximum(np.sqrt(K * (K + 2 * S)), _LEAST_H)
    coth = 1 / np.tanh(h)
    G = h * coth
    slope = coth - h * (coth**2 - 1)
    G_K, G_S = slope * (K + S) / h, slope * K / h
    top, bottom = S - ground * (K + S - G), K + S - ground * S + G
    inner = top / bottom
    by_K = (-ground * (1 - G_K) - inner * (1 + G_K)) / bottom
    by_S = (1 - ground * (1 - G_S) - inner * (1 - ground + G_S)) / bottom
    out = (1 - INNER_REFLECTION) / (1 - INNER_REFLECTION * inner) ** 2
    return through_surface(inner), by_K * out, by_S * out


def Lab_slopes(XYZ: Floats) -> tuple[Floats, Floats]:
    """CIELAB, shape (n, 3), and its slopes by XYZ, shape (n, 3, 3)."""
    t = np.maximum(XYZ / WHITE_XYZ, 1e-9)
    curved = t > (6 / 29) ** 3
    f = np.where(curved, np.cbrt(t), t * (29 / 6) ** 2 / 3 + 4 / 29)
    slope = np.where(curved, t ** (-2 / 3) / 3, (29 / 6) ** 2 / 3) / WHITE_XYZ
    Lab = np.stack([116 * f[:, 1] - 16, 500 * (f[:, 0] - f[:, 1]), 200 * (f[:, 1] - f[:, 2])], 1)
    J = np.zeros((len(XYZ), 3, 3))
    J[:, 0, 1] = 116 * slope[:, 1]
    J[:, 1, 0], J[:, 1, 1] = 500 * slope[:, 0], -500 * slope[:, 1]
    J[:, 2, 1], J[:, 2, 2] = 200 * slope[:, 1], -200 * slope[:, 2]
    return Lab, J

"""One layer of paint on paper: the Kubelka-Munk film.

A paint has an absorption K and a scattering S for every wavelength band, per unit of load. A
mix adds them by load; crowded pigment scatters a little less per particle. Light crosses the
layer, meets the paper, and part of it is turned back at the inside of the surface.

Sources: P. Kubelka, 1948, "New contributions to the optics of intensely light-scattering
materials, part I", J. Opt. Soc. Am. 38, 448 (the film over a ground, equations 8 and following);
J. L. Saunderson, 1942, J. Opt. Soc. Am. 32, 727 (the inner surface reflection). The crowding
term is our own fit to the data (DEVELOPERS.md, how well mixtures are predicted).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Floats = NDArray[np.float64]

INNER_REFLECTION = 0.6
"""Share of diffuse light turned back at the inside of the surface (Saunderson's k2)."""

_SERIES_BELOW = 1e-3
"""Below this h, h coth h = 1 + h^2/3 to 1e-13, and the quotient would lose digits."""


def film_over(K: ArrayLike, S: ArrayLike, ground: ArrayLike) -> Floats:
    """Reflectance of a layer over a ground, seen from inside the paint (no surface).

    Parameters
    ----------
    K, S : array_like, shape (...), float
        Absorption and scattering of the whole layer (coefficient times thickness), >= 0.
    ground : array_like, shape (...), float
        Reflectance below the layer, 0..1.

    Returns
    -------
    ndarray, shape (...), float64
        0..1. K = S = 0 gives the ground; S = 0 gives ground * exp(-2 K); a thick layer
        gives 1 + K/S - sqrt((K/S)^2 + 2 K/S) whatever the ground.
    """
    K, S, ground = np.asarray(K, float), np.asarray(S, float), np.asarray(ground, float)
    h = np.sqrt(K * (K + 2 * S))
    G = np.where(h < _SERIES_BELOW, 1 + h * h / 3, h / np.tanh(np.maximum(h, _SERIES_BELOW)))
    over: Floats = (S - ground * (K + S - G)) / (K + S - ground * S + G)
    return over


def paper_inside(paper: ArrayLike) -> Floats:
    """The paper's reflectance as light inside the layer meets it, so that no paint is paper."""
    paper = np.asarray(paper, float)
    inside: Floats = paper / (1 - INNER_REFLECTION + INNER_REFLECTION * paper)
    return inside


def through_surface(inner: ArrayLike) -> Floats:
    """What is seen from outside of an inner reflectance."""
    inner = np.asarray(inner, float)
    seen: Floats = (1 - INNER_REFLECTION) * inner / (1 - INNER_REFLECTION * inner)
    return seen


def layer_KS(load: ArrayLike, K: ArrayLike, S: ArrayLike, crowding: float) -> tuple[Floats, Floats]:
    """Absorption and scattering of a mixed layer.

    Parameters
    ----------
    load : array_like, shape (..., paints), float
        Amount of each paint, in hundredths of a millilitre on the measured swatch.
    K, S : array_like, shape (paints, bands)
    crowding : float
        Loss of scattering per hundredth of a millilitre of all paint together.

    Returns
    -------
    two ndarrays, shape (..., bands)
    """
    load = np.asarray(load, float)
    total = load.sum(axis=-1)[..., None]
    return load @ np.asarray(K, float), load @ np.asarray(S, float) / (1 + crowding * total)


def film_reflectance(
    load: ArrayLike, K: ArrayLike, S: ArrayLike, crowding: float, paper: ArrayLike
) -> Floats:
    """Reflectance of a painted and dried sheet.

    Parameters
    ----------
    load, K, S, crowding
        As for `layer_KS`.
    paper : array_like, shape (bands,)
        Reflectance of the bare paper, 0..1.

    Returns
    -------
    ndarray, shape (..., bands), float64
        0..1; the paper exactly where the load is zero.
    """
    layer_K, layer_S = layer_KS(load, K, S, crowding)
    return through_surface(film_over(layer_K, layer_S, paper_inside(paper)))

"""Small Gaussian mixtures, fitted again and again while the skyline is searched.

Written with sums along an axis and no matrix library: its threads get into each other's way on
problems this small (seconds instead of milliseconds were measured on a busy machine).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

Floats32 = NDArray[np.float32]

_LEAST_SPREAD = 0.05
"""Added to every variance: a flat sky has none of its own."""


@dataclass(frozen=True)
class Mixture:
    """A mixture of Gaussians, as lower-triangular whitening maps.

    Attributes
    ----------
    means : ndarray, shape (k, d)
    whiten : ndarray, shape (k, d, d)
        Lower triangular; turns a difference from the mean into unit spread.
    log_heights : ndarray, shape (k,)
        Log of each Gaussian's share times its density at the mean.
    """

    means: Floats32
    whiten: Floats32
    log_heights: Floats32

    def log_density(self, points: Floats32) -> Floats32:
        """Log density, shape (n,), at `points`, shape (d, n): one feature a row."""
        logs = self.logs(points)
        top = logs.max(axis=0)
        density: Floats32 = top + np.log(np.exp(logs - top).sum(axis=0))
        return density

    def logs(self, points: Floats32) -> Floats32:
        """Log of each Gaussian's part of the density, shape (k, n)."""
        unit: Floats32 = self.whiten @ points
        unit -= self.whiten @ self.means[:, :, None]
        logs: Floats32 = np.einsum("kin,kin->kn", unit, unit)
        logs *= -0.5
        logs += self.log_heights[:, None]
        return logs


def fit_mixture(
    points: Floats32, components: int, *, rounds: int, start: Mixture | None = None
) -> Mixture:
    """Fit a mixture by expectation-maximisation.

    Parameters
    ----------
    points : ndarray, shape (d, n), float32
        One feature a row, at least one point; features scaled to a spread of about 1.
    components : int
        How many Gaussians; fewer are used when there are few points.
    rounds : int
        Steps of expectation-maximisation.
    start : Mixture, optional
        Where to begin; otherwise at slices along the feature that spreads most.

    Returns
    -------
    Mixture
        The same for the same points: nothing is random.
    """
    features, count = points.shape
    components = max(1, min(components, count // (2 * features)))
    if start is not None and len(start.means) == components:
        mixture = start
    else:
        mixture = _maximise(points, _slices(points, components))
    for _ in range(rounds):
        logs = mixture.logs(points)
        shares = np.exp(logs - logs.max(axis=0))
        shares /= shares.sum(axis=0)
        mixture = _maximise(points, shares)
    return mixture


def _slices(points: Floats32, components: int) -> Floats32:
    """Memberships, shape (k, n): equal slices along the feature that spreads most."""
    feature = points[int(np.argmax(points.var(axis=1)))]
    rank = np.argsort(np.argsort(feature, kind="stable"), kind="stable")
    which = rank * components // len(feature)
    shares: Floats32 = (which == np.arange(components)[:, None]).astype(np.float32)
    return shares


def _maximise(points: Floats32, shares: Floats32) -> Mixture:
    weight = shares.sum(axis=1) + np.float32(1e-3)
    means = shares @ points.T / weight[:, None]
    away = points - means[:, :, None]
    spread = ((away * shares[:, None]) @ away.swapaxes(1, 2)).astype(np.float64)
    spread = spread / weight[:, None, None] + _LEAST_SPREAD * np.eye(len(points))
    whiten = np.linalg.inv(np.linalg.cholesky(spread))
    peaks = np.log(np.diagonal(whiten, axis1=1, axis2=2)).sum(axis=1)
    heights = np.log(weight / weight.sum()) + peaks
    return Mixture(means, whiten.astype(np.float32), heights.astype(np.float32))

"""Logistic regression where right and wrong ones weigh alike, however many there are of each."""

from __future__ import annotations

import numpy as np
from scipy.optimize import minimize


def balanced_weights(
    right: np.ndarray,
    terms: np.ndarray,
    penalty: float,
    bounds: list[tuple[float | None, float | None]] | None = None,
) -> np.ndarray:
    """Weights of the terms.

    Parameters
    ----------
    right : (n,) bool
    terms : (n, m) float64
        The first is the constant: it goes free of the penalty.
    penalty : float
        Half of it for each squared weight.
    bounds : list of (least, most), optional
        What each weight may be.

    Returns
    -------
    (m,) float64
    """
    share = np.where(right, 0.5 / right.sum(), 0.5 / (~right).sum())
    sign = np.where(right, 1.0, -1.0)

    def loss(w: np.ndarray) -> tuple[float, np.ndarray]:
        margin = sign * (terms @ w)
        chance = 1 / (1 + np.exp(np.clip(margin, -30, 30)))
        value = (share * np.logaddexp(0, -margin)).sum() + 0.5 * penalty * (w[1:] ** 2).sum()
        slope = -(share * sign * chance) @ terms + penalty * np.concatenate([[0.0], w[1:]])
        return float(value), slope

    start = np.zeros(terms.shape[1])
    return np.asarray(minimize(loss, start, jac=True, method="L-BFGS-B", bounds=bounds).x)

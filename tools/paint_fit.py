"""Fit absorption and scattering of the measured paints to the dataset.

Unknown: log K and log S of every paint in 41 bands, and one crowding term. Minimised by a damped
Gauss-Newton method: a robust (Huber) CIELAB error of every sample, a small spectral error that
keeps bands the eye hardly sees in place, and a roughness penalty along the spectrum.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray
from paint_colours import spectrum_to_Lab, weights
from paint_dataset import Measured

from core.colour.lab import WHITE_XYZ
from core.paint.pigment.film import INNER_REFLECTION, layer_KS, paper_inside, through_surface

BANDS = 41


@dataclass(frozen=True)
class Settings:
    """Weights of the fit; chosen on the folds of seed 0 and by hand, so mildly selected."""

    single_weight: float = 0.3
    huber_Lab: float = 4.0
    spectral: float = 1.5
    clamped_weight: float = 0.25
    roughness: float = 4.0
    ridge: float = 1e-3
    rounds: int = 40
    patience: float = 1e-5


@dataclass(frozen=True, eq=False)
class Fit:
    """K and S per hundredth of a millilitre, shape (paints, 41), and the crowding term."""

    K: NDArray[np.float64]
    S: NDArray[np.float64]
    crowding: float
    paper: NDArray[np.float64]

    def reflectance(self, load_ml: NDArray[np.float64]) -> NDArray[np.float64]:
        return _forward(load_ml * 100, self.K, self.S, self.crowding, self.paper)[0]


def _forward(load, K, S, crowding, paper):
    """Reflectance and its derivatives by the layer's K and S."""
    layer_K, layer_S = layer_KS(load, K, S, crowding)
    Rg = paper_inside(paper)
    h = np.sqrt(layer_K * (layer_K + 2 * layer_S))
    coth = 1 / np.tanh(h)
    G = h * coth
    slope = coth - h * (coth**2 - 1)
    G_K, G_S = slope * (layer_K + layer_S) / h, slope * layer_K / h
    top, bottom = layer_S - Rg * (layer_K + layer_S - G), layer_K + layer_S - Rg * layer_S + G
    inner = top / bottom
    by_K = (-Rg * (1 - G_K) - inner * (1 + G_K)) / bottom
    by_S = (1 - Rg * (1 - G_S) - inner * (1 - Rg + G_S)) / bottom
    out = (1 - INNER_REFLECTION) / (1 - INNER_REFLECTION * inner) ** 2
    return through_surface(inner), by_K * out, by_S * out, layer_S


def _Lab_by_R(R):
    """CIELAB and its derivative by the reflectances, (n, 3, 41)."""
    W = weights()
    t = R @ W / WHITE_XYZ
    slope = np.where(t > (6 / 29) ** 3, np.cbrt(t) ** -2 / 3, (29 / 6) ** 2 / 3)
    f = slope[:, :, None] * (W / WHITE_XYZ).T[None]
    jacobian = np.stack(
        [116 * f[:, 1], 500 * (f[:, 0] - f[:, 1]), 200 * (f[:, 1] - f[:, 2])], axis=1
    )
    return spectrum_to_Lab(R), jacobian


def _roughness_matrix(settings):
    second = np.diff(np.eye(BANDS), n=2, axis=0)
    return settings.roughness * second.T @ second


def start(data: Measured) -> Fit:
    """A start by opaque-film theory on the fullest single samples; later rounds forget it."""
    paints = data.load.shape[1]
    K, S = np.empty((paints, BANDS)), np.empty((paints, BANDS))
    for paint in range(paints):
        rows = data.single & (data.load[:, paint] > 0)
        inner = data.R[rows] / (1 - INNER_REFLECTION + INNER_REFLECTION * data.R[rows])
        dark = inner.min(axis=0).clip(0.005, 0.98)
        S[paint] = 0.5
        K[paint] = np.clip(S[paint] * (1 - dark) ** 2 / (2 * dark), 0.005, 30)
    return Fit(K, S, 0.0156, data.paper)


def fit(
    data: Measured, rows: NDArray[np.bool_], settings: Settings, initial: Fit | None = None
) -> Fit:
    """Fit to the samples of `rows` (a mask over the dataset)."""
    state = initial or start(data)
    theta = np.concatenate([np.log(state.K).ravel(), np.log(state.S).ravel(), [state.crowding]])
    groups = _groups(data, rows)
    damping = 1.0
    cost, gradient, hessian = _normal_equations(theta, data, groups, settings)
    for _ in range(settings.rounds):
        step = np.linalg.solve(hessian + damping * np.diag(np.diag(hessian) + 1e-6), gradient)
        trial = theta - np.clip(step, -1, 1)
        trial[-1] = max(trial[-1], 0.0)
        new = _normal_equations(trial, data, groups, settings)
        if new[0] < cost:
            small = (cost - new[0]) < settings.patience * cost
            theta, (cost, gradient, hessian) = trial, new
            damping = max(damping / 6, 1e-5)
            if small:
                break
        else:
            damping *= 6
    return _unpack(theta, data.paper)


def _unpack(theta, paper) -> Fit:
    logs = theta[:-1].reshape(2, -1, BANDS)
    return Fit(np.exp(logs[0]), np.exp(logs[1]), float(theta[-1]), paper)


def _groups(data, rows):
    pair = data.pair
    found = {}
    for index in np.flatnonzero(rows):
        found.setdefault(tuple(pair[index]), []).append(index)
    return [(key, np.array(indices)) for key, indices in found.items()]


def _normal_equations(theta, data, groups, settings):
    state = _unpack(theta, data.paper)
    paint_count = data.load.shape[1]
    logs = theta[:-1].reshape(2 * paint_count, BANDS)
    size = 2 * paint_count * BANDS + 1
    hessian, gradient, cost = np.zeros((size, size)), np.zeros(size), 0.0
    for (a, b), indices in groups:
        paints = [a] if a == b else [a, b]
        load = data.load[indices] * 100
        total = load.sum(axis=1)[:, None]
        R, by_K, by_S, layer_S = _forward(load, state.K, state.S, state.crowding, data.paper)
        thin = 1 + state.crowding * total
        columns = [by_K * load[:, [p]] * state.K[p] for p in paints]
        columns += [by_S * load[:, [p]] * state.S[p] / thin for p in paints]
        J_R = np.stack(columns, axis=1)  # samples, blocks, bands
        by_crowding = -by_S * layer_S * total / thin
        weight = settings.single_weight if a == b else 1.0

        Lab, by_R = _Lab_by_R(R)
        error = Lab - spectrum_to_Lab(data.R[indices])
        size_E = np.linalg.norm(error, axis=1)
        huber = np.minimum(1.0, settings.huber_Lab / np.maximum(size_E, 1e-9))
        loss = np.where(
            size_E < settings.huber_Lab,
            size_E**2,
            2 * settings.huber_Lab * size_E - settings.huber_Lab**2,
        )
        cost += weight * loss.sum()
        J = by_R[:, :, None, :] * J_R[:, None]
        J = np.concatenate(
            [J.reshape(len(indices), 3, -1), (by_R @ by_crowding[:, :, None])], axis=2
        )
        J = J * np.sqrt(weight * huber)[:, None, None]
        flat = J.reshape(-1, J.shape[2])
        residual = (error * np.sqrt(weight * huber)[:, None]).ravel()

        slots = [*paints, *(paint_count + p for p in paints)]
        where = np.concatenate(
            [np.arange(s * BANDS, (s + 1) * BANDS) for s in slots] + [[size - 1]]
        )
        hessian[np.ix_(where, where)] += flat.T @ flat
        gradient[where] += flat.T @ residual

        # Cube roots of reflectance, on the scale of L*.
        root, goal = np.cbrt(R), np.cbrt(data.R[indices])
        trust = (
            weight
            * settings.spectral
            * np.where(data.clamped[indices], settings.clamped_weight, 1.0)
        )
        gap = root - goal
        cost += (trust * gap**2).sum() * 100
        J_root = J_R / (3 * root**2)[:, None]
        for i, first in enumerate(slots):
            gradient[first * BANDS : (first + 1) * BANDS] += 100 * (trust * gap * J_root[:, i]).sum(
                axis=0
            )
            for j, second in enumerate(slots):
                diagonal = 100 * (trust * J_root[:, i] * J_root[:, j]).sum(axis=0)
                rows_ = np.arange(first * BANDS, (first + 1) * BANDS)
                hessian[rows_, rows_ - first * BANDS + second * BANDS] += diagonal
    rough = _roughness_matrix(settings)
    cost += np.einsum("pi,ij,pj->", logs, rough, logs) + settings.ridge * (logs**2).sum()
    penalty = rough + settings.ridge * np.eye(BANDS)
    for block in range(2 * paint_count):
        span = slice(block * BANDS, (block + 1) * BANDS)
        hessian[span, span] += penalty
        gradient[span] += penalty @ logs[block]
    hessian[-1, -1] += 1e-9
    return cost, gradient, hessian

"""Damped least squares (Levenberg and Marquardt) for a `Problem`, in NumPy alone."""

from __future__ import annotations

import numpy as np

from core.paint.own.problem import Problem
from core.paint.pigment.pigments import Floats
from core.progress import ShouldStop, step

ROUNDS = 60
ENOUGH = 1e-5

_DAMPING, _CALMER, _WILDER, _MOST_DAMPING = 1e-2, 5.0, 6.0, 1e8
_LONGEST = 1.5
"""Standard deviations any unknown may move in one step."""


def solve(
    problem: Problem,
    start: Floats | None = None,
    should_stop: ShouldStop | None = None,
    rounds: int = ROUNDS,
    enough: float = ENOUGH,
) -> tuple[Floats, float, Floats]:
    """The likeliest unknowns.

    Parameters
    ----------
    problem : Problem
    start : ndarray, shape (size,), float, optional
        A guess; the middle of the prior without it. Other starts end in the same place.
    should_stop : callable, optional
    rounds : int
    enough : float
        Share of the cost that a step must still gain.

    Returns
    -------
    x : ndarray, shape (size,), float
    cost : float
    H : ndarray, shape (size, size), float
        Half the Hessian at x, by Gauss and Newton: its inverse is the posterior's covariance.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    """
    x = np.zeros(problem.size) if start is None else np.array(start, dtype=np.float64)
    damping = _DAMPING
    cost, gradient, H = problem.normal(x)
    for _ in range(rounds):
        step(0.0, None, should_stop)
        damped = H + damping * np.diag(np.diag(H))
        trial = x - np.clip(np.linalg.solve(damped, gradient), -_LONGEST, _LONGEST)
        new = problem.cost(trial)
        if new < cost:
            small = cost - new < enough * cost
            x = trial
            cost, gradient, H = problem.normal(x)
            damping = max(damping / _CALMER, 1e-6)
            if small:
                break
        else:
            damping *= _WILDER
            if damping > _MOST_DAMPING:
                break
    return x, cost, H

"""From a rough guess to the best whole parts: exact film, least squares, then counting.

For each set of paints the best amounts are found as real numbers first; near them the film is
almost linear in the logarithms of the loads, so the promising whole parts can be picked by
arithmetic and only those few are worked out exactly.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour import delta_E_2000
from core.paint.measured import FULL_LOAD_ML, load_Lab
from core.paint.metric import local_metric
from core.paint.recipes import MAX_PARTS, whole_parts

Floats = NDArray[np.float64]

_STEP = 1e-3
_FAINTEST_LOG = np.log(1e-9)
_FULL_LOG = np.log(FULL_LOAD_ML)
PART_COST = 0.03
"""Delta E 2000 a further part must gain to be worth counting."""


@dataclass(frozen=True, eq=False)
class Found:
    """Mixes of whole parts near some targets; all arrays one row a mix.

    Attributes
    ----------
    start : ndarray, shape (n,), int
        Which of the starts it came from.
    parts : ndarray, shape (n, 13), int
        By measured paint.
    load_ml : ndarray, shape (n,), float
    Lab : ndarray, shape (n, 3), float
    delta_E : ndarray, shape (n,), float
        CIEDE2000 to the target of its start.
    """

    start: NDArray[np.int64]
    parts: NDArray[np.int64]
    load_ml: Floats
    Lab: Floats
    delta_E: Floats


def refine(columns: list[tuple[int, ...]], loads: Floats, targets: Floats, keep: int = 6) -> Found:
    """The best whole parts for sets of paints.

    Parameters
    ----------
    columns : list of tuples of int
        The measured paints (rows of the data) of each start, one to three.
    loads : ndarray, shape (n, 13), float
        A rough guess for each start, millilitres.
    targets : ndarray, shape (n, 3), float
        CIELAB each start aims at.
    keep : int
        How many ways of counting to work out for each start.

    Returns
    -------
    Found
    """
    results = []
    for size in sorted({len(columns_) for columns_ in columns}):
        chosen = np.array([i for i, columns_ in enumerate(columns) if len(columns_) == size])
        paints = np.array([columns[i] for i in chosen])
        results.append(_refine_size(chosen, paints, loads[chosen], targets[chosen], keep))
    return Found(
        *(
            np.concatenate([getattr(result, name) for result in results])
            for name in ("start", "parts", "load_ml", "Lab", "delta_E")
        )
    )


def _scatter(paints: NDArray[np.int64], values: Floats) -> Floats:
    """Values of each row's paints, (n, size), into vectors of all 13."""
    out = np.zeros((len(paints), 13))
    np.put_along_axis(out, paints, values, axis=1)
    return out


def _clamp(log_load: Floats) -> Floats:
    """Keep single loads above nothing and the sum below the most that was measured."""
    log_load = np.maximum(log_load, _FAINTEST_LOG)
    over = np.log(np.exp(log_load).sum(axis=1, keepdims=True)) - _FULL_LOG
    clamped: Floats = log_load - np.maximum(over, 0)
    return clamped


def _slopes(paints: NDArray[np.int64], log_load: Floats) -> tuple[Floats, Floats]:
    """CIELAB, (n, 3), and its change with each log load, (n, 3, size)."""
    size = paints.shape[1]
    shifted = np.repeat(log_load[:, None], size + 1, axis=1)
    shifted[:, np.arange(1, size + 1), np.arange(size)] += _STEP
    tall = np.repeat(paints, size + 1, axis=0)
    Lab = load_Lab(_scatter(tall, np.exp(shifted.reshape(-1, size)))).reshape(-1, size + 1, 3)
    slopes = ((Lab[:, 1:] - Lab[:, :1]) / _STEP).transpose(0, 2, 1)
    return Lab[:, 0], slopes


def _refine_size(
    chosen: NDArray[np.int64], paints: NDArray[np.int64], loads: Floats, targets: Floats, keep: int
) -> Found:
    size = paints.shape[1]
    metric = local_metric(targets)
    log_load = np.log(np.maximum(np.take_along_axis(loads, paints, axis=1), 1e-9))
    for damping in (0.3, 0.1, 0.03, 0.01, 0.01):
        Lab, slopes = _slopes(paints, log_load)
        J = metric @ slopes
        error = metric @ (Lab - targets)[:, :, None]
        normal = J.transpose(0, 2, 1) @ J
        normal += (
            damping
            * np.eye(size)
            * (np.trace(normal, axis1=1, axis2=2) / size + 1e-6)[:, None, None]
        )
        step = np.linalg.solve(normal, J.transpose(0, 2, 1) @ error)[:, :, 0]
        log_load = _clamp(log_load - np.clip(step, -1.2, 1.2))
    Lab, slopes = _slopes(paints, log_load)
    J = metric @ slopes
    error = (metric @ (Lab - targets)[:, :, None])[:, :, 0]

    ways = whole_parts(size, MAX_PARTS)
    log_ways = np.log(ways / ways.sum(axis=1, keepdims=True))
    # Distance of each way from the best amounts, its own overall load still free.
    shift = log_ways[None] - log_load[:, None]  # starts, ways, paints
    moved = error[:, None] + np.einsum("ncp,nwp->nwc", J, shift)
    overall = J.sum(axis=2)
    push = np.einsum("nc,nwc->nw", overall, moved) / ((overall**2).sum(axis=1) + 1e-9)[:, None]
    moved -= push[:, :, None] * overall[:, None]
    guess = np.sqrt((moved**2).sum(axis=2)) + PART_COST * ways.sum(axis=1)
    take = np.argsort(guess, axis=1)[:, :keep]

    starts = np.repeat(np.arange(len(paints)), take.shape[1])
    way = take.ravel()
    total_log = -np.take_along_axis(push, take, axis=1).ravel()
    near = np.log(np.exp(log_load).sum(axis=1))[starts]
    total_log = np.minimum(np.clip(total_log, near - 1.5, near + 1.5), _FULL_LOG)
    total_log, Lab = best_load(paints[starts], log_ways[way], total_log, targets[starts])
    parts = np.zeros((len(way), 13), dtype=np.int64)
    np.put_along_axis(parts, paints[starts], ways[way], axis=1)
    return Found(chosen[starts], parts, np.exp(total_log), Lab, delta_E_2000(Lab, targets[starts]))


def best_load(
    paints: NDArray[np.int64], log_shares: Floats, total_log: Floats, targets: Floats
) -> tuple[Floats, Floats]:
    """The load that serves fixed parts best, by damped Newton steps along one line.

    Parameters
    ----------
    paints : ndarray, shape (n, size), int
        Rows of the measured data.
    log_shares : ndarray, shape (n, size), float
        Logarithm of each paint's share.
    total_log : ndarray, shape (n,), float
        Logarithm of a first guess of the load.
    targets : ndarray, shape (n, 3), float

    Returns
    -------
    total_log : ndarray, shape (n,), float
    Lab : ndarray, shape (n, 3), float
    """
    metric = local_metric(targets)
    shares = np.exp(log_shares)

    def at(log: Floats) -> Floats:
        return load_Lab(_scatter(paints, shares * np.exp(log)[:, None]))

    Lab = at(total_log)
    for _ in range(3):
        slope = (metric @ ((at(total_log + _STEP) - Lab) / _STEP)[:, :, None])[:, :, 0]
        error = (metric @ (Lab - targets)[:, :, None])[:, :, 0]
        step = (slope * error).sum(axis=1) / ((slope**2).sum(axis=1) + 1e-6)
        total_log = np.minimum(total_log - np.clip(step, -0.7, 0.7), _FULL_LOG)
        Lab = at(total_log)
    return total_log, Lab

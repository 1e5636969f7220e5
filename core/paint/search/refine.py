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
from core.memory import Memory
from core.paint.pigment.measured import FULL_LOAD_ML, measured_paints
from core.paint.pigment.pigments import Pigments
from core.paint.search.metric import local_metric
from core.paint.search.recipes import MAX_PAINTS, whole_parts

Floats = NDArray[np.float64]

_STEP = 1e-3
_FAINTEST_LOG = np.log(1e-9)
_FULL_LOG = np.log(FULL_LOAD_ML)
PART_COST = 0.03
"""Delta E 2000 a further part must gain to be worth counting."""


@dataclass(frozen=True, eq=False)
class Refined:
    """Mixes of whole parts near some targets; all arrays one row a mix.

    Attributes
    ----------
    start : ndarray, shape (n,), int
        Which of the starts it came from.
    parts : ndarray, shape (n, paints), int
        By row of the pigments.
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


_Row = tuple[NDArray[np.int8], Floats, Floats, Floats]
known: Memory[_Row] = Memory(4000)
"""Parts, loads, Lab and delta E of every start, some 2 kB each: about fifteen boxes' worth."""


def refine(
    columns: list[tuple[int, ...]],
    loads: Floats,
    targets: Floats,
    keep: int = 6,
    pigments: Pigments | None = None,
) -> Refined:
    """The best whole parts for sets of paints; a start asked for before is remembered.

    Parameters
    ----------
    columns : list of tuples of int
        The paints (rows of the pigments) of each start, one to three.
    loads : ndarray, shape (n, paints), float
        A rough guess for each start, millilitres.
    targets : ndarray, shape (n, 3), float
        CIELAB each start aims at.
    keep : int
        How many ways of counting to work out for each start.
    pigments : Pigments, optional
        The measured paints without it.

    Returns
    -------
    Refined
        The starts in their order.
    """
    data = pigments or measured_paints()
    keys = [
        (data, paints, loads[row, list(paints)].tobytes(), targets[row].tobytes(), keep)
        for row, paints in enumerate(columns)
    ]
    rows = [known.get(key) for key in keys]
    new = [number for number, row in enumerate(rows) if row is None]
    if new:
        found = _refine(data, [columns[n] for n in new], loads[new], targets[new], keep)
        each = [np.flatnonzero(found.start == place) for place in range(len(new))]
        for number, own in zip(new, each, strict=True):
            parts = found.parts[own].astype(np.int8)
            rows[number] = (parts, found.load_ml[own], found.Lab[own], found.delta_E[own])
        known.put_all((keys[number], row) for number in new if (row := rows[number]) is not None)
    every = [row for row in rows if row is not None]
    return Refined(
        np.repeat(np.arange(len(every)), [len(row[0]) for row in every]),
        np.concatenate([row[0] for row in every]).astype(np.int64),
        np.concatenate([row[1] for row in every]),
        np.concatenate([row[2] for row in every]),
        np.concatenate([row[3] for row in every]),
    )


def _refine(
    data: Pigments, columns: list[tuple[int, ...]], loads: Floats, targets: Floats, keep: int
) -> Refined:
    sizes = np.array([len(columns_) for columns_ in columns])
    # Sets of one or two are filled up with a column of no paint, so that all go through the film
    # together.
    none = len(data.keys)
    paints = np.full((len(columns), MAX_PAINTS), none)
    for row, columns_ in enumerate(columns):
        paints[row, : len(columns_)] = columns_
    metric = local_metric(targets)
    log_load = _best_amounts(data, paints, loads, targets, metric)
    Lab, slopes = _slopes(data, paints, log_load)
    J = metric @ slopes
    error = (metric @ (Lab - targets)[:, :, None])[:, :, 0]

    starts, parts, total_logs = [], [], []
    for size in np.unique(sizes):
        chosen = np.flatnonzero(sizes == size)
        ways = whole_parts(int(size))
        take, total_log = _promising(
            ways, J[chosen, :, :size], error[chosen], log_load[chosen, :size], keep
        )
        padded = np.zeros((take.size, MAX_PAINTS), dtype=np.int64)
        padded[:, :size] = ways[take.ravel()]
        starts.append(np.repeat(chosen, take.shape[1]))
        parts.append(padded)
        total_logs.append(total_log.ravel())
    start = np.concatenate(starts)
    counts = np.concatenate(parts)
    shares = counts / counts.sum(axis=1, keepdims=True)
    total_log, Lab = best_load(
        paints[start], shares, np.concatenate(total_logs), targets[start], pigments=data
    )
    all_parts = np.zeros((len(start), none + 1), dtype=np.int64)
    np.put_along_axis(all_parts, paints[start], counts, axis=1)
    return Refined(
        start,
        all_parts[:, :none],
        np.exp(total_log),
        Lab,
        delta_E_2000(Lab, targets[start]),
    )


def _Lab_of(data: Pigments, paints: NDArray[np.int64], loads: Floats) -> Floats:
    """CIELAB, (n, 3), of each row's paints at their loads, both (n, 3)."""
    none = len(data.keys)
    vectors = np.zeros((len(paints), none + 1))
    np.put_along_axis(vectors, paints, loads, axis=1)
    return data.Lab(vectors[:, :none])


def _clamp(log_load: Floats) -> Floats:
    """Keep single loads above nothing and the sum below the most that was measured."""
    log_load = np.maximum(log_load, _FAINTEST_LOG)
    over = np.log(np.exp(log_load).sum(axis=1, keepdims=True)) - _FULL_LOG
    clamped: Floats = log_load - np.maximum(over, 0)
    return clamped


def _slopes(data: Pigments, paints: NDArray[np.int64], log_load: Floats) -> tuple[Floats, Floats]:
    """CIELAB, (n, 3), and its change with each log load, (n, 3, paints)."""
    shifted = np.repeat(log_load[:, None], MAX_PAINTS + 1, axis=1)
    each = np.arange(MAX_PAINTS)
    shifted[:, each + 1, each] += _STEP
    tall = np.repeat(paints, MAX_PAINTS + 1, axis=0)
    Lab = _Lab_of(data, tall, np.exp(shifted.reshape(-1, MAX_PAINTS)))
    Lab = Lab.reshape(-1, MAX_PAINTS + 1, 3)
    slopes = ((Lab[:, 1:] - Lab[:, :1]) / _STEP).transpose(0, 2, 1)
    return Lab[:, 0], slopes


def _best_amounts(
    data: Pigments, paints: NDArray[np.int64], loads: Floats, targets: Floats, metric: Floats
) -> Floats:
    """Logarithms of the loads, real numbers, that come nearest: damped Gauss-Newton steps.

    `metric` is that of the targets.
    """
    padded = np.concatenate([loads, np.zeros((len(loads), 1))], axis=1)
    log_load: Floats = np.log(np.maximum(np.take_along_axis(padded, paints, axis=1), 1e-9))
    identity = np.eye(MAX_PAINTS)
    for damping in (0.3, 0.1, 0.03, 0.01, 0.01):
        Lab, slopes = _slopes(data, paints, log_load)
        J = metric @ slopes
        error = metric @ (Lab - targets)[:, :, None]
        normal = J.transpose(0, 2, 1) @ J
        size = np.trace(normal, axis1=1, axis2=2) / MAX_PAINTS + 1e-6
        normal += damping * identity * size[:, None, None]
        step = np.linalg.solve(normal, J.transpose(0, 2, 1) @ error)[:, :, 0]
        log_load = _clamp(log_load - np.clip(step, -1.2, 1.2))
    return log_load


def _promising(
    ways: NDArray[np.int64], J: Floats, error: Floats, log_load: Floats, keep: int
) -> tuple[NDArray[np.int64], Floats]:
    """Which ways of counting come nearest by the film's slopes, and at what load.

    Returns
    -------
    take : ndarray, shape (starts, keep), int
        Rows of `ways`.
    total_log : ndarray, shape (starts, keep), float
        Logarithm of the whole load that suits each.
    """
    log_ways = np.log(ways / ways.sum(axis=1, keepdims=True))
    shift = log_ways[None] - log_load[:, None]  # starts, ways, paints
    moved = error[:, None] + np.einsum("ncp,nwp->nwc", J, shift)
    overall = J.sum(axis=2)  # what a change of the whole load does
    push = np.einsum("nc,nwc->nw", overall, moved) / ((overall**2).sum(axis=1) + 1e-9)[:, None]
    moved -= push[:, :, None] * overall[:, None]
    guess = np.sqrt((moved**2).sum(axis=2)) + PART_COST * ways.sum(axis=1)
    take = np.argsort(guess, axis=1)[:, :keep]
    near = np.log(np.exp(log_load).sum(axis=1))[:, None]
    total_log = -np.take_along_axis(push, take, axis=1)
    return take, np.minimum(np.clip(total_log, near - 1.5, near + 1.5), _FULL_LOG)


def best_load(
    paints: NDArray[np.int64],
    shares: Floats,
    total_log: Floats,
    targets: Floats,
    rounds: int = 2,
    pigments: Pigments | None = None,
) -> tuple[Floats, Floats]:
    """The load that serves fixed parts best, by damped Newton steps along one line.

    Parameters
    ----------
    paints : ndarray, shape (n, 3), int
        Rows of the pigments; the row after the last for no paint.
    shares : ndarray, shape (n, 3), float
        Each paint's share.
    total_log : ndarray, shape (n,), float
        Logarithm of a first guess of the load.
    targets : ndarray, shape (n, 3), float
    rounds : int
        Steps to take; two suffice from a good guess.
    pigments : Pigments, optional
        The measured paints without it.

    Returns
    -------
    total_log : ndarray, shape (n,), float
    Lab : ndarray, shape (n, 3), float
    """
    data = pigments or measured_paints()
    metric = local_metric(targets)
    for _ in range(rounds):
        both = np.concatenate([total_log, total_log + _STEP])
        loads = np.concatenate([shares, shares]) * np.exp(both)[:, None]
        Lab, ahead = np.split(_Lab_of(data, np.concatenate([paints, paints]), loads), 2)
        slope = (metric @ ((ahead - Lab) / _STEP)[:, :, None])[:, :, 0]
        error = (metric @ (Lab - targets)[:, :, None])[:, :, 0]
        step = (slope * error).sum(axis=1) / ((slope**2).sum(axis=1) + 1e-6)
        total_log = np.minimum(total_log - np.clip(step, -0.7, 0.7), _FULL_LOG)
    return total_log, _Lab_of(data, paints, shares * np.exp(total_log)[:, None])

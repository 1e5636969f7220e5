"""A profile as soft steps: every line's place, width and lean fitted at once.

Washes that run into each other overlap, so a line cannot be judged by itself: its neighbour's
slope would pull it. The whole profile is described by one colour a band and one smooth step a
line; places, widths and leans are searched, colours follow by linear least squares. A wash fades
at another pace above its line than below it: without the lean, the line is put too near the slower
side.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.colour.working_space import Floats

_TRIM = 0.012  # the tape's ragged edge
_NARROW, _WIDE = 0.004, 0.6
_LEAN = 0.5  # the slower half is at most three times as wide as the other
_UPRIGHT = 3.0  # cost of a lean of 1
_OUTLIER = 1.0  # density units (of 20 a natural log) beyond which a row counts less and less


@dataclass(frozen=True, eq=False)
class Target:
    """What a fit is drawn towards, and how strongly.

    Attributes
    ----------
    colours : (bands, 3) float64
        Densities.
    trust : float
        In samples.
    lines : (lines,) float64
    line_weight : float
        Cost of a line one whole height away from its place.
    width_weight : float
        Cost of a width e times what would be usual, half of the smaller neighbouring band.
    """

    colours: Floats
    trust: float
    lines: Floats
    line_weight: float
    width_weight: float = 0.0


@dataclass(frozen=True, eq=False)
class Steps:
    """The fit.

    Attributes
    ----------
    at, width, error : (lines,) float64
        Half-way points, 10-90% widths and standard errors of the places, shares of the height.
    lean : (lines,) float64
        How much slower a step sets in above its line than it ends below, -1..1.
    colours : (bands, 3) float64
        What each band tends to, in the profile's units.
    rest : float
        Root mean square of what the fit leaves, in the profile's units.
    cost : float
        The least value found, a sample.
    """

    at: Floats
    width: Floats
    lean: Floats
    error: Floats
    colours: Floats
    rest: float
    cost: float


def shares_of(y: Floats, at: Floats, width: Floats, lean: Floats | float = 0.0) -> Floats:
    """Share of each band (n, bands) at heights `y` (n,), for steps at `at` of `width`."""
    below = _below(y, at[:, None], width[:, None], np.reshape(lean, (-1, 1)))
    return np.ascontiguousarray(_shares(below).T)


def _below(y: Floats, at: Floats, width: Floats, lean: Floats) -> Floats:
    """How far each step (n, 1) is done at heights `y` (m,), 0..1, (n, m)."""
    z = (y - at) * (4.394 / width)
    z /= np.where(z < 0, 1 + lean, 1 - lean)
    return np.asarray(1 / (1 + np.exp(-np.minimum(np.maximum(z, -40), 40))))


def _shares(below: Floats) -> Floats:
    """Shares (..., bands, m) of the bands between steps that are so far done (..., lines, m)."""
    above = 1 - below
    shares = np.empty((*below.shape[:-2], below.shape[-2] + 1, below.shape[-1]))
    shares[..., 0, :] = above[..., 0, :]
    np.multiply(below[..., :-1, :], above[..., 1:, :], out=shares[..., 1:-1, :])
    shares[..., -1, :] = below[..., -1, :]
    total = shares.sum(axis=-2, keepdims=True)
    shares /= np.maximum(total, 1e-12, out=total)
    return shares


def fit_steps(
    profile: Floats,
    lines: tuple[float, ...],
    target: Target,
    *,
    softness: float = 0.4,
    pool: int = 2,
    rounds: int = 25,
) -> Steps:
    """Fit soft steps to a profile, starting from lines found roughly.

    Parameters
    ----------
    profile : (n, 3) float64
        Densities, one row after another.
    lines : tuple of float
        Where to start, ascending shares of the height.
    target : Target
    softness : float
        Width to start with, as a share of the smaller neighbouring band.
    pool : int
        So many rows become one.
    rounds : int
        Most Levenberg-Marquardt steps.
    """
    y, values = _pooled(profile, pool)
    count = len(lines)
    start = np.asarray(lines)
    gaps = np.diff([0.0, *lines, 1.0])
    room = np.minimum(gaps[:-1], gaps[1:])
    one = np.ones(count)
    low = np.concatenate([start - 0.6 * gaps[:-1], np.log(_NARROW) * one, -_LEAN * one])
    high = np.concatenate([start + 0.6 * gaps[1:], np.log(_WIDE) * one, _LEAN * one])
    theta = np.concatenate([start, np.log(np.clip(softness * room, 0.006, 0.5)), 0 * one])
    trust = target.trust / pool
    pulls = [target.line_weight, target.width_weight, _UPRIGHT]
    pull = np.sqrt(np.repeat(pulls, count) / pool)
    usual = np.concatenate([target.lines, np.log(np.clip(0.5 * room, 0.01, 0.3)), 0 * one])
    weight = np.ones(len(y))
    damping = 1e-2
    cost, shares, colours, rest = _cost(theta, y, values, weight, target, trust, pull, usual)
    normal = np.eye(3 * count)
    for number in range(rounds):
        jacobian = _jacobian(theta, y, shares, colours, weight, trust)
        jacobian = np.vstack([jacobian, np.diag(pull)])
        left = np.concatenate([rest.ravel(), pull * (theta - usual)])
        normal = jacobian.T @ jacobian
        slope = jacobian.T @ left
        better = False
        for _ in range(6):
            damped = normal.copy()
            damped.flat[:: 3 * count + 1] += damping * (normal.diagonal() + 1e-6)
            move = np.linalg.solve(damped, -slope)
            trial = theta + np.minimum(np.maximum(move, -0.7), 0.7)
            trial = np.minimum(np.maximum(trial, low), high)
            trial[:count] = np.sort(trial[:count])
            attempt = _cost(trial, y, values, weight, target, trust, pull, usual)
            if attempt[0] < cost:
                better = True
                break
            damping *= 4
        if not better:
            break
        gained = (cost - attempt[0]) / (cost + 1e-12)
        theta, (cost, shares, colours, rest) = trial, attempt
        damping = max(damping / 6, 1e-6)
        if number in (2, 5, 9):  # rows that nothing explains (a drying edge) lose their say
            size = np.linalg.norm(shares @ colours - values, axis=1)
            weight = 1 / np.sqrt(1 + (size / _OUTLIER) ** 2)
            cost, shares, colours, rest = _cost(
                theta, y, values, weight, target, trust, pull, usual
            )
        elif gained < 1e-5 and number > 9:
            break
    plain = np.linalg.norm(shares @ colours - values, axis=1)
    robust = float(np.mean(2 * _OUTLIER**2 * (np.sqrt(1 + (plain / _OUTLIER) ** 2) - 1)))
    robust += trust * float(((colours - target.colours) ** 2).sum()) / len(y)
    robust += float(((pull * (theta - usual)) ** 2).sum()) / len(y)
    spread = float(np.sqrt(np.mean(plain**2) / 3))
    inverse = np.linalg.inv(normal + 1e-9 * np.eye(3 * count))
    error = np.sqrt(np.maximum(np.diag(inverse), 0)) * spread
    at, width, lean = _parts(theta)
    return Steps(at, width, lean, error[:count], colours, spread, robust)


def _parts(theta: Floats) -> tuple[Floats, Floats, Floats]:
    """Places, widths and leans of the parameters searched."""
    at, log_width, lean = theta.reshape(3, -1)
    return at, np.exp(log_width), lean


def _pooled(profile: Floats, pool: int) -> tuple[Floats, Floats]:
    n = len(profile)
    trim = round(_TRIM * n)
    y = (np.arange(n)[trim : n - trim] + 0.5) / n
    values = profile[trim : n - trim]
    size = len(y) // pool * pool
    return y[:size].reshape(-1, pool).mean(1), values[:size].reshape(-1, pool, 3).mean(1)


def _cost(
    theta: Floats, y: Floats, values: Floats, weight: Floats, target: Target, trust: float,
    pull: Floats, usual: Floats,
) -> tuple[float, Floats, Floats, Floats]:  # fmt: skip
    """Cost, shares, best colours, and the weighted residual with the pull on colours below it."""
    count = len(target.lines)
    shares = shares_of(y, *_parts(theta))
    weighted = shares * weight[:, None]
    left = weighted.T @ shares
    left.flat[:: count + 2] += trust
    right = weighted.T @ values + trust * target.colours
    colours: Floats = np.asarray(np.linalg.solve(left, right), dtype=np.float64)
    root = np.sqrt(weight)[:, None]
    rest = np.empty((len(y) + count + 1, 3))
    np.multiply(root, shares @ colours - values, out=rest[: len(y)])
    np.multiply(np.sqrt(trust), colours - target.colours, out=rest[len(y) :])
    moved = pull * (theta - usual)
    return float((rest**2).sum() + moved @ moved), shares, colours, rest


def _jacobian(
    theta: Floats, y: Floats, shares: Floats, colours: Floats, weight: Floats, trust: float
) -> Floats:
    """Derivatives of the residual with the colours re-solved (Kaufman's variable projection,
    BIT 15, 1975), (3 (n + bands), 3 lines)."""
    count = len(theta)
    bands = count // 3 + 1
    root = np.sqrt(weight)[:, None]
    design = np.vstack([root * shares, np.sqrt(trust) * np.eye(bands)])
    basis, _ = np.linalg.qr(design)
    small = 1e-5
    # Each parameter moves one line's step and no other.
    moved = np.repeat(theta.reshape(3, 1, -1), 3, axis=1)
    moved[[0, 1, 2], [0, 1, 2]] += small
    at, log_width, lean = moved.reshape(3, count, 1)
    at_rest = _below(y, *(part[:, None] for part in _parts(theta)))
    below = np.repeat(at_rest[None], count, axis=0)
    below[np.arange(count), np.arange(count) % (bands - 1)] = _below(y, at, np.exp(log_width), lean)
    change = np.ascontiguousarray(_shares(below).transpose(0, 2, 1))
    change -= shares
    change /= small
    columns = np.zeros((count, len(y) + bands, 3))
    columns[:, : len(y)] = root * (change @ colours)
    columns -= basis @ (basis.T @ columns)
    return np.ascontiguousarray(columns.reshape(count, -1).T)

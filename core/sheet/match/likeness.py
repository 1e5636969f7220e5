"""How alike two skies are, whatever the strength of the paint and a few per cent of a line's place.

A whole sheet painted too pale, too strong or photographed too bright is the same sky still: its
paint is in the same order, only so much more or less of it. So the photo's profile is tried at
many strengths (Beer's law: the optical density of a thin wash grows with its paint), each is laid
along the sheet's with lines free to move a little, and the nearest counts. Where one band is too
pale and another too strong, each is tried at a strength of its own (`apart_band_by_band`).
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from core.colour.working_space import Floats, W_to_linear, linear_to_W

STRENGTHS = np.exp(np.linspace(np.log(0.36), np.log(2.5), 20))
"""What is tried, times the photo's own."""

_ROWS = 100
_REACH = 9  # rows, of 100, a line may be off
_MOVE = 0.6  # cost of lying one row further off than the row before, working units
_CAP = 14.0  # one band in quite another colour has only so much say
_CHROMAS = ((0.62, 0.8), (0.78, 0.35), (1.0, 0.0), (1.28, 0.35))
"""Duller or more intense throughout is the same sky too: factors of chroma, and their cost."""
_FLOOR = 0.003
_DEEPEST = 6.0
_ROUNDS = 2  # over all bands, each at the strength that suits it best beside the others
_MELTS = 2.0  # rows, of 100, over which a band's strength goes over into the next one's
_UNEVEN = 1.0  # cost of strengths that differ by a factor of e on average, working units


@dataclass(frozen=True)
class Likeness:
    """How far a sheet is from the photo at the strength that suits it best.

    Attributes
    ----------
    apart : float
        Mean distance of the rows, working units.
    strength : float
        Paint on the sheet over what the photo has.
    """

    apart: float
    strength: float


def density_rows(profile: Floats) -> Floats:
    """Optical density (100, 3), natural log, of a profile in working colours."""
    linear = W_to_linear(profile)
    density = -np.log(np.clip(linear, _FLOOR, 1.0))
    n = len(density) // _ROWS
    return np.asarray(density[: n * _ROWS].reshape(_ROWS, n, 3).mean(axis=1))


def stronger(profile: Floats, strength: float) -> Floats:
    """Working colours (n, 3) with so many times the paint."""
    density = -np.log(np.clip(W_to_linear(profile), _FLOOR, 1.0))
    return linear_to_W(np.exp(-np.clip(strength * density, 0.0, _DEEPEST)))


def likeness(reference: Floats, sheet: Floats) -> Likeness:
    """Compare two profiles (SAMPLES, 3) in working colours, from `order.profile_of`.

    Examples
    --------
    >>> sky = np.linspace([60.0, 0.0, -30.0], [90.0, 8.0, 10.0], 400)
    >>> found = likeness(sky, stronger(sky, 0.5))
    >>> round(found.strength, 1), found.apart < 0.5
    (0.5, True)
    """
    return likenesses(reference, [sheet])[0]


def likenesses(reference: Floats, sheets: Sequence[Floats]) -> list[Likeness]:
    """`likeness` of each of several profiles, in little more than the time of one."""
    density = density_rows(reference)
    wanted = linear_to_W(np.exp(-np.clip(STRENGTHS[:, None, None] * density[None], 0.0, _DEEPEST)))
    found = linear_to_W(np.exp(-np.stack([density_rows(sheet) for sheet in sheets])))
    tried = np.concatenate([wanted * [1.0, factor, factor] for factor, _ in _CHROMAS])
    costs = _laid_along(tried, found).reshape(len(sheets), len(_CHROMAS), len(STRENGTHS))
    answers = []
    for each in costs + np.array([cost for _, cost in _CHROMAS])[:, None]:
        best = int(each.argmin())
        answers.append(Likeness(float(each.flat[best]), float(STRENGTHS[best % len(STRENGTHS)])))
    return answers


def apart_band_by_band(
    reference: Floats, lines: tuple[float, ...], sheet: Floats, strength: float
) -> float:
    """Mean distance of the rows, working units, with a strength for each of the photo's bands.

    Parameters
    ----------
    reference, sheet : (SAMPLES, 3) float64
        Profiles in working colours.
    lines : tuple of float
        The reference's, shares of the height.
    strength : float
        Where to start from: that of the whole sheet, from `likeness`.
    """
    from scipy.ndimage import gaussian_filter1d  # deferred: start-up time

    density, found = density_rows(reference), linear_to_W(np.exp(-density_rows(sheet)))
    band = np.searchsorted(lines, (np.arange(_ROWS) + 0.5) / _ROWS)
    strengths, apart = np.full(len(lines) + 1, strength), np.inf
    for k in list(range(len(strengths))) * _ROUNDS:
        tried = np.repeat(strengths[None], len(STRENGTHS), axis=0)
        tried[:, k] = STRENGTHS
        logs = np.log(tried)
        rows = np.exp(gaussian_filter1d(logs[:, band], _MELTS, axis=1, mode="nearest"))
        wanted = linear_to_W(np.exp(-np.clip(rows[..., None] * density, 0.0, _DEEPEST)))
        uneven = np.abs(logs - np.median(logs, axis=1, keepdims=True)).mean(axis=1)
        costs = _laid_along(wanted, found[None])[0] + _UNEVEN * uneven
        best = int(costs.argmin())
        strengths, apart = tried[best], float(costs[best])
    return apart


def _laid_along(wanted: Floats, found: Floats) -> Floats:
    """Mean distance (sheets, n) of the rows of each of `found` (sheets, rows, 3) from each of
    `wanted` (n, rows, 3), by dynamic programming over how far each row is off."""
    # Rows first and what is compared last, a channel at a time: long runs for each sum.
    want, find = (np.ascontiguousarray(each.transpose(2, 1, 0)) for each in (wanted, found))
    rows, sheets, count = len(find[0]), len(found), len(wanted)
    width = 2 * _REACH + 1
    apart = np.full((rows, width, sheets, count), 1e3)
    for k in range(-_REACH, _REACH + 1):
        low, high = max(0, -k), min(rows, rows - k)
        gaps = want[:, low + k : high + k, None] - find[:, low:high, :, None]
        gaps *= gaps
        squared = gaps[0] + gaps[1] + gaps[2]
        apart[low:high, k + _REACH] = np.minimum(np.sqrt(squared), _CAP)
    cost = apart[0]
    for row in range(1, rows):
        moved = cost + _MOVE
        step = cost.copy()
        np.minimum(step[1:], moved[:-1], out=step[1:])
        np.minimum(step[:-1], moved[1:], out=step[:-1])
        step += apart[row]
        cost = step
    return np.asarray(cost.min(axis=0) / rows)

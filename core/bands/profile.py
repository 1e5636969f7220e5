"""The colour of a sky from top to bottom, and where lines fit it."""

from __future__ import annotations

import math
from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from core.bands.changepoints import Cuts, best_cuts
from core.bands.lines import MIN_BAND
from core.bands.mask import LEAST_COVERAGE
from core.bands.ranks import median, row_medians

Floats = NDArray[np.float64]


@dataclass(frozen=True)
class Profile:
    """The sky row by row.

    Attributes
    ----------
    y : ndarray, shape (n,)
        Top of each row, as a fraction of the photo's height.
    work : ndarray, shape (n, 3)
        Median colour in the working space.
    weights : ndarray, shape (n,)
        Share of the row that is sky.
    horizon : float
        Where the sky ends.
    mixed : float
        Working-space units: median distance of a row's pixels from its colour, over the rows.
    """

    y: Floats
    work: Floats
    weights: Floats
    horizon: float
    mixed: float


def make_profile(
    fine: NDArray[np.float32], mask: NDArray[np.bool_], horizon: float
) -> Profile | None:
    """Row medians of the sky above the horizon; None when no row holds enough sky."""
    rows = fine.shape[0]
    count = max(1, min(rows, round(horizon * rows)))
    medians = row_medians(fine[:count], mask[:count])
    coverage = mask[:count].mean(axis=1)
    kept = coverage >= LEAST_COVERAGE
    if not kept.any():
        return None
    away = np.linalg.norm(fine[:count] - medians[:, None, :], axis=-1, keepdims=True)
    mixed = float(median(row_medians(away, mask[:count])[kept, 0]))
    work = _median_filter(medians[kept].astype(np.float64), max(1, round(0.005 * rows)))
    return Profile(np.arange(count)[kept] / rows, work, coverage[kept], horizon, mixed)


def _median_filter(values: Floats, reach: int) -> Floats:
    """Running median over `reach` samples either way; the ends use what there is."""
    count = len(values)
    if count <= 2 * reach:
        windows = [values[max(0, i - reach) : i + reach + 1] for i in range(count)]
        return np.stack([median(window, axis=0) for window in windows])
    inner = median(np.lib.stride_tricks.sliding_window_view(values, 2 * reach + 1, axis=0), -1)
    first = [median(values[: i + reach + 1], axis=0) for i in range(reach)]
    last = [median(values[i - reach :], axis=0) for i in range(count - reach, count)]
    return np.concatenate([*(part[None] for part in first), inner, *(part[None] for part in last)])


_SHORTEST, _SLIVER = 0.06, 0.045
"""The thinnest band proposed, as a share of the sky and of the photo: nobody paints a sliver."""

_LEAST_PRICE = 2.0
"""What one more band costs at least, in squared working-space units: a step of 3 units in the
middle of a sky is not worth a line."""

_PRICE_PER_SPREAD = 0.27
"""The price also grows with how far the sky's rows spread about their mean: a sunset that runs
through many colours is still painted in a handful of bands."""

_PRICE_OF_MIXED = 0.02
"""And with the square of how mixed each row is: where cloud and sky share a row, its colour jumps
from one to the other without the sky having changed."""

MOST = 7
"""Most bands proposed unasked: common practice in classrooms is three to seven."""


def cut_profile(profile: Profile, count: int | None = None) -> tuple[float, ...]:
    """Where lines fit the profile best.

    Parameters
    ----------
    profile : Profile
    count : int, optional
        How many bands; otherwise as many as the colours are worth, at most `MOST`.

    Returns
    -------
    tuple of float
        Lines as fractions of the photo's height, ascending; snapped to an edge of the
        profile close by, or else to whole percents. Fewer than asked for where the sky has
        no room for so many.
    """
    cuts = _worth_it(profile) if count is None else _asked_for(profile, count)
    least = MIN_BAND if count is not None else _thinnest(profile)
    exact = [float(profile.y[at]) for at in cuts.at]
    lines: list[float] = []
    for line, following in pairwise((*exact, profile.horizon)):
        above = lines[-1] if lines else 0.0
        # A snapped line leaves room for those next to it, or stays where it was.
        for y in (_snapped(profile, line), line):
            if y - above >= least and following - y >= least:
                lines.append(y)
                break
    return tuple(lines)


def _thinnest(profile: Profile) -> float:
    """The thinnest band proposed unasked, as a share of the photo's height."""
    return max(_SHORTEST * profile.horizon, _SLIVER)


def _asked_for(profile: Profile, count: int) -> Cuts:
    n = len(profile.y)
    share = max(min(_SHORTEST, 0.5 / count), MIN_BAND / profile.horizon)
    shortest = max(1, math.ceil(share * n))
    cuts = best_cuts(profile.work, profile.weights, most=count, shortest=shortest)
    if not cuts:
        cuts = best_cuts(profile.work, profile.weights, most=1)
    return cuts[max(cuts)]


def _worth_it(profile: Profile) -> Cuts:
    weight = float(profile.weights.sum())
    pitch = float(median(np.diff(profile.y))) if len(profile.y) > 1 else 1.0
    shortest = max(1, math.ceil(_thinnest(profile) / pitch))
    cuts = best_cuts(profile.work, profile.weights, most=MOST, shortest=shortest)
    if not cuts:
        return best_cuts(profile.work, profile.weights, most=1)[1]
    price = max(_LEAST_PRICE, _PRICE_PER_SPREAD * math.sqrt(cuts[1].cost / weight))
    price += _PRICE_OF_MIXED * profile.mixed**2
    return cuts[min(cuts, key=lambda k: cuts[k].cost / weight + price * k)]


_SNAP_REACH = 0.015
_SNAP_PROMINENCE = 2.0
"""Working-space units per percent of the height by which an edge must stand out."""


def _snapped(profile: Profile, line: float) -> float:
    """The line at the steepest place close by, or at the nearest whole percent."""
    y = profile.y
    grid = round(line, 2)
    if len(y) < 30:
        return line
    pitch = float(median(np.diff(y)))
    half = max(1, round(0.005 / pitch))
    steps = np.zeros(len(y))
    steps[half:-half] = np.linalg.norm(
        profile.work[2 * half :] - profile.work[: -2 * half], axis=1
    ) / (2 * half * pitch * 100)
    # The middle of steps[i] is at the top of row i.
    near = np.flatnonzero(np.abs(y - line) <= _SNAP_REACH)
    around = np.flatnonzero(np.abs(y - line) <= 2.5 * _SNAP_REACH)
    if len(near) == 0:
        return grid
    peak = int(near[np.argmax(steps[near])])
    before, after = around[around <= peak], around[around >= peak]
    prominence = steps[peak] - max(steps[before].min(), steps[after].min())
    at_an_end = peak in (near[0], near[-1])
    return grid if at_an_end or prominence < _SNAP_PROMINENCE else float(y[peak])

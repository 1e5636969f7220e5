"""Does a band hold two colours? A test for two peaks, not for mere width."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

_APART = 8.0
"""Working-space units between two colours worth telling apart: about a step of value."""

_LEAST_SHARE = 0.15
"""What the smaller colour must cover: less is a detail."""

_VALLEY = 0.6
"""Between two peaks the density must fall below this share of the lower one."""

_TOO_WIDE = 25.0
"""Units between the halves from which even a smooth change is two colours."""

_SMOOTHING = 2.0
"""Units over which a histogram is smoothed: grain and 8-bit steps are no peaks."""


def has_two_peaks(counts: Floats, width: float) -> bool:
    """Whether a histogram along one direction of the working space shows two colours.

    Parameters
    ----------
    counts : ndarray, shape (bins,)
        Pixels a bin.
    width : float
        Working-space units a bin.

    Notes
    -----
    The histogram is cut where the two parts differ most (Otsu, 1979, "A threshold selection
    method from gray-level histograms"). Two parts are two colours when they are far apart,
    neither is small, and fewer pixels lie between their peaks than at either; an even slope
    from one colour to another has no such valley.
    """
    total = counts.sum()
    if total <= 0 or width * len(counts) < _APART:
        return False
    at = (np.arange(len(counts)) + 0.5) * width
    weight, first = np.cumsum(counts)[:-1], np.cumsum(counts * at)[:-1]
    rest, all_first = total - weight, float((counts * at).sum())
    both = (weight > 0) & (rest > 0)
    apart = np.zeros(len(weight))
    apart[both] = (all_first - first[both]) / rest[both] - first[both] / weight[both]
    between = weight * rest * apart**2
    # Every cut through an empty gap is as good: take the middle one.
    best = np.flatnonzero(between >= between.max() * (1 - 1e-9))
    cut = int(best[len(best) // 2])
    if min(weight[cut], rest[cut]) < _LEAST_SHARE * total or apart[cut] < _APART:
        return False
    if apart[cut] >= _TOO_WIDE:
        return True
    density = _smoothed(counts, max(1, round(_SMOOTHING / width)))
    low, high = int(np.argmax(density[: cut + 1])), cut + 1 + int(np.argmax(density[cut + 1 :]))
    valley = float(density[low : high + 1].min())
    return valley < _VALLEY * min(float(density[low]), float(density[high]))


def _smoothed(counts: Floats, bins: int) -> Floats:
    """Two running means one after the other: a triangle of about `bins` half width."""
    box = np.full(bins, 1.0 / bins)
    padded = np.pad(counts, bins)
    return np.asarray(np.convolve(np.convolve(padded, box, "same"), box, "same")[bins:-bins])

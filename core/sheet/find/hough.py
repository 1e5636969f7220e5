"""Straight edges of a picture: a Hough transform that votes with colour gradients.

Two families are searched apart, steep lines and level ones, each as `position = p + s * run`:
a steep line's x at a given y, a level line's y at a given x, measured from the middle. A level
line is a steep one of the transposed picture, so there is one routine.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats, dot

MAX_LINES = 16
_SLOPES = np.linspace(-0.6, 0.6, 81)
_SPREAD = 4  # a pixel votes for slopes this many steps around its own direction
_CROWD = 0.8
_SMOOTH = (0.7, 1.0)  # deviations, slopes and columns, over which votes are spread
_BLURS = 5  # columns a vote reaches then
_CAP = 2.5  # gradient (working units a pixel) beyond which an edge counts no more


@dataclass(frozen=True, eq=False)
class Gradient:
    """Colour gradients of a small picture.

    Attributes
    ----------
    gx, gy : (h, w, 3) float64
        Differences of the working colours per pixel.
    bx, by : (h, w) float64
        Differences of brightness, for their sign: paint only ever darkens its paper.
    """

    gx: Floats
    gy: Floats
    bx: Floats
    by: Floats

    @cached_property
    def turned(self) -> Gradient:
        """Of the transposed picture."""
        return Gradient(self.gy.swapaxes(0, 1), self.gx.swapaxes(0, 1), self.by.T, self.bx.T)

    @cached_property
    def edges(self) -> tuple[Floats, Floats]:
        """How strong an edge each pixel is on (h, w), and its slope; see `find_lines`."""
        from scipy.ndimage import uniform_filter  # deferred: start-up time

        gx, gy = self.gx, self.gy
        Jxx, Jyy, Jxy = dot(gx, gx), dot(gy, gy), dot(gx, gy)
        strength = np.sqrt(0.5 * (Jxx + Jyy + np.hypot(Jxx - Jyy, 2 * Jxy)))
        theta = 0.5 * np.arctan2(2 * Jxy, Jxx - Jyy)
        slope = -np.tan(np.clip(theta, -1.2, 1.2))
        # In wood grain and cloth everything is an edge: only what stands out from around it
        # counts. Clipped, so that the strong edge of the paper nearby does not drown the paint's
        # faint one.
        around = uniform_filter(np.minimum(strength, _CROWD), 25)
        return strength * np.minimum(1.0, strength / (2.0 * around + 0.05)), slope


def gradient_of(linear: NDArray[np.float32], W: Floats) -> Gradient:
    """Gradients of a picture, slightly smoothed, in linear light and in working colours, both
    (h, w, 3)."""
    from scipy.ndimage import gaussian_filter  # deferred: start-up time

    smooth = gaussian_filter(W, (0.8, 0.8, 0), mode="nearest")
    bright = gaussian_filter(np.sqrt(np.clip(linear, 0, None)).mean(-1), 0.8, mode="nearest")
    bright = bright.astype(np.float64)
    return Gradient(
        np.gradient(smooth, axis=1), np.gradient(smooth, axis=0),
        np.gradient(bright, axis=1), np.gradient(bright, axis=0),
    )  # fmt: skip


@dataclass(frozen=True, eq=False)
class LineSet:
    """Steep lines `x = p + s * (y - middle)` with how well the picture bears them out.

    Attributes
    ----------
    p, s : (n,) float64
    reach : (n, h + 1) float64
        Running sum over the rows of the support, 0..1 a row.
    """

    p: Floats
    s: Floats
    reach: Floats

    def support(self, start: Floats, end: Floats) -> Floats:
        """Mean support of each line between rows `start` and `end`, shape (n, ...)."""
        h = self.reach.shape[1] - 1
        a = np.clip(np.rint(start), 0, h).astype(int)
        b = np.clip(np.rint(end), 0, h).astype(int)
        rows = np.arange(len(self.p)).reshape((-1,) + (1,) * (a.ndim - 1))
        gained = self.reach[rows, b] - self.reach[rows, a]
        return np.asarray(gained / np.maximum(b - a, 1))


def find_lines(gradient: Gradient, sign: int) -> LineSet:
    """The strongest steep lines where the picture gets brighter (1) or darker (-1) rightwards."""
    from scipy.ndimage import gaussian_filter  # deferred: start-up time

    h, w = gradient.bx.shape
    strength, slope = gradient.edges
    keep = (strength > 0.25) & (np.abs(slope) < 0.68) & (sign * gradient.bx > 0)
    y, x = np.nonzero(keep)
    weight = np.minimum(strength[keep], _CAP) / _CAP
    step = _SLOPES[1] - _SLOPES[0]
    nearest = np.rint((slope[keep] - _SLOPES[0]) / step).astype(int)
    margin = int(0.6 * h / 2) + 2
    bins = w + 2 * margin
    middle = y - h / 2

    # Where each pixel votes, shifts by pixels: slopes that are none count nothing.
    index = nearest + np.arange(-_SPREAD, _SPREAD + 1)[:, None]
    ok = (index >= 0) & (index < len(_SLOPES))
    at = x - _SLOPES[np.clip(index, 0, len(_SLOPES) - 1)] * middle + margin
    columns = np.clip(np.rint(at), 0, bins - 1).astype(int)
    places, counted = np.where(ok, index * bins + columns, 0), weight * ok

    def votes_of(part: NDArray[np.bool_]) -> Floats:
        size = len(_SLOPES) * bins
        votes = np.bincount(places[:, part].ravel(), counted[:, part].ravel(), size)
        return np.asarray(votes, dtype=np.float64).reshape(len(_SLOPES), bins)

    left = np.ones(len(x), dtype=bool)
    votes = votes_of(left)
    smooth = gaussian_filter(votes, _SMOOTH)
    found_p, found_s = [], []
    for _ in range(MAX_LINES):
        i, j = divmod(int(smooth.argmax()), bins)
        if smooth[i, j] < 0.03 * h:
            break
        place, slope_here = float(j - margin), float(_SLOPES[i])
        found_p.append(place)
        found_s.append(slope_here)
        # What this line explains votes for no other: else its own shadows would fill the list.
        near = left & (np.abs(x - place - slope_here * middle) < 3.5)
        votes = votes - votes_of(near)
        left &= ~near
        low, high = columns[:, near].min(initial=j), columns[:, near].max(initial=j)
        # Only near what was taken away is there anything to smooth anew.
        first, last = max(0, low - _BLURS), min(bins, high + _BLURS + 1)
        a, b = max(0, first - _BLURS), min(bins, last + _BLURS)
        smooth[:, first:last] = gaussian_filter(votes[:, a:b], _SMOOTH)[:, first - a : last - a]
    p, s = np.asarray(found_p, dtype=np.float64), np.asarray(found_s, dtype=np.float64)
    return line_set(gradient, sign, p, s)


def line_set(gradient: Gradient, sign: int, p: Floats, s: Floats) -> LineSet:
    """Given steep lines, with how well the picture bears them out."""
    return LineSet(p, s, _reach(gradient, sign, p, s))


def _reach(gradient: Gradient, sign: int, p: Floats, s: Floats) -> Floats:
    gx, gy, bx = gradient.gx, gradient.gy, gradient.bx
    h, w = bx.shape
    rows = np.arange(h)
    at = p[:, None] + s[:, None] * (rows[None] - h / 2)
    best = np.zeros((len(p), h))
    length = np.sqrt(1 + s**2)[:, None, None]
    for shift in (-2, -1, 0, 1, 2):
        column = np.rint(at + shift).astype(int)
        inside = (column >= 0) & (column < w)
        column = np.clip(column, 0, w - 1)
        inside &= sign * bx[rows[None], column] > 0
        across = (gx[rows[None], column] - s[:, None, None] * gy[rows[None], column]) / length
        best = np.maximum(best, np.where(inside, np.sqrt(dot(across, across)), 0))
    support: NDArray[np.float64] = np.clip(best / 1.2, 0, 1)
    return np.concatenate([np.zeros((len(p), 1)), np.cumsum(support, axis=1)], axis=1)

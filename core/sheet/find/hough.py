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

from core.colour.medians import channels_first
from core.colour.working_space import Floats, brightness, dot_planes

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
    gx, gy : (3, h, w) float64
        Differences of the working colours per pixel.
    bx, by : (h, w) float64
        Differences of brightness, for their sign: paint only ever darkens its paper.
    across, down, along : (h, w) float64
        Sums over the channels of `gx`, of `gy` squared, and of one times the other.
    size : (h, w) float64
        How much the colour changes along its steepest way.
    """

    gx: Floats
    gy: Floats
    bx: Floats
    by: Floats
    across: Floats
    down: Floats
    along: Floats
    size: Floats

    @cached_property
    def turned(self) -> Gradient:
        """Of the transposed picture."""
        return Gradient(
            self.gy.swapaxes(1, 2), self.gx.swapaxes(1, 2), self.by.T, self.bx.T,
            self.down.T, self.across.T, self.along.T, self.size.T,
        )  # fmt: skip

    def within(self, area: NDArray[np.bool_]) -> Gradient:
        """Of an area (h, w) of the picture, as if all else were even."""
        return Gradient(
            self.gx * area, self.gy * area, self.bx * area, self.by * area,
            self.across * area, self.down * area, self.along * area, self.size * area,
        )  # fmt: skip

    @cached_property
    def edges(self) -> Floats:
        """How strong an edge each pixel is on (h, w)."""
        from scipy.ndimage import uniform_filter  # deferred: start-up time

        # In wood grain and cloth everything is an edge: only what stands out from around it
        # counts. Clipped, so that the strong edge of the paper nearby does not drown the paint's
        # faint one.
        around = uniform_filter(np.minimum(self.size, _CROWD), 25)
        return np.asarray(self.size * np.minimum(1.0, self.size / (2.0 * around + 0.05)))

    def slopes(self, y: NDArray[np.int_], x: NDArray[np.int_]) -> Floats:
        """Of the edges at some of the pixels; see `find_lines`."""
        theta = 0.5 * np.arctan2(2 * self.along[y, x], self.across[y, x] - self.down[y, x])
        return -np.tan(np.clip(theta, -1.2, 1.2))


def gradient_of(linear: NDArray[np.float32], W: Floats) -> Gradient:
    """Gradients of a picture, slightly smoothed, in linear light and in working colours, both
    (h, w, 3)."""
    from scipy.ndimage import gaussian_filter  # deferred: start-up time

    smooth = gaussian_filter(channels_first(W), (0, 0.8, 0.8), mode="nearest")
    bright = brightness(np.sqrt(np.clip(linear, 0, None)))
    bright = gaussian_filter(bright, 0.8, mode="nearest").astype(np.float64)
    gx, gy = _rightwards(smooth), _rightwards(smooth.swapaxes(1, 2)).swapaxes(1, 2)
    across, down, along = dot_planes(gx, gx), dot_planes(gy, gy), dot_planes(gx, gy)
    size = np.sqrt(0.5 * (across + down + np.hypot(across - down, 2 * along)))
    bx, by = _rightwards(bright), _rightwards(bright.T).T
    return Gradient(gx, gy, bx, by, across, down, along, size)


def _rightwards(picture: Floats) -> Floats:
    """`numpy.gradient` along the last axis, in less time."""
    change = np.empty_like(picture)
    np.subtract(picture[..., 2:], picture[..., :-2], out=change[..., 1:-1])
    change[..., 1:-1] *= 0.5
    np.subtract(picture[..., 1], picture[..., 0], out=change[..., 0])
    np.subtract(picture[..., -1], picture[..., -2], out=change[..., -1])
    return change


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
    # What changes more downwards than across is no steep line: it need not be looked at.
    keep = (gradient.edges > 0.25) & (sign * gradient.bx > 0) & (gradient.across > gradient.down)
    y, x = np.divmod(np.flatnonzero(keep), w)
    slope = gradient.slopes(y, x)
    steep = np.abs(slope) < 0.68
    y, x, slope = y[steep], x[steep], slope[steep]
    weight = np.minimum(gradient.edges[y, x], _CAP) / _CAP
    step = _SLOPES[1] - _SLOPES[0]
    nearest = np.rint((slope - _SLOPES[0]) / step).astype(int)
    margin = int(0.6 * h / 2) + 2
    bins = w + 2 * margin
    middle = y - h / 2

    # Where each pixel votes, shifts by pixels: slopes that are none count nothing.
    index = nearest + np.arange(-_SPREAD, _SPREAD + 1)[:, None]
    ok = (index >= 0) & (index < len(_SLOPES))
    index = np.clip(index, 0, len(_SLOPES) - 1)
    at = x - _SLOPES[index] * middle + margin
    columns = np.clip(np.rint(at), 0, bins - 1).astype(int)
    counted = weight * ok

    def votes_of(which: NDArray[np.int_] | slice, low: int, high: int) -> Floats:
        """Of some pixels, none of which votes for columns outside of `low` to `high`."""
        size = high + 1 - low
        places = index[:, which] * size + (columns[:, which] - low)
        votes = np.bincount(places.ravel(), counted[:, which].ravel(), len(_SLOPES) * size)
        return np.asarray(votes, dtype=np.float64).reshape(len(_SLOPES), size)

    left = np.arange(len(x))
    votes = votes_of(slice(None), 0, bins - 1)
    if votes.max() < 0.02 * h:  # smoothing makes none larger
        return line_set(gradient, sign, np.empty(0), np.empty(0))
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
        explained = np.abs(x[left] - place - slope_here * middle[left]) < 3.5
        near, left = left[explained], left[~explained]
        low, high = (int(end(columns[:, near], initial=j)) for end in (np.min, np.max))
        votes[:, low : high + 1] -= votes_of(near, low, high)
        # Only near what was taken away is there anything to smooth anew.
        first, last = max(0, low - _BLURS), min(bins, high + _BLURS + 1)
        a, b = max(0, first - _BLURS), min(bins, last + _BLURS)
        smooth[:, first:last] = gaussian_filter(votes[:, a:b], _SMOOTH)[:, first - a : last - a]
    p, s = np.asarray(found_p, dtype=np.float64), np.asarray(found_s, dtype=np.float64)
    return line_set(gradient, sign, p, s)


def find_sides(gradient: Gradient, signs: tuple[int, int]) -> list[LineSet] | None:
    """The strongest lines for the left, right, upper and lower side of something, of one sign and
    the other each; None as soon as one side has none."""
    sides = []
    for each in (gradient, gradient.turned):
        for sign in signs:
            found = find_lines(each, sign)
            if len(found.p) == 0:
                return None
            sides.append(found)
    return sides


def line_set(gradient: Gradient, sign: int, p: Floats, s: Floats) -> LineSet:
    """Given steep lines, with how well the picture bears them out."""
    return LineSet(p, s, _reach(gradient, sign, p, s))


def _reach(gradient: Gradient, sign: int, p: Floats, s: Floats) -> Floats:
    gx, gy, bx = gradient.gx, gradient.gy, gradient.bx
    h, w = bx.shape
    rows = np.arange(h)
    at = p[:, None] + s[:, None] * (rows[None] - h / 2)
    # The best of five pixels beside each other: (5, lines, rows).
    column = np.rint(at + np.arange(-2, 3)[:, None, None]).astype(int)
    inside = (column >= 0) & (column < w)
    column = np.clip(column, 0, w - 1)
    inside &= sign * bx[rows, column] > 0
    across = gx[:, rows, column] - s[:, None] * gy[:, rows, column]
    across /= np.sqrt(1 + s**2)[:, None]
    best = np.where(inside, np.sqrt(dot_planes(across, across)), 0).max(axis=0)
    support: NDArray[np.float64] = np.clip(best / 1.2, 0, 1)
    return np.concatenate([np.zeros((len(p), 1)), np.cumsum(support, axis=1)], axis=1)

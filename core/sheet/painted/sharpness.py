"""How sharp an edge is: its mean profile, measured along its course.

Columns are shifted so that the edge is level, and their median shows the change from above to
below almost without grain. A smooth step on a gentle trend is fitted to it.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.medians import channels_first, medians, medians_of_known
from core.colour.working_space import Floats
from core.sheet.painted.courses import Course, strip_cuts

_WINDOWS = ((0.06, 1), (0.08, 2))  # half the height of a fit, degree of its trend
_BORDER = 0.015  # the fit keeps away from the tape's ragged edge
_WIDTHS = np.exp(np.arange(np.log(0.004), np.log(0.1), 0.08))
_OFFSETS = np.arange(-4, 5) * 0.0015


@dataclass(frozen=True, eq=False)
class Sharpness:
    """A fitted step; places and widths are shares of the height.

    Attributes
    ----------
    at : float
        Its middle.
    width : float
        10-90%.
    step : (3,) float64
        Working colours, below minus above.
    share : float
        Of the change around (a trend taken off), explained by the step.
    """

    at: float
    width: float
    step: Floats
    share: float

    @property
    def size(self) -> float:
        return float(np.linalg.norm(self.step))


def sharpness_along(
    W: Floats, course: Course, mask: NDArray[np.bool_] | None = None
) -> Sharpness | None:
    """Fit the step along a course in working colours (h, w, 3); None without room for it."""
    from scipy.ndimage import gaussian_filter1d  # deferred: start-up time

    h, w = W.shape[:2]
    strips, rows = course
    cuts = strip_cuts(w)
    smooth = gaussian_filter1d(rows.astype(np.float64), 1.0, mode="nearest") + 0.5
    columns = np.arange(cuts[strips[0]], max(cuts[strips[-1] + 1], cuts[strips[0]] + 1))
    centres = (cuts[strips] + cuts[strips + 1]) / 2
    level = np.interp(columns + 0.5, centres, smooth)
    middle = float(np.median(smooth)) / h
    room = min(smooth.min() / h - _BORDER, 1 - _BORDER - smooth.max() / h)
    halves = [int(min(window, room) * h) for window, _ in _WINDOWS]
    if min(halves) < 4:
        return None
    most = max(halves)
    values, known = _levelled(W, columns, level + np.arange(-most, most + 1)[:, None] - 0.5, mask)
    fits = []
    for half, (_, degree) in zip(halves, _WINDOWS, strict=True):
        near = slice(most - half, most + half + 1)
        profile = _medians(values[:, near], None if known is None else known[near])
        fits.append(_fit(np.arange(-half, half + 1) / h, profile, degree))
    # A neighbouring wash bends one fit, grain the other: neither decides alone.
    width = float(np.exp(np.mean([np.log(fit.width) for fit in fits])))
    best = fits[-1]
    return Sharpness(middle + best.at, width, best.step, best.share)


def _levelled(
    W: Floats, columns: NDArray[np.int_], rows: Floats, mask: NDArray[np.bool_] | None
) -> tuple[Floats, NDArray[np.bool_] | None]:
    """The picture at `rows` (n, columns), channels first (3, n, columns), and where it is known."""
    rows = np.clip(rows, 0, len(W) - 1.001)
    upper = rows.astype(int)
    part = rows - upper
    here = upper * W.shape[1] + columns
    below = here + W.shape[1]
    values = np.empty((3, *rows.shape))
    for channel, plane in zip(values, channels_first(W).reshape(3, -1), strict=True):
        channel[:] = plane.take(here) * (1 - part) + plane.take(below) * part
    if mask is None:
        return values, None
    return values, mask[upper, columns] & mask[upper + 1, columns]


def _medians(values: Floats, known: NDArray[np.bool_] | None) -> Floats:
    """Medians (n, 3) over the columns of (3, n, columns), of what is known if some is in each."""
    if known is not None and known.any(axis=1).all():
        return medians_of_known(np.where(known, values, np.nan)).T
    return medians(values).T


def _fit(y: Floats, profile: Floats, degree: int) -> Sharpness:
    """The step that explains most of a profile (n, 3) beside a trend of that degree."""
    base, _ = np.linalg.qr(np.stack([y**k for k in range(degree + 1)], -1))
    z = (y[:, None, None] - _OFFSETS) * (4.394 / _WIDTHS[:, None])
    steps = 1 / (1 + np.exp(-np.clip(z, -40, 40)))
    steps = steps.reshape(len(y), -1)
    steps -= base @ (base.T @ steps)
    power = (steps**2).sum(axis=0)
    match = steps.T @ profile
    gain = (match**2).sum(axis=1) / power
    best = int(gain.argmax())
    rest = profile - base @ (base.T @ profile)
    by_width = gain.reshape(len(_WIDTHS), -1).max(axis=1)
    return Sharpness(
        at=float(_OFFSETS[best % len(_OFFSETS)]),
        width=_between(by_width),
        step=match[best] / power[best],
        share=float(gain[best] / max((rest**2).sum(), 1e-12)),
    )


def _between(gain: Floats) -> float:
    """The width at the top of a parabola through the best one and its neighbours."""
    k = int(gain.argmax())
    if not 0 < k < len(gain) - 1:
        return float(_WIDTHS[k])
    bend = gain[k - 1] - 2 * gain[k] + gain[k + 1]
    if bend >= 0:
        return float(_WIDTHS[k])
    move = 0.5 * (gain[k - 1] - gain[k + 1]) / bend
    return float(_WIDTHS[k] * (_WIDTHS[1] / _WIDTHS[0]) ** float(np.clip(move, -0.5, 0.5)))

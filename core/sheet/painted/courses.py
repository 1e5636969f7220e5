"""Courses: where something sharp runs across a picture, followed from strip to strip.

The picture is taken in narrow upright strips. Around every row of a strip a straight trend plus a
smooth step of each of several widths is fitted by least squares (as correlations with fixed
templates). What a sharp step explains better than a soft one, measured in the strip-to-strip
noise of the same rows, is evidence for an edge there; evidence of neighbouring strips adds up
along a course that bends little, so that an edge too faint for one strip is still found.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.medians import channels_first, medians, medians_of_known
from core.colour.working_space import Floats, dot_planes

STRIPS = 32
MARGIN = 0.035
"""Share of the height at top and bottom where the tape leaves edges of its own."""

_SHARP = (0.004, 0.008, 0.012, 0.017, 0.022, 0.028)  # 10-90% widths, shares of the height
_SOFT = (0.048, 0.065, 0.09)
_NOISE_AT = slice(2, 5)  # of _SHARP: the widths whose noise the evidence is measured in
_WINDOW = 0.05  # half the height of the fit
_ROWS = 32  # worked out together, see `sliding`
_NEAR = 0.014  # a soft step this near explains a sharp one's place as well
_AROUND = 0.12  # of the height: rows that share their noise
_QUIET = 0.05  # noise of a step that rounding to 8 bits leaves, squared working units
_RAGGED = 0.016  # of the height: pale or smeared by the tape
_CHANCE = 1.0  # evidence in a strip that grain gives anyway
_CAP, _FLOOR = 9.0, -6.0  # one strip has only so much say
_REACH = 0.0095  # most a course moves from strip to strip
_BEND = 2.5e4  # cost of moving, for a squared share of the height
_LEAST = 14.0  # evidence of a course
_MOST = 12
_BESIDE = 0.012  # no second course this near
_EXTEND = 0.02

Course = tuple[NDArray[np.int_], NDArray[np.int_]]
"""Strips in a row, and the pixel row of the edge in each."""


@dataclass(frozen=True, eq=False)
class Evidence:
    """For a sharp step at each row of each strip, (STRIPS, h); 0 where it is even."""

    values: Floats

    @property
    def scores(self) -> Floats:
        """What each place adds to a course."""
        scores = np.clip(self.values, _FLOOR, _CAP) - _CHANCE
        edge = max(1, round(MARGIN * scores.shape[1]))
        scores[:, :edge] = scores[:, -edge:] = -np.inf
        return np.asarray(scores)


def strip_profiles(W: Floats, mask: NDArray[np.bool_] | None = None) -> Floats:
    """Row medians of `STRIPS` upright strips, (STRIPS, h, 3)."""
    h, w = W.shape[:2]
    cuts = strip_cuts(w)
    strips = np.empty((STRIPS, h, 3))
    for i in range(STRIPS):
        a, b = cuts[i], max(cuts[i + 1], cuts[i] + 1)
        part = channels_first(W[:, a:b])
        if mask is not None and not mask[:, a:b].all():
            empty = np.asarray(~mask[:, a:b].any(axis=1))
            part = np.where(mask[:, a:b], part, np.where(empty[:, None], 0.0, np.nan))
            strips[i] = medians_of_known(part).T
            if empty.any() and not empty.all():
                rows = np.arange(h)
                for c in range(3):
                    strips[i, :, c] = np.interp(rows, rows[~empty], strips[i, ~empty, c])
        else:
            strips[i] = medians(part).T
    return strips


def strip_cuts(width: int) -> NDArray[np.int_]:
    """Where the strips of a picture begin and end, (STRIPS + 1,) pixels."""
    return np.linspace(0.01 * width, 0.99 * width, STRIPS + 1).astype(int)


def evidence_of(strips: Floats) -> Evidence:
    """Evidence for sharp steps in strips (STRIPS, h, 3)."""
    from scipy.ndimage import maximum_filter1d, median_filter  # deferred: start-up time

    strips = _without_ragged_edge(strips)
    h = strips.shape[1]

    windows = stretches(channels_first(strips), _half(h))

    def matched(width: float) -> Floats:
        """How well a step of that width fits around every row, (3, STRIPS, h)."""
        template = _template(h, width)
        template /= np.linalg.norm(template)
        return np.asarray(windows @ sliding(template)).reshape(3, STRIPS, -1)[..., :h]

    def power(match: Floats) -> Floats:
        return dot_planes(match, match)

    def noise_of(match: Floats) -> Floats:
        """Grain differs from strip to strip, an edge hardly: half the squared difference."""
        step = match[:, 1:] - match[:, :-1]
        return medians(np.ascontiguousarray(dot_planes(step, step).T)) / 2

    sharp = [matched(width) for width in _SHARP]
    soft = np.max([power(matched(width)) for width in _SOFT], axis=0)
    noise = np.mean([noise_of(match) for match in sharp[_NOISE_AT]], axis=0)
    noise = median_filter(noise, max(3, round(_AROUND * h)), mode="nearest") + _QUIET
    soft = maximum_filter1d(soft, 2 * round(_NEAR * h) + 1, axis=1, mode="nearest")
    return Evidence((np.max([power(match) for match in sharp], axis=0) - soft) / noise)


def stretches(strips: Floats, half: int) -> Floats:
    """Stretches (3, STRIPS, n, _ROWS + 2 half) of strips (3, STRIPS, h): `_ROWS` rows each and
    what is beside them, the outermost rows repeated."""
    h = strips.shape[-1]
    beyond = half + -h % _ROWS
    padded = np.pad(strips, ((0, 0), (0, 0), (half, beyond)), mode="edge")
    seen = np.lib.stride_tricks.sliding_window_view(padded, _ROWS + 2 * half, axis=-1)
    return np.ascontiguousarray(seen[..., ::_ROWS, :])


def sliding(template: Floats) -> Floats:
    """The matrix that correlates a stretch with a template: one product of matrices takes a
    quarter of the time of `scipy.ndimage.correlate1d`."""
    matrix = np.zeros((_ROWS + len(template) - 1, _ROWS))
    for row in range(_ROWS):
        matrix[row : row + len(template), row] = template
    return matrix


def sharp_step(profile: Floats, width: float) -> Floats:
    """Size (h,) of the step of a 10-90% width that fits best around each row of a profile (h, 3).

    Working units. Beside it goes a cubic trend, so that washes melting into each other show none.
    """
    from scipy.ndimage import correlate1d  # deferred: start-up time

    template = _template(len(profile), width, degree=3)
    match = correlate1d(_without_ragged_edge(profile[None])[0], template, axis=0, mode="nearest")
    return np.asarray(np.linalg.norm(match, axis=-1) / (template @ template))


def _half(h: int) -> int:
    """Rows above and below the one a step is fitted around."""
    return max(4, round(_WINDOW * h))


def _template(h: int, width: float, degree: int = 1) -> Floats:
    """A smooth step of that 10-90% width without its trend, for pictures `h` high."""
    half = _half(h)
    y = np.arange(-half, half + 1) / h
    base, _ = np.linalg.qr(np.stack([y**k for k in range(degree + 1)], -1))
    template = 1 / (1 + np.exp(-np.clip(y * 4.394 / width, -40, 40)))
    return np.asarray(template - base @ (base.T @ template))


def _without_ragged_edge(strips: Floats) -> Floats:
    """The outermost rows replaced by a continuation of those further in."""
    rows = max(1, round(_RAGGED * strips.shape[1]))
    smooth = strips.copy()
    for view in (smooth, smooth[:, ::-1]):
        edge = view[:, rows : rows + 6].mean(axis=1, keepdims=True)
        view[:, :rows] = 2 * edge - view[:, 2 * rows - 1 : rows - 1 : -1]
    return smooth


def find_courses(evidence: Evidence) -> list[Course]:
    """Courses over all or part of the width, the surest first."""
    scores = evidence.scores
    h = scores.shape[1]
    near = max(1, round(_BESIDE * h))
    found = []
    for _ in range(_MOST):
        course, total = _best_course(scores)
        if total < _LEAST:
            break
        found.append(course)
        for strip, row in zip(*course, strict=True):
            scores[strip, max(0, row - near) : row + near + 1] = -np.inf
    return found


def mean_evidence(evidence: Evidence, course: Course) -> float:
    """What a strip of the course has to say for it, on average."""
    return float(np.clip(evidence.values[course], _FLOOR, _CAP).mean())


def extended(course: Course, evidence: Evidence) -> Course:
    """The course carried on across the whole width, where the evidence is best near it."""
    scores = np.clip(evidence.values, -1.0, _CAP)
    h = scores.shape[1]
    near = max(2, round(_EXTEND * h))
    middle = np.interp(np.arange(STRIPS), *course)
    far = np.abs(np.arange(h)[None] - middle[:, None]) > near
    scores[far] = -np.inf
    for strip, row in zip(*course, strict=True):
        scores[strip, np.arange(h) != row] = -np.inf
    return _best_course(scores, whole=True)[0]


def _best_course(scores: Floats, *, whole: bool = False) -> tuple[Course, float]:
    """The course of most evidence: dynamic programming over the strips.

    It begins and ends where that is best, or with `whole` reaches from side to side.
    """
    strips, h = scores.shape
    reach = max(1, round(_REACH * h))
    moves = np.arange(-reach, reach + 1)
    cost = _BEND * (moves / h) ** 2
    total = scores.copy()
    back = np.full((strips, h), h)  # h: the course begins here
    before = np.full(h + 2 * reach, -np.inf)  # of the strip before, with room at both ends
    ways = np.empty((len(moves), h))  # one below the other: long rows are compared fastest
    shifted = np.lib.stride_tricks.sliding_window_view(before, h)
    for i in range(1, strips):
        before[reach:-reach] = total[i - 1]
        np.subtract(shifted, cost[:, None], out=ways)
        value = ways.max(axis=0)
        joined = np.isfinite(value) if whole else value > 0
        total[i] += np.where(joined, value, -np.inf if whole else 0.0)
        back[i, joined] = moves[ways[:, joined].argmax(axis=0)]
    strip, row = (
        (strips - 1, int(total[-1].argmax()))
        if whole
        else np.unravel_index(int(total.argmax()), total.shape)
    )
    end = float(total[strip, row])
    places = [(int(strip), int(row))]
    while (move := back[places[-1]]) != h:
        places.append((places[-1][0] - 1, places[-1][1] + int(move)))
    across = np.array(places[::-1])
    return (across[:, 0], across[:, 1]), end

"""Hard edges: places where the colour changes within a few hundredths of the height.

The sheet is taken in narrow upright strips. Around every row of a strip a straight trend plus a
smooth step of each of several widths is fitted by least squares (as correlations with fixed
templates); where a step explains much, the best width tells how sharp the change is. Edges are
followed from strip to strip, so that one over part of the width is found as well.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.sheet.space import Floats

HARD_WIDTH = 0.025
"""A change is hard when its 10-90% width is below this share of the height."""
STRIPS = 32

_WIDTHS = np.array([0.004, 0.008, 0.012, 0.017, 0.022, 0.028, 0.036, 0.048, 0.065, 0.09])
_WINDOW = 0.05  # half the height of the fit, share of the picture's height
_LEAST_STEP = 2.0  # working units
_LEAST_PARTIAL_STEP = 3.0  # the same for an edge over part of the width: grain makes fainter ones
_LEAST_SHARE = 0.45  # of the change around, explained by the step
_FOLLOW = 0.012  # an edge moves no more than this from strip to strip
_LEAST_RUN = 0.2  # of the width: shorter edges are stains and blooms
_FULL_RUN = 0.75


@dataclass(frozen=True)
class RawEdge:
    """An edge without its meaning: height, extent across the width, 10-90% width, step."""

    at: float
    start: float
    end: float
    width: float
    step: float
    full: bool


def find_edges(W: Floats, mask: NDArray[np.bool_] | None = None) -> tuple[RawEdge, ...]:
    """Hard edges of a picture in working colours (h, w, 3), from the top."""
    strips = strip_profiles(W, mask)
    tracks = _follow(_peaks(strips))
    edges = []
    for track in tracks:
        edges += _hard_runs(track)
    return tuple(sorted(edges, key=lambda edge: edge.at))


def strip_profiles(W: Floats, mask: NDArray[np.bool_] | None = None) -> Floats:
    """Row medians of `STRIPS` upright strips, (STRIPS, h, 3)."""
    h, w = W.shape[:2]
    cuts = np.linspace(0.01 * w, 0.99 * w, STRIPS + 1).astype(int)
    strips = np.empty((STRIPS, h, 3))
    for i in range(STRIPS):
        a, b = cuts[i], max(cuts[i + 1], cuts[i] + 1)
        part = W[:, a:b]
        if mask is not None and not mask[:, a:b].all():
            part = np.where(mask[:, a:b, None], part, np.nan)
            empty = np.asarray(np.isnan(part[..., 0]).all(axis=1))
            part = np.where(empty[:, None, None], 0.0, part)
            strips[i] = np.nanmedian(part, axis=1)
            if empty.any() and not empty.all():
                rows = np.arange(h)
                for c in range(3):
                    strips[i, :, c] = np.interp(rows, rows[~empty], strips[i, ~empty, c])
        else:
            strips[i] = np.median(part, axis=1)
    return strips


@dataclass(frozen=True)
class _Peak:
    strip: int
    at: float
    width: float
    step: float


def _peaks(strips: Floats) -> list[list[_Peak]]:
    from scipy.ndimage import correlate1d, maximum_filter1d  # deferred: start-up time

    count, h = strips.shape[:2]
    half = max(4, round(_WINDOW * h))
    y = np.arange(-half, half + 1) / h
    base, _ = np.linalg.qr(np.stack([np.ones_like(y), y], -1))
    around = np.zeros((count, h))
    sums = [correlate1d(strips, base[:, i], axis=1, mode="nearest") for i in range(2)]
    squares = correlate1d((strips**2).sum(-1), np.ones_like(y), axis=1, mode="nearest")
    around = np.maximum(squares - sum((s**2).sum(-1) for s in sums), 1e-9)
    gains, steps = [], []
    for width in _WIDTHS:
        template = 1 / (1 + np.exp(-np.clip(y * 4.394 / width, -40, 40)))
        template = template - base @ (base.T @ template)
        power = float((template**2).sum())
        match = correlate1d(strips, template, axis=1, mode="nearest")
        gains.append((match**2).sum(-1) / power)
        steps.append(np.sqrt((match**2).sum(-1)) / power)
    gain, step = np.stack(gains), np.stack(steps)
    best = gain.max(axis=0)
    top = best >= maximum_filter1d(best, max(3, round(0.015 * h)), axis=1, mode="nearest")
    which = gain.argmax(axis=0)
    strength = np.take_along_axis(step, which[None], 0)[0]
    good = top & (strength >= _LEAST_STEP) & (best > _LEAST_SHARE * around)
    good &= which < len(_WIDTHS) - 2
    edge = round(0.02 * h)
    good[:, :edge] = False
    good[:, h - edge :] = False
    found: list[list[_Peak]] = [[] for _ in range(count)]
    for strip, row in zip(*np.nonzero(good), strict=True):
        k = int(which[strip, row])
        width = _between(gain[:, strip, row], k)
        found[strip].append(_Peak(int(strip), (row + 0.5) / h, width, float(strength[strip, row])))
    return found


def _between(gain: Floats, k: int) -> float:
    """The width at the top of a parabola through the best template and its neighbours."""
    logs = np.log(_WIDTHS)
    if not 0 < k < len(gain) - 1:
        return float(_WIDTHS[k])
    x, v = logs[k - 1 : k + 2], gain[k - 1 : k + 2]
    bend, slope, _ = np.polyfit(x - x[1], v, 2)
    if bend >= 0:
        return float(_WIDTHS[k])
    return float(np.exp(np.clip(x[1] - slope / (2 * bend), x[0], x[2])))


def _follow(peaks: list[list[_Peak]]) -> list[list[_Peak]]:
    """Join peaks of neighbouring strips into tracks; up to two strips may be missing."""
    tracks: list[list[_Peak]] = []
    for strip, here in enumerate(peaks):
        free = list(here)
        for track in sorted(tracks, key=len, reverse=True):
            last = track[-1]
            gap = strip - last.strip
            if gap > 3 or not free:
                continue
            nearest = min(free, key=lambda peak: abs(peak.at - last.at))
            if abs(nearest.at - last.at) <= _FOLLOW * np.sqrt(gap):
                track.append(nearest)
                free.remove(nearest)
        tracks += [[peak] for peak in free]
    return [track for track in tracks if len(track) >= 0.75 * _LEAST_RUN * STRIPS]


def _hard_runs(track: list[_Peak]) -> list[RawEdge]:
    widths = np.array([peak.width for peak in track])
    spans = (track[-1].strip - track[0].strip + 1) / STRIPS
    full = spans >= _FULL_RUN and np.median(widths) < HARD_WIDTH
    if full and np.mean(widths < 1.3 * HARD_WIDTH) >= 0.7:
        return [_edge_of(track)]
    # Smoothed along the track, so that one doubtful strip does not cut an edge in two.
    padded = np.pad(widths, 2, mode="edge")
    smooth = np.array([np.median(padded[i : i + 5]) for i in range(len(widths))])
    runs: list[list[_Peak]] = []
    for peak, width in zip(track, smooth, strict=True):
        if width >= HARD_WIDTH:
            runs.append([])
        else:
            if not runs:
                runs.append([])
            runs[-1].append(peak)
    edges = [
        _edge_of(run) for run in runs
        if run and (run[-1].strip - run[0].strip + 1) / STRIPS >= _LEAST_RUN
    ]  # fmt: skip
    return [edge for edge in edges if edge.full or edge.step >= _LEAST_PARTIAL_STEP]


def _edge_of(run: list[_Peak]) -> RawEdge:
    start, end = run[0].strip / STRIPS, (run[-1].strip + 1) / STRIPS
    return RawEdge(
        at=float(np.median([peak.at for peak in run])),
        start=start,
        end=end,
        width=float(np.median([peak.width for peak in run])),
        step=float(np.median([peak.step for peak in run])),
        full=end - start >= _FULL_RUN,
    )

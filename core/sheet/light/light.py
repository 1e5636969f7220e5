"""Undoing the light on a sheet, as far as its unpainted border shows it.

White paper all around tells how bright and how coloured the light was at the edge of the
painting. A low-order surface through it, in the logarithm of linear light and robust against
stains, is divided out; what the surface leaves of the border is the residual. A shadow with a
sharp edge is one more factor (`cast_shadow`).
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.medians import medians, medians_of_blocks
from core.colour.working_space import Floats
from core.sheet.light.cast_shadow import shaded_part, two_levels
from core.sheet.light.soft_shadow import is_soft_shadow
from core.sheet.light.straighten import Flat

SHADOW_RESIDUAL = 0.036
"""Above this the light changed faster than the surface can follow: a shadow. On 16 photos of bare
paper left and right then still differed by .1 (natural log, the median), by .03 below it."""

_SOFT_RESIDUAL = 0.025
"""From here on a soft shadow is looked for: real paper and its light leave as much (of 24 simulated
sheets in a soft shadow 4 left .025 to .036, and so did some ten of 38 on real or like paper)."""

_TWO_LIGHTS = 0.02  # from this residual on a shadow with a sharp edge is looked for

_SEGMENTS = 16  # along each side
_SLICES = 3  # outwards
_FIRST, _SLICE = 0.009, 0.010  # where the first slice begins, and its depth; shares of the height
_CLOSE, _THIN, _THIN_SLICES = 0.0025, 0.003, 2  # the same where the border is 1 or 2% wide
_ENDS = 0.05  # natural log: so much darker further out, and the paper ends before
_TOGETHER = 3  # neighbouring segments whose deviations are averaged: grain and dents are no shadow


@dataclass(frozen=True, eq=False)
class Lit:
    """A sheet with its light undone.

    Attributes
    ----------
    painted : (H, W, 3) float32
        The painted rectangle; unpainted paper is 1 where a border was found.
    residual : float or None
        Deviation of stretches of the border from the fitted light, natural log; None without a
        border.
    white : (3,) float64
        Mean linear colour of the border (of 1, 1, 1 without one).
    border : (n, 3) float64
        Block colours of the border in linear light, for the notices.
    soft_shadow : bool
        What is left of the border looks like a soft shadow's, although it is not much.
    """

    painted: NDArray[np.float32]
    residual: float | None
    white: Floats
    border: Floats
    soft_shadow: bool = False


def undo_light(flat: Flat) -> Lit:
    """Correct a straightened sheet by its border."""
    places, colours = border_blocks(flat)
    if len(places) < 6 * _SEGMENTS // 2:
        return Lit(flat.painted, None, np.ones(3), colours)
    logs = np.log(np.maximum(colours, 1e-4))
    coefficients, residual = _smooth_light(places, logs)
    shade, step = None, np.zeros(3)
    if residual > _TWO_LIGHTS and (levels := two_levels(places, logs, _terms(places))):
        dark, step = levels
        shade = shaded_part(flat, places, dark, step)
        if shade is not None:
            coefficients, _ = _smooth_light(places, logs - dark[:, None] * step)
    H, W = flat.painted.shape[:2]
    # The surface is smooth: worked out on a coarse grid and enlarged, it costs nothing.
    y = np.linspace(-1, 1, 2 * H + 1)[1::2]
    x = np.linspace(-1, 1, 2 * W + 1)[1::2]
    one_y, one_x = np.ones_like(y), np.ones_like(x)
    painted = np.empty((H, W, 3), dtype=np.float32)
    for c in range(3):
        k = coefficients[:, c]
        rows = np.stack([k[0] + k[2] * y + k[5] * y * y, k[1] + k[4] * y, k[3] * one_y], -1)
        light = (rows @ np.stack([one_x, x, x * x])).astype(np.float32)
        if shade is not None:
            light += (shade * step[c]).astype(np.float32)
        np.exp(np.negative(light, out=light), out=light)
        np.multiply(flat.painted[..., c], light, out=painted[..., c])
    soft = _SOFT_RESIDUAL < residual <= SHADOW_RESIDUAL
    if soft:
        at, light_there = _by_segment(places, logs.mean(axis=1))
        soft = is_soft_shadow(at, light_there, _terms(at), W / H)
    return Lit(painted, residual, colours.mean(axis=0), colours, soft)


def _smooth_light(places: Floats, logs: Floats) -> tuple[Floats, float]:
    """A surface for each channel, (6, 3), and the residual of all."""
    coefficients, rest = np.empty((6, 3)), np.empty_like(logs)
    for c in range(3):
        coefficients[:, c], rest[:, c] = _robust_surface(places, logs[:, c])
    even = np.sort(np.abs(_stretches(places, rest.mean(axis=1))))
    return coefficients, float(np.sqrt(np.mean(even[: max(1, int(0.97 * len(even)))] ** 2)))


def _stretches(places: Floats, rest: Floats) -> Floats:
    """Means of a few neighbouring segments each, all along the border."""
    x, y = places.T
    along_top, along_side = np.abs(y) > 1, np.abs(x) > 1
    means: list[float] = []
    for side in (along_top & (y < 0), along_top & (y > 0), along_side & (x < 0),
                 along_side & (x > 0)):  # fmt: skip
        run = (x if along_top[side].all() else y)[side]
        segment = np.clip(((run + 1) / 2 * _SEGMENTS).astype(int), 0, _SEGMENTS - 1)
        sums = np.bincount(segment, rest[side], _SEGMENTS)
        counts = np.bincount(segment, minlength=_SEGMENTS)
        window = np.ones(_TOGETHER)
        total, count = np.convolve(sums, window, "valid"), np.convolve(counts, window, "valid")
        means += (total[count > 0] / count[count > 0]).tolist()
    return np.asarray(means)


def _by_segment(places: Floats, values: Floats) -> tuple[Floats, Floats]:
    """Middles (n, 2) and means (n,) of the segments along the border, its slices together."""
    x, y = places.T
    along = np.where(np.abs(y) > 1, x, y)
    side = np.where(np.abs(y) > 1, y > 0, 2 + (x > 0))
    segment = np.clip(((along + 1) / 2 * _SEGMENTS).astype(int), 0, _SEGMENTS - 1)
    which = side.astype(int) * _SEGMENTS + segment
    counts = np.bincount(which, minlength=4 * _SEGMENTS)
    there = counts > 0
    means = [
        np.bincount(which, each, 4 * _SEGMENTS)[there] / counts[there] for each in (x, y, values)
    ]
    return np.stack(means[:2], axis=-1), means[2]


def border_blocks(flat: Flat) -> tuple[Floats, Floats]:
    """Blocks of unpainted paper around the painting.

    Returns
    -------
    (n, 2) float64
        Their places: x and y from -1 to 1 across the painted rectangle, beyond it outside.
    (n, 3) float64
        Their median colours in linear light.
    """
    m = flat.margin
    H, W = flat.painted.shape[:2]
    places, colours = [], []
    for side in range(4):
        # Turn the picture so that this side is the top; the margin comes along.
        linear, seen = np.rot90(flat.linear, side), np.rot90(flat.seen, side)
        across, size = (W, H) if side % 2 == 0 else (H, W)
        cuts = np.linspace(0.01 * across, 0.99 * across, _SEGMENTS + 1).astype(int) + m
        found, out = _slices(linear, seen, cuts, m, H)
        rim = linear[m + round(0.02 * H) : m + round(0.05 * H), m:-m]
        inside = medians(np.ascontiguousarray(np.moveaxis(rim, 0, -1)))
        paint = medians_of_blocks(inside[None], cuts - m)
        keep = _paper(found, paint.astype(np.float64))
        slices, segments = np.nonzero(keep)
        x = ((cuts[segments] + cuts[segments + 1]) / 2 - m) / across * 2 - 1
        y = -1 - 2 * out[slices] * H / size
        for _ in range(side):  # back to the upright picture
            x, y = -y, x
        places.append(np.stack([x, y], -1))
        colours.append(found[slices, segments])
    return _agreeing(np.concatenate(places), np.concatenate(colours).astype(np.float64))


def _slices(
    linear: NDArray[np.float32], seen: NDArray[np.bool_], cuts: NDArray[np.int_], m: int, H: int
) -> tuple[Floats, Floats]:
    """Blocks (slices, segments, 3) outwards of the upper side, NaN where they were not seen, and
    how far out the slices are, shares of the height: closer where the paper ends soon."""

    def blocks(first: float, depth: float, count: int) -> tuple[Floats, Floats]:
        found: Floats = np.full((count, len(cuts) - 1, 3), np.nan)
        for i in range(count):
            low = m - round((first + (i + 1) * depth) * H)
            high = m - round((first + i * depth) * H)
            found[i] = medians_of_blocks(linear[low:high], cuts)
            if not seen[low:high].all():
                parts = np.split(seen[low:high], cuts, axis=1)[1:-1]
                found[i, [part.mean() <= 0.9 for part in parts]] = np.nan
        places: Floats = np.asarray(first + (np.arange(count) + 0.5) * depth)
        return found, places

    usual, thin = blocks(_FIRST, _SLICE, _SLICES), blocks(_CLOSE, _THIN, _THIN_SLICES)
    further, close = _level(usual[0][0]), _level(thin[0][-1])
    ends = np.isfinite(close) and (not np.isfinite(further) or close > further + _ENDS)
    return thin if ends else usual


def _level(blocks: Floats) -> float:
    """Log of the median brightness of blocks (n, 3); NaN when most were not seen."""
    bright = blocks.mean(axis=1)
    known = np.isfinite(bright)
    if known.mean() < 0.5:
        return float("nan")
    return float(np.log(max(float(np.median(bright[known])), 1e-4)))


def _paper(found: Floats, paint: Floats) -> NDArray[np.bool_]:
    """Which blocks continue the first slice outwards without a change, and are no darker than
    the paint beside them."""
    logs = np.log(np.maximum(found, 1e-4))
    keep = np.isfinite(logs).all(axis=2)
    darker = (found.sum(axis=2) < 0.97 * paint.sum(axis=1)[None]) & keep
    keep &= ~darker
    for i in range(1, len(found)):
        change = logs[i] - logs[i - 1]
        tint = change - change.mean(axis=1, keepdims=True)
        same = (np.abs(change.mean(axis=1)) < 0.06) & (np.abs(tint).max(axis=1) < 0.03)
        keep[i] &= keep[i - 1] & same
    return np.asarray(keep)


def _agreeing(places: Floats, colours: Floats) -> tuple[Floats, Floats]:
    """Leave out blocks of another tint than most: stains, the desk, a neighbour sheet."""
    if len(colours) == 0:
        return places, colours
    logs = np.log(np.maximum(colours, 1e-4))
    tint = logs - logs.mean(axis=1, keepdims=True)
    off = np.abs(tint - np.median(tint, axis=0)).max(axis=1)
    keep = off < 0.12
    # Blocks much darker than their neighbours in tint are no paper either.
    bright = logs.mean(axis=1)
    keep &= bright > np.median(bright) - 1.1
    return places[keep], colours[keep]


def _terms(places: Floats) -> Floats:
    x, y = places[:, 0], places[:, 1]
    return np.stack([np.ones_like(x), x, y, x * x, x * y, y * y], -1)


def _robust_surface(places: Floats, values: Floats) -> tuple[Floats, Floats]:
    """Quadratic surface by iteratively reweighted least squares, and what it leaves."""
    design = _terms(places)
    weight = np.ones(len(values))
    fit: Floats = np.zeros(6)
    for _ in range(12):
        root = np.sqrt(weight)
        fit = np.asarray(np.linalg.lstsq(design * root[:, None], values * root, rcond=None)[0])
        rest = values - design @ fit
        spread = 1.4826 * np.median(np.abs(rest)) + 1e-4
        weight = 1 / (1 + (rest / (2.5 * spread)) ** 2)
    return fit, values - design @ fit

"""Noticing masking tape that is still on: bare paper, brighter, shows again outside it."""

from __future__ import annotations

import numpy as np

from core.colour.medians import channels_first, medians
from core.colour.working_space import Floats, brightness
from core.sheet.light.straighten import Flat

_RISE = 1.15
"""Bare paper is so much brighter than tape; white tape cannot be told, and does no harm."""
_NEAR, _STEP = 0.009, 0.008  # where the strip beside the paint begins, and what a step spans
_SIDES = 3
_SAME_TINT, _OTHER_TINT = 0.08, 0.15  # natural log units


def shows_tape(flat: Flat) -> bool:
    """Whether at least three sides get suddenly brighter outwards of the strip along the paint."""
    return _is_frame(flat) or sum(_rises(flat, side) for side in range(4)) >= _SIDES


def _is_frame(flat: Flat) -> bool:
    """Whether the corners are on the tape's outer edge: one tint all round, others further in."""
    rim: list[Floats] = []
    inner: list[Floats] = []
    for side in range(4):
        painted = np.rot90(flat.painted, side)
        depth, width = painted.shape[:2]
        size = flat.painted.shape[0]
        for a, b in ((0.1, 0.4), (0.6, 0.9)):
            columns = slice(round(a * width), round(b * width))
            for found, low, high in ((rim, 0.008, 0.018), (inner, 0.14, 0.18)):
                rows = slice(round(low * size), max(round(high * size), round(low * size) + 2))
                block = painted[min(rows.start, depth - 2) : rows.stop, columns].reshape(-1, 3)
                log = np.log(np.maximum(medians(channels_first(block)), 1e-4))
                found.append(log - log.mean())
    tints, deeper = np.asarray(rim), np.asarray(inner)
    even = float(np.ptp(tints, axis=0).max())
    away = np.abs(deeper - tints).max(axis=1)
    return even < _SAME_TINT and float(np.median(away)) > _OTHER_TINT


def _rises(flat: Flat, side: int) -> bool:
    profile = _outward(flat, side)
    height = flat.painted.shape[0]
    step = max(2, round(_STEP * height))
    first = round(_NEAR * height)
    profile = profile[first:]
    if len(profile) < 3 * step or not np.isfinite(profile[:step]).all():
        return False
    near = float(np.median(profile[:step]))
    jumps = profile[step:] / np.maximum(profile[:-step], 1e-4)
    good = np.isfinite(jumps) & (jumps > _RISE)
    if not good.any():
        return False
    # The tape itself is one strip: nothing darker than it comes before the bare paper.
    at = int(np.argmax(good))
    before = profile[: at + 1]
    return bool(np.nanmin(before) > 0.85 * near)


def _outward(flat: Flat, side: int) -> Floats:
    """Brightness along lines parallel to a side, from the paint outwards; NaN outside the photo."""
    m = flat.margin
    linear, seen = np.rot90(flat.linear, side), np.rot90(flat.seen, side)
    strip, visible = brightness(linear[:m, m:-m]), seen[:m, m:-m]
    middle = medians(np.ascontiguousarray(strip)).astype(np.float64)
    return np.asarray(np.where(visible.mean(axis=1) > 0.9, middle, np.nan)[::-1])

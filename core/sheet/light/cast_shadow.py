"""A shadow with a sharp edge, as a phone casts it: told from the border, followed into the paint.

Such a shadow takes the same share of the light wherever it is. Two levels of light along the
border give that share; inside, its edge is where all channels change by just that much at once,
which paint over paint hardly ever does.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats
from core.sheet.light.flooding import flood
from core.sheet.light.straighten import Flat

_LEAST_STEP = 0.2  # natural log; fainter ones the smooth surface follows well enough
_LEAST_BLOCKS = 8
_LEVEL = 0.03  # what may be left of the border, with the step, for it to be two levels of light
_ROWS = 160
_STRIP = (0.015, 0.035)  # inside the paint, where the border's level is known, shares of height
_NEAR_EDGE = 0.03  # a block this near to one of the other level may be across the edge
_ALIKE, _MOST_ALIKE = 0.25, 0.6  # of the step; share of the edge inside that must be alike


def two_levels(
    places: Floats, logs: Floats, terms: Floats
) -> tuple[NDArray[np.bool_], Floats] | None:
    """Whether the border is at two levels of light.

    Parameters
    ----------
    places : (n, 2) float64
        As `light.border_blocks`.
    logs : (n, 3) float64
        Natural logarithms of the blocks' colours.
    terms : (n, k) float64
        Of the smooth surface.

    Returns
    -------
    (n,) bool, (3,) float64
        Which blocks are in the shadow, and the step into it (negative); None if there are not two.
    """
    level = logs.mean(axis=1)
    order = np.sort(level)
    gaps = np.diff(order)[_LEAST_BLOCKS - 1 : -_LEAST_BLOCKS]
    if len(gaps) == 0:
        return None
    k = int(gaps.argmax()) + _LEAST_BLOCKS - 1
    dark = level <= order[k]
    # Blocks across the shadow's edge are of neither level.
    design = np.concatenate([terms, dark[:, None]], axis=1).astype(np.float64)
    keep = np.ones(len(level), dtype=bool)
    fit: Floats = np.zeros((design.shape[1], 3))
    for _ in range(4):
        fit = np.asarray(np.linalg.lstsq(design[keep], logs[keep], rcond=None)[0])
        rest = np.abs((logs - design @ fit).mean(axis=1))
        keep = rest <= max(3 * float(np.median(rest)), 0.01)
    step = fit[-1]
    if step.max() > -_LEAST_STEP or keep.mean() < 0.85:
        return None
    if float(np.sqrt(np.mean(rest[keep] ** 2))) > _LEVEL or dark[keep].sum() < _LEAST_BLOCKS:
        return None
    return dark, step


def shaded_part(flat: Flat, places: Floats, dark: NDArray[np.bool_], step: Floats) -> Floats | None:
    """How far each pixel of the painting is in the shadow, (H, W), 0..1; None if its edge is
    not found in the paint."""
    from scipy.ndimage import gaussian_filter, zoom  # deferred: start-up time

    H, W = flat.painted.shape[:2]
    pace = max(1, H // _ROWS)
    log = np.log(np.maximum(gaussian_filter(flat.painted, (pace / 2, pace / 2, 0)), 1e-3))
    log = log[pace // 2 :: pace, pace // 2 :: pace].astype(np.float64)
    match, reach = np.zeros(log.shape[:2]), 2
    for axis in (0, 1):
        ahead, behind = (np.roll(log, shift, axis=axis) for shift in (-reach, reach))
        change = ahead - behind
        off = np.minimum(np.abs(change - step), np.abs(change + step)).max(axis=2)
        here = np.exp(-((off / (_ALIKE * np.abs(step).mean())) ** 2))
        # What rolled round the rim is no neighbour.
        cut = [slice(None), slice(None)]
        for part in (slice(None, reach), slice(-reach, None)):
            cut[axis] = part
            here[tuple(cut)] = 0.0
        match = np.maximum(match, here)
    markers = _markers(log.shape[:2], places, dark)
    if len(np.unique(markers)) < 3:
        return None
    found = flood(match, markers)
    edge = np.zeros(found.shape, dtype=bool)
    edge[:, 1:] |= found[:, 1:] != found[:, :-1]
    edge[1:] |= found[1:] != found[:-1]
    if not edge.any() or float((match[edge] > np.exp(-1.0)).mean()) < _MOST_ALIKE:
        return None
    shade = (found == 2).astype(np.float64)
    large = zoom(shade, (H / shade.shape[0], W / shade.shape[1]), order=1, grid_mode=True,
                 mode="nearest")  # fmt: skip
    return np.asarray(large[:H, :W], dtype=np.float64)


def _markers(shape: tuple[int, int], places: Floats, dark: NDArray[np.bool_]) -> NDArray[np.int32]:
    """1 in the light, 2 in the shadow, just inside the paint beside each block of the border."""
    h, w = shape
    markers = np.zeros(shape, dtype=np.int32)
    depth = slice(max(1, round(_STRIP[0] * h)), max(2, round(_STRIP[1] * h)))
    far = np.linalg.norm(places[:, None] - places[None], axis=2)
    unsure = (np.where(dark[:, None] != dark[None], far, np.inf)).min(axis=1) < 2 * 2 * _NEAR_EDGE
    for (x, y), shaded in zip(places[~unsure], dark[~unsure], strict=True):
        across, down = (x + 1) / 2 * w, (y + 1) / 2 * h
        half = 0.02 * w
        label = 2 if shaded else 1
        near = slice(max(0, round(across - half)), round(across + half) + 1)
        level = slice(max(0, round(down - half)), round(down + half) + 1)
        if y < -1:
            markers[depth, near] = label
        elif y > 1:
            markers[h - depth.stop : h - depth.start, near] = label
        elif x < -1:
            markers[level, depth] = label
        else:
            markers[level, w - depth.stop : w - depth.start] = label
    return markers

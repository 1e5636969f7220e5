"""Quadrilaterals that may be the painted rectangle, and a first judgement of them.

Strong straight edges are paired; each quadrilateral is judged by how much of its sides the
picture bears out, whether the sides stop at the corners, and whether a ring just outside looks
like one even strip of paper. The judge is a small logistic model.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats, brightness
from core.sheet.find.hough import LineSet, find_sides
from core.sheet.find.otsu import otsu_threshold
from core.sheet.find.sight import Sight
from core.sheet.sampling import sampled

_SHORTLIST = 80
FEATURES = (
    "mean support", "weakest support", "goes on", "brighter outside", "contrast",
    "ring uneven", "ring colours differ", "size", "ring grey",
)  # fmt: skip

_LEAST_PAPER, _MOST_PAPER = 0.06, 0.97  # of the picture
_RIM = 4
_ENDS = 4.0  # working units

# Fitted on simulated sheets, seeds 0 to 359 (tests/simulator): the right quadrilateral of each
# photo against its others (softmax), the bias so that the best of a photo is right or not.
_WEIGHTS = np.array(
    [2.971, 6.706, -5.527, -0.449, -0.876, -1.733, -9.921, 0.675, -0.176, -3.643, 2.504, -0.320,
     -0.438]
)  # fmt: skip
_BIAS = -3.4


def judge(features: Floats) -> Floats:
    """Log-odds (n,) that a quadrilateral with these features (n, 9) is the painted one."""
    mean, weakest, goes_on, brighter, contrast, uneven, differ, size, grey = features.T
    uneven, differ = np.minimum(uneven, 0.15), np.minimum(differ, 0.2)
    terms = [
        mean, weakest, goes_on, brighter, contrast / 10, 10 * uneven, 10 * differ, size,
        np.minimum(grey, 0.4), np.sqrt(differ), np.log(contrast + 1), np.sqrt(uneven),
        np.where(brighter < 0.3, 1.0, 0.0),
    ]  # fmt: skip
    return np.asarray(np.stack(terms, axis=-1) @ _WEIGHTS + _BIAS)


def candidates(sight: Sight, *, on_paper: bool = False) -> tuple[Floats, Floats]:
    """Quadrilaterals (n, 4, 2) in pixels of the picture, and their features (n, 9).

    With `on_paper`, only edges inside the largest bright area count: wood grain and cloth around
    the sheet then leave room for the paint's fainter ones.
    """
    if sight.too_small:
        return np.empty((0, 4, 2)), np.empty((0, len(FEATURES)))
    across = sight.gradient
    if on_paper:
        paper = bright_area(sight.small)
        if paper is None:
            return np.empty((0, 4, 2)), np.empty((0, len(FEATURES)))
        across = across.within(paper)
    lines = find_sides(across, (-1, 1))
    if lines is None:
        return np.empty((0, 4, 2)), np.empty((0, len(FEATURES)))
    h, w = sight.small.shape[:2]
    quads, features = with_ring(sight, *shortlist(lines, (h, w)))
    return (quads + 0.5) * sight.block, features


def with_ring(sight: Sight, quads: Floats, features: Floats) -> tuple[Floats, Floats]:
    """Quadrilaterals in pixels of the small picture and all their features, of the shortlist's
    first three."""
    if len(quads):
        features = np.concatenate([features, _ring_features(sight, quads)], axis=1)
    return quads, features


def bright_area(small: NDArray[np.float32]) -> NDArray[np.bool_] | None:
    """The largest bright area (h, w) with its holes filled and its rim left out, if there is one.

    Bright is what Otsu's threshold parts from the rest (IEEE Trans. SMC 9, 1979).
    """
    from scipy import ndimage  # deferred: start-up time

    bright = ndimage.gaussian_filter(brightness(np.sqrt(np.clip(small, 0, None))), 1.0)
    if np.ptp(bright) < 1e-3:
        return None
    threshold = otsu_threshold(bright)
    areas, count = ndimage.label(ndimage.binary_opening(bright > threshold, iterations=2))
    if count == 0:
        return None
    sizes = np.bincount(areas.ravel())[1:]
    # The paint parts its paper's frame into pieces at most: the few largest, filled, are compared.
    filled = [ndimage.binary_fill_holes(areas == k + 1) for k in np.argsort(sizes)[::-1][:4]]
    largest = max(filled, key=np.count_nonzero)
    if not _LEAST_PAPER < largest.mean() < _MOST_PAPER:
        return None
    return np.asarray(ndimage.binary_erosion(largest, iterations=_RIM, border_value=1))


def shortlist(lines: list[LineSet], shape: tuple[int, int]) -> tuple[Floats, Floats]:
    """Pair left, right, top and bottom lines; keep the best borne out quadrilaterals (n, 4, 2),
    best first, and three features of each."""
    h, w = shape
    lefts, rights, tops, bottoms = lines
    if not all(len(each.p) for each in lines):
        return np.empty((0, 4, 2)), np.empty((0, 3))

    def crossing(steep: LineSet, level: LineSet) -> Floats:
        sv, sh = steep.s[:, None], level.s[None]
        pv, ph = steep.p[:, None], level.p[None]
        x = (pv + sv * (ph - sh * w / 2 - h / 2)) / (1 - sv * sh)
        return np.stack([x, ph + sh * (x - w / 2)], -1)

    counts = [len(each.p) for each in lines]
    left, right, top, bottom = (k.ravel() for k in np.indices(counts))
    quads = np.stack(
        [
            crossing(lefts, tops)[left, top], crossing(rights, tops)[right, top],
            crossing(rights, bottoms)[right, bottom], crossing(lefts, bottoms)[left, bottom],
        ], axis=1,
    )  # fmt: skip
    ok = _plausible(quads, shape)
    quads, left, right, top, bottom = quads[ok], left[ok], right[ok], top[ok], bottom[ok]
    if len(quads) == 0:
        return np.empty((0, 4, 2)), np.empty((0, 3))

    def along(lines: LineSet, which: NDArray[np.int_], a: Floats, b: Floats) -> list[Floats]:
        part = LineSet(lines.p[which], lines.s[which], lines.reach[which])
        more = 0.10 * (b - a)
        before = part.support(a - more, a - 0.25 * more - 2)
        after = part.support(b + 0.25 * more + 2, b + more)
        return [part.support(a, b), before, after]

    sides = [
        along(lefts, left, quads[:, 0, 1], quads[:, 3, 1]),
        along(rights, right, quads[:, 1, 1], quads[:, 2, 1]),
        along(tops, top, quads[:, 0, 0], quads[:, 1, 0]),
        along(bottoms, bottom, quads[:, 3, 0], quads[:, 2, 0]),
    ]
    support = np.stack([side[0] for side in sides], -1)
    goes_on = np.stack([np.maximum(side[1], side[2]) for side in sides], -1)
    features = np.stack([support.mean(-1), support.min(-1), goes_on.mean(-1)], -1)
    best = np.argsort(-(features @ np.array([1.0, 1.0, -0.5])))[:_SHORTLIST]
    return quads[best], features[best]


def _plausible(quads: Floats, shape: tuple[int, int]) -> NDArray[np.bool_]:
    h, w = shape
    sides = np.roll(quads, -1, axis=1) - quads
    following = np.roll(sides, -1, axis=1)
    turn = sides[..., 0] * following[..., 1] - sides[..., 1] * following[..., 0]
    length = np.linalg.norm(sides, axis=-1)
    sine = turn / np.maximum(length * np.roll(length, -1, axis=1), 1e-9)
    area = 0.5 * np.abs(
        (quads[:, 2, 0] - quads[:, 0, 0]) * (quads[:, 3, 1] - quads[:, 1, 1])
        - (quads[:, 3, 0] - quads[:, 1, 0]) * (quads[:, 2, 1] - quads[:, 0, 1])
    )
    ratio = length / np.maximum(np.roll(length, 2, axis=1), 1e-9)
    inside = (quads.min(axis=1) > [-0.08 * w, -0.08 * h]) & (
        quads.max(axis=1) < [1.08 * w, 1.08 * h]
    )
    # Lines of a pair may cross over: then the quadrilateral is inside out.
    upright = (quads[:, 1:3, 0].min(1) > quads[:, ::3, 0].max(1)) & (
        quads[:, 2:, 1].min(1) > quads[:, :2, 1].max(1)
    )
    good = (
        upright
        & (sine.min(1) > 0.8)
        & (area > 0.06 * h * w)
        & (ratio.min(1) > 0.55)
        & inside.all(1)
    )
    return np.asarray(good)


def _ring_features(sight: Sight, quads: Floats) -> Floats:
    """Of a strip just outside each quadrilateral, beside one just inside."""
    samples = 40
    t = np.linspace(0.04, 0.96, samples)[:, None]
    start, end = quads, np.roll(quads, -1, axis=1)
    line = start[:, :, None] * (1 - t) + end[:, :, None] * t
    direction = (end - start) / np.linalg.norm(end - start, axis=-1, keepdims=True)
    outward = np.stack([direction[..., 1], -direction[..., 0]], -1)[:, :, None]
    size = np.linalg.norm(end - start, axis=-1).mean(1)[:, None, None, None]

    def strip(offsets: tuple[float, ...]) -> Floats:
        got = []
        for offset in offsets:
            at = line + outward * np.maximum(offset * size, np.copysign(2.5, offset))
            got.append(sampled(sight.colours, at))
        return np.asarray(np.sort(got, axis=0)[len(got) // 2])

    outer, inner = strip((0.010, 0.017, 0.024)), strip((-0.012, -0.022, -0.032))
    # Where the paper ends soon, its border is close by, and brighter than what is beyond.
    close = strip((0.004,))
    ends = np.median(close[..., 0] - outer[..., 0], axis=2) > _ENDS
    outer[ends] = close[ends]
    jump = outer[..., :3] - inner[..., :3]
    brighter = np.clip(jump[..., 0] / 4.0, -1, 1).mean(axis=(1, 2))
    contrast = np.median(np.linalg.norm(jump, axis=-1), axis=(1, 2))
    # Evenness: deviation from a straight trend along each side, in log light.
    run = np.linspace(-1, 1, samples)[:, None]
    light = outer[..., 3:]
    trend = (light * run).mean(2, keepdims=True) / (run**2).mean() * run
    rest = light - light.mean(2, keepdims=True) - trend
    uneven = np.median(np.abs(rest), axis=2).mean(axis=(1, 2))
    tint = np.median(light - light.mean(-1, keepdims=True), axis=2)
    differ = np.ptp(tint, axis=1).max(-1)
    grey = np.abs(tint).mean(axis=(1, 2))
    area = np.linalg.norm(quads[:, 2] - quads[:, 0], axis=-1) / np.hypot(*sight.small.shape[:2])
    return np.stack(
        [brighter, np.minimum(contrast, 20.0), np.minimum(uneven, 0.5), np.minimum(differ, 1.0),
         area, grey], -1,
    )  # fmt: skip

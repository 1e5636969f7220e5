"""Looking for the painting on its paper: the paper's outline first, then the paint inside it.

Paper stands out from its desk far more than a pale wash from its paper, so its outline is found
where the paint's faint edges drown in wood grain and cloth. Once it is known, little is left to
search: each side of the paint runs nearly along a side of the paper, and a step of colour that
most of that length shares shows even where no one place of it would.
"""

from __future__ import annotations

import numpy as np

from core.colour.medians import medians
from core.colour.working_space import Floats
from core.sheet.find.hough import find_sides, line_set
from core.sheet.find.quads import shortlist, with_ring
from core.sheet.find.sight import Sight
from core.sheet.perspective import homography
from core.sheet.sampling import sampled

_PAPERS = 3  # outlines looked into
_APART = 0.02  # of the side: nearer ones are the same outline
_DEEP, _PITCH = 0.2, 0.001  # how far into the paper is looked, and by steps of: shares of its depth
_NEAR = 0.04  # the same to either side of a quadrilateral
_PARTS, _PART = 24, 10  # stretches along a side, and samples along a stretch
_SLOPES = np.linspace(-0.03, 0.03, 25)  # how far the paint's side may turn from the paper's
_WINDOW = 4  # rows before and after a step
_CAP = 4.0  # working units beyond which a step counts no more
_LEAST = 0.5
_RIVAL, _AWAY = 0.6, 8  # a step outside of the clearest: share of its height, and rows away
_NONE = np.empty((0, 4, 2)), np.empty((0, 9))


def paint_on_papers(sight: Sight) -> tuple[Floats, Floats]:
    """Quadrilaterals (n, 4, 2) in pixels of the picture, each just inside the outline of a paper,
    and their features (n, 9), as `quads.candidates` gives them."""
    return _NONE if sight.too_small else _inside(sight, _papers(sight), _DEEP)


def paint_near(sight: Sight, quads: list[Floats]) -> tuple[Floats, Floats]:
    """The same beside the sides of quadrilaterals (4, 2) that may have one on the paper's edge."""
    if sight.too_small:
        return _NONE
    outer = [quad.mean(axis=0) + (quad - quad.mean(axis=0)) * (1 + 2 * _NEAR) for quad in quads]
    around = [quad / sight.block - 0.5 for quad in outer]
    return _inside(sight, around, 2 * _NEAR)


def _inside(sight: Sight, papers: list[Floats], deep: float) -> tuple[Floats, Floats]:
    """The paintings' quadrilaterals inside these, in pixels of the large picture."""
    found = [_on_one(sight, paper, deep) for paper in papers]
    found = [each for each in found if len(each[0])]
    if not found:
        return _NONE
    quads = np.concatenate([each[0] for each in found])
    return (quads + 0.5) * sight.block, np.concatenate([each[1] for each in found])


def _papers(sight: Sight) -> list[Floats]:
    """Outlines (4, 2), in pixels of the small picture, of what is brighter than around it."""
    lines = find_sides(sight.gradient, (1, -1))
    if lines is None:
        return []
    kept: list[Floats] = []
    h, w = sight.small.shape[:2]
    for quad in shortlist(lines, (h, w))[0]:
        least = _APART * np.ptp(quad, axis=0).max()
        if all(np.abs(quad - other).max() > least for other in kept):
            kept.append(quad)
        if len(kept) == _PAPERS:
            break
    return kept


def _on_one(sight: Sight, paper: Floats, deep: float) -> tuple[Floats, Floats]:
    """The painting's quadrilaterals on one paper, in pixels of the small picture."""
    sides = [_lines_along(sight.W, paper, side, deep) for side in range(4)]
    if not all(len(side) for side in sides):
        return _NONE
    h, w = sight.small.shape[:2]
    gradient, turned = sight.gradient, sight.gradient.turned
    top, right, bottom, left = sides
    lines = [
        line_set(gradient, -1, *_steep(left, h)),
        line_set(gradient, 1, *_steep(right, h)),
        line_set(turned, -1, *_steep(top[:, :, ::-1], w)),
        line_set(turned, 1, *_steep(bottom[:, :, ::-1], w)),
    ]
    return with_ring(sight, *shortlist(lines, (h, w)))


def _steep(ends: Floats, height: int) -> tuple[Floats, Floats]:
    """Place at the middle row and slope of lines through two points each, (n, 2, 2)."""
    (x0, y0), (x1, y1) = ends[:, 0].T, ends[:, 1].T
    slope = (x1 - x0) / np.where(np.abs(y1 - y0) < 1e-6, 1e-6, y1 - y0)
    return x0 + slope * (height / 2 - y0), slope


def _lines_along(W: Floats, paper: Floats, side: int, deep: float) -> Floats:
    """Ends (n, 2, 2), in pixels, of the lines along a side of the paper where the paint may end:
    the clearest one, and one outside of it that is nearly as clear."""
    from scipy.ndimage import gaussian_filter1d  # deferred: start-up time

    unit = np.array([[0, 0], [1, 0], [1, 1], [0, 1]], dtype=np.float64)
    to_picture = homography(unit, np.roll(paper, -side, axis=0))  # this side is the upper one
    across = (np.arange(_PARTS * _PART) + 0.5) / (_PARTS * _PART) * 0.9 + 0.05
    rows = round(deep / _PITCH)
    down = (np.arange(rows) + 0.5) * _PITCH
    at = np.stack([*np.meshgrid(across, down), np.ones((rows, len(across)))], -1) @ to_picture.T
    seen = sampled(W, at[..., :2] / at[..., 2:])
    parts = seen.reshape(rows, _PARTS, _PART, 3).swapaxes(2, 3)
    colours = medians(np.ascontiguousarray(parts))
    sums = np.cumsum(gaussian_filter1d(colours, 1.0, axis=0), axis=0)
    sums = np.concatenate([np.zeros((1, _PARTS, 3)), sums])
    row = np.arange(_WINDOW, rows - _WINDOW)
    step = (sums[row + _WINDOW] - 2 * sums[row] + sums[row - _WINDOW]) / _WINDOW
    # Paint never lightens its paper.
    clear = np.where(step[..., 0] < 0.3, np.linalg.norm(step, axis=-1), 0.0)
    clear = np.minimum(clear, _CAP)
    middle = (np.arange(_PARTS) + 0.5) / _PARTS * 0.9 + 0.05 - 0.5
    shifts = np.rint(_SLOPES[:, None] * middle / _PITCH).astype(int)
    places = np.arange(len(row)) + shifts[..., None]
    inside = (places >= 0) & (places < len(row))
    votes = clear[np.clip(places, 0, len(row) - 1), np.arange(_PARTS)[:, None]] * inside
    share = votes.mean(axis=1)  # (slopes, rows)
    best = share.max(axis=0)
    first = int(best.argmax())
    if best[first] < max(_LEAST, 1.5 * float(np.median(best))):
        return np.empty((0, 2, 2))
    kept = [first]
    for start, end in ((0, first - _AWAY), (first + _AWAY, len(best))):
        rest = best[max(start, 0) : max(end, 0)]
        if len(rest) and rest.max() > _RIVAL * best[first]:
            kept.append(start + int(rest.argmax()))
    depth, slope = row[kept] * _PITCH, _SLOPES[share[:, kept].argmax(axis=0)]
    ends = np.stack(
        [np.stack([np.full(len(kept), u), depth + slope * (u - 0.5), np.ones(len(kept))], -1)
         for u in (0.0, 1.0)], axis=1,
    ) @ to_picture.T  # fmt: skip
    return np.asarray(ends[..., :2] / ends[..., 2:])

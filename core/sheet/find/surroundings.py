"""What else a picture shows beside the painting: another sheet, or nothing but a desk.

A painting without paper around it (cut out by a phone's scanner, or painted to the paper's edge)
has no border to be found by. Then the outline of what differs from the surroundings is proposed.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import dot, linear_to_W, shrunk
from core.progress import ShouldStop
from core.sheet.find.corners import SURE, find_corners
from core.sheet.find.sight import Sight
from core.sheet.result import Corners

WHOLE: Corners = ((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0))

_ROOM = 0.45  # of the painting's own size: what another sheet needs beside it
_PAPER = 0.06  # of the painting's size: what its own paper takes at least
_LOOKED_AT = 320  # pixels of the longer side
_STRIP = 0.03  # of the picture, along its edges: what is around
_APART, _SPREAD = 7.0, 3.5  # working units, and times what the surroundings vary by
_FILLED = 0.93  # share of the four corners' area that differs from the surroundings
_LEAST, _MOST = 0.12, 0.97  # of the picture


def other_sheet(sight: Sight, corners: Corners, should_stop: ShouldStop | None = None) -> bool:
    """Whether there is a second painting beside one that was found."""
    quad = np.asarray(corners)
    low, high = quad.min(axis=0), quad.max(axis=0)
    size = high - low
    height, width = sight.linear.shape[:2]
    left, top = low - _PAPER * size
    right, bottom = high + _PAPER * size
    parts = (
        (0.0, 0.0, left, 1.0),
        (right, 0.0, 1.0, 1.0),
        (0.0, 0.0, 1.0, top),
        (0.0, bottom, 1.0, 1.0),
    )
    for x0, y0, x1, y1 in parts:
        across = x1 - x0 if y1 - y0 == 1.0 else y1 - y0
        own = size[0] if y1 - y0 == 1.0 else size[1]
        if across < _ROOM * own:
            continue
        rows = slice(max(0, round(y0 * height)), min(height, round(y1 * height)))
        columns = slice(max(0, round(x0 * width)), min(width, round(x1 * width)))
        part = np.ascontiguousarray(sight.linear[rows, columns])
        if min(part.shape[:2]) < 40:
            continue
        if find_corners(Sight(part), should_stop=should_stop).confidence >= SURE:
            return True
    return False


def outline_of(sight: Sight) -> Corners | None:
    """Corners of the one thing that stands out from its surroundings; None where none does."""
    from scipy.ndimage import binary_fill_holes, label  # deferred: start-up time

    small, _ = shrunk(sight.linear, _LOOKED_AT)
    W = linear_to_W(small.astype(np.float64))
    h, w = W.shape[:2]
    strip = max(2, round(_STRIP * min(h, w)))
    frame = np.ones((h, w), dtype=bool)
    frame[strip:-strip, strip:-strip] = False
    around = np.median(W[frame], axis=0)
    away = np.sqrt(dot(W - around, W - around))
    spread = float(np.quantile(away[frame], 0.9))
    inside = away > max(_APART, _SPREAD * 0.5 * spread)
    pieces, count = label(binary_fill_holes(inside))
    if not count:
        return None
    sizes = np.bincount(pieces.ravel())[1:]
    piece = pieces == 1 + int(sizes.argmax())
    if not _LEAST < piece.mean() < _MOST:
        return None
    return _corners_of(piece)


def _corners_of(piece: NDArray[np.bool_]) -> Corners | None:
    """The corners of a piece (h, w) that is nearly a quadrilateral; else None."""
    h, w = piece.shape
    rows, columns = np.nonzero(piece)
    points = np.stack([columns, rows], -1).astype(np.float64)
    corners = []
    for x, y in ((-1, -1), (1, -1), (1, 1), (-1, 1)):
        far = points[int((points @ [x, y]).argmax())]
        corners.append(far + np.array([0.5 + 0.5 * x, 0.5 + 0.5 * y]))
    quad = np.asarray(corners)
    nxt = np.roll(quad, -1, axis=0)
    area = 0.5 * abs(float((quad[:, 0] * nxt[:, 1] - nxt[:, 0] * quad[:, 1]).sum()))
    if area <= 0 or not _FILLED < len(points) / area < 2 - _FILLED:
        return None
    a, b, c, d = ((float(x / w), float(y / h)) for x, y in quad)
    return (a, b, c, d)


def touches_no_edge(corners: Corners) -> bool:
    """Whether at least three of the four corners are clear of the picture's edges."""
    clear = [min(x, y, 1 - x, 1 - y) > 0.01 for x, y in corners]
    return sum(clear) >= 3

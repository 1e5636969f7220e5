"""Dark shapes that may be a card's marks: rings with a core, and solid squares."""

from __future__ import annotations

from collections.abc import Iterator

import numpy as np
from numpy.typing import NDArray

from core.swatches.layout import Floats

_LOOKS = ((9, 0.72), (9, 0.85), (18, 0.8), (6, 0.6))
"""The neighbourhood, as a part of the longer side, and the share of its mean below which it is
dark: shadows and blur want different ones."""

_LEAST, _RING_LEAST, _MOST = 3, 9, 1 / 5
"""Sides in pixels, the last as a share of the picture's."""
_SLANT = 2.6
_RING, _SOLID, _WHOLE = (0.36, 0.75), 0.92, 0.42
_CORE, _CORE_SIDE, _CENTRED = (0.06, 0.4), 0.75, 0.13
_SAME = 0.4
"""Two finds nearer than this share of their side are one."""


def mark_candidates(grey: NDArray[np.float32]) -> Iterator[tuple[Floats, Floats]]:
    """Rings and solid squares, after every look at the picture once more.

    Parameters
    ----------
    grey : ndarray, shape (h, w), float32

    Yields
    ------
    rings, solids : ndarrays, shape (n, 3), float
        x, y and side in pixels of all found so far.
    """
    from scipy.ndimage import uniform_filter  # deferred: start-up time

    rings: list[tuple[float, float, float]] = []
    solids: list[tuple[float, float, float]] = []
    side = max(grey.shape)
    for part, share in _LOOKS:
        around = uniform_filter(grey, int(side / part) | 1)
        _look(grey < around * share, side, rings, solids)
        yield np.array(rings).reshape(-1, 3), np.array(solids).reshape(-1, 3)


def _look(
    dark: NDArray[np.bool_],
    side: int,
    rings: list[tuple[float, float, float]],
    solids: list[tuple[float, float, float]],
) -> None:
    from scipy.ndimage import binary_fill_holes, find_objects, label  # deferred: start-up time

    numbered, _ = label(dark)
    shapes = []
    for number, place in enumerate(find_objects(numbered), start=1):
        height, width = (part.stop - part.start for part in place)
        if min(height, width) < _LEAST or max(height, width) > side * _MOST:
            continue
        if max(height / width, width / height) > _SLANT:
            continue
        mask = numbered[place] == number
        rows, columns = np.nonzero(mask)
        y, x = place[0].start + rows.mean(), place[1].start + columns.mean()
        shapes.append((y, x, float(len(rows)), height, width, mask, place))
    facts = np.array([shape[:5] for shape in shapes], dtype=np.float64).reshape(-1, 5)
    for number, (y, x, area, height, width, mask, place) in enumerate(shapes):
        if min(height, width) < _RING_LEAST:
            continue
        filled = binary_fill_holes(mask)
        whole = float(filled.sum())
        if whole / (height * width) < _WHOLE:
            continue
        share = area / whole
        if share > _SOLID:
            _add(solids, (x, y, float(np.sqrt(whole))))
        elif _RING[0] < share < _RING[1]:
            cores = (np.abs(facts[:, 0] - y) < _CENTRED * height) & (
                np.abs(facts[:, 1] - x) < _CENTRED * width
            )
            cores &= (facts[:, 2] > _CORE[0] * whole) & (facts[:, 2] < _CORE[1] * whole)
            cores &= (facts[:, 3] < _CORE_SIDE * height) & (facts[:, 4] < _CORE_SIDE * width)
            cores[number] = False
            if cores.any():
                rows, columns = np.nonzero(filled)
                middle = place[1].start + columns.mean(), place[0].start + rows.mean()
                _add(rings, (float(middle[0]), float(middle[1]), float(np.sqrt(whole))))


def _add(found: list[tuple[float, float, float]], new: tuple[float, float, float]) -> None:
    new_x, new_y, side = new
    reach = _SAME * side
    for x, y, _ in found:
        # Most are far off, which one comparison tells.
        if abs(new_x - x) <= reach and np.hypot(new_x - x, new_y - y) <= reach:
            return
    found.append(new)

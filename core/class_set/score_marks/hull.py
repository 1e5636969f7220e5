"""The convex hull of a mark, and how much of it lies within a box."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Point = tuple[float, float]


def hull_of(mask: NDArray[np.bool_]) -> list[Point]:
    """The hull of a mask's pixels as (x, y), in turn; empty for an empty mask.

    Notes
    -----
    Andrew (1979), "Another efficient algorithm for convex hulls in two dimensions", Information
    Processing Letters 9(5), over the outer corners of each row's first and last pixel.
    """
    rows = np.nonzero(mask.any(axis=1))[0]
    if not len(rows):
        return []
    first = mask.argmax(axis=1)[rows]
    last = mask.shape[1] - mask[:, ::-1].argmax(axis=1)[rows]
    points: set[Point] = set()
    for y, left, right in zip(rows.tolist(), first.tolist(), last.tolist(), strict=True):
        points |= {(left, y), (left, y + 1), (right, y), (right, y + 1)}
    ordered = sorted(points)
    lower, upper = _chain(ordered), _chain(ordered[::-1])
    return lower[:-1] + upper[:-1]


def area(polygon: list[Point]) -> float:
    """Of a polygon, by the shoelace formula."""
    total = 0.0
    for (x0, y0), (x1, y1) in zip(polygon, polygon[1:] + polygon[:1], strict=True):
        total += x0 * y1 - x1 * y0
    return abs(total) / 2


def clipped(polygon: list[Point], box: tuple[float, float, float, float]) -> list[Point]:
    """The part of a convex polygon within left, top, right, bottom.

    Notes
    -----
    Sutherland and Hodgman (1974), "Reentrant polygon clipping", Communications of the ACM 17(1).
    """
    left, top, right, bottom = box
    for axis, limit, sign in ((0, left, 1), (1, top, 1), (0, right, -1), (1, bottom, -1)):
        polygon = _cut(polygon, axis, limit, sign)
    return polygon


def _cut(polygon: list[Point], axis: int, limit: float, sign: int) -> list[Point]:
    kept: list[Point] = []
    for now, then in zip(polygon, polygon[1:] + polygon[:1], strict=True):
        a, b = sign * (now[axis] - limit), sign * (then[axis] - limit)
        if a >= 0:
            kept.append(now)
        if (a >= 0) != (b >= 0):
            t = a / (a - b)
            kept.append((now[0] + t * (then[0] - now[0]), now[1] + t * (then[1] - now[1])))
    return kept


def _chain(points: list[Point]) -> list[Point]:
    chain: list[Point] = []
    for point in points:
        while len(chain) > 1 and _turn(chain[-2], chain[-1], point) <= 0:
            chain.pop()
        chain.append(point)
    return chain


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])

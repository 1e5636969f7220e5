"""Moving crowded marks apart: plain arithmetic of layout, no Qt, no colour."""

from __future__ import annotations

import math
from collections.abc import Sequence

Point = tuple[float, float]

_ROUNDS = 300
# Of a push between two discs, this much of the radial part remains: they part sideways first,
# so that the distance from the centre, the intensity, stays readable.
_RADIAL_SHARE = 0.45


def spread_line(
    places: Sequence[float], gap: float, low: float = -math.inf, high: float = math.inf
) -> tuple[float, ...]:
    """Places moved as little as possible (least squares) to stand `gap` apart, order kept.

    Parameters
    ----------
    places : sequence of float
        Wanted places, in any order; of equal ones the earlier comes first.
    gap : float
        Least distance between neighbours; shrinks when they would not fit between the ends.
    low, high : float
        The ends.

    Returns
    -------
    tuple of float
        In the order given.

    Notes
    -----
    Taking k * gap from the k-th place turns the task into isotonic regression, solved exactly
    by pooling adjacent violators (Barlow et al., Statistical Inference under Order Restrictions,
    1972).

    >>> spread_line([1.0, 1.0, 5.0], 2.0)
    (0.0, 2.0, 5.0)
    """
    count = len(places)
    if count == 0:
        return ()
    if count > 1 and gap * (count - 1) > high - low:
        gap = (high - low) / (count - 1)
    order = sorted(range(count), key=lambda i: (places[i], i))
    blocks: list[tuple[float, int]] = []
    for rank, index in enumerate(order):
        total, size = places[index] - rank * gap, 1
        while blocks and blocks[-1][0] / blocks[-1][1] > total / size:
            before, number = blocks.pop()
            total, size = total + before, size + number
        blocks.append((total, size))
    result = [0.0] * count
    rank = 0
    for total, size in blocks:
        for _ in range(size):
            shifted = min(max(total / size, low), high - (count - 1) * gap)
            result[order[rank]] = shifted + rank * gap
            rank += 1
    return tuple(result)


def spread_disc(
    places: Sequence[Point], radius: float, clear: float, limit: float
) -> tuple[float, tuple[Point, ...]]:
    """Discs moved apart inside a circle round (0, 0), across the radius first.

    Parameters
    ----------
    places : sequence of (x, y)
        Where the discs' centres belong.
    radius : float
        Wanted radius of the discs.
    clear : float
        Wanted clearance between their edges.
    limit : float
        Centres stay within this distance of (0, 0).

    Returns
    -------
    radius : float
        The radius they could have: smaller only when so many do not fit.
    places : tuple of (x, y)
        Centres at least 2 * radius apart, and `clear` more where there is room.
    """
    wanted = [_inside(p, limit) for p in places]
    for attempt in range(12):
        # Clearance goes first, size last.
        kept = clear * max(0.25, 1.0 - 0.25 * attempt)
        size = radius * (1.0 if attempt < 4 else 0.9 ** (attempt - 3))
        moved = _relax(wanted, 2.0 * size + kept, limit)
        if _least_distance(moved) >= 2.0 * size + 0.5 * kept:
            return size, tuple(moved)
    size, lattice = _on_lattice(wanted, radius, limit)
    return size, lattice


def _inside(point: Point, limit: float) -> Point:
    distance = math.hypot(*point)
    if distance <= limit or distance == 0.0:
        return point
    return point[0] * limit / distance, point[1] * limit / distance


def _least_distance(points: Sequence[Point]) -> float:
    return min(
        (math.dist(a, b) for i, a in enumerate(points) for b in points[:i]), default=math.inf
    )


def _relax(wanted: list[Point], apart: float, limit: float) -> list[Point]:
    """Push overlapping pairs apart until none is left, or give up."""
    points = list(wanted)
    # A little further than asked, so that the sequence ends.
    goal = apart * 1.002
    for _ in range(_ROUNDS):
        still = True
        for i in range(len(points)):
            for j in range(i + 1, len(points)):
                (ax, ay), (bx, by) = points[i], points[j]
                dx, dy = bx - ax, by - ay
                square = dx * dx + dy * dy
                if square >= apart * apart:
                    continue
                still = False
                push_x, push_y = _direction(ax + bx, ay + by, dx, dy, apart)
                half = 0.5 * (goal - math.sqrt(square))
                points[i] = _inside((ax - push_x * half, ay - push_y * half), limit)
                points[j] = _inside((bx + push_x * half, by + push_y * half), limit)
        if still:
            break
    return points


def _direction(sum_x: float, sum_y: float, dx: float, dy: float, apart: float) -> Point:
    """Unit vector from the first disc to the second along which they part."""
    distance = math.hypot(sum_x, sum_y)
    if distance < 0.2 * apart:
        along_x, along_y = 0.0, -1.0
    else:
        along_x, along_y = sum_x / distance, sum_y / distance
    radial = (dx * along_x + dy * along_y) * _RADIAL_SHARE
    # The second goes on clockwise when nothing else decides.
    sideways = -dx * along_y + dy * along_x
    if abs(sideways) < 1e-3 * apart:
        sideways = 0.05 * apart
    x = radial * along_x - sideways * along_y
    y = radial * along_y + sideways * along_x
    length = math.hypot(x, y)
    return x / length, y / length


def _on_lattice(
    wanted: Sequence[Point], radius: float, limit: float
) -> tuple[float, tuple[Point, ...]]:
    """Last resort for great crowds: the nearest free point of a hexagonal lattice each."""
    size = radius
    while True:
        step = 2.05 * size
        rows = int(limit / (step * 0.866)) + 1
        free = [
            (x, y)
            for row in range(-rows, rows + 1)
            for column in range(-rows - 2, rows + 3)
            if math.hypot(x := (column + 0.5 * (row % 2)) * step, y := row * step * 0.866026)
            <= limit
        ]
        if len(free) >= len(wanted):
            break
        size *= 0.92
    result: list[Point] = []
    for place in wanted:
        nearest = min(free, key=lambda p: math.dist(p, place))
        free.remove(nearest)
        result.append(nearest)
    return size, tuple(result)

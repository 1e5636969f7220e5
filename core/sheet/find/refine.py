"""Moving a rough quadrilateral onto the exact edge of the paint."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.medians import medians
from core.colour.working_space import Floats, dot_planes, linear_to_W_planes
from core.sheet.sampling import sampled

_PLACES = 90  # profiles a side
_STEPS = 49  # samples a profile
_ENDS = 4.0  # working units: so much darker further out, and the paper ends before


def refine(linear: NDArray[np.float32], quad: Floats) -> Floats:
    """Corners (4, 2) in pixels, each side moved to where colour changes half-way.

    Parameters
    ----------
    linear : (h, w, 3) float32
        The photo in linear light.
    quad : (4, 2) float64
        Rough corners in pixels, good to about 1% of the side.
    """
    for reach in (0.016, 0.010, 0.007):
        sides = _fit_sides(linear, quad, reach)
        moved = np.stack([_crossing(sides[k - 1], sides[k]) for k in range(4)])
        if not np.isfinite(moved).all() or np.abs(moved - quad).max() > 0.05 * np.ptp(quad):
            return quad
        quad = moved
    return quad


def _fit_sides(
    linear: NDArray[np.float32], quad: Floats, reach: float
) -> list[tuple[Floats, Floats]]:
    """A point and a direction of the line through the paint's edge along each side."""
    start = quad
    along = np.roll(quad, -1, axis=0) - start
    length = np.array([float(np.linalg.norm(side)) for side in along])[:, None]
    direction = along / length
    outward = np.stack([direction[:, 1], -direction[:, 0]], axis=-1)
    size = float(np.ptp(quad, axis=0).mean())
    run = np.linspace(0.02, 0.98, _PLACES)
    offset = np.linspace(-1, 1, _STEPS) * max(reach * size, 3.0)
    at = start[:, None] + along[:, None] * run[:, None]
    at = at[:, :, None] + outward[:, None, None] * offset[:, None]
    W = linear_to_W_planes(sampled(linear, at - 0.5))
    found = [_edge_along(W[:, side], offset) for side in range(4)]
    crossing, difference = (np.stack(each) for each in zip(*found, strict=True))
    weight = difference / (difference + 4.0)
    height, slope, centre = _robust_lines(run * length, crossing, weight)
    points = start + direction * centre + outward * height
    ways = direction + outward * slope
    return [(point, way / np.linalg.norm(way)) for point, way in zip(points, ways, strict=True)]


def _edge_along(W: Floats, offset: Floats) -> tuple[Floats, Floats]:
    """How far out the paint ends in each profile (places,), and the size of its step there, of
    working colours (3, places, steps)."""
    seen = _before_the_paper_ends(W[0])
    W, offset = W[:, :, :seen], offset[:seen]
    # Neighbouring profiles share an edge: a running median calms paper grain and paint bleeds.
    part = max(1, seen // 4)
    inner, outer = medians(W[:, :, :part]), medians(W[:, :, -part:])
    difference = outer - inner
    size2 = dot_planes(difference, difference)
    along = dot_planes(W - inner[..., None], difference[..., None])
    along /= np.maximum(size2, 1e-9)[:, None]
    # The edge is where the paint's share of the profile ends: area under the clipped curve.
    paper_share = np.clip(along, 0, 1).mean(axis=1)
    # The area counts ends that are beyond the median plateaus evenly, so it is unbiased.
    return offset[-1] - paper_share * (offset[-1] - offset[0]), np.sqrt(size2)


def _before_the_paper_ends(light: Floats) -> int:
    """How many samples outwards (places, steps) are on the sheet: a thin border ends in them."""
    light = medians(np.ascontiguousarray(light.T))
    brightest = int(light.argmax())
    quarter = _STEPS // 4
    if brightest < quarter or light[brightest] - medians(light[-quarter:]) < _ENDS:
        return _STEPS
    return brightest + 1


def _robust_lines(run: Floats, crossing: Floats, weight: Floats) -> tuple[Floats, Floats, Floats]:
    """Straight lines through crossings (sides, places) at `run`, strays counting less and less:
    height (sides, 1) in the middle, slope, and where the middle is."""
    centre = run.mean(axis=1, keepdims=True)
    away = run - centre
    w = weight
    height = slope = np.zeros_like(centre)
    for _ in range(8):
        square = w * w
        total = square.sum(axis=1, keepdims=True)
        middle, level = _product(square, away) / total, _product(square, crossing) / total
        slope = _product(square * (away - middle), crossing - level)
        slope = slope / _product(square, (away - middle) ** 2)
        height = level - slope * middle
        rest = crossing - height - slope * away
        spread = 1.4826 * medians(np.abs(rest))[:, None] + 0.05
        w = weight / (1 + (rest / (1.5 * spread)) ** 2)
    return height, slope, centre


def _product(one: Floats, other: Floats) -> Floats:
    """Scalar products (sides, 1) of vectors (sides, n)."""
    return np.asarray((one[:, None] @ other[..., None])[:, 0])


def _crossing(one: tuple[Floats, Floats], two: tuple[Floats, Floats]) -> Floats:
    (p, d), (q, e) = one, two
    system = np.stack([d, -e], -1)
    if abs(np.linalg.det(system)) < 1e-6:
        return np.full(2, np.nan)
    t = np.linalg.solve(system, q - p)
    return np.asarray(p + d * t[0])

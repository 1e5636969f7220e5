"""Moving a rough quadrilateral onto the exact edge of the paint."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats, dot, linear_to_W
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
        sides = [_fit_side(linear, quad, k, reach) for k in range(4)]
        moved = np.stack([_crossing(sides[k - 1], sides[k]) for k in range(4)])
        if not np.isfinite(moved).all() or np.abs(moved - quad).max() > 0.05 * np.ptp(quad):
            return quad
        quad = moved
    return quad


def _fit_side(
    linear: NDArray[np.float32], quad: Floats, k: int, reach: float
) -> tuple[Floats, Floats]:
    """A point and a direction of the line through the paint's edge along side `k`."""
    a, b = quad[k], quad[(k + 1) % 4]
    length = float(np.linalg.norm(b - a))
    direction = (b - a) / length
    outward = np.array([direction[1], -direction[0]])
    size = float(np.ptp(quad, axis=0).mean())
    run = np.linspace(0.02, 0.98, _PLACES)
    offset = np.linspace(-1, 1, _STEPS) * max(reach * size, 3.0)
    at = a + (b - a) * run[:, None, None] + outward * offset[None, :, None]
    W = linear_to_W(sampled(linear, at - 0.5).astype(np.float64))
    seen = _before_the_paper_ends(W)
    W, offset = W[:, :seen], offset[:seen]
    # Neighbouring profiles share an edge: a running median calms paper grain and paint bleeds.
    part = max(1, seen // 4)
    inner, outer = np.median(W[:, :part], axis=1), np.median(W[:, -part:], axis=1)
    difference = outer - inner
    size2 = dot(difference, difference)
    along = dot(W - inner[:, None], difference[:, None]) / np.maximum(size2, 1e-9)[:, None]
    # The edge is where the paint's share of the profile ends: area under the clipped curve.
    paper_share = np.clip(along, 0, 1).mean(axis=1)
    crossing = offset[-1] - paper_share * (offset[-1] - offset[0])
    # The area counts ends that are beyond the median plateaus evenly, so it is unbiased.
    weight = np.sqrt(size2) / (np.sqrt(size2) + 4.0)
    return _robust_line(run * length, crossing, weight, a, direction, outward)


def _before_the_paper_ends(W: Floats) -> int:
    """How many samples (n, samples, 3), outwards, are on the sheet: a thin border ends in them."""
    light = np.median(W[..., 0], axis=0)
    brightest = int(light.argmax())
    quarter = _STEPS // 4
    if brightest < quarter or light[brightest] - np.median(light[-quarter:]) < _ENDS:
        return _STEPS
    return brightest + 1


def _robust_line(
    run: Floats, crossing: Floats, weight: Floats, a: Floats, direction: Floats, outward: Floats
) -> tuple[Floats, Floats]:
    centre = run.mean()
    away = run - centre
    w = weight
    height = slope = 0.0
    for _ in range(8):
        square = w * w
        total = square.sum()
        middle, level = (square @ away) / total, (square @ crossing) / total
        slope = (square * (away - middle)) @ (crossing - level) / (square @ (away - middle) ** 2)
        height = level - slope * middle
        rest = crossing - height - slope * away
        spread = 1.4826 * np.median(np.abs(rest)) + 0.05
        w = weight / (1 + (rest / (1.5 * spread)) ** 2)
    point = a + direction * centre + outward * height
    way = direction + outward * slope
    return point, way / np.linalg.norm(way)


def _crossing(one: tuple[Floats, Floats], two: tuple[Floats, Floats]) -> Floats:
    (p, d), (q, e) = one, two
    system = np.stack([d, -e], -1)
    if abs(np.linalg.det(system)) < 1e-6:
        return np.full(2, np.nan)
    t = np.linalg.solve(system, q - p)
    return np.asarray(p + d * t[0])

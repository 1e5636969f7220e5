"""Blooms (backruns), found in the density of the paint.

A bloom is a pale compact patch with a darker, crinkled rim, where wetter paint ran into paint
that was drying.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.medians import medians
from core.colour.working_space import Floats

_RADII = (0.028, 0.035, 0.044, 0.055, 0.068, 0.084, 0.104)
_DIRECTIONS = 36

Spot = tuple[float, float, float]
"""x, y, radius: shares of width, height and height."""


def relative_density(density: Floats) -> Floats:
    """Paint at each place over the median of its row, (rows, columns), 1 where it is even; of
    `density.density_of` a painted rectangle."""
    row = medians(density)[:, None]
    # Paint too thin to see has no meaningful ratio: a floor keeps its noise small.
    return np.asarray((density + 0.06) / (row + 0.06))


def find_blooms(density: Floats) -> tuple[Spot, ...]:
    """Blooms of a painted rectangle whose paint is `density` (rows, columns), see
    `density.density_of`."""
    even = relative_density(density)
    h, w = even.shape
    spots, features = bloom_candidates(even)
    if not spots:
        return ()
    strength = judge_blooms(features)
    kept: list[tuple[float, float, float]] = []
    for index in np.argsort(-strength):
        if strength[index] < 0:
            break
        y, x, r = spots[index]
        if all(np.hypot(y - b, x - c) > 2.0 * max(r, d) for b, c, d in kept):
            kept.append((y, x, r))
    return tuple(((x + 0.5) / w, (y + 0.5) / h, r / h) for y, x, r in kept)


FEATURES = (
    "paler", "rim", "rim all around", "paler all around", "radius turns", "paler over noise",
    "rim over noise", "lopsided", "steep", "uneven inside", "seen", "radius",
)  # fmt: skip
# From tools/fit_blooms.py, on simulated sheets with washes laid evenly and unevenly.
_MEAN = np.array(
    [0.1231, 0.0242, 0.5963, 0.8040, 0.1589, 1.0531, 0.1807, 0.4559, 0.5386, 0.5244, 0.9368,
     -2.6668]
)  # fmt: skip
_SCALE = np.array(
    [0.0863, 0.0468, 0.1564, 0.1709, 0.0494, 0.7752, 0.3313, 0.3759, 0.3335, 0.2635, 0.1052,
     0.3496]
)  # fmt: skip
_WEIGHTS = np.array(
    [-0.0329, -0.5537, 1.1264, 0.6374, 0.3044, 2.2952, 0.9164, -0.9406, 1.7155, -1.5197, -0.6244,
     1.2146]
)  # fmt: skip
_BIAS = -7.4  # 3.5 stricter than fitted: a false alarm costs more than a miss


def judge_blooms(features: Floats) -> Floats:
    """Log-odds (n,) above what is said, of candidates with these features (n, 12)."""
    return np.asarray((features - _MEAN) / _SCALE @ _WEIGHTS + _BIAS)


def bloom_candidates(even: Floats) -> tuple[list[tuple[float, float, float]], Floats]:
    """Pale patches with some rim: (y, x, radius) in pixels of `even`, and features (n, 12)."""
    from scipy.ndimage import gaussian_filter, maximum_filter  # deferred: start-up time

    h = len(even)
    smooth = gaussian_filter(even, 0.9, mode="nearest")
    # What a row varies anyway: where washes meet in a wavy course it varies much.
    noise = 1.4826 * medians(np.abs(smooth - medians(smooth)[:, None]))
    half = even[: h // 2 * 2, : even.shape[1] // 2 * 2]
    half = half.reshape(h // 2, 2, -1, 2).mean(axis=(1, 3))
    spots: list[tuple[float, float, float]] = []
    features = []
    for share in _RADII:
        r = share * h / 2
        # Difference of Gaussians as a quick look for pale patches of about this size.
        patch = gaussian_filter(half, 1.6 * r, mode="nearest", truncate=2.5)
        patch -= gaussian_filter(half, 0.55 * r, mode="nearest", truncate=2.5)
        peak = (patch == maximum_filter(patch, size=max(3, round(r)))) & (patch > 0.03)
        places = np.argwhere(peak)
        for y, x in places[np.argsort(-patch[peak])[:10]]:
            found = _measure(smooth, noise, 2.0 * y + 0.5, 2.0 * x + 0.5, 2 * r)
            if found is not None:
                spots.append(found[0])
                features.append(found[1])
    return spots, np.asarray(features).reshape(-1, len(FEATURES))


_REACH = np.linspace(0.0, 1.8, 46)
_RIM_AT = _REACH[(_REACH > 0.6) & (_REACH < 1.45)]  # where a rim may be, in radii
_ALONG = np.linspace(-0.9, 0.6, 16)


def _measure(
    smooth: Floats, noise: Floats, y: float, x: float, r: float
) -> tuple[tuple[float, float, float], Floats] | None:
    """Where a bloom's rim is around (y, x), and how it looks; None without a rim to see.

    Density is followed outwards in many directions: a bloom is pale inside, and has a rim darker
    than what is further out, at about the same distance all around.
    """
    from scipy.ndimage import map_coordinates, median_filter  # deferred: start-up time

    h, w = smooth.shape
    angle = np.linspace(0, 2 * np.pi, _DIRECTIONS, endpoint=False)[:, None]
    sine, cosine = np.sin(angle), np.cos(angle)

    def places(reach: Floats) -> tuple[Floats, NDArray[np.bool_]]:
        """Where each direction leads to, and which directions stay inside the picture."""
        at = np.stack([y + reach * sine, x + reach * cosine])
        inside = (at >= 2) & (at <= np.reshape([h - 3, w - 3], (2, 1, 1)))
        return at, np.asarray(inside.all(axis=(0, 2)))

    def follow(at: Floats) -> Floats:
        return np.asarray(map_coordinates(smooth, at, order=1, mode="nearest"))

    radius = np.full(_DIRECTIONS, r)
    seen = np.ones(_DIRECTIONS, dtype=bool)
    for _ in range(2):
        at, seen = places(_RIM_AT[None] * r)
        if seen.mean() < 0.6:
            return None
        rims = np.zeros((_DIRECTIONS, len(_RIM_AT)))
        rims[seen] = follow(at[:, seen])
        radius = r * _RIM_AT[rims.argmax(axis=1)]
        radius = median_filter(radius, 5, mode="wrap")
        # Move to the middle of the rim found, and look once more.
        y += float(np.mean((radius * sine[:, 0])[seen]))
        x += float(np.mean((radius * cosine[:, 0])[seen]))
        r = float(medians(radius[seen]))
    if not (2 < y < h - 3 and 2 < x < w - 3 and 0.02 * h < r < 0.14 * h):
        return None
    at, inside = places(radius[:, None] + _ALONG[None] * r)
    seen &= inside
    if seen.mean() < 0.5:
        return None
    aligned = follow(at[:, seen])
    pale_each = aligned[:, _ALONG < -0.25].mean(axis=1)
    rim_each = aligned[:, np.abs(_ALONG) < 0.11].mean(axis=1)
    outer_each = aligned[:, _ALONG > 0.3].mean(axis=1)
    pale, rim, outer = (float(medians(part)) for part in (pale_each, rim_each, outer_each))
    depth = max(outer - pale, 1e-3)
    rows = noise[max(0, int(y - 1.5 * r)) : int(y + 1.5 * r) + 1]
    rough = float(np.sqrt(np.mean(rows**2))) + 0.005
    first = np.abs(np.mean(outer_each * np.exp(1j * angle[seen, 0]))) / depth
    before = float(medians(aligned[:, np.abs(_ALONG + 0.3) < 0.06].ravel()))
    features = np.array(
        [
            min(depth / outer, 0.6), min(rim - outer, 0.3), (rim_each > outer_each).mean(),
            (outer_each > pale_each + 0.02).mean(), min(float(radius[seen].std()) / r, 0.5),
            min(depth / rough, 15.0), min((rim - outer) / rough, 8.0), min(first, 1.0),
            np.clip((rim - before) / max(rim - pale, 1e-3), -0.5, 1.5),
            min(float(pale_each.std()) / depth, 1.0), seen.mean(), np.log(r / h),
        ]
    )  # fmt: skip
    return (y, x, r), features

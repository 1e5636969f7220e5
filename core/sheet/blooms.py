"""Blooms (backruns) and pale corners, found in the density of the paint.

A bloom is a pale compact patch with a darker, crinkled rim, where wetter paint ran into paint
that was drying.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.sheet.result import PaleCorner
from core.sheet.space import Floats

PALE_SHARE = 0.8
"""A corner with less paint than this share of the middle's is remarked on."""
LEAST_LESS = 0.15
"""And it must lack this much density, over the three channels together: the light in a corner is
known to a few hundredths only, which in a very pale wash looks like half the paint."""

_ROWS = 256
_RADII = (0.028, 0.035, 0.044, 0.055, 0.068, 0.084, 0.104)
_DIRECTIONS = 36

Spot = tuple[float, float, float]
"""x, y, radius: shares of width, height and height."""


def relative_density(painted: NDArray[np.float32]) -> Floats:
    """Paint at each place over the median of its row, (rows, columns), 1 where it is even."""
    small = _smaller(painted, _ROWS)
    density = -np.log(np.clip(small.astype(np.float64), 0.004, 1.0)).sum(axis=-1)
    row = np.median(density, axis=1, keepdims=True)
    # Paint too thin to see has no meaningful ratio: a floor keeps its noise small.
    return np.asarray((density + 0.06) / (row + 0.06))


def _smaller(picture: NDArray[np.float32], rows: int) -> NDArray[np.float32]:
    from scipy.ndimage import zoom  # deferred: start-up time

    block = max(1, len(picture) // rows)
    h, w = picture.shape[0] // block, picture.shape[1] // block
    cut = picture[: h * block, : w * block].reshape(h, block, w, block, 3).mean(axis=(1, 3))
    if h == rows:
        return np.asarray(cut)
    return np.asarray(zoom(cut, (rows / h, rows / h, 1), order=1))


def find_blooms(painted: NDArray[np.float32]) -> tuple[Spot, ...]:
    """Blooms of a painted rectangle in linear light over paper white, (h, w, 3)."""
    even = relative_density(painted)
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
# Fitted on simulated sheets, seeds 0 to 99 (tests/simulator), by logistic regression.
_MEAN = np.array(
    [0.0953, 0.0063, 0.5582, 0.7776, 0.1605, 1.1378, 0.0783, 0.4435, 0.5595, 0.535, 0.9506,
     -2.7202]
)  # fmt: skip
_SCALE = np.array(
    [0.0832, 0.0239, 0.1577, 0.1921, 0.0489, 1.0986, 0.2706, 0.382, 0.3569, 0.2723, 0.0948,
     0.3613]
)  # fmt: skip
_WEIGHTS = np.array(
    [0.7518, 0.9924, 0.9425, 0.9816, -0.1282, 1.7508, -0.3548, 0.3539, 1.2447, -1.7281, -0.1631,
     0.2017]
)  # fmt: skip
_BIAS = -7.0  # stricter than fitted: a false alarm costs more than a miss


def judge_blooms(features: Floats) -> Floats:
    """Log-odds (n,) above what is said, of candidates with these features (n, 12)."""
    return np.asarray((features - _MEAN) / _SCALE @ _WEIGHTS + _BIAS)


def bloom_candidates(even: Floats) -> tuple[list[tuple[float, float, float]], Floats]:
    """Pale patches with some rim: (y, x, radius) in pixels of `even`, and features (n, 12)."""
    from scipy.ndimage import gaussian_filter, maximum_filter  # deferred: start-up time

    h = len(even)
    smooth = gaussian_filter(even, 0.9, mode="nearest")
    # What a row varies anyway: where washes meet in a wavy course it varies much.
    noise = 1.4826 * np.median(np.abs(smooth - np.median(smooth, axis=1, keepdims=True)), axis=1)
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
_ALONG = np.linspace(-0.9, 0.6, 16)


def _measure(
    smooth: Floats, noise: Floats, y: float, x: float, r: float
) -> tuple[tuple[float, float, float], Floats] | None:
    """Where a bloom's rim lies around (y, x), and how it looks; None without a rim to see.

    Density is followed outwards in many directions: a bloom is pale inside, and has a rim darker
    than what lies further out, at about the same distance all around.
    """
    from scipy.ndimage import map_coordinates, median_filter  # deferred: start-up time

    h, w = smooth.shape
    angle = np.linspace(0, 2 * np.pi, _DIRECTIONS, endpoint=False)[:, None]
    sine, cosine = np.sin(angle), np.cos(angle)

    def follow(reach: Floats) -> Floats:
        at_y, at_x = y + reach * sine, x + reach * cosine
        inside = (at_y >= 2) & (at_y <= h - 3) & (at_x >= 2) & (at_x <= w - 3)
        values = map_coordinates(smooth, [at_y, at_x], order=1, mode="nearest")
        return np.where(inside, values, np.nan)

    radius = np.full(_DIRECTIONS, r)
    seen = np.ones(_DIRECTIONS, dtype=bool)
    for _ in range(2):
        values = follow(_REACH[None] * r)
        zone = (_REACH > 0.6) & (_REACH < 1.45)
        rims = values[:, zone]
        seen = np.asarray(np.isfinite(rims).all(axis=1))
        if seen.mean() < 0.6:
            return None
        radius = r * _REACH[zone][np.where(seen[:, None], rims, 0.0).argmax(axis=1)]
        radius = median_filter(radius, 5, mode="wrap")
        # Move to the middle of the rim found, and look once more.
        y += float(np.mean((radius * sine[:, 0])[seen]))
        x += float(np.mean((radius * cosine[:, 0])[seen]))
        r = float(np.median(radius[seen]))
    if not (2 < y < h - 3 and 2 < x < w - 3 and 0.02 * h < r < 0.14 * h):
        return None
    aligned = follow(radius[:, None] + _ALONG[None] * r)
    seen &= np.asarray(np.isfinite(aligned).all(axis=1))
    if seen.mean() < 0.5:
        return None
    aligned = aligned[seen]
    pale_each = aligned[:, _ALONG < -0.25].mean(axis=1)
    rim_each = aligned[:, np.abs(_ALONG) < 0.11].mean(axis=1)
    outer_each = aligned[:, _ALONG > 0.3].mean(axis=1)
    pale, rim, outer = (float(np.median(part)) for part in (pale_each, rim_each, outer_each))
    depth = max(outer - pale, 1e-3)
    rows = noise[max(0, int(y - 1.5 * r)) : int(y + 1.5 * r) + 1]
    rough = float(np.sqrt(np.mean(rows**2))) + 0.005
    first = np.abs(np.mean(outer_each * np.exp(1j * angle[seen, 0]))) / depth
    before = float(np.median(aligned[:, np.abs(_ALONG + 0.3) < 0.06]))
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


def find_pale_corners(
    painted: NDArray[np.float32], usual: Floats | None = None
) -> tuple[PaleCorner, ...]:
    """Corners with less paint than the middle of their rows.

    `usual` has the reference's `corner_shares`: a corner as pale there as well is right.
    """
    middle, corner = _corner_densities(painted)
    shares = _shares(middle, corner)
    wanted = np.ones(4) if usual is None else np.minimum(usual, 1.0)
    names = ("top left", "top right", "bottom right", "bottom left")
    return tuple(
        PaleCorner(name, float(share))  # type: ignore[arg-type]
        for name, share, want, less in zip(names, shares, wanted, middle - corner, strict=True)
        if share < PALE_SHARE * want and less >= LEAST_LESS
    )


def corner_shares(picture: NDArray[np.float32]) -> Floats:
    """Paint in each corner of a picture in linear light, over the middle's of the same rows."""
    return _shares(*_corner_densities(picture))


def _shares(middle: Floats, corner: Floats) -> Floats:
    return np.where(middle > 0.15, (corner + 0.06) / (middle + 0.06), 1.0)


def _corner_densities(picture: NDArray[np.float32]) -> tuple[Floats, Floats]:
    """Density in the middle of the rows of each corner, and in the corner itself, (4,) each."""
    small = _smaller(picture, _ROWS)
    density = -np.log(np.clip(small.astype(np.float64), 0.004, 1.0)).sum(axis=-1)
    h, w = density.shape
    low, high = round(0.02 * h), round(0.10 * h)
    boxes = (
        (slice(low, high), slice(low, high)),
        (slice(low, high), slice(w - high, w - low)),
        (slice(h - high, h - low), slice(w - high, w - low)),
        (slice(h - high, h - low), slice(low, high)),
    )
    between = slice(round(0.3 * w), round(0.7 * w))
    middle = [float(np.median(density[rows, between])) for rows, _ in boxes]
    corner = [float(np.median(density[rows, columns])) for rows, columns in boxes]
    return np.asarray(middle), np.asarray(corner)

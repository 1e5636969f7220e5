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

_ROWS = 256
_RADII = (0.028, 0.035, 0.044, 0.055, 0.068, 0.084, 0.104)
_SECTORS = 12
_LEAST_PALE = 0.10  # of the density around
_LEAST_RIM = 0.035

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
    from scipy.ndimage import gaussian_filter, maximum_filter  # deferred: start-up time

    even = relative_density(painted)
    h, w = even.shape
    smooth = gaussian_filter(even, 0.9, mode="nearest")
    candidates: list[tuple[float, float, float, float]] = []
    for share in _RADII:
        r = share * h
        # Difference of Gaussians as a quick look for pale patches of about this size.
        patch = gaussian_filter(even, 1.6 * r, mode="nearest")
        patch = patch - gaussian_filter(even, 0.55 * r, mode="nearest")
        peak = (patch == maximum_filter(patch, size=max(3, round(r)))) & (patch > 0.035)
        places = np.argwhere(peak)
        order = np.argsort(-patch[peak])[:12]
        for y, x in places[order]:
            found = _judge(smooth, float(y), float(x), r)
            if found is not None:
                candidates.append(found)
    candidates.sort(reverse=True)
    kept: list[tuple[float, float, float, float]] = []
    for candidate in candidates:
        _, y, x, r = candidate
        if all(np.hypot(y - b, x - c) > 0.9 * max(r, d) for _, b, c, d in kept):
            kept.append(candidate)
    return tuple(((x + 0.5) / w, (y + 0.5) / h, r / h) for _, y, x, r in kept)


def _judge(
    smooth: Floats, y: float, x: float, r: float
) -> tuple[float, float, float, float] | None:
    """Strength, place and radius of a bloom near (y, x), or None.

    In each of twelve directions density is followed outwards: a bloom is pale inside, and has a
    rim darker than what lies further out, at about the same distance all around.
    """
    from scipy.ndimage import map_coordinates  # deferred: start-up time

    h, w = smooth.shape
    for _ in range(2):
        angle = np.linspace(0, 2 * np.pi, 4 * _SECTORS, endpoint=False)[:, None]
        reach = np.arange(0.0, 1.9 * r, 0.5)[None]
        at_y, at_x = y + reach * np.sin(angle), x + reach * np.cos(angle)
        inside = (at_y >= 1) & (at_y <= h - 2) & (at_x >= 1) & (at_x <= w - 2)
        values = map_coordinates(smooth, [at_y, at_x], order=1, mode="nearest")
        values = np.where(inside, values, np.nan)
        near = reach[0] < 0.6 * r
        pale = float(np.nanmedian(values[:, near]))
        zone = (reach[0] > 0.65 * r) & (reach[0] < 1.45 * r)
        rims = values[:, zone]
        seen = np.asarray(np.isfinite(rims).all(axis=1))
        if seen.mean() < 0.6:
            return None
        peak_at = np.where(seen, np.nanargmax(np.where(np.isfinite(rims), rims, -1), axis=1), 0)
        radius = reach[0][zone][peak_at]
        rim = rims[np.arange(len(rims)), peak_at]
        outer = np.array(
            [
                np.nanmedian(values[i, (reach[0] > radius[i] + 0.25 * r)]) if seen[i] else np.nan
                for i in range(len(rims))
            ]
        )
        # Move to the middle of the rim found, and look once more.
        y += float(np.mean((radius * np.sin(angle[:, 0]))[seen]))
        x += float(np.mean((radius * np.cos(angle[:, 0]))[seen]))
        r = float(np.median(radius[seen]))
    usable = seen & np.isfinite(outer)
    if usable.sum() < 0.5 * len(usable):
        return None
    around = float(np.median(outer[usable]))
    darker = (rim - outer)[usable]
    deeper = (outer - pale)[usable]
    turning = float(np.std(radius[usable]) / r)
    if around - pale < _LEAST_PALE * around or np.median(darker) < _LEAST_RIM:
        return None
    if (darker > 0.012).mean() < 0.75 or (deeper > 0.03).mean() < 0.85 or turning > 0.28:
        return None
    return float(np.median(darker) * (around - pale)), y, x, r


def find_pale_corners(
    painted: NDArray[np.float32], usual: Floats | None = None
) -> tuple[PaleCorner, ...]:
    """Corners with less paint than the middle of their rows.

    `usual` has the reference's `corner_shares`: a corner as pale there as well is right.
    """
    shares = corner_shares(painted)
    wanted = np.ones(4) if usual is None else np.minimum(usual, 1.0)
    names = ("top left", "top right", "bottom right", "bottom left")
    return tuple(
        PaleCorner(name, float(share))  # type: ignore[arg-type]
        for name, share, want in zip(names, shares, wanted, strict=True)
        if share < PALE_SHARE * want
    )


def corner_shares(picture: NDArray[np.float32]) -> Floats:
    """Paint in each corner of a picture in linear light, over the middle's of the same rows."""
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
    shares = []
    for rows, columns in boxes:
        middle = float(np.median(density[rows, round(0.3 * w) : round(0.7 * w)]))
        corner = float(np.median(density[rows, columns]))
        shares.append((corner + 0.06) / (middle + 0.06) if middle > 0.15 else 1.0)
    return np.asarray(shares)

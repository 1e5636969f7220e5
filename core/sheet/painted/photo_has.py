"""What the photo has at a place as well: a bloom, an edge or a pale corner there is no fault.

A cloud's rim, a pale cloud or a glow, copied faithfully, looks like a fault to whoever has not seen
the photo. Sheet and photo are measured alike at the same place (heights move with the lines), and
what the photo has at least half as strongly, at the sheet's own strength of paint, is its own.
Of an edge that is the step beyond the slope around it: a wash that grades steeply is not an edge.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.bands.lines import Bands
from core.colour.medians import channels_first, medians
from core.colour.working_space import Floats, linear_to_W, thinned
from core.sheet.painted.density import density_map

OWN = 0.5
"""Share of an edge's step that the photo must have too."""
OWN_BLOOM = 0.25
"""The same of a bloom's paleness: a copy blurs a cloud, and the pale patch moves a little."""

_ROWS = 256
_STRIPS = 32
_GAP = 0.010  # of the height, on either side of an edge
_NEAR = 0.045  # of the height: how far an edge may be beside its place
_BESIDE = (-0.9, -0.45, 0.0, 0.45, 0.9)  # of a bloom's radius, where the photo is looked at
_SEEN = 0.10  # density, the three channels together: less paleness than this nobody sees
_FLOOR = 0.06  # density: paint too thin to see has no meaningful ratio


@dataclass(frozen=True, eq=False)
class PhotoSky:
    """The photo's sky in densities, what is in front of it filled from its rows.

    Attributes
    ----------
    density : (256, w, 3) float64
        Natural log, per channel.
    bands : Bands
        Its lines, as shares of the sky's height.
    """

    density: Floats
    bands: Bands


def photo_sky(linear: Floats, mask: NDArray[np.bool_], bands: Bands) -> PhotoSky:
    """From linear light (h, w, 3) and a mask (h, w) of its usable pixels."""
    filled = linear
    if not mask.all():
        h = len(linear)
        rows = np.array(
            [np.median(row[seen], axis=0) if seen.any() else np.full(3, np.nan)
             for row, seen in zip(linear, mask, strict=True)]
        )  # fmt: skip
        known = np.isfinite(rows[:, 0])
        if known.any():
            for c in range(3):
                rows[:, c] = np.interp(np.arange(h), np.flatnonzero(known), rows[known, c])
            filled = np.where(mask[..., None], linear, rows[:, None])
    return PhotoSky(density_map(filled, _ROWS), bands)


def on_photo(y: float, sheet: Bands, photo: Bands) -> float:
    """The height in the photo's sky that a height of the sheet stands for."""
    return float(np.interp(y, sheet.edges, photo.edges))


def has_edge(
    sky: PhotoSky, W: Floats, bands: Bands, strength: float, at: float, start: float, end: float
) -> bool:
    """Whether the photo changes as sharply as the sheet (h, w, 3, working colours) does there.

    Parameters
    ----------
    at, start, end : float
        The edge: its height, and from where to where across the width.
    strength : float
        Paint on the sheet over the photo's.
    """
    small = thinned(W, _ROWS)
    own = linear_to_W(np.exp(-strength * sky.density))
    there = on_photo(at, bands, sky.bands)
    sheet_steps = _steps(small, at, start, end)
    mean = sheet_steps[:, sheet_steps.shape[1] // 2].mean(axis=0)
    size = float(np.linalg.norm(mean))
    if size < 1e-6:
        return True
    way = mean / size
    most = np.median((sheet_steps @ way).max(axis=1))
    photo_most = np.median((_steps(own, there, start, end) @ way).max(axis=1))
    return bool(photo_most >= OWN * most)


def _steps(W: Floats, at: float, start: float, end: float) -> Floats:
    """Change (strips, heights, 3) across every height near `at`, from above to below, beyond what
    the slope on either side would bring."""
    h, w = W.shape[:2]
    gap = max(1, round(_GAP * h))
    reach = round(_NEAR * h)
    first = round(start * _STRIPS)
    cuts = np.linspace(0, w, _STRIPS + 1).astype(int)
    rows = np.clip(round(at * h) + np.arange(-reach, reach + 1), gap, h - 1 - gap)
    out = []
    for strip in range(first, max(first + 1, round(end * _STRIPS))):
        strip = min(strip, _STRIPS - 1)
        a, b = cuts[strip], max(cuts[strip + 1], cuts[strip] + 1)
        profile = medians(channels_first(W[:, a:b])).T
        step = profile[rows + gap] - profile[rows - gap]
        below = profile[np.minimum(rows + 3 * gap, h - 1)] - profile[rows + gap]
        above = profile[rows - gap] - profile[np.maximum(rows - 3 * gap, 0)]
        out.append(step - (above + below) / 2)
    return np.asarray(out)


def has_bloom(
    sky: PhotoSky, density: Floats, bands: Bands, strength: float, x: float, y: float, radius: float
) -> bool:
    """Whether the photo is paler than its surroundings there too, or the sheet hardly is.

    Parameters
    ----------
    density : (rows, columns) float64
        Of the sheet, over the three channels together.
    x, y, radius : float
        Shares of width, height and height.
    """
    if _paleness(density, x, y, radius) < _SEEN:
        return True
    depth = _paleness(_even(density), x, y, radius)
    own = _even(strength * sky.density.sum(axis=-1))
    # A moon moves with its lines, or not: whoever copies it looks at the photo, not at the lines.
    heights = {round(on_photo(y, bands, sky.bands), 2), round(y, 2)}
    aspect = density.shape[1] / len(density)
    return any(
        _paleness(own, x + dx * radius / aspect, there + dy * radius, radius * size)
        >= OWN_BLOOM * depth
        for there in heights
        for dx in _BESIDE
        for dy in _BESIDE
        for size in (0.4, 0.8, 1.2)  # a moon is small in the photo, and less so when it is blurred
    )


def _even(density: Floats) -> Floats:
    row = medians(density)[:, None]
    return np.asarray((density + _FLOOR) / (row + _FLOOR))


def _paleness(even: Floats, x: float, y: float, radius: float) -> float:
    """How much paler the inside of a circle is than what is round it."""
    h, w = even.shape
    cy, cx, r = y * h, x * w, radius * h
    low, high = max(0, int(cy - 2 * r)), min(h, int(cy + 2 * r) + 2)
    left, right = max(0, int(cx - 2 * r)), min(w, int(cx + 2 * r) + 2)
    if high - low < 3 or right - left < 3:
        return 0.0
    down = (np.arange(low, high) + 0.5 - cy)[:, None]
    across = np.arange(left, right) + 0.5 - cx
    distance = np.sqrt(down * down + across * across) / max(r, 1.0)
    part = even[low:high, left:right]
    inside, around = part[distance < 0.6], part[(distance > 1.2) & (distance < 1.9)]
    if not inside.size or not around.size:
        return 0.0
    return float(medians(around) - medians(inside))

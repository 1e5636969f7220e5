"""Where the photo has no sky, nothing is compared: the sheet is looked at where the photo's sky is.

What a photo has in front of its sky (a hill, a tower, a tree) may have been painted too, left out,
or washed over: none of it is right or wrong in an exercise on the sky. The photo itself is read
without it, so a sheet is as well: like is compared with like.
"""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray
from scipy.ndimage import binary_dilation, binary_opening, generate_binary_structure

from core.bands.lines import Bands
from core.colour.working_space import Floats, thinned
from core.reading.reading import BandReading
from core.sheet.match.likeness import likenesses
from core.sheet.match.order import profile_of

Bools = NDArray[np.bool_]

_ROWS = 200
_LEAST = 0.01  # of the sky's rectangle: less changes nothing that is compared
_SPECK = 2  # rows of the small mask: birds, wires and stars are not kept out
_AROUND = 3  # rows: nobody paints a hill to a hair's breadth
_CLEAR = 0.9  # of a spot's surroundings
_BESIDE = 0.05  # of the height: an edge nearer than this to a hill is the hill's
_HALF = 0.5  # of a third of a band
_NEARER = 0.8  # share of the distance: what comes so much nearer is taken
_KEPT = 0.6  # of a band's own sky, that must be left once the foreground is widened


def sky_seen(mask: Bools, bands: Bands) -> Bools | None:
    """Where a sheet is compared, (about 200, w), of the usable pixels (h, w) of the photo's sky.

    None where nothing stands in front of the sky, or next to nothing. `bands` are the sky's: a band
    that would lose most of what it has to the room left around a hill keeps all of it.
    """
    small = thinned(mask, _ROWS)
    cross = generate_binary_structure(2, 1)
    # Beyond its sides a hill goes on.
    padded = np.pad(~small, _SPECK, mode="edge")
    inner = (slice(_SPECK, -_SPECK), slice(_SPECK, -_SPECK))
    front = binary_opening(padded, cross, iterations=_SPECK)[inner]
    if front.mean() < _LEAST or front.all():
        return None
    return widened(~front, bands)


def widened(seen: Bools, bands: Bands) -> Bools:
    """What is seen of a sky (rows, columns), with some room left around what stands before it."""
    wide = ~binary_dilation(~seen, iterations=_AROUND)
    cuts = [int(edge * len(seen)) for edge in bands.edges]
    for top, bottom in pairwise(cuts):
        rows = slice(top, max(top + 1, bottom))
        if wide[rows].sum() < _KEPT * seen[rows].sum():
            wide[rows] = seen[rows]
        if not wide[rows].any():
            wide[rows] = True  # nothing of it is seen small: all there is says more than nothing
    return np.asarray(wide)


def compared(seen: Bools | None, should: Bands, at: Bands, shape: tuple[int, int]) -> Bools | None:
    """The pixels of a sheet where the photo's sky is; None where that is everywhere.

    Parameters
    ----------
    seen : (rows, columns) bool or None
        From `sky_seen`.
    should, at : Bands
        The reference's lines, and the sheet's: heights move with them.
    shape : tuple of int
        Rows and columns of the sheet.
    """
    if seen is None:
        return None
    height, width = shape
    y = np.interp((np.arange(height) + 0.5) / height, at.edges, should.edges)
    rows_of = np.minimum((y * len(seen)).astype(int), len(seen) - 1)
    columns_of = np.arange(width) * seen.shape[1] // width
    return np.asarray(seen[rows_of[:, None], columns_of])


def mostly_seen(seen: Bools, x: float, y: float, radius: float) -> bool:
    """Whether nearly all around a place is compared.

    Parameters
    ----------
    seen : (h, w) bool
        From `compared`.
    x, y, radius : float
        Its middle, shares of width and height; its radius, a share of the height.
    """
    h, w = seen.shape
    reach = max(1, round(radius * h))
    row, column = min(int(y * h), h - 1), min(int(x * w), w - 1)
    part = seen[max(0, row - reach) : row + reach + 1, max(0, column - reach) : column + reach + 1]
    return bool(part.mean() >= _CLEAR)


def profiles_of(
    reference: Floats, whole: Floats, W: Floats, seen: Bools | None
) -> tuple[Floats, ...]:
    """The sheet's profiles (SAMPLES, 3), the likelier one first: `whole`, and what is compared.

    Washes from side to side are measured best over their whole width; where what stands before
    the sky was painted too, the profile of what is compared comes clearly nearer to the
    reference's.
    """
    if seen is None:
        return (whole,)
    part = profile_of(W, seen)
    of_part, of_whole = likenesses(reference, [part, whole])
    nearer = of_part.apart < _NEARER * of_whole.apart
    return (part, whole) if nearer else (whole, part)


def clear_along(seen: Bools, at: float, start: float, end: float) -> bool:
    """Whether what is above and below a level stretch is compared, wherever the stretch itself is.

    `at` is a share of the height, `start` and `end` are shares of the width.
    """
    h, w = seen.shape
    reach = max(1, round(_BESIDE * h))
    row = min(int(at * h), h - 1)
    columns = slice(int(start * w), max(int(start * w) + 1, round(end * w)))
    around = seen[max(0, row - reach) : row + reach + 1, columns]
    around = around[:, seen[row, columns]]
    return around.size > 0 and bool(around.mean() >= _CLEAR)


def sides_seen(reading: BandReading, seen: Bools | None) -> BandReading:
    """The reading of a sheet's band without those of its thirds that are mostly not compared."""
    if seen is None:
        return reading
    height, width = seen.shape
    top = min(round(reading.top * height), height - 1)
    part = seen[top : max(round(reading.bottom * height), top + 1)]
    shares = [part[:, width * third // 3 : width * (third + 1) // 3].mean() for third in range(3)]
    left, centre, right = (
        side if share >= _HALF else None
        for side, share in zip((reading.left, reading.centre, reading.right), shares, strict=True)
    )
    return replace(reading, left=left, centre=centre, right=right)

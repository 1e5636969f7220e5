"""A band's colour as it is said and mixed: a colour that exists in the band.

The median of each channel can be a colour nobody sees where cloud and sky share a band. The
geometric median, the point with the least summed distance to all pixels, is in the larger of
the two. Where the eye sees two colours, each is the geometric median of its own pixels.
"""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from core.bands.cells import Cells, make_cells
from core.bands.lines import Bands
from core.bands.stats import LEAST_THIRD, clipped_pixels
from core.bands.twofold import CORE, Two, find_two
from core.colour.difference import delta_E_2000
from core.colour.working_space import W_to_Lab, srgb8_to_W_fast
from core.photo import Photo
from core.progress import Progress, ShouldStop, step
from core.reading.reading import BandReading, ColourReading, SecondColour, read_colours

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

SAMPLE = 20_000
"""Pixels looked at in each band."""

_SPREAD_SAMPLE = 4_000

_SWAPS = 0.53
"""Of half and half the main colour stays the one found by cells: so it does not change when a
line comes to rest."""

_LEAST_CORE = 0.05
"""Of a band's pixels, that must show each of two colours plainly."""
_GOLDEN = 0.6180339887498949


def read_bands(
    photo: Photo,
    sky: Bools,
    bands: Bands,
    *,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> tuple[BandReading, ...]:
    """Read every band with care.

    Parameters
    ----------
    photo : Photo
    sky : ndarray, shape (h, w), bool
        The usable pixels, as in `Proposal.sky`.
    bands : Bands
    progress, should_stop : callable, optional

    Returns
    -------
    tuple of BandReading
        From the top. The same photo gives the same answer: nothing is random.

    Raises
    ------
    ValueError
        `sky` and the photo differ in shape.
    Cancelled
        `should_stop` answered True.
    """
    return BandReader(photo, sky).read(bands, progress=progress, should_stop=should_stop)


class BandReader:
    """`read_bands` of one photo for several sets of lines: a band is read once."""

    def __init__(self, photo: Photo, sky: Bools) -> None:
        """See `read_bands`, which also says what is raised."""
        if sky.shape != photo.pixels.shape[:2]:
            raise ValueError(f"a mask of {sky.shape} for pixels of {photo.pixels.shape}")
        self._photo, self._sky = photo, sky
        self._cells = make_cells(photo.pixels, sky)
        self._known: dict[tuple[str, float, float], BandReading] = {}

    def read(
        self,
        bands: Bands,
        *,
        progress: Progress | None = None,
        should_stop: ShouldStop | None = None,
    ) -> tuple[BandReading, ...]:
        """Read every band with care, from the top."""
        readings = []
        for number, (letter, (top, bottom)) in enumerate(
            zip(bands.letters, pairwise(bands.edges), strict=True)
        ):
            step(number / bands.count, progress, should_stop)
            known = self._known.get((letter, top, bottom))
            if known is None:
                known = _read_band(self._photo, self._sky, self._cells, letter, top, bottom)
                self._known[letter, top, bottom] = known
            readings.append(known)
        step(1.0, progress, should_stop)
        return tuple(readings)


def _read_band(
    photo: Photo, sky: Bools, cells: Cells, letter: str, top: float, bottom: float
) -> BandReading:
    height, width = sky.shape
    first = min(round(top * height), height - 1)
    last = max(round(bottom * height), first + 1)
    usable = np.flatnonzero(sky[first:last])
    area = (last - first) * width
    chosen = _spread_out(usable, SAMPLE)
    rgb8 = photo.pixels[first:last].reshape(-1, 3)[chosen]
    if len(rgb8) == 0:
        return BandReading(letter, top, bottom, None, None, None, None, 0.0, False, 0.0, 0.0)
    work = srgb8_to_W_fast(rgb8)
    third = (chosen % width) * 3 // width
    thirds = [work[third == k] for k in range(3)]
    least = max(1.0, LEAST_THIRD * SAMPLE / 3)
    share = min(1.0, SAMPLE / len(usable))
    parts = [part if len(part) >= min(least, share * area / 3) else None for part in thirds]
    middles = [geometric_median(part) for part in (work, *parts) if part is not None and len(part)]
    found = find_two(cells, *cells.rows_between(top, bottom))
    steps = cells.steps_at((first + chosen // width + 0.5) / height)
    pair = None if found.two is None else _pair(found.two, work, steps)
    if pair is not None:
        middles += pair.middles
    colours = list(read_colours(W_to_Lab(np.stack(middles))))
    whole = colours.pop(0)
    left, centre, right = (
        colours.pop(0) if part is not None and len(part) else None for part in parts
    )
    main, second = whole, None
    if pair is not None and found.two is not None:
        main, second = colours[0], SecondColour(colours[1], pair.share, found.two.soft)
    return BandReading(
        letter=letter,
        top=top,
        bottom=bottom,
        colour=main,
        left=left,
        centre=centre,
        right=right,
        spread=_spread(work, main),
        stacked=found.stacked,
        clipped_share=float(clipped_pixels(rgb8).mean()),
        pixel_share=len(usable) / area,
        second=second,
        overall=None if second is None else whole,
    )


@dataclass(frozen=True, eq=False)
class _Pair:
    """Geometric medians of the main and of the second colour, and what the second covers."""

    middles: list[Floats]
    share: float


def _pair(two: Two, work: NDArray[np.float32], steps: NDArray[np.float32]) -> _Pair | None:
    """Both colours of a band, of the pixels that show one plainly; None if few show either."""
    places = two.places(work, steps)
    share = float((places > 0.5).mean())
    groups = [work[places < CORE], work[places > 1 - CORE]]
    if share > _SWAPS:
        groups.reverse()
        share = 1 - share
    share = min(share, 0.5)
    if min(len(group) for group in groups) < _LEAST_CORE * len(work):
        return None
    return _Pair([geometric_median(group) for group in groups], share)


def _spread_out(indices: NDArray[np.intp], most: int) -> NDArray[np.intp]:
    """At most `most` of the indices, evenly but not in step with any pattern of the picture."""
    count = len(indices)
    if count <= most:
        return indices
    number = np.arange(most)
    place = (number + (number * _GOLDEN) % 1.0) * (count / most)
    return indices[np.minimum(place.astype(np.intp), count - 1)]


def geometric_median(points: NDArray[np.floating], *, within: float = 1e-3) -> Floats:
    """The point with the least summed distance to all.

    Parameters
    ----------
    points : ndarray, shape (n, d)
        At least one point.
    within : float
        Stop once a step is shorter than this.

    Notes
    -----
    Weiszfeld, 1937, "Sur le point pour lequel la somme des distances de n points donnés est
    minimum", from the mean, so that of two equal halves neither wins. Distances are kept
    away from 0, where the iteration would stop.
    """
    middle = points.mean(axis=0, dtype=np.float64)
    along = np.ascontiguousarray(points.T)  # three times as fast as point by point
    for _ in range(100):
        away = along - middle.astype(points.dtype)[:, None]
        distance = np.sqrt(np.einsum("ij,ij->j", away, away))
        pull = 1 / np.maximum(distance, 1e-3)
        change = away @ pull / pull.sum()
        middle = middle + change
        if float(np.abs(change).max()) < within:
            break
    return np.asarray(middle, dtype=np.float64)


def _spread(work: NDArray[np.float32], colour: ColourReading) -> float:
    """Median distance of the pixels from the band's colour, delta E 2000."""
    some = work[:: max(1, len(work) // _SPREAD_SAMPLE)]
    return float(np.median(delta_E_2000(W_to_Lab(some), np.array(colour.Lab))))

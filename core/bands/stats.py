"""A band's colour in a fraction of a millisecond: histograms summed from the top down.

While a line is dragged its bands change with every move of the mouse. The photo is counted once
into histograms per row, third and channel, each row holding the sum of those above it; a band is
then the difference of two rows, however tall it is.
"""

from __future__ import annotations

from collections.abc import Iterator
from concurrent.futures import ThreadPoolExecutor
from dataclasses import replace
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from core.bands.cells import make_cells
from core.bands.lines import Bands
from core.bands.twofold import Twofold, find_two
from core.colour.difference import delta_E_2000
from core.colour.working_space import W_to_Lab, srgb8_to_W_fast
from core.memory import Memory
from core.photo import Photo
from core.progress import Progress, ShouldStop, step
from core.reading.reading import BandReading, ColourReading, SecondColour, read_colours

Floats = NDArray[np.float64]
Bools = NDArray[np.bool_]

BINS = 512
MOST_ROWS = 1000
_MOST_PIXELS = 800_000
"""Pixels counted: beyond these, columns are skipped; medians of thousands do not notice."""

_CHUNK_PIXELS = 60_000
"""Pixels counted at a time: their intermediate results stay in the processor's cache."""

LEAST_THIRD = 0.005
"""A third with less sky than this share of its area has no colour of its own."""

_REMEMBERED = 64
"""Readings kept: while one line is dragged all bands but two stay (`benchmarks/drag.py`)."""

_ROWS_REMEMBERED = 1024
"""The same of two colours in a stretch of rows, which is what takes longest."""


def clipped_pixels(rgb8: NDArray[np.uint8]) -> Bools:
    """Which pixels, shape (...), of `rgb8`, shape (..., 3), have lost light or detail.

    Red or green at the top end, which carry nearly all of the light, or all three channels at the
    bottom. Blue alone at an end, or red at 0, is a strong colour and has lost nothing one sees.
    """
    light = (rgb8[..., 0] == 255) | (rgb8[..., 1] == 255)
    return np.asarray(light | ((rgb8[..., 0] | rgb8[..., 1] | rgb8[..., 2]) == 0))


class BandStats:
    """The photo, counted, so that bands can be read as fast as a line is dragged.

    Colours are medians of each channel. They stray from the careful reading where cloud and sky
    mix: read again with `read_bands` once a line rests.
    """

    def __init__(
        self,
        photo: Photo,
        sky: Bools,
        *,
        progress: Progress | None = None,
        should_stop: ShouldStop | None = None,
    ) -> None:
        """Count a photo.

        Parameters
        ----------
        photo : Photo
        sky : ndarray, shape (h, w), bool
            The usable pixels, as in `Proposal.sky`.
        progress, should_stop : callable, optional

        Raises
        ------
        ValueError
            `sky` and the photo differ in shape.
        Cancelled
            `should_stop` answered True.
        """
        if sky.shape != photo.pixels.shape[:2]:
            raise ValueError(f"a mask of {sky.shape} for pixels of {photo.pixels.shape}")
        height, width = sky.shape
        stride = max(1, -(-height * width // _MOST_PIXELS))
        pixels, sky = photo.pixels[:, ::stride], sky[:, ::stride]
        self._rows = min(height, MOST_ROWS)
        self._low, self._width = _ranges(pixels, sky)
        self._cumulative, self._clipped = self._count(pixels, sky, progress, should_stop)
        # Pixels, sky or not, in the whole of each third.
        self._areas = np.bincount(_thirds(pixels.shape[1]), minlength=3) * float(height)
        self._cells = make_cells(pixels, sky)
        self._known: Memory[BandReading] = Memory(_REMEMBERED)
        self._found: Memory[Twofold] = Memory(_ROWS_REMEMBERED)

    def read(self, bands: Bands) -> tuple[BandReading, ...]:
        """Read all bands; those that did not change since the last call cost nothing."""
        wanted = list(pairwise(bands.edges))
        known = {edges: reading for edges in wanted if (reading := self._known.get(edges))}
        new = [edges for edges in wanted if edges not in known]
        added = list(zip(new, self._read(new), strict=True))
        self._known.put_all(added)
        known.update(added)
        named = []
        for letter, edges in zip(bands.letters, wanted, strict=True):
            reading = known[edges]
            if reading.letter != letter:
                # Kept under its letter, so that a band that stays is told by being the same.
                reading = self._known.put(edges, replace(reading, letter=letter))
            named.append(reading)
        return tuple(named)

    def _count(
        self,
        pixels: NDArray[np.uint8],
        sky: Bools,
        progress: Progress | None,
        should_stop: ShouldStop | None,
    ) -> tuple[NDArray[np.uint32], NDArray[np.uint32]]:
        height, width = sky.shape
        shape = (self._rows + 1, 3, 3, BINS)
        cumulative = np.zeros(shape, dtype=np.uint32)
        clipped = np.zeros(self._rows + 1, dtype=np.uint32)
        starts = np.arange(self._rows + 1) * height // self._rows
        at_once = max(1, _CHUNK_PIXELS * self._rows // (height * width))
        low = self._low.astype(np.float32)
        scale = (1 / self._width).astype(np.float32)
        channel = np.arange(3, dtype=np.int64) * BINS
        third = _thirds(width) * (3 * BINS)

        def count(first: int) -> int:
            last: int = min(first + at_once, self._rows)
            part = slice(int(starts[first]), int(starts[last]))
            usable = sky[part]
            rgb8 = pixels[part][usable]
            bins = (srgb8_to_W_fast(rgb8) - low) * scale
            np.clip(bins, 0, BINS - 1, out=bins)
            group = np.repeat(np.arange(last - first), np.diff(starts[first : last + 1]))
            cell = (group[:, None] * (9 * BINS) + third[None, :])[usable]
            index = bins.astype(np.int64)
            index += cell[:, None] + channel
            size = (last - first) * 9 * BINS
            counts = np.bincount(index.reshape(-1), minlength=size)
            cumulative[first + 1 : last + 1] = counts.reshape(last - first, 3, 3, BINS)
            ends = np.bincount(cell[clipped_pixels(rgb8)] // (9 * BINS), minlength=last - first)
            clipped[first + 1 : last + 1] = ends
            return last

        # Every run of rows has a place of its own in the tables, and NumPy lets go of the
        # interpreter meanwhile: two at a time take half as long.
        with ThreadPoolExecutor(2) as both:
            try:
                for done in both.map(count, range(0, self._rows, at_once)):
                    step(done / self._rows, progress, should_stop)
            except BaseException:
                both.shutdown(cancel_futures=True)
                raise
        # numpy's own running sum down the first axis is thirty times slower.
        for row in range(1, self._rows + 1):
            cumulative[row] += cumulative[row - 1]
        return cumulative, np.cumsum(clipped, dtype=np.uint32)

    def _between(self, table: NDArray[np.uint32], top: float, bottom: float) -> Floats:
        """Counts between two heights; rows a line runs through count in part."""
        counts: Floats = self._above(table, bottom) - self._above(table, top)
        return counts

    def _above(self, table: NDArray[np.uint32], y: float) -> Floats:
        place = min(max(y, 0.0), 1.0) * self._rows
        row = min(int(place), self._rows - 1)
        part = place - row
        if part <= 0:
            return np.asarray(table[row], dtype=np.float64)
        return np.asarray(table[row] * (1 - part) + table[row + 1] * part, dtype=np.float64)

    def _read(self, wanted: list[tuple[float, float]]) -> list[BandReading]:
        """Readings without letters."""
        if not wanted:
            return []
        counted = np.stack([self._between(self._cumulative, *edges) for edges in wanted])
        # Left, centre, right, and the whole last.
        regions = np.concatenate([counted, counted.sum(axis=1, keepdims=True)], axis=1)
        quartiles = self._low + self._width * _quantiles(regions)
        Lab = W_to_Lab(quartiles[1])
        pixels = regions[:, :, 0].sum(axis=-1)
        heights = np.array([bottom - top for top, bottom in wanted])
        areas = heights[:, None] * np.append(self._areas, self._areas.sum())
        # A line may run through the only row there is: a part of a pixel will do.
        least = LEAST_THIRD * areas
        least[:, 3] = 0.0
        coloured = pixels > np.maximum(least, 1e-6)
        found = [self._find(*edges) for edges in wanted]
        pairs = [colour for one in found if one.two for colour in (one.two.main, one.two.second)]
        Lab = np.concatenate([Lab[coloured], W_to_Lab(np.stack(pairs))]) if pairs else Lab[coloured]
        every = iter(read_colours(Lab))
        placed = [[next(every) if has else None for has in band] for band in coloured]
        readings = []
        for i, (top, bottom) in enumerate(wanted):
            left, centre, right, whole = placed[i]
            count = float(pixels[i, 3])
            clipped = float(self._between(self._clipped, top, bottom)) / max(count, 1e-6)
            main, second = whole, None
            if found[i].two is not None:
                main, second = _two(found[i], every)
            readings.append(
                BandReading(
                    letter="",
                    top=top,
                    bottom=bottom,
                    colour=main,
                    left=left,
                    centre=centre,
                    right=right,
                    spread=_spread(quartiles[:, i, 3]) if whole is not None else 0.0,
                    stacked=found[i].stacked,
                    clipped_share=min(clipped, 1.0),
                    pixel_share=min(count / max(float(areas[i, 3]), 1e-6), 1.0),
                    second=second,
                    overall=None if second is None else whole,
                )
            )
        return readings

    def _find(self, top: float, bottom: float) -> Twofold:
        """Whether two colours are between two heights: looked for once for each pair of rows."""
        rows = self._cells.rows_between(top, bottom)
        return self._found.either(rows, lambda: find_two(self._cells, *rows))


def _two(found: Twofold, colours: Iterator[ColourReading]) -> tuple[ColourReading, SecondColour]:
    """The two colours found, their readings taken from the iterator."""
    assert found.two is not None
    return next(colours), SecondColour(next(colours), found.two.share, found.two.soft)


def _thirds(columns: int) -> NDArray[np.int64]:
    """0, 1 or 2 for each column: left, centre or right."""
    return np.arange(columns, dtype=np.int64) * 3 // max(columns, 1)


def _ranges(pixels: NDArray[np.uint8], sky: Bools) -> tuple[Floats, Floats]:
    """Where the bins of each channel begin, and how wide they are: no wider than the sky needs."""
    sparse = slice(None, None, max(1, int((sky.size / 40_000) ** 0.5)))
    work = srgb8_to_W_fast(pixels[sparse, sparse][sky[sparse, sparse]])
    if len(work) == 0:
        work = np.zeros((1, 3), dtype=np.float32)
    low, high = work.min(axis=0).astype(np.float64), work.max(axis=0).astype(np.float64)
    margin = 0.02 * (high - low) + 0.5
    return low - margin, (high - low + 2 * margin) / BINS


def _quantiles(histograms: Floats) -> Floats:
    """Quartiles and median, shape (3, ...), of histograms, shape (..., bins), in bins.

    Counts are spread evenly inside a bin. Where a quantile falls exactly between two bins
    with a gap, it is the gap's middle, as the median of an even number of values is.
    """
    running = np.cumsum(histograms, axis=-1)
    total = running[..., -1]
    answers = []
    for share in (0.25, 0.5, 0.75):
        target = (share * total)[..., None]
        slack = 1e-9 * total[..., None] + 1e-12
        low = np.minimum((running < target - slack).sum(axis=-1), BINS - 1)
        high = np.minimum((running <= target + slack).sum(axis=-1), BINS - 1)
        count = np.take_along_axis(histograms, low[..., None], -1)[..., 0]
        before = np.take_along_axis(running, low[..., None], -1)[..., 0] - count
        inside = (target[..., 0] - before) / np.maximum(count, 1e-12)
        inside = low + np.clip(inside, 0.0, 1.0)
        answers.append(np.where(high > low, (inside + high) / 2, inside))
    return np.stack(answers)


def _spread(quartiles: Floats) -> float:
    """Median distance from the middle, delta E 2000, as the quartiles, shape (3, 3), tell it."""
    low, middle, high = quartiles
    moved = middle + np.diag((high - low) / 2)
    return float(np.linalg.norm(delta_E_2000(W_to_Lab(middle), W_to_Lab(moved))))

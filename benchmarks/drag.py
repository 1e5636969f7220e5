"""Dragging a line on a 24-megapixel photo with 6 bands: the core's share of every mouse move.

Prints, in one run, what one move costs by the summed histograms, by reading every pixel of the
working copy again, and by reading every pixel of the whole photo again; and how far the fast
colours are from the exact medians of the whole photo.
"""

from __future__ import annotations

import tempfile
import time
from itertools import pairwise
from pathlib import Path

import numpy as np
from big_photo import write_big_photo

from core.bands.lines import Bands, move_line
from core.bands.propose import propose
from core.bands.stats import BandStats
from core.colour.difference import delta_E_2000
from core.colour.working_space import W_to_Lab, srgb8_to_W_fast
from core.photo import Photo, open_full, open_photo
from core.reading.reading import read_colours


def naive(photo: Photo, sky: np.ndarray, bands: Bands) -> np.ndarray:
    """Medians of every band's left, centre, right and whole, (bands, 4, 3), pixel by pixel."""
    height, width = sky.shape
    third = np.arange(width) * 3 // width
    middles = np.full((bands.count, 4, 3), np.nan)
    for i, (top, bottom) in enumerate(pairwise(bands.edges)):
        rows = slice(round(top * height), round(bottom * height))
        for region in range(4):
            columns = third == region if region < 3 else np.ones(width, bool)
            pixels = photo.pixels[rows][:, columns][sky[rows][:, columns]]
            if len(pixels):
                middles[i, region] = np.median(srgb8_to_W_fast(pixels), axis=0)
    return W_to_Lab(middles)


def _seconds(work, times: int) -> tuple[float, float]:
    """Median and 95th percentile."""
    taken = []
    for number in range(times):
        start = time.perf_counter()
        work(number)
        taken.append(time.perf_counter() - start)
    return float(np.median(taken)), float(np.quantile(taken, 0.95))


def main() -> None:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder) / "big.jpg"
        write_big_photo(path)
        photo, full = open_photo(path), open_full(path)
    proposal = propose(photo, count=6)
    bands = proposal.bands
    start = time.perf_counter()
    stats = BandStats(photo, proposal.sky)
    print(f"photo {photo.width} x {photo.height}, working copy {photo.pixels.shape[1::-1]}")
    print(f"counting the photo once: {1000 * (time.perf_counter() - start):.0f} ms")

    down = np.arange(full.height) * photo.pixels.shape[0] // full.height
    across = np.arange(full.width) * photo.pixels.shape[1] // full.width
    full_sky = proposal.sky[down][:, across]

    home = bands.lines[2]

    def moved(number: int) -> Bands:
        # Never the same place twice: what is remembered from earlier must not help.
        return move_line(bands, 2, home + 0.02 * np.sin(number * 0.7) + number * 1e-6)

    fast, fast_95 = _seconds(lambda n: stats.read(moved(n)), 400)
    copy, _ = _seconds(lambda n: read_colours(_rows(naive(photo, proposal.sky, moved(n)))), 3)
    whole, _ = _seconds(lambda n: read_colours(_rows(naive(full, full_sky, moved(n)))), 1)
    print(
        f"one move, summed histograms:          {1000 * fast:8.2f} ms (95%: {1000 * fast_95:.2f})"
    )
    print(f"one move, every pixel of the copy:  {1000 * copy:8.0f} ms = {copy / fast:.0f}x")
    print(f"one move, every pixel of the photo: {1000 * whole:8.0f} ms = {whole / fast:.0f}x")

    exact = naive(full, full_sky, bands)
    worst, total = 0.0, []
    for reading, truth in zip(stats.read(bands), exact, strict=True):
        parts = (reading.left, reading.centre, reading.right, reading.colour)
        for part, Lab in zip(parts, truth, strict=True):
            if part is not None and np.isfinite(Lab).all():
                total.append(float(delta_E_2000(np.array(part.Lab), Lab)))
    worst = max(total)
    print(
        f"fast colours against exact medians of the whole photo, {len(total)} regions: "
        f"mean {np.mean(total):.2f}, largest {worst:.2f} dE00 (goal 0.3)"
    )


def _rows(Lab: np.ndarray) -> np.ndarray:
    flat = Lab.reshape(-1, 3)
    return flat[np.isfinite(flat).all(axis=1)]


if __name__ == "__main__":
    main()

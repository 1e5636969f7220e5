"""Careful readings: the geometric median, a colour that exists, and its spread."""

from __future__ import annotations

import numpy as np
import pytest
from later import Later
from skimage.color import deltaE_ciede2000, rgb2lab

from core.bands.careful import BandReader, geometric_median, read_bands
from core.bands.lines import Bands
from core.bands.stats import BandStats
from core.colour.working_space import W_to_Lab, srgb8_to_W_fast
from core.photo import Photo

optimize = Later("scipy.optimize")


def read(pixels: np.ndarray):
    photo = Photo(pixels, None, pixels.shape[1], pixels.shape[0], "made.png")
    sky = np.ones(pixels.shape[:2], bool)
    (careful,) = read_bands(photo, sky, Bands(1.0))
    (fast,) = BandStats(photo, sky).read(Bands(1.0))
    return careful, fast


def gradient(first, last, *, rows: int = 200, columns: int = 100, grain: float = 3) -> np.ndarray:
    rng = np.random.default_rng(1)
    share = np.linspace(0, 1, rows)[:, None, None]
    even = np.array(first) * (1 - share) + np.array(last) * share
    return np.clip(even + rng.normal(0, grain, (rows, columns, 3)), 0, 255).astype(np.uint8)


def test_working_space_and_back_is_cielab() -> None:
    """CIELAB by scikit-image, over a grid of codes, black and white included."""
    codes = np.stack(np.meshgrid(*[[0, 1, 20, 128, 200, 255]] * 3), -1).reshape(-1, 3)
    ours = W_to_Lab(srgb8_to_W_fast(codes.astype(np.uint8)))
    far = deltaE_ciede2000(ours, rgb2lab(codes / 255))
    assert far.max() < 0.05


def test_a_band_is_read_once_for_several_sets_of_lines() -> None:
    pixels = gradient((30, 80, 180), (220, 200, 160))
    photo = Photo(pixels, None, pixels.shape[1], pixels.shape[0], "made.png")
    sky = np.ones(pixels.shape[:2], bool)
    reader = BandReader(photo, sky)
    first = reader.read(Bands(1.0, (0.3, 0.6)))
    second = reader.read(Bands(1.0, (0.3, 0.7)))
    assert second[0] is first[0]
    assert second == read_bands(photo, sky, Bands(1.0, (0.3, 0.7)))
    assert second[2] != first[2]


def test_geometric_median_is_the_fermat_point() -> None:
    """Of a triangle, the point from which all sides are seen under 120 degrees (Torricelli)."""
    corners = np.array([[0.0, 0.0, 0.0], [10.0, 0.0, 0.0], [3.0, 8.0, 0.0]])
    point = geometric_median(corners, within=1e-6)
    rays = corners - point
    rays /= np.linalg.norm(rays, axis=1, keepdims=True)
    for a, b in ((0, 1), (1, 2), (2, 0)):
        assert float(rays[a] @ rays[b]) == pytest.approx(-0.5, abs=1e-3)


@pytest.mark.parametrize("seed", range(3))
def test_geometric_median_has_the_least_summed_distance(seed: int) -> None:
    """Against scipy's Nelder-Mead on the sum itself."""
    points = np.random.default_rng(seed).gamma(1.0, 10.0, (300, 3))

    def summed(at: np.ndarray) -> float:
        return float(np.linalg.norm(points - at, axis=1).sum())

    best = optimize.minimize(
        summed, points.mean(axis=0), method="Nelder-Mead", options={"xatol": 1e-6}
    )
    assert summed(geometric_median(points)) <= best.fun * (1 + 1e-7)


def test_the_colour_is_one_that_exists_in_the_band() -> None:
    """60% blue, 40% in two oranges: the median of each channel alone would be none of them."""
    rng = np.random.default_rng(3)
    colours = np.array([[60, 90, 160], [240, 150, 60], [120, 60, 30]], np.uint8)
    which = rng.choice(3, (100, 100), p=[0.6, 0.2, 0.2])
    careful, _ = read(colours[which])
    assert float(deltaE_ciede2000(np.array(careful.colour.Lab), rgb2lab(colours[0] / 255))) < 1
    assert careful.second is not None


def test_spread_is_the_usual_distance_from_the_colour() -> None:
    """Median CIEDE2000 by scikit-image."""
    pixels = gradient((90, 120, 180), (120, 150, 200), grain=8)
    careful, fast = read(pixels)
    each = deltaE_ciede2000(rgb2lab(pixels / 255), np.tile(careful.colour.Lab, (200, 100, 1)))
    assert careful.spread == pytest.approx(float(np.median(each)), rel=0.05)
    assert fast.spread == pytest.approx(careful.spread, rel=0.5)


def test_reading_is_the_same_every_time() -> None:
    pixels = gradient((90, 120, 180), (250, 150, 100), rows=300, columns=300, grain=20)
    assert read(pixels) == read(pixels)

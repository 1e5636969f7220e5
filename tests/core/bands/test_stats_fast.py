"""Fast readings: against exact medians of every pixel, and their behaviour at the edges."""

from __future__ import annotations

import io
from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from PIL import Image
from skimage.color import deltaE_ciede2000, rgb2lab

from core.bands.careful import read_bands
from core.bands.lines import Bands, move_line
from core.bands.stats import BINS, BandStats, _quantiles
from core.colour.working_space import W_to_Lab, srgb8_to_W_fast
from core.errors import Cancelled
from core.photo import Photo, open_full, open_photo


def photo_of(pixels: np.ndarray, opaque: np.ndarray | None = None) -> Photo:
    return Photo(pixels, opaque, pixels.shape[1], pixels.shape[0], "made.png")


def flat(*bands: tuple[int, int, int], rows: int = 40, columns: int = 90) -> np.ndarray:
    return np.repeat(np.array(bands, np.uint8), rows, axis=0)[:, None].repeat(columns, axis=1)


def everything(photo: Photo) -> np.ndarray:
    return np.ones(photo.pixels.shape[:2], dtype=bool)


@pytest.fixture(scope="module")
def big_jpeg() -> bytes:
    """12 megapixels: a sunset's run of colours, brighter to the right, with a sensor's grain."""
    rows, columns = 3000, 4000
    stops = np.array([[40, 70, 140], [120, 130, 190], [220, 170, 170], [250, 190, 120]], float)
    at = np.linspace(0, 3, rows)
    column = np.stack([np.interp(at, range(4), stops[:, k]) for k in range(3)], axis=1)
    rng = np.random.default_rng(5)
    pixels = np.empty((rows, columns, 3), np.uint8)
    light = np.linspace(0.9, 1.05, columns)[None, :, None]
    for start in range(0, rows, 500):
        part = column[start : start + 500, None, :] * light
        pixels[start : start + 500] = np.clip(part + rng.normal(0, 4, part.shape), 0, 255)
    buffer = io.BytesIO()
    Image.fromarray(pixels).save(buffer, "JPEG", quality=92)
    return buffer.getvalue()


def test_fast_colours_of_a_big_photo_are_those_of_every_pixel(big_jpeg: bytes) -> None:
    """Within 0.3 dE00 (by scikit-image) of the medians of all pixels at full resolution."""
    photo, full = open_photo(big_jpeg), open_full(big_jpeg)
    assert photo.pixels.size < full.pixels.size  # else this would show nothing
    bands = Bands(0.95, (0.13, 0.37, 0.502, 0.71, 0.83))
    stats = BandStats(photo, everything(photo))
    height, width = full.pixels.shape[:2]
    third = np.arange(width) * 3 // width
    worst = 0.0
    for reading, (top, bottom) in zip(stats.read(bands), pairwise(bands.edges), strict=True):
        rows = full.pixels[round(top * height) : round(bottom * height)]
        for part, colour in enumerate((reading.left, reading.centre, reading.right)):
            exact = W_to_Lab(
                np.median(srgb8_to_W_fast(rows[:, third == part]).reshape(-1, 3), axis=0)
            )
            worst = max(worst, float(deltaE_ciede2000(np.array(colour.Lab), exact)))
    assert 0 < worst <= 0.3


@pytest.mark.parametrize("code", [(0, 0, 0), (255, 255, 255), (1, 0, 2), (60, 120, 190), (9, 9, 9)])
def test_one_flat_colour_is_read_as_itself(code: tuple[int, int, int]) -> None:
    """CIELAB of the code by scikit-image."""
    photo = photo_of(flat(code))
    stats = BandStats(photo, everything(photo))
    wanted = rgb2lab(np.array(code) / 255)
    for reading in (*stats.read(Bands(1.0)), *read_bands(photo, everything(photo), Bands(1.0))):
        for colour in (reading.colour, reading.left, reading.centre, reading.right):
            assert float(deltaE_ciede2000(np.array(colour.Lab), wanted)) < 0.25
        assert reading.spread < 0.2
        assert not reading.stacked
        assert reading.pixel_share == pytest.approx(1.0)


def test_bands_and_thirds_are_told_apart() -> None:
    pixels = flat((60, 90, 160), (230, 180, 120))
    pixels[:40, :30] = (60, 90, 200)
    pixels[40:, 60:] = (90, 60, 60)
    photo = photo_of(pixels)
    top, bottom = BandStats(photo, everything(photo)).read(Bands(1.0, (0.5,)))
    assert (top.letter, bottom.letter) == ("A", "B")
    assert (top.top, top.bottom, bottom.bottom) == (0.0, 0.5, 1.0)
    assert top.left.hex == "#3c5ac8"
    assert top.colour.hex == top.centre.hex == top.right.hex == "#3c5aa0"
    assert bottom.colour.hex == bottom.left.hex == "#e6b478"
    assert bottom.right.hex == "#5a3c3c"


def test_a_line_between_two_rows_shares_the_row_out() -> None:
    photo = photo_of(flat((60, 90, 160), (230, 180, 120), rows=1))
    stats = BandStats(photo, everything(photo))
    _, lower = stats.read(Bands(1.0, (0.4,)))
    assert lower.colour.hex == "#e6b478"
    assert lower.pixel_share == pytest.approx(1.0)


def test_half_and_half_is_read_in_the_middle() -> None:
    """The median of two equal halves is halfway between them, not one or the other."""
    pixels = np.full((40, 60, 3), (200, 97, 110), np.uint8)
    pixels[:, ::2] = (196, 98, 160)
    photo = photo_of(pixels)
    between = W_to_Lab(srgb8_to_W_fast(pixels[0, :2]).mean(axis=0))
    (fast,) = BandStats(photo, everything(photo)).read(Bands(1.0))
    (careful,) = read_bands(photo, everything(photo), Bands(1.0))
    assert float(deltaE_ciede2000(np.array(careful.colour.Lab), between)) < 0.1
    assert float(deltaE_ciede2000(np.array(fast.colour.Lab), between)) < 0.5


def test_what_is_no_sky_is_not_read() -> None:
    pixels = flat((60, 90, 160))
    pixels[:, 45:] = (0, 255, 0)
    photo, sky = photo_of(pixels), np.ones((40, 90), bool)
    sky[:, 45:] = False
    for reading in (
        *BandStats(photo, sky).read(Bands(1.0)),
        *read_bands(photo, sky, Bands(1.0)),
    ):
        assert reading.colour.hex == "#3c5aa0"
        assert reading.right is None
        assert reading.centre.hex == "#3c5aa0"
        assert reading.pixel_share == pytest.approx(0.5)
        assert reading.clipped_share == 0.0


def test_a_band_without_sky_has_no_colour() -> None:
    photo, sky = photo_of(flat((60, 90, 160), (9, 9, 9))), np.ones((80, 90), bool)
    sky[40:] = False
    for readings in (
        BandStats(photo, sky).read(Bands(1.0, (0.5,))),
        read_bands(photo, sky, Bands(1.0, (0.5,))),
    ):
        assert readings[0].colour is not None
        assert readings[1].colour is None
        assert readings[1].left is readings[1].centre is readings[1].right is None
        assert readings[1].pixel_share == 0.0
    nothing = np.zeros((80, 90), bool)
    assert BandStats(photo, nothing).read(Bands(1.0))[0].colour is None


def test_pixels_that_lost_light_or_detail_are_counted() -> None:
    """Not the blue of a deep orange, nor a blue at its strongest: nothing is lost one sees."""
    pixels = flat((60, 90, 160))
    pixels[:10, :, 0] = 255
    pixels[10:15] = 0
    pixels[15:20] = (240, 120, 0)
    pixels[20:25] = (0, 90, 255)
    photo = photo_of(pixels)
    for reading in (
        *BandStats(photo, everything(photo)).read(Bands(1.0)),
        *read_bands(photo, everything(photo), Bands(1.0)),
    ):
        assert reading.clipped_share == pytest.approx(15 / 40)


def test_remembered_readings_are_those_of_a_fresh_count() -> None:
    rng = np.random.default_rng(2)
    photo = photo_of(rng.integers(0, 256, (120, 60, 3), dtype=np.uint8))
    used, bands = BandStats(photo, everything(photo)), Bands(0.9, (0.2, 0.4, 0.6))
    for number in range(100):
        bands = move_line(bands, number % 3, 0.05 + 0.8 * (number * 0.37 % 1))
        fresh = BandStats(photo, everything(photo)).read(bands) if number % 20 == 0 else None
        got = used.read(bands)
        assert [r.letter for r in got] == list(bands.letters)
        assert fresh is None or got == fresh


@settings(max_examples=60, deadline=None)
@given(st.lists(st.integers(0, BINS - 1), min_size=1, max_size=400))
def test_quartiles_are_within_a_bin_of_numpy(values: list[int]) -> None:
    histogram = np.bincount(values, minlength=BINS).astype(float)
    for share, got in zip((25, 50, 75), _quantiles(histogram), strict=True):
        low = np.percentile(values, share, method="lower")
        high = np.percentile(values, share, method="higher")
        assert low - 1 <= got <= high + 1


def test_a_mask_of_another_size_is_refused() -> None:
    photo = photo_of(flat((1, 2, 3)))
    with pytest.raises(ValueError, match="mask"):
        BandStats(photo, np.ones((3, 3), bool))
    with pytest.raises(ValueError, match="mask"):
        read_bands(photo, np.ones((3, 3), bool), Bands(1.0))


def test_counting_and_reading_can_be_stopped() -> None:
    photo = photo_of(flat((1, 2, 3)))
    with pytest.raises(Cancelled):
        BandStats(photo, everything(photo), should_stop=lambda: True)
    with pytest.raises(Cancelled):
        read_bands(photo, everything(photo), Bands(1.0), should_stop=lambda: True)

"""Two colours in a band: found where the eye sees two, with the share they were drawn with.

The skies are drawn here: what covers how much is known from the drawing, and colour differences
are taken by scikit-image.
"""

from __future__ import annotations

import itertools

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter
from skimage.color import deltaE_ciede2000, rgb2lab

from core.bands.careful import read_bands
from core.bands.lines import Bands, move_line
from core.bands.propose import propose
from core.bands.stats import BandStats
from core.photo import Photo
from core.reading.reading import BandReading

HEIGHT, WIDTH = 200, 600

PAIRS = (
    ((74, 70, 80), (240, 160, 80)),  # a glow between dark clouds
    ((80, 128, 192), (240, 240, 240)),  # white clouds
    ((111, 159, 208), (200, 212, 224)),  # haze and a pale sky
    ((138, 127, 160), (224, 160, 160)),  # pink on grey-violet
    ((240, 192, 128), (80, 72, 88)),  # dark clouds before an evening sky
)


def photo_of(pixels: np.ndarray) -> Photo:
    return Photo(pixels, None, pixels.shape[1], pixels.shape[0], "drawn.png")


def read(pixels: np.ndarray, bands: Bands | None = None) -> tuple[BandReading, ...]:
    """The careful readings, after a check that the fast ones agree on what there is."""
    photo, sky = photo_of(pixels), np.ones(pixels.shape[:2], bool)
    bands = bands or Bands(1.0)
    careful, fast = read_bands(photo, sky, bands), BandStats(photo, sky).read(bands)
    for one, other in zip(careful, fast, strict=True):
        assert (one.second is None) == (other.second is None)
        assert one.stacked == other.stacked
        if one.second is not None and other.second is not None and one.second.share < 0.42:
            assert other.second.share == pytest.approx(one.second.share, abs=0.04)
            assert far(other.second.colour.Lab, one.second.colour.Lab) < 4
    return careful


def far(Lab1: object, Lab2: object) -> float:
    return float(deltaE_ciede2000(np.array(Lab1), np.array(Lab2)))


def Lab_of(code: tuple[int, int, int]) -> np.ndarray:
    return rgb2lab(np.array(code) / 255)


def clouds(
    sky: object, cloud: tuple[int, int, int], share: float, *, size: float, soft: float, seed: int
) -> tuple[np.ndarray, float]:
    """A band `sky` (a colour, or one a pixel) with clouds, and what share they truly cover."""
    rng = np.random.default_rng(seed)
    field = gaussian_filter(rng.normal(size=(HEIGHT, WIDTH)), (size / 2, size))
    cover = (field > np.quantile(field, 1 - share)).astype(float)
    cover = gaussian_filter(cover, soft)[..., None]
    drawn = np.broadcast_to(np.asarray(sky, float), (HEIGHT, WIDTH, 3)) * (1 - cover)
    return to_codes(drawn + np.array(cloud) * cover), float((cover > 0.5).mean())


def to_codes(values: np.ndarray) -> np.ndarray:
    return np.clip(values + 0.5, 0, 255).astype(np.uint8)


def grain(pixels: np.ndarray, amount: float) -> np.ndarray:
    rng = np.random.default_rng(5)
    return to_codes(pixels + rng.normal(0, amount, pixels.shape) - 0.5)


def slope(first: object, last: object, share: np.ndarray) -> np.ndarray:
    share = share[..., None]
    return np.asarray(first, float) * (1 - share) + np.asarray(last, float) * share


@pytest.mark.parametrize("share", [0.18, 0.33, 0.42])
@pytest.mark.parametrize(("sky", "cloud"), PAIRS)
def test_clouds_are_the_second_colour_with_their_share(sky, cloud, share) -> None:
    for seed, (size, soft) in enumerate(((30, 0), (30, 5), (12, 2), (60, 10))):
        pixels, truth = clouds(sky, cloud, share, size=size, soft=soft, seed=seed)
        for noisy in (pixels, grain(pixels, 8)):
            (band,) = read(noisy)
            assert band.second is not None
            assert band.second.share == pytest.approx(truth, abs=0.04)
            assert far(band.colour.Lab, Lab_of(sky)) < 2.5
            # Small soft clouds are nowhere quite their own colour.
            assert far(band.second.colour.Lab, Lab_of(cloud)) < (2.5 if soft < 2 else 8)


def test_clouds_over_a_graded_sky() -> None:
    down = np.linspace(0, 1, HEIGHT)[:, None] * np.ones((1, WIDTH))
    for (first, last), cloud in (
        (((48, 96, 176), (160, 192, 224)), (255, 255, 255)),
        (((80, 64, 80), (128, 96, 112)), (240, 160, 64)),
    ):
        for share in (0.2, 0.4):
            pixels, truth = clouds(slope(first, last, down), cloud, share, size=30, soft=4, seed=2)
            (band,) = read(pixels)
            assert band.second is not None
            assert band.second.share == pytest.approx(truth, abs=0.05)
            assert far(band.second.colour.Lab, Lab_of(cloud)) < 5


def shapes() -> dict[str, np.ndarray]:
    """Even passages, 0..1, across a band: down, across, aslant, and a glow round the sun."""
    y, x = np.mgrid[0:HEIGHT, 0:WIDTH]
    y, x = y / (HEIGHT - 1), x / (WIDTH - 1)
    even = {
        "down": y,
        "across": x,
        "aslant": (x + y) / 2,
        "glow": 1 - np.exp(-(((x - 0.5) / 0.25) ** 2 + ((y - 1) / 0.6) ** 2)),
        "round": np.clip(np.hypot((x - 0.5) * 1.6, y - 1), 0, 1),
    }
    eased = {f"{name}, eased": t * t * (3 - 2 * t) for name, t in even.items()}
    return even | eased


@pytest.mark.parametrize("shape", shapes())
def test_a_graded_wash_holds_no_second_colour(shape) -> None:
    for first, last in (
        ((48, 96, 176), (240, 192, 128)),
        ((48, 96, 176), (160, 192, 224)),
        ((20, 40, 120), (255, 200, 120)),
        ((32, 32, 48), (160, 64, 32)),
    ):
        pixels = to_codes(slope(first, last, shapes()[shape]))
        for noisy in (pixels, grain(pixels, 12)):
            (band,) = read(noisy)
            assert band.second is None
            assert band.overall is None


@pytest.mark.parametrize("amount", [5, 15, 30, 60])
def test_grain_is_no_second_colour(amount) -> None:
    (band,) = read(grain(np.full((HEIGHT, WIDTH, 3), (96, 128, 176), np.uint8), amount))
    assert band.second is None
    assert not band.stacked


@pytest.mark.parametrize("reach", [3, 8, 20, 60])
def test_an_uneven_wash_is_one_colour(reach) -> None:
    field = gaussian_filter(np.random.default_rng(1).normal(size=(HEIGHT, WIDTH)), reach)
    field = (field / field.std())[..., None] * np.array([25, 20, 10])
    (band,) = read(to_codes(np.array([128, 144, 176]) + field))
    assert band.second is None


def test_a_speck_is_a_detail() -> None:
    pixels = np.full((HEIGHT, WIDTH, 3), (70, 110, 180), np.uint8)
    pixels[60:110, 100:200] = 235  # 4%
    (band,) = read(pixels)
    assert band.second is None


def test_two_bands_laid_in_one_want_a_line_and_are_no_pair() -> None:
    pixels = np.full((HEIGHT, WIDTH, 3), (60, 80, 150), np.uint8)
    pixels[120:] = (120, 130, 190)
    (band,) = read(grain(pixels, 4))
    assert band.stacked
    assert band.second is None


def test_a_steep_slope_wants_a_line() -> None:
    """From deep blue to bright orange nobody would mix one wash."""
    (band,) = read(to_codes(slope((20, 40, 120), (255, 200, 120), shapes()["down"])))
    assert band.stacked


def test_stripes_are_a_second_colour_no_line_could_part() -> None:
    pixels = np.full((HEIGHT, WIDTH, 3), (74, 70, 80), np.uint8)
    for top in (20, 70, 130):
        pixels[top : top + 22] = (240, 160, 80)
    (band,) = read(grain(pixels, 4))
    assert band.second is not None
    assert band.second.share == pytest.approx(0.33, abs=0.04)
    assert not band.stacked


def test_a_bank_of_cloud_at_one_side() -> None:
    pixels = np.full((HEIGHT, WIDTH, 3), (80, 128, 192), np.uint8)
    pixels[:, 400:] = (235, 235, 235)
    (band,) = read(pixels)
    assert band.second is not None
    assert band.second.share == pytest.approx(1 / 3, abs=0.02)
    assert not band.second.soft


def test_hard_and_soft_edges_are_told_apart() -> None:
    hard, _ = clouds(*PAIRS[1], 0.3, size=40, soft=0, seed=1)
    soft, _ = clouds(*PAIRS[1], 0.3, size=40, soft=11, seed=1)
    assert [read(pixels)[0].second.soft for pixels in (hard, soft)] == [False, True]


def test_all_of_it_together_is_still_known() -> None:
    pixels, _ = clouds(*PAIRS[0], 0.42, size=30, soft=4, seed=3)
    (band,) = read(pixels)
    assert band.as_one == band.overall != band.colour
    (plain,) = read(np.full((40, 60, 3), (70, 110, 180), np.uint8))
    assert plain.as_one == plain.colour


@pytest.mark.parametrize("seed", range(4))
def test_a_dragged_line_keeps_both_colours(seed) -> None:
    """Clouds above, a plain sky below: the upper band never loses them, nor do shares jump."""
    pixels, _ = clouds(*PAIRS[seed], 0.3, size=20, soft=3, seed=seed)
    plain = np.full((HEIGHT, WIDTH, 3), PAIRS[seed][0], np.uint8)
    pixels = grain(np.concatenate([pixels, plain]), 4)
    photo, bands = photo_of(pixels), Bands(1.0, (0.3,))
    stats = BandStats(photo, np.ones(pixels.shape[:2], bool))
    seen = [stats.read(move_line(bands, 0, y))[0] for y in np.linspace(0.2, 0.5, 151)]
    for one, other in itertools.pairwise(seen):
        assert one.second is not None
        assert other.second is not None
        assert abs(one.second.share - other.second.share) < 0.03
        assert far(one.second.colour.Lab, other.second.colour.Lab) < 3


def over_land(sky: np.ndarray) -> np.ndarray:
    """A drawn band between plain sky above and land below: what is cloud must be found too."""
    plain = np.full((HEIGHT, WIDTH, 3), np.median(sky, axis=(0, 1)), np.uint8)
    land = np.full((HEIGHT // 2, WIDTH, 3), (45, 50, 35), np.uint8)
    return grain(np.concatenate([plain, sky, plain, land]), 2)


LINES, HORIZON = (2 / 7, 4 / 7), 6 / 7


@pytest.mark.parametrize("share", [0.2, 0.35])
@pytest.mark.parametrize(("sky", "cloud"), [*PAIRS, ((48, 80, 160), (32, 32, 48))])
def test_clouds_darker_or_stronger_than_the_sky_are_sky(sky, cloud, share) -> None:
    """They stand out as a kite does, but they float and cover much of their rows."""
    for seed, (size, soft) in enumerate(((60, 0), (20, 0), (40, 5))):
        pixels, truth = clouds(sky, cloud, share, size=size, soft=soft, seed=seed)
        photo = photo_of(over_land(pixels))
        mask = propose(photo, horizon=HORIZON).sky
        _, band, _ = read_bands(photo, mask, Bands(HORIZON, LINES))
        assert band.second is not None
        assert band.second.share == pytest.approx(truth, abs=0.04)
        assert band.pixel_share > 0.93


def test_what_stands_before_the_sky_is_still_left_out() -> None:
    """A mast that stands on the land, and a kite."""
    pixels = over_land(np.full((HEIGHT, WIDTH, 3), (80, 128, 192), np.uint8))
    mast = np.zeros(pixels.shape[:2], bool)
    mast[250:620, 150:240] = True
    kite = np.zeros_like(mast)
    kite[300:330, 400:430] = True
    pixels[mast] = (40, 30, 30)
    pixels[kite] = (220, 30, 40)
    photo = photo_of(pixels)
    mask = propose(photo, horizon=HORIZON).sky
    assert mask[mast & (np.arange(len(pixels)) < 580)[:, None]].mean() < 0.05
    assert mask[kite].mean() < 0.05
    bands = read_bands(photo, mask, Bands(HORIZON, LINES))
    assert [band.second for band in bands] == [None] * 3

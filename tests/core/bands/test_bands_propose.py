"""Proposals on made skies: where the sky ends, how many bands, and whether it trusts itself."""

from __future__ import annotations

import itertools

import numpy as np
import pytest

from core.bands.lines import MIN_BAND
from core.bands.propose import Proposal, propose
from core.errors import Cancelled
from core.photo import Photo

ROWS, COLUMNS = 240, 320
BLUE, PALE, PEACH, WHITE = (70, 110, 180), (150, 180, 215), (245, 190, 150), (248, 248, 250)
LAND = (45, 55, 40)


def photo_of(pixels: np.ndarray, opaque: np.ndarray | None = None) -> Photo:
    return Photo(pixels, opaque, pixels.shape[1], pixels.shape[0], "made.png")


def made(
    bands: list[tuple[tuple[int, int, int], float]],
    *,
    land: tuple[int, int, int] | None = LAND,
    hills: float = 0.02,
    seed: int = 0,
    soft: float = 0.01,
) -> np.ndarray:
    """Bands of colour down to the last one's end, then rough land with a wavy edge."""
    rng = np.random.default_rng(seed)
    y = (np.arange(ROWS) + 0.5) / ROWS
    column = np.tile(np.array(bands[0][0], float), (ROWS, 1))
    for (_, line), (colour, _) in itertools.pairwise(bands):
        share = 1 / (1 + np.exp(-(y - line) / soft))
        column = column * (1 - share[:, None]) + np.array(colour) * share[:, None]
    pixels = column[:, None] + rng.normal(0, 2, (ROWS, COLUMNS, 3))
    if land is not None:
        x = np.linspace(0, 6, COLUMNS)
        edge = bands[-1][1] + hills * np.sin(x)
        below = y[:, None] > edge[None, :]
        ground = np.array(land) + rng.normal(0, 14, (ROWS, COLUMNS, 1))
        pixels[below] = ground[below]
    return np.clip(pixels, 0, 255).astype(np.uint8)


THREE = [(BLUE, 0.2), (PALE, 0.4), (PEACH, 0.6)]


@pytest.fixture(scope="module")
def three() -> Proposal:
    return propose(photo_of(made(THREE)))


def test_lines_and_horizon_are_found(three: Proposal) -> None:
    assert three.bands.horizon == pytest.approx(0.6, abs=0.02)
    assert three.bands.lines == pytest.approx((0.2, 0.4), abs=0.02)
    assert three.sure
    assert three.reason is None


def test_the_mask_is_the_sky(three: Proposal) -> None:
    assert three.sky.shape == (ROWS, COLUMNS)
    assert not three.sky.flags.writeable
    assert three.sky[: int(0.55 * ROWS)].mean() > 0.99
    # The land between the highest hill and the horizon is left out.
    x = np.linspace(0, 6, COLUMNS)
    hill = int(np.argmin(np.sin(x)))
    assert not three.sky[int(0.595 * ROWS), hill - 5 : hill + 5].any()


def test_the_same_photo_gets_the_same_proposal(three: Proposal) -> None:
    again = propose(photo_of(made(THREE)))
    assert again.bands == three.bands
    assert np.array_equal(again.sky, three.sky)


def test_water_that_mirrors_the_sky_is_not_sky() -> None:
    pixels = made(THREE, hills=0.01)
    water = made([(PEACH, 0.2), (PALE, 0.9)], land=None)
    pixels[int(0.68 * ROWS) :] = water[int(0.2 * ROWS) : int(0.52 * ROWS) + 1][
        : ROWS - int(0.68 * ROWS)
    ]
    proposal = propose(photo_of(pixels))
    assert proposal.bands.horizon == pytest.approx(0.6, abs=0.02)


def test_a_flat_white_sky_is_one_band() -> None:
    proposal = propose(photo_of(made([(WHITE, 0.5)])))
    assert proposal.bands.count == 1
    assert proposal.bands.horizon == pytest.approx(0.5, abs=0.025)
    assert proposal.sure


def test_a_photo_of_nothing_but_sky_ends_at_its_edge() -> None:
    proposal = propose(photo_of(made([(BLUE, 0.5), (PALE, 1.0)], land=None, soft=0.1)))
    assert proposal.bands.horizon == 1.0
    assert proposal.sky.all()


def test_a_clear_sky_that_changes_slowly_gets_several_bands() -> None:
    y = np.linspace(0, 1, ROWS)[:, None]
    column = np.array(BLUE) * (1 - y) + np.array((235, 225, 215)) * y
    pixels = np.repeat(column[:, None], COLUMNS, axis=1).astype(np.uint8)
    assert 3 <= propose(photo_of(pixels)).bands.count <= 6


def test_a_thin_glow_is_given_the_least_height_a_brush_can_paint() -> None:
    """A glow of 4% of the sky is part of a band when it burns, and none when it is faint."""
    burning = made([(BLUE, 0.3), (PALE, 0.576), ((255, 120, 20), 0.6)], hills=0.0, soft=0.002)
    faint = made([(BLUE, 0.3), (PALE, 0.576), ((165, 188, 215), 0.6)], hills=0.0, soft=0.002)
    asked = {"horizon": 0.6}
    assert propose(photo_of(burning), **asked).bands.lines == pytest.approx((0.3, 0.552), abs=0.02)
    assert propose(photo_of(faint), **asked).bands.lines == pytest.approx((0.3,), abs=0.02)


def test_a_stripe_of_glow_that_may_be_a_lit_field_is_asked_about() -> None:
    burning = made([(BLUE, 0.3), (PALE, 0.576), ((255, 120, 20), 0.6)], hills=0.0, soft=0.002)
    proposal = propose(photo_of(burning))
    assert not proposal.sure
    heights = (proposal.bands.horizon, *proposal.rivals)
    assert min(abs(y - 0.6) for y in heights) < 0.02


def test_land_hardly_darker_than_the_sky_is_asked_about() -> None:
    mist = made([((120, 135, 155), 0.6)], land=(112, 126, 146), hills=0.0)
    proposal = propose(photo_of(mist))
    assert not proposal.sure
    heights = (proposal.bands.horizon, *proposal.rivals)
    assert min(abs(y - 0.6) for y in heights) < 0.02


def test_snow_below_a_dark_sky_is_asked_about() -> None:
    snow = made([((70, 80, 100), 0.3), ((90, 95, 110), 0.6)], land=(235, 238, 245))
    proposal = propose(photo_of(snow))
    assert not proposal.sure
    heights = (proposal.bands.horizon, *proposal.rivals)
    assert min(abs(y - 0.6) for y in heights) < 0.03


def test_a_sky_that_changes_sideways_is_called_so() -> None:
    x = np.linspace(0, 1, COLUMNS)[None, :, None]
    row = np.array(BLUE) * (1 - x) + np.array((255, 200, 120)) * x
    pixels = np.repeat(row, ROWS, axis=0).astype(np.uint8)
    proposal = propose(photo_of(pixels))
    assert any("left to right" in remark for remark in proposal.remarks)


def test_a_kite_is_left_out_and_a_cloud_is_not() -> None:
    pixels = made(THREE)
    pixels[20:32, 100:112] = (230, 20, 30)
    pixels[60:72, 200:215] = (245, 245, 245)
    sky = propose(photo_of(pixels)).sky
    assert sky[22:30, 102:110].mean() < 0.1
    assert sky[62:70, 202:213].mean() > 0.9


def test_transparent_pixels_are_left_out() -> None:
    opaque = np.ones((ROWS, COLUMNS), bool)
    opaque[: ROWS // 6] = False
    pixels = made(THREE)
    pixels[: ROWS // 6] = 255
    proposal = propose(photo_of(pixels, opaque))
    assert not proposal.sky[: ROWS // 6].any()
    assert proposal.bands.horizon == pytest.approx(0.6, abs=0.02)
    nothing = propose(photo_of(pixels, np.zeros((ROWS, COLUMNS), bool)))
    assert not nothing.sure
    assert not nothing.sky.any()


@pytest.mark.parametrize("count", [1, 2, 3, 5, 7, 12, 26])
def test_as_many_bands_as_asked_for(count: int) -> None:
    proposal = propose(photo_of(made(THREE)), count=count)
    assert proposal.bands.count == count


def test_fewer_bands_where_there_is_no_room_for_so_many() -> None:
    bands = propose(photo_of(made(THREE)), count=26, horizon=0.1).bands
    assert 1 < bands.count <= 10


@pytest.mark.parametrize("horizon", [0.3, 0.59, 0.75, 1.0])
def test_a_given_horizon_is_taken(horizon: float) -> None:
    proposal = propose(photo_of(made(THREE)), horizon=horizon)
    assert proposal.bands.horizon == horizon
    assert all(line <= horizon - MIN_BAND for line in proposal.bands.lines)
    assert proposal.rivals == ()


def test_below_the_sky_every_pixel_counts_for_who_drags_the_horizon_there(
    three: Proposal,
) -> None:
    assert three.sky[int(0.7 * ROWS) :].all()


@pytest.mark.parametrize("shape", [(1, 1), (1, 300), (2, 300), (300, 1), (300, 2), (5, 7)])
def test_the_smallest_pictures_get_a_proposal(shape: tuple[int, int]) -> None:
    rng = np.random.default_rng(0)
    for pixels in (
        np.full((*shape, 3), 90, np.uint8),
        rng.integers(0, 256, (*shape, 3), dtype=np.uint8),
    ):
        for count in (None, 3):
            proposal = propose(photo_of(pixels), count=count)
            assert proposal.sky.shape == shape
            assert proposal.bands.edges[-1] <= 1.0


@pytest.mark.parametrize("code", [0, 255])
def test_black_and_white_are_one_band(code: int) -> None:
    proposal = propose(photo_of(np.full((60, 80, 3), code, np.uint8)))
    assert proposal.bands.edges == (0.0, 1.0)


def test_senseless_wishes_are_refused() -> None:
    photo = photo_of(np.zeros((9, 9, 3), np.uint8))
    for wish in ({"count": 0}, {"count": 27}, {"horizon": 0.0}, {"horizon": 1.1}):
        with pytest.raises(ValueError, match="must lie"):
            propose(photo, **wish)


def test_progress_rises_to_the_end_and_work_can_be_stopped() -> None:
    photo, told = photo_of(made(THREE)), []
    propose(photo, progress=told.append)
    assert told == sorted(told)
    assert (told[0], told[-1]) == (0.0, 1.0)
    asked = iter([False, False, False])
    with pytest.raises(Cancelled):
        propose(photo, should_stop=lambda: next(asked, True))


def test_no_sliver_is_proposed() -> None:
    """Stripes of 2 to 4% of the height, however strong, are no bands of their own."""
    for thin in (0.02, 0.03, 0.04):
        at = [0.2, 0.2 + thin, 0.4, 0.6 - thin, 0.6]
        colours = [BLUE, (255, 120, 20), PALE, BLUE, (255, 120, 20)]
        proposal = propose(photo_of(made(list(zip(colours, at, strict=True)), soft=0.002)))
        edges = np.array([0.0, *proposal.bands.lines, proposal.bands.horizon])
        assert np.diff(edges).min() >= 0.044


def test_a_sky_of_one_colour_says_so() -> None:
    proposal = propose(photo_of(made([(WHITE, 0.5)])))
    assert any("one colour" in remark for remark in proposal.remarks)
    assert proposal.sure
    several = propose(photo_of(made([(BLUE, 0.3), (PALE, 0.6)])))
    assert not several.remarks


def test_a_heavy_cloud_is_warned_about() -> None:
    pixels = made([(BLUE, 0.3), (PALE, 0.6)])
    h, w = pixels.shape[:2]
    y, x = np.mgrid[0:h, 0:w] / np.array([h, w])[:, None, None]
    cloud = (np.sin(14 * x + 6 * y) + np.sin(5 * x - 17 * y) > 0.3) & (y < 0.57)
    pixels[cloud] = (105, 110, 128)
    proposal = propose(photo_of(pixels), horizon=0.6)
    assert any("cloud" in remark for remark in proposal.remarks)


def test_what_stands_before_the_sky_is_asked_about() -> None:
    """A dark bridge slants through the picture: where the sky ends is a guess."""
    pixels = made([((70, 78, 86), 0.72)], land=(52, 60, 68), hills=0.0)
    h, w = pixels.shape[:2]
    y, x = np.mgrid[0:h, 0:w] / np.array([h, w])[:, None, None]
    pixels[(y > 0.75 * x) & (y < 0.1 + 0.75 * x)] = (15, 14, 16)
    assert not propose(photo_of(pixels)).sure

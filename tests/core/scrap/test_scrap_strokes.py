"""Dried strokes found on white paper, and their colours, on drawn photos of known colours."""

from __future__ import annotations

import numpy as np
import pytest
from simulator.scraps import Lab, jpeg_of, scrap_photo

from core.colour import delta_E_2000
from core.colour.lab import in_srgb_gamut
from core.errors import Cancelled, PhotoError
from core.paint.pigment.measured import load_Lab
from core.photo import Photo, open_photo
from core.scrap.strokes import FoundStroke, find_strokes, in_order, read_region


def washes(rng: np.random.Generator, count: int) -> list[Lab]:
    """Washes of two paints, from pale to strong, within what a screen shows."""
    found: list[Lab] = []
    while len(found) < count:
        load = np.zeros(13)
        pair = rng.choice(11, 2, replace=False)
        load[pair] = rng.dirichlet([1, 1]) * np.exp(rng.uniform(np.log(8e-4), np.log(0.02)))
        L, a, b = load_Lab(load).tolist()
        # A camera's picture holds no colour that a screen cannot show.
        if 30 < L < 88 and in_srgb_gamut((L, a, b)):
            found.append((L, a, b))
    return found


@pytest.mark.parametrize("seed", range(8))
@pytest.mark.parametrize("over_edge", [False, True])
def test_strokes_are_found_and_their_colours_right(seed: int, over_edge: bool) -> None:
    rng = np.random.default_rng([seed, over_edge])
    colours = washes(rng, int(rng.integers(1, 5)))
    pixels = scrap_photo(colours, rng, over_edge=over_edge, table=over_edge or seed % 2 == 0)
    found = find_strokes(open_photo(jpeg_of(pixels))).strokes
    assert len(found) == len(colours)
    left_to_right = sorted(found, key=lambda stroke: stroke.region[0])
    off = [
        float(delta_E_2000(one.Lab, Lab)) for one, Lab in zip(left_to_right, colours, strict=True)
    ]
    assert max(off) < 2.5, off


def test_the_light_does_not_matter() -> None:
    colours = washes(np.random.default_rng(5), 2)
    read = []
    for cast, slope in ((0.0, 0.0), (0.25, 0.7)):
        pixels = scrap_photo(colours, np.random.default_rng(11), cast=cast, slope=slope)
        read.append([stroke.Lab for stroke in find_strokes(open_photo(jpeg_of(pixels))).strokes])
    assert max(delta_E_2000(read[0], read[1])) < 2.0


def test_bare_paper_and_writing_are_no_strokes() -> None:
    pixels = scrap_photo([(94.5, -0.75, 2.2)], np.random.default_rng(2))
    assert find_strokes(open_photo(jpeg_of(pixels))).strokes == ()


def sky() -> Photo:
    rows = np.linspace((40, 90, 170), (230, 150, 90), 300)
    pixels = np.repeat(rows[:, None], 400, axis=1).astype(np.uint8)
    return Photo(pixels, None, 400, 300, "sky.png")


def test_a_picture_without_paper_has_none_but_a_region_is_read() -> None:
    scrap = find_strokes(sky())
    assert scrap.strokes == ()
    stroke = read_region(scrap, (0.4, 0.1, 0.6, 0.2))
    assert "no paper" in stroke.doubts


def test_a_region_by_hand_reads_what_is_painted_in_it() -> None:
    colours = washes(np.random.default_rng(8), 2)
    photo = open_photo(jpeg_of(scrap_photo(colours, np.random.default_rng(8))))
    scrap = find_strokes(photo)
    left, top, right, bottom = scrap.strokes[0].region
    wide = (left - 0.03, top - 0.03, right + 0.03, bottom + 0.03)
    assert delta_E_2000(read_region(scrap, wide).Lab, scrap.strokes[0].Lab) < 1.5


@pytest.mark.parametrize(
    ("region", "words"),
    [((0.45, 0.85, 0.55, 0.88), "only bare paper"), ((0.5, 0.5, 0.501, 0.501), "too small")],
)
def test_a_region_that_holds_nothing_says_what_to_do(
    region: tuple[float, float, float, float], words: str
) -> None:
    scrap = find_strokes(
        open_photo(
            jpeg_of(scrap_photo(washes(np.random.default_rng(1), 1), np.random.default_rng(1)))
        )
    )
    with pytest.raises(PhotoError, match=words):
        read_region(scrap, region)


def test_a_wet_stroke_shines() -> None:
    rng = np.random.default_rng(3)
    pixels = scrap_photo([(55.0, 20.0, -20.0)], rng, slope=0.0).copy()
    left, top, right, bottom = find_strokes(open_photo(jpeg_of(pixels))).strokes[0].region
    x, y = int((left + right) / 2 * 1200), int((top + bottom) / 2 * 900)
    pixels[y - 12 : y + 12, x - 50 : x + 50] = 252
    stroke, *_ = find_strokes(open_photo(jpeg_of(pixels))).strokes
    assert "shines" in stroke.doubts


@pytest.mark.parametrize("shaded", [False, True])
def test_a_shadow_beside_a_stroke_is_told(shaded: bool) -> None:
    pixels = scrap_photo([(60.0, 25.0, 20.0)], np.random.default_rng(6), table=False).astype(float)
    if shaded:
        left = find_strokes(open_photo(jpeg_of(pixels.astype(np.uint8)))).strokes[0].region[2]
        pixels[:, round((left - 0.02) * pixels.shape[1]) :] *= 0.8
    (stroke, *_) = find_strokes(open_photo(jpeg_of(pixels.astype(np.uint8)))).strokes
    assert ("shadow" in stroke.doubts) == shaded


def test_overexposed_paper_is_told() -> None:
    pixels = scrap_photo([(55.0, 20.0, -20.0)], np.random.default_rng(3), cast=0.0).astype(float)
    bright = np.clip(pixels * 1.35, 0, 255).astype(np.uint8)
    stroke, *_ = find_strokes(open_photo(jpeg_of(bright))).strokes
    assert "over-exposed" in stroke.doubts


def test_finding_can_be_stopped() -> None:
    with pytest.raises(Cancelled):
        find_strokes(sky(), should_stop=lambda: True)


def test_strokes_are_read_like_writing() -> None:
    places = [(0.6, 0.1, 0.8, 0.3), (0.1, 0.6, 0.3, 0.8), (0.1, 0.12, 0.3, 0.32)]
    ordered = in_order([FoundStroke(place, (50.0, 0.0, 0.0)) for place in places])
    assert [stroke.region for stroke in ordered] == [places[2], places[0], places[1]]


@pytest.mark.parametrize("shape", [(1, 1), (3, 500), (40, 40)])
def test_tiny_and_flat_pictures_are_no_trouble(shape: tuple[int, int]) -> None:
    for level in (0, 128, 255):
        pixels = np.full((*shape, 3), level, np.uint8)
        assert find_strokes(Photo(pixels, None, shape[1], shape[0], "flat.png")).strokes == ()

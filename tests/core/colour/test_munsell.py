"""Munsell of every sRGB colour: no hole, no NaN, no seam; the published checks are external."""

import subprocess
import sys

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from core.colour import (
    Lab_to_munsell,
    Munsell,
    linear_to_XYZ,
    munsell_of,
    munsell_value,
    munsell_Y,
    srgb_to_Lab,
    srgb_to_linear,
    srgb_to_munsell,
)
from core.colour.munsell import TABLE_PATH

unit = st.floats(0, 1, width=32)


@given(arrays(np.float64, (8, 3), elements=unit))
def test_every_colour_has_an_answer(rgb):
    said = srgb_to_munsell(rgb)
    assert np.isfinite(said).all()
    assert (said[:, 0] >= 0).all()
    assert (said[:, 0] < 100).all()
    assert (said[:, 1] >= 0).all()
    assert (said[:, 1] <= 10).all()
    assert (said[:, 2] >= 0).all()


def test_the_cube_of_codes_in_steps_of_five():
    axis = np.arange(0, 256, 5) / 255
    grid = np.stack(np.meshgrid(axis, axis, axis), axis=-1)
    said = srgb_to_munsell(grid)
    assert said.shape == grid.shape
    assert np.isfinite(said).all()
    Y = linear_to_XYZ(srgb_to_linear(grid))[..., 1] * 100
    assert np.abs(said[..., 1] - munsell_value(np.clip(Y, 0, 100))).max() <= 1e-3


def test_all_greys_are_grey():
    grey = np.repeat((np.arange(256) / 255)[:, None], 3, axis=1)
    assert srgb_to_munsell(grey)[:, 2].max() < 1e-5


def test_black_and_white():
    assert srgb_to_munsell([0, 0, 0]).tolist() == [0, 0, 0]
    hue, value, chroma = srgb_to_munsell([1, 1, 1])
    assert (hue, chroma) == (0, 0)
    assert value == pytest.approx(10, abs=1e-5)


def test_chroma_changes_smoothly_along_the_edges_of_the_cube():
    steps = np.linspace(0, 1, 2000)
    for start, end in (((1, 0, 0), (1, 1, 0)), ((0, 0, 1), (1, 0, 1)), ((0, 0, 0), (0, 0, 1))):
        rgb = np.array(start) + steps[:, None] * (np.array(end) - np.array(start))
        said = srgb_to_munsell(rgb)
        vector = said[:, 2] * np.exp(2j * np.pi * said[:, 0] / 100)
        assert np.abs(np.diff(vector)).max() < 0.1


def test_the_two_sides_of_the_hue_seam_meet():
    """From purplish red to red, hue passes from just under 100 to just over 0."""
    rgb = np.linspace([0.75, 0.3, 0.47], [0.75, 0.3, 0.35], 400)
    hue = srgb_to_munsell(rgb)[:, 0]
    assert hue.min() < 2
    assert hue.max() > 98
    assert np.abs((np.diff(hue) + 50) % 100 - 50).max() < 0.2


@pytest.mark.parametrize("shape", [(3,), (0, 3), (5, 3), (2, 4, 3)])
def test_shapes(shape):
    assert srgb_to_munsell(np.full(shape, 0.3)).shape == shape
    assert Lab_to_munsell(np.full(shape, 30.0)).shape == shape


def test_a_picture_longer_than_one_chunk_reads_as_its_pixels_do():
    rgb = np.random.default_rng(5).random((70_000, 3))
    whole = srgb_to_munsell(rgb)
    for index in (0, 32_767, 32_768, 69_999):
        assert np.array_equal(whole[index], srgb_to_munsell(rgb[index]))


def test_values_outside_are_clipped():
    assert np.array_equal(srgb_to_munsell([1.5, -0.2, 0.3]), srgb_to_munsell([1, 0, 0.3]))


def test_what_is_no_colour_is_refused():
    with pytest.raises(ValueError, match="NaN"):
        srgb_to_munsell([0.1, np.nan, 0.2])
    with pytest.raises(ValueError, match="NaN"):
        Lab_to_munsell([50, np.nan, 0.2])
    with pytest.raises(ValueError, match="last axis"):
        srgb_to_munsell([0.1, 0.2])


@given(arrays(np.float64, (3,), elements=unit))
def test_from_Lab_it_is_the_same(rgb):
    direct, by_Lab = srgb_to_munsell(rgb), Lab_to_munsell(srgb_to_Lab(rgb))
    assert by_Lab[1] == pytest.approx(direct[1], abs=2e-3)
    assert by_Lab[2] == pytest.approx(direct[2], abs=1e-3)


def test_value_of_a_Lab_beyond_srgb_is_that_of_its_own_Y():
    """L* 60 is Y 28.12 (CIE 15): sRGB cannot hold a* 150, but value does not suffer."""
    Y = ((60 + 16) / 116) ** 3 * 100
    assert Lab_to_munsell([60, 150, 0])[1] == pytest.approx(float(munsell_value(Y)), abs=1e-9)


@given(st.floats(0, 10))
def test_value_goes_round(value):
    assert munsell_value(munsell_Y(value).clip(0, 100)) == pytest.approx(value, abs=1e-9)


@pytest.mark.parametrize("Y", [-0.1, 100.1])
def test_a_luminance_factor_outside_is_named(Y):
    with pytest.raises(ValueError, match=str(Y)):
        munsell_value([50, Y])


@pytest.mark.parametrize(
    ("hue", "value", "chroma", "notation"),
    [
        (75.2, 4.1, 8.3, "5.2PB 4.1/8.3"),
        (10.0, 5, 6, "10R 5.0/6.0"),
        (0.0, 5, 6, "10RP 5.0/6.0"),
        (99.97, 5, 6, "10RP 5.0/6.0"),
        (0.04, 5, 6, "10RP 5.0/6.0"),
        (5.0, 5, 6, "5R 5.0/6.0"),
        (92.5, 5, 6, "2.5RP 5.0/6.0"),
        (None, 5.2, 0.0, "N 5.2"),
    ],
)
def test_notation(hue, value, chroma, notation):
    assert Munsell(hue, value, chroma).notation == notation


def test_a_grey_has_no_hue_rather_than_hue_0():
    assert munsell_of(srgb_to_munsell([0.5, 0.5, 0.5])).hue is None
    assert munsell_of(srgb_to_munsell([0.5, 0.5, 0.6])).hue is not None


def test_the_table_is_small():
    assert TABLE_PATH.stat().st_size < 1_000_000


def test_no_reference_library_is_loaded_at_run_time():
    code = (
        "import sys, core.colour; from core.reading.reading import read_colour;"
        "read_colour([50, 10, 10]);"
        "print([m for m in ('colour', 'scipy', 'skimage', 'matplotlib') if m in sys.modules])"
    )
    found = subprocess.run(
        [sys.executable, "-c", code], capture_output=True, text=True, check=True
    ).stdout
    assert found.strip() == "[]"

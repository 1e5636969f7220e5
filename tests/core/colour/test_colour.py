"""sRGB, CIELAB and differences: round trips, shapes, and what the standards print."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra.numpy import arrays

from core.colour import (
    Lab_to_LCh,
    Lab_to_srgb,
    Lab_to_XYZ,
    XYZ_to_Lab,
    XYZ_to_linear,
    delta_E_76,
    delta_E_2000,
    hex_to_srgb,
    in_srgb_gamut,
    linear_to_Oklab,
    linear_to_srgb,
    linear_to_srgb8,
    linear_to_XYZ,
    srgb8_to_linear,
    srgb_to_hex,
    srgb_to_Lab,
    srgb_to_linear,
)
from core.colour.lab import LINEAR_TO_XYZ

unit = st.floats(0, 1, width=32)
colours = arrays(np.float64, (4, 3), elements=unit)
Labs = arrays(np.float64, (3,), elements=st.floats(-120, 120)).map(
    lambda lab: np.array([abs(lab[0]) % 100, lab[1], lab[2]])
)


@given(colours)
def test_encoding_goes_round(rgb):
    assert np.allclose(linear_to_srgb(srgb_to_linear(rgb)), rgb, atol=1e-7)


@given(colours)
def test_Lab_goes_round(rgb):
    assert np.allclose(Lab_to_srgb(srgb_to_Lab(rgb)), rgb, atol=1e-6)


@given(colours)
def test_XYZ_goes_round(rgb):
    assert np.allclose(XYZ_to_linear(linear_to_XYZ(rgb)), rgb, atol=1e-12)


def test_the_matrix_is_the_standards_to_its_digits():
    """IEC 61966-2-1:1999, equation 7, prints four decimals."""
    printed = [[0.4124, 0.3576, 0.1805], [0.2126, 0.7152, 0.0722], [0.0193, 0.1192, 0.9505]]
    assert np.allclose(LINEAR_TO_XYZ, printed, rtol=0, atol=5.1e-5)


def test_white_and_black():
    assert np.allclose(srgb_to_Lab([1, 1, 1]), [100, 0, 0], atol=1e-9)
    assert np.allclose(srgb_to_Lab([0, 0, 0]), [0, 0, 0], atol=1e-9)


def test_middle_of_the_curve():
    """0.5 encoded is 0.2140 of the light: computed by hand from the standard's equation."""
    assert srgb_to_linear(0.5) == pytest.approx(((0.5 + 0.055) / 1.055) ** 2.4)
    assert srgb_to_linear(0.04045) == pytest.approx(0.04045 / 12.92)


def test_light_outside_the_range_continues_the_curve():
    assert linear_to_srgb(-0.5) == pytest.approx(-linear_to_srgb(0.5))
    assert linear_to_srgb(1.2) > 1


def test_8_bit_look_up_is_the_curve():
    codes = np.arange(256, dtype=np.uint8).reshape(16, 16)
    assert np.allclose(srgb8_to_linear(codes), srgb_to_linear(codes / 255.0), atol=1e-7)


def test_a_large_picture_is_looked_up_as_its_codes_are() -> None:
    codes = np.random.default_rng(3).integers(0, 256, (150, 170, 3), dtype=np.uint8)
    table = srgb8_to_linear(np.arange(256, dtype=np.uint8))
    assert np.array_equal(srgb8_to_linear(codes), table[codes])


def test_the_nearest_code_is_the_curves() -> None:
    rng = np.random.default_rng(3)
    linear = np.concatenate([rng.random(40_000), rng.random(40_000) ** 4, rng.normal(size=1000)])
    # Half-way between two codes, and the numbers next to it on either side.
    half = srgb_to_linear((np.arange(255) + 0.5) / 255).astype(np.float32)
    beside = [np.nextafter(half, np.float32(end)) for end in (0, 1)]
    linear = np.concatenate([linear.astype(np.float32), half, *beside])
    curve = np.floor(linear_to_srgb(np.clip(linear, 0, 1)) * 255 + 0.5)
    assert np.array_equal(linear_to_srgb8(linear), curve)


def test_against_scikit_image():
    from skimage.color import rgb2lab

    rgb = np.random.default_rng(1).random((200, 3))
    # Its matrix has six digits and its white five.
    assert np.allclose(srgb_to_Lab(rgb), rgb2lab(rgb), atol=0.02)


def test_Oklab_of_white_and_red():
    """B. Ottosson, 2020: white is (1, 0, 0); sRGB red (0.62796, 0.22486, 0.12585), from memory."""
    assert np.allclose(linear_to_Oklab([1, 1, 1]), [1, 0, 0], atol=1e-6)
    assert np.allclose(linear_to_Oklab([1, 0, 0]), [0.62796, 0.22486, 0.12585], atol=2e-5)


@pytest.mark.parametrize("shape", [(3,), (0, 3), (5, 3), (2, 4, 3)])
def test_shapes_are_kept(shape):
    rgb = np.full(shape, 0.4)
    for convert in (srgb_to_Lab, linear_to_XYZ, XYZ_to_Lab, Lab_to_XYZ, Lab_to_LCh, Lab_to_srgb):
        assert convert(rgb).shape == shape
    assert in_srgb_gamut(rgb).shape == shape[:-1]
    assert delta_E_2000(rgb, rgb).shape == shape[:-1]


def test_nan_stays_nan_and_spoils_nothing_else():
    rgb = np.array([[0.2, 0.3, 0.4], [np.nan, 0.3, 0.4]])
    Lab = srgb_to_Lab(rgb)
    assert np.isfinite(Lab[0]).all()
    assert np.isnan(Lab[1]).any()
    assert not in_srgb_gamut(Lab)[1]
    assert np.isnan(delta_E_2000(Lab[1], Lab[0]))


def test_hue_angle_lies_within_0_and_360():
    assert Lab_to_LCh([50, 10, -0.001])[2] == pytest.approx(359.994, abs=1e-3)
    assert Lab_to_LCh([50, 0, 0]).tolist() == [50, 0, 0]


def test_gamut():
    assert in_srgb_gamut(srgb_to_Lab([1, 0, 0]))
    assert not in_srgb_gamut([50, 120, 0])


@given(Labs, Labs)
def test_difference_is_symmetric_and_finite(Lab1, Lab2):
    one, other = delta_E_2000(Lab1, Lab2), delta_E_2000(Lab2, Lab1)
    assert np.isfinite(one)
    assert one == pytest.approx(other, abs=1e-9)
    assert delta_E_2000(Lab1, Lab1) == 0
    assert delta_E_76(Lab1, Lab2) == pytest.approx(float(np.linalg.norm(Lab1 - Lab2)))


def test_difference_broadcasts():
    many = np.random.default_rng(0).random((5, 1, 3)) * 50
    assert delta_E_2000(many, many.reshape(1, 5, 3)).shape == (5, 5)
    assert delta_E_76(many, many[0, 0]).shape == (5, 1)


def test_hex_goes_round():
    assert srgb_to_hex(hex_to_srgb("#1a2b3c")) == "#1a2b3c"
    assert srgb_to_hex((-0.1, 0.5, 1.2)) == "#0080ff"
    with pytest.raises(ValueError, match="#rrggbb"):
        hex_to_srgb("#fff")

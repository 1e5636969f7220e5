"""Ways to look at a picture: greys of equal value, steps, squint, other eyes."""

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter

from core.colour import (
    linear_to_srgb,
    linear_to_XYZ,
    srgb8_to_linear,
    srgb_to_linear,
    srgb_to_munsell,
)
from core.colour.vision import CVD_MATRICES
from core.photo.views import (
    VALUE_STEPS,
    cvd_view,
    squint_view,
    step_values,
    value_steps_view,
    values_view,
)


@pytest.fixture
def pixels():
    return np.random.default_rng(4).integers(0, 256, (60, 80, 3), dtype=np.uint8)


def value_of(pixels):
    return srgb_to_munsell(pixels / 255.0)[..., 1]


def test_values_view_keeps_each_pixels_value(pixels):
    grey = values_view(pixels)
    assert grey.shape == pixels.shape
    assert grey.dtype == np.uint8
    assert (grey[..., 0] == grey[..., 1]).all()
    assert (grey[..., 0] == grey[..., 2]).all()
    # Half a code of grey is at most 0.03 of a value step.
    assert np.abs(value_of(grey) - value_of(pixels)).max() < 0.03


def test_values_view_is_no_average():
    blue, yellow = values_view(np.array([[0, 0, 255], [255, 255, 0]], dtype=np.uint8))[:, 0]
    assert blue < 85 < 170 < yellow


def test_every_grey_stays_itself():
    grey = np.repeat(np.arange(256, dtype=np.uint8)[:, None], 3, axis=1)
    assert np.array_equal(values_view(grey), grey)


@pytest.mark.parametrize("steps", VALUE_STEPS)
def test_steps(pixels, steps):
    said = value_steps_view(pixels, steps)
    assert len(np.unique(said)) == steps
    assert np.abs(value_of(said) - value_of(pixels)).max() <= 10 / steps / 2 + 0.05


def test_the_five_steps_stand_at_odd_values():
    assert step_values(5) == (1, 3, 5, 7, 9)
    with pytest.raises(ValueError, match="2 steps"):
        value_steps_view(np.zeros((1, 1, 3), np.uint8), 1)


@pytest.mark.parametrize("strength", [0.01, 0.03, 0.08])
def test_squint_is_a_blur_in_linear_light(strength):
    """Against scipy's whole blur of coarse noise: within two codes nearly everywhere."""
    rng = np.random.default_rng(9)
    small = rng.integers(0, 256, (12, 16, 3), dtype=np.uint8)
    pixels = np.kron(small, np.ones((20, 20, 1), dtype=np.uint8))
    sigma = strength * 320
    linear = gaussian_filter(srgb8_to_linear(pixels), (sigma, sigma, 0), mode="nearest")
    whole = linear_to_srgb(linear) * 255
    off = np.abs(squint_view(pixels, strength) - whole)
    assert np.percentile(off, 97) <= 2
    assert off.max() <= 5


@pytest.mark.parametrize("shape", [(1, 1), (1, 50), (50, 1), (37, 53)])
def test_squint_takes_any_size_and_leaves_flat_colour_alone(shape):
    pixels = np.empty((*shape, 3), np.uint8)
    pixels[:] = (200, 120, 30)
    for strength in (0, 0.005, 0.05, 0.5):
        assert np.abs(squint_view(pixels, strength).astype(int) - pixels).max() <= 1


def test_squint_keeps_the_light():
    pixels = np.zeros((100, 100, 3), np.uint8)
    pixels[::2] = 255
    middle = squint_view(pixels, 0.05)[40:60, 40:60] / 255.0
    # Half the light, not half the code.
    assert np.abs(srgb_to_linear(middle) - 0.5).max() < 0.02


@pytest.mark.parametrize("kind", CVD_MATRICES)
def test_other_eyes(pixels, kind):
    exact = (
        linear_to_srgb(np.clip(srgb_to_linear(pixels / 255.0) @ CVD_MATRICES[kind].T, 0, 1)) * 255
    )
    assert np.abs(cvd_view(pixels, kind) - exact).max() <= 1
    white = np.full((1, 1, 3), 255, np.uint8)
    assert (cvd_view(white, kind) >= 254).all()
    with pytest.raises(ValueError, match="kind"):
        cvd_view(pixels, "none")


def test_red_and_green_come_closer_for_deutan_eyes():
    pair = np.array([[[200, 60, 60], [90, 130, 60]]], dtype=np.uint8)
    seen = cvd_view(pair, "deutan").astype(int)
    ratio = (
        np.abs(seen[0, 0] - seen[0, 1]).sum() / np.abs(pair[0, 0].astype(int) - pair[0, 1]).sum()
    )
    assert ratio < 0.5


def test_Y_is_kept_by_the_values_view_of_a_row():
    row = np.array([[10, 200, 30], [250, 10, 200]], dtype=np.uint8)
    Y = linear_to_XYZ(srgb8_to_linear(row))[:, 1]
    Y_grey = linear_to_XYZ(srgb8_to_linear(values_view(row)))[:, 1]
    assert np.allclose(Y, Y_grey, atol=0.004)

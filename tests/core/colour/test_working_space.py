"""The working space of bands and sheets: there and back, fast and exact alike."""

from __future__ import annotations

import numpy as np
from skimage.color import rgb2lab

from core.colour import delta_E_2000, srgb8_to_linear
from core.colour.working_space import (
    W_to_Lab,
    W_to_linear,
    brightness,
    dot,
    dot_planes,
    linear_to_W,
    linear_to_W_planes,
    srgb8_to_W,
    srgb8_to_W_fast,
)

GRID = np.stack(np.meshgrid(*[np.arange(0, 256, 17, dtype=np.uint8)] * 3), axis=-1).reshape(-1, 3)


def test_white_is_a_hundred_units_above_black() -> None:
    assert np.allclose(linear_to_W([[1, 1, 1], [0, 0, 0]]), [[100, 0, 0], [0, 0, 0]], atol=1e-4)


def test_there_and_back() -> None:
    linear = srgb8_to_linear(GRID)
    assert np.allclose(W_to_linear(srgb8_to_W(GRID)), linear, atol=1e-6)


def test_its_colours_are_those_of_another_library() -> None:
    """scikit-image's CIELAB, D65."""
    assert np.abs(delta_E_2000(W_to_Lab(srgb8_to_W(GRID)), rgb2lab(GRID))).max() < 0.01


def test_the_table_is_as_good_as_a_cube_root() -> None:
    fast = srgb8_to_W_fast(GRID)
    assert fast.dtype == np.float32
    assert delta_E_2000(W_to_Lab(fast), W_to_Lab(srgb8_to_W(GRID))).max() < 0.03


def test_products_are_summed_over_the_channels() -> None:
    one, other = np.random.default_rng(8).normal(size=(2, 5, 7, 3))
    assert np.allclose(dot(one, other), (one * other).sum(-1), rtol=1e-15)
    assert np.allclose(dot(one, other[:, :1]), (one * other[:, :1]).sum(-1), rtol=1e-15)
    assert np.array_equal(dot(one, one), (one**2).sum(-1))
    planes = (np.moveaxis(each, -1, 0) for each in (one, other))
    assert np.array_equal(dot_planes(*planes), dot(one, other))


def test_a_large_picture_is_converted_as_its_pixels_are() -> None:
    linear = np.random.default_rng(9).random((150, 170, 3))
    rows = np.stack([linear_to_W(row) for row in linear])
    assert np.allclose(linear_to_W(linear), rows, rtol=1e-12, atol=1e-12)
    planes = linear_to_W_planes(linear)
    assert planes.flags.c_contiguous
    assert np.allclose(np.moveaxis(planes, 0, -1), rows, rtol=1e-12, atol=1e-12)


def test_brightness_is_the_mean_of_the_channels() -> None:
    picture = np.random.default_rng(9).random((12, 17, 3), dtype=np.float32)
    assert brightness(picture).dtype == np.float32
    assert np.allclose(brightness(picture), picture.mean(axis=2), rtol=1e-6)

from __future__ import annotations

import numpy as np

from core.photo.soft_mask import LONGEST, soft_mask


def hill(width: int = 600) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """A light sky over a dark hill: the picture, its true sky, and a mask in steps of 10 pixels."""
    y, x = np.mgrid[0:400, 0:width]
    truth = y < 250 + 40 * np.sin(x / 60)
    noise = np.random.default_rng(3).integers(-4, 5, (*truth.shape, 3))
    pixels = (np.where(truth[..., None], (150, 170, 220), (40, 44, 50)) + noise).astype(np.uint8)
    blocks = truth.reshape(40, 10, width // 10, 10).all(axis=(1, 3))  # sky where all of it is
    return pixels, truth, blocks.repeat(10, 0).repeat(10, 1)


def test_a_stepped_mask_comes_no_further_from_the_true_edge() -> None:
    pixels, truth, stepped = hill()
    soft = soft_mask(stepped, pixels)
    assert soft.shape == truth.shape
    assert soft.min() >= 0
    assert soft.max() <= 1
    before = np.abs(stepped - truth.astype(float)).mean()
    assert np.abs(soft - truth).mean() <= before


def test_no_step_is_left_and_far_from_the_border_nothing_changes() -> None:
    pixels, _, stepped = hill()
    soft = soft_mask(stepped, pixels)
    # In a flat picture the border is feathered alone.
    flat = soft_mask(stepped, np.full_like(pixels, 128))
    for axis in (0, 1):
        assert np.abs(np.diff(stepped.astype(float), axis=axis)).max() == 1
        assert np.abs(np.diff(flat, axis=axis)).max() < 0.4
    assert (soft[:120] == 1).all()
    assert (soft[360:] == 0).all()


def test_a_large_mask_becomes_no_larger_than_a_screen_needs() -> None:
    mask = np.zeros((900, 3000), bool)
    mask[:400] = True
    soft = soft_mask(mask, np.zeros((900, 3000, 3), np.uint8))
    assert max(soft.shape) <= LONGEST
    assert soft[0, 0] == 1
    assert soft[-1, 0] == 0

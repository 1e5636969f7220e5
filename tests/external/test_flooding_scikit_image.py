"""Our flooding against scikit-image's watershed (BSD-3-Clause)."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.ndimage import gaussian_filter
from skimage.segmentation import watershed

from core.sheet.light.flooding import flood


@pytest.mark.parametrize("seed", range(12))
def test_it_floods_as_scikit_image_does(seed):
    rng = np.random.default_rng(seed)
    heights = gaussian_filter(rng.random((60, 80)), 3)
    markers = np.zeros(heights.shape, np.int32)
    markers[rng.integers(0, 60, 6), rng.integers(0, 80, 6)] = np.arange(1, 7)
    assert np.array_equal(flood(heights, markers), watershed(heights, markers))


def test_a_ridge_divides_two_waters():
    heights = np.zeros((9, 11))
    heights[:, 5] = 1.0
    markers = np.zeros(heights.shape, np.int32)
    markers[4, 0], markers[4, 10] = 1, 2
    found = flood(heights, markers)
    assert (found[:, :5] == 1).all()
    assert (found[:, 6:] == 2).all()


def test_what_cannot_be_flooded_is_refused():
    with pytest.raises(ValueError, match="no marker"):
        flood(np.zeros((3, 3)), np.zeros((3, 3), np.int32))
    with pytest.raises(ValueError, match="shapes differ"):
        flood(np.zeros((3, 3)), np.zeros((3, 4), np.int32))

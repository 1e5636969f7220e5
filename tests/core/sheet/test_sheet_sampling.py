"""Colours between pixels, beside scipy's own interpolation."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.ndimage import map_coordinates

from core.colour.working_space import averaged
from core.sheet.sampling import sampled


@pytest.mark.parametrize("dtype", [np.float32, np.float64])
@given(height=st.integers(1, 9), width=st.integers(1, 9), seed=st.integers(0, 99))
def test_all_channels_are_read_as_scipy_reads_each(dtype, height, width, seed):
    rng = np.random.default_rng(seed)
    picture = rng.random((height, width, 3)).astype(dtype)
    at = rng.uniform(-3, 12, (5, 4, 2))
    at[0] = np.rint(at[0])
    there = [at[..., 1], at[..., 0]]
    scipys = [
        map_coordinates(picture[..., c].astype(float), there, order=1, mode="nearest")
        for c in range(3)
    ]
    found = sampled(picture, at)
    assert found.dtype == dtype
    assert found == pytest.approx(np.stack(scipys, -1), abs=1e-6)


def test_blocks_are_averaged_and_what_fills_none_is_left_out():
    rng = np.random.default_rng(1)
    picture = rng.random((13, 11, 3)).astype(np.float32)
    blocks = picture[:12, :8].reshape(3, 4, 2, 4, 3).mean(axis=(1, 3))
    assert averaged(picture, 4) == pytest.approx(blocks, abs=1e-6)

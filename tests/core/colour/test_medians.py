"""Fast medians: numpy's are the measure."""

from __future__ import annotations

import numpy as np
import pytest

from core.colour.medians import channels_first, medians, medians_of_blocks, medians_of_known

RNG = np.random.default_rng(6)


@pytest.mark.parametrize("count", [1, 2, 3, 10, 31, 400, 500, 501])
@pytest.mark.parametrize("dtype", [np.float32, np.float64])
def test_medians_are_numpys(count, dtype) -> None:
    values = RNG.normal(size=(7, 3, count)).astype(dtype)
    before = values.copy()
    assert np.array_equal(medians(values), np.median(values, axis=-1))
    assert medians(values).dtype == dtype
    assert np.array_equal(values, before)


@pytest.mark.parametrize("count", [1, 2, 9, 24])
@pytest.mark.parametrize("unknown", [0.0, 0.3, 0.8])
def test_unknown_values_are_left_out_as_by_numpy(count, unknown) -> None:
    values = RNG.normal(size=(50, count))
    values[RNG.random(values.shape) < unknown] = np.nan
    values[0] = np.nan
    known = np.isfinite(values).any(axis=-1)
    found = medians_of_known(values)
    assert np.array_equal(np.isfinite(found), known)
    assert np.array_equal(found[known], np.nanmedian(values[known], axis=-1))


def test_blocks_of_any_width_have_their_medians() -> None:
    picture = RNG.normal(size=(5, 40, 3)).astype(np.float32)
    cuts = np.array([2, 9, 15, 22, 40])
    found = medians_of_blocks(picture, cuts)
    assert found.dtype == np.float32
    for block, first, last in zip(found, cuts, cuts[1:], strict=False):
        assert np.array_equal(block, np.median(picture[:, first:last].reshape(-1, 3), axis=0))


def test_channels_come_first() -> None:
    picture = RNG.normal(size=(4, 5, 3))
    planes = channels_first(picture)
    assert planes.flags.c_contiguous
    assert all(np.array_equal(planes[c], picture[..., c]) for c in range(3))

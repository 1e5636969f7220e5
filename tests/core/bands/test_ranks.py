"""Medians, quantiles and skylines against NumPy and against trying everything."""

from __future__ import annotations

from itertools import product

import numpy as np
import pytest

from core.bands.profile import _median_filter
from core.bands.ranks import median, quantile, row_medians
from core.bands.skyline import best_skylines


@pytest.mark.parametrize("count", [1, 2, 3, 10, 11])
def test_ranks_are_numpys(count):
    rng = np.random.default_rng(count)
    values = rng.normal(size=(count, 3)).round(1)  # rounded: with ties
    np.testing.assert_array_equal(median(values), np.median(values, axis=0))
    for share in (0.0, 0.1, 0.3, 0.7, 0.9, 1.0):
        assert quantile(values[:, 0], share) == pytest.approx(np.quantile(values[:, 0], share))


def test_row_medians_leave_out_what_is_masked():
    rng = np.random.default_rng(5)
    values = rng.normal(size=(20, 9, 2)).astype(np.float32)
    mask = rng.random((20, 9)) < 0.4
    mask[3] = False
    holes = np.where(mask[..., None], values, np.nan)[mask.any(axis=1)]
    expected = np.nanmedian(holes, axis=1)
    np.testing.assert_array_equal(row_medians(values, mask)[mask.any(axis=1)], expected)
    assert (row_medians(values, mask)[3] == 0).all()


@pytest.mark.parametrize(("count", "reach"), [(1, 1), (4, 3), (7, 3), (30, 2)])
def test_a_running_median_uses_what_there_is_at_the_ends(count, reach):
    values = np.random.default_rng(count).normal(size=(count, 3))
    expected = [
        np.median(values[max(0, at - reach) : at + reach + 1], axis=0) for at in range(count)
    ]
    np.testing.assert_allclose(_median_filter(values, reach), expected)


@pytest.mark.parametrize("stiffness", [0.0, 0.5, 3.0])
def test_no_skyline_is_better(stiffness):
    rows, columns, count = 3, 4, 5
    rng = np.random.default_rng(7)
    gains = rng.normal(size=(count, rows, columns)).astype(np.float32)
    edges = rng.normal(size=(count, rows + 1, columns)).astype(np.float32)

    def worth(gain, edge, skyline):
        sky = np.arange(rows)[:, None] < skyline
        signed = np.where(sky, gain, -gain).sum()
        jumps = np.abs(np.diff(skyline)).sum()
        return signed + edge[skyline, np.arange(columns)].sum() - stiffness * jumps

    drawn = best_skylines(gains, edges, stiffness=stiffness)
    for gain, edge, skyline in zip(gains, edges, drawn, strict=True):
        every = (np.array(one) for one in product(range(rows + 1), repeat=columns))
        best = max(worth(gain, edge, one) for one in every)
        assert worth(gain, edge, skyline) == pytest.approx(best, abs=1e-4)

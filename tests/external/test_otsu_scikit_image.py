"""Our Otsu threshold against scikit-image's (BSD-3-Clause), on pictures of several kinds."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from hypothesis.extra import numpy as arrays
from skimage.filters import threshold_otsu

from core.sheet.find.otsu import otsu_threshold


def paper_on_table(seed: int) -> np.ndarray:
    rng = np.random.default_rng(seed)
    picture = rng.normal(rng.uniform(0.1, 0.5), rng.uniform(0.01, 0.1), (90, 120))
    picture[20:70, 30:100] = rng.normal(rng.uniform(0.6, 0.9), 0.03, (50, 70))
    return picture


@pytest.mark.parametrize("seed", range(20))
def test_the_threshold_is_that_of_scikit_image(seed):
    picture = paper_on_table(seed)
    assert otsu_threshold(picture) == pytest.approx(threshold_otsu(picture), abs=1e-12)


@given(arrays.arrays(np.float64, (6, 7), elements=st.floats(0, 1, width=16)))
def test_any_picture_is_parted_as_well(picture):
    """Where two thresholds part a picture equally well either may be given."""
    if np.ptp(picture) < 1e-6:
        return

    def between(threshold: float) -> float:
        high = picture > threshold
        if high.all() or not high.any():
            return 0.0
        share = high.mean()
        return float(share * (1 - share) * (picture[high].mean() - picture[~high].mean()) ** 2)

    ours, theirs = otsu_threshold(picture), float(threshold_otsu(picture))
    assert between(ours) == pytest.approx(between(theirs), rel=1e-9)


def test_a_picture_of_one_value_is_refused():
    with pytest.raises(ValueError, match="one value"):
        otsu_threshold(np.ones((3, 3)))

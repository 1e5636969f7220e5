"""Paint at each place of a sheet: brought to one height without losing its edges."""

from __future__ import annotations

import numpy as np
import pytest
from scipy.ndimage import zoom

from core.sheet.painted.density import density_map

SIZES = ((512, 640), (613, 811), (300, 211), (256, 300), (255, 97), (64, 80), (700, 933), (16, 16))


@pytest.mark.parametrize("size", SIZES)
def test_an_even_wash_is_even_to_its_last_column(size) -> None:
    found = density_map(np.full((*size, 3), 0.5, np.float32), 256)
    assert len(found) == 256
    assert found.shape[1] == pytest.approx(256 * size[1] / size[0], rel=0.02)
    assert found == pytest.approx(-np.log(0.5), abs=1e-6)


def test_it_is_linear_between_the_pixels_as_scipy_has_it() -> None:
    picture = np.random.default_rng(2).uniform(0.1, 0.9, (80, 100, 3)).astype(np.float32)
    scipys = -np.log(zoom(picture, (3.2, 3.2, 1), order=1, mode="nearest"))
    assert density_map(picture, 256) == pytest.approx(scipys, abs=1e-5)

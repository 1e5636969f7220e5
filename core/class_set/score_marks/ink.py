"""How dark each place is against the paper around it: shadows and dim lamps cancel."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.class_set.score_marks.form import PX_PER_MM

Floats = NDArray[np.float32]

PAPER_MM = 10.0
"""Bare paper shows within so many millimetres of any mark: a filled box is 7.6 mm high. A wide
maximum took shadows for marks; a closing of this size does not."""

_COARSE = 3
"""The paper is looked at in every third pixel: it changes slowly."""

_DECODED = np.linspace(0.0, 1.0, 256, dtype=np.float32) ** np.float32(2.2)
"""Roughly back to light; only ratios to the paper nearby are used, so the exact curve matters
little."""


def light_of(pixels: NDArray[np.uint8]) -> Floats:
    """The picture's light, 0 to 1, as the mean of its channels: pens of any colour show in it.

    Parameters
    ----------
    pixels : (h, w, 3) uint8
    """
    total = _DECODED[pixels[..., 0]]
    total += _DECODED[pixels[..., 1]]
    total += _DECODED[pixels[..., 2]]
    return total / np.float32(3.0)


def ink_of(light: Floats) -> Floats:
    """What paint or pen took of the paper's light, 0 (bare) to 1 (black).

    Parameters
    ----------
    light : (h, w) float32
        A straightened part of the page, `PX_PER_MM` pixels a millimetre.
    """
    # deferred: start-up time
    from scipy.ndimage import (
        gaussian_filter,
        map_coordinates,
        maximum_filter,
        minimum_filter,
        uniform_filter,
    )

    small = uniform_filter(light, _COARSE)[::_COARSE, ::_COARSE]
    side = int(PAPER_MM * PX_PER_MM / _COARSE) | 1
    paper = minimum_filter(maximum_filter(small, side), side)
    paper = gaussian_filter(paper, 1.0 * PX_PER_MM / _COARSE)
    rows = np.arange(light.shape[0], dtype=np.float32)[:, None] / _COARSE
    columns = np.arange(light.shape[1], dtype=np.float32)[None, :] / _COARSE
    grid = np.broadcast_arrays(rows, columns)
    full = map_coordinates(paper, grid, order=1, mode="nearest")
    return np.asarray(np.clip(1 - light / np.maximum(full, 1e-3), 0, 1), dtype=np.float32)

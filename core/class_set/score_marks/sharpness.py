"""How sharp a row's picture is, told by its own printed lines: a blurred mark may be anything."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.class_set.score_marks.form import PX_PER_MM, ScoreRow
from core.class_set.score_marks.settle import RIM, boxes_px, outlines_of

Floats = NDArray[np.float32]

_AROUND_MM = 0.5
"""A line's darkest and its steepest place are looked for so far from where it should be."""

_INSIDE_MM = 1.0
"""The numbers within the boxes are no lines."""

_SHARE = 25
"""The percentile: a hand that moved blurs the lines across its way alone, which are a third."""


def sharpness(ink: Floats, row: ScoreRow) -> float:
    """How steep the outlines' sides are for how dark they are, a millimetre.

    Parameters
    ----------
    ink : (h, w) float32
        A settled row's.
    row : ScoreRow

    Returns
    -------
    float
        A line whose darkness falls off as a normal curve of spread s mm has .6 / s.
    """
    from scipy.ndimage import gaussian_gradient_magnitude, maximum_filter  # deferred: start-up

    lines = _lines(row)
    side = 2 * round(_AROUND_MM * PX_PER_MM) + 1
    steep = maximum_filter(gaussian_gradient_magnitude(ink, 1.0), side)[lines] * PX_PER_MM
    dark = maximum_filter(ink, side)[lines]
    return float(np.percentile(steep / np.maximum(dark, 1e-3), _SHARE))


def _lines(row: ScoreRow) -> NDArray[np.bool_]:
    """Where the boxes' outlines are printed."""
    outlines = outlines_of(row)
    rims = np.zeros(outlines.shape, bool)
    for more, within in ((RIM, True), (-_INSIDE_MM, False)):
        for box in boxes_px(row, more):
            left, top, right, bottom = (max(0, round(each)) for each in box)
            rims[top:bottom, left:right] = within
    return np.asarray((outlines > 0.3) & rims)

"""What strokes and clouds a wash has anyway, so that an edge is only called one when it stands out.

A wash laid with a dry brush, or gone over again, is full of small steps. None of them is a hard
edge to a teacher, who would call the wash uneven.
"""

from __future__ import annotations

import numpy as np

from core.colour.working_space import Floats
from core.sheet.painted.courses import MARGIN, sharp_step

_WIDTH = 0.008  # 10-90% width of the steps compared, a share of the height
_PEAKS_APART = 0.012
_OWN = 0.025  # of the height: what belongs to the edge itself
_FEW = 4


def usual_step(strips: Floats, first: int, last: int, at: float) -> float:
    """How large the steps are that a sheet shows elsewhere, working units.

    Parameters
    ----------
    strips : (STRIPS, h, 3) float64
        From `courses.strip_profiles`.
    first, last : int
        The strips an edge runs through.
    at : float
        Its height, a share of the sheet's.

    Returns
    -------
    float
        The median of the peaks of the sharp step that fits at each row, away from the edge; 0
        where there is too little to compare with.
    """
    from scipy.ndimage import maximum_filter1d  # deferred: start-up time

    sizes = sharp_step(strips[first : last + 1].mean(axis=0), _WIDTH)
    h = len(sizes)
    peaks = np.flatnonzero(sizes == maximum_filter1d(sizes, 2 * round(_PEAKS_APART * h) + 1))
    y = peaks / h
    others = peaks[(y > MARGIN) & (y < 1 - MARGIN) & (np.abs(y - at) > _OWN)]
    return float(np.median(sizes[others])) if len(others) >= _FEW else 0.0

"""Otsu's threshold: the value that separates a picture's bright part from its dark part best."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

_BINS = 256


def otsu_threshold(picture: NDArray[np.floating]) -> float:
    """The threshold with the largest variance between what is above it and what is not.

    Parameters
    ----------
    picture : ndarray, any shape, float
        At least two different values.

    Returns
    -------
    float
        In the picture's own unit: the middle of one of 256 equal bins of its range.

    Raises
    ------
    ValueError
        The picture is of one value only.

    Notes
    -----
    Source: N. Otsu, IEEE Trans. SMC 9 (1979), 62-66, eq. 18. It is here so that a build to hand out
    need not carry scikit-image for one function; the tests compare it with scikit-image's.
    """
    counts, edges = np.histogram(picture, bins=_BINS)
    middles = (edges[:-1] + edges[1:]) / 2
    if np.count_nonzero(counts) < 2:
        raise ValueError("a picture of one value has no threshold")
    below = np.cumsum(counts)[:-1]
    above = below[-1] + counts[-1] - below
    total = np.cumsum(counts * middles)
    gap = total[:-1] / np.maximum(below, 1) - (total[-1] - total[:-1]) / np.maximum(above, 1)
    return float(middles[np.argmax(below * above * gap**2)])

"""Medians and quantiles as the search for sky and bands needs them.

NumPy's own `median` and `quantile` bring in `numpy.ma` at their first call: 16 ms of every start.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import ArrayLike, NDArray

Bools = NDArray[np.bool_]


def median(values: ArrayLike, axis: int = 0) -> NDArray[np.floating]:
    """The middle value along an axis, or the mean of the two in the middle; no NaN in `values`."""
    ordered = np.moveaxis(np.sort(values, axis=axis), axis, 0)
    count = len(ordered)
    middle: NDArray[np.floating] = (ordered[(count - 1) // 2] + ordered[count // 2]) / 2
    return middle


def quantile(values: ArrayLike, share: float) -> float:
    """The value below which a share of `values`, shape (n,), lies; between two, in proportion.

    As NumPy's own `quantile` with its usual method.
    """
    ordered = np.sort(np.asarray(values, dtype=np.float64))
    return float(np.interp(share * (len(ordered) - 1), np.arange(len(ordered)), ordered))


def row_medians(values: NDArray[np.float32], mask: Bools) -> NDArray[np.float32]:
    """Median of each row over the mask.

    Parameters
    ----------
    values : ndarray, shape (rows, columns, d)
    mask : ndarray, shape (rows, columns), bool

    Returns
    -------
    ndarray, shape (rows, d)
        0 for a row without any pixel in the mask.
    """
    rows, columns, d = values.shape
    counts = mask.sum(axis=1)
    low, high = np.maximum(counts - 1, 0) // 2, np.minimum(counts // 2, columns - 1)
    medians = np.empty((rows, d), dtype=np.float32)
    at = np.arange(rows)
    for channel in range(d):
        plane = np.where(mask, values[..., channel], np.float32(np.inf))
        plane.sort(axis=1)
        medians[:, channel] = (plane[at, low] + plane[at, high]) / 2
    medians[counts == 0] = 0.0
    return medians

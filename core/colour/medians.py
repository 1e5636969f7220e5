"""Medians of many short rows at once, several times as fast as numpy's own."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats


_SHORT = 400


def medians(values: NDArray[np.float64]) -> Floats:
    """`numpy.median` over the last axis of finite `values` (..., n), n at least 1.

    numpy looks for the two middle numbers and for NaN in one call, which costs four times what
    one middle number and the largest below it do. Short rows are sorted sooner than parted.
    """
    n = values.shape[-1]
    half = n // 2
    short = n <= _SHORT
    ordered = np.sort(values, axis=-1) if short else np.partition(values, half, axis=-1)
    middle = ordered[..., half]
    if n % 2 == 0:
        below = ordered[..., half - 1] if short else ordered[..., :half].max(axis=-1)
        middle = (middle + below) / 2
    return np.asarray(middle)


def medians_of_known(values: NDArray[np.float64]) -> Floats:
    """`numpy.nanmedian` over the last axis of `values` (..., n); NaN where nothing is known."""
    ordered = np.sort(values, axis=-1)  # puts NaN last
    count = np.isfinite(values).sum(axis=-1, keepdims=True)
    two = np.concatenate([np.maximum(count - 1, 0) // 2, count // 2], axis=-1)
    two = np.minimum(two, values.shape[-1] - 1)
    return np.asarray(np.take_along_axis(ordered, two, axis=-1).mean(axis=-1))


def channels_first(picture: NDArray[np.float64]) -> NDArray[np.float64]:
    """A picture (h, w, c) as (c, h, w), each channel in order in memory."""
    return np.ascontiguousarray(np.moveaxis(picture, -1, 0))

"""Medians of many short rows at once, several times as fast as numpy's own."""

from __future__ import annotations

from typing import Any, TypeVar

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats

_SHORT = 400

Number = TypeVar("Number", np.float32, np.float64)


def medians(values: NDArray[Number]) -> NDArray[Number]:
    """`numpy.median` over the last axis of finite `values` (..., n), n at least 1.

    numpy looks for the two middle numbers and for NaN in one call, which costs four times what
    one middle number and the largest below it do. Short rows are sorted sooner than parted.
    """
    n = values.shape[-1]
    half = n // 2
    short = n <= _SHORT
    ordered = np.sort(values, axis=-1) if short else np.partition(values, half, axis=-1)
    middle: NDArray[Any] = ordered[..., half]
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


def medians_of_blocks(picture: NDArray[Number], cuts: NDArray[np.int_]) -> NDArray[Number]:
    """Medians (n, c) of the blocks of a picture (h, w, c) between columns `cuts` (n + 1,), which
    ascend."""
    found = np.empty((len(cuts) - 1, picture.shape[2]), dtype=picture.dtype)
    widths = np.diff(cuts)
    for width in np.unique(widths):
        which = np.flatnonzero(widths == width)
        blocks = picture[:, cuts[which, None] + np.arange(width)]
        found[which] = medians(blocks.transpose(1, 3, 0, 2).reshape(len(which), len(found[0]), -1))
    return found


def channels_first(picture: NDArray[Number]) -> NDArray[Number]:
    """A picture (h, w, c) as (c, h, w), each channel in order in memory."""
    return np.ascontiguousarray(np.moveaxis(picture, -1, 0))

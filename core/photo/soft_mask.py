"""A mask's hard steps made to follow the edges of the picture it lies on."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

LONGEST = 1200
"""Pixels of the longer side of what is given: enough for a screen."""

_RADIUS = 0.009
_EPS = 4e-4


def soft_mask(mask: NDArray[np.bool_], pixels: NDArray[np.uint8]) -> NDArray[np.float32]:
    """How much of each place belongs to the mask, its border feathered to the picture's own.

    Parameters
    ----------
    mask : ndarray, shape (h, w), bool
    pixels : ndarray, shape (h, w, 3), uint8
        The picture, encoded sRGB.

    Returns
    -------
    ndarray, shape (n, m), float32
        0..1, of the same proportions, at most `LONGEST` pixels long.

    Notes
    -----
    A guided filter (K. He, J. Sun, X. Tang, Guided Image Filtering, ECCV 2010), with the mean of
    the three channels as guide.
    """
    from scipy.ndimage import uniform_filter  # deferred: start-up time

    block = -(-max(mask.shape) // LONGEST)
    share = mask[::block, ::block].astype(np.float32)
    guide = pixels[::block, ::block].mean(axis=2, dtype=np.float32) / np.float32(255)
    size = 2 * max(round(_RADIUS * max(share.shape)), 1) + 1

    def mean(values: NDArray[np.float32]) -> NDArray[np.float32]:
        return np.asarray(uniform_filter(values, size, mode="nearest"), np.float32)

    guide_mean, share_mean = mean(guide), mean(share)
    spread = mean(guide * guide) - guide_mean * guide_mean + np.float32(_EPS)
    slope = np.asarray((mean(guide * share) - guide_mean * share_mean) / spread, np.float32)
    rest = share_mean - slope * guide_mean
    soft = mean(slope) * guide + mean(rest)
    # Far from its border a mask is what it was.
    soft[share_mean >= 1 - 1e-5] = 1.0
    soft[share_mean <= 1e-5] = 0.0
    return np.asarray(np.clip(soft, 0.0, 1.0), np.float32)

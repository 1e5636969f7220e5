"""The white paper of a picture: where it is, and how bright and how coloured the light on it was.

A smooth surface through the paper, in the logarithm of linear light, is divided out of the picture,
so that bare paper is 1 everywhere. It is robust: what does not agree with it, strokes, pencil, a
table, is left out of the next round.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.srgb import srgb8_to_linear
from core.photo import Photo

Floats = NDArray[np.float64]
Floats32 = NDArray[np.float32]
Bools = NDArray[np.bool_]

MOST_PIXELS = 260_000
"""What strokes are looked for in; their colours are read from the same."""

OVER_EXPOSED = 0.02
"""Share of the paper at its brightest level above which the white is not known."""

_LEAST_PAPER = 0.08  # of the picture
_OFF = 0.07  # natural log: paper is so near to its surface
_TINT = 0.05
_WHITEST_TINT, _ONE_LIGHT = 0.6, 0.3
"""Natural log a white paper's light is tinted at most in a photo, and by how much that changes
across it: beyond either it is a wall, a sky, a table."""

_ROUNDS = 6
_FIT_PIXELS = 6000


@dataclass(frozen=True, eq=False)
class Paper:
    """A picture with its light undone.

    Attributes
    ----------
    relative : (h, w, 3) float32
        Linear light over that of bare paper; the picture as it is where no paper was found.
    bare : (h, w) bool or None
        The paper's pixels; None where no white paper was found.
    over_exposed : bool
        So much of the paper is at the camera's end that its white is not known.
    """

    relative: Floats32
    bare: Bools | None
    over_exposed: bool


def find_paper(photo: Photo) -> Paper:
    """The white paper of a picture.

    Parameters
    ----------
    photo : Photo
        Thinned to at most `MOST_PIXELS`.
    """
    pixels = _smaller(photo.pixels)
    linear = srgb8_to_linear(pixels).astype(np.float32)
    logs = np.log(np.maximum(linear, 2e-4))
    y, x = np.mgrid[-1 : 1 : linear.shape[0] * 1j, -1 : 1 : linear.shape[1] * 1j].astype(np.float32)
    terms = np.stack([np.ones_like(x), x, y, x * x, x * y, y * y], -1)
    bare = _brightest(logs)
    surface = np.zeros_like(logs)
    for _ in range(_ROUNDS):
        if bare.mean() < _LEAST_PAPER:
            return Paper(linear, None, False)
        surface = _surface(terms, logs, bare)
        off = logs - surface
        mean = off.mean(-1)
        bare = (np.abs(mean) < _OFF) & (np.abs(off - mean[..., None]).max(-1) < _TINT)
    bare = _largest(bare)
    if bare.mean() < _LEAST_PAPER:
        return Paper(linear, None, False)
    light = _surface(terms, logs, bare)
    tint = (light - light.mean(-1, keepdims=True))[bare]
    if np.abs(tint).max() > _WHITEST_TINT or np.ptp(tint, axis=0).max() > _ONE_LIGHT:
        return Paper(linear, None, False)
    ends = (pixels[bare].min(-1) >= 254).mean() > OVER_EXPOSED
    relative: Floats32 = np.exp(logs - light).astype(np.float32)
    return Paper(relative, bare, bool(ends))


def _smaller(pixels: NDArray[np.uint8]) -> NDArray[np.uint8]:
    """Every n-th pixel after a mean of n by n, so that grain and noise are evened out."""
    height, width = pixels.shape[:2]
    n = max(1, int(np.ceil(np.sqrt(height * width / MOST_PIXELS))))
    if n == 1:
        return pixels
    height, width = height // n * n, width // n * n
    blocks = pixels[:height, :width].reshape(height // n, n, width // n, n, 3)
    small: NDArray[np.uint8] = np.round(blocks.mean(axis=(1, 3))).astype(np.uint8)
    return small


def _brightest(logs: Floats32) -> Bools:
    """A first guess at the paper: what is bright, and of the tint most of the bright has."""
    mean = logs.mean(-1)
    bright = mean > np.percentile(mean, 92) - 0.45
    tint = logs - mean[..., None]
    usual = np.median(tint[bright], axis=0)
    guess: Bools = bright & (np.abs(tint - usual).max(-1) < 0.15)
    return guess


def _surface(terms: Floats32, logs: Floats32, bare: Bools) -> Floats32:
    """A quadratic surface through the paper for each channel, pulled by its brighter side."""
    rows = np.flatnonzero(bare)
    rows = rows[:: max(1, len(rows) // _FIT_PIXELS)]
    design = terms.reshape(-1, 6)[rows].astype(np.float64)
    values = logs.reshape(-1, 3)[rows].astype(np.float64)
    weight = np.ones(len(rows))
    fit: Floats = np.zeros((6, 3))
    for _ in range(6):
        root = np.sqrt(weight)[:, None]
        fit = np.asarray(np.linalg.lstsq(design * root, values * root, rcond=None)[0])
        rest = (values - design @ fit).mean(-1)
        spread = 1.4826 * float(np.median(np.abs(rest))) + 1e-3
        # Thin washes are darker than paper, nothing is lighter: what is below counts less.
        weight = 1 / (1 + (rest / np.where(rest < 0, 1.5 * spread, 3 * spread)) ** 2)
    return (terms @ fit.astype(np.float32)).astype(np.float32)


def _largest(mask: Bools) -> Bools:
    from scipy.ndimage import binary_opening, label  # deferred: start-up time

    parts, count = label(binary_opening(mask, iterations=1))
    if count == 0:
        return np.zeros_like(mask)
    sizes = np.bincount(parts.ravel())
    sizes[0] = 0
    return np.asarray(parts == sizes.argmax())

"""What a photo shows where two bands meet, for comparison with what the paints will do."""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from core.colour import XYZ_to_Lab, linear_to_XYZ, srgb8_to_linear
from core.paint.mixture.mix import Triple

Transition = Sequence[Triple]
"""Colours of the photo, CIELAB, sampled downwards across the line below a band."""

Transitions = Sequence[Transition | None]
"""One for every line between two bands, from the top; None where nothing is known."""

STRIPS = 9
MOST_COLUMNS = 256


def sample_transitions(
    pixels: NDArray[np.uint8],
    edges: Sequence[float],
    counts: NDArray[np.bool_] | None = None,
) -> tuple[tuple[Triple, ...] | None, ...]:
    """Colours across every line between two bands.

    Parameters
    ----------
    pixels : ndarray, shape (h, w, 3), uint8
        sRGB.
    edges : sequence of float
        Top of the first band, the lines, bottom of the last; fractions of the height.
    counts : ndarray, shape (h, w), bool, optional
        Pixels that are sky and opaque; all without it.

    Returns
    -------
    tuple, one entry for every line between two bands
        `STRIPS` CIELAB colours downwards, from the middle of the upper band to the middle of
        the lower one, each the median of a strip of rows; None where no pixel counts.
    """
    height, width = pixels.shape[:2]
    columns = slice(None, None, max(1, width // MOST_COLUMNS))
    middles = [(top + bottom) / 2 for top, bottom in pairwise(edges)]
    found: list[tuple[Triple, ...] | None] = []
    for start, end in pairwise(middles):
        bounds = np.clip(np.round(np.linspace(start, end, STRIPS + 1) * height), 0, height)
        strip: list[Triple] = []
        for top, bottom in zip(bounds[:-1].astype(int), bounds[1:].astype(int), strict=True):
            rows = slice(min(top, height - 1), max(bottom, top + 1))
            block = pixels[rows, columns].reshape(-1, 3)
            if counts is not None:
                block = block[counts[rows, columns].ravel()]
            if len(block):
                Lab = XYZ_to_Lab(linear_to_XYZ(srgb8_to_linear(block)))
                L, a, b = np.median(Lab, axis=0).tolist()
                strip.append((L, a, b))
        found.append(tuple(strip) if strip else None)
    return tuple(found)

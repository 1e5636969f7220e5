"""What is likely of a paint before its card is seen: as the measured paints differ from each other.

theta = (log K, log S), 82 numbers, is a mean and a few directions: those along which the measured
paints vary, mixed with smooth spectra of the same spread, since twelve paints are not all there
are. One direction more makes all of it stronger or weaker: tinting strength is free.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from core.paint.pigment.measured import measured_paints
from core.paint.pigment.pigments import Floats, Pigments

PRIOR = 1
"""Version of what follows; kept with every fitted paint."""

BANDS = 41
LEFT_OUT = ("chinese_white",)
"""A white says nothing of how colours vary."""

EMPIRICAL = 0.6
"""How much the measured paints' own directions count; nine ways of making a prior differ little."""

SMOOTH_K_NM, SMOOTH_S_NM = 50.0, 80.0
DIRECTIONS = 14


@dataclass(frozen=True, eq=False)
class Prior:
    """theta = mean + B z, z ~ N(0, I).

    Attributes
    ----------
    mean : ndarray, shape (82,), float
        Log K, then log S.
    B : ndarray, shape (82, directions), float
    """

    mean: Floats
    B: Floats


# Once for each paint of each problem; a card with doubts has up to ten: misses of 0.5 ms.
@lru_cache(maxsize=8)
def prior_of(pigments: Pigments | None = None) -> Prior:
    """The prior that some paints give; the measured ones by default."""
    data = pigments or measured_paints()
    rows = [row for row, key in enumerate(data.keys) if key not in LEFT_OUT]
    theta = np.log(np.concatenate([data.K[rows], data.S[rows]], axis=1))
    mean = theta.mean(axis=0)
    off = theta - mean
    spread = EMPIRICAL * (off.T @ off) / (len(rows) - 1)
    for half, width in ((slice(0, BANDS), SMOOTH_K_NM), (slice(BANDS, None), SMOOTH_S_NM)):
        spread[half, half] += (1 - EMPIRICAL) * off[:, half].std() ** 2 * _smooth(width)
    sizes, ways = np.linalg.eigh(spread)
    first = np.argsort(sizes)[::-1][:DIRECTIONS]
    B = ways[:, first] * np.sqrt(np.maximum(sizes[first], 0.0))
    return Prior(mean, np.concatenate([B, np.ones((2 * BANDS, 1))], axis=1))


def _smooth(width_nm: float) -> Floats:
    nm = np.arange(BANDS) * 10.0
    near: Floats = np.exp(-0.5 * ((nm[:, None] - nm) / width_nm) ** 2)
    return near

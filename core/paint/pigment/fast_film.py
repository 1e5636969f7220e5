"""The film again, in single precision and on every second band: for the search's first look.

Some sixty thousand candidates are looked at for one box. The exact film of `film` judges the few
that remain; tests hold the two together.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.lab import WHITE_XYZ
from core.paint.pigment.film import INNER_REFLECTION, paper_inside
from core.paint.pigment.pigments import Pigments

Float32 = NDArray[np.float32]

_CHUNK = 2048


def coarse_Lab(load_ml: NDArray[np.float64], pigments: Pigments) -> Float32:
    """CIELAB of many loads, roughly.

    Parameters
    ----------
    load_ml : ndarray, shape (n, searched paints), float
    pigments : Pigments
        Each column is one of its `searched` rows.

    Returns
    -------
    ndarray, shape (n, 3), float32
        Within 0.13 (CIEDE2000) of the exact film for nine in ten of the table's mixes; 1.9 at
        worst, in dark greens. Good for a first look only.
    """
    data, rows = pigments, list(pigments.searched)
    K = (data.K[rows, ::2] * 100).astype(np.float32)
    S = (data.S[rows, ::2] * 100).astype(np.float32)
    ground = paper_inside(data.paper[::2]).astype(np.float32)
    weights = (data.coarse_weights / WHITE_XYZ).astype(np.float32)
    load = np.ascontiguousarray(load_ml, dtype=np.float32)
    thin = 1 / (1 + np.float32(data.crowding * 100) * load.sum(axis=1, keepdims=True))
    white_shares = np.empty((len(load), 3), dtype=np.float32)
    for start in range(0, len(load), _CHUNK):
        part = slice(start, start + _CHUNK)
        white_shares[part] = (
            _reflect(load[part] @ K, (load[part] @ S) * thin[part], ground) @ weights
        )
    return _Lab_of_shares(white_shares)


def _reflect(K: Float32, S: Float32, ground: Float32) -> Float32:
    h = np.sqrt(K * (K + 2 * S))
    np.maximum(h, np.float32(1e-3), out=h)
    fall = np.exp(-2 * h)
    G = h * (1 + fall) / (1 - fall)
    inner = (S - ground * (K + S - G)) / (K + S - ground * S + G)
    keep = np.float32(INNER_REFLECTION)
    seen: Float32 = (1 - keep) * inner / (1 - keep * inner)
    return seen


def _Lab_of_shares(t: Float32) -> Float32:
    f = np.where(t > (6 / 29) ** 3, np.cbrt(t), t * np.float32((29 / 6) ** 2 / 3) + 4 / 29)
    out = np.empty_like(t)
    out[:, 0] = 116 * f[:, 1] - 16
    out[:, 1] = 500 * (f[:, 0] - f[:, 1])
    out[:, 2] = 200 * (f[:, 1] - f[:, 2])
    return out

"""From one white to another: Bradford's chromatic adaptation."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.lab import WHITE_XYZ, xy_to_XYZ

Floats = NDArray[np.float64]

WHITE_C_xy = (0.31006, 0.31616)
"""Illuminant C, 2 degree observer. Source: CIE 15:2004, table T.3."""

# Bradford's cone responses. Source: K. M. Lam, 1985, "Metamerism and colour constancy", PhD
# thesis, University of Bradford; the linear form of ICC.1:2010, annex E.
_BRADFORD = np.array(
    [
        [0.8951, 0.2664, -0.1614],
        [-0.7502, 1.7135, 0.0367],
        [0.0389, -0.0685, 1.0296],
    ]
)


def adaptation(before: Floats, after: Floats) -> Floats:
    """The matrix that takes XYZ under one white to XYZ under another, by `XYZ @ matrix.T`.

    Parameters
    ----------
    before, after : ndarray, shape (3,)
        XYZ of the whites, with Y = 1.
    """
    gain = (_BRADFORD @ after) / (_BRADFORD @ before)
    return np.asarray(np.linalg.inv(_BRADFORD) @ (gain[:, None] * _BRADFORD), dtype=np.float64)


D65_TO_C: Floats = adaptation(WHITE_XYZ, xy_to_XYZ(*WHITE_C_xy))
"""From the screen's white to illuminant C, under which Munsell colours are defined."""

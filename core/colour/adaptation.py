"""From the screen's white, D65, to illuminant C, under which Munsell colours are defined."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.lab import WHITE_XYZ

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


def _D65_to_C() -> NDArray[np.float64]:
    x, y = WHITE_C_xy
    white_C = np.array([x / y, 1.0, (1 - x - y) / y])
    gain = (_BRADFORD @ white_C) / (_BRADFORD @ WHITE_XYZ)
    return np.asarray(np.linalg.inv(_BRADFORD) @ (gain[:, None] * _BRADFORD), dtype=np.float64)


D65_TO_C: NDArray[np.float64] = _D65_to_C()
"""XYZ under D65 -> XYZ under C, by `XYZ @ D65_TO_C.T`; both whites have Y = 1."""

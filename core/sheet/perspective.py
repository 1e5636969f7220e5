"""How a flat rectangle looks in a picture taken from any side."""

from __future__ import annotations

import numpy as np

from core.colour.working_space import Floats


def homography(source: Floats, target: Floats) -> Floats:
    """The 3 x 3 projective map that takes four points (4, 2) to four others."""
    rows = []
    for (x, y), (u, v) in zip(source, target, strict=True):
        rows.append([x, y, 1, 0, 0, 0, -u * x, -u * y])
        rows.append([0, 0, 0, x, y, 1, -v * x, -v * y])
    solution = np.linalg.solve(np.asarray(rows, dtype=np.float64), target.ravel())
    return np.append(solution, 1.0).reshape(3, 3)

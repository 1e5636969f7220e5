"""From the card's millimetres to a picture's pixels, and the picture along a grid of them.

Pixel places are centres: the first pixel is (0, 0).
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.swatches.layout import Floats


def card_map(source: Floats, target: Floats) -> Floats:
    """The 3 x 3 map that takes four points (4, 2) to four others.

    Raises
    ------
    numpy.linalg.LinAlgError
        Three of the points stand in one line.
    """
    rows = []
    for (x, y), (u, v) in zip(source, target, strict=True):
        rows.append([x, y, 1, 0, 0, 0, -u * x, -u * y])
        rows.append([0, 0, 0, x, y, 1, -v * x, -v * y])
    solution = np.linalg.solve(np.array(rows, dtype=np.float64), np.ravel(target))
    return np.append(solution, 1.0).reshape(3, 3)


def through(H: Floats, at: Floats) -> Floats:
    """Points (..., 2) taken through a map."""
    far = at @ H[:, :2].T + H[:, 2]
    points: Floats = far[..., :2] / far[..., 2:]
    return points


def seen_at(picture: NDArray[np.float32], at: Floats) -> NDArray[np.float32]:
    """A picture, (h, w) or (h, w, 3), at pixel places (..., 2); its edge repeats outside."""
    from scipy.ndimage import map_coordinates  # deferred: start-up time

    where = np.stack([at[..., 1], at[..., 0]])
    if picture.ndim == 2:
        one: NDArray[np.float32] = map_coordinates(picture, where, order=1, mode="nearest")
        return one
    layers = [
        map_coordinates(picture[..., c], where, order=1, mode="nearest")
        for c in range(picture.shape[2])
    ]
    return np.stack(layers, axis=-1)

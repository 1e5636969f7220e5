"""Straightening a sheet: the painted rectangle and a margin around it, seen flat and upright."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats, averaged
from core.errors import SheetError
from core.i18n import translate
from core.sheet.perspective import homography
from core.sheet.result import Corners
from core.sheet.sampling import sampled

HEIGHT = 640
"""Rows of a straightened painted rectangle."""
MARGIN = 0.13
"""What is kept around it, as a share of the height."""

_AT_ONCE = 8  # rows straightened together: what they need stays in the processor's cache
_FOCAL = 0.75
"""Focal length of a phone's main camera over its picture's longer side (27 mm on 36 mm)."""


@dataclass(frozen=True, eq=False)
class Flat:
    """A straightened sheet in linear light.

    Attributes
    ----------
    linear : (H + 2 m, W + 2 m, 3) float32
        With the margin; what is outside the photo repeats its edge.
    seen : (H + 2 m, W + 2 m) bool
        False outside the photo.
    margin : int
        m, in pixels.
    aspect : float
        Width over height of the painted rectangle, perspective undone.
    """

    linear: NDArray[np.float32]
    seen: NDArray[np.bool_]
    margin: int
    aspect: float

    @property
    def painted(self) -> NDArray[np.float32]:
        """The painted rectangle alone, (H, W, 3)."""
        m = self.margin
        h, w = self.seen.shape
        return self.linear[m : h - m, m : w - m]


def upright_quad(corners: Corners, turned: int, width: int, height: int) -> Floats:
    """Corners in pixels, in the order the upright sheet has them, shape (4, 2).

    Raises
    ------
    SheetError
        The corners do not span a rectangle seen in perspective.
    """
    quad = np.asarray(corners, dtype=np.float64) * [width, height]
    sides = np.roll(quad, -1, axis=0) - quad
    after = np.roll(sides, -1, axis=0)
    turns = sides[:, 0] * after[:, 1] - sides[:, 1] * after[:, 0]
    span = max(width, height)
    if not np.isfinite(quad).all() or turns.min() <= (0.01 * span) ** 2:
        raise SheetError(
            translate(
                "sheet",
                "These corners do not make a rectangle: place them clockwise on the corners of "
                "the painting, the top left one first.",
            )
        )
    # A quarter turn clockwise brings the picture's bottom left corner to the top left.
    return np.roll(quad, turned % 4, axis=0)


def aspect_of(quad: Floats, width: int, height: int, scan: bool) -> float:
    """Width over height of the rectangle whose picture has these corners.

    A phone's usual focal length is assumed; it matters little unless the view is slanted. A scan
    has no perspective.
    """
    unit = np.array([[0, 0], [1, 0], [1, 1], [0, 1]], dtype=np.float64)
    if scan:
        sides = np.linalg.norm(np.roll(quad, -1, axis=0) - quad, axis=1)
        return float((sides[0] + sides[2]) / (sides[1] + sides[3]))
    focal = _FOCAL * max(width, height)
    H = homography(unit, (quad - [width / 2, height / 2]) / focal)
    return float(np.linalg.norm(H[:, 0]) / np.linalg.norm(H[:, 1]))


def straighten(
    linear: NDArray[np.float32],
    quad: Floats,
    aspect: float,
    height: int = HEIGHT,
    margin_share: float = MARGIN,
) -> Flat:
    """Straighten the rectangle with corners `quad` (4, 2), pixels of `linear` (h, w, 3), to so many
    rows, with a margin of so much of them."""
    H = height
    W = int(np.clip(round(H * aspect), H // 4, H * 3))
    margin = round(margin_share * H)
    box = np.array([[0, 0], [W, 0], [W, H], [0, H]], dtype=np.float64)
    # Rows and columns of a much larger photo are averaged first, so that its noise is not kept.
    length = np.linalg.norm(np.roll(quad, -1, axis=0) - quad, axis=1).min() / min(H, W)
    block = int(max(1, length // 1.5))
    if block > 1:
        linear = averaged(linear, block)
        quad = quad / block
    M = homography(box, quad)
    x = np.arange(W + 2 * margin) - margin + 0.5
    flat = np.empty((H + 2 * margin, len(x), 3), dtype=linear.dtype)
    seen = np.empty(flat.shape[:2], dtype=bool)
    h, w = linear.shape[:2]
    for start in range(0, len(flat), _AT_ONCE):
        rows = slice(start, min(start + _AT_ONCE, len(flat)))
        y = np.arange(rows.start, rows.stop)[:, None] - margin + 0.5
        depth = M[2, 0] * x + M[2, 1] * y + 1.0
        depth = np.where(depth > 1e-6, depth, 1e-6)
        px = (M[0, 0] * x + M[0, 1] * y + M[0, 2]) / depth - 0.5
        py = (M[1, 0] * x + M[1, 1] * y + M[1, 2]) / depth - 0.5
        flat[rows] = sampled(linear, np.stack([px, py], -1))
        seen[rows] = (px > -0.5) & (px < w - 0.5) & (py > -0.5) & (py < h - 0.5)
    return Flat(flat, seen, margin, aspect)

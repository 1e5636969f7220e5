"""What a worksheet page has printed on it where scores are crossed: told by the page itself."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.class_set.page_crop import Box

PX_PER_MM = 6.0
"""Pixels a millimetre at which rows are looked at: a usual phone picture has 4 to 6, and a thin
ball pen draws .35 mm."""

ABOVE = BELOW = 3.2
"""Millimetres around a row that are looked at too: marks reach beyond their boxes."""

BESIDE = 4.0
"""Millimetres left and right of it."""


@dataclass(frozen=True)
class ScoreRow:
    """One scale of boxes, 1 first.

    Attributes
    ----------
    boxes : tuple of Box
        In mm on the page.
    printed : (h, w) uint8
        The page as it is printed there, without a mark, `PX_PER_MM` pixels a millimetre: `area`.
    """

    boxes: tuple[Box, ...]
    printed: NDArray[np.uint8]

    @property
    def area(self) -> Box:
        """The boxes and what is around them."""
        return area_of(self.boxes)


@dataclass(frozen=True)
class ScoreForm:
    """What is printed on one worksheet page.

    Attributes
    ----------
    codes : tuple of (str, Box)
        A ticket's kind, and where its code is printed.
    rows : tuple of ScoreRow
        From the top.
    """

    codes: tuple[tuple[str, Box], ...]
    rows: tuple[ScoreRow, ...]


def area_of(boxes: tuple[Box, ...]) -> Box:
    """What is looked at for a row of boxes: whole pixels from its top left."""
    first, last = boxes[0], boxes[-1]
    width = last.x + last.width - first.x + 2 * BESIDE
    height = first.height + ABOVE + BELOW
    return Box(
        first.x - BESIDE,
        first.y - ABOVE,
        round(width * PX_PER_MM) / PX_PER_MM,
        round(height * PX_PER_MM) / PX_PER_MM,
    )

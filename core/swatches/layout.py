"""Where everything is on a swatch card, in millimetres from the paper's top left corner.

A4 and Letter alike: all of it lies within what both can print.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

Floats = NDArray[np.float64]

MARK, MODULE = 14.0, 2.0
"""Side of a corner mark and of its modules: 7 black, 5 white, 3 black; the last is solid."""

MARKS: Floats = np.array([[21.0, 21.0], [189.0, 21.0], [189.0, 257.0], [21.0, 257.0]])
"""Centres of the marks, clockwise from the top left; the third is the solid one."""
SOLID = 2

CODE_AT, CODE_SIDE = (150.0, 16.0), 22.0

TITLE_AT, EXPLAINED_AT, HEADS_Y = (32.0, 17.0), (32.0, 26.0), 42.6
CODE_NOTE_AT = (32.0, 35.6)
"""Clear of the white that the code wants around it."""

LABEL_AT, LABEL_WIDTH = 16.0, 28.0
FIRST_ROW, PITCH, HEIGHT = 54.0, 23.0, 13.0
COLUMNS: tuple[tuple[float, float], ...] = ((46.0, 48.0), (100.0, 44.0), (150.0, 44.0))
"""Left edge and width of the three fields of a row: alone, and two mixes."""

OUTLINE = 0.25
NOTE_ABOVE = 6.8
"""Where a word above a field begins: clear of the paper beside this field and the one above."""

FOOT_Y = 241.0
RULER_AT, RULER_MM = (46.0, 257.0), 100.0

Rect = tuple[float, float, float, float]


def field_rect(row: int, field: int) -> Rect:
    """Left, top, width and height of a field."""
    left, width = COLUMNS[field]
    return left, FIRST_ROW + row * PITCH, width, HEIGHT


def corners_of(rect: Rect) -> Floats:
    """The four corners of a rectangle, clockwise from the top left, shape (4, 2)."""
    x, y, w, h = rect
    return np.array([[x, y], [x + w, y], [x + w, y + h], [x, y + h]])

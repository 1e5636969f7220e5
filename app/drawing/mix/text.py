"""Words in the drawings of the Mix page: broken into lines by a width, in any unit."""

from __future__ import annotations

from functools import lru_cache

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from app.drawing.ink import draw_text, text_size

PITCH = 1.25
"""Line height, by the size of the face."""


@lru_cache(maxsize=2048)
def lines_of(text: str, size: float, weight: int, width: float) -> tuple[str, ...]:
    """Lines no wider than `width`, broken at spaces; a long word keeps its own line."""
    lines: list[str] = []
    for word in text.split():
        joined = f"{lines[-1]} {word}" if lines else word
        if lines and text_size(joined, size, weight)[0] <= width:
            lines[-1] = joined
        else:
            lines.append(word)
    return tuple(lines)


def draw_lines(
    painter: QPainter,
    top_left: QPointF,
    lines: tuple[str, ...],
    size: float,
    colour: str,
    weight: int,
) -> float:
    """Draw lines below each other; the height they took."""
    for number, line in enumerate(lines):
        middle = top_left + QPointF(0, (number + 0.5) * PITCH * size)
        draw_text(painter, middle, line, size, colour, weight, align=0.0)
    return len(lines) * PITCH * size

"""Text for the back row: as large as wished, smaller or on more lines only where it must be."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF
from PySide6.QtGui import QPainter

from app.drawing.fit import wrap
from app.drawing.ink import draw_text, text_size

LINE: float = 1.16
"""Height of a line by its text's size."""


@dataclass(frozen=True)
class Fitted:
    """Lines of text and the size they are set at."""

    lines: tuple[str, ...]
    size: float

    @property
    def height(self) -> float:
        """Height of all lines."""
        return LINE * self.size * len(self.lines)


def fit_text(
    text: str, width: float, height: float, largest: float, least: float, weight: int
) -> Fitted:
    """The largest setting of a text within a box.

    Parameters
    ----------
    width, height : float
        Of the box.
    largest, least : float
        Sizes to try between. At `least` the text is set even when the box is too low for it.
    weight : int

    Returns
    -------
    Fitted
        One line where it can be had at 70 % of `largest` or more, else as many as are needed.
    """
    one_line = largest * min(1.0, width / max(text_size(text, largest, weight)[0], 1e-9))
    if one_line >= max(0.7 * largest, least) and LINE * one_line <= height:
        return Fitted((text,), one_line)
    size = largest
    while True:
        lines = wrap(text, round(size), weight, width)
        fits = LINE * size * len(lines) <= height and all(
            text_size(line, size, weight)[0] <= width for line in lines
        )
        if fits or size <= least:
            return Fitted(lines, size)
        size = max(0.96 * size, least)


def draw_fitted(
    painter: QPainter, left: float, top: float, fitted: Fitted, colour: str, weight: int
) -> float:
    """Draw the lines downwards from `top`; returns where the next text may begin."""
    for line in fitted.lines:
        middle = QPointF(left, top + 0.52 * LINE * fitted.size)
        draw_text(painter, middle, line, fitted.size, colour, weight, align=0.0)
        top += LINE * fitted.size
    return top

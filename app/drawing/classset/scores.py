"""Own scores beside measured ones, first sheet and second: a small table of numbers."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from app.drawing.ink import CHOSEN, draw_text, kept, text_size
from app.look.icons import paint_icon
from app.look.type import FIRST, SECOND

Cell = tuple[str, str]
"""The first sheet's score and the second's; empty where there is none."""

_ROW: Final = 1.75  # heights of the text


@dataclass(frozen=True)
class ScoresView:
    """The table.

    Attributes
    ----------
    headings : tuple of str
        One a quality.
    rows : tuple of (str, tuple of Cell)
        What stands left of each row, and a cell a quality.
    size : float
        Of the text.
    ink, second : str
        Colours on the present paper.
    """

    headings: tuple[str, ...] = ()
    rows: tuple[tuple[str, tuple[Cell, ...]], ...] = ()
    size: float = 13.0
    ink: str = "#141414"
    second: str = "#3d3d3d"


def scores_height(view: ScoresView) -> float:
    """Of the whole table."""
    return (len(view.rows) + 1) * _ROW * view.size


def paint_scores(painter: QPainter, rect: QRectF, view: ScoresView) -> None:
    """Draw the table."""
    if not view.headings:
        return
    labels = [text_size(label, view.size)[0] for label, _ in view.rows]
    left = min(max([*labels, 0.0]) + view.size, 0.42 * rect.width())
    across = (rect.width() - left) / len(view.headings)
    row = _ROW * view.size
    with kept(painter):
        for column, heading in enumerate(view.headings):
            x = rect.left() + left + (column + 0.5) * across
            width = text_size(heading, view.size, SECOND)[0]
            size = view.size * min(1.0, 0.96 * across / max(width, 1.0))
            at = QPointF(x, rect.top() + row / 2)
            draw_text(painter, at, heading, size, view.second, SECOND)
        for number, (label, cells) in enumerate(view.rows):
            y = rect.top() + (number + 1.5) * row
            size = view.size * min(1.0, (left - 6) / max(text_size(label, view.size)[0], 1.0))
            draw_text(painter, QPointF(rect.left(), y), label, size, view.ink, FIRST, align=0)
            for column, cell in enumerate(cells):
                x = rect.left() + left + (column + 0.5) * across
                _paint_cell(painter, QPointF(x, y), cell, view)


def _paint_cell(painter: QPainter, at: QPointF, cell: Cell, view: ScoresView) -> None:
    first, second = cell
    size = 1.15 * view.size
    if not first and not second:
        draw_text(painter, at, "-", size, view.second, SECOND)
    elif not second:
        draw_text(painter, at, first, size, view.ink, CHOSEN)
    else:
        arm = 0.62 * size
        if first:
            draw_text(painter, at - QPointF(arm, 0), first, size, view.ink, SECOND, align=1)
        arrow = QRectF(0, 0, 1.05 * size, 1.05 * size)
        arrow.moveCenter(at)
        paint_icon(painter, arrow, "arrow_right", view.second)
        draw_text(painter, at + QPointF(arm, 0), second, size, view.ink, CHOSEN, align=0)

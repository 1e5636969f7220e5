"""A printed code: black squares, set so that no printer leaves hairlines between them."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.ink import BLACK, kept


@dataclass(frozen=True)
class CodeView:
    """A code.

    Attributes
    ----------
    rows : tuple of tuple of bool
        Its modules from the top, True is black; square.
    """

    rows: tuple[tuple[bool, ...], ...]


def paint_code(painter: QPainter, rect: QRectF, view: CodeView) -> None:
    """Fill `rect` with the code; the white around it is the page's."""
    side = rect.width() / len(view.rows)
    with kept(painter):
        painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(BLACK))
        for y, row in enumerate(view.rows):
            for start, end in _runs(row):
                painter.drawRect(
                    QRectF(
                        rect.left() + start * side,
                        rect.top() + y * side,
                        (end - start) * side,
                        side * _OVER,
                    )
                )


_OVER = 1.02  # of a module: rows overlap a little


def _runs(row: tuple[bool, ...]) -> list[tuple[int, int]]:
    """Where black begins and ends, along a row."""
    runs, start = [], None
    for x, black in enumerate((*row, False)):
        if black and start is None:
            start = x
        elif not black and start is not None:
            runs.append((start, x))
            start = None
    return runs

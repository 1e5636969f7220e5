"""A mix in parts with its paints' names under their cells."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QPainter

from app.paint.ink import kept, text_size
from app.paint.marks import GAP, PartsBarView, paint_parts_bar, parts_cell
from app.paint.mix_text import PITCH, draw_lines

BAR = 0.62
"""Share of the height that the bar takes, when there is room for names of one line."""


@dataclass(frozen=True)
class NamedBarView:
    """A parts bar and its names.

    Attributes
    ----------
    bar : PartsBarView
    names : tuple of str
        One for each paint.
    text_px : float
        Size of the names, in the painter's units.
    ink : str
    """

    bar: PartsBarView
    names: tuple[str, ...]
    text_px: float
    ink: str


def paint_named_bar(painter: QPainter, rect: QRectF, view: NamedBarView) -> None:
    """The bar along the top of `rect`, each name below its own cells.

    A name wider than its cells takes the room up to the next name that would start further
    right; where names would run into each other they step down, line by line.
    """
    size = view.text_px
    rows = name_rows(rect.width(), rect.height(), view)
    height = rect.height() - (max(row for _, row in rows) + 1 if rows else 0) * PITCH * size
    bar = QRectF(rect.left(), rect.top(), rect.width(), max(height - 0.2 * size, 0.4 * size))
    with kept(painter):
        paint_parts_bar(painter, bar, view.bar)
        for name, (x, row) in zip(view.names, rows, strict=True):
            spot = QPointF(rect.left() + x, bar.bottom() + 0.15 * size + row * PITCH * size)
            draw_lines(painter, spot, (name,), size, view.ink, 400)


def name_rows(width: float, height: float, view: NamedBarView) -> tuple[tuple[float, int], ...]:
    """Left end and line of every name: a line down where it would touch the one before."""
    bar_height = BAR * height
    frame = QRectF(0, 0, width, bar_height)
    cell = parts_cell(frame, view.bar)
    x, ends, places = 0.0, [], []
    for (count, _, _), name in zip(view.bar.parts, view.names, strict=True):
        needed = text_size(name, view.text_px, 400)[0]
        left = max(min(x, width - needed), 0.0)
        row = next((r for r, end in enumerate(ends) if end + 0.5 * view.text_px <= left), len(ends))
        if row == len(ends):
            ends.append(0.0)
        ends[row] = left + needed
        places.append((left, row))
        x += count * cell + GAP * bar_height
    return tuple(places)

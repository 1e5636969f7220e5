"""A mix in parts with its paints' names under their cells."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import CHOSEN, draw_text, kept, text_size
from app.drawing.marks import GAP, PartsBarView
from app.drawing.mix.text import PITCH, draw_lines

CELL_MOST = 2.3
"""Widest cell, by the bar's height: one part must not look like many."""


@dataclass(frozen=True)
class NamedBarView:
    """A parts bar and its names.

    Attributes
    ----------
    bar : PartsBarView
    names : tuple of str
        One for each paint.
    bar_px, text_px : float
        Height of the bar and size of the names, in the painter's units.
    ink : str
    """

    bar: PartsBarView
    names: tuple[str, ...]
    bar_px: float
    text_px: float
    ink: str


def named_bar_height(width: float, view: NamedBarView) -> float:
    """Height of bar and names at a width."""
    rows = max((row for _, row in name_places(width, view)), default=-1) + 1
    return view.bar_px + rows * PITCH * view.text_px + (0.25 * view.text_px if rows else 0)


def paint_named_bar(painter: QPainter, rect: QRectF, view: NamedBarView) -> None:
    """The bar along the top of `rect`, as wide as its cells may be; each name below its own."""
    size, height = view.text_px, view.bar_px
    cell = _cell(rect.width(), view)
    x = rect.left()
    with kept(painter):
        for count, colour, ink in view.bar.parts:
            width = count * cell
            painter.fillRect(QRectF(x, rect.top(), width, height), QColor(colour))
            painter.setPen(QPen(QColor(ink), 0.05 * height))
            for part in range(1, count):
                at = x + part * cell
                foot = rect.top() + height
                painter.drawLine(QPointF(at, foot - 0.22 * height), QPointF(at, foot))
            spot = QPointF(x + width / 2, rect.top() + 0.46 * height)
            draw_text(painter, spot, str(count), min(0.56 * height, 1.5 * width), ink, CHOSEN)
            x += width + GAP * height
        for name, (left, row) in zip(view.names, name_places(rect.width(), view), strict=True):
            top = rect.top() + height + 0.25 * size + row * PITCH * size
            draw_lines(painter, QPointF(rect.left() + left, top), (name,), size, view.ink, 500)


def name_places(width: float, view: NamedBarView) -> tuple[tuple[float, int], ...]:
    """Left end and line of every name: a line down where it would touch the one before."""
    cell, x = _cell(width, view), 0.0
    ends: list[float] = []
    places = []
    for (count, _, _), name in zip(view.bar.parts, view.names, strict=True):
        needed = text_size(name, view.text_px, 500)[0]
        left = max(min(x, width - needed), 0.0)
        clear = left - 0.5 * view.text_px
        row = next((r for r, end in enumerate(ends) if end <= clear), len(ends))
        if row == len(ends):
            ends.append(0.0)
        ends[row] = left + needed
        places.append((left, row))
        x += count * cell + GAP * view.bar_px
    return tuple(places)


def _cell(width: float, view: NamedBarView) -> float:
    """Width of one part: wide enough for the names where there is room."""
    counts = [count for count, _, _ in view.bar.parts]
    gaps = GAP * view.bar_px * (len(counts) - 1)
    wanted = max(
        (
            (text_size(name, view.text_px, 500)[0] + 0.6 * view.text_px) / count
            for count, name in zip(counts, view.names, strict=True)
        ),
        default=0.0,
    )
    full = (width - gaps) / max(sum(counts), 1)
    return min(full, max(CELL_MOST * view.bar_px, wanted))

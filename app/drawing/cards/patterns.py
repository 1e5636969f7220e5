"""Paints told apart without colour: one pattern a paint, in the parts bar and in its key."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Literal, assert_never

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import BLACK, CHOSEN, WHITE, draw_text, kept, text_size
from app.drawing.marks import GAP, PartsBarView, parts_cell

Pattern = Literal[
    "solid", "white", "strokes", "dots", "back strokes", "levels", "uprights", "crossed", "grid",
    "rings",
]  # fmt: skip
PATTERNS: Final[tuple[Pattern, ...]] = (
    "solid", "white", "strokes", "dots", "back strokes", "levels", "uprights", "crossed", "grid",
    "rings",
)  # fmt: skip
"""Fills of the paints of a black-and-white card; each tells one paint."""


@dataclass(frozen=True)
class PatternBarView:
    """A parts bar without colour.

    Attributes
    ----------
    parts : tuple of (count, Pattern)
    """

    parts: tuple[tuple[int, Pattern], ...]


@dataclass(frozen=True)
class PatternBoxView:
    """A paint's pattern in the key."""

    pattern: Pattern


def paint_pattern_bar(painter: QPainter, rect: QRectF, view: PatternBarView) -> None:
    """The parts bar told by patterns, each with its count."""
    same = PartsBarView(tuple((count, WHITE, BLACK) for count, _ in view.parts))
    cell, height = parts_cell(rect, same), rect.height()
    x = rect.left()
    with kept(painter):
        for count, pattern in view.parts:
            area = QRectF(x, rect.top(), count * cell, height)
            _fill(painter, area, pattern, 0.05 * height)
            _ticks(painter, area, count, pattern == "solid")
            _count(painter, area, count, pattern == "solid")
            x += count * cell + GAP * height


def paint_pattern_box(painter: QPainter, rect: QRectF, view: PatternBoxView) -> None:
    """A pattern filling `rect`."""
    with kept(painter):
        _fill(painter, rect, view.pattern, 0.05 * rect.height())


def _fill(painter: QPainter, area: QRectF, pattern: Pattern, pen: float) -> None:
    painter.fillRect(area, QColor(BLACK if pattern == "solid" else WHITE))
    painter.save()
    painter.setClipRect(area)
    painter.setPen(QPen(QColor(BLACK), 1.2 * pen))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    step = 0.22 * area.height()
    match pattern:
        case "solid" | "white":
            pass
        case "strokes":
            _slanted(painter, area, step, 1)
        case "back strokes":
            _slanted(painter, area, step, -1)
        case "crossed":
            _slanted(painter, area, 1.3 * step, 1)
            _slanted(painter, area, 1.3 * step, -1)
        case "levels":
            _straight(painter, area, step, level=True)
        case "uprights":
            _straight(painter, area, step, level=False)
        case "grid":
            _straight(painter, area, 1.3 * step, level=True)
            _straight(painter, area, 1.3 * step, level=False)
        case "dots":
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(BLACK))
            _spots(painter, area, step, 1.5 * pen)
        case "rings":
            painter.setPen(QPen(QColor(BLACK), 0.8 * pen))
            _spots(painter, area, 1.7 * step, 2.6 * pen)
        case _:
            assert_never(pattern)
    painter.restore()
    edge = QPen(QColor(BLACK), pen)
    edge.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    painter.setPen(edge)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(area.adjusted(pen / 2, pen / 2, -pen / 2, -pen / 2))


def _slanted(painter: QPainter, area: QRectF, step: float, way: int) -> None:
    x, high = area.left() - area.height(), area.height()
    while x < area.right():
        low, top = (x, x + high) if way > 0 else (x + high, x)
        painter.drawLine(QPointF(low, area.bottom()), QPointF(top, area.top()))
        x += step


def _straight(painter: QPainter, area: QRectF, step: float, *, level: bool) -> None:
    at = (area.top() if level else area.left()) + step / 2
    while at < (area.bottom() if level else area.right()):
        ends = (
            (QPointF(area.left(), at), QPointF(area.right(), at))
            if level
            else (QPointF(at, area.top()), QPointF(at, area.bottom()))
        )
        painter.drawLine(*ends)
        at += step


def _spots(painter: QPainter, area: QRectF, step: float, radius: float) -> None:
    y, row = area.top() + step / 2, 0
    while y < area.bottom():
        x = area.left() + (step / 2 if row % 2 else step)
        while x < area.right():
            painter.drawEllipse(QPointF(x, y), radius, radius)
            x += step
        y, row = y + step / 2, row + 1


def _ticks(painter: QPainter, area: QRectF, count: int, solid: bool) -> None:
    painter.setPen(QPen(QColor(WHITE if solid else BLACK), 0.05 * area.height()))
    for part in range(1, count):
        x = area.left() + area.width() * part / count
        painter.drawLine(
            QPointF(x, area.bottom() - 0.22 * area.height()), QPointF(x, area.bottom())
        )


def _count(painter: QPainter, area: QRectF, count: int, solid: bool) -> None:
    size = min(0.56 * area.height(), 1.5 * area.width())
    spot = QPointF(area.center().x(), area.top() + 0.46 * area.height())
    text = str(count)
    if not solid:  # the number stands on white, whatever the pattern
        wide = text_size(text, size, CHOSEN)[0] + 0.3 * size
        patch = QRectF(spot.x() - wide / 2, spot.y() - 0.5 * size, wide, size)
        painter.fillRect(patch & area.adjusted(1, 1, -1, -1), QColor(WHITE))
    draw_text(painter, spot, text, size, WHITE if solid else BLACK, CHOSEN)

"""What only printed cards draw: rulers, lines to write on, tick boxes."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from app.drawing.ink import BLACK, kept

RULE: Final = "#8a8a8a"


@dataclass(frozen=True)
class RulerView:
    """A ruler along the top of the rectangle, whose width it measures.

    Attributes
    ----------
    steps : int
        Equal parts, with a tick each.
    pen : float
    """

    steps: int
    pen: float


@dataclass(frozen=True)
class StrokeView:
    """A line along the top of the rectangle."""

    pen: float
    colour: str = BLACK


@dataclass(frozen=True)
class WritingView:
    """Lines to write on.

    Attributes
    ----------
    spacing : float
        From line to line, in the painter's units; the first is that far below the top.
    pen : float
    """

    spacing: float
    pen: float


@dataclass(frozen=True)
class BoxView:
    """An empty box; `ticked` crosses it, `dashed` is for a swatch to be painted into."""

    pen: float
    dashed: bool = False
    ticked: bool = False
    colour: str = BLACK


def paint_ruler(painter: QPainter, rect: QRectF, view: RulerView) -> None:
    """A line exactly as long as `rect` is wide, with ticks; the middle one is longer."""
    with kept(painter):
        pen = QPen(QColor(BLACK), view.pen)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        base = rect.bottom()
        painter.drawLine(QPointF(rect.left(), base), QPointF(rect.right(), base))
        for step in range(view.steps + 1):
            x = rect.left() + rect.width() * step / view.steps
            long = step in (0, view.steps) or 2 * step == view.steps
            top = rect.top() if long else rect.center().y()
            painter.drawLine(QPointF(x, top), QPointF(x, base))


def paint_stroke(painter: QPainter, rect: QRectF, view: StrokeView) -> None:
    """A line along the top of `rect`."""
    with kept(painter):
        pen = QPen(QColor(view.colour), view.pen)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        painter.drawLine(rect.topLeft(), rect.topRight())


def paint_writing(painter: QPainter, rect: QRectF, view: WritingView) -> None:
    """As many lines as fit, from the top down."""
    with kept(painter):
        painter.setPen(QPen(QColor(RULE), view.pen))
        y = rect.top() + view.spacing
        while y <= rect.bottom() + 1e-6:
            painter.drawLine(QPointF(rect.left(), y), QPointF(rect.right(), y))
            y += view.spacing


def paint_box(painter: QPainter, rect: QRectF, view: BoxView) -> None:
    """An empty box whose edge is within `rect`."""
    with kept(painter):
        pen = QPen(QColor(view.colour), view.pen)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        if view.dashed:
            pen.setCapStyle(Qt.PenCapStyle.FlatCap)
            pen.setDashPattern([5.0, 3.5])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        half = view.pen / 2
        painter.drawRect(rect.adjusted(half, half, -half, -half))
        if view.ticked:
            cross = QPen(QColor(BLACK), 1.8 * view.pen)
            cross.setCapStyle(Qt.PenCapStyle.RoundCap)
            painter.setPen(cross)
            side = 0.24 * rect.width()
            inner = rect.adjusted(side, side, -side, -side)
            painter.drawLine(inner.topLeft(), inner.bottomRight())
            painter.drawLine(inner.topRight(), inner.bottomLeft())


def paint_caution(painter: QPainter, rect: QRectF, view: StrokeView) -> None:
    """A triangle with an exclamation mark, in the largest square of `rect`."""
    side = min(rect.width(), rect.height())
    x, y = rect.left(), rect.top()
    with kept(painter):
        pen = QPen(QColor(view.colour), view.pen)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPolygon(
            QPolygonF(
                [
                    QPointF(x + 0.5 * side, y + 0.08 * side),
                    QPointF(x + 0.96 * side, y + 0.9 * side),
                    QPointF(x + 0.04 * side, y + 0.9 * side),
                ]
            )
        )
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.drawLine(
            QPointF(x + 0.5 * side, y + 0.38 * side), QPointF(x + 0.5 * side, y + 0.6 * side)
        )
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(view.colour))
        painter.drawEllipse(
            QPointF(x + 0.5 * side, y + 0.75 * side), 0.6 * view.pen, 0.6 * view.pen
        )

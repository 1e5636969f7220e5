"""Three small drawings: a dry sheet without its tape, a photo of it from above, a score."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from app.drawing.ink import kept

# Washes as greys: a drawing of no particular sky.
_WASHES = ("#8a8a8a", "#a8a8a8", "#c4c4c4", "#dcdcdc")


@dataclass(frozen=True)
class HintView:
    """Which drawing, and the page's colours."""

    kind: Literal["dry", "photo", "score"]
    ink: str
    second: str
    paper: str = "#fbfbfb"


def paint_hint(painter: QPainter, rect: QRectF, view: HintView) -> None:
    """Draw a hint into the left of `rect`, as high as it is, about 1.5 times as wide."""
    height = rect.height()
    area = QRectF(rect.left(), rect.top(), 1.5 * height, height)
    draw = {"dry": _dry, "photo": _photo, "score": _score}[view.kind]
    with kept(painter):
        draw(painter, area, view)


def _pen(colour: str, width: float) -> QPen:
    pen = QPen(QColor(colour), width)
    pen.setCapStyle(Qt.PenCapStyle.RoundCap)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    return pen


def _sheet(painter: QPainter, rect: QRectF, view: HintView) -> None:
    """A painted sheet with its white border."""
    unit = rect.height() / 60
    painter.setPen(_pen(view.ink, 1.6 * unit))
    painter.setBrush(QColor(view.paper))
    painter.drawRect(rect)
    border = 0.11 * rect.height()
    inner = rect.adjusted(border, border, -border, -border)
    step = inner.height() / len(_WASHES)
    for number, colour in enumerate(_WASHES):
        top = inner.top() + number * step
        painter.fillRect(QRectF(inner.left(), top, inner.width(), step + 0.5), QColor(colour))


def _dry(painter: QPainter, area: QRectF, view: HintView) -> None:
    height = area.height()
    sheet = QRectF(area.left() + 2, area.top() + 0.22 * height, 1.05 * height, 0.74 * height)
    _sheet(painter, sheet, view)
    # The strip of tape, lifted off the upper edge.
    unit = height / 80
    start = QPointF(sheet.left() + 0.25 * sheet.width(), sheet.top())
    end = QPointF(area.right() - 0.02 * height, area.top() + 0.03 * height)
    strip = QPainterPath(start)
    strip.cubicTo(
        QPointF(sheet.right(), sheet.top() - 0.02 * height),
        QPointF(sheet.right() + 0.05 * height, sheet.top() - 0.04 * height),
        end,
    )
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for colour, width in ((view.ink, 9 * unit), (view.paper, 6 * unit)):
        pen = _pen(colour, width)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        painter.drawPath(strip)


def _photo(painter: QPainter, area: QRectF, view: HintView) -> None:
    height = area.height()
    unit = height / 80
    phone = QRectF(area.left() + 2, area.top() + 0.06 * height, 1.34 * height, 0.88 * height)
    painter.setPen(_pen(view.ink, 2.4 * unit))
    painter.setBrush(QColor(view.second))
    painter.drawRoundedRect(phone, 7 * unit, 7 * unit)
    screen = phone.adjusted(5 * unit, 5 * unit, -14 * unit, -5 * unit)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor("#868686"))
    painter.drawRect(screen)
    margin = 0.1 * screen.height()
    _sheet(painter, screen.adjusted(margin * 1.3, margin, -margin * 1.3, -margin), view)
    painter.setPen(_pen(view.paper, 2 * unit))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    button = QPointF(phone.right() - 7 * unit, phone.center().y())
    painter.drawEllipse(button, 3.4 * unit, 3.4 * unit)


def _score(painter: QPainter, area: QRectF, view: HintView) -> None:
    height = area.height()
    unit = height / 80
    left, right = area.left() + 0.06 * height, area.right() - 0.04 * height
    y = area.top() + 0.5 * height
    step = (right - left) / 9
    painter.setPen(_pen(view.ink, 2 * unit))
    painter.drawLine(QPointF(left, y), QPointF(right, y))
    for number in range(10):
        x = left + number * step
        long = number in (0, 3, 6, 9)
        painter.drawLine(QPointF(x, y - (7 if long else 4) * unit), QPointF(x, y))
    painter.setBrush(QColor(view.ink))
    painter.drawEllipse(QPointF(left + 6 * step, y - 17 * unit), 6.5 * unit, 6.5 * unit)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    tip = QPointF(left + 7 * step, y + 6 * unit)
    painter.drawPolygon(QPolygonF([tip, tip + QPointF(-8, 14) * unit, tip + QPointF(8, 14) * unit]))

"""Band lines over the photo, their grips on the wall, and the brackets of the bands."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final, Literal

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from app.drawing.ink import BLACK, CHOSEN, WHITE, along, draw_text, haloed, kept, text_size

# The heavy line's whole width; a plain one is this much thinner.
HEAVY_PX: Final = 6.0
GRIP_WIDTH: Final = 30.0
GRIP_HEIGHT: Final = 26.0


@dataclass(frozen=True)
class LineView:
    """A band line: plain, heavy (chosen, or the horizon) or dotted (a rival horizon)."""

    kind: Literal["plain", "heavy", "dotted"] = "plain"


@dataclass(frozen=True)
class GripView:
    """A grip at the photo's edge.

    Attributes
    ----------
    kind : str
        "plain": two arrowheads; "named": arrowheads and a word (the horizon);
        "open": the number box of a chosen line; "rival": a dashed offer in words.
    text : str
        Word or number.
    """

    kind: Literal["plain", "named", "open", "rival"] = "plain"
    text: str = ""


@dataclass(frozen=True)
class BracketView:
    """The extent of a band, left of the photo."""

    chosen: bool = False


def paint_line(painter: QPainter, rect: QRectF, view: LineView) -> None:
    """A white line within a black one along the middle of `rect`, as high as the heavy line."""
    unit = rect.height() / HEAVY_PX
    y = rect.center().y()
    path = along(QPointF(rect.left(), y), QPointF(rect.right(), y))
    with kept(painter):
        if view.kind == "plain":
            haloed(painter, path, 1.6 * unit, 3.6 * unit, core=WHITE, around=BLACK)
        elif view.kind == "heavy":
            haloed(painter, path, 3.0 * unit, 6.0 * unit, core=WHITE, around=BLACK)
        else:
            # White squares ringed in black: a dotted line seen on any sky.
            side, pitch = 5.0 * unit, 14.0 * unit
            painter.setPen(QPen(QColor(BLACK), 1.4 * unit))
            painter.setBrush(QColor(WHITE))
            for k in range(int(rect.width() / pitch)):
                x = rect.left() + 2 * unit + k * pitch
                painter.drawRect(QRectF(x, y - side / 2, side, side))


def grip_width(view: GripView, height: float = GRIP_HEIGHT) -> float:
    """Width a grip needs at a height."""
    size = _text_size(view, height)
    if view.kind == "plain":
        return GRIP_WIDTH / GRIP_HEIGHT * height
    words = text_size(view.text, size, CHOSEN)[0]
    return words + (0.95 if view.kind == "rival" else 1.45) * height


def _text_size(view: GripView, height: float) -> float:
    return (0.58 if view.kind == "open" else 0.52) * height


def paint_grip(painter: QPainter, rect: QRectF, view: GripView) -> None:
    """Draw a grip filling `rect`."""
    height = rect.height()
    corner = 0.2 * height
    dark = view.kind in ("plain", "named")
    outer = rect.adjusted(0.02 * height, 0.02 * height, -0.02 * height, -0.02 * height)
    middle = rect.center().y()
    size = _text_size(view, height)
    with kept(painter):
        if view.kind == "rival":
            pen = QPen(QColor(BLACK), 0.07 * height)
            pen.setDashPattern([2.6, 1.8])
            painter.setPen(pen)
            painter.setBrush(Qt.BrushStyle.NoBrush)
            half = 0.035 * height
            painter.drawRoundedRect(outer.adjusted(half, half, -half, -half), corner, corner)
            draw_text(painter, rect.center(), view.text, size, BLACK, CHOSEN)
            return
        painter.setPen(Qt.PenStyle.NoPen)
        for grow, colour in ((0.0, WHITE if dark else BLACK), (0.065, BLACK if dark else WHITE)):
            inset = grow * height
            painter.setBrush(QColor(colour))
            painter.drawRoundedRect(
                outer.adjusted(inset, inset, -inset, -inset), corner - inset / 2, corner - inset / 2
            )
        if dark:
            painter.setPen(QPen(QColor(BLACK), 0.03 * height))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(rect, corner, corner)
        ink = WHITE if dark else BLACK
        if view.kind == "plain":
            _arrowheads(painter, rect.center(), height, ink)
        elif view.kind == "named":
            _arrowheads(painter, QPointF(rect.left() + 0.55 * height, middle), height, ink)
            spot = QPointF(rect.left() + 1.02 * height, middle)
            draw_text(painter, spot, view.text, size, ink, CHOSEN, align=0.0)
        else:
            spot = QPointF(rect.left() + 0.38 * height, middle)
            draw_text(painter, spot, view.text, size, ink, CHOSEN, align=0.0)
            _arrowheads(painter, QPointF(rect.right() - 0.5 * height, middle), height, ink)


def _arrowheads(painter: QPainter, centre: QPointF, height: float, colour: str) -> None:
    half, tall, apart = 0.21 * height, 0.2 * height, 0.1 * height
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(colour))
    for sign in (-1, 1):
        base = centre.y() + sign * apart
        tip = QPointF(centre.x(), base + sign * tall)
        painter.drawPolygon(
            QPolygonF([QPointF(centre.x() - half, base), QPointF(centre.x() + half, base), tip])
        )


def paint_bracket(painter: QPainter, rect: QRectF, view: BracketView) -> None:
    """A bracket open to the right: the band reaches from its top to its bottom."""
    width = rect.width() * (0.5 if view.chosen else 0.32)
    pen = QPen(QColor(BLACK), width)
    pen.setCapStyle(Qt.PenCapStyle.FlatCap)
    pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
    half = width / 2
    path = QPainterPath(QPointF(rect.right(), rect.top() + half))
    path.lineTo(rect.left() + half, rect.top() + half)
    path.lineTo(rect.left() + half, rect.bottom() - half)
    path.lineTo(rect.right(), rect.bottom() - half)
    with kept(painter):
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(path)

"""A painted swatch card on its picture: every field outlined, with its word; or its four marks."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from app.drawing.ink import BLACK, WHITE, draw_text, kept, text_size

Quad = tuple[tuple[float, float], ...]
"""Four places as shares of the picture's width and height."""

RING = 11.0
LEAST_TEXT = 7.0
_PAD = 3.0


@dataclass(frozen=True)
class FieldMark:
    """One field.

    Attributes
    ----------
    quad : tuple of four (x, y)
    word : str
    used : bool
        Outlined whole where it is used, broken where it is not.
    """

    quad: Quad
    word: str
    used: bool


@dataclass(frozen=True)
class FieldsView:
    """What lies over the picture.

    Attributes
    ----------
    fields : tuple of FieldMark
    chosen : int or None
        The field the keys are at.
    corners : Quad or None
        The marks' middles, while they are set by hand.
    corner : int or None
        The one the keys are at.
    text : float
        Size of the words, in the painter's units.
    """

    fields: tuple[FieldMark, ...] = ()
    chosen: int | None = None
    corners: Quad | None = None
    corner: int | None = None
    text: float = 11.0


def paint_fields(painter: QPainter, rect: QRectF, view: FieldsView) -> None:
    """Draw over a picture that fills `rect`."""
    with kept(painter):
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for number, field in enumerate(view.fields):
            _paint_field(painter, rect, field, view.text, chosen=number == view.chosen)
        if view.corners is not None:
            _paint_corners(painter, rect, view)


def place_in(rect: QRectF, at: tuple[float, float]) -> QPointF:
    """A share of the picture as a place in `rect`."""
    return QPointF(rect.left() + at[0] * rect.width(), rect.top() + at[1] * rect.height())


def _paint_field(
    painter: QPainter, rect: QRectF, field: FieldMark, size: float, *, chosen: bool
) -> None:
    polygon = QPolygonF([place_in(rect, at) for at in field.quad])
    painter.setBrush(Qt.BrushStyle.NoBrush)
    wide = 2.5 if chosen else 1.25
    for colour, width in ((WHITE, wide + 2.5), (BLACK, wide)):
        pen = QPen(QColor(colour), width)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        if not field.used and colour == BLACK:
            pen.setDashPattern([4, 3])
        painter.setPen(pen)
        painter.drawPolygon(polygon)
    bounds = polygon.boundingRect()
    room = bounds.width() - 2 * _PAD
    wide_text, tall = text_size(field.word, size)
    if wide_text > room:
        size = max(size * room / wide_text, LEAST_TEXT)
        wide_text, tall = text_size(field.word, size)
    middle = bounds.center()
    label = QRectF(0, 0, wide_text + 2 * _PAD, tall + _PAD)
    label.moveCenter(middle)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(BLACK if field.used else WHITE))
    painter.drawRoundedRect(label, 3, 3)
    ink = WHITE if field.used else BLACK
    draw_text(painter, label.center(), field.word, size, ink)


def _paint_corners(painter: QPainter, rect: QRectF, view: FieldsView) -> None:
    assert view.corners is not None
    places = [place_in(rect, at) for at in view.corners]
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for colour, width in ((BLACK, 3.0), (WHITE, 1.25)):
        painter.setPen(QPen(QColor(colour), width))
        painter.drawPolygon(QPolygonF(places))
    for number, place in enumerate(places):
        wide = 4.0 if number == view.corner else 2.0
        for colour, width in ((BLACK, wide + 2.5), (WHITE, wide)):
            painter.setPen(QPen(QColor(colour), width))
            painter.drawEllipse(place, RING, RING)
            painter.drawPoint(place)

"""A scale of ten boxes to score oneself on by hand: on the printed worksheet."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import CHOSEN, INK, WHITE, box, draw_text, kept

COUNT: Final = 10

_GAP = 0.11
_NUMBER = 0.5
_SECOND = 400
_EDGE = "#6e6e6e"


@dataclass(frozen=True)
class ScoreScaleView:
    """A scale, as high as its boxes.

    Attributes
    ----------
    own : int or None
        The student's score, 1..10: its box is filled with ink.
    """

    own: int | None = None


def score_boxes(rect: QRectF) -> tuple[QRectF, ...]:
    """The ten boxes, 1 first, across the whole width of `rect`."""
    gap = _GAP * rect.height()
    wide = (rect.width() - (COUNT - 1) * gap) / COUNT
    return tuple(
        QRectF(rect.left() + number * (wide + gap), rect.top(), wide, rect.height())
        for number in range(COUNT)
    )


def paint_score_scale(painter: QPainter, rect: QRectF, view: ScoreScaleView) -> None:
    """A scale filling `rect`."""
    with kept(painter):
        for number, spot in enumerate(score_boxes(rect), 1):
            _paint_box(painter, spot, number, chosen=number == view.own)


def _paint_box(painter: QPainter, spot: QRectF, number: int, *, chosen: bool) -> None:
    high = spot.height()
    width = 0.036 * high
    inside = spot.adjusted(width / 2, width / 2, -width / 2, -width / 2)
    painter.setPen(QPen(QColor(INK if chosen else _EDGE), width))
    painter.setBrush(QColor(INK if chosen else WHITE))
    painter.drawPath(box(inside, 0.14 * high))
    size = min(_NUMBER * high, 0.62 * spot.width())
    ink, weight = (WHITE, CHOSEN) if chosen else (INK, _SECOND)
    draw_text(painter, spot.center(), str(number), size, ink, weight)

"""A scale of ten boxes to score oneself on: on the worksheet page and on the printed worksheet."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.drawing.ink import CHOSEN, FIRST, box, draw_text, kept, text_size

COUNT: Final = 10

# Heights of the three lines, by the height of a box.
ANCHORS: Final = 0.56
BELOW: Final = 0.72
_GAP = 0.11
_NUMBER = 0.5
_WORDS = 0.385
_SECOND = 400


@dataclass(frozen=True)
class ScaleInks:
    """The page's colours; as they stand, those of white paper."""

    ink: str = "#141414"
    on_ink: str = "#ffffff"
    ground: str = "#ffffff"
    second: str = "#3d3d3d"
    edge: str = "#6e6e6e"
    hover: str = "#c2c2c2"


@dataclass(frozen=True)
class ScoreScaleView:
    """A scale.

    Attributes
    ----------
    own : int or None
        The student's score, 1..10: its box is filled with ink.
    measured : int or None
        Where the hollow triangle stands.
    measured_text : str
        Beside the triangle: "measured 7".
    note : str
        Below the boxes where nothing is measured: what is missing, or what a score means.
    strong : bool
        The note is something to do.
    anchors : tuple of (score, words)
        Above the boxes; empty for no line above.
    below : bool
        Whether there is a line below the boxes.
    pointed : int or None
        The score under the mouse.
    """

    own: int | None = None
    measured: int | None = None
    measured_text: str = ""
    note: str = ""
    strong: bool = False
    anchors: tuple[tuple[int, str], ...] = ()
    below: bool = True
    pointed: int | None = None
    inks: ScaleInks = field(default_factory=ScaleInks)


def scale_height(box_height: float, view: ScoreScaleView) -> float:
    """Height of a scale whose boxes are `box_height` high."""
    above = ANCHORS if view.anchors else 0.0
    below = BELOW if view.below else 0.0
    return box_height * (1.0 + above + below)


def score_boxes(rect: QRectF, view: ScoreScaleView) -> tuple[QRectF, ...]:
    """The ten boxes, 1 first, across the whole width of `rect`."""
    high = rect.height() / (scale_height(1.0, view))
    top = rect.top() + (ANCHORS * high if view.anchors else 0.0)
    gap = _GAP * high
    wide = (rect.width() - (COUNT - 1) * gap) / COUNT
    return tuple(
        QRectF(rect.left() + number * (wide + gap), top, wide, high) for number in range(COUNT)
    )


def paint_score_scale(painter: QPainter, rect: QRectF, view: ScoreScaleView) -> None:
    """A scale filling `rect`; a long note may reach out to the left of it."""
    boxes = score_boxes(rect, view)
    high = boxes[0].height()
    with kept(painter):
        for number, spot in enumerate(boxes, 1):
            _paint_box(painter, spot, number, view)
        for score, words in view.anchors:
            _paint_anchor(painter, rect, boxes[score - 1], score, words, view)
        if not view.below:
            return
        middle = boxes[0].bottom() + 0.42 * BELOW * high + 0.06 * high
        if view.measured is not None:
            _paint_measured(painter, rect, boxes[view.measured - 1], middle, view)
        elif view.note:
            size = _WORDS * high
            weight = FIRST if view.strong else _SECOND
            ink = view.inks.ink if view.strong else view.inks.second
            fits = text_size(view.note, size, weight)[0] <= rect.width()
            place = QPointF(rect.left() if fits else rect.right(), middle)
            draw_text(painter, place, view.note, size, ink, weight, align=0.0 if fits else 1.0)


def _paint_box(painter: QPainter, spot: QRectF, number: int, view: ScoreScaleView) -> None:
    high, inks = spot.height(), view.inks
    chosen = number == view.own
    width = 0.036 * high
    inside = spot.adjusted(width / 2, width / 2, -width / 2, -width / 2)
    pointed = number == view.pointed and not chosen
    painter.setPen(QPen(QColor(inks.ink if chosen or pointed else inks.edge), width))
    painter.setBrush(QColor(inks.ink if chosen else inks.hover if pointed else inks.ground))
    painter.drawPath(box(inside, 0.14 * high))
    size = min(_NUMBER * high, 0.62 * spot.width())
    ink, weight = (inks.on_ink, CHOSEN) if chosen else (inks.ink, _SECOND)
    draw_text(painter, spot.center(), str(number), size, ink, weight)


def _paint_anchor(
    painter: QPainter, rect: QRectF, spot: QRectF, score: int, words: str, view: ScoreScaleView
) -> None:
    high = spot.height()
    room = 2.9 * spot.width()
    size = _WORDS * high
    # Longer words of other languages shrink before they run into each other.
    size *= min(1.0, room / max(text_size(words, size, _SECOND)[0], 0.01))
    middle = rect.top() + 0.42 * ANCHORS * high
    at = {1: (rect.left(), 0.0), COUNT: (rect.right(), 1.0)}
    x, align = at.get(score, (spot.center().x(), 0.5))
    draw_text(painter, QPointF(x, middle), words, size, view.inks.second, _SECOND, align=align)


def _paint_measured(
    painter: QPainter, rect: QRectF, spot: QRectF, middle: float, view: ScoreScaleView
) -> None:
    high, inks = spot.height(), view.inks
    half = 0.17 * high
    x = spot.center().x()
    triangle = QPainterPath(QPointF(x, middle - half))
    triangle.lineTo(QPointF(x + 1.1 * half, middle + 0.8 * half))
    triangle.lineTo(QPointF(x - 1.1 * half, middle + 0.8 * half))
    triangle.closeSubpath()
    pen = QPen(QColor(inks.ink), 0.045 * high)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawPath(triangle)
    size = _WORDS * high
    wide = text_size(view.measured_text, size)[0]
    right = x + 2.0 * half + wide <= rect.right()
    edge = x + 2.0 * half if right else x - 2.0 * half
    text_at = QPointF(edge, middle)
    draw_text(
        painter, text_at, view.measured_text, size, inks.ink, FIRST, align=0.0 if right else 1.0
    )

"""A scale to score oneself on with one stroke: a strip of paper, brushed as far as the score."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QBrush, QColor, QLinearGradient, QPainter, QPainterPath, QPen

from app.drawing.ink import CHOSEN, FIRST, box, draw_text, kept, text_size
from app.drawing.score_scale import COUNT

# By the height of the strip.
BELOW: Final = 0.54
_NUMBER = 0.5
_WORDS = 0.44
_SECOND = 400
_STEPS = 28
_BRISTLES = (-0.27, -0.06, 0.13, 0.3)


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
class BrushScaleView:
    """A scale.

    Attributes
    ----------
    own : int or None
        The student's score, 1..10: the stroke ends there.
    measured : int or None
        Where the hollow triangle stands.
    measured_text : str
        Beside the triangle: "measured 7".
    note : str
        Below the strip where nothing is measured: what is missing, or what a score means.
    strong : bool
        The note is something to do.
    pointed : int or None
        The score under the mouse: a pale stroke shows how far it would go.
    anchors : tuple of int
        The scores that have words, ticked on the strip.
    words : float
        Size of the words below, in the painter's units; 0: it follows the strip.
    """

    own: int | None = None
    measured: int | None = None
    measured_text: str = ""
    note: str = ""
    strong: bool = False
    pointed: int | None = None
    anchors: tuple[int, ...] = (1, 4, 7, 10)
    words: float = 0.0
    inks: ScaleInks = field(default_factory=ScaleInks)


def brush_scale_height(strip: float) -> float:
    """Height of a scale whose strip is `strip` high."""
    return strip * (1.0 + BELOW)


def strip_of(rect: QRectF) -> QRectF:
    """The strip of paper within a scale."""
    return QRectF(rect.left(), rect.top(), rect.width(), rect.height() / (1.0 + BELOW))


def score_cells(rect: QRectF) -> tuple[QRectF, ...]:
    """Where on the strip each score is, 1 first, edge to edge across the whole width."""
    strip = strip_of(rect)
    wide = strip.width() / COUNT
    return tuple(
        QRectF(strip.left() + number * wide, strip.top(), wide, strip.height())
        for number in range(COUNT)
    )


def paint_anchor_words(
    painter: QPainter, rect: QRectF, words: tuple[tuple[int, str], ...], size: float, colour: str
) -> None:
    """The words of a few scores, above all the strips they are true of."""
    wide = rect.width() / COUNT
    with kept(painter):
        for score, text in words:
            # Longer words of other languages shrink before they run into each other.
            fitted = size * min(1.0, 2.9 * wide / max(text_size(text, size, _SECOND)[0], 0.01))
            at = {1: (rect.left(), 0.0), COUNT: (rect.right(), 1.0)}
            x, align = at.get(score, (rect.left() + (score - 0.5) * wide, 0.5))
            spot = QPointF(x, rect.center().y())
            draw_text(painter, spot, text, fitted, colour, _SECOND, align=align)


def paint_brush_scale(painter: QPainter, rect: QRectF, view: BrushScaleView) -> None:
    """A scale filling `rect`; a long note may reach out to the left of it."""
    strip, cells, inks = strip_of(rect), score_cells(rect), view.inks
    high = strip.height()
    with kept(painter):
        width = max(0.04 * high, 1.0)
        inside = strip.adjusted(width / 2, width / 2, -width / 2, -width / 2)
        painter.setPen(QPen(QColor(inks.edge), width))
        painter.setBrush(QColor(inks.ground))
        painter.drawPath(box(inside, 0.1 * high))
        painter.setPen(Qt.PenStyle.NoPen)
        for score in view.anchors:
            x = cells[score - 1].center().x()
            painter.fillRect(
                QRectF(x - width / 2, strip.bottom() - 0.2 * high, width, 0.2 * high),
                QColor(inks.edge),
            )
        if view.pointed is not None and view.pointed != view.own:
            wash = QBrush(QColor(inks.hover))
            _paint_stroke(painter, strip, cells[view.pointed - 1], wash, inks.ground)
        if view.own is not None:
            cell = cells[view.own - 1]
            _paint_stroke(painter, strip, cell, _wash(strip, cell, inks), inks.ground)
        size = min(_NUMBER * high, 0.62 * cells[0].width())
        for number, spot in enumerate(cells, 1):
            if number == view.own:
                draw_text(painter, spot.center(), str(number), size, inks.on_ink, CHOSEN)
            elif view.own is None or number > view.own:
                draw_text(painter, spot.center(), str(number), 0.84 * size, inks.second, _SECOND)
        _paint_below(painter, rect, strip, cells, view)


def _stroke_path(strip: QRectF, end: float) -> QPainterPath:
    """A flat brush drawn from the left edge to `end`: edges that waver, a lifted tip."""
    high = strip.height()
    left, tip = strip.left() + 0.1 * high, 0.3 * high
    body, middle = end - tip, strip.center().y()

    def edge(x: float, phase: float) -> float:
        t = (x - left) / high
        waver = 0.5 * math.sin(1.3 * t + phase) + 0.3 * math.sin(3.1 * t + 2 * phase)
        return (0.38 + 0.035 * waver) * high

    xs = [left + (body - left) * step / _STEPS for step in range(_STEPS + 1)]
    path = QPainterPath(QPointF(left + 0.05 * high, middle - edge(left, 0.4)))
    for x in xs[1:]:
        path.lineTo(x, middle - edge(x, 0.4))
    path.cubicTo(
        QPointF(body + 0.8 * tip, middle - 0.34 * high),
        QPointF(end, middle - 0.16 * high),
        QPointF(end, middle + 0.05 * high),
    )
    path.cubicTo(
        QPointF(end - 0.1 * tip, middle + 0.22 * high),
        QPointF(body + 0.5 * tip, middle + 0.36 * high),
        QPointF(body, middle + edge(body, 2.1)),
    )
    for x in reversed(xs[:-1]):
        path.lineTo(x, middle + edge(x, 2.1))
    path.cubicTo(
        QPointF(left - 0.07 * high, middle + 0.2 * high),
        QPointF(left - 0.03 * high, middle - 0.2 * high),
        QPointF(left + 0.05 * high, middle - edge(left, 0.4)),
    )
    return path


def _wash(strip: QRectF, cell: QRectF, inks: ScaleInks) -> QBrush:
    """A graded wash: pale where the brush was set down, full where the score is."""
    wash = QLinearGradient(QPointF(strip.left(), 0), QPointF(cell.right(), 0))
    wash.setColorAt(0.0, QColor(inks.hover))
    full = (cell.left() - strip.left()) / (cell.right() - strip.left())
    wash.setColorAt(max(full - 0.01, 0.0), QColor(inks.ink))
    return QBrush(wash)


def _paint_stroke(
    painter: QPainter, strip: QRectF, cell: QRectF, wash: QBrush, ground: str
) -> None:
    high = strip.height()
    path = _stroke_path(strip, cell.right() - 0.06 * high)
    painter.save()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(wash)
    painter.drawPath(path)
    # The brush runs dry towards its tip: the paper shows between the bristles.
    painter.setClipPath(path, Qt.ClipOperation.IntersectClip)
    middle, tip = strip.center().y(), cell.right() - 0.06 * high
    for number, at in enumerate(_BRISTLES):
        y = middle + at * high
        length = (0.24 + 0.1 * math.sin(2.7 * number + 1)) * high
        pen = QPen(QColor(ground), 0.035 * high)
        pen.setCapStyle(Qt.PenCapStyle.RoundCap)
        painter.setPen(pen)
        painter.drawLine(QPointF(tip - length, y), QPointF(tip, y + 0.02 * high))
    painter.restore()


def _paint_below(
    painter: QPainter,
    rect: QRectF,
    strip: QRectF,
    cells: tuple[QRectF, ...],
    view: BrushScaleView,
) -> None:
    high, inks = strip.height(), view.inks
    size = view.words or _WORDS * high
    middle = strip.bottom() + 0.5 * BELOW * high
    if view.measured is not None:
        x, half = cells[view.measured - 1].center().x(), 0.36 * size
        triangle = QPainterPath(QPointF(x, middle - half))
        triangle.lineTo(QPointF(x + 1.1 * half, middle + 0.8 * half))
        triangle.lineTo(QPointF(x - 1.1 * half, middle + 0.8 * half))
        triangle.closeSubpath()
        pen = QPen(QColor(inks.ink), 0.1 * size)
        pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawPath(triangle)
        wide = text_size(view.measured_text, size)[0]
        right = x + 2.0 * half + wide <= rect.right()
        spot = QPointF(x + (2.0 if right else -2.0) * half, middle)
        align = 0.0 if right else 1.0
        draw_text(painter, spot, view.measured_text, size, inks.ink, FIRST, align=align)
    elif view.note:
        weight = FIRST if view.strong else _SECOND
        ink = inks.ink if view.strong else inks.second
        fits = text_size(view.note, size, weight)[0] <= rect.width()
        spot = QPointF(rect.left() if fits else rect.right(), middle)
        draw_text(painter, spot, view.note, size, ink, weight, align=0.0 if fits else 1.0)

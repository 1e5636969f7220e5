"""Between two pictures of the board: where lines should be, arrows to there, and the words."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from app.drawing.ink import BLACK, along, draw_text, haloed, text_size
from app.drawing.sheets.shape import (
    BoardView,
    LineOnSheet,
)
from app.drawing.spread import spread_line
from app.look.type import CHOSEN, FIRST, SECOND

# In sizes of the gutters' words.
_DASH = (0.42, 0.3)
_INTO = 4.6  # of the dashes into the sheet
_ARROW = 2.0  # from the sheet to the arrow
_WORDS = 3.0  # from the sheet to the words' end


@dataclass(frozen=True)
class GutterWords:
    """What is said of a line in the gutter, and where."""

    line: LineOnSheet
    end: QPointF
    weight: int

    def box(self, text: float) -> QRectF:
        """Their place, with a little room."""
        width, _ = text_size(self.line.text, text, self.weight)
        around = 0.2 * text
        left = self.end.x() - width - around
        return QRectF(left, self.end.y() - 0.55 * text, width + 2 * around, 1.1 * text)


def gutter_words(
    place: QRectF, lines: tuple[LineOnSheet, ...], view: BoardView
) -> list[GutterWords]:
    """The words beside the lines of a sheet, clear of each other."""
    text, said, wanted = view.text, [], []
    for line, should in zip(lines, view.lines, strict=False):
        if not line.text:
            continue
        target = place.top() + should * place.height()
        row = target if line.at is None else place.top() + line.at * place.height()
        away = -1.0 if row <= target else 1.0
        said.append(line)
        wanted.append(row + away * (0.62 * text if line.arrow else 0.72 * text))
    said, wanted = _apart(said, wanted, 1.12 * text)
    low, high = place.top() + 0.5 * text, place.bottom() - 0.3 * text
    words = []
    for line, y in zip(said, spread_line(wanted, 1.12 * text, low, high), strict=True):
        weight = CHOSEN if line.arrow else FIRST if line.at is not None else SECOND
        right = place.left() - (_WORDS if line.arrow else 0.7) * text
        words.append(GutterWords(line, QPointF(right, y), weight))
    return words


def _apart(
    said: list[LineOnSheet], wanted: list[float], least: float
) -> tuple[list[LineOnSheet], list[float]]:
    """From the top down, the numbers in the order of their lines, so that each stays by its own.

    Where "cannot tell" would touch a number it leaves its place: a line far off may be beyond
    its neighbour.
    """
    numbers = [(line, y) for line, y in zip(said, wanted, strict=True) if line.arrow]
    heights = _in_order([y for _, y in numbers])
    pairs = [(line, y) for (line, _), y in zip(numbers, heights, strict=True)]
    pairs += [
        (line, y)
        for line, y in zip(said, wanted, strict=True)
        if not line.arrow and all(abs(y - other) >= least for other in heights)
    ]
    pairs.sort(key=lambda pair: pair[1])
    return [line for line, _ in pairs], [y for _, y in pairs]


def _in_order(heights: list[float]) -> list[float]:
    """Heights that cross meet in their middle, a hair apart."""
    heights = list(heights)
    for _ in heights:
        for k in range(1, len(heights)):
            if heights[k] <= heights[k - 1]:
                middle = (heights[k] + heights[k - 1]) / 2
                heights[k - 1], heights[k] = middle - 0.01, middle + 0.01
    return heights


def paint_dashes(
    painter: QPainter,
    before: QRectF,
    place: QRectF,
    view: BoardView,
    words: list[GutterWords],
) -> None:
    """From the picture on the left: where each line should be; not through the words there."""
    text = view.text
    open_ground = QPainterPath()
    open_ground.addRect(before.united(place))
    for word in words:
        covered = QPainterPath()
        covered.addRect(word.box(text))
        open_ground = open_ground.subtracted(covered)
    painter.save()
    painter.setClipPath(open_ground, Qt.ClipOperation.IntersectClip)
    pattern = [_DASH[0] / 0.11, _DASH[1] / 0.11]
    for y in view.lines:
        row = place.top() + y * place.height()
        pen = QPen(QColor(BLACK), 0.11 * text)
        pen.setDashPattern(pattern)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        start = QPointF(before.right() + 0.5 * text, row)
        painter.drawLine(start, QPointF(place.left(), row))
        # On the painting the dashes have a white ground, to be seen on any colour.
        path = along(QPointF(place.left(), row), QPointF(place.left() + _INTO * text, row))
        dashes = (_DASH[0] * text, _DASH[1] * text)
        haloed(painter, path, 0.11 * text, 0.22 * text, dashes)
    painter.restore()


def paint_shifts(
    painter: QPainter,
    place: QRectF,
    lines: tuple[LineOnSheet, ...],
    view: BoardView,
    words: list[GutterWords],
) -> None:
    """Arrows from where a line is to where it should be, and the words for it."""
    for line, should in zip(lines, view.lines, strict=False):
        if line.text and line.arrow and line.at is not None:
            start, end = (place.top() + y * place.height() for y in (line.at, should))
            _paint_arrow(painter, place.left() - _ARROW * view.text, start, end, view.text)
    for word in words:
        draw_text(painter, word.end, word.line.text, view.text, BLACK, word.weight, align=1.0)


def _paint_arrow(painter: QPainter, x: float, start: float, end: float, text: float) -> None:
    """From `start` to `end`; a short way is a head alone, standing off so that it is seen."""
    way = 1.0 if end >= start else -1.0
    head, half = 0.62 * text, 0.48 * text
    tail = min(abs(end - start) - head, 1e9)
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(BLACK))
    tip = QPointF(x, end)
    base = end - way * head
    painter.drawPolygon(QPolygonF([tip, QPointF(x - half, base), QPointF(x + half, base)]))
    if tail > 0.05 * text:
        painter.setPen(QPen(QColor(BLACK), 0.2 * text, c=Qt.PenCapStyle.FlatCap))
        painter.drawLine(QPointF(x, start), QPointF(x, base))

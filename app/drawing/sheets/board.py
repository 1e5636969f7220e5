"""The sky and two sheets side by side, level, with where every line is and where it should be."""

from __future__ import annotations

from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.drawing.ink import BLACK, along, haloed, kept
from app.drawing.lines import BracketView, LineView, paint_bracket, paint_line
from app.drawing.marks import BadgeView, paint_badge
from app.drawing.sheets.gutter import gutter_words, paint_dashes, paint_shifts
from app.drawing.sheets.marks import paint_marks
from app.drawing.sheets.shape import (
    BoardView,
    LineOnSheet,
    PictureOnBoard,
    board_shape,
)
from app.drawing.spread import spread_line

# In sizes of the gutters' words.
_LINE = 0.46  # height of the heavy line
_OVERHANG = 1.0  # of a sheet's lines into the gutter
_LETTERS_OVER = 0.5
_LEAST_RADIUS = 0.55  # of a letter's badge


def paint_board(painter: QPainter, rect: QRectF, view: BoardView) -> None:
    """Draw the board into `rect`; only what `board_shape` needs of it is used."""
    shape = board_shape(rect, view.aspect, view.text, 1 + len(view.sheets))
    sky, *sheets = shape.pictures
    with kept(painter):
        _paint_picture(painter, sky, view.sky, view)
        for place, sheet in zip(sheets, view.sheets, strict=True):
            _paint_picture(painter, place, sheet, view)
        _paint_letters(painter, sky, view)
        for number, (place, sheet) in enumerate(zip(sheets, view.sheets, strict=True)):
            if number == view.aimed:
                _paint_aim(painter, place, view.text)
            if sheet.picture is not None:
                before = shape.pictures[number]
                words = gutter_words(place, sheet.lines, view)
                paint_dashes(painter, before, place, view, words)
                _paint_sheet_lines(painter, place, sheet.lines, view)
                paint_shifts(painter, place, sheet.lines, view, words)
                paint_marks(painter, place, sheet, view.text)
        for y in view.lines:
            _paint_line(painter, sky.left(), sky.right(), sky.top() + y * sky.height(), view.text)


def _paint_picture(
    painter: QPainter, place: QRectF, shown: PictureOnBoard, view: BoardView
) -> None:
    if shown.picture is None:
        pen = QPen(QColor(BLACK), 0.1 * view.text)
        pen.setDashPattern([5, 4])
        painter.setPen(pen)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        half = 0.05 * view.text
        place = QRectF(place)
        place.setHeight(max(place.height(), view.empty_height))
        painter.drawRect(place.adjusted(half, half, -half, -half))
        return
    left, top, right, bottom = shown.crop
    width, height = place.width() / (right - left), place.height() / (bottom - top)
    whole = QRectF(place.left() - left * width, place.top() - top * height, width, height)
    painter.save()
    painter.setClipRect(place, Qt.ClipOperation.IntersectClip)
    shown.picture.draw(painter, whole, view.ratio)
    painter.restore()


def _paint_line(painter: QPainter, left: float, right: float, y: float, text: float) -> None:
    height = _LINE * text
    paint_line(painter, QRectF(left, y - height / 2, right - left, height), LineView("plain"))


def _paint_letters(painter: QPainter, sky: QRectF, view: BoardView) -> None:
    text, edges = view.text, view.edges
    tops = [sky.top() + y * sky.height() for y in edges]
    middles = [(a + b) / 2 for a, b in pairwise(tops)]
    thinnest = min(b - a for a, b in pairwise(tops))
    radius = min(max(0.42 * thinnest, 0.92 * text), 1.12 * text)
    # On a low picture the letters reach a little beyond it, and get smaller before they touch.
    top, bottom = sky.top() - _LETTERS_OVER * text, sky.bottom() + _LETTERS_OVER * text
    gap = 0.15 * text
    radius = max(min(radius, ((bottom - top) / len(middles) - gap) / 2), _LEAST_RADIUS * text)
    if len(middles) * (2 * radius + gap) <= sky.height():
        top, bottom = sky.top(), sky.bottom()
    centres = spread_line(middles, 2 * radius + gap, top + radius, bottom - radius)
    x = sky.left() - 2.45 * text
    bracket_left = sky.left() - 0.78 * text
    for number, centre in enumerate(centres):
        upper, lower = tops[number] + 0.28 * text, tops[number + 1] - 0.28 * text
        chosen = number == view.chosen
        bracket = QRectF(bracket_left, upper, 0.42 * text, max(lower - upper, 0.2 * text))
        if abs(centre - middles[number]) > 0.3 * text:
            stem = along(QPointF(x + radius, centre), QPointF(bracket_left, middles[number]))
            haloed(painter, stem, 0.11 * text, 0.11 * text)
        paint_bracket(painter, bracket, BracketView(chosen))
        badge = QRectF(x - radius, centre - radius, 2 * radius, 2 * radius)
        paint_badge(painter, badge, BadgeView(view.letters[number], chosen=chosen))


def _paint_sheet_lines(
    painter: QPainter, place: QRectF, lines: tuple[LineOnSheet, ...], view: BoardView
) -> None:
    for line in lines:
        if line.at is not None:
            left = place.left() - _OVERHANG * view.text
            y = place.top() + line.at * place.height()
            _paint_line(painter, left, place.right(), y, view.text)


def _paint_aim(painter: QPainter, place: QRectF, text: float) -> None:
    """A picture held over a place would land here."""
    path = QPainterPath()
    path.addRect(place.adjusted(-0.3 * text, -0.3 * text, 0.3 * text, 0.3 * text))
    haloed(painter, path, 0.25 * text, 0.5 * text)

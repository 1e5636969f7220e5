"""The sky and two sheets side by side, level, with where every line is and where it should be."""

from __future__ import annotations

import math
from itertools import pairwise

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from app.look.type import CHOSEN, FIRST, SECOND
from app.paint.ink import BLACK, WHITE, along, draw_text, haloed, kept
from app.paint.lines import BracketView, LineView, paint_bracket, paint_line
from app.paint.marks import BadgeView, TagView, paint_badge, paint_tag, tag_width
from app.paint.sheet_shape import (
    BoardView,
    LineOnSheet,
    MarkOnSheet,
    PictureOnBoard,
    board_shape,
)
from app.paint.sheet_tags import Box, place_tags
from app.paint.spread import spread_line

# In sizes of the gutters' words.
_LINE = 0.46  # height of the heavy line
_OVERHANG = 1.0  # of a sheet's lines into the gutter
_DASH = (0.42, 0.3)
_INTO = 4.6  # of the dashes into the sheet
_ARROW = 2.0  # from the sheet to the arrow
_WORDS = 3.0  # from the sheet to the words' end
_TAG = 2.0  # height of a tag
_MARK_LINE = (0.14, 0.34)


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
                _paint_dashes(painter, before, place, view)
                _paint_sheet_lines(painter, place, sheet.lines, view)
                _paint_shifts(painter, place, sheet.lines, view)
                _paint_marks(painter, place, sheet, view.text)
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
    centres = spread_line(
        middles, 2 * radius + 0.15 * text, sky.top() + radius, sky.bottom() - radius
    )
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


def _paint_dashes(painter: QPainter, before: QRectF, place: QRectF, view: BoardView) -> None:
    """From the picture on the left: where each line should be."""
    text = view.text
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


def _paint_sheet_lines(
    painter: QPainter, place: QRectF, lines: tuple[LineOnSheet, ...], view: BoardView
) -> None:
    for line in lines:
        if line.at is not None:
            left = place.left() - _OVERHANG * view.text
            y = place.top() + line.at * place.height()
            _paint_line(painter, left, place.right(), y, view.text)


def _paint_shifts(
    painter: QPainter, place: QRectF, lines: tuple[LineOnSheet, ...], view: BoardView
) -> None:
    """Arrows from where a line is to where it should be, and the words for it."""
    text, said, wanted = view.text, [], []
    for line, should in zip(lines, view.lines, strict=False):
        if not line.text:
            continue
        target = place.top() + should * place.height()
        row = target if line.at is None else place.top() + line.at * place.height()
        away = -1.0 if row <= target else 1.0
        if line.arrow:
            _paint_arrow(painter, place.left() - _ARROW * text, row, target, text)
        said.append(line)
        wanted.append(row + away * (0.62 * text if line.arrow else 0.72 * text))
    low, high = place.top() + 0.5 * text, place.bottom() - 0.3 * text
    for line, y in zip(said, spread_line(wanted, 1.12 * text, low, high), strict=True):
        weight = CHOSEN if line.arrow else FIRST if line.at is not None else SECOND
        right = place.left() - (_WORDS if line.arrow else 0.7) * text
        draw_text(painter, QPointF(right, y), line.text, text, BLACK, weight, align=1.0)


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


def _paint_aim(painter: QPainter, place: QRectF, text: float) -> None:
    """A picture held over a place would land here."""
    path = QPainterPath()
    path.addRect(place.adjusted(-0.3 * text, -0.3 * text, 0.3 * text, 0.3 * text))
    haloed(painter, path, 0.25 * text, 0.5 * text)


def _paint_marks(painter: QPainter, place: QRectF, sheet: PictureOnBoard, text: float) -> None:
    if not sheet.marks:
        return
    anchors = [_anchor(mark, place, text) for mark in sheet.marks]
    height = _TAG * text
    widths = [tag_width(mark.text, height) for mark in sheet.marks]
    area = (
        place.left() + 0.5 * text,
        place.top() + 0.5 * text,
        place.right() - 0.5 * text,
        place.bottom() - 0.5 * text,
    )
    kept_clear = [_bloom_box(mark, place) for mark in sheet.marks if mark.kind == "bloom"]
    rows = [place.top() + line.at * place.height() for line in sheet.lines if line.at is not None]
    lines = [(place.left(), y - 0.2 * text, place.right(), y + 0.2 * text) for y in rows]
    centres = place_tags(anchors, widths, height, area, kept_clear, lines)
    for mark in sheet.marks:
        if mark.kind == "edge" and mark.end - mark.start < 0.9:
            _paint_extent(painter, place, mark, text)
    for mark, width, centre in zip(sheet.marks, widths, centres, strict=True):
        if centre is None:
            _paint_dot(painter, _anchor(mark, place, text), text)
            continue
        box = QRectF(centre[0] - width / 2, centre[1] - height / 2, width, height)
        end = _stem_end(mark, place, centre, text)
        paint_tag(painter, box, TagView(mark.text, end))


def _paint_dot(painter: QPainter, at: tuple[float, float], text: float) -> None:
    """Where something is that has no room for its tag; the findings name it."""
    spot = QPointF(*at)
    painter.setPen(QPen(QColor(WHITE), 0.14 * text))
    painter.setBrush(QColor(BLACK))
    painter.drawEllipse(spot, 0.32 * text, 0.32 * text)


def _anchor(mark: MarkOnSheet, place: QRectF, text: float) -> tuple[float, float]:
    x = place.left() + mark.x * place.width()
    y = place.top() + mark.y * place.height()
    if mark.kind == "corner":  # a little inside
        x += math.copysign(0.9 * text, 0.5 - mark.x)
        y += math.copysign(0.9 * text, 0.5 - mark.y)
    return x, y


def _bloom_box(mark: MarkOnSheet, place: QRectF) -> Box:
    x, y = _anchor(mark, place, 0.0)
    r = mark.radius * place.height()
    return x - r, y - r, x + r, y + r


def _stem_end(
    mark: MarkOnSheet, place: QRectF, tag: tuple[float, float], text: float
) -> tuple[float, float]:
    """A stem ends at the rim of a bloom, and at the middle of anything else."""
    x, y = _anchor(mark, place, text)
    distance = math.dist((x, y), tag)
    if mark.kind != "bloom" or distance == 0.0:
        return x, y
    reach = min(mark.radius * place.height() / distance, 0.9)
    return x + (tag[0] - x) * reach, y + (tag[1] - y) * reach


def _paint_extent(painter: QPainter, place: QRectF, mark: MarkOnSheet, text: float) -> None:
    """How far an edge runs that does not cross the whole sheet."""
    y = place.top() + mark.y * place.height()
    left = place.left() + mark.start * place.width()
    right = place.left() + mark.end * place.width()
    path = QPainterPath(QPointF(left, y - 0.5 * text))
    path.lineTo(left, y + 0.5 * text)
    path.moveTo(right, y - 0.5 * text)
    path.lineTo(right, y + 0.5 * text)
    haloed(painter, path, _MARK_LINE[0] * text, _MARK_LINE[1] * text, core=WHITE, around=BLACK)

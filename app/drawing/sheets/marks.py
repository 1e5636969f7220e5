"""The tags of hard edges, blooms and pale corners on a painting."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.drawing.ink import BLACK, WHITE, haloed
from app.drawing.marks import TagView, paint_tag, tag_width
from app.drawing.sheets.shape import (
    MarkOnSheet,
    PictureOnBoard,
)
from app.drawing.sheets.tags import Box, place_tags

# In sizes of the gutters' words.
_TAG = 2.0  # height of a tag
_MARK_LINE = (0.14, 0.34)


def paint_marks(painter: QPainter, place: QRectF, sheet: PictureOnBoard, text: float) -> None:
    """Draw what was found on a painting, each under its name where there is room."""
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

"""The painter's wheel, its neutral middle, and the bands upon it."""

from __future__ import annotations

import math
from collections.abc import Iterator
from functools import partial
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen, QPolygonF

from app.drawing.ink import BLACK, WHITE, along, disc, draw_text, haloed, kept
from app.drawing.pieces import Piece, lettered_piece, paint_pieces
from app.drawing.wheel.layout import wheel_geometry
from app.drawing.wheel.shape import (
    GAP_DEG,
    INNER,
    STEP_DEG,
    WEDGES,
    Placed,
    WheelGeometry,
    WheelView,
    Word,
    outer_of,
    polar,
)
from app.look.theme import WALL
from core.reading.reading import INTENSITY_RINGS

# From the middle outwards; the third is the wall.
RING_GREYS: Final = ("#9b9b9b", "#909090", WALL, "#7d7d7d")
OUTLINE: Final = "#262626"
_RING_LINE: Final = "#5c5c5c"


def paint_wheel(painter: QPainter, rect: QRectF, view: WheelView) -> WheelGeometry:
    """Draw the wheel in the middle of `rect`; its geometry comes back for hit-testing."""
    geometry = wheel_geometry(rect, view)
    paint_wheel_ground(painter, view, geometry)
    paint_wheel_bands(painter, view, geometry)
    return geometry


def paint_wheel_ground(painter: QPainter, view: WheelView, geometry: WheelGeometry) -> None:
    """Draw what no band moves: wedges, names and rings. A widget may keep it as a picture."""
    with kept(painter):
        _paint_wedges(painter, view, geometry)
        _paint_rings(painter, view, geometry)


def paint_wheel_bands(painter: QPainter, view: WheelView, geometry: WheelGeometry) -> None:
    """Draw the bands upon the ground: outlined wedges, words, ways and markers."""
    with kept(painter):
        paint_pieces(painter, wheel_pieces(view, geometry))


def wheel_pieces(view: WheelView, geometry: WheelGeometry) -> tuple[Piece, ...]:
    """The same in pieces: the painter has to be antialiasing."""
    return (
        *_outlines(view, geometry),
        *_words(view, geometry),
        *_ways(view, geometry),
        *_markers(view, geometry),
    )


def wedge_path(
    centre: QPointF, radius: float, wedge: int, inset: float = 0.0, inner: float = INNER
) -> QPainterPath:
    """Outline of a wedge, `inset` drawn in from its edges."""
    path = QPainterPath()
    for distance, turn in ((outer_of(wedge) * radius - inset, 1), (inner * radius + inset, -1)):
        # Drawn in by a length, not by an angle, so that the gaps stay even.
        half = STEP_DEG / 2 - GAP_DEG / 2 - math.degrees(math.asin(min(inset / distance, 1.0)))
        square = QRectF(centre.x() - distance, centre.y() - distance, 2 * distance, 2 * distance)
        # Qt counts degrees against the clock from the right.
        start = 90.0 - (wedge * STEP_DEG - turn * half)
        if turn == 1:
            path.arcMoveTo(square, start)
        path.arcTo(square, start, -turn * 2 * half)
    path.closeSubpath()
    return path


def _paint_wedges(painter: QPainter, view: WheelView, geometry: WheelGeometry) -> None:
    px, centre, radius = view.px, geometry.centre, geometry.radius
    line = max(1.0 * px, 0.0045 * radius)
    for wedge in range(WEDGES):
        lit = view.lit is None or wedge in view.lit
        painter.setPen(QPen(QColor(OUTLINE), line))
        painter.setBrush(QColor(view.colours[wedge] if lit else view.muted[wedge]))
        painter.drawPath(wedge_path(centre, radius, wedge, inner=geometry.inner))
        if geometry.names and lit:
            for word in geometry.names[wedge]:
                _draw_name(painter, word, view.inks[wedge])


def _draw_name(painter: QPainter, word: Word, ink: str) -> None:
    middle = word.rect.center()
    if word.squeeze == 1.0:
        draw_text(painter, middle, word.text, word.size, ink)
        return
    painter.save()
    painter.translate(middle)
    painter.scale(word.squeeze, 1.0)
    draw_text(painter, QPointF(0, 0), word.text, word.size, ink)
    painter.restore()


def _outlines(view: WheelView, geometry: WheelGeometry) -> Iterator[Piece]:
    if view.chosen is None:
        return
    px, centre, radius = view.px, geometry.centre, geometry.radius
    marker = view.markers[view.chosen]
    width = max(1.7 * px, 0.0085 * radius)

    def own(painter: QPainter, wedge: int) -> None:
        path = wedge_path(centre, radius, wedge, 1.3 * width, geometry.inner)
        haloed(painter, path, width, 2.6 * width, core=WHITE, around=BLACK)

    def opposite(painter: QPainter, wedge: int) -> None:
        path = wedge_path(centre, radius, wedge, 0.9 * width, geometry.inner)
        haloed(painter, path, width, 2.0 * width, (3.2 * width, 2.2 * width), around=WHITE)

    for wedge, paint in ((marker.family, own), (marker.complement, opposite)):
        if wedge is None or (paint is opposite and (not view.show_way or view.waiting)):
            continue
        rect = _wedge_rect(centre, radius, wedge, geometry.inner)
        key = (paint is own, wedge, centre.toTuple(), radius, width, geometry.inner)
        yield Piece(key, rect, partial(paint, wedge=wedge))


def _wedge_rect(centre: QPointF, radius: float, wedge: int, inner: float) -> QRectF:
    """What a wedge's outline may cover."""
    points = [
        polar(centre, distance * radius, (wedge + turn) * STEP_DEG)
        for distance in (inner, outer_of(wedge))
        for turn in (-0.5, 0.0, 0.5)
    ]
    xs, ys = [point.x() for point in points], [point.y() for point in points]
    # The arc between two of the points rises by less than this over its chord.
    more = 0.01 * radius + 2
    rect = QRectF(QPointF(min(xs), min(ys)), QPointF(max(xs), max(ys)))
    return rect.adjusted(-more, -more, more, more)


def _paint_rings(painter: QPainter, view: WheelView, geometry: WheelGeometry) -> None:
    px, centre, radius = view.px, geometry.centre, geometry.radius
    line = max(1.0 * px, 0.0045 * radius)
    if view.waiting:
        disc(painter, centre, geometry.disc * radius + line / 2, WALL, OUTLINE, line)
        return
    # The outer ring ends at the disc's edge, the others where the intensity word changes.
    ends = (1.0, *reversed(INTENSITY_RINGS[1:4]))
    for grey, end in zip(reversed(RING_GREYS), ends, strict=True):
        edge = OUTLINE if end == 1.0 else _RING_LINE
        disc(painter, centre, geometry.disc * end * radius + line / 2, grey, edge, line)
    painter.setPen(QPen(QColor(OUTLINE), line))
    for wedge in range(WEDGES):
        inner, outer = 0.965 * geometry.disc * radius, geometry.disc * radius
        deg = wedge * STEP_DEG
        painter.drawLine(polar(centre, inner, deg), polar(centre, outer, deg))


def _words(view: WheelView, geometry: WheelGeometry) -> Iterator[Piece]:
    px, centre, radius = view.px, geometry.centre, geometry.radius

    def paint(painter: QPainter, word: Word) -> None:
        middle = word.rect.center()
        distance = math.hypot(middle.x() - centre.x(), middle.y() - centre.y())
        share = distance / (geometry.disc * radius)
        grey = RING_GREYS[
            1 if share < INTENSITY_RINGS[2] else 2 if share < INTENSITY_RINGS[3] else 3
        ]
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(grey))
        patch = _patch(word, px)
        painter.drawRoundedRect(patch, patch.height() / 2, patch.height() / 2)
        draw_text(painter, middle, word.text, word.size, BLACK)

    for word in geometry.words:
        rect = _patch(word, px)
        key = (word.text, word.size, rect.getRect(), radius, geometry.disc)
        yield Piece(
            key, rect.adjusted(0, -word.size / 2, 0, word.size / 2), partial(paint, word=word)
        )


def _patch(word: Word, px: float) -> QRectF:
    """Ring lines stop at the word; nothing crosses a letter."""
    return word.rect.adjusted(-3 * px, 0.5 * px, 3 * px, -0.5 * px)


def _ways(view: WheelView, geometry: WheelGeometry) -> Iterator[Piece]:
    px, radius = view.px, geometry.radius
    width = max(1.7 * px, 0.0085 * radius)
    head = max(0.07 * radius, 10 * px)

    def onward(painter: QPainter, start: QPointF, end: QPointF) -> None:
        haloed(painter, along(end, start), width, 2.4 * width, (4 * width, 3 * width))

    def way(painter: QPainter, start: QPointF, end: QPointF) -> None:
        haloed(painter, along(start, end), width, 2.4 * width)
        _paint_arrowhead(painter, start, end, head, px)

    for ends, paint, reach in ((geometry.onward, onward, 0.0), (geometry.way, way, head)):
        if ends is None:
            continue
        start, end = ends
        more = 2.4 * width + reach + 2 * px
        rect = QRectF(start, end).normalized().adjusted(-more, -more, more, more)
        key = (paint is way, start.toTuple(), end.toTuple(), width, head)
        yield Piece(key, rect, partial(paint, start=start, end=end))


def _paint_arrowhead(
    painter: QPainter, start: QPointF, tip: QPointF, length: float, px: float
) -> None:
    dx, dy = tip.x() - start.x(), tip.y() - start.y()
    distance = math.hypot(dx, dy) or 1.0
    ux, uy = dx / distance, dy / distance
    half = 0.48 * length
    base = QPointF(tip.x() - ux * length, tip.y() - uy * length)
    left = QPointF(base.x() - uy * half, base.y() + ux * half)
    right = QPointF(base.x() + uy * half, base.y() - ux * half)
    pen = QPen(QColor(WHITE), 1.6 * px)
    pen.setJoinStyle(Qt.PenJoinStyle.RoundJoin)
    painter.setPen(pen)
    painter.setBrush(QColor(BLACK))
    painter.drawPolygon(QPolygonF([tip, left, right]))


def _markers(view: WheelView, geometry: WheelGeometry) -> Iterator[Piece]:
    px, size = view.px, geometry.marker_radius

    def stem(painter: QPainter, place: Placed) -> None:
        path = along(place.dot, place.disc)
        haloed(painter, path, 1.6 * px, 3.4 * px, flat=False)

    def dot(painter: QPainter, place: Placed) -> None:
        disc(painter, place.dot, 3.2 * px, BLACK, WHITE, 0.9 * px)

    for paint in (stem, dot):
        for place in geometry.placed:
            if place.moved:
                end = place.disc if paint is stem else place.dot
                more = 4 * px
                rect = QRectF(place.dot, end).normalized().adjusted(-more, -more, more, more)
                key = (paint is stem, place.dot.toTuple(), end.toTuple(), px)
                yield Piece(key, rect, partial(paint, place=place))
    order = [i for i in range(len(view.markers)) if i != view.chosen]
    if view.chosen is not None:
        order.append(view.chosen)
    for index in order:
        marker, place = view.markers[index], geometry.placed[index]
        yield lettered_piece(
            place.disc,
            size,
            marker.letter,
            marker.colour,
            marker.ink,
            chosen=index == view.chosen,
            size=view.letter,
            second=marker.second,
        )

"""Corners set by hand: the outline, the four handles, and the magnifier at one of them."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.drawing.ink import BLACK, WHITE, haloed, kept
from app.drawing.pyramid import Pyramid
from app.look.theme import WALL

Points = tuple[tuple[float, float], ...]


@dataclass(frozen=True)
class HandleView:
    """A corner's handle: an open ring, so that the corner itself is seen."""

    chosen: bool = False


@dataclass(frozen=True, eq=False)
class LensView:
    """The magnifier.

    Attributes
    ----------
    picture : Pyramid
        The whole photo.
    width, height : float
        Of the photo, pixels.
    turned : int
        Quarter turns clockwise it is shown with.
    at : (x, y)
        The point in its middle, fractions of the photo.
    outline : tuple of (x, y)
        The four corners, fractions of the photo.
    zoom : float
        Units a pixel of the photo.
    ratio : float
        Device pixels a unit.
    """

    picture: Pyramid
    width: float
    height: float
    turned: int
    at: tuple[float, float]
    outline: Points
    zoom: float
    ratio: float = 1.0


def paint_turned(
    painter: QPainter,
    middle: QPointF,
    picture: Pyramid,
    width: float,
    height: float,
    turned: int,
    ratio: float,
) -> None:
    """A picture `width` by `height` as it is, turned by quarter turns clockwise about `middle`."""
    painter.save()
    painter.translate(middle)
    painter.rotate(90.0 * (turned % 4))
    picture.draw(painter, QRectF(-width / 2, -height / 2, width, height), ratio)
    painter.restore()


def paint_outline(painter: QPainter, points: Points, unit: float) -> None:
    """The four sides through points on the screen; `unit` is the white core's width over 1.6."""
    path = QPainterPath(QPointF(*points[0]))
    for point in points[1:]:
        path.lineTo(QPointF(*point))
    path.closeSubpath()
    with kept(painter):
        haloed(painter, path, 1.6 * unit, 3.6 * unit, core=WHITE, around=BLACK)


def paint_handle(painter: QPainter, rect: QRectF, view: HandleView) -> None:
    """A handle filling `rect`; chosen it is heavier and has a ring more."""
    radius = min(rect.width(), rect.height()) / 2
    centre = rect.center()
    path = QPainterPath()
    inner = 0.56 * radius
    path.addEllipse(centre, inner, inner)
    for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
        path.moveTo(centre + QPointF(dx, dy) * inner)
        path.lineTo(centre + QPointF(dx, dy) * 0.24 * radius)
    with kept(painter):
        width = 0.17 if view.chosen else 0.12
        haloed(painter, path, width * radius, (width + 0.17) * radius, core=WHITE, around=BLACK)
        if view.chosen:
            ring = QPainterPath()
            ring.addEllipse(centre, 0.86 * radius, 0.86 * radius)
            haloed(painter, ring, 0.1 * radius, 0.22 * radius)


def paint_lens(painter: QPainter, rect: QRectF, view: LensView) -> None:
    """The magnifier, round, filling `rect`."""
    radius = min(rect.width(), rect.height()) / 2
    centre = rect.center()
    disc = QPainterPath()
    disc.addEllipse(centre, radius, radius)
    with kept(painter):
        painter.save()
        painter.setClipPath(disc)
        painter.fillRect(rect, QColor(WALL))
        painter.translate(centre)
        painter.rotate(90.0 * (view.turned % 4))
        width, height = view.width * view.zoom, view.height * view.zoom
        left, top = -view.at[0] * width, -view.at[1] * height
        view.picture.draw(painter, QRectF(left, top, width, height), view.ratio)
        points = tuple((left + x * width, top + y * height) for x, y in view.outline)
        path = QPainterPath(QPointF(*points[0]))
        for point in points[1:]:
            path.lineTo(QPointF(*point))
        path.closeSubpath()
        haloed(painter, path, 1.4, 3.2, core=WHITE, around=BLACK)
        painter.restore()
        cross = QPainterPath()
        for dx, dy in ((1, 0), (-1, 0), (0, 1), (0, -1)):
            cross.moveTo(centre + QPointF(dx, dy) * 0.1 * radius)
            cross.lineTo(centre + QPointF(dx, dy) * 0.34 * radius)
        haloed(painter, cross, 0.02 * radius, 0.05 * radius)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for colour, inset, pen in ((BLACK, 0.0, 0.05), (WHITE, 0.03, 0.03), (BLACK, 0.05, 0.016)):
            painter.setPen(QPen(QColor(colour), pen * radius))
            painter.drawEllipse(centre, radius * (1 - inset), radius * (1 - inset))

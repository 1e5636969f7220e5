"""The wheel over a picture: where it lies, on its own ground, so that it is seen on any photo."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import BLACK, WHITE, disc, kept, ring
from app.drawing.wheel.shape import WheelGeometry, WheelMarker, WheelView, polar
from app.drawing.wheel.wheel import paint_wheel
from app.look.theme import WALL

Box = tuple[float, float, float, float]
"""Left, top, right, bottom."""

EDGE: Final = 0.055
"""The ground beyond the wheel, by the whole diameter."""

_MOST: Final = 0.5
_CORNER: Final = 0.36
"""Diameters by the picture's shorter side: over what is no sky, and where it hides some."""

_COMFORT: Final = 1.35
"""By itself it takes this much more than the least, so that its names can be read."""

_YIELDS: Final = 0.8
"""Rather this much smaller than on the other side of the lit band."""

_CLEAR: Final = 6.0


@dataclass(frozen=True)
class Spot:
    """A disc: its middle and its diameter, in the units of the picture's place."""

    x: float
    y: float
    size: float


@dataclass(frozen=True)
class Surroundings:
    """What a wheel over a picture has to mind.

    Attributes
    ----------
    area : Box
        It stays in here.
    photo : Box
        What is seen of the photo.
    ground : float
        Where the sky ends.
    lit : (top, bottom)
        The chosen band: nothing may lie over it.
    beside : (left, right)
        Widths beside the photo that are in use.
    least : float
        A smaller wheel cannot be read.
    """

    area: Box
    photo: Box
    ground: float
    lit: tuple[float, float]
    beside: tuple[float, float] = (0.0, 0.0)
    least: float = 150.0


def lay_wheel(around: Surroundings, wanted: Spot | None = None) -> Spot | None:
    """Where the wheel lies.

    Parameters
    ----------
    around : Surroundings
    wanted : Spot, optional
        Where it was put by hand; without it, over what is not sky where there is room, else beside
        the photo, else in the corner where it hides least.

    Returns
    -------
    Spot or None
        Off the lit band whatever was wanted, smaller where it must be; None where there is no
        room for one that can be read.
    """
    spot = wanted or _by_itself(around)
    left, top, right, bottom = around.area
    size = min(max(spot.size, around.least), right - left, bottom - top)
    if size < around.least:
        return None
    x = min(max(spot.x, left + size / 2), right - size / 2)
    y = min(max(spot.y, top + size / 2), bottom - size / 2)
    return _off_the_band(around, Spot(x, y, size))


def _by_itself(around: Surroundings) -> Spot:
    left, top, right, bottom = around.photo
    shorter = min(right - left, bottom - top)
    room, comfort = bottom - max(around.ground, top) - 2 * _CLEAR, _COMFORT * around.least
    if room >= comfort:
        size = max(min(room, _MOST * shorter, right - left), comfort)
        return Spot(right - _CLEAR - size / 2, bottom - _CLEAR - size / 2, size)
    beside = _beside(around, max(_MOST * (bottom - top), comfort))
    if beside is not None and beside.size >= comfort:
        return beside
    size = max(room, comfort) if room > 0 else max(_CORNER * shorter, comfort)
    return Spot(right - _CLEAR - size / 2, bottom - _CLEAR - size / 2, size)


def _beside(around: Surroundings, size: float) -> Spot | None:
    """On the wall beside the photo, clear of what stands there."""
    left, _, right, bottom = around.area
    rooms = (
        (around.photo[2] + around.beside[1], right),
        (left, around.photo[0] - around.beside[0]),
    )
    # At the right where that does, as the charts are.
    first = rooms[0][1] - rooms[0][0] >= 0.7 * size
    start, end = rooms[0] if first else max(rooms, key=lambda room: room[1] - room[0])
    size = min(size, end - start)
    if size < around.least:
        return None
    x = start + size / 2 if start > around.photo[0] else end - size / 2
    return Spot(x, min(bottom - size / 2, around.photo[3] - size / 2), size)


def _off_the_band(around: Surroundings, spot: Spot) -> Spot | None:
    """The nearest place that leaves the lit band free."""
    if spot.x - spot.size / 2 >= around.photo[2] or spot.x + spot.size / 2 <= around.photo[0]:
        return spot
    top, bottom = around.area[1], around.area[3]
    lit_top, lit_bottom = around.lit[0] - _CLEAR, around.lit[1] + _CLEAR
    rooms = {"below": bottom - lit_bottom, "above": lit_top - top}
    nearer = "below" if spot.y >= (lit_top + lit_bottom) / 2 else "above"
    other = "above" if nearer == "below" else "below"
    close = rooms[nearer] >= max(_YIELDS * spot.size, around.least)
    fitting = [nearer] if close else [other] if rooms[other] >= spot.size else []
    side = fitting[0] if fitting else max(rooms, key=lambda each: rooms[each])
    size = min(spot.size, rooms[side])
    if size < around.least:
        return _beside(around, spot.size)
    half = size / 2
    if side == "below":
        y = min(max(spot.y, lit_bottom + half), bottom - half)
    else:
        y = min(max(spot.y, top + half), lit_top - half)
    return replace(spot, y=y, size=size)


def inner_rect(spot: Spot) -> QRectF:
    """Where the wheel itself is drawn on its ground."""
    side = spot.size * (1 - 2 * EDGE)
    return QRectF(spot.x - side / 2, spot.y - side / 2, side, side)


def paint_over_wheel(
    painter: QPainter, spot: Spot, view: WheelView, point: WheelMarker | None = None
) -> WheelGeometry:
    """Draw ground, wheel, and the place of the point under the mouse."""
    centre, radius = QPointF(spot.x, spot.y), spot.size / 2
    with kept(painter):
        disc(painter, centre, radius, WALL, BLACK, 1.6)
        ring(painter, centre, radius - 1.4, WHITE, 1.4)
        geometry = paint_wheel(painter, inner_rect(spot), view)
        if point is not None:
            _paint_point(painter, geometry, point)
    return geometry


def _paint_point(painter: QPainter, geometry: WheelGeometry, point: WheelMarker) -> None:
    """A small disc in the point's colour between four short strokes: no band's marker."""
    away = geometry.disc * point.place * geometry.radius if point.wheel_deg is not None else 0.0
    at = polar(geometry.centre, away, point.wheel_deg or 0.0)
    size = max(0.035 * geometry.radius, 5.0)
    for width, colour in ((4.2, WHITE), (1.8, BLACK)):
        pen = QPen(QColor(colour), width)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        for deg in (0, 90, 180, 270):
            grow = 0.8 if colour == WHITE else 0.0
            painter.drawLine(polar(at, size + 1 - grow, deg), polar(at, 2.2 * size + grow, deg))
    disc(painter, at, size + 1.2, WHITE, BLACK, 1.2)
    disc(painter, at, size - 1.0, point.colour, BLACK, 0.8)


def on_wheel(spot: Spot, x: float, y: float) -> bool:
    """Whether a place is on the wheel's ground."""
    return math.hypot(x - spot.x, y - spot.y) <= spot.size / 2


def on_rim(spot: Spot, x: float, y: float) -> bool:
    """Whether a place is on the rim, by which it is sized."""
    away = math.hypot(x - spot.x, y - spot.y)
    rim = max(1.4 * EDGE * spot.size, 8.0)
    return spot.size / 2 - rim <= away <= spot.size / 2

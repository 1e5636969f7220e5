"""Where everything on the wheel is: shared by painting and hit-testing."""

from __future__ import annotations

import math
from typing import Final

from PySide6.QtCore import QPointF, QRectF

from app.drawing.spread import spread_disc
from app.drawing.wheel.names import placed_names
from app.drawing.wheel.shape import (
    CLEAR_PX,
    LEAST_MARKER_PX,
    STEP_DEG,
    WAITING_CLEAR,
    WEDGES,
    Placed,
    WheelGeometry,
    WheelView,
    Word,
    disc_of,
    inner_of,
    outer_of,
    polar,
)
from app.drawing.wheel.words import place_words
from core.reading.reading import INTENSITY_RINGS

_MOST_LETTER: Final = 1.35
"""Larger markers would lie over one another's places."""

_MOST_MARKER: Final = 0.115
"""Of R: larger text makes none larger than this, or it would cover the names round it."""


def wheel_geometry(rect: QRectF, view: WheelView) -> WheelGeometry:
    """Lay the wheel out in the middle of a rectangle."""
    px = view.px
    centre = rect.center()
    radius = max(min(rect.width(), rect.height()) / 2 - 2.0 * px, 1.0 * px)
    size = max(view.marker * radius, min(LEAST_MARKER_PX * px, 0.3 * radius))
    size = max(size, min(size * min(view.text, _MOST_LETTER), _MOST_MARKER * radius))
    size, placed = _place_markers(view, centre, radius, size)
    way, onward = _ways(view, centre, radius, placed)
    names: tuple[tuple[Word, ...], ...] = ()
    if view.show_names:
        names = tuple(
            tuple(
                Word(text, QRectF(x, y, width, height).translated(centre), letter_size, squeeze)
                for text, x, y, width, height, letter_size, squeeze in words
            )
            for words in placed_names(view.names, radius, px, view.text)
        )
    words = place_words(view, centre, radius, size, placed, way, onward)
    return WheelGeometry(
        centre,
        radius,
        size,
        placed,
        names,
        words,
        way,
        onward,
        inner_of(view.text),
        disc_of(view.text),
    )


def wheel_hit(geometry: WheelGeometry, point: QPointF, slack: float = 4.0) -> int | None:
    """The marker under a point, or None; `slack` is added to the radius."""
    best, best_distance = None, geometry.marker_radius + slack
    for index, place in enumerate(geometry.placed):
        distance = math.hypot(point.x() - place.disc.x(), point.y() - place.disc.y())
        if distance <= best_distance:
            best, best_distance = index, distance
    return best


def wedge_at(geometry: WheelGeometry, point: QPointF) -> int | None:
    """The wedge under a point, or None."""
    x, y = point.x() - geometry.centre.x(), point.y() - geometry.centre.y()
    wedge = round(math.degrees(math.atan2(x, -y)) / STEP_DEG) % WEDGES
    distance = math.hypot(x, y) / geometry.radius
    return wedge if geometry.inner <= distance <= outer_of(wedge) else None


def _place_markers(
    view: WheelView, centre: QPointF, radius: float, size: float
) -> tuple[float, tuple[Placed, ...]]:
    true = []
    for marker in view.markers:
        distance = disc_of(view.text) * marker.place if marker.wheel_deg is not None else 0.0
        if view.waiting and marker.family is not None:
            foot = disc_of(view.text) * radius - WAITING_CLEAR * size
            true.append(polar(QPointF(0, 0), foot, marker.family * STEP_DEG))
        else:
            true.append(polar(QPointF(0, 0), distance * radius, marker.wheel_deg or 0.0))
    limit = radius * disc_of(view.text) * 0.985
    size, moved = spread_disc(
        [(p.x(), p.y()) for p in true], size * 1.02, CLEAR_PX * view.px, limit
    )
    size /= 1.02
    placed = []
    for point, (x, y) in zip(true, moved, strict=True):
        away = math.hypot(point.x() - x, point.y() - y) > 0.8 * size
        placed.append(Placed(centre + QPointF(x, y), centre + point, away))
    return size, tuple(placed)


def _ways(
    view: WheelView, centre: QPointF, radius: float, placed: tuple[Placed, ...]
) -> tuple[tuple[QPointF, QPointF] | None, tuple[QPointF, QPointF] | None]:
    if view.chosen is None or not view.show_way or view.waiting:
        return None, None
    marker = view.markers[view.chosen]
    if marker.complement is None or marker.wheel_deg is None:
        return None, None
    onward_end = polar(centre, inner_of(view.text) * radius, marker.complement * STEP_DEG)
    onward = (centre, onward_end)
    start = placed[view.chosen].dot
    core = disc_of(view.text) * INTENSITY_RINGS[1] * radius
    distance = math.hypot(start.x() - centre.x(), start.y() - centre.y())
    if distance <= core:
        return None, onward
    return (start, polar(centre, core, marker.wheel_deg)), onward

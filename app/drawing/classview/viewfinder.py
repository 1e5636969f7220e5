"""The viewfinder: everything wall grey but a window the size of a hand, cut over the sky."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPen

from app.drawing.ink import kept
from app.drawing.pyramid import Pyramid
from app.look.theme import WALL

WINDOW: Final = (0.42, 0.26)
"""Width and height of the window, fractions of the screen's height: a hand held before it."""

_MOST_ENLARGED: Final = 4.0
_SIDEWAYS: Final = 0.55
"""How far the window wanders across the screen on its way across the sky."""


@dataclass(frozen=True)
class FinderPlace:
    """Where the window is on the screen, and the whole photo behind it."""

    window: QRectF
    photo: QRectF

    def towards(self, window: QRectF, photo: QRectF, share: float) -> FinderPlace:
        """On the way to another window and photo."""
        return FinderPlace(_between(self.window, window, share), _between(self.photo, photo, share))


def finder_place(
    screen: QRectF, unit: float, aspect: float, edges: Sequence[float], spot: tuple[float, float]
) -> FinderPlace:
    """The window over a point of the sky.

    Parameters
    ----------
    screen : QRectF
    unit : float
        What text sizes are fractions of.
    aspect : float
        Width of the photo by its height.
    edges : sequence of float
        Of the bands, fractions of the photo's height.
    spot : (x, y)
        Fractions of the photo; the window's middle, as near as the sky's edges let it.
    """
    width, height = WINDOW[0] * unit, WINDOW[1] * unit
    sky = edges[-1] - edges[0]
    thinnest = min(lower - upper for upper, lower in pairwise(edges)) / sky
    # So large that a band fills the window, the thinnest too within reason.
    shown = screen.height() * min(
        max(height / (max(thinnest, 1e-6) * screen.height()), 1.0), _MOST_ENLARGED
    )
    tall = shown / sky
    tall = max(tall, 1.2 * width / aspect)
    wide = tall * aspect
    x = _bounded(spot[0], 0.5 * width / wide, 1 - 0.5 * width / wide)
    y = _bounded(spot[1], edges[0] + 0.5 * height / tall, edges[-1] - 0.5 * height / tall)
    down = (y - edges[0]) / sky
    margin = 0.04 * unit
    middle = QPointF(
        screen.center().x() + (x - 0.5) * _SIDEWAYS * screen.width(),
        screen.top() + margin + height / 2 + down * (screen.height() - height - 2 * margin),
    )
    window = QRectF(0, 0, width, height)
    window.moveCenter(middle)
    photo = QRectF(middle.x() - x * wide, middle.y() - y * tall, wide, tall)
    return FinderPlace(window, photo)


def paint_viewfinder(
    painter: QPainter,
    screen: QRectF,
    place: FinderPlace,
    picture: Pyramid,
    device_pixels_per_unit: float,
) -> None:
    """Grey card all over, and the window in it."""
    with kept(painter):
        painter.fillRect(screen, QColor(WALL))
        painter.save()
        painter.setClipRect(place.window)
        picture.draw(painter, place.photo, device_pixels_per_unit)
        painter.restore()
        # A cut edge: a window on a grey as light as the card is seen all the same.
        painter.setPen(QPen(QColor("#5c5c5c"), 1.0))
        painter.drawRect(place.window.adjusted(-0.5, -0.5, 0.5, 0.5))


def _between(start: QRectF, end: QRectF, share: float) -> QRectF:
    def mix(one: float, other: float) -> float:
        return one + share * (other - one)

    return QRectF(
        mix(start.left(), end.left()),
        mix(start.top(), end.top()),
        mix(start.width(), end.width()),
        mix(start.height(), end.height()),
    )


def _bounded(at: float, low: float, high: float) -> float:
    return min(max(at, low), high) if low <= high else (low + high) / 2

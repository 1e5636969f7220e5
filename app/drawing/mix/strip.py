"""The sky beside itself: the photo's colours and the paint's, with no line between.

A mismatch shows as an edge, a match as none.
"""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QRectF
from PySide6.QtGui import QBrush, QColor, QLinearGradient, QPainter

from app.drawing.ink import kept


@dataclass(frozen=True)
class StripZone:
    """A stretch of the strip.

    Attributes
    ----------
    top, bottom : float
        In the painter's units, from the strip's top.
    photo, paint : tuple of str
        Colours from top to bottom, "#rrggbb"; one is flat, none shows the wall.
    """

    top: float
    bottom: float
    photo: tuple[str, ...]
    paint: tuple[str, ...]


@dataclass(frozen=True)
class StripView:
    """Zones from the top down."""

    zones: tuple[StripZone, ...]


def paint_strip(painter: QPainter, rect: QRectF, view: StripView) -> None:
    """Photo in the left half of `rect`, paint in the right half."""
    middle = round(rect.center().x())
    with kept(painter):
        for zone in view.zones:
            top, bottom = rect.top() + zone.top, rect.top() + zone.bottom
            photo = QRectF(rect.left(), top, middle - rect.left(), bottom - top)
            paint = QRectF(middle, top, rect.right() - middle, bottom - top)
            for half, colours in ((photo, zone.photo), (paint, zone.paint)):
                if colours:
                    painter.fillRect(half, run_of(half, colours, down=True))


def run_of(rect: QRectF, colours: tuple[str, ...], *, down: bool = False) -> QBrush:
    """A brush that runs through colours, along the width of `rect` or down its height."""
    if len(colours) == 1:
        return QBrush(QColor(colours[0]))
    end = rect.bottomLeft() if down else rect.topRight()
    gradient = QLinearGradient(rect.topLeft(), end)
    for number, colour in enumerate(colours):
        gradient.setColorAt(number / (len(colours) - 1), QColor(colour))
    return QBrush(gradient)

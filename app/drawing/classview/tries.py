"""A band and its scraps before the class: their colours edge to edge, each with its name."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.classview.layout import LEAST_TEXT
from app.drawing.ink import BLACK, WHITE, draw_text, kept, text_size
from app.look.theme import WALL
from app.look.type import FIRST

_PAD = 0.016


@dataclass(frozen=True)
class TryColour:
    """One colour, "#rrggbb", and its name below."""

    colour: str
    name: str


def try_places(screen: QRectF, unit: float, count: int) -> tuple[QRectF, ...]:
    """Where the colours lie: side by side with no line between, wall around all of them."""
    inside = screen.adjusted(0.06 * unit, 0.08 * unit, -0.06 * unit, -0.14 * unit)
    edges = [round(inside.left() + i * inside.width() / count) for i in range(count + 1)]
    return tuple(
        QRectF(left, inside.top(), right - left, inside.height()) for left, right in pairwise(edges)
    )


def paint_tries_screen(
    painter: QPainter, screen: QRectF, unit: float, tries: tuple[TryColour, ...]
) -> None:
    """Draw the colours with their names on tags below; `unit` is the screen's height."""
    size = LEAST_TEXT * unit
    with kept(painter):
        painter.fillRect(screen, QColor(WALL))
        for place, one in zip(try_places(screen, unit, len(tries)), tries, strict=True):
            painter.fillRect(place, QColor(one.colour))
            wide = text_size(one.name, size, FIRST)[0] + 2 * _PAD * unit
            fitted = size * min(1.0, place.width() / wide)
            tag = QRectF(0, place.bottom() + 0.025 * unit, min(wide, place.width()), 0.07 * unit)
            tag.moveLeft(place.center().x() - tag.width() / 2)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(BLACK))
            painter.drawRoundedRect(tag, 0.12 * tag.height(), 0.12 * tag.height())
            draw_text(painter, tag.center(), one.name, fitted, WHITE, FIRST)

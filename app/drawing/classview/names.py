"""The names of the wedges that are spoken of, on tags outside the wheel."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath

from app.drawing.classview.layout import LEAST_TEXT
from app.drawing.ink import BLACK, WHITE, draw_text, haloed, kept, text_size
from app.drawing.wheel.shape import STEP_DEG, outer_of, polar
from app.look.type import FIRST

_PAD = 0.016


@dataclass(frozen=True)
class WedgeName:
    """A wedge's number from yellow, clockwise, and its name."""

    wedge: int
    text: str


def name_places(
    wheel: QRectF, rows: tuple[QRectF, QRectF], height: float, names: Sequence[WedgeName]
) -> tuple[tuple[WedgeName, QRectF, QPointF], ...]:
    """Where each tag stands, and the place on its wedge that its stem goes to.

    Parameters
    ----------
    wheel : QRectF
    rows : tuple of two QRectF
        Above the wheel and below it.
    height : float
        The screen's.
    names : sequence of WedgeName
        The most important first: one that finds no room in its row goes unsaid.
    """
    radius, size = wheel.width() / 2, LEAST_TEXT * height
    placed: list[tuple[WedgeName, QRectF, QPointF]] = []
    for name in names:
        deg = name.wedge * STEP_DEG
        above = math.cos(math.radians(deg)) > 0 or name.wedge == 3
        row = rows[0 if above else 1]
        foot = polar(wheel.center(), (outer_of(name.wedge) - 0.06) * radius, deg)
        width = min(text_size(name.text, size, FIRST)[0] + 2 * _PAD * height, row.width())
        left = min(max(foot.x() - width / 2, row.left()), row.right() - width)
        tag = QRectF(left, row.top(), width, row.height())
        if not any(tag.intersects(other) for _, other, _ in placed):
            placed.append((name, tag, foot))
    return tuple(placed)


def paint_names(
    painter: QPainter,
    wheel: QRectF,
    rows: tuple[QRectF, QRectF],
    height: float,
    names: Sequence[WedgeName],
) -> None:
    """Draw the tags, each on a stem from its wedge."""
    size = LEAST_TEXT * height
    with kept(painter):
        for name, tag, foot in name_places(wheel, rows, height, names):
            x = min(max(foot.x(), tag.left() + 0.3 * size), tag.right() - 0.3 * size)
            path = QPainterPath(QPointF(x, tag.center().y()))
            path.lineTo(foot)
            line = max(0.0032 * height, 1.6)
            haloed(painter, path, line, 2.4 * line, flat=False)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(BLACK))
            corner = 0.12 * tag.height()
            painter.drawRoundedRect(tag, corner, corner)
            room = tag.width() - 0.5 * _PAD * height
            fitted = size * min(1.0, room / text_size(name.text, size, FIRST)[0])
            draw_text(painter, tag.center(), name.text, fitted, WHITE, FIRST)

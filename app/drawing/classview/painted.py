"""The sky that paints itself, on the whole screen: photo left, paint right, edge to edge."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.classview.layout import LEAST_TEXT
from app.drawing.ink import BLACK, WHITE, draw_text, kept, text_size
from app.drawing.painting import PaintedView, paint_painted
from app.look.theme import WALL
from app.look.type import FIRST


def painted_place(screen: QRectF, unit: float, aspect: float) -> QRectF:
    """The sky as large as the screen lets it; `aspect` is its width by its height."""
    inside = screen.adjusted(0.04 * unit, 0.04 * unit, -0.04 * unit, -0.115 * unit)
    width = min(inside.width(), inside.height() * aspect)
    sky = QRectF(0, 0, width, width / aspect)
    sky.moveCenter(inside.center())
    return sky


def paint_painted_screen(
    painter: QPainter,
    screen: QRectF,
    unit: float,
    aspect: float,
    view: PaintedView,
    words: tuple[str, str],
    device_pixels_per_unit: float,
) -> None:
    """Draw the sky with the words for its two halves below it."""
    size, pad = LEAST_TEXT * unit, 0.016 * unit
    sky = painted_place(screen, unit, aspect)
    with kept(painter):
        painter.fillRect(screen, QColor(WALL))
        paint_painted(painter, sky, view, device_pixels_per_unit)
        middle = sky.left() + view.begins * sky.width()
        for text, left, right in ((words[0], sky.left(), middle), (words[1], middle, sky.right())):
            wide = text_size(text, size, FIRST)[0] + 2 * pad
            x = min(max((left + right - wide) / 2, screen.left()), screen.right() - wide)
            if sky.width() < 4 * wide:  # a narrow sky: to either side of its middle
                x = middle - wide - pad if text == words[0] else middle + pad
            tag = QRectF(x, sky.bottom() + 0.022 * unit, wide, 0.058 * unit)
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(BLACK))
            painter.drawRoundedRect(tag, 0.12 * tag.height(), 0.12 * tag.height())
            draw_text(painter, tag.center(), text, size, WHITE, FIRST)

"""A picture filling its place, and the dots of a whole class beside a line."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPen

from app.drawing.ink import BLACK, WHITE, draw_text, kept

FIELD: Final = "#dcdcdc"
"""Where sheets match."""

MOST_GAP: Final = 4.0
"""Tolerances at the ends of a line of dots; what is further off stands there too."""


@dataclass(frozen=True, eq=False)
class PictureView:
    """A picture that fills the rectangle, whatever its own shape."""

    image: QImage


@dataclass(frozen=True)
class DotsView:
    """A line of dots: one for each sheet that is off, further out the more it is off.

    Attributes
    ----------
    gaps : tuple of float
        Signed tolerances of every sheet that can be judged.
    words : str
        What the grey field says: how many match.
    filled : bool
        Second sheets have black dots.
    bar : bool
        A heavy bar at the left: it is spoken of.
    text : float
        Size of the words.
    """

    gaps: tuple[float, ...]
    words: str
    filled: bool
    bar: bool
    text: float


def paint_picture(painter: QPainter, rect: QRectF, view: PictureView) -> None:
    """Draw it."""
    with kept(painter):
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(rect, view.image)


def paint_dots(painter: QPainter, rect: QRectF, view: DotsView) -> None:
    """The line at the foot of `rect`, the field in its middle, dots stacked upon the line."""
    middle, half = rect.center().x(), rect.width() / 2
    unit = half / MOST_GAP
    with kept(painter):
        painter.fillRect(QRectF(middle - unit, rect.top(), 2 * unit, rect.height()), QColor(FIELD))
        painter.setPen(QPen(QColor(BLACK), 0.025 * rect.height()))
        painter.drawLine(rect.bottomLeft(), rect.bottomRight())
        if view.bar:
            width = 0.035 * rect.width()
            painter.fillRect(
                QRectF(rect.left() - 2 * width, rect.top(), width, rect.height()), QColor(BLACK)
            )
        draw_text(painter, QPointF(middle, rect.center().y()), view.words, view.text, BLACK)
        _paint_stacks(painter, rect, view, unit)


def _paint_stacks(painter: QPainter, rect: QRectF, view: DotsView, unit: float) -> None:
    stacks: dict[int, int] = {}
    columns = 6  # on each side of the field
    step = (MOST_GAP - 1) * unit / columns
    tallest = max(_counts(view.gaps, columns).values(), default=0)
    radius = min(0.42 * step, 0.46 * rect.height() / max(tallest, 1))
    painter.setPen(QPen(QColor(BLACK), 0.25 * radius))
    painter.setBrush(QColor(BLACK if view.filled else WHITE))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    for gap in view.gaps:
        column = _column(gap, columns)
        if column == 0:
            continue
        level = stacks.get(column, 0)
        stacks[column] = level + 1
        x = unit + (abs(column) - 0.5) * step
        x = rect.center().x() + (x if column > 0 else -x)
        y = rect.bottom() - (2 * level + 1) * radius - 0.03 * rect.height()
        painter.drawEllipse(QPointF(x, y), 0.86 * radius, 0.86 * radius)
    painter.setBrush(Qt.BrushStyle.NoBrush)


def _counts(gaps: tuple[float, ...], columns: int) -> dict[int, int]:
    counts: dict[int, int] = {}
    for gap in gaps:
        column = _column(gap, columns)
        if column:
            counts[column] = counts.get(column, 0) + 1
    return counts


def _column(gap: float, columns: int) -> int:
    """Which column beside the field a sheet stands in: 1 outwards, negative to the left; 0: in."""
    if abs(gap) <= 1:
        return 0
    place = min(columns, 1 + int((abs(gap) - 1) / (MOST_GAP - 1) * columns))
    return place if gap > 0 else -place

"""The photo on a printed card: band lines, letters beside it, and what is not sky under a veil."""

from __future__ import annotations

from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QImage, QPainter, QPen

from app.drawing.ink import (
    BLACK,
    CHOSEN,
    INK,
    WHITE,
    along,
    draw_text,
    kept,
    lettered_disc,
    text_size,
)
from app.drawing.lines import BracketView, LineView, paint_bracket, paint_line
from app.drawing.spread import spread_line

VEIL_SHARE: Final = 0.6


@dataclass(frozen=True, eq=False)
class PhotoView:
    """A photo with its bands.

    Attributes
    ----------
    image : QImage
    edges : tuple of float
        Tops of the bands and the horizon, as fractions of the photo's height.
    letters : tuple of str
    below : str
        Said of what is below the horizon; empty says nothing.
    px : float
        A pixel of the screen's drawing, in the painter's units.
    text : float
        Size of letters and words.
    gutter : float
        Width left of the photo for brackets and letters.
    """

    image: QImage
    edges: tuple[float, ...]
    letters: tuple[str, ...]
    below: str = ""
    px: float = 1.0
    text: float = 12.0
    gutter: float = 40.0


def photo_rect(rect: QRectF, view: PhotoView) -> QRectF:
    """Where the picture is: as large as fits right of the gutter, at the top left."""
    width, height = rect.width() - view.gutter, rect.height()
    aspect = view.image.width() / max(view.image.height(), 1)
    width, height = min(width, height * aspect), min(height, width / aspect)
    return QRectF(rect.left() + view.gutter, rect.top(), width, height)


def paint_photo(painter: QPainter, rect: QRectF, view: PhotoView) -> None:
    """The photo, its lines, brackets and letters."""
    area, px = photo_rect(rect, view), view.px
    with kept(painter):
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(area, view.image)
        if not view.edges:
            return
        ends = [area.top() + y * area.height() for y in view.edges]
        _paint_below(painter, area, ends[-1], view)
        for number, y in enumerate(ends[1:], start=1):
            last = number == len(ends) - 1
            if last and y > area.bottom() - px:
                continue
            line = QRectF(area.left(), y - 2 * px, area.width(), 4 * px)
            paint_line(painter, line, LineView("heavy" if last else "plain"))
        _paint_letters(painter, area, ends, view)


def _paint_below(painter: QPainter, area: QRectF, horizon: float, view: PhotoView) -> None:
    below = QRectF(area.left(), horizon, area.width(), area.bottom() - horizon)
    if below.height() < view.px:
        return
    # On paper the veil is white: it saves ink, and the words stand out.
    veil = QColor(WHITE)
    veil.setAlphaF(VEIL_SHARE)
    painter.fillRect(below, veil)
    wide = text_size(view.below, view.text, CHOSEN)[0]
    if view.below and below.height() > 1.5 * view.text and wide < 0.96 * below.width():
        draw_text(painter, below.center(), view.below, view.text, BLACK, CHOSEN)


def _paint_letters(painter: QPainter, area: QRectF, ends: list[float], view: PhotoView) -> None:
    px = view.px
    bracket_width = 0.15 * view.gutter
    left = area.left() - 1.25 * bracket_width
    for top, bottom in pairwise(ends):
        gap = min(1.5 * px, 0.2 * (bottom - top))
        bracket = QRectF(left, top + gap, bracket_width, bottom - top - 2 * gap)
        paint_bracket(painter, bracket, BracketView())
    places = [(top + bottom) / 2 for top, bottom in pairwise(ends)]
    # As large as the bands allow, but readable: crowded letters stand apart on stems.
    most, least = 0.35 * view.gutter, 0.235 * view.gutter
    radius = max(min(most, 0.48 * (ends[-1] - ends[0]) / len(places)), least)
    low, high = area.top() + radius, area.bottom() - radius
    moved = spread_line(places, 2.15 * radius, low, max(high, low))
    x = area.left() - view.gutter + most
    for true, y in zip(places, moved, strict=True):
        stem = along(QPointF(left + 0.3 * bracket_width, true), QPointF(x, y))
        painter.setPen(QPen(QColor(BLACK), 1.2 * px))
        painter.drawPath(stem)
    letter_size = max(1.02, view.text / radius * 0.8)
    for letter, y in zip(view.letters, moved, strict=True):
        lettered_disc(painter, QPointF(x, y), radius, letter, INK, WHITE, size=letter_size)

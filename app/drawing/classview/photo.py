"""The photo before the class: one band lit, the rest under a veil, letters at the side."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.classview.layout import LETTER_SHARE, ClassLayout, letter_places
from app.drawing.ink import kept
from app.drawing.lines import BracketView, LineView, paint_bracket, paint_line
from app.drawing.marks import BadgeView, paint_badge
from app.drawing.pyramid import Pyramid
from app.look.theme import VEIL

VEIL_SHARE = 0.8


@dataclass(frozen=True, eq=False)
class ClassPhotoView:
    """What is shown of the photo.

    Attributes
    ----------
    picture : Pyramid
    edges : tuple of float
        From the top of the sky to its end, fractions of the photo's height.
    letters : tuple of str
    chosen : int
    """

    picture: Pyramid
    edges: tuple[float, ...]
    letters: tuple[str, ...]
    chosen: int


def paint_class_photo(
    painter: QPainter, layout: ClassLayout, view: ClassPhotoView, device_pixels_per_unit: float
) -> None:
    """Draw photo, veil, the lit band's lines, and the letters."""
    lit = layout.band(view.edges[view.chosen], view.edges[view.chosen + 1])
    veil = QColor(VEIL)
    veil.setAlphaF(VEIL_SHARE)
    photo = layout.photo
    with kept(painter):
        view.picture.draw(painter, photo, device_pixels_per_unit)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.fillRect(QRectF(photo.topLeft(), lit.topRight()), veil)
        painter.fillRect(QRectF(lit.bottomLeft(), photo.bottomRight()), veil)
        line = max(0.007 * layout.height, 4.0)
        for y in (lit.top(), lit.bottom()):
            rect = QRectF(photo.left(), y - line / 2, photo.width(), line)
            paint_line(painter, rect, LineView("plain"))
    width = 0.011 * layout.height
    bracket = QRectF(photo.left() - 1.6 * width, lit.top(), width, max(lit.height(), 3.0))
    paint_bracket(painter, bracket, BracketView(chosen=True))
    _paint_letters(
        painter, layout, view.letters, letter_places(layout, view.edges, view.chosen), view.chosen
    )


def band_at(layout: ClassLayout, view: ClassPhotoView, point: QPointF) -> int | None:
    """The band under a point: on the photo, or its letter."""
    for band, place in letter_places(layout, view.edges, view.chosen):
        off = point - place
        if off.x() ** 2 + off.y() ** 2 <= layout.letter_radius**2:
            return band
    for band in range(len(view.edges) - 1):
        if layout.band(view.edges[band], view.edges[band + 1]).contains(point):
            return band
    return None


def _paint_letters(
    painter: QPainter,
    layout: ClassLayout,
    letters: Sequence[str],
    places: Sequence[tuple[int, QPointF]],
    chosen: int,
) -> None:
    radius = layout.letter_radius
    for band, place in sorted(places, key=lambda each: each[0] == chosen):
        rect = QRectF(place.x() - radius, place.y() - radius, 2 * radius, 2 * radius)
        badge = BadgeView(letters[band], chosen=band == chosen, size=LETTER_SHARE)
        paint_badge(painter, rect, badge)

"""The sky before the class: one band lit, the rest under a veil, letters and a chip beside it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter, QPainterPath

from app.drawing.classview.layout import LETTER_SHARE, ClassLayout, letter_places
from app.drawing.ink import haloed, kept
from app.drawing.lines import BracketView, LineView, paint_bracket, paint_line
from app.drawing.marks import BadgeView, ChipView, paint_badge, paint_chip
from app.drawing.painting import WashView, paint_washes
from app.drawing.pyramid import Pyramid
from app.look.theme import VEIL

VEIL_SHARE = 0.8
PAINT_BEGINS = 0.5
"""Of the sky's width: photo and paint stand edge to edge in its middle."""


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
    chip : ChipView
        The lit band's colour, or its two once the class has named them.
    washes : tuple of WashView
        The right half of the bands that are answered gives way to their paint.
    veiled : bool
        All but the lit band stands back; not once every band is answered.
    """

    picture: Pyramid
    edges: tuple[float, ...]
    letters: tuple[str, ...]
    chosen: int
    chip: ChipView = ChipView(None)
    washes: tuple[WashView, ...] = ()
    veiled: bool = True


def paint_class_photo(
    painter: QPainter, layout: ClassLayout, view: ClassPhotoView, device_pixels_per_unit: float
) -> None:
    """Draw sky, veil, the lit band's lines and chip, and the letters on their stems."""
    lit = layout.band(view.edges[view.chosen], view.edges[view.chosen + 1])
    veil = QColor(VEIL)
    veil.setAlphaF(VEIL_SHARE)
    sky = layout.sky
    with kept(painter):
        painter.save()
        painter.setClipRect(sky)
        view.picture.draw(painter, layout.photo, device_pixels_per_unit)
        paint_washes(painter, layout.photo, view.washes, PAINT_BEGINS)
        if view.veiled:
            painter.fillRect(QRectF(sky.topLeft(), lit.topRight()), veil)
            painter.fillRect(QRectF(lit.bottomLeft(), sky.bottomRight()), veil)
        painter.restore()
        line = max(0.007 * layout.height, 4.0)
        for y in (lit.top(), lit.bottom()):
            rect = QRectF(sky.left(), y - line / 2, sky.width(), line)
            paint_line(painter, rect, LineView("plain"))
        if not layout.chip.isEmpty():
            _paint_chip(painter, layout, view, lit)
    _paint_letters(painter, layout, view)


def _paint_chip(painter: QPainter, layout: ClassLayout, view: ClassPhotoView, lit: QRectF) -> None:
    """The lit band's colour, large, on a stem from the band."""
    path = QPainterPath(QPointF(layout.sky.right() + 2, lit.center().y()))
    path.lineTo(layout.tether, lit.center().y())
    path.lineTo(layout.tether, layout.chip.top() + 2)
    _stem(painter, path, layout.height)
    paint_chip(painter, layout.chip, view.chip)


def _stem(painter: QPainter, path: QPainterPath, height: float) -> None:
    width = max(0.0032 * height, 1.6)
    haloed(painter, path, width, 2.4 * width)


def band_at(layout: ClassLayout, view: ClassPhotoView, point: QPointF) -> int | None:
    """The band under a point: on the photo, or its letter."""
    for band, place in letter_places(layout, view.edges, view.chosen):
        off = point - place
        if off.x() ** 2 + off.y() ** 2 <= layout.letter_radius**2:
            return band
    if not layout.sky.contains(point):
        return None
    for band in range(len(view.edges) - 1):
        if layout.band(view.edges[band], view.edges[band + 1]).contains(point):
            return band
    return None


def _paint_letters(painter: QPainter, layout: ClassLayout, view: ClassPhotoView) -> None:
    """Every letter on its disc, with a stem to the middle of its band."""
    radius, width = layout.letter_radius, 0.011 * layout.height
    places = letter_places(layout, view.edges, view.chosen)
    for band, place in sorted(places, key=lambda each: each[0] == view.chosen):
        own = layout.band(view.edges[band], view.edges[band + 1])
        inset = min(0.12 * own.height(), 0.004 * layout.height)
        tall = max(own.height() - 2 * inset, 3.0)
        bracket = QRectF(own.left() - 1.5 * width, own.top() + inset, width, tall)
        with kept(painter):
            path = QPainterPath(place)
            path.lineTo(bracket.left(), own.center().y())
            _stem(painter, path, layout.height)
        paint_bracket(painter, bracket, BracketView(chosen=band == view.chosen))
    for band, place in sorted(places, key=lambda each: each[0] == view.chosen):
        rect = QRectF(place.x() - radius, place.y() - radius, 2 * radius, 2 * radius)
        badge = BadgeView(view.letters[band], chosen=band == view.chosen, size=LETTER_SHARE)
        paint_badge(painter, rect, badge)

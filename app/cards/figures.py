"""Photo, wheel and ladder side by side: the top of the plan card."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import QImage

from app.cards.page import Page
from app.cards.paper import MM, PT
from app.cards.write import GREY, NOTE, put_line, put_paragraph
from app.drawing.cards.photo import PhotoView, paint_photo, photo_rect
from app.drawing.cards.text import line_height
from app.drawing.ink import BLACK, WHITE
from app.drawing.ladder import LadderView, paint_ladder
from app.drawing.pyramid import image_of
from app.drawing.views import ladder_view, wheel_view
from app.drawing.wheel.shape import WheelView
from app.drawing.wheel.wheel import paint_wheel
from core.cards import words
from core.cards.data import CardData
from core.photo.views import values_view

LEAST_WHEEL: Final = 62.0 * MM
"""Across: below it the wheel's names would have to be smaller than `NAME`, or squeezed."""

MOST_WHEEL: Final = 70.0 * MM
NAME: Final = 8.0 * PT
"""The least size of a name on the wheel."""

PX: Final = NAME / 12.0
"""What the screen's painters take for a pixel: their least text is 12 of them."""

LADDER: Final = 23.0 * MM
GUTTER: Final = 10.5 * MM
GAP: Final = 5.0 * MM

_PRINT_DPI: Final = 300


def photo_image(data: CardData, width: float, *, bw: bool) -> QImage | None:
    """The photo with as many pixels as a print of this width, in units, can show.

    On a black-and-white card every pixel is the grey of its own value.
    """
    if data.photo is None:
        return None
    return printable(image_of(values_view(data.photo) if bw else data.photo), width)


def printable(image: QImage, width: float) -> QImage:
    """A picture reduced to what a print of `width` units can show."""
    wanted = round(width / MM / 25.4 * _PRINT_DPI)
    if wanted >= image.width():
        return image
    return image.scaledToWidth(max(wanted, 1), Qt.TransformationMode.SmoothTransformation)


def photo_view(
    data: CardData, image: QImage, *, letters: bool = True, gutter: float = GUTTER
) -> PhotoView:
    """The photo with the study's bands."""
    bands = data.study.bands
    shown = bands is not None and letters
    return PhotoView(
        image,
        bands.edges if shown and bands else (),
        bands.letters if shown and bands else (),
        words.label("not sky"),
        px=0.24 * MM,
        text=11 * PT,
        gutter=gutter if shown else 0.0,
    )


def put_figures(page: Page, data: CardData, top: float, height: float, *, bw: bool) -> None:
    """Photo, wheel and ladder between `top` and `top + height`."""
    area = page.paper.inside
    caption = line_height(NOTE)
    captioned = height - caption - 1.0 * MM >= LEAST_WHEEL
    wheel = height - (caption + 1.0 * MM if captioned else 0.0)
    ladder_rect = QRectF(area.right() - LADDER, top, LADDER, wheel)
    wheel_rect = QRectF(ladder_rect.left() - GAP - wheel, top, wheel, wheel)
    view = wheel_view(data.readings, px=PX)
    if bw:
        view = without_hue(view)
    page.put(wheel_rect, paint_wheel, view)
    ladder = ladder_view(data.readings, data.wording, px=PX)
    page.put(ladder_rect, paint_ladder, marks_without_hue(ladder) if bw else ladder)
    if captioned:
        middle = wheel_rect.center().x()
        y = wheel_rect.bottom() + 1.0 * MM
        put_line(page, middle, y, words.label("wheel"), NOTE, align=0.5, colour=GREY)
    width = wheel_rect.left() - GAP - area.left()
    _put_photo(page, data, QRectF(area.left(), top, width, height), bw=bw)


def _put_photo(page: Page, data: CardData, room: QRectF, *, bw: bool) -> None:
    image = photo_image(data, room.width(), bw=bw)
    bottom = room.top()
    caption = ""
    if data.plan is not None:
        caption = words.materials_text(data.plan.box, data.plan.sheet, data.wording.units)
    lines = 3 * line_height(NOTE)
    if image is not None:
        view = photo_view(data, image)
        box = QRectF(room.left(), room.top(), room.width(), room.height() - lines - 1.5 * MM)
        picture = photo_rect(box, view)
        rect = QRectF(room.left(), room.top(), picture.right() - room.left(), picture.height())
        page.put(rect, paint_photo, view)
        bottom = rect.bottom() + 1.5 * MM
    x = room.left() + (GUTTER if image is not None else 0.0)
    put_paragraph(page, x, bottom, room.right() - x, caption, NOTE, most=3, colour=GREY)


def without_hue(view: WheelView) -> WheelView:
    """The wheel with white wedges and black letters: its names carry the hues."""
    count = len(view.colours)
    markers = tuple(replace(marker, colour=WHITE, ink=BLACK) for marker in view.markers)
    return replace(view, colours=(WHITE,) * count, inks=(BLACK,) * count, markers=markers)


def marks_without_hue(view: LadderView) -> LadderView:
    """The ladder with white letters' discs."""
    return replace(view, marks=tuple(replace(mark, colour=WHITE, ink=BLACK) for mark in view.marks))

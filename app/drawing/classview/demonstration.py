"""The demonstration on the whole screen: the sheet as it lies, the mix huge, a clock across."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.drawing.classview.layout import CHIP, LEAST_TEXT, LETTER_SHARE
from app.drawing.classview.text import draw_fitted, fit_text
from app.drawing.ink import BLACK, WHITE, draw_text, haloed, kept, text_size
from app.drawing.lines import LineView, paint_line
from app.drawing.marks import BadgeView, ChipView, paint_badge, paint_chip
from app.drawing.painting import PaintedView, paint_washes, photo_of
from app.look.theme import VEIL, WALL, Theme
from app.look.type import CHOSEN, FIRST, SECOND

TITLE: Final = 0.15
TITLE_ALONE: Final = 0.2
"""Where nothing is mixed the title has the room to itself."""

TODO: Final = 0.062
MIX: Final = 0.082
_ROW: Final = 0.13
_CELL: Final = 0.07
_CLOCK: Final = 0.105
_LETTER: Final = 0.0315
_COLUMN: Final = 0.155
_VEIL_SHARE: Final = 0.72


@dataclass(frozen=True)
class ClockView:
    """A clock across the screen.

    Attributes
    ----------
    share : float
        How much of it has gone, 0..1.
    left, right : str
        What it counts, and what it runs to.
    marks : tuple of float
        Places on it that mean something, 0..1.
    """

    share: float
    left: str
    right: str
    marks: tuple[float, ...] = ()


@dataclass(frozen=True)
class PartView:
    """A paint of the mix: its parts, its colour with black or white upon it, its name."""

    count: int
    colour: str
    ink: str
    name: str


@dataclass(frozen=True, eq=False)
class DemonstrationView:
    """One step of the demonstration.

    Attributes
    ----------
    sky : PaintedView
        With the washes laid so far.
    aspect : float
        Width of the sky by its height.
    edges : tuple of float
        Of the bands, fractions of the photo's height.
    letters : tuple of str
    present : int or None
        The band to lay now.
    turned : bool
        The sheet lies upside down.
    title, todo, mix, strength : str
        As `core.lesson.demonstration.Work`; `mix` is empty where nothing is mixed.
    parts : tuple of PartView
        The mix's paints in the order they go into it.
    chip : ChipView or None
        The mix's own colour.
    clock : ClockView or None
    """

    sky: PaintedView
    aspect: float
    edges: tuple[float, ...]
    letters: tuple[str, ...]
    present: int | None
    turned: bool
    title: str
    todo: str
    mix: str = ""
    strength: str = ""
    parts: tuple[PartView, ...] = ()
    chip: ChipView | None = None
    clock: ClockView | None = None


@dataclass(frozen=True)
class DemonstrationPlaces:
    """Where everything is."""

    wall: QRectF
    paper: QRectF
    sky: QRectF
    chip: QRectF | None
    clock: QRectF | None
    letter_x: float


def demonstration_places(
    screen: QRectF, unit: float, wall_right: float, view: DemonstrationView
) -> DemonstrationPlaces:
    """Lay the screen out.

    Parameters
    ----------
    screen : QRectF
        What is above the strip.
    unit : float
        What text sizes are fractions of.
    wall_right : float
        Where the paper begins.
    """
    bottom = screen.bottom() - (_CLOCK * unit if view.clock is not None else 0.0)
    clock = None
    if view.clock is not None:
        clock = QRectF(screen.left(), bottom, screen.width(), screen.bottom() - bottom)
    wall = QRectF(screen.left(), screen.top(), wall_right - screen.left(), bottom - screen.top())
    margin = 0.035 * unit
    # The letter's column is only kept free where there is a letter.
    left = _COLUMN * unit if view.present is not None else margin
    inside = wall.adjusted(left, margin, -margin, -margin)
    most = inside.height() - ((CHIP + 0.03) * unit if view.chip is not None else 0.0)
    width = min(inside.width(), most * view.aspect)
    height = width / view.aspect
    sky = QRectF(inside.left(), inside.top(), width, height)
    chip = None
    if view.chip is not None:
        chip = QRectF(inside)
        chip.setTop(sky.bottom() + 0.03 * unit)
    else:
        sky.moveTop(inside.top() + (inside.height() - height) / 2)
    paper = QRectF(wall.right(), screen.top(), screen.right() - wall.right(), wall.height())
    return DemonstrationPlaces(wall, paper, sky, chip, clock, screen.left() + 0.45 * _COLUMN * unit)


def paint_demonstration(
    painter: QPainter,
    places: DemonstrationPlaces,
    unit: float,
    view: DemonstrationView,
    theme: Theme,
    device_pixels_per_unit: float,
) -> None:
    """Draw a step."""
    with kept(painter):
        painter.fillRect(places.wall, QColor(WALL))
        painter.fillRect(places.paper, QColor(theme.paper))
        _paint_sheet(painter, places, unit, view, device_pixels_per_unit)
        if view.chip is not None and places.chip is not None:
            paint_chip(painter, places.chip, view.chip)
        _paint_words(painter, places.paper, unit, view, theme)
        if view.clock is not None and places.clock is not None:
            _paint_clock(painter, places.clock, unit, view.clock, theme)


def band_on_sheet(sky: QRectF, view: DemonstrationView, band: int) -> QRectF:
    """The band's place on the sheet as it lies."""
    photo = photo_of(sky, view.sky.horizon)
    top = photo.top() + view.edges[band] * photo.height()
    bottom = photo.top() + view.edges[band + 1] * photo.height()
    if view.turned:
        top, bottom = sky.top() + sky.bottom() - bottom, sky.top() + sky.bottom() - top
    return QRectF(sky.left(), top, sky.width(), bottom - top)


def _paint_sheet(
    painter: QPainter,
    places: DemonstrationPlaces,
    unit: float,
    view: DemonstrationView,
    device_pixels_per_unit: float,
) -> None:
    """The sky as the sheet lies: laid bands painted, the present one glowing, the rest veiled."""
    sky = places.sky
    photo = photo_of(sky, view.sky.horizon)
    veil = QColor(VEIL)
    veil.setAlphaF(_VEIL_SHARE)
    painter.save()
    painter.setClipRect(sky)
    if view.turned:
        painter.translate(sky.center())
        painter.rotate(180)
        painter.translate(-sky.center())
    view.sky.picture.draw(painter, photo, device_pixels_per_unit)
    if view.present is not None:
        painter.fillRect(sky, veil)
    if view.present is not None:
        top = photo.top() + view.edges[view.present] * photo.height()
        bottom = photo.top() + view.edges[view.present + 1] * photo.height()
        painter.save()
        band = QRectF(sky.left(), top, sky.width(), bottom - top)
        painter.setClipRect(band, Qt.ClipOperation.IntersectClip)
        view.sky.picture.draw(painter, photo, device_pixels_per_unit)
        painter.restore()
    paint_washes(painter, photo, view.sky.washes)
    painter.restore()
    if view.present is not None:
        lit, line = band_on_sheet(sky, view, view.present), max(0.007 * unit, 4.0)
        for y in (lit.top(), lit.bottom()):
            rect = QRectF(sky.left(), y - line / 2, sky.width(), line)
            paint_line(painter, rect, LineView("plain"))
        _paint_letter(painter, places, unit, view, lit)


def _paint_letter(
    painter: QPainter,
    places: DemonstrationPlaces,
    unit: float,
    view: DemonstrationView,
    lit: QRectF,
) -> None:
    radius, line = 1.5 * _LETTER * unit, max(0.0032 * unit, 1.6)
    y = max(lit.center().y(), places.wall.top() + 1.3 * radius)
    middle = QPointF(places.letter_x, y)
    path = QPainterPath(middle)
    path.lineTo(QPointF(lit.left(), lit.center().y()))
    haloed(painter, path, line, 2.4 * line)
    assert view.present is not None
    rect = QRectF(middle.x() - radius, middle.y() - radius, 2 * radius, 2 * radius)
    badge = BadgeView(view.letters[view.present], chosen=True, size=LETTER_SHARE)
    paint_badge(painter, rect, badge)


def _paint_words(
    painter: QPainter, paper: QRectF, unit: float, view: DemonstrationView, theme: Theme
) -> None:
    least = LEAST_TEXT * unit
    left, width = paper.left() + 0.06 * unit, paper.width() - 0.09 * unit
    bottom, y = paper.bottom() - 0.03 * unit, paper.top() + 0.03 * unit
    size = (TITLE if view.mix else TITLE_ALONE) * unit
    title = fit_text(view.title, width, 0.48 * unit, size, least, CHOSEN)
    y = draw_fitted(painter, left, y, title, theme.ink, CHOSEN)
    room = 0.3 * (bottom - y) if view.mix else bottom - y
    todo = fit_text(view.todo, width, room, TODO * unit, 0.9 * TODO * unit, SECOND)
    if todo.height > room:
        todo = fit_text(view.todo, width, room, TODO * unit, least, SECOND)
    y = draw_fitted(painter, left, y + 0.01 * unit, todo, theme.ink, SECOND)
    if not view.mix:
        return
    strength = fit_text(view.strength, width, 0.12 * unit, TODO * unit, least, SECOND)
    y, room = y + 0.03 * unit, bottom - strength.height
    if view.parts:
        y = _paint_parts(painter, QRectF(left, y, width, room - y), unit, view.parts, theme)
    else:
        mix = fit_text(view.mix, width, room - y, MIX * unit, least, CHOSEN)
        y = draw_fitted(painter, left, y, mix, theme.ink, CHOSEN)
    draw_fitted(painter, left, y + 0.01 * unit, strength, theme.ink, SECOND)


def _paint_parts(
    painter: QPainter, place: QRectF, unit: float, parts: Sequence[PartView], theme: Theme
) -> float:
    """A row a paint: a cell a part, the count upon it, the name beside it; returns their foot."""
    least = LEAST_TEXT * unit
    row = min(_ROW * unit, place.height() / len(parts))
    tall = 0.84 * row
    most = max(part.count for part in parts)
    cell = min(_CELL * unit, 0.42 * place.width() / most)
    column = max(cell * most, 0.8 * tall) + 0.025 * unit
    for number, part in enumerate(parts):
        y = place.top() + number * row
        block = QRectF(place.left(), y, max(part.count * cell, 0.8 * tall), tall)
        painter.fillRect(block, QColor(part.colour))
        painter.setPen(QPen(QColor(part.ink), 0.03 * tall))
        for line in range(1, part.count):
            x = block.left() + line * block.width() / part.count
            painter.drawLine(QPointF(x, block.bottom() - 0.2 * tall), QPointF(x, block.bottom()))
        if len(parts) > 1:
            size = max(0.62 * tall, least)
            draw_text(painter, block.center(), str(part.count), size, part.ink, CHOSEN)
        room = place.width() - column
        name = fit_text(part.name, room, tall, 0.62 * tall, least, CHOSEN)
        top = y + (tall - name.height) / 2
        draw_fitted(painter, place.left() + column, top, name, theme.ink, CHOSEN)
    return place.top() + len(parts) * row


def _paint_clock(
    painter: QPainter, place: QRectF, unit: float, view: ClockView, theme: Theme
) -> None:
    """A bar across the screen that fills, between what it counts and what it runs to."""
    size, pad = LEAST_TEXT * unit, 0.03 * unit
    painter.fillRect(place, QColor(WALL))
    inside = place.adjusted(pad, 0, -pad, 0)
    bar = inside.adjusted(0, 0.024 * unit, 0, -0.024 * unit)
    painter.setPen(Qt.PenStyle.NoPen)
    for text, align in ((view.left, 0.0), (view.right, 1.0)):
        wide = text_size(text, size, FIRST)[0] + pad
        x = inside.left() if align == 0.0 else inside.right() - wide
        tag = QRectF(x, inside.center().y() - 0.75 * size, wide, 1.5 * size)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(BLACK))
        painter.drawRoundedRect(tag, 0.15 * tag.height(), 0.15 * tag.height())
        draw_text(painter, tag.center(), text, size, WHITE, FIRST)
        if align == 0.0:
            bar.setLeft(tag.right() + 0.5 * pad)
        else:
            bar.setRight(tag.left() - 0.5 * pad)
    painter.fillRect(bar, QColor(theme.raised))
    gone = QRectF(bar)
    gone.setWidth(bar.width() * min(max(view.share, 0.0), 1.0))
    painter.fillRect(gone, QColor(theme.ink))
    for mark in view.marks:
        x = bar.left() + mark * bar.width()
        path = QPainterPath(QPointF(x, bar.top() - 0.4 * pad))
        path.lineTo(x, bar.bottom() + 0.4 * pad)
        haloed(painter, path, 0.004 * unit, 0.009 * unit)

"""The value ladder: ten greys from black to white, and the bands' letters at their values."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Final, Literal

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.drawing.ink import BLACK, FIRST, WHITE, draw_text, haloed, kept, text_size
from app.drawing.pieces import Piece, lettered_piece, paint_pieces
from app.drawing.spread import spread_line

# Greys of Munsell value 0.5, 1.5 .. 9.5 (ASTM D1535), light last; a test recomputes them.
GREYS: Final = (
    "#111111",
    "#262626",
    "#3c3c3c",
    "#545454",
    "#6d6d6d",
    "#868686",
    "#a0a0a0",
    "#bbbbbb",
    "#d5d5d5",
    "#f1f1f1",
)
STEPS: Final = len(GREYS)
BAR_SHARE: Final = 0.36
TAG_PAD: Final = 0.5
_LIGHT_FROM: Final = 5


@dataclass(frozen=True)
class LadderMark:
    """One band on the ladder: letter, Munsell value 0..10, colours "#rrggbb", band number.

    A band's second colour has a smaller disc with the same letter.
    """

    letter: str
    value: float
    colour: str
    ink: str
    band: int | None = None
    second: bool = False


@dataclass(frozen=True)
class LadderView:
    """What the ladder shows.

    Attributes
    ----------
    marks : tuple of LadderMark
    chosen : int or None
    white_is : 10 or 0
        The number the class gives to white; light is always on top, or on the right.
    ends : (str, str)
        What stands at white and at black: "10 white", "0 black".
    across : bool
        Lying, for the class view: black left, white right, letters above, ends on ink tags.
    px : float
        One pixel in the rectangle's unit.
    numbers : bool
        Numbers on the boundaries.
    letter_px : float
        Radius of a letter's disc, 0 for the usual one.
    letter : float
        Size of a letter as a fraction of its disc's radius.
    tag_text : float
        Size of the end words of a standing ladder on ink tags; 0 writes them on the wall.
    scale : float
        The reader's factor on the text of a standing ladder: from 1, as far as there is room.
    """

    marks: tuple[LadderMark, ...]
    chosen: int | None = None
    white_is: Literal[10, 0] = 10
    ends: tuple[str, str] = ("", "")
    across: bool = False
    px: float = 1.0
    numbers: bool = True
    letter_px: float = 0.0
    letter: float = 1.02
    tag_text: float = 0.0
    scale: float = 1.0


@dataclass(frozen=True)
class LadderGeometry:
    """Everything's place, in the rectangle's coordinates."""

    bar: QRectF
    across: bool
    letter_radius: float
    letters: tuple[QPointF, ...]
    true: tuple[QPointF, ...]
    """Where each value is on the edge of the bar."""
    text: float
    ends: tuple[QRectF, QRectF]
    """Boxes of the words at white and at black."""


def ladder_geometry(rect: QRectF, view: LadderView) -> LadderGeometry:
    """Lay the ladder out in a rectangle."""
    return _lying(rect, view) if view.across else _standing(rect, view)


def ladder_hit(geometry: LadderGeometry, point: QPointF, slack: float = 4.0) -> int | None:
    """The mark under a point, or None."""
    best, best_distance = None, geometry.letter_radius + slack
    for index, letter in enumerate(geometry.letters):
        distance = math.hypot(point.x() - letter.x(), point.y() - letter.y())
        if distance <= best_distance:
            best, best_distance = index, distance
    return best


def _standing(rect: QRectF, view: LadderView) -> LadderGeometry:
    px = view.px
    text = min(max(0.15 * rect.width(), 12 * px * view.scale), 16 * px * view.scale)
    text = view.tag_text or text
    widest = max(text_size(words, text)[0] for words in view.ends)
    if view.tag_text:
        widest += TAG_PAD * text
    text *= min(1.0, rect.width() / max(widest, 1e-9))
    row = 1.55 * text
    bar = QRectF(
        rect.left() + 0.5 * px,
        rect.top() + row,
        BAR_SHARE * rect.width(),
        max(rect.height() - 2 * row, 10 * px),
    )
    radius = view.letter_px or min(max(0.142 * rect.width(), 11 * px), 0.06 * bar.height() + 4 * px)
    # A chosen letter has two rings more, so the column keeps that much.
    column = rect.right() - 1.3 * radius
    places = [bar.bottom() - bar.height() * m.value / 10 for m in view.marks]
    # The column beside the end words is free too, but for the words' own width.
    reach = row if rect.left() + widest < column - 1.4 * radius else 0.0
    low, high = bar.top() - reach + 1.3 * radius, bar.bottom() + reach - 1.3 * radius
    count = len(places)
    pitch = 2 * radius + 5 * px
    if count > 1 and pitch * (count - 1) > high - low:
        pitch = (high - low) / (count - 1)
        radius = min(radius, 0.49 * pitch)
    moved = spread_line(places, pitch, low, high)
    return LadderGeometry(
        bar=bar,
        across=False,
        letter_radius=radius,
        letters=tuple(QPointF(column, y) for y in moved),
        true=tuple(QPointF(bar.right(), y) for y in places),
        text=text,
        ends=(
            QRectF(rect.left(), rect.top(), rect.width(), row),
            QRectF(rect.left(), bar.bottom(), rect.width(), row),
        ),
    )


def _lying(rect: QRectF, view: LadderView) -> LadderGeometry:
    px, height = view.px, rect.height()
    radius = view.letter_px or 0.165 * height
    tag = 0.24 * height
    text = 0.72 * tag
    bar_height = height - 2.3 * radius - 0.08 * height - tag - 0.05 * height
    top = rect.top() + 2.3 * radius + 0.08 * height
    bar = QRectF(rect.left() + px, top, rect.width() - 2 * px, max(bar_height, 6 * px))
    places = [bar.left() + bar.width() * m.value / 10 for m in view.marks]
    moved = spread_line(
        places, 2 * radius + 5 * px, rect.left() + 1.3 * radius, rect.right() - 1.3 * radius
    )
    count = len(places)
    if count > 1 and (2 * radius + 5 * px) * (count - 1) > rect.width() - 2.6 * radius:
        radius = min(radius, 0.49 * (rect.width() - 2.6 * radius) / (count - 1))
    white, black = view.ends
    tag_top = bar.bottom() + 0.05 * height
    white_width = text_size(white, text, FIRST)[0] + 0.9 * text
    black_width = text_size(black, text, FIRST)[0] + 0.9 * text
    return LadderGeometry(
        bar=bar,
        across=True,
        letter_radius=radius,
        letters=tuple(QPointF(x, rect.top() + 1.3 * radius) for x in moved),
        true=tuple(QPointF(x, bar.top()) for x in places),
        text=text,
        ends=(
            QRectF(rect.right() - white_width, tag_top, white_width, tag),
            QRectF(rect.left(), tag_top, black_width, tag),
        ),
    )


def paint_ladder(painter: QPainter, rect: QRectF, view: LadderView) -> LadderGeometry:
    """Draw the ladder; its geometry comes back for hit-testing."""
    geometry = ladder_geometry(rect, view)
    paint_ladder_ground(painter, view, geometry)
    paint_ladder_bands(painter, view, geometry)
    return geometry


def paint_ladder_ground(painter: QPainter, view: LadderView, geometry: LadderGeometry) -> None:
    """The steps and the words at their ends: what stays while the bands move."""
    with kept(painter):
        _paint_bar(painter, view, geometry)
        _paint_ends(painter, view, geometry)


def paint_ladder_bands(painter: QPainter, view: LadderView, geometry: LadderGeometry) -> None:
    """The letters and their stems."""
    with kept(painter):
        paint_pieces(painter, ladder_pieces(view, geometry))


def ladder_pieces(view: LadderView, geometry: LadderGeometry) -> tuple[Piece, ...]:
    """The same in pieces: the painter has to be antialiasing."""
    order = [i for i in range(len(view.marks)) if i != view.chosen]
    if view.chosen is not None:
        order.append(view.chosen)
    letters = (
        lettered_piece(
            geometry.letters[index],
            geometry.letter_radius,
            view.marks[index].letter,
            view.marks[index].colour,
            view.marks[index].ink,
            chosen=index == view.chosen,
            size=view.letter,
            second=view.marks[index].second,
        )
        for index in order
    )
    return (*_stems(view, geometry), *letters)


def _paint_bar(painter: QPainter, view: LadderView, geometry: LadderGeometry) -> None:
    bar, px = geometry.bar, view.px
    # Touching greys without a seam.
    painter.setRenderHint(QPainter.RenderHint.Antialiasing, False)
    painter.setPen(Qt.PenStyle.NoPen)
    for step, grey in enumerate(GREYS):
        painter.setBrush(QColor(grey))
        if geometry.across:
            left = bar.left() + bar.width() * step / STEPS
            right = bar.left() + bar.width() * (step + 1) / STEPS
            painter.drawRect(QRectF(left, bar.top(), right - left, bar.height()))
        else:
            top = bar.bottom() - bar.height() * (step + 1) / STEPS
            bottom = bar.bottom() - bar.height() * step / STEPS
            painter.drawRect(QRectF(bar.left(), top, bar.width(), bottom - top))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    painter.setPen(QPen(QColor(BLACK), (1.6 if geometry.across else 1.2) * px))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    painter.drawRect(bar)
    if not view.numbers:
        return
    share = 0.62 if view.scale == 1.0 else 0.8
    width = (bar.width() if geometry.across else bar.height()) / STEPS
    size = min(geometry.text, share * width, (0.56 if geometry.across else 1.0) * bar.height())
    for value in range(1, STEPS):
        shown = value if view.white_is == 10 else STEPS - value
        if geometry.across:
            # Below the stems, which reach into the bar.
            spot = QPointF(bar.left() + width * value, bar.top() + 0.66 * bar.height())
        else:
            spot = QPointF(bar.center().x(), bar.bottom() - width * value)
        ink = BLACK if value >= _LIGHT_FROM else WHITE
        draw_text(painter, spot, str(shown), size, ink, FIRST)


def _paint_ends(painter: QPainter, view: LadderView, geometry: LadderGeometry) -> None:
    for words, rect in zip(view.ends, geometry.ends, strict=True):
        if geometry.across or view.tag_text:
            if not geometry.across:
                width = text_size(words, geometry.text, FIRST)[0] + TAG_PAD * geometry.text
                rect = QRectF(rect.left(), rect.top(), width, rect.height())
            painter.setPen(Qt.PenStyle.NoPen)
            painter.setBrush(QColor(BLACK))
            corner = 0.1 * rect.height()
            painter.drawRoundedRect(rect, corner, corner)
            draw_text(painter, rect.center(), words, geometry.text, WHITE, FIRST)
        else:
            spot = QPointF(rect.left(), rect.center().y())
            draw_text(painter, spot, words, geometry.text, BLACK, FIRST, align=0.0)


def _stems(view: LadderView, geometry: LadderGeometry) -> Iterator[Piece]:
    px, bar = view.px, geometry.bar
    width = (2.6 if geometry.across else 1.6) * px

    def paint(painter: QPainter, points: Sequence[QPointF]) -> None:
        path = QPainterPath(points[0])
        for point in points[1:]:
            path.lineTo(point)
        haloed(painter, path, width, width + 2.0 * px)

    for letter, true in zip(geometry.letters, geometry.true, strict=True):
        if geometry.across:
            foot = bar.top() + (0.26 if view.numbers else 0.5) * bar.height()
            points = (QPointF(true.x(), foot), QPointF(true.x(), bar.top() - 2 * px), letter)
        else:
            left, right = true.x() - 0.22 * bar.width(), true.x() + 0.18 * bar.width()
            points = (QPointF(left, true.y()), QPointF(right, true.y()), letter)
        # Corners of the stroke reach out by its whole width at most.
        more = 2 * width + 4 * px
        rect = QRectF(points[0], letter).normalized().adjusted(-more, -more, more, more)
        key = (*(point.toTuple() for point in points), width)
        yield Piece(key, rect, partial(paint, points=points))

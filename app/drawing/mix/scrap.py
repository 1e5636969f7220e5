"""A scrap on the Mix page: its strokes outlined and lettered, and chips from try to try."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QImage, QPainter, QPen

from app.drawing.ink import BLACK, CHOSEN, WHITE, kept, text_size
from app.drawing.marks import BadgeView, paint_badge
from app.drawing.mix.text import PITCH, draw_lines, lines_of
from app.look.theme import WALL

BADGE = 24.0
MARGIN = 8.0
"""Wall around the picture: white paper on white paper would have no edge."""


@dataclass(frozen=True)
class StrokeMark:
    """A stroke's outline, fractions of the picture, and its band's letter."""

    region: tuple[float, float, float, float]
    letter: str
    chosen: bool


@dataclass(frozen=True, eq=False)
class ScrapPictureView:
    """The picture, its strokes, and what is being drawn.

    Attributes
    ----------
    image : QImage
    marks : tuple of StrokeMark
    drawn : region or None
    size : float
        Of a badge.
    """

    image: QImage
    marks: tuple[StrokeMark, ...] = ()
    drawn: tuple[float, float, float, float] | None = None
    size: float = BADGE


def picture_rect(rect: QRectF, image: QImage) -> QRectF:
    """Where the picture lies in a place, as large as it fits, wall around it."""
    rect = rect.adjusted(MARGIN, MARGIN, -MARGIN, -MARGIN)
    if image.isNull() or rect.isEmpty():
        return QRectF(rect.topLeft(), rect.size() * 0)
    share = min(rect.width() / image.width(), rect.height() / image.height())
    return QRectF(rect.left(), rect.top(), share * image.width(), share * image.height())


def region_rect(picture: QRectF, region: tuple[float, float, float, float]) -> QRectF:
    """A region of the picture where the picture lies."""
    left, top, right, bottom = region
    return QRectF(
        picture.left() + left * picture.width(),
        picture.top() + top * picture.height(),
        (right - left) * picture.width(),
        (bottom - top) * picture.height(),
    )


def badge_rect(picture: QRectF, mark: StrokeMark, size: float) -> QRectF:
    """Where a stroke's badge lies: on its upper left corner, inside the picture."""
    at = region_rect(picture, mark.region).topLeft()
    x = min(max(at.x(), picture.left() + 0.7 * size), picture.right() - 0.7 * size)
    y = min(max(at.y(), picture.top() + 0.7 * size), picture.bottom() - 0.7 * size)
    return QRectF(x - size / 2, y - size / 2, size, size)


def paint_scrap(painter: QPainter, rect: QRectF, view: ScrapPictureView) -> None:
    """The picture with its strokes outlined, white within black; the chosen one stronger."""
    picture = picture_rect(rect, view.image)
    with kept(painter):
        painter.fillRect(rect, QColor(WALL))
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawImage(picture, view.image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        for mark in sorted(view.marks, key=lambda mark: mark.chosen):
            _outline(painter, region_rect(picture, mark.region), strong=mark.chosen)
        if view.drawn is not None:
            _outline(painter, region_rect(picture, view.drawn), strong=True)
        for mark in view.marks:
            badge = badge_rect(picture, mark, view.size)
            paint_badge(painter, badge, BadgeView(mark.letter, chosen=mark.chosen))


def _outline(painter: QPainter, rect: QRectF, *, strong: bool) -> None:
    for colour, width in ((BLACK, 6.0 if strong else 3.6), (WHITE, 3.0 if strong else 1.6)):
        painter.setPen(QPen(QColor(colour), width))
        painter.drawRoundedRect(rect, 4, 4)


@dataclass(frozen=True)
class TryChip:
    """One colour of the row: the band, a try, what should come; with its name below."""

    colour: str
    name: str
    note: str = ""


@dataclass(frozen=True)
class TriesView:
    """Colours side by side with no line between, words below."""

    chips: tuple[TryChip, ...]
    text_px: float
    ink: str
    second: str


def tries_height(width: float, view: TriesView, chip: float) -> float:
    """Height of chips and words in a width."""
    room = _column(width, view) - view.text_px
    lines = max((len(_lines(one, view, room)) for one in view.chips), default=0)
    return chip + 0.4 * view.text_px + lines * PITCH * view.text_px


def paint_tries(painter: QPainter, rect: QRectF, view: TriesView, chip: float) -> None:
    """The chips on the wall, and their words below."""
    if not view.chips:
        return
    column = _column(rect.width(), view)
    pad = 4 * view.text_px / 13
    with kept(painter):
        whole = QRectF(rect.left(), rect.top(), column * len(view.chips), chip)
        painter.fillRect(whole, QColor(WALL))
        for number, one in enumerate(view.chips):
            left = rect.left() + number * column
            start, end = round(left), round(left + column)
            inner = QRectF(start, rect.top() + pad, end - start, chip - 2 * pad)
            if number == 0:
                inner.setLeft(start + pad)
            if number == len(view.chips) - 1:
                inner.setRight(end - pad)
            painter.fillRect(inner, QColor(one.colour))
            spot = QPointF(left + pad, rect.top() + chip + 0.4 * view.text_px)
            for line, weight, colour in _lines(one, view, column - view.text_px):
                spot += QPointF(0, draw_lines(painter, spot, (line,), view.text_px, colour, weight))


def _column(width: float, view: TriesView) -> float:
    most = max((text_size(one.name, view.text_px, CHOSEN)[0] for one in view.chips), default=0.0)
    wanted = max(most + 1.5 * view.text_px, 8 * view.text_px)
    return min(width / max(len(view.chips), 1), wanted)


def _lines(chip: TryChip, view: TriesView, room: float) -> list[tuple[str, int, str]]:
    found = [(line, 600, view.ink) for line in lines_of(chip.name, view.text_px, 600, room)]
    notes = lines_of(chip.note, view.text_px, 400, room) if chip.note else ()
    return found + [(line, 400, view.second) for line in notes]

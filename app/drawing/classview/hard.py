"""What the class found hard, for the back row: the field of dots, or one thing at a time."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.classview.layout import LEAST_TEXT
from app.drawing.classview.text import draw_fitted, fit_text
from app.drawing.dots import DotsView, FieldView, paint_dots, paint_field
from app.drawing.ink import draw_text, kept, text_size
from app.drawing.marks import BadgeView, paint_badge
from app.drawing.pyramid import Pyramid
from app.look.theme import VEIL, Theme
from app.look.type import CHOSEN, FIRST, SECOND

MARGIN: Final = 0.055
"""Of the screen's height, on every side."""

SENTENCE: Final = (0.068, 0.046)
TEACH: Final = (0.052, LEAST_TEXT)
"""Largest and least sizes, as shares of the screen's height."""

SKY: Final = 0.3
"""Of the screen's width, for the sky with its band lit."""


@dataclass(frozen=True)
class LineView:
    """One line of dots with its words.

    Attributes
    ----------
    title : str
        "First sheets".
    below, above : str
        What a dot to the left and to the right says.
    counted : str
        "10 of 29 match".
    dots : DotsView
    """

    title: str
    below: str
    above: str
    counted: str
    dots: DotsView


@dataclass(frozen=True, eq=False)
class StepView:
    """One thing the class found hard, or that came right.

    Attributes
    ----------
    sentence, teach : str
    letter : str
        The band it is about.
    band : (float, float)
        Where it lies, as shares of the sky's height.
    sky : Pyramid or None
    heading : str
        What the lines are about: "Value".
    lines : tuple of LineView
    hint : str
        What the next key does.
    """

    sentence: str
    teach: str
    letter: str
    band: tuple[float, float]
    sky: Pyramid | None
    heading: str
    lines: tuple[LineView, ...]
    hint: str


def paint_overview(
    painter: QPainter,
    rect: QRectF,
    title: str,
    sentence: str,
    hint: str,
    view: FieldView,
    theme: Theme,
    ratio: float,
) -> None:
    """The title, what is said where there is no other sentence, and the whole field."""
    height = rect.height()
    inside = _inside(rect)
    with kept(painter):
        painter.fillRect(rect, QColor(theme.paper))
        top = _heading(painter, inside, title, hint, height, theme)
        if sentence:
            fitted = fit_text(sentence, inside.width(), 0.2 * height, *_teach_px(height), SECOND)
            top = draw_fitted(painter, inside.left(), top, fitted, theme.ink, SECOND)
            top += 0.02 * height
        field = QRectF(inside.left(), top, inside.width(), inside.bottom() - top)
        paint_field(painter, field, view, ratio)


def _teach_px(height: float) -> tuple[float, float]:
    """Largest and least size of what to try, in pixels."""
    return TEACH[0] * height, TEACH[1] * height


def paint_step(painter: QPainter, rect: QRectF, view: StepView, theme: Theme, ratio: float) -> None:
    """One thing, with the dots it speaks of."""
    height, inside = rect.height(), _inside(rect)
    with kept(painter):
        painter.fillRect(rect, QColor(theme.paper))
        wall = QRectF(rect.left(), rect.top(), SKY * rect.width(), height)
        painter.fillRect(wall, QColor(theme.wall))
        _paint_sky(painter, wall, view, height, ratio)
        left = wall.right() + MARGIN * height
        room = QRectF(left, inside.top(), inside.right() - left, inside.height())
        largest, least = (share * height for share in SENTENCE)
        said = fit_text(view.sentence, room.width(), 0.36 * height, largest, least, CHOSEN)
        top = draw_fitted(painter, left, room.top(), said, theme.ink, CHOSEN) + 0.02 * height
        if view.teach:
            taught = fit_text(view.teach, room.width(), 0.24 * height, *_teach_px(height), SECOND)
            top = draw_fitted(painter, left, top, taught, theme.ink, SECOND) + 0.02 * height
        hint = LEAST_TEXT * height
        draw_text(
            painter, QPointF(inside.right(), inside.bottom() - 0.5 * hint), view.hint, hint,
            theme.second, SECOND, align=1.0,
        )  # fmt: skip
        field = QRectF(left, top, room.width(), inside.bottom() - 1.6 * hint - top)
        _paint_lines(painter, field, view, height, theme)


def _paint_lines(
    painter: QPainter, field: QRectF, view: StepView, height: float, theme: Theme
) -> None:
    """Heading and ways once, then a line for the first sheets and one for the second."""
    if not view.lines:
        return
    size = LEAST_TEXT * height
    labels = max(
        text_size(text, size, weight)[0]
        for line in view.lines
        for text, weight in ((line.title, FIRST), (line.counted, SECOND))
    )
    left = field.left() + labels + 0.9 * size
    right = field.right() - 0.6 * size
    tall = min(0.15 * height, (field.height() - 1.4 * size) / len(view.lines) - 0.4 * size)
    total = 1.4 * size + len(view.lines) * (tall + 0.4 * size)
    y = field.bottom() - total + 0.6 * size
    lead = view.lines[0]
    draw_text(painter, QPointF(field.left(), y), view.heading, size, theme.ink, CHOSEN, align=0.0)
    draw_text(painter, QPointF(left, y), lead.below, size, theme.second, SECOND, align=0.0)
    draw_text(painter, QPointF(right, y), lead.above, size, theme.second, SECOND, align=1.0)
    y += 0.8 * size
    for line in view.lines:
        place = QRectF(left, y, right - left, tall)
        paint_dots(painter, place, line.dots)
        middle = place.center().y()
        spot = QPointF(field.left(), middle - 0.6 * size)
        draw_text(painter, spot, line.title, size, theme.ink, FIRST, align=0.0)
        spot = QPointF(field.left(), middle + 0.6 * size)
        draw_text(painter, spot, line.counted, size, theme.second, SECOND, align=0.0)
        y += tall + 0.4 * size


def _paint_sky(
    painter: QPainter, wall: QRectF, view: StepView, height: float, ratio: float
) -> None:
    """The sky on its wall, everything but the band veiled, its letter beside it."""
    if view.sky is None:
        return
    badge = 0.063 * height
    image = view.sky.levels[0]
    room = wall.adjusted(1.5 * badge, MARGIN * height, -0.03 * height, -MARGIN * height)
    tall = min(room.height(), room.width() * image.height() / max(image.width(), 1))
    tall = max(tall, min(room.height(), 1.2 * room.width()))
    place = QRectF(room.left(), room.center().y() - tall / 2, room.width(), tall)
    painter.save()
    painter.setClipRect(place)
    whole = place
    wide = place.height() * image.width() / max(image.height(), 1)
    if wide > place.width():
        whole = QRectF(place.center().x() - wide / 2, place.top(), wide, place.height())
    view.sky.draw(painter, whole, ratio)
    top = place.top() + view.band[0] * place.height()
    bottom = place.top() + view.band[1] * place.height()
    veil = QColor(VEIL)
    veil.setAlphaF(0.8)
    painter.fillRect(QRectF(place.left(), place.top(), place.width(), top - place.top()), veil)
    painter.fillRect(QRectF(place.left(), bottom, place.width(), place.bottom() - bottom), veil)
    painter.restore()
    spot = QRectF(wall.left() + 0.25 * badge, (top + bottom - badge) / 2, badge, badge)
    painter.setPen(Qt.PenStyle.NoPen)
    paint_badge(painter, spot, BadgeView(view.letter, size=1.3))


def _heading(
    painter: QPainter, inside: QRectF, title: str, hint: str, height: float, theme: Theme
) -> float:
    size, small = 0.062 * height, LEAST_TEXT * height
    wide = text_size(hint, small, SECOND)[0]
    fitted = fit_text(title, inside.width() - wide - small, 0.16 * height, size, 0.046 * height,
                      CHOSEN)  # fmt: skip
    below = draw_fitted(painter, inside.left(), inside.top(), fitted, theme.ink, CHOSEN)
    spot = QPointF(inside.right(), inside.top() + 0.6 * size)
    draw_text(painter, spot, hint, small, theme.second, SECOND, align=1.0)
    return below + 0.02 * height


def _inside(rect: QRectF) -> QRectF:
    margin = MARGIN * rect.height()
    return rect.adjusted(margin, margin, -margin, -margin)

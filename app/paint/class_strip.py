"""The pacing strip at the foot of the class view, and the hint at its end."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.look.icons import paint_icon
from app.look.theme import Theme
from app.look.type import CHOSEN, SECOND
from app.paint.class_layout import LEAST_TEXT
from app.paint.ink import draw_text, kept, text_size

_TEXT: Final = LEAST_TEXT


@dataclass(frozen=True)
class StripView:
    """What the strip shows.

    Attributes
    ----------
    steps : tuple of str
        The last one carries the time that is left.
    present : int or None
        The step the class is at; None before the beginning.
    hint : str
        What the next key does; left out where the steps need the room.
    """

    steps: tuple[str, ...]
    present: int | None = None
    hint: str = ""


def strip_places(rect: QRectF, view: StripView, height: float) -> tuple[QRectF | None, ...]:
    """The place of each step; None for those there is no room for now.

    Steps begin at the left; once they need more room than there is, the first ones leave so
    that the present one and what follows can be seen.
    """
    size = _TEXT * height
    pad, between = 0.026 * height, 0.062 * height
    widths = [text_size(step, size, CHOSEN)[0] + 2 * pad for step in view.steps]
    room = rect.width() - 2 * pad
    first = 0
    present = view.present or 0
    while first < present and sum(widths[first:]) + between * (len(widths) - first - 1) > room:
        first += 1
    x, tall = rect.left() + pad, 0.072 * height
    places: list[QRectF | None] = [None] * first
    for width in widths[first:]:
        place = QRectF(x, rect.center().y() - tall / 2, width, tall)
        places.append(place if place.right() <= rect.right() - pad / 2 else None)
        x = place.right() + between
    return tuple(places)


def paint_strip(
    painter: QPainter, rect: QRectF, view: StripView, height: float, theme: Theme
) -> None:
    """Draw the strip into `rect`; `height` is the screen's."""
    size = _TEXT * height
    with kept(painter):
        painter.fillRect(rect, QColor(theme.bar))
        places = strip_places(rect, view, height)
        end, before = rect.left(), None
        for number, (place, step) in enumerate(zip(places, view.steps, strict=True)):
            if place is None:
                continue
            if before is not None:
                _paint_arrow(painter, before, place, size, theme)
            here = number == view.present
            if here:
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(QColor(theme.ink))
                painter.drawRoundedRect(place, 0.08 * place.height(), 0.08 * place.height())
            colour = theme.on_ink if here else theme.ink
            draw_text(painter, place.center(), step, size, colour, CHOSEN if here else SECOND)
            end, before = place.right(), place
        pad = 0.026 * height
        if view.hint and end + 2 * pad + text_size(view.hint, size, SECOND)[0] + pad < rect.right():
            spot = QPointF(rect.right() - 2 * pad, rect.center().y())
            draw_text(painter, spot, view.hint, size, theme.second, SECOND, align=1.0)


def _paint_arrow(
    painter: QPainter, before: QRectF, place: QRectF, size: float, theme: Theme
) -> None:
    side = 0.8 * size
    x = (before.right() + place.left()) / 2
    arrow = QRectF(x - side / 2, place.center().y() - side / 2, side, side)
    paint_icon(painter, arrow, "arrow_right", theme.second)

"""The pacing strip at the foot of the class view, and the hint at its end."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.classview.layout import LEAST_TEXT
from app.drawing.ink import draw_text, kept, text_size
from app.look.icons import paint_icon
from app.look.theme import Theme
from app.look.type import CHOSEN, SECOND

_TEXT: Final = LEAST_TEXT
_CLOSER: Final = (1.0, 0.75, 0.5)
"""Shares of the usual gaps, tried in this order."""


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

    Steps begin at the left. Where they need more room than there is they move closer; then the
    first ones leave, and then those between the next step and the last: the present step, and
    the last one with its clock, are always there.
    """
    count = len(view.steps)
    if not count:
        return ()
    present = min(view.present or 0, count - 1)
    for closer in _CLOSER:
        spread = _spread(rect, view, height, closer, list(range(count)))
        if spread is not None:
            return spread
    order = [*range(present), *range(count - 2, present, -1)]
    shown = list(range(count))
    for gone in order:
        shown.remove(gone)
        spread = _spread(rect, view, height, _CLOSER[-1], shown)
        if spread is not None:
            return spread
    return _spread(rect, view, height, _CLOSER[-1], shown, forced=True) or (None,) * count


def _spread(
    rect: QRectF,
    view: StripView,
    height: float,
    closer: float,
    shown: list[int],
    *,
    forced: bool = False,
) -> tuple[QRectF | None, ...] | None:
    """The places of the steps shown; None where they do not fit."""
    size, tall, edge = _TEXT * height, 0.072 * height, 0.026 * height
    pad, between = closer * 0.026 * height, max(closer * 0.062, 0.036) * height
    places: list[QRectF | None] = [None] * len(view.steps)
    x = rect.left() + edge
    for number in shown:
        width = text_size(view.steps[number], size, CHOSEN)[0] + 2 * pad
        places[number] = QRectF(x, rect.center().y() - tall / 2, width, tall)
        x += width + between
    fits = x - between <= rect.right() - edge / 2
    return tuple(places) if fits or forced else None


def paint_strip(
    painter: QPainter, rect: QRectF, view: StripView, height: float, theme: Theme
) -> None:
    """Draw the strip into `rect`; `height` is the screen's."""
    size = _TEXT * height
    with kept(painter):
        painter.fillRect(rect, QColor(theme.bar))
        places = strip_places(rect, view, height)
        end, before, last = rect.left(), None, 0
        for number, (place, step) in enumerate(zip(places, view.steps, strict=True)):
            if place is None:
                continue
            if before is not None:
                left_out = number - last > 1
                _paint_gap(painter, before, place, size, theme, left_out=left_out)
            here = number == view.present
            if here:
                painter.setPen(Qt.PenStyle.NoPen)
                painter.setBrush(QColor(theme.ink))
                painter.drawRoundedRect(place, 0.08 * place.height(), 0.08 * place.height())
            colour = theme.on_ink if here else theme.ink
            draw_text(painter, place.center(), step, size, colour, CHOSEN if here else SECOND)
            end, before, last = place.right(), place, number
        pad = 0.026 * height
        if view.hint and end + 2 * pad + text_size(view.hint, size, SECOND)[0] + pad < rect.right():
            spot = QPointF(rect.right() - 2 * pad, rect.center().y())
            draw_text(painter, spot, view.hint, size, theme.second, SECOND, align=1.0)


def _paint_gap(
    painter: QPainter, before: QRectF, place: QRectF, size: float, theme: Theme, *, left_out: bool
) -> None:
    """An arrow to the next step; dots where steps between the two have no room."""
    side = min(0.8 * size, place.left() - before.right())
    x = (before.right() + place.left()) / 2
    icon = QRectF(x - side / 2, place.center().y() - side / 2, side, side)
    paint_icon(painter, icon, "more" if left_out else "arrow_right", theme.second)

"""The questions of the class view: answers stand large, unanswered ones have a writing line."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPen, QPolygonF

from app.drawing.classview.layout import ANSWER, LEAST_TEXT, QUESTION
from app.drawing.classview.text import LINE, Fitted, draw_fitted, fit_text
from app.drawing.ink import draw_text, kept, text_size
from app.look.theme import Theme
from app.look.type import CHOSEN, SECOND

_CAPITALS = 0.67
"""Height of the capitals by the size of the face."""


@dataclass(frozen=True)
class LineView:
    """One question.

    Attributes
    ----------
    question : str
    answer, second : str
        Empty while it is not answered; the second line is smaller.
    present : bool
        The class is asked this now.
    hands : str
        How many hands went up: "23 hands"; empty when none were counted.
    """

    question: str
    answer: str = ""
    second: str = ""
    present: bool = False
    hands: str = ""


def paint_class_lines(
    painter: QPainter,
    slots: Sequence[QRectF],
    height: float,
    views: Sequence[LineView],
    theme: Theme,
) -> None:
    """Draw the questions into their places; `height` is the screen's."""
    places = room_for(slots, [least_height(view, slots[0].width(), height) for view in views])
    with kept(painter):
        for slot, view in zip(places, views, strict=True):
            _paint_line(painter, slot, height, view, theme)


def room_for(slots: Sequence[QRectF], needed: Sequence[float]) -> tuple[QRectF, ...]:
    """The places, where one is too low made higher by what the others can spare."""
    short = sum(max(need - slot.height(), 0.0) for slot, need in zip(slots, needed, strict=True))
    spare = sum(max(slot.height() - need, 0.0) for slot, need in zip(slots, needed, strict=True))
    if not short or not spare:
        return tuple(slots)
    taken, given = min(short / spare, 1.0), min(spare / short, 1.0)
    places, y = [], slots[0].top()
    for number, (slot, need) in enumerate(zip(slots, needed, strict=True)):
        more = need - slot.height()
        tall = slot.height() + (given * more if more > 0 else taken * more)
        places.append(QRectF(slot.left(), y, slot.width(), tall))
        if number + 1 < len(slots):
            y += tall + slots[number + 1].top() - slot.bottom()
    return tuple(places)


def least_height(view: LineView, width: float, height: float) -> float:
    """What a question needs at the least size, with its answer or its writing line."""
    least = LEAST_TEXT * height
    weight = CHOSEN if view.present else SECOND
    question = fit_text(_asked(view), width, 0.0, least, least, weight).height
    if not view.answer:
        return question + 0.04 * height
    lines = [fit_text(view.answer, width, 0.0, least, least, CHOSEN)]
    if view.second:
        lines.append(fit_text(view.second, width, 0.0, least, least, SECOND))
    return question + sum(line.height for line in lines)


def _asked(view: LineView) -> str:
    return f"{view.question}  ({view.hands})" if view.hands else view.question


def _paint_line(
    painter: QPainter, slot: QRectF, height: float, view: LineView, theme: Theme
) -> None:
    least = LEAST_TEXT * height
    asked = _asked(view)
    weight = CHOSEN if view.present else SECOND
    # Second text still has 7:1 on paper; what is to come may stand back, what is asked not.
    colour = theme.ink if view.present or view.answer else theme.second
    question = fit_text(asked, slot.width(), 0.55 * slot.height(), QUESTION * height, least, weight)
    if view.present:
        _paint_pointer(painter, slot, height, question.size, theme)
    bottom = draw_fitted(painter, slot.left(), slot.top(), question, colour, weight)
    if not view.answer:
        _paint_writing_line(painter, slot, height, view, theme)
        return
    room = slot.bottom() - bottom
    if view.second and _paint_side_by_side(painter, slot, bottom, height, view, theme):
        return
    second = None
    if view.second:
        second = fit_text(view.second, slot.width(), 0.5 * room, QUESTION * height, least, SECOND)
        room -= second.height
    answer = fit_text(view.answer, slot.width(), room, ANSWER * height, least, CHOSEN)
    bottom = draw_fitted(painter, slot.left(), bottom, answer, theme.ink, CHOSEN)
    if second is not None:
        draw_fitted(painter, slot.left(), bottom, second, theme.ink, SECOND)


def _paint_side_by_side(
    painter: QPainter, slot: QRectF, top: float, height: float, view: LineView, theme: Theme
) -> bool:
    """Answer and second line on one base line, where both fit there; tells whether they do."""
    large = min(ANSWER * height, (slot.bottom() - top) / LINE)
    small, gap = QUESTION * height, 0.35 * large
    if large < 1.15 * small:
        return False
    width = text_size(view.answer, large, CHOSEN)[0]
    if width + gap + text_size(view.second, small, SECOND)[0] > slot.width():
        return False
    bottom = draw_fitted(
        painter, slot.left(), top, Fitted((view.answer,), large), theme.ink, CHOSEN
    )
    # Capitals are centred on a height: the smaller ones are lowered to the larger ones' foot.
    lower = 0.5 * _CAPITALS * (large - small)
    spot = QPointF(slot.left() + width + gap, bottom - LINE * large * 0.48 + lower)
    draw_text(painter, spot, view.second, small, theme.ink, SECOND, align=0.0)
    return True


def _paint_pointer(
    painter: QPainter, slot: QRectF, height: float, size: float, theme: Theme
) -> None:
    tip = QPointF(slot.left() - 0.016 * height, slot.top() + 0.52 * LINE * size)
    half = 0.014 * height
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QColor(theme.ink))
    back = tip.x() - 1.7 * half
    painter.drawPolygon(
        QPolygonF([tip, QPointF(back, tip.y() - half), QPointF(back, tip.y() + half)])
    )


def _paint_writing_line(
    painter: QPainter, slot: QRectF, height: float, view: LineView, theme: Theme
) -> None:
    wide = 0.005 if view.present else 0.002
    painter.setPen(QPen(QColor(theme.ink if view.present else theme.edge), wide * height))
    y = slot.bottom() - 0.032 * height
    painter.drawLine(QPointF(slot.left(), y), QPointF(slot.right(), y))

"""The tally of hands: every guess with its count, in place of the questions."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter

from app.drawing.classview.layout import LEAST_TEXT, QUESTION
from app.drawing.classview.text import draw_fitted, fit_text
from app.drawing.ink import draw_text, kept, text_size
from app.look.icons import paint_icon
from app.look.theme import Theme
from app.look.type import CHOSEN, FIRST, SECOND


@dataclass(frozen=True)
class TallyView:
    """What the tally shows.

    Attributes
    ----------
    title : str
        The question.
    rows : tuple of (str, int)
        Guess, hands.
    chosen : int
        The row the keys speak to.
    right : int or None
        The row that is right, once the answer stands on the screen.
    hint : str
        How to count.
    """

    title: str
    rows: tuple[tuple[str, int], ...]
    chosen: int
    right: int | None = None
    hint: str = ""


def tally_places(paper: QRectF, height: float, count: int) -> tuple[QRectF, ...]:
    """The place of each row."""
    top, bottom = paper.top() + 0.135 * height, paper.bottom() - 0.085 * height
    row = min((bottom - top) / max(count, 1), 0.09 * height)
    left, width = paper.left() + 0.03 * height, paper.width() - 0.06 * height
    return tuple(QRectF(left, top + k * row, width, row) for k in range(count))


def paint_tally(
    painter: QPainter, paper: QRectF, height: float, view: TallyView, theme: Theme
) -> None:
    """Draw the tally onto the paper; `height` is the screen's."""
    least = LEAST_TEXT * height
    left, width = paper.left() + 0.06 * height, paper.width() - 0.09 * height
    with kept(painter):
        title = fit_text(view.title, width, 0.1 * height, QUESTION * height, least, CHOSEN)
        draw_fitted(painter, left, paper.top() + 0.028 * height, title, theme.ink, CHOSEN)
        places = tally_places(paper, height, len(view.rows))
        most = max([count for _, count in view.rows] + [1])
        widest = max(text_size(text, least, CHOSEN)[0] for text, _ in view.rows)
        for number, (place, (text, count)) in enumerate(zip(places, view.rows, strict=True)):
            row = _Row(number, text, count, count / most, widest)
            _paint_row(painter, place, row, view, theme, height)
        spot = QPointF(left, paper.bottom() - 0.045 * height)
        hint = fit_text(view.hint, width, 0.05 * height, least, least, SECOND)
        draw_text(painter, spot, hint.lines[0], hint.size, theme.second, SECOND, align=0.0)


@dataclass(frozen=True)
class _Row:
    """A guess, its hands, their share of the most, and the width of the widest guess."""

    number: int
    text: str
    count: int
    share: float
    widest: float


def _paint_row(
    painter: QPainter, place: QRectF, row: _Row, view: TallyView, theme: Theme, height: float
) -> None:
    size, pad = LEAST_TEXT * height, 0.03 * height
    chosen, right = row.number == view.chosen, row.number == view.right
    painter.setPen(Qt.PenStyle.NoPen)
    if chosen:
        painter.fillRect(place, QColor(theme.raised))
        painter.fillRect(QRectF(place.left(), place.top(), 6, place.height()), QColor(theme.ink))
    weight = CHOSEN if right else FIRST if chosen else SECOND
    left, middle = place.left() + pad, place.center().y()
    draw_text(painter, QPointF(left, middle), row.text, size, theme.ink, weight, align=0)
    if right:
        x = left + text_size(row.text, size, weight)[0] + 0.3 * size
        paint_icon(painter, QRectF(x, middle - size / 2, size, size), "check", theme.ink)
    if row.count == 0:
        return
    end = place.right() - 0.4 * pad
    spot = QPointF(end, middle)
    draw_text(painter, spot, str(row.count), size, theme.ink, CHOSEN, align=1.0)
    start = left + row.widest + 1.5 * size
    length = max(end - 1.6 * size - start, 0.0) * row.share
    painter.fillRect(QRectF(start, middle - 0.14 * size, length, 0.28 * size), QColor(theme.ink))

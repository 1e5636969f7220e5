"""One band of a sheet beside the sky's: two chips that touch, the verdict, what differs."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter

from app.drawing.ink import INK, draw_text, kept, text_size
from app.drawing.marks import (
    BadgeView,
    ChipView,
    VerdictView,
    paint_badge,
    paint_chip,
    paint_verdict,
)
from app.look.theme import WALL
from app.look.type import CHOSEN, FIRST, MEDIUM, SECOND
from core.reading.quality import Verdict

# In sizes of the second text.
BADGES = 3.4
CHIP = 3.85
_AFTER_CHIPS = 0.8
INSIDE = 1.05
_SIGN = 1.33
_ROOM = 0.55


@dataclass(frozen=True)
class Detail:
    """One quality in its own words: "value: lighter by 1"."""

    kind: Verdict
    text: str


@dataclass(frozen=True)
class BandRowView:
    """One band.

    Attributes
    ----------
    letter : str
    photo, sheet : str or None
        "#rrggbb".
    kind, word : str
        The verdict on the whole band and its word.
    remark : str
        What differs; empty when nothing does.
    details : tuple of Detail
        Every quality, shown in place of the remark when the row is open.
    spoken : str
        All of it, for a screen reader.
    open : bool
    text, second : float
        Sizes of the two texts, in the painter's units.
    ink, second_ink, ground : str
        Colours of the page.
    wall : bool
        A strip of wall is under badge and chips; on white paper there is none.
    badge_width, chip_width : float or None
        Where the column is narrow; None takes what the text's size gives.
    """

    letter: str
    photo: str | None
    sheet: str | None
    kind: Verdict
    word: str
    remark: str
    details: tuple[Detail, ...] = ()
    spoken: str = ""
    open: bool = False
    text: float = 18.0
    second: float = 15.0
    ink: str = INK
    second_ink: str = "#3d3d3d"
    ground: str = "#ededed"
    wall: bool = True
    badge_width: float | None = None
    chip_width: float | None = None

    @property
    def words_left(self) -> float:
        """From the row's left edge to its paper."""
        chips = 2 * (self.chip_width or CHIP * self.second)
        return (self.badge_width or BADGES * self.second) + chips + _AFTER_CHIPS * self.second


def row_height(view: BandRowView, width: float) -> float:
    """The least height a row needs in `width`."""
    lines = len(_lines(view, width))
    below = 1.32 * view.second * lines
    return max(1.25 * view.text + below + 0.45 * view.second, 2.2 * view.second)


def paint_band_row(painter: QPainter, rect: QRectF, view: BandRowView) -> None:
    """Draw a row filling `rect`."""
    with kept(painter):
        left = rect.left() + view.words_left
        if view.wall:
            painter.fillRect(
                QRectF(rect.left(), rect.top(), view.words_left, rect.height()), QColor(WALL)
            )
        paper = QRectF(left, rect.top(), rect.right() - left, rect.height())
        painter.fillRect(paper, QColor(view.ground))
        _paint_chips(painter, rect, view)
        _paint_words(painter, paper, rect.width(), view)


def _paint_chips(painter: QPainter, rect: QRectF, view: BandRowView) -> None:
    badge_width = view.badge_width or BADGES * view.second
    chip = view.chip_width or CHIP * view.second
    radius = min(0.95 * view.second, 0.42 * rect.height(), 0.42 * badge_width)
    box = QRectF(0, 0, 2 * radius, 2 * radius)
    box.moveCenter(QPointF(rect.left() + 0.5 * badge_width, rect.center().y()))
    paint_badge(painter, box, BadgeView(view.letter, chosen=view.open))
    clear = 0.13 * view.second
    top, height = rect.top() + clear, rect.height() - 2 * clear
    left = rect.left() + badge_width
    for number, colour in enumerate((view.photo, view.sheet)):
        # Touching on whole pixels: a difference shows as an edge, a match as none.
        start, end = round(left + number * chip), round(left + (number + 1) * chip)
        area = QRectF(start, top, end - start, height)
        paint_chip(painter, area, ChipView(colour))


def _paint_words(painter: QPainter, paper: QRectF, width: float, view: BandRowView) -> None:
    lines = _lines(view, width)
    pitch = 1.32 * view.second
    needed = 1.25 * view.text + pitch * len(lines)
    top = paper.center().y() - needed / 2
    left = paper.left() + INSIDE * view.second
    sign = _SIGN * view.second
    middle = top + 0.625 * view.text
    symbol = VerdictView(view.kind, "", view.ink, view.ground)
    side = min(sign, 1.12 * view.text)
    if view.kind != "cannot tell":
        paint_verdict(painter, QRectF(left, middle - side / 2, side, side), symbol)
    words = left + sign + _ROOM * view.second
    first = left if view.kind == "cannot tell" else words
    weight = SECOND if view.kind == "cannot tell" else CHOSEN if view.open else FIRST
    draw_text(painter, QPointF(first, middle), view.word, view.text, view.ink, weight, align=0.0)
    y = top + 1.25 * view.text + 0.5 * pitch
    for kind, text, head in lines:
        if kind is not None and head and kind != "cannot tell":
            small = VerdictView(kind, "", view.ink, view.ground)
            high = 0.92 * view.second
            spot = QRectF(left + (sign - high) / 2, y - high / 2, high, high)
            paint_verdict(painter, spot, small)
        colour = view.ink if kind is not None else view.second_ink
        face = MEDIUM if kind is not None else SECOND
        draw_text(painter, QPointF(words, y), text, view.second, colour, face, align=0.0)
        y += pitch


def _lines(view: BandRowView, width: float) -> list[tuple[Verdict | None, str, bool]]:
    """What stands below the verdict: kind (None for the remark), text, whether it begins."""
    room = width - view.words_left - (INSIDE * 2 + _SIGN + _ROOM - 0.5) * view.second
    if view.open and view.details:
        return [
            (detail.kind, line, number == 0)
            for detail in view.details
            for number, line in enumerate(_wrapped(detail.text, view.second, MEDIUM, room))
        ]
    return [
        (None, line, number == 0)
        for number, line in enumerate(_wrapped(view.remark, view.second, SECOND, room))
    ]


def _wrapped(text: str, size: float, weight: int, width: float) -> list[str]:
    lines: list[str] = []
    line = ""
    for word in text.split():
        joined = f"{line} {word}" if line else word
        if line and text_size(joined, size, weight)[0] > width:
            lines.append(line)
            line = word
        else:
            line = joined
    return [*lines, line] if line else lines

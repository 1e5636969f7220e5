"""What the canvas draws itself: lines with their stems, dots, letters and words on the veil."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPainterPath

from app.canvas.layout import LetterRow
from app.drawing.ink import BLACK, WHITE, box, haloed, kept
from app.drawing.lines import HEAVY_PX, BracketView, LineView, paint_bracket, paint_line
from app.drawing.marks import BadgeView, paint_badge

BADGE_CLEAR = 14
"""From the photo's edge to the letters' discs; the bracket stands between."""

_BRACKET_AT, _BRACKET_WIDTH = 10, 6


@dataclass(frozen=True)
class DrawnLine:
    """A line across the photo and its stem to the grip.

    Attributes
    ----------
    left, right : float
        Ends on the photo, pixels.
    y : float
        Height on the photo, pixels.
    grip_x, grip_y : float
        Where the stem meets the grip.
    heavy : bool
        Chosen, or the horizon.
    """

    left: float
    right: float
    y: float
    grip_x: float
    grip_y: float
    heavy: bool

    @property
    def rect(self) -> QRectF:
        """Everything the line may cover."""
        top, bottom = min(self.y, self.grip_y), max(self.y, self.grip_y)
        reach = HEAVY_PX / 2 + 1
        return QRectF(
            self.left - 1, top - reach, self.grip_x - self.left + 2, bottom - top + 2 * reach
        )


def letter_rect(row: LetterRow, photo_left: float, radius: float) -> QRectF:
    """Everything a letter, its rings and its bracket may cover."""
    left = photo_left - BADGE_CLEAR - 2.4 * radius
    bracket = _bracket(row, photo_left)
    top = min(bracket.top(), row.middle - 1.3 * radius)
    bottom = max(bracket.bottom(), row.middle + 1.3 * radius)
    return QRectF(left, top - 1, photo_left - left, bottom - top + 2)


def _bracket(row: LetterRow, photo_left: float) -> QRectF:
    """How far a band reaches, a little less: brackets stand clear of each other."""
    height = max(row.lower - row.upper - 8, 4)
    middle = (row.upper + row.lower) / 2
    return QRectF(photo_left - _BRACKET_AT, middle - height / 2, _BRACKET_WIDTH, height)


def paint_lines(painter: QPainter, lines: Sequence[DrawnLine]) -> None:
    """Every line in white within black, which survives any sky; heavy ones last."""
    for line in sorted(lines, key=lambda each: each.heavy):
        straight = abs(line.grip_y - line.y) < 1
        end = line.grip_x if straight else line.right
        rect = QRectF(line.left, line.y - HEAVY_PX / 2, end - line.left, HEAVY_PX)
        if not straight:
            path = QPainterPath(QPointF(line.right - 1, line.y))
            path.lineTo(line.right + 1, line.y)
            path.lineTo(line.grip_x, line.grip_y)
            with kept(painter):
                haloed(painter, path, 1.6, 3.6, core=WHITE, around=BLACK)
        paint_line(painter, rect, LineView("heavy" if line.heavy else "plain"))


def paint_rival(
    painter: QPainter, left: float, right: float, y: float, words: QRectF | None = None
) -> None:
    """A dotted line: the sky might end here too. It leaves what stands in `words` free."""
    crossed = words is not None and words.top() - HEAVY_PX < y < words.bottom() + HEAVY_PX
    spans = [(left, right)]
    if crossed and words is not None:
        spans = [(left, words.left() - 8), (words.right() + 8, right)]
    for start, end in spans:
        if end - start > HEAVY_PX:
            rect = QRectF(start, y - HEAVY_PX / 2, end - start, HEAVY_PX)
            paint_line(painter, rect, LineView("dotted"))


def paint_letters(
    painter: QPainter,
    rows: Sequence[LetterRow],
    letters: Sequence[str],
    chosen: int,
    photo_left: float,
    radius: float,
) -> None:
    """The bands' letters left of the photo, with brackets that show how far each reaches."""
    bracket_x = photo_left - _BRACKET_AT
    badge_x = photo_left - BADGE_CLEAR - radius
    for row in rows:
        is_chosen = row.band == chosen
        bracket, middle = _bracket(row, photo_left), (row.upper + row.lower) / 2
        if not row.upper <= row.middle <= row.lower:
            path = QPainterPath(QPointF(badge_x + radius, row.middle))
            path.lineTo(bracket_x + 1, middle)
            with kept(painter):
                haloed(painter, path, 1.6, 1.6)
        paint_bracket(painter, bracket, BracketView(is_chosen))
        badge = QRectF(badge_x - radius, row.middle - radius, 2 * radius, 2 * radius)
        paint_badge(painter, badge, BadgeView(letters[row.band], chosen=is_chosen))


def paint_focus_ring(painter: QPainter, rect: QRectF, radius: float) -> None:
    """Black with white outside, clear of what has the focus: on the wall and on any photo."""
    with kept(painter):
        for colour, outset, width in ((WHITE, 5.6, 1.6), (BLACK, 3.6, 2.5)):
            painter.setPen(Qt.PenStyle.NoPen)
            ring = rect.adjusted(-outset, -outset, outset, outset)
            path = box(ring, radius + outset)
            inside = box(
                ring.adjusted(width, width, -width, -width), max(radius + outset - width, 0)
            )
            painter.fillPath(path.subtracted(inside), QColor(colour))


def veil_words_place(rect: QRectF, font: QFont, text: str) -> QRectF | None:
    """Where words stand on the veil; None where there is no room for them."""
    needed = QRectF(QFontMetricsF(font).boundingRect(text))
    if needed.width() + 16 > rect.width() or needed.height() + 4 > rect.height():
        return None
    needed.moveCenter(rect.center())
    return needed


def paint_veil_words(painter: QPainter, rect: QRectF, font: QFont, text: str) -> None:
    """Words on the veil over what is not sky, where there is room for them."""
    if veil_words_place(rect, font, text) is not None:
        painter.setFont(font)
        painter.setPen(QColor(BLACK))
        painter.drawText(rect, Qt.AlignmentFlag.AlignCenter, text)

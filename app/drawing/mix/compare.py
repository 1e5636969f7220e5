"""The box's paints of one group side by side: what each reaches for a band, in colour and words."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF
from PySide6.QtGui import QColor, QPainter

from app.drawing.ink import CHOSEN, kept
from app.drawing.marks import VerdictView, paint_verdict
from app.drawing.mix.text import PITCH, draw_lines, lines_of
from app.look.theme import WALL
from core.reading.quality import Verdict


@dataclass(frozen=True)
class ComparedChip:
    """One paint in the band's mix.

    Attributes
    ----------
    name : str
        The paint.
    colour : str
        What it reaches.
    mix : str
        In which parts.
    verdict : Verdict
    verdict_word : str
    faults, sensitivity : str
        In what it errs, and what one part too much does; empty ones are left out.
    used : bool
        The band's mix holds it.
    """

    name: str
    colour: str
    mix: str
    verdict: Verdict
    verdict_word: str
    faults: str
    sensitivity: str
    used: bool


@dataclass(frozen=True)
class CompareView:
    """All of them, and the band's own colour behind.

    Attributes
    ----------
    photo : str
    chips : tuple of ComparedChip
    text_px : float
    ink, second, ground : str
        The page's.
    """

    photo: str
    chips: tuple[ComparedChip, ...]
    text_px: float
    ink: str
    second: str
    ground: str


def compare_captions_height(width: float, view: CompareView) -> float:
    """Height of the words under the chips."""
    room = _column(width, view) - view.text_px
    tallest = max((len(_lines(chip, view, room)) for chip in view.chips), default=0)
    # The verdict's line is a little taller than the others.
    return (tallest + 1.35) * PITCH * view.text_px + 0.5 * view.text_px


def paint_compare(painter: QPainter, rect: QRectF, view: CompareView, *, wall: QRectF) -> None:
    """The photo's colour along the top, each paint's under it with no line between."""
    if not view.chips:
        return
    size = view.text_px
    below = compare_captions_height(rect.width(), view)
    column = _column(rect.width(), view)
    strip = QRectF(wall.left(), rect.top(), wall.width(), rect.height() - below)
    pad = 4 * size / 13
    with kept(painter):
        painter.fillRect(strip, QColor(WALL))
        middle = round(strip.top() + 0.42 * strip.height())
        for number, chip in enumerate(view.chips):
            left = round(rect.left() + number * column)
            width = round(rect.left() + (number + 1) * column) - left - size
            top = strip.top() + pad
            painter.fillRect(QRectF(left, top, width, middle - top), QColor(view.photo))
            painter.fillRect(
                QRectF(left, middle, width, strip.bottom() - pad - middle), QColor(chip.colour)
            )
            spot = QPointF(left, strip.bottom() + 0.3 * size)
            for line, weight, colour in _lines(chip, view, column - size)[:1]:
                spot += QPointF(0, draw_lines(painter, spot, (line,), size, colour, weight))
            height = 1.2 * size
            paint_verdict(
                painter,
                QRectF(left, spot.y() + 0.2 * size, column - size, height),
                VerdictView(chip.verdict, chip.verdict_word, view.ink, view.ground),
            )
            spot += QPointF(0, 1.35 * PITCH * size)
            for line, weight, colour in _lines(chip, view, column - size)[1:]:
                spot += QPointF(0, draw_lines(painter, spot, (line,), size, colour, weight))


def _column(width: float, view: CompareView) -> float:
    """Columns as wide as the room, but no wider than reads well."""
    return min(width / max(len(view.chips), 1), 24 * view.text_px)


def _lines(chip: ComparedChip, view: CompareView, room: float) -> list[tuple[str, int, str]]:
    first = lines_of(chip.name, view.text_px, CHOSEN, room)
    remarks = (text for text in (chip.faults, chip.sensitivity) if text)
    rest = [(chip.mix, 400, view.second), *((text, 400, view.ink) for text in remarks)]
    lines = [(" ".join(first), CHOSEN if chip.used else 600, view.ink)]
    for text, weight, colour in rest:
        lines += [(line, weight, colour) for line in lines_of(text, view.text_px, weight, room)]
    return lines

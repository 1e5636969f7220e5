"""The tone-down ladder: touching chips on the wall, what each is to the band under it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPen

from app.drawing.ink import BLACK, CHOSEN, WHITE, kept
from app.drawing.mix.text import PITCH, draw_lines, lines_of
from app.look.theme import WALL

CLEAR = 4.0
"""Wall above and below the chips, in text sizes / 13."""


@dataclass(frozen=True)
class ToneChip:
    """One step.

    Attributes
    ----------
    colour : str
    fraction : str
        How much toner: "1/20 yellow".
    note : str
        What it is to the band: "matches C".
    drift : str
        How hue and value moved; mostly empty.
    framed, mud : bool
        The match; a step past it in which neither hue is left.
    """

    colour: str
    fraction: str
    note: str
    drift: str = ""
    framed: bool = False
    mud: bool = False


@dataclass(frozen=True)
class ToneView:
    """The ladder.

    Attributes
    ----------
    chips : tuple of ToneChip
    text_px : float
        In the painter's units.
    ink, second : str
    drifts : bool
        Whether there is room for a third line.
    """

    chips: tuple[ToneChip, ...]
    text_px: float
    ink: str
    second: str
    drifts: bool = True


def captions_height(width: float, view: ToneView) -> float:
    """Height of the words under the chips."""
    room = width / max(len(view.chips), 1) - 0.8 * view.text_px
    tallest = max((len(_lines(chip, view, room)) for chip in view.chips), default=0)
    return tallest * PITCH * view.text_px + 0.4 * view.text_px


def paint_tone(painter: QPainter, rect: QRectF, view: ToneView, *, wall: QRectF) -> None:
    """Chips and captions filling `rect`; the band of wall behind the chips spans `wall`'s width."""
    if not view.chips:
        return
    unit = view.text_px / 13
    below = captions_height(rect.width(), view)
    width = rect.width() / len(view.chips)
    strip = QRectF(wall.left(), rect.top(), wall.width(), rect.height() - below)
    with kept(painter):
        painter.fillRect(strip, QColor(WALL))
        framed = None
        for number, chip in enumerate(view.chips):
            # Whole pixels, so that touching chips leave no seam.
            left, right = (
                round(rect.left() + number * width),
                round(rect.left() + (number + 1) * width),
            )
            area = QRectF(
                left, strip.top() + CLEAR * unit, right - left, strip.height() - 2 * CLEAR * unit
            )
            painter.fillRect(area, QColor(chip.colour))
            if chip.mud:
                _hatch(painter, area, unit)
            if chip.framed:
                framed = area
            spot = QPointF(area.left() + 2 * unit, strip.bottom() + 0.25 * view.text_px)
            for text, weight, colour in _lines(chip, view, width - 0.8 * view.text_px):
                spot += QPointF(0, draw_lines(painter, spot, (text,), view.text_px, colour, weight))
        if framed is not None:
            _frame(painter, framed, unit)


def _lines(chip: ToneChip, view: ToneView, room: float) -> list[tuple[str, int, str]]:
    weight = CHOSEN if chip.framed else 400
    texts = [(chip.fraction, weight if chip.framed else 500, view.ink)]
    texts.append((chip.note, CHOSEN if chip.framed or chip.mud else 400, view.ink))
    if view.drifts and chip.drift:
        texts.append((chip.drift, 400, view.second))
    return [
        (line, weight, colour)
        for text, weight, colour in texts
        for line in lines_of(text, view.text_px, weight, room)
    ]


def _hatch(painter: QPainter, area: QRectF, unit: float) -> None:
    painter.save()
    painter.setClipRect(area)
    painter.setPen(QPen(QColor(BLACK), 1.1 * unit))
    x = area.left() - area.height()
    while x < area.right():
        painter.drawLine(QPointF(x, area.bottom()), QPointF(x + area.height(), area.top()))
        x += 9 * unit
    painter.restore()


def _frame(painter: QPainter, area: QRectF, unit: float) -> None:
    """Black, white, black around the match: seen on any chip."""
    path = QPainterPath()
    path.addRect(area.adjusted(-unit, -unit, unit, unit))
    painter.setBrush(Qt.BrushStyle.NoBrush)
    for colour, width in ((BLACK, 6.5), (WHITE, 2.2)):
        pen = QPen(QColor(colour), width * unit)
        pen.setJoinStyle(Qt.PenJoinStyle.MiterJoin)
        painter.setPen(pen)
        painter.drawPath(path)

"""The four scores of a sheet: a second opinion, one for each quality, never put together."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QSize
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.ink import draw_text, text_size
from app.look import look
from app.look.type import CHOSEN, SECOND
from core.i18n import translate
from core.reading.quality import QUALITIES
from core.sheet.findings.words import quality_word
from core.sheet.result import Scores
from core.worksheet.compare import shown_score
from core.worksheet.worksheet import OwnScores


@dataclass(frozen=True)
class ScoreCell:
    """One quality: its word, the measured score, and the student's own."""

    word: str
    measured: str
    own: str


def score_cells(scores: Scores, own: OwnScores) -> tuple[ScoreCell, ...]:
    """The scores in words."""
    cells = []
    for quality in QUALITIES:
        # Whole numbers, as on the worksheet and the cards: the student scores in them too.
        measured = shown_score(getattr(scores, quality))
        mine = own.of(quality)
        number = "-" if measured is None else str(measured)
        said = "" if mine is None else translate("sheets page", "own {score}").format(score=mine)
        cells.append(ScoreCell(quality_word(quality), number, said))
    return tuple(cells)


class ScoresStrip(QWidget):
    """Four scores side by side."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._cells: tuple[ScoreCell, ...] = ()
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_cells(self, cells: tuple[ScoreCell, ...]) -> None:
        """Show other scores."""
        self._cells = cells
        spoken = [
            translate("sheets page", "{quality} {score} of 10").format(
                quality=cell.word, score=cell.measured
            )
            + (f" ({cell.own})" if cell.own else "")
            for cell in cells
        ]
        head = translate("sheets page", "Measured, as a second opinion: ")
        self.setAccessibleName(head + ", ".join(spoken))
        self.updateGeometry()
        self.update()

    @property
    def cells(self) -> tuple[ScoreCell, ...]:
        """What is shown."""
        return self._cells

    def sizeHint(self) -> QSize:
        second, row = look().type.px("control"), look().type.px("row")
        return QSize(300, round(row * 1.35 + second * 1.3))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self.updateGeometry()

    def paintEvent(self, event: QPaintEvent) -> None:
        if not self._cells:
            return
        theme, scale = look().theme, look().type
        second, row = float(scale.px("control")), float(scale.px("row"))
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width = self.width() / len(self._cells)
        shrink = min(1.0, (width - 0.4 * second) / max(map(_cell_width, self._cells)))
        second, row = second * shrink, row * shrink
        for number, cell in enumerate(self._cells):
            x, y = number * width, 0.65 * second
            draw_text(painter, QPointF(x, y), cell.word, second, theme.second, SECOND, align=0.0)
            y += 0.65 * second + 0.65 * row
            draw_text(painter, QPointF(x, y), cell.measured, row, theme.ink, CHOSEN, align=0.0)
            x += text_size(cell.measured, row, CHOSEN)[0] + 0.5 * second
            draw_text(painter, QPointF(x, y), cell.own, second, theme.second, SECOND, align=0.0)
        painter.end()


def _cell_width(cell: ScoreCell) -> float:
    """How wide a cell's words are at their full size."""
    second, row = look().type.px("control"), look().type.px("row")
    numbers = text_size(cell.measured, row, CHOSEN)[0]
    if cell.own:
        numbers += 0.5 * second + text_size(cell.own, second, SECOND)[0]
    return max(numbers, text_size(cell.word, second, SECOND)[0])

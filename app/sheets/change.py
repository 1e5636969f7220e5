"""What changed from sheet 1 to sheet 2, as a small table."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.fit import wrap
from app.drawing.ink import draw_text
from app.look import look
from app.look.icons import paint_icon
from app.look.type import CHOSEN, FIRST, SECOND
from core.i18n import translate
from core.reading.quality import Outcome
from core.sheet.findings.change import change_word
from core.sheet.findings.words import quality_word
from core.sheet.result import Change

_ICONS = {"improved": "check", "worse": "arrow_left", "stayed": "minus"}
# Shares of the width: what, on sheet 1, on sheet 2, the outcome.
_SHARES = (0.0, 0.27, 0.52, 0.76)


@dataclass(frozen=True)
class ChangeLine:
    """One row: what is compared, before, after, and the outcome with its word."""

    what: str
    before: str
    after: str
    outcome: Outcome
    word: str


def change_lines(change: Change) -> tuple[ChangeLine, ...]:
    """What came nearer, what went further, and what stayed though it reads otherwise now."""
    lines = []
    for row in change.telling:
        what = quality_word(row.about)
        if row.letter is not None:
            what = translate("sheets page", "{letter} {quality}").format(
                letter=row.letter, quality=what
            )
        word = change_word(row)
        lines.append(ChangeLine(what, row.before, row.after, row.outcome, word))
    return tuple(lines)


class ChangeTable(QWidget):
    """The rows of a change, under a line of headings."""

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._lines: tuple[ChangeLine, ...] = ()
        self._rest = ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)

    def set_lines(self, lines: tuple[ChangeLine, ...], rest: str = "") -> None:
        """Show other rows, and a line below them about all the rest."""
        self._lines, self._rest = lines, rest
        text = translate("sheets page", "{what}: {before}, then {after}, {outcome}.")
        self.setAccessibleName(
            " ".join(
                text.format(what=line.what, before=line.before, after=line.after, outcome=line.word)
                for line in lines
            )
            + f" {rest}"
        )
        self._fit()

    @property
    def lines(self) -> tuple[ChangeLine, ...]:
        """What is shown."""
        return self._lines

    def sizeHint(self) -> QSize:
        return QSize(400, self.height())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        if event.oldSize().width() != event.size().width():
            self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_lines"):
            self._fit()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, size = look().theme, look().type.px("control")
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        lefts = [share * self.width() for share in _SHARES]
        heads = (
            "",
            translate("sheets page", "Sheet 1"),
            translate("sheets page", "Sheet 2"),
            translate("sheets page", "Outcome"),
        )
        y = self._head() / 2
        for left, head in zip(lefts, heads, strict=True):
            draw_text(painter, QPointF(left, y), head, size, theme.second, SECOND, align=0.0)
        top = float(self._head())
        for line in self._lines:
            cells = self._cells(line)
            height = self._row_height(cells)
            painter.setPen(QPen(QColor(theme.rule), 1.25))
            painter.drawLine(QPointF(0, top), QPointF(self.width(), top))
            stayed = line.outcome == "stayed"
            for column, (left, lines) in enumerate(zip(lefts, cells, strict=True)):
                ink = theme.second if stayed or column == 1 else theme.ink
                weight = FIRST if column == 0 and not stayed else SECOND
                if column == 3:
                    icon = QRectF(left, top + height / 2 - 0.6 * size, 1.2 * size, 1.2 * size)
                    paint_icon(painter, icon, _ICONS[line.outcome], ink)
                    left += 1.6 * size
                    weight = SECOND if stayed else CHOSEN
                first = top + height / 2 - (len(lines) - 1) * 0.625 * size
                for k, text in enumerate(lines):
                    spot = QPointF(left, first + k * 1.25 * size)
                    draw_text(painter, spot, text, size, ink, weight, align=0.0)
            top += height
        if self._rest:
            painter.setPen(QPen(QColor(theme.rule), 1.25))
            painter.drawLine(QPointF(0, top), QPointF(self.width(), top))
            spot = QPointF(0, top + 0.95 * size)
            draw_text(painter, spot, self._rest, size, theme.second, SECOND, align=0.0)
        painter.end()

    def _cells(self, line: ChangeLine) -> list[tuple[str, ...]]:
        size = look().type.px("control")
        ends = (*_SHARES[1:], 1.0)
        cells = []
        for column, text in enumerate((line.what, line.before, line.after, line.word)):
            room = (ends[column] - _SHARES[column]) * self.width() - 0.7 * size
            cells.append(wrap(text, size, CHOSEN if column == 3 else FIRST, max(room, 40.0)))
        return cells

    def _row_height(self, cells: list[tuple[str, ...]]) -> float:
        size = look().type.px("control")
        return max(len(lines) for lines in cells) * 1.25 * size + 0.6 * size

    def _head(self) -> int:
        return look().type.grow(30)

    def _fit(self) -> None:
        height = self._head() + sum(self._row_height(self._cells(line)) for line in self._lines)
        height += 2 * look().type.px("control") if self._rest else 0
        self.setFixedHeight(round(height + 4))
        self.update()

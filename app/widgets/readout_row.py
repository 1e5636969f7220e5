"""One row of the table of readings: badge and chip on a tongue of wall, then the words."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QWidget

from app.drawing.fit import Fitted
from app.drawing.marks import BadgeView, ChipView, paint_badge, paint_chip
from app.look import look
from app.look.space import FOCUS_WIDTH, MARGIN
from app.look.theme import WALL
from app.look.type import FIRST, font
from app.widgets.choice_row import ChoiceRow
from app.widgets.readout_views import ReadoutRow

BADGES = 52
CHIPS = 52
_BAR = 6
_BASE = 0.74
"""Of a line's height, where its words stand."""
_CHIP_CLEAR = 4


@dataclass(frozen=True)
class Columns:
    """Left ends and widths of the text columns; stacked puts all below each other."""

    lefts: tuple[float, float, float]
    widths: tuple[float, float, float]
    stacked: bool


Cell = tuple[Fitted, ...]


class Row(ChoiceRow):
    """One band."""

    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(number, parent)
        self.view: ReadoutRow | None = None
        self._drawn: ReadoutRow | None = None
        self.cells: tuple[Cell, ...] = ()
        self.columns = Columns((0, 0, 0), (1, 1, 1), False)
        # It fills all it covers: while a line is dragged only the rows that change are drawn.
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)

    def show_cells(self, columns: Columns, cells: tuple[Cell, ...], ruled: bool) -> None:
        """Lay the texts out so; drawn again only where that, or the view, is new."""
        now = (columns, cells, ruled, self.view)
        if now != (self.columns, self.cells, self.ruled, self._drawn):
            self.columns, self.cells, self.ruled, self._drawn = now
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.view is None:
            return
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        width, height = self.width(), self.height()
        painter.fillRect(self.rect(), QColor(WALL))
        paper = QRectF(BADGES + CHIPS, 0, width - BADGES - CHIPS, height)
        chosen = self.isChecked()
        painter.fillRect(paper, QColor(theme.raised if chosen else theme.paper))
        self._paint_chip(painter, chosen)
        if chosen:
            painter.fillRect(QRectF(paper.left(), 0, _BAR, height), QColor(theme.ink))
        elif self.underMouse():
            painter.fillRect(QRectF(paper.left(), 0, 2, height), QColor(theme.edge))
        if self.ruled:
            painter.setPen(QPen(QColor(theme.rule), 1.25))
            painter.drawLine(
                QPointF(paper.left() + MARGIN, height - 0.7),
                QPointF(paper.right() - MARGIN, height - 0.7),
            )
        line = self.first_line()
        for left, cell in zip(self.columns.lefts, self.cells, strict=False):
            self._paint_cell(painter, paper.left() + left, cell, line)
        if self.hasFocus() and self._by_key:
            painter.setPen(QPen(QColor(theme.ink), FOCUS_WIDTH))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            ring = paper.adjusted(_BAR + 3, 3, -3, -3)
            painter.drawRoundedRect(ring, 5, 5)
        painter.end()

    def _paint_chip(self, painter: QPainter, chosen: bool) -> None:
        assert self.view is not None
        height = self.height()
        radius = min(14.0 * min(look().type.scale, 1.35), 0.5 * height - 3)
        box = QRectF(0, 0, 2 * radius, 2 * radius)
        box.moveCenter(QPointF(BADGES / 2 + 2, height / 2))
        paint_badge(painter, box, BadgeView(self.view.letter, chosen=chosen))
        chip = QRectF(BADGES, _CHIP_CLEAR, CHIPS, height - 2 * _CHIP_CLEAR)
        other = self.view.other
        if other is None:
            paint_chip(painter, chip, ChipView(self.view.colour))
        else:
            view = ChipView(self.view.colour, second=other.colour, share=other.share)
            paint_chip(painter, chip, view)

    def first_line(self) -> float:
        """Where the first words of all cells stand, however many lines are below them."""
        tallest = max((sum(part.height for part in cell) for cell in self.cells), default=0.0)
        pitch = max((cell[0].pitch for cell in self.cells if cell), default=0.0)
        return (self.height() - tallest) / 2 + _BASE * pitch

    def _paint_cell(self, painter: QPainter, left: float, cell: Cell, line_y: float) -> None:
        theme = look().theme
        top = line_y - _BASE * cell[0].pitch if cell else 0.0
        for number, part in enumerate(cell):
            first = part.weight >= FIRST
            painter.setFont(font(part.size, part.weight))
            painter.setPen(QColor(theme.ink if first or number == 0 else theme.second))
            for line in part.lines:
                rect = QRectF(left, top, part.width + 4, part.pitch)
                flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
                painter.drawText(rect, int(flags) | int(Qt.TextFlag.TextDontClip), line)
                top += part.pitch

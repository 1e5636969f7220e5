"""One row of the table of readings: badge and chip on a tongue of wall, then the words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import chain

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QShowEvent
from PySide6.QtWidgets import QWidget

from app.drawing.fit import Fitted
from app.drawing.marks import BadgeView, ChipView, paint_badge, paint_chip
from app.drawing.pieces import Piece, changed, paint_pieces, text_piece
from app.look import look
from app.look.space import FOCUS_WIDTH, MARGIN
from app.look.theme import WALL
from app.look.type import FIRST
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
        self._pieces: tuple[Piece, ...] = ()
        self._made_for: tuple[object, ...] = ()
        self.cells: tuple[Cell, ...] = ()
        self.columns = Columns((0, 0, 0), (1, 1, 1), False)

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self._cover()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._cover()

    def _cover(self) -> None:
        """It fills all it covers, so that what is behind need not be drawn.

        A stylesheet takes that back whenever it is applied to a button.
        """
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)

    def show_cells(self, columns: Columns, cells: tuple[Cell, ...], ruled: bool) -> None:
        """Lay the texts out so; drawn again only where that, or the view, is new."""
        now = (columns, cells, ruled, self.view)
        if now == (self.columns, self.cells, self.ruled, self._drawn):
            return
        frame = (self.columns, self.ruled)
        self.columns, self.cells, self.ruled, self._drawn = now
        before = self._pieces
        self._make_pieces()
        region = changed(before, self._pieces) if before else None
        if region is None or frame != (columns, ruled):
            self.update()
        elif not region.isEmpty():
            self.update(region)

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
        # Only what changed is drawn anew: of a dragged line the chip and a number or two.
        if self._made_for != self._makes:
            self._make_pieces()
        paint_pieces(painter, self._pieces, event.region())
        if self.hasFocus() and self._by_key:
            painter.setPen(QPen(QColor(theme.ink), FOCUS_WIDTH))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            ring = paper.adjusted(_BAR + 3, 3, -3, -3)
            painter.drawRoundedRect(ring, 5, 5)
        painter.end()

    @property
    def _makes(self) -> tuple[object, ...]:
        """What else the pieces depend on."""
        return self.height(), self.isChecked(), look(), self.view

    def _make_pieces(self) -> None:
        """Badge, chip and words as they are to be drawn."""
        self._made_for = self._makes
        line, paper = self.first_line(), BADGES + CHIPS
        words = (
            self._words(paper + left, cell, line)
            for left, cell in zip(self.columns.lefts, self.cells, strict=False)
        )
        self._pieces = (*self._chip(), *chain.from_iterable(words))

    def _chip(self) -> Iterator[Piece]:
        assert self.view is not None
        height, chosen = self.height(), self.isChecked()
        radius = min(14.0 * min(look().type.scale, 1.35), 0.5 * height - 3)
        box = QRectF(0, 0, 2 * radius, 2 * radius)
        box.moveCenter(QPointF(BADGES / 2 + 2, height / 2))
        badge = BadgeView(self.view.letter, chosen=chosen)
        reach = 0.3 * radius
        around = box.adjusted(-reach, -reach, reach, reach)
        yield Piece((badge, height), around, lambda painter: paint_badge(painter, box, badge))
        rect = QRectF(BADGES, _CHIP_CLEAR, CHIPS, height - 2 * _CHIP_CLEAR)
        other = self.view.other
        chip = (
            ChipView(self.view.colour)
            if other is None
            else ChipView(self.view.colour, second=other.colour, share=other.share)
        )
        yield Piece((chip, height), rect, lambda painter: paint_chip(painter, rect, chip))

    def first_line(self) -> float:
        """Where the first words of all cells stand, however many lines are below them."""
        tallest = max((sum(part.height for part in cell) for cell in self.cells), default=0.0)
        pitch = max((cell[0].pitch for cell in self.cells if cell), default=0.0)
        return (self.height() - tallest) / 2 + _BASE * pitch

    def _words(self, left: float, cell: Cell, line_y: float) -> Iterator[Piece]:
        theme = look().theme
        top = line_y - _BASE * cell[0].pitch if cell else 0.0
        for number, part in enumerate(cell):
            colour = theme.ink if part.weight >= FIRST or number == 0 else theme.second
            for line in part.lines:
                rect = QRectF(left, top, part.width + 4, part.pitch)
                yield text_piece(rect, line, part.size, part.weight, colour)
                top += part.pitch

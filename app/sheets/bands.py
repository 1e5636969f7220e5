"""The bands of a sheet beside the sky's: a row each, the chosen one opened."""

from __future__ import annotations

from collections.abc import Callable, Sequence

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen, QResizeEvent
from PySide6.QtWidgets import QRadioButton, QSizePolicy, QWidget

from app.drawing.ink import BLACK, draw_text, text_size
from app.drawing.sheets.rows import BandRowView, paint_band_row, row_height
from app.look import look
from app.look.space import FOCUS_WIDTH
from app.look.theme import WALL
from app.look.type import CHOSEN, FIRST
from app.widgets.choice_row import ChoiceRow
from app.widgets.slide import Slide
from core.i18n import translate

_HEADER = 50
_TALLEST = 104
_BAR = 6


class _Row(ChoiceRow):
    """One band."""

    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(number, parent)
        self.view: BandRowView | None = None

    def paintEvent(self, event: QPaintEvent) -> None:
        if self.view is None:
            return
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        rect = QRectF(self.rect())
        paint_band_row(painter, rect, self.view)
        left = self.view.words_left
        if self.isChecked():
            painter.fillRect(QRectF(left, 0, _BAR, rect.height()), QColor(theme.ink))
        elif self.underMouse():
            painter.fillRect(QRectF(left, 0, 2, rect.height()), QColor(theme.edge))
        if self.ruled:
            painter.setPen(QPen(QColor(theme.rule), 1.25))
            y = rect.height() - 0.7
            painter.drawLine(QPointF(left + 16, y), QPointF(rect.right() - 16, y))
        if self.hasFocus() and self._by_key:
            painter.setPen(QPen(QColor(theme.ink), FOCUS_WIDTH))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawRoundedRect(rect.adjusted(left + _BAR + 3, 3, -3, -3), 5, 5)
        painter.end()


class SheetBands(QWidget):
    """A sheet's bands, as rows that share the height.

    Signals
    -------
    band_chosen(band: int)
        A row was pressed, or reached with the up and down keys.
    """

    band_chosen = Signal(int)

    def __init__(self, name: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._heading = ""
        self._shared_size: Callable[[], float] = self.heading_size
        self._views: tuple[BandRowView, ...] = ()
        self._rows: list[_Row] = []
        self._heights = Slide(self)
        self._heights.moved.connect(self._place)
        self.setProperty("ground", "wall")
        self.setAccessibleName(name)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_rows(self, heading: str, rows: Sequence[BandRowView]) -> None:
        """Show rows under a heading."""
        rows = tuple(rows)
        if rows == self._views and heading == self._heading:
            return
        opening = [row.open for row in rows] != [row.open for row in self._views]
        same = [row.letter for row in rows] == [row.letter for row in self._views]
        self._heading, self._views = heading, rows
        while len(self._rows) > len(rows):
            row = self._rows.pop()
            row.hide()
            row.deleteLater()
        while len(self._rows) < len(rows):
            row = _Row(len(self._rows), self)
            row.asked.connect(self.band_chosen)
            row.moved.connect(self._move)
            row.show()
            self._rows.append(row)
        for row, view in zip(self._rows, rows, strict=True):
            row.view = view
            if row.accessibleName() != view.spoken:
                row.setAccessibleName(view.spoken)
            row.setChecked(view.open)
        self._lay_out(slide=opening and same and self.isVisible())
        self.updateGeometry()

    def heading_size(self) -> float:
        """The largest size the heading has room for; 0 without rows."""
        if not self._views:
            return 0.0
        view = self._views[0]
        size = 1.1 * view.text
        room = self.width() - view.words_left - 2.1 * view.second
        return min(size, size * room / max(text_size(self._heading, size, CHOSEN)[0], 1.0))

    def share_heading_size(self, size: Callable[[], float]) -> None:
        """Draw the heading at the size that it and its neighbour's both have room for."""
        self._shared_size = size

    @property
    def rows(self) -> tuple[BandRowView, ...]:
        """What is shown."""
        return self._views

    @property
    def row_widgets(self) -> tuple[QRadioButton, ...]:
        """The rows, top band first."""
        return tuple(self._rows)

    def sizeHint(self) -> QSize:
        return QSize(400, self._least())

    def minimumSizeHint(self) -> QSize:
        return QSize(260, self._least())

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()
        if event.oldSize().width() != event.size().width():
            self.updateGeometry()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_rows"):
            self._lay_out()
            self.updateGeometry()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(WALL))
        if self._views:
            view = self._views[0]
            left, second = view.words_left, view.second
            paper = QRectF(left, 0, self.width() - left, self.height())
            painter.fillRect(paper, QColor(theme.paper))
            middle = self._header() / 2 + 2
            heading = QPointF(left + 1.05 * second, middle)
            size = self._shared_size()
            draw_text(painter, heading, self._heading, size, theme.ink, CHOSEN, align=0.0)
            chip = view.chip_width or 0.0
            badge = view.badge_width or 0.0
            note = min(max(13.0, 0.9 * second), 0.31 * chip) if chip else 13.0
            for number, word in enumerate(
                (translate("sheets page", "photo"), translate("sheets page", "sheet"))
            ):
                spot = QPointF(badge + (number + 0.5) * chip, middle)
                draw_text(painter, spot, word, max(note, 13.0), BLACK, FIRST)
        painter.end()

    def _header(self) -> int:
        return look().type.grow(_HEADER)

    def _least(self) -> int:
        width = max(self.width(), 260)
        rows = sum(round(row_height(view, width) + 0.5) for view in self._views)
        return self._header() + rows + 6

    def _move(self, number: int) -> None:
        if 0 <= number < len(self._rows):
            self._rows[number].setFocus(Qt.FocusReason.TabFocusReason)
            self.band_chosen.emit(number)

    def _lay_out(self, *, slide: bool = False) -> None:
        """Share the height out; a row that was opened slides to its part."""
        if not self._views:
            return
        width = self.width()
        available = self.height() - self._header() - 6
        least = [round(row_height(view, width) + 0.5) for view in self._views]
        self._heights.to(
            _shared(least, available, look().type.grow(_TALLEST)),
            slide=slide or self._heights.running,
        )
        self._place()

    def _place(self) -> None:
        """Put the rows where they are now."""
        width, heights = self.width(), self._heights.values
        if len(heights) != len(self._rows):
            return  # between two studies
        bottom = float(self._header())
        for number, (row, height) in enumerate(zip(self._rows, heights, strict=True)):
            top, bottom = bottom, bottom + height
            last = number == len(self._rows) - 1
            here, below = self._views[number], self._views[min(number + 1, len(self._rows) - 1)]
            row.ruled = not (last or here.open or below.open)
            row.setGeometry(0, round(top), width, round(bottom) - round(top))
            row.update()
        self.update()


def _shared(least: list[int], available: int, most: int) -> list[int]:
    """Heights of rows: equal where there is room, never under the least, nor over `most`."""
    low, high = 0.0, float(most)
    for _ in range(24):  # water level: rows below it are filled up to it
        level = (low + high) / 2
        if sum(max(height, level) for height in least) <= available:
            low = level
        else:
            high = level
    return [max(height, int(low)) for height in least]

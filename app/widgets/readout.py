"""The table of readings: one row a band, its chip on a tongue of wall."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEvent, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QScrollArea, QSizePolicy, QWidget

from app.drawing.fit import Fitted, advance, fit
from app.look import look
from app.look.space import MARGIN
from app.look.theme import WALL
from app.look.type import CHOSEN, FIRST, MEDIUM, SECOND
from app.widgets.readout_row import BADGES, CHIPS, Cell, Columns, Row
from app.widgets.readout_views import OtherColour, ReadoutRow
from core.i18n import translate

_ROOM = 12
# Under this height a row keeps one line.
_TWO_LINES_FROM = 46
_TALLEST = 96


class ReadoutTable(QWidget):
    """The bands' readings.

    Signals
    -------
    band_chosen(int)
        A row was pressed, or reached with the up and down keys.
    """

    band_chosen = Signal(int)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "wall")
        self.setAccessibleName(translate("readout", "Readings of the bands"))
        self._views: tuple[ReadoutRow, ...] = ()
        self._chosen: int | None = None
        self._rows: list[Row] = []
        self._columns = Columns((0, 0, 0), (1, 1, 1), False)
        self._scroll = QScrollArea(self)
        self._scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._inside = QWidget()
        self._scroll.setWidget(self._inside)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)

    def set_rows(self, rows: Sequence[ReadoutRow], chosen: int | None = None) -> None:
        """Show rows and which of them is chosen."""
        rows = tuple(rows)
        if rows == self._views and chosen == self._chosen:
            return
        self._views, self._chosen = rows, chosen
        while len(self._rows) > len(rows):
            row = self._rows.pop()
            row.hide()
            row.deleteLater()
        while len(self._rows) < len(rows):
            row = Row(len(self._rows), self._inside)
            row.asked.connect(self.band_chosen)
            row.moved.connect(self._move)
            row.show()
            self._rows.append(row)
        for number, (row, view) in enumerate(zip(self._rows, rows, strict=True)):
            row.view = view
            if row.accessibleName() != view.spoken:
                row.setAccessibleName(view.spoken)
            row.setChecked(number == chosen)
        self._lay_out()
        if chosen is not None and chosen < len(self._rows):
            self._scroll.ensureWidgetVisible(self._rows[chosen], 0, 0)

    def sizeHint(self) -> QSize:
        scale = look().type
        return QSize(452, self._header() + scale.grow(_TWO_LINES_FROM + 16) * 5)

    def minimumSizeHint(self) -> QSize:
        return QSize(330, self._header() + look().type.grow(80))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_inside"):
            self._lay_out()
            self._inside.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._lay_out()

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, scale = look().theme, look().type
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(WALL))
        left = BADGES + CHIPS
        painter.fillRect(QRectF(left, 0, self.width() - left, self.height()), QColor(theme.paper))
        painter.setFont(scale.font("control"))
        painter.setPen(QColor(theme.second))
        texts = self._headings()
        for number, x in enumerate(self._columns.lefts):
            if self._columns.stacked and number:
                break
            rect = QRectF(left + x, 0, self._columns.widths[number] + 8, self._header())
            flags = Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter
            painter.drawText(rect, int(flags) | int(Qt.TextFlag.TextDontClip), texts[number])
        painter.end()

    def _headings(self) -> tuple[str, str, str]:
        if self._columns.stacked:
            return translate("readout", "Hue, value, intensity"), "", ""
        return (
            translate("readout", "Hue"),
            translate("readout", "Value"),
            translate("readout", "Intensity"),
        )

    def _header(self) -> int:
        return look().type.grow(36)

    def _move(self, number: int) -> None:
        if 0 <= number < len(self._rows):
            self._rows[number].setFocus(Qt.FocusReason.TabFocusReason)
            self.band_chosen.emit(number)

    def _lay_out(self) -> None:
        header = self._header()
        self._scroll.setGeometry(0, header, self.width(), max(self.height() - header, 0))
        if not self._views:
            self._inside.resize(self.width(), 0)
            return
        available = self._scroll.height()
        before = self._columns
        # Once without, once with the width of a scroll bar.
        for bar in (0, 14):
            self._columns = self._measure(self.width() - BADGES - CHIPS - 2 * MARGIN - bar)
            heights, compact = self._heights(available)
            if sum(heights) <= available:
                break
        top = 0
        for number, (row, height) in enumerate(zip(self._rows, heights, strict=True)):
            chosen = number == self._chosen
            row.show_cells(
                self._columns,
                self._cells(self._views[number], chosen, compact and not chosen),
                number < len(self._rows) - 1 and not (chosen or number + 1 == self._chosen),
            )
            row.setGeometry(0, top, self.width() - bar, height)
            top += height
        self._inside.resize(self.width() - bar, top)
        if self._columns != before:
            self.update()

    def _heights(self, available: int) -> tuple[list[int], bool]:
        scale = look().type
        natural = [self._natural(view, number, False) for number, view in enumerate(self._views)]
        share = available / len(natural)
        floor = max(scale.grow(_TWO_LINES_FROM), max(natural))
        if share >= floor:
            return [int(min(share, scale.grow(_TALLEST)))] * len(natural), False
        if self._columns.stacked or sum(natural) <= available:
            spare = max(available - sum(natural), 0) // len(natural)
            return [height + spare for height in natural], False
        single = max(
            scale.grow(30), max(self._natural(v, n, True) for n, v in enumerate(self._views))
        )
        heights = [single] * len(natural)
        if self._chosen is not None and self._chosen < len(natural):
            heights[self._chosen] = natural[self._chosen]
        spare = available - sum(heights)
        if spare > 0:
            more = min(spare / len(heights), scale.grow(_TWO_LINES_FROM) - single)
            heights = [height + int(max(more, 0)) for height in heights]
        return heights, True

    def _natural(self, view: ReadoutRow, number: int, compact: bool) -> int:
        cells = self._cells(view, number == self._chosen, compact)
        tallest = max((sum(part.height for part in cell) for cell in cells), default=0.0)
        return round(tallest + 0.5) + look().type.grow(8 if compact else 10)

    def _measure(self, width: float) -> Columns:
        """Columns by what stands in them; stacked when a word would not fit its column."""
        scale = look().type
        row, second, control = scale.px("row"), scale.px("row_second"), scale.px("control")
        _, value, intensity = (
            translate("readout", "Hue"),
            translate("readout", "Value"),
            translate("readout", "Intensity"),
        )
        value_width = advance(value, control, SECOND)
        intensity_width = advance(intensity, control, SECOND)
        least_hue = 0.0
        for view in self._views:
            value_width = max(
                value_width,
                advance(view.value, row, CHOSEN),
                advance(view.value_second, second, SECOND),
            )
            intensity_width = max(
                intensity_width,
                advance(view.intensity, row, CHOSEN),
                advance(view.intensity_second, second, SECOND),
            )
            if view.other is not None:
                value_width = max(value_width, advance(view.other.value, second, MEDIUM))
                least = advance(view.other.intensity, second, MEDIUM)
                intensity_width = max(intensity_width, least)
            for word in (view.hue + " " + view.hue_second).replace("-", "- ").split():
                least_hue = max(least_hue, advance(word, self._hue_sizes()[-1], CHOSEN))
        hue_width = width - value_width - intensity_width - 2 * _ROOM
        if hue_width < least_hue:
            full = max(width, 1.0)
            return Columns((MARGIN, MARGIN, MARGIN), (full, full, full), True)
        # Spare width goes to the gaps, so that numbers stand at the same place in most skies.
        value_left = max(MARGIN + hue_width + _ROOM - 0.25 * max(hue_width - 141, 0), MARGIN)
        intensity_left = MARGIN + width - intensity_width
        return Columns(
            (MARGIN, value_left, intensity_left),
            (value_left - MARGIN - _ROOM, value_width, intensity_width),
            False,
        )

    def _hue_sizes(self) -> tuple[int, ...]:
        scale = look().type
        row = scale.px("row")
        return tuple(sorted({row, round(row * 0.9), round(row * 0.8), scale.px("control")})[::-1])

    def _cells(self, view: ReadoutRow, chosen: bool, compact: bool) -> tuple[Cell, ...]:
        scale = look().type
        weight = CHOSEN if chosen else FIRST
        row, second, note = scale.px("row"), scale.px("row_second"), scale.px("note")
        first_size = round(row * 0.9) if compact else row
        sizes = tuple(size for size in self._hue_sizes() if size <= first_size)
        width = self._columns.widths[0]
        hue = fit(view.hue, sizes, weight, width)
        if view.colour is None:
            return ((fit(view.hue, sizes, MEDIUM, self.width() - 160.0),),)
        if self._columns.stacked:
            parts = [hue, fit(view.hue_second, (second,), SECOND, width)]
            value_text = translate("readout", "value {number}, {word}").format(
                number=view.value, word=view.value_second
            )
            intensity_text = translate("readout", "{word}, {chroma}").format(
                word=view.intensity, chroma=view.intensity_second
            )
            parts += [fit(text, (second,), MEDIUM, width) for text in (value_text, intensity_text)]
            if view.other is not None:
                parts.append(fit(_other_line(view.other), (second,), SECOND, width))
            return (tuple(part for part in parts if part.lines != ("",)),)
        value = fit(view.value, (first_size,), weight, 1e9)
        intensity = fit(view.intensity, (first_size,), weight, 1e9)
        if compact:
            return (hue,), (value,), (intensity,)
        under = fit(view.hue_second, (second, (second + note) // 2, note), SECOND, width)
        columns: list[list[Fitted]] = [
            [hue, under] if view.hue_second else [hue],
            [value, fit(view.value_second, (second,), SECOND, 1e9)],
            [intensity, fit(view.intensity_second, (second,), SECOND, 1e9)],
        ]
        if view.other is not None:
            room = (second, (second + note) // 2, note)
            columns[0].append(fit(view.other.hue, room, MEDIUM, width))
            columns[1].append(fit(view.other.value, (second,), MEDIUM, 1e9))
            columns[2].append(fit(view.other.intensity, (second,), MEDIUM, 1e9))
        return tuple(tuple(column) for column in columns)


def _other_line(other: OtherColour) -> str:
    return translate("readout", "{hue}, value {number}, {intensity}").format(
        hue=other.hue, number=other.value, intensity=other.intensity
    )


def _preview() -> QWidget:
    from app.widgets.preview import sample_readings
    from app.widgets.readout_views import readout_rows
    from core.reading.wording import Wording

    table = ReadoutTable()
    rows = readout_rows(sample_readings(), Wording())
    table.set_rows(rows, 2)
    table.band_chosen.connect(lambda number: table.set_rows(rows, number))
    return table


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 452, 378))

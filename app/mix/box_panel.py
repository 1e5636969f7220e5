"""The box: which one, its paints, and whether white paint may be used."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QPoint, QRectF, QSignalBlocker, Qt, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import (
    QCheckBox,
    QComboBox,
    QHBoxLayout,
    QScrollArea,
    QSizePolicy,
    QStyle,
    QStyleOptionComboBox,
    QStylePainter,
    QVBoxLayout,
    QWidget,
)

from app.look import look
from app.look.space import MARGIN, WITHIN
from app.look.theme import WALL
from app.mix.paint_row import TONGUE, PaintRow, PaintRowView
from app.widgets.buttons import IconButton
from app.widgets.layouts import layout_of
from core.i18n import translate


@dataclass(frozen=True)
class BoxView:
    """The whole panel.

    Attributes
    ----------
    boxes : tuple of str
        Names to choose among.
    current : int
        Which of them it is.
    paints : tuple of PaintRowView
    allow_white : bool
    """

    boxes: tuple[str, ...]
    current: int
    paints: tuple[PaintRowView, ...]
    allow_white: bool


class ElidedChoice(QComboBox):
    """A choice whose text has dots where there is no room for it; what ends it is still read."""

    def paintEvent(self, event: QPaintEvent) -> None:
        option = QStyleOptionComboBox()
        self.initStyleOption(option)
        field = self.style().subControlRect(
            QStyle.ComplexControl.CC_ComboBox, option, QStyle.SubControl.SC_ComboBoxEditField, self
        )
        option.currentText = self.fontMetrics().elidedText(
            self.currentText(), Qt.TextElideMode.ElideMiddle, field.width() - 4
        )
        painter = QStylePainter(self)
        painter.drawComplexControl(QStyle.ComplexControl.CC_ComboBox, option)
        painter.drawControl(QStyle.ControlElement.CE_ComboBoxLabel, option)
        painter.end()


class BoxPanel(QWidget):
    """Which box, its paints, and whether white paint may be used.

    Signals
    -------
    box_chosen(number: int)
    paint_ticked(key: str, owned: bool)
    white_asked(allowed: bool)
    menu_asked(place: QPoint)
        The menu of the box, at a place on the screen.
    paint_menu_asked(key: str, place: QPoint)
        The menu of a paint.
    """

    box_chosen = Signal(int)
    paint_ticked = Signal(str, bool)
    white_asked = Signal(bool)
    menu_asked = Signal(QPoint)
    paint_menu_asked = Signal(str, QPoint)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._view: BoxView | None = None
        self.rows: list[PaintRow] = []
        self.boxes = ElidedChoice(self)
        self.boxes.setAccessibleName(translate("mix page", "Paint box"))
        self.boxes.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.more = IconButton("more", translate("mix page", "Save, open or add to the box"), self)
        self.white = QCheckBox(translate("mix page", "Allow white paint"), self)
        self.white.setToolTip(
            translate("mix page", "Paper is the white of a wash; white paint makes it chalky.")
        )
        self.details = QCheckBox(translate("mix page", "Pigment details"), self)
        self.details.setToolTip(
            translate("mix page", "Which pigments the paints hold, and how they behave.")
        )
        self._scroll = QScrollArea(self)
        self._scroll.setFrameShape(QScrollArea.Shape.NoFrame)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._inside = _Tongue()
        self._scroll.setWidget(self._inside)
        self.boxes.activated.connect(self.box_chosen)
        self.white.clicked.connect(self.white_asked)
        self.details.toggled.connect(self._show_details)
        self.more.clicked.connect(
            lambda: self.menu_asked.emit(self.more.mapToGlobal(QPoint(0, self.more.height() + 2)))
        )
        head = QHBoxLayout()
        head.setContentsMargins(16, 14, 14, 14)
        head.setSpacing(WITHIN)
        head.addWidget(self.boxes, 1)
        head.addWidget(self.more)
        foot = QVBoxLayout()
        foot.setContentsMargins(MARGIN, WITHIN, MARGIN, WITHIN)
        foot.addWidget(self.white)
        foot.addWidget(self.details)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addLayout(head)
        column.addWidget(self._scroll, 1)
        column.addLayout(foot)

    def set_view(self, view: BoxView) -> None:
        """Show a box."""
        if view == self._view:
            return
        before, self._view = self._view, view
        with QSignalBlocker(self.boxes):
            if before is None or before.boxes != view.boxes:
                self.boxes.clear()
                self.boxes.addItems(view.boxes)
            self.boxes.setCurrentIndex(view.current)
        with QSignalBlocker(self.white):
            self.white.setChecked(view.allow_white)
        self._match_rows(len(view.paints))
        for row, paint in zip(self.rows, view.paints, strict=True):
            row.set_view(paint)
        self._lay_out()

    def row(self, key: str) -> PaintRow:
        """The row of a paint."""
        return next(row for row in self.rows if row.view is not None and row.view.key == key)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._lay_out()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_inside"):
            self._lay_out()

    def _show_details(self, shown: bool) -> None:
        for row in self.rows:
            row.detailed = shown
            row.update()
        self._lay_out()

    def _match_rows(self, count: int) -> None:
        while len(self.rows) > count:
            row = self.rows.pop()
            row.hide()
            row.deleteLater()
        while len(self.rows) < count:
            row = PaintRow(self._inside)
            row.detailed = self.details.isChecked()
            row.asked.connect(self.paint_ticked)
            row.menu_asked.connect(self.paint_menu_asked)
            row.moved.connect(lambda step, row=row: self._move(row, step))
            row.show()
            self.rows.append(row)

    def _move(self, row: PaintRow, step: int) -> None:
        number = self.rows.index(row) + step
        if 0 <= number < len(self.rows):
            self.rows[number].setFocus(Qt.FocusReason.TabFocusReason)
            self._scroll.ensureWidgetVisible(self.rows[number], 0, 4)

    def _lay_out(self) -> None:
        layout_of(self).activate()
        available = self._scroll.height()
        width = self._scroll.width()
        heights = [row.height_for(width) for row in self.rows]
        if sum(heights) > available:  # a scroll bar takes its place
            width -= 14
            heights = [row.height_for(width) for row in self.rows]
        elif self.rows:
            spare = min((available - sum(heights)) // len(self.rows), look().type.grow(30))
            heights = [height + spare for height in heights]
        y = 0
        for row, height in zip(self.rows, heights, strict=True):
            row.setGeometry(0, y, width, height)
            y += height
        self._inside.resize(self._scroll.width(), max(y, available))


class _Tongue(QWidget):
    """The wall running down the swatches' column to its end."""

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(look().theme.paper))
        painter.fillRect(QRectF(0, 0, TONGUE, self.height()), QColor(WALL))
        painter.end()

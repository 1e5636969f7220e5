"""The pin-up wall as a widget: scrolled, walked over by keys, one student chosen."""

from __future__ import annotations

from math import ceil

from PySide6.QtCore import QEvent, QPointF, QRect, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QAbstractScrollArea, QFrame, QWidget

from app.drawing.classset.wall import (
    WallShape,
    WallView,
    changed_students,
    paint_wall,
    wall_shape,
)
from app.drawing.pieces import rects_of
from app.look.theme import WALL
from core.i18n import translate

_MOST_PARTS = 4
"""So many places are drawn one by one; more of them as a whole."""


class PinUpWall(QAbstractScrollArea):
    """Shows a `WallView`.

    Signals
    -------
    chosen(number: int)
        A student, counted from 0 in the list's order.
    opened()
        Enter or a double click: on to the marking.
    """

    chosen = Signal(int)
    opened = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setProperty("own_focus", True)  # the chosen student is framed
        self.setProperty("ground", "wall")
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setAccessibleName(translate("class set page", "All sheets, by student"))
        self.viewport().setAutoFillBackground(False)
        self._view = WallView()
        self._shape = wall_shape(self._view, 400)
        self.setMinimumSize(QSize(260, 160))

    @property
    def view(self) -> WallView:
        """What is shown."""
        return self._view

    @property
    def shape_now(self) -> WallShape:
        """What is where."""
        return self._shape

    def set_view(self, view: WallView) -> None:
        """Show another wall; the place stays."""
        before, self._view, shape = self._view, view, self._shape
        self._fit()
        if view.chosen is not None:
            self.setAccessibleDescription(self._spoken(view.chosen))
            if view.chosen != before.chosen:
                self._bring_in_sight(view.chosen)
        changed = changed_students(before, view) if shape == self._shape else None
        if changed is None:
            self.viewport().update()
            return
        # A letter of a mark changes one student at most: the other forty paintings stay.
        top = self.verticalScrollBar().value()
        for number in changed:
            place = self._shape.around(number).translated(0, -top)
            self.viewport().update(place.toAlignedRect())

    def _spoken(self, number: int) -> str:
        student = self._view.students[number]
        words = [student.code, *(tile.word for tile in student.tiles), student.tag, student.done]
        return ", ".join(word for word in words if word)

    def _fit(self) -> None:
        self._shape = wall_shape(self._view, self.viewport().width())
        bar = self.verticalScrollBar()
        bar.setPageStep(self.viewport().height())
        bar.setSingleStep(round(self._shape.pitch_y / 3))
        bar.setRange(0, max(0, round(self._shape.height) - self.viewport().height()))

    def _bring_in_sight(self, number: int) -> None:
        rect, bar = self._shape.student(number), self.verticalScrollBar()
        top, bottom = rect.top() - 6, rect.bottom() + 14
        if top < bar.value():
            bar.setValue(round(top))
        elif bottom > bar.value() + self.viewport().height():
            # Whole rows from the top: half a row above tells nothing.
            pitch = self._shape.pitch_y
            rows = ceil((bottom - self.viewport().height()) / pitch)
            bar.setValue(min(round(rows * pitch), round(rect.top())))

    def _at(self, event: QMouseEvent) -> int | None:
        spot = event.position() + QPointF(0, self.verticalScrollBar().value())
        return self._shape.student_at(spot, len(self._view.students))

    # Qt

    def mousePressEvent(self, event: QMouseEvent) -> None:
        number = self._at(event)
        if number is not None and event.button() == Qt.MouseButton.LeftButton:
            self.chosen.emit(number)

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        if self._at(event) is not None:
            self.opened.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        count, now = len(self._view.students), self._view.chosen or 0
        columns = self._shape.columns
        page = columns * max(1, int(self.viewport().height() // self._shape.pitch_y))
        steps = {
            Qt.Key.Key_Left: -1,
            Qt.Key.Key_Right: 1,
            Qt.Key.Key_Up: -columns,
            Qt.Key.Key_Down: columns,
            Qt.Key.Key_PageUp: -page,
            Qt.Key.Key_PageDown: page,
            Qt.Key.Key_Home: -count,
            Qt.Key.Key_End: count,
        }
        key = Qt.Key(event.key())
        plain = event.modifiers() in (
            Qt.KeyboardModifier.NoModifier,
            Qt.KeyboardModifier.KeypadModifier,
        )
        if key in steps and count and plain:
            self.chosen.emit(max(0, min(count - 1, now + steps[key])))
        elif key in (Qt.Key.Key_Return, Qt.Key.Key_Enter) and plain:
            self.opened.emit()
        else:
            super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        self._fit()
        if self._view.chosen is not None and self._view.chosen < len(self._view.students):
            self._bring_in_sight(self._view.chosen)

    def paintEvent(self, event: QPaintEvent) -> None:
        top = self.verticalScrollBar().value()
        painter = QPainter(self.viewport())
        painter.fillRect(event.rect(), QColor(WALL))
        painter.translate(0, -top)
        whole = QRectF(0, 0, self.viewport().width(), self._shape.height)
        parts = rects_of(event.region())
        for part in parts if len(parts) <= _MOST_PARTS else [event.rect()]:
            visible = QRectF(QRect(part)).translated(0, top)
            painter.setClipRect(visible)
            paint_wall(painter, whole, self._view, self._shape, visible)
        painter.end()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self._fit()

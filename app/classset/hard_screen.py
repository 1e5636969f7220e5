"""Found hard before the class: the field, then one thing at a time, over a whole screen."""

from __future__ import annotations

from typing import Literal

from PySide6.QtCore import QRectF, Qt, Signal
from PySide6.QtGui import (
    QAccessible,
    QAccessibleEvent,
    QCloseEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QWidget

from app.classset.hard_views import Shown, field_view, spoken, step_view
from app.drawing.classview.hard import paint_overview, paint_step
from app.drawing.classview.layout import LEAST_TEXT
from app.look import look
from core.i18n import translate

Way = Literal[-1, 1]

_ON = (Qt.Key.Key_Space, Qt.Key.Key_Right, Qt.Key.Key_Down, Qt.Key.Key_PageDown, Qt.Key.Key_Return)
_BACK = (Qt.Key.Key_Backspace, Qt.Key.Key_Left, Qt.Key.Key_Up, Qt.Key.Key_PageUp)
_LEAVE = (Qt.Key.Key_Escape, Qt.Key.Key_F5)


class HardScreen(QWidget):
    """Knows neither document nor window.

    Signals
    -------
    left()
        The teacher is done.
    """

    left = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWindowTitle(translate("class set page", "Found hard"))
        self.setProperty("own_focus", True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMinimumSize(640, 400)
        self.shown: Shown | None = None
        self.step = -1

    @property
    def steps(self) -> int:
        """How many sentences there are."""
        return 0 if self.shown is None else len(self.shown.sentences)

    def show_class(self, shown: Shown) -> None:
        """What there is of the class now; the step stays where it can."""
        self.shown = shown
        self.step = min(self.step, self.steps - 1)
        self._changed()

    def begin(self) -> None:
        """From the field again."""
        self.step = -1
        self._changed()

    def go(self, way: Way) -> None:
        """On to the next sentence, or back; -1 is the field."""
        step = min(max(self.step + way, -1), self.steps - 1)
        if step != self.step:
            self.step = step
            self._changed()

    @property
    def hint(self) -> str:
        """What the next key does."""
        if self.step + 1 < self.steps:
            return translate("class set page", "Space: next")
        return translate("class set page", "Esc: leave")

    def _changed(self) -> None:
        if self.shown is None:
            return
        if self.step < 0:
            text = spoken(self.shown, ())
        else:
            one = self.shown.sentences[self.step]
            text = f"{one.text} {one.teach}".strip()
        self.setAccessibleName(text)
        if self.isVisible():
            event = QAccessibleEvent(self, QAccessible.Event.NameChanged)
            QAccessible.updateAccessibility(event)
        self.update()

    # Qt

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = event.key()
        if key in _LEAVE:
            self.left.emit()
        elif key in _ON or key == Qt.Key.Key_Enter:
            self.go(1)
        elif key in _BACK:
            self.go(-1)
        elif key == Qt.Key.Key_Home:
            self.begin()
        else:
            super().keyPressEvent(event)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self.go(-1 if event.button() == Qt.MouseButton.RightButton else 1)

    def closeEvent(self, event: QCloseEvent) -> None:
        # The window's own cross leaves as Esc does: the part keeps this widget.
        event.ignore()
        self.left.emit()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        theme, place = look().theme, QRectF(self.rect())
        text, ratio = LEAST_TEXT * place.height(), self.devicePixelRatioF()
        if self.shown is None:
            painter.fillRect(place, self.palette().window())
        elif self.step < 0:
            view = field_view(self.shown, theme, text, text)
            title = translate("class set page", "What we found hard")
            paint_overview(painter, place, title, self.shown.silent, self.hint, view, theme, ratio)
        else:
            view_of_step = step_view(self.shown, self.step, theme, text, self.hint)
            paint_step(painter, place, view_of_step, theme, ratio)
        painter.end()

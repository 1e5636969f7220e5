"""A number between a minus and a plus."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtGui import QKeyEvent, QShowEvent, QWheelEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QSpacerItem, QWidget

from app.look import look
from app.look.space import WITHIN
from app.widgets.buttons import IconButton
from app.widgets.focus import ground_of, stand_on
from app.widgets.layouts import layout_of
from core.i18n import translate


class Stepper(QWidget):
    """A whole number stepped up and down.

    Signals
    -------
    stepped(int)
        The number the user asked for; not sent by `set_value`.
    """

    stepped = Signal(int)

    def __init__(self, label: str, fewer: str, more: str, parent: QWidget | None = None) -> None:
        """`label` stands before it; `fewer` and `more` name the buttons for a screen reader."""
        super().__init__(parent)
        self.setSizePolicy(QSizePolicy.Policy.Fixed, QSizePolicy.Policy.Fixed)
        self._value, self._low, self._high = 0, 0, 99
        self._close = False
        self._word = label
        self._label = QLabel(label, self)
        self._number = QLabel("0", self)
        self._label.setProperty("role", "strong")
        self._number.setProperty("role", "number")
        self._number.setAlignment(Qt.AlignmentFlag.AlignCenter)
        self._minus = IconButton("minus", fewer, self)
        self._plus = IconButton("plus", more, self)
        self._minus.clicked.connect(lambda: self._ask(self._value - 1))
        self._plus.clicked.connect(lambda: self._ask(self._value + 1))
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addWidget(self._label)
        self._gap = QSpacerItem(WITHIN + 2, 0)
        row.addItem(self._gap)
        for part in (self._minus, self._number, self._plus):
            row.addWidget(part)
        self._refresh()

    def set_range(self, low: int, high: int) -> None:
        """The ends; a button at its end is unavailable."""
        self._low, self._high = low, high
        self._refresh()

    def set_value(self, value: int) -> None:
        """Show a number."""
        self._value = value
        self._refresh()

    def set_close(self, close: bool) -> None:
        """Leave the label to the tip and the screen reader, where a row would not hold it."""
        self._close = close
        # Without words rather than hidden: to show it lays all that is around it out at once,
        # which may come back here without end.
        self._label.setText("" if close else self._word)
        self._gap.changeSize(0 if close else WITHIN + 2, 0)
        self.setToolTip(self._word if close else "")
        self._refresh()
        layout_of(self).invalidate()
        self.updateGeometry()

    @property
    def value(self) -> int:
        """The number shown."""
        return self._value

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        for label in (self._label, self._number):
            stand_on(label, ground_of(self))

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_plus"):
            self._refresh()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Up:
            self._ask(self._value + 1)
        elif event.key() == Qt.Key.Key_Down:
            self._ask(self._value - 1)
        else:
            super().keyPressEvent(event)

    def wheelEvent(self, event: QWheelEvent) -> None:
        # A page scrolled past the stepper must not change it.
        event.ignore()

    def _ask(self, value: int) -> None:
        if self._low <= value <= self._high:
            self.stepped.emit(value)

    def _refresh(self) -> None:
        self._number.setFixedWidth(look().type.grow(26 if self._close else 38))
        self._number.clear()  # or the label would remember the width it had
        self._number.setText(str(self._value))
        spoken = translate("stepper", "{label}: {number}")
        self._number.setAccessibleName(spoken.format(label=self._word, number=self._value))
        self._minus.set_available(self._value > self._low)
        self._plus.set_available(self._value < self._high)


def _preview() -> QWidget:
    page = QWidget()
    row = QHBoxLayout(page)
    stepper = Stepper("Bands", "Fewer bands", "More bands")
    stepper.set_range(1, 7)
    stepper.set_value(5)
    stepper.stepped.connect(stepper.set_value)
    row.addWidget(stepper)
    row.addStretch()
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 300, 80))

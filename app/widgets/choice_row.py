"""What rows share of which one is chosen: by a press anywhere, or with the up and down keys."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent
from PySide6.QtWidgets import QRadioButton, QWidget


class ChoiceRow(QRadioButton):
    """One row of several; a radio button to a screen reader, since one is chosen.

    It paints its own focus, and asks instead of choosing: what holds the rows decides.

    Signals
    -------
    asked(number: int)
        The row was pressed.
    moved(number: int)
        An arrow key asks for another row.
    """

    asked = Signal(int)
    moved = Signal(int)

    def __init__(self, number: int, parent: QWidget) -> None:
        super().__init__(parent)
        self.number = number
        self.ruled = False
        self._by_key = False
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setProperty("own_focus", True)
        self.clicked.connect(lambda: self.asked.emit(self.number))

    def hitButton(self, pos: object) -> bool:
        return True

    def focusInEvent(self, event: QFocusEvent) -> None:
        self._by_key = self.shows_focus(event.reason())
        super().focusInEvent(event)

    def shows_focus(self, reason: Qt.FocusReason) -> bool:
        """Whether a focus that came this way is shown."""
        return reason != Qt.FocusReason.MouseFocusReason

    def keyPressEvent(self, event: QKeyEvent) -> None:
        self._by_key = True
        step = {Qt.Key.Key_Down: 1, Qt.Key.Key_Up: -1}.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
        else:
            self.moved.emit(self.number + step)

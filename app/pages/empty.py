"""What a page shows before there is anything to show: one line, one sentence, one button."""

from __future__ import annotations

from PySide6.QtCore import QEvent, Qt, Signal
from PySide6.QtWidgets import QLabel, QVBoxLayout, QWidget

from app.look import look
from app.look.type import CHOSEN, MEDIUM
from app.widgets.buttons import InkButton


class EmptyState(QWidget):
    """Stands in the middle of what it is put into.

    Signals
    -------
    asked()
        The button was pressed.
    """

    asked = Signal()

    def __init__(
        self, line: str, sentence: str, button: str, icon: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._line = QLabel(line, self)
        self._sentence = QLabel(sentence, self)
        self._sentence.setWordWrap(True)
        self._button = InkButton(button, icon, self)
        self._button.clicked.connect(self.asked)
        column = QVBoxLayout(self)
        column.setSpacing(12)
        column.addStretch(1)
        for part in (self._line, self._sentence):
            part.setAlignment(Qt.AlignmentFlag.AlignCenter)
            column.addWidget(part)
        column.addSpacing(8)
        column.addWidget(self._button, 0, Qt.AlignmentFlag.AlignCenter)
        column.addStretch(1)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_button"):
            self._fit()

    def _fit(self) -> None:
        self._line.setFont(look().type.font("heading", CHOSEN))
        self._sentence.setFont(look().type.font("control", MEDIUM))

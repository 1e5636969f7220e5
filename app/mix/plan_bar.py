"""The plan in one line at the foot of a narrow window."""

from __future__ import annotations

from PySide6.QtCore import QRectF, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QWidget,
)

from app.look import look
from app.look.space import INSIDE, WITHIN
from app.widgets.buttons import EdgeButton
from core.i18n import translate


class PlanBar(QWidget):
    """The plan in one line at the foot of a narrow window.

    Signals
    -------
    asked()
        The whole plan.
    """

    asked = Signal()

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setProperty("ground", "bar")
        self._label = QLabel(self)
        self._label.setWordWrap(True)
        self.button = EdgeButton(translate("mix page", "The plan"), "", self)
        self.button.clicked.connect(self.asked)
        row = QHBoxLayout(self)
        row.setContentsMargins(INSIDE, 10, INSIDE, 10)
        row.setSpacing(2 * WITHIN)
        row.addWidget(self._label, 1)
        row.addWidget(self.button)

    def set_line(self, line: str) -> None:
        """Show the line."""
        self._label.setText(line)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme = look().theme
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(theme.bar))
        painter.fillRect(QRectF(0, 0, self.width(), 1.25), QColor(theme.rule))
        painter.end()

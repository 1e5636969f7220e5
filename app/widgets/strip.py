"""A strip with one question or doubt about a sheet, and buttons that settle it."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import QEvent, QRectF, Signal
from PySide6.QtGui import QColor, QPainter, QPaintEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from app.look import look
from app.look.icons import paint_icon
from app.look.space import GROUP, WITHIN
from app.widgets.buttons import EdgeButton
from app.widgets.layouts import clear, widgets_in


@dataclass(frozen=True)
class StripView:
    """A sentence, and what can be done about it as (key, text)."""

    text: str
    buttons: tuple[tuple[str, str], ...] = ()


class SheetStrip(QWidget):
    """Hidden until there is something to ask.

    Signals
    -------
    asked(index: int, key: str)
        A button was pressed.
    """

    asked = Signal(int, str)

    def __init__(self, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._index = index
        self._view: StripView | None = None
        self.setProperty("ground", "raised")
        self._label = QLabel(self)
        self._label.setProperty("role", "medium")
        self._label.setWordWrap(True)
        self._buttons = QHBoxLayout()
        self._buttons.setSpacing(WITHIN)
        self._column = QVBoxLayout(self)
        self._column.setSpacing(WITHIN)
        self._column.addWidget(self._label)
        self._column.addLayout(self._buttons)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Minimum)
        self._pad()
        self.hide()

    @property
    def view(self) -> StripView | None:
        """What is asked; None while nothing is."""
        return self._view

    def set_view(self, view: StripView | None) -> None:
        """Ask something, or nothing."""
        if view == self._view:
            return
        self._view = view
        self.setVisible(view is not None)
        clear(self._buttons)
        if view is None:
            return
        self._label.setText(view.text)
        self.setAccessibleName(view.text)
        for key, text in view.buttons:
            button = EdgeButton(text, parent=self)
            button.setProperty("key", key)
            button.clicked.connect(
                lambda _checked=False, key=key: self.asked.emit(self._index, key)
            )
            self._buttons.addWidget(button)
        self._buttons.addStretch()

    def button(self, key: str) -> EdgeButton | None:
        """A button by its key."""
        for widget in widgets_in(self._buttons):
            if isinstance(widget, EdgeButton) and widget.property("key") == key:
                return widget
        return None

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_column"):
            self._pad()

    def _pad(self) -> None:
        left = GROUP + look().type.grow(20) + WITHIN
        self._column.setContentsMargins(left, 12, GROUP, 12)

    def paintEvent(self, event: QPaintEvent) -> None:
        theme, side = look().theme, look().type.grow(20)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(theme.raised))
        painter.fillRect(QRectF(0, 0, 6, self.height()), QColor(theme.ink))
        paint_icon(painter, QRectF(GROUP - 2, 11, side, side), "caution", theme.ink)
        painter.end()

"""The place of a sheet that cannot be shown: none yet, being checked, or failed."""

from __future__ import annotations

from dataclasses import dataclass

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QResizeEvent
from PySide6.QtWidgets import QBoxLayout, QHBoxLayout, QLabel, QVBoxLayout, QWidget

from app.look.space import GROUP, INSIDE, WITHIN
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.layouts import clear, layout_of, widgets_in


@dataclass(frozen=True)
class PlaceView:
    """What stands in the place.

    Attributes
    ----------
    line, sentence : str
    buttons : tuple of (key, text)
        What can be done; the first is filled with ink when `ink` says so.
    ink : bool
    """

    line: str = ""
    sentence: str = ""
    buttons: tuple[tuple[str, str], ...] = ()
    ink: bool = False


class SheetPlace(QWidget):
    """Words and buttons where a sheet will be.

    Signals
    -------
    asked(index: int, key: str)
        A button was pressed.
    """

    asked = Signal(int, str)

    def __init__(self, index: int, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._index = index
        self._view: PlaceView | None = None
        self._line = QLabel(self)
        self._line.setProperty("role", "line")
        self._sentence = QLabel(self)
        self._sentence.setProperty("role", "strong")
        for label in (self._line, self._sentence):
            label.setProperty("on", "wall")
            label.setWordWrap(True)
        self._buttons = QHBoxLayout()
        self._buttons.setSpacing(WITHIN)
        column = QVBoxLayout(self)
        column.setContentsMargins(INSIDE, GROUP, INSIDE, GROUP)
        column.setSpacing(WITHIN)
        column.addStretch()
        column.addWidget(self._line)
        column.addWidget(self._sentence)
        column.addSpacing(4)
        column.addLayout(self._buttons)
        column.addStretch()
        self.hide()

    @property
    def view(self) -> PlaceView | None:
        """What is said; None while the sheet itself is shown."""
        return self._view

    def set_view(self, view: PlaceView | None) -> None:
        """Say something else; None where the sheet itself is shown."""
        if view == self._view:
            return
        self._view = view
        self.setVisible(view is not None)
        if view is None:
            return
        self._line.setText(view.line)
        self._sentence.setText(view.sentence)
        self._line.setVisible(bool(view.line))
        self._fill(view)
        self.fit()

    def needed(self, width: int) -> int:
        """The height that everything said takes at a width."""
        self._sentence.setVisible(bool(self._view and self._view.sentence))
        layout = layout_of(self)
        return layout.heightForWidth(width) if layout.hasHeightForWidth() else 0

    def button(self, key: str) -> EdgeButton | None:
        """A button by its key."""
        for widget in widgets_in(self._buttons):
            if isinstance(widget, EdgeButton) and widget.property("key") == key:
                return widget
        return None

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.fit()

    def fit(self) -> None:
        """Arrange what is said in the room there is.

        Buttons stand above each other where they do not fit side by side.
        """
        needed = sum(w.sizeHint().width() + WITHIN for w in widgets_in(self._buttons))
        side_by_side = needed <= self.width() - 2 * INSIDE + WITHIN
        ways = QBoxLayout.Direction
        self._buttons.setDirection(ways.LeftToRight if side_by_side else ways.TopToBottom)
        # Where large text leaves no room for the sentence, it stands in the tip.
        sentence = self._view.sentence if self._view is not None else ""
        self._sentence.setVisible(bool(sentence))
        if sentence and layout_of(self).heightForWidth(self.width()) > self.height():
            self._sentence.hide()
        self.setToolTip("" if self._sentence.isVisibleTo(self) else sentence)

    def _fill(self, view: PlaceView) -> None:
        clear(self._buttons)
        for number, (key, text) in enumerate(view.buttons):
            ink = view.ink and number == 0
            button = InkButton(text, "sheet", self) if ink else EdgeButton(text, parent=self)
            button.setProperty("key", key)
            button.clicked.connect(
                lambda _checked=False, key=key: self.asked.emit(self._index, key)
            )
            self._buttons.addWidget(button, 0, Qt.AlignmentFlag.AlignLeft)
        self._buttons.addStretch()
        self.fit()

"""Asks for one line of text, such as a title."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QLabel, QLineEdit, QVBoxLayout, QWidget

from app.look import look
from app.look.space import INSIDE, WITHIN
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.focus import FocusRing
from core.i18n import translate
from core.study import MOST_TITLE

WIDTH = 520


class AskLine(QDialog):
    """A field with what is there now, chosen whole; Enter takes it, Escape leaves all as it was.

    Parameters
    ----------
    label : str
        Stands above the field.
    text : str
        What is there now.
    button : str
        What taking it is called.
    take : callable
        Takes the new text; not called when it is empty.
    """

    def __init__(
        self,
        parent: QWidget | None,
        label: str,
        text: str,
        button: str,
        take: Callable[[str], object],
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(translate("question", "Gradewash"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self._take = take
        name = QLabel(label, self)
        name.setProperty("role", "line")
        self.field = QLineEdit(text, self)
        self.field.setMaxLength(MOST_TITLE)
        self.field.selectAll()
        name.setBuddy(self.field)
        self.field.setAccessibleName(label)
        self.button: EdgeButton = InkButton(button, parent=self)
        cancel = EdgeButton(translate("question", "Cancel"), parent=self)
        self.button.clicked.connect(self.accept)
        cancel.clicked.connect(self.reject)
        self.field.textChanged.connect(self._follow)
        column = QVBoxLayout(self)
        column.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
        column.setSpacing(WITHIN)
        column.addWidget(name)
        column.addSpacing(4)  # room for the focus ring
        column.addWidget(self.field)
        column.addSpacing(WITHIN)
        column.addWidget(Answers(self, (self.button,), cancel))
        self.setFixedWidth(look().type.grow(WIDTH))
        self._ring = FocusRing(self)
        self._follow(text)
        self.field.setFocus()

    def accept(self) -> None:
        text = self.field.text().strip()
        super().accept()
        if text:
            self._take(text)

    def done(self, result: int) -> None:
        self._ring.stop()
        super().done(result)

    def _follow(self, text: str) -> None:
        self.button.set_available(bool(text.strip()))


def _preview() -> QWidget:
    return AskLine(None, "Title of the study", "dusk over the lake", "Rename", lambda text: None)


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, WIDTH, 160))

"""A question before something is lost: one bold line, one sentence, a button for each answer."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QLabel, QVBoxLayout, QWidget

from app.look import look
from app.look.space import INSIDE, WITHIN
from app.widgets.answers import Answers
from app.widgets.buttons import EdgeButton, InkButton
from app.widgets.focus import FocusRing
from core.i18n import translate

WIDTH = 520


@dataclass(frozen=True)
class Answer:
    """One way to answer.

    Attributes
    ----------
    text : str
        On its button, with its key marked by an ampersand.
    act : callable or None
        What is done then; None for nothing.
    loses : bool
        Something is lost then: the platform may keep its button apart.
    """

    text: str
    act: Callable[[], object] | None = None
    loses: bool = False


class Question(QDialog):
    """Asks over its window; the first answer is the one in ink, and Enter gives it.

    Escape and the window's close button mean the last answer, which does no harm.
    """

    def __init__(
        self, parent: QWidget | None, line: str, sentence: str, answers: tuple[Answer, ...]
    ) -> None:
        super().__init__(parent)
        self.setWindowTitle(translate("question", "Gradewash"))
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setAccessibleName(line)
        self.setAccessibleDescription(sentence)
        self._line = _label(line, "line", self)
        self._sentence = _label(sentence, "", self)
        self._last = answers[-1]
        self._answered = False
        self.buttons: tuple[EdgeButton, ...] = tuple(
            self._button(answer, first=number == 0) for number, answer in enumerate(answers)
        )
        column = QVBoxLayout(self)
        column.setContentsMargins(INSIDE, INSIDE, INSIDE, INSIDE)
        column.setSpacing(WITHIN)
        column.addWidget(self._line)
        column.addWidget(self._sentence)
        column.addSpacing(WITHIN)
        first, *others = self.buttons
        leave = others.pop() if others else None
        harmful = [b for b, answer in zip(others, answers[1:], strict=False) if answer.loses]
        column.addWidget(
            Answers(
                self,
                (first,),
                leave,
                others=[button for button in others if button not in harmful],
                harmful=harmful,
            )
        )
        width = max(look().type.grow(WIDTH), self.sizeHint().width())
        self.setFixedSize(width, column.totalHeightForWidth(width))
        self._ring = FocusRing(self)
        self.buttons[0].setFocus()

    @property
    def text(self) -> str:
        """All it says."""
        return f"{self._line.text()} {self._sentence.text()}"

    def reject(self) -> None:
        self._answer(self._last)

    def _button(self, answer: Answer, *, first: bool) -> EdgeButton:
        button = InkButton(answer.text, parent=self) if first else EdgeButton(answer.text, "", self)
        button.clicked.connect(lambda: self._answer(answer))
        return button

    def _answer(self, answer: Answer) -> None:
        if self._answered:
            return
        self._answered = True
        self._ring.stop()
        self.done(0)
        # After the dialog is gone: the answer may open another, or close the window.
        if answer.act is not None:
            answer.act()


def _label(text: str, role: str, parent: QWidget) -> QLabel:
    label = QLabel(text, parent)
    label.setWordWrap(True)
    # A file's name may look like markup.
    label.setTextFormat(Qt.TextFormat.PlainText)
    if role:
        label.setProperty("role", role)
    return label


def _preview() -> QWidget:
    return Question(
        None,
        "Keep what you changed?",
        "dusk over the lake has changes that are not saved yet.",
        (Answer("&Save"), Answer("&Don't save", loses=True), Answer("Cancel")),
    )


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, WIDTH, 180))

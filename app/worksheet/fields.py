"""Fields one writes in, whose typing becomes readable undo steps of the study."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QFontMetricsF, QKeyEvent, QKeySequence, QTextCursor
from PySide6.QtWidgets import QLineEdit, QPlainTextEdit, QSizePolicy, QWidget

from app.look import look
from app.state.document import Gesture

_UNDOING = (QKeySequence.StandardKey.Undo, QKeySequence.StandardKey.Redo)


def undoes(event: QEvent) -> bool:
    """Whether a key would undo within the field: the study's own undo is asked instead."""
    return (
        event.type() == QEvent.Type.ShortcutOverride
        and isinstance(event, QKeyEvent)
        and any(event.matches(key) for key in _UNDOING)
    )


def whole(text: str) -> str:
    """The text without halves of characters, which no file can hold."""
    return text.encode("utf-16", "surrogatepass").decode("utf-16", "replace")


class AnswerBox(QPlainTextEdit):
    """A few sentences.

    A run of typing ends where the focus leaves, a line is ended, or the cursor is put elsewhere.

    Signals
    -------
    edited(text: str, gesture: Gesture)
        The text after a key press or a paste; not sent by `set_text`.
    full()
        There is no room for more.
    """

    edited = Signal(str, object)
    full = Signal()

    def __init__(
        self, name: str, most: int, parent: QWidget | None = None, *, lines: int = 3
    ) -> None:
        """`name` is for a screen reader; `most` characters fit; `lines` are shown at least."""
        super().__init__(parent)
        self._most = most
        self._lines = lines
        self._run = Gesture()
        self._text = ""
        self._place = 0
        self.setAccessibleName(name)
        self.setTabChangesFocus(True)
        self.setUndoRedoEnabled(False)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.textChanged.connect(self._read)
        self.cursorPositionChanged.connect(self._follow)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_text"):
            self._fit()

    def _fit(self) -> None:
        self.updateGeometry()

    def set_text(self, text: str) -> None:
        """Show a text; the cursor stays where it is when nothing changes."""
        if text == self._text:
            return
        self._text = text
        place = self.textCursor().position()
        with QSignalBlocker(self):
            self.setPlainText(text)
            cursor = self.textCursor()
            cursor.setPosition(min(place, self._end()))
            self.setTextCursor(cursor)
        self._place = self.textCursor().position()
        self._run = Gesture()

    @property
    def text(self) -> str:
        """What is written."""
        return self._text

    def begin_line(self, start: str) -> None:
        """Go to the end and begin a new line with some words."""
        self.setFocus(Qt.FocusReason.OtherFocusReason)
        self._run = Gesture()
        self.moveCursor(QTextCursor.MoveOperation.End)
        glue = "\n" if self._text and not self._text.endswith("\n") else ""
        self.insertPlainText(f"{glue}{start}")
        self.ensureCursorVisible()

    def _end(self) -> int:
        return self.document().characterCount() - 1

    def _read(self) -> None:
        text = whole(self.toPlainText())
        if len(text) > self._most:
            # What is too much is taken from where it was written, never from the end.
            over = len(text) - self._most
            cursor = self.textCursor()
            with QSignalBlocker(self):
                for _ in range(over):
                    cursor.deletePreviousChar()
            text = whole(self.toPlainText())[: self._most]
            self.full.emit()
        if text == self._text:
            return
        ended = text.count("\n") > self._text.count("\n")
        self._text = text
        self._place = self.textCursor().position()
        self.edited.emit(text, self._run)
        if ended:
            self._run = Gesture()

    def _follow(self) -> None:
        # Typing moves the cursor too, but then the text has changed as well.
        place = self.textCursor().position()
        if place != self._place and self.toPlainText() == self._text:
            self._run = Gesture()
        self._place = place

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._run = Gesture()

    def event(self, event: QEvent) -> bool:
        if undoes(event):
            event.ignore()
            return False
        return bool(super().event(event))

    def _height(self, lines: int) -> int:
        # By the look, not by the font in use, which the stylesheet may not have changed yet.
        pitch = QFontMetricsF(look().type.font("row_second")).lineSpacing()
        return round(lines * pitch + 2 * look().type.grow(8) + 6)

    def sizeHint(self) -> QSize:
        return QSize(look().type.grow(240), self._height(self._lines))

    def minimumSizeHint(self) -> QSize:
        return QSize(look().type.grow(120), self._height(self._lines))


class CodeField(QLineEdit):
    """A short code.

    Signals
    -------
    changed(text: str, gesture: Gesture)
        The text after a key press or a paste; not sent by `set_text`.
    """

    changed = Signal(str, object)

    def __init__(
        self, name: str, hint: str, most: int, parent: QWidget | None = None, *, letters: int = 12
    ) -> None:
        """`hint` stands in the empty field; so many `letters` are shown at least."""
        super().__init__(parent)
        self._letters = letters
        self._run = Gesture()
        self.setAccessibleName(name)
        self.setAccessibleDescription(hint)
        self.setPlaceholderText(hint)
        self.setMaxLength(most)
        self.setSizePolicy(QSizePolicy.Policy.Maximum, QSizePolicy.Policy.Fixed)
        self.textEdited.connect(self._tell)

    def set_text(self, text: str) -> None:
        """Show a text; the cursor stays where it is when nothing changes."""
        if text == self.text():
            return
        place = self.cursorPosition()
        with QSignalBlocker(self):
            self.setText(text)
        self.setCursorPosition(min(place, len(text)))
        self._run = Gesture()

    def _tell(self, text: str) -> None:
        self.changed.emit(whole(text), self._run)

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self._run = Gesture()

    def event(self, event: QEvent) -> bool:
        if undoes(event):
            event.ignore()
            return False
        return bool(super().event(event))

    def sizeHint(self) -> QSize:
        hint = super().sizeHint()
        metrics = QFontMetricsF(look().type.font("control"))
        wide = max(
            metrics.horizontalAdvance("0") * self._letters,
            metrics.horizontalAdvance(self.placeholderText()),
        )
        return QSize(round(wide) + look().type.grow(30), hint.height())

    def minimumSizeHint(self) -> QSize:
        return QSize(look().type.grow(84), super().minimumSizeHint().height())


def _preview() -> QWidget:
    from PySide6.QtWidgets import QVBoxLayout

    page = QWidget()
    column = QVBoxLayout(page)
    column.addWidget(CodeField("Student code", "a code, not a name", 40))
    box = AnswerBox("What would you do differently?", 4000)
    box.setPlaceholderText("Technique: one wash, or a second layer?\nBrush: fuller?")
    column.addWidget(box)
    return page


if __name__ == "__main__":
    from app.widgets.preview import show

    raise SystemExit(show(_preview, 460, 220))

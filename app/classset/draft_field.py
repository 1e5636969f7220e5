"""A sentence about a student: drafted from the findings, taken, exchanged, or written anew."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSignalBlocker, QSize, Qt, Signal
from PySide6.QtGui import QFocusEvent, QKeyEvent, QPainter, QPaintEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPlainTextEdit, QSizePolicy, QVBoxLayout, QWidget

from app.look import look
from app.look.icons import paint_icon
from app.look.space import WITHIN
from app.widgets.buttons import EdgeButton
from core.class_set.model import MOST_WORDS
from core.i18n import translate

_ABOVE, _BESIDE = 5, 9
"""Pixels between a field's edge and its text."""


class GrowingText(QPlainTextEdit):
    """A field as high as its text; Tab leaves it.

    Signals
    -------
    left()
        The keyboard went elsewhere.
    """

    left = Signal()

    def __init__(self, parent: QWidget | None = None, *, least: int = 2) -> None:
        super().__init__(parent)
        self._least = least
        self.setTabChangesFocus(True)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.document().setDocumentMargin(0)
        self.setStyleSheet(f"padding: {_ABOVE}px {_BESIDE}px;")
        self.textChanged.connect(self._fit)

    @property
    def text(self) -> str:
        """What is written."""
        return self.toPlainText()

    def set_text(self, text: str) -> None:
        """Write something else; it is no edit."""
        if text != self.text:
            with QSignalBlocker(self):
                self.setPlainText(text)
            self._fit()

    def sizeHint(self) -> QSize:
        return QSize(200, self.height())

    def minimumSizeHint(self) -> QSize:
        return QSize(120, self.height())

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.left.emit()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if len(self.text) >= MOST_WORDS and event.text() and event.text().isprintable():
            return
        super().keyPressEvent(event)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() in (QEvent.Type.StyleChange, QEvent.Type.FontChange):
            self._fit()

    def _fit(self) -> None:
        # Its document counts lines, not pixels.
        lines = max(self._least, int(self.document().size().height()))
        inside = 2 * (_ABOVE + 1)
        wanted = lines * self.fontMetrics().lineSpacing() + inside
        if self.height() != wanted or self.minimumHeight() != wanted:
            self.setFixedHeight(wanted)


class _Icon(QWidget):
    """An icon beside a word."""

    def __init__(self, name: str, parent: QWidget) -> None:
        super().__init__(parent)
        self._name = name

    def sizeHint(self) -> QSize:
        side = look().type.grow(20)
        return QSize(side, side)

    def minimumSizeHint(self) -> QSize:
        return self.sizeHint()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        paint_icon(painter, self.rect().toRectF(), self._name, look().theme.ink)
        painter.end()


class DraftField(QWidget):
    """A title, a button for the next draft, and the field.

    Signals
    -------
    edited(text: str)
        By hand, letter by letter.
    another()
        The next draft is asked for.
    left()
    """

    edited = Signal(str)
    another = Signal()
    left = Signal()

    def __init__(self, title: str, icon: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.field = GrowingText(self)
        self.field.setAccessibleName(title)
        self.draft = QLabel(translate("class set page", "draft"), self)
        self.draft.setProperty("role", "note")
        self.button = EdgeButton(translate("class set page", "another"), "swap", self)
        self.button.setAccessibleName(
            translate("class set page", "{title}: another draft").format(title=title)
        )
        name = QLabel(title, self)
        name.setProperty("role", "strong")
        row = QHBoxLayout()
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(WITHIN)
        row.addWidget(_Icon(icon, self))
        row.addWidget(name)
        row.addWidget(self.draft)
        row.addStretch(1)
        row.addWidget(self.button)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(4)
        column.addLayout(row)
        column.addWidget(self.field)
        self.field.textChanged.connect(lambda: self.edited.emit(self.field.text))
        self.field.left.connect(self.left)
        self.button.clicked.connect(self.another)

    def show_text(self, text: str, *, draft: bool, more: bool, nothing: str) -> None:
        """Show a sentence.

        Parameters
        ----------
        draft : bool
            Nobody took it yet.
        more : bool
            There is another draft.
        nothing : str
            Stands in the empty field.
        """
        self.field.set_text(text)
        self.field.setPlaceholderText(nothing)
        self.draft.setVisible(draft and bool(text))
        self.button.set_available(
            more, translate("class set page", "The findings give no other one: write your own.")
        )

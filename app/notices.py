"""Short sentences to the user, shown in a bar under the header until closed or overtaken."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtGui import QAccessible, QAccessibleEvent, QKeyEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QWidget

from app.look import look
from app.look.icons import icon
from app.look.space import GROUP, MARGIN, WITHIN
from core.errors import GradewashError
from core.i18n import translate


@dataclass(frozen=True)
class Notice:
    """One sentence.

    Attributes
    ----------
    text : str
        What happened and what to do.
    kind : "problem" or "note"
        A problem gets the warning triangle.
    topic : str
        A new notice of the same topic replaces the old one; `Notices.withdraw` takes it away.
    button, act : str and callable, optional
        One thing to do about it.
    """

    text: str
    kind: Literal["problem", "note"] = "problem"
    topic: str = ""
    button: str | None = None
    act: Callable[[], None] | None = None


class Notices(QObject):
    """Where everybody leaves a notice; the bar shows the last one.

    Signals
    -------
    shown(notice: Notice)
    withdrawn(topic: str)
    """

    shown = Signal(object)
    withdrawn = Signal(str)

    def problem(self, text: str) -> None:
        """Something failed."""
        self.shown.emit(Notice(text))

    def note(self, text: str, topic: str = "") -> None:
        """Something worth knowing."""
        self.shown.emit(Notice(text, "note", topic))

    def show(self, notice: Notice) -> None:
        """Any notice."""
        self.shown.emit(notice)

    @contextmanager
    def reporting(self) -> Iterator[None]:
        """Around an edit that may not be allowed: what it says is shown, and nothing changes."""
        try:
            yield
        except GradewashError as error:
            self.problem(str(error))

    def withdraw(self, topic: str) -> None:
        """What notices of this topic said no longer holds."""
        self.withdrawn.emit(topic)


class NoticeBar(QWidget):
    """Shows one notice; hidden when there is none."""

    def __init__(self, notices: Notices, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._notice: Notice | None = None
        self.setProperty("ground", "raised")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._sign = QLabel(self)
        self._text = QLabel(self, wordWrap=True)
        self._text.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self._act = QPushButton(self)
        self._act.clicked.connect(self._do)
        self._close = QPushButton(translate("notices", "Close"), self)
        self._close.clicked.connect(self.dismiss)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(MARGIN, WITHIN, MARGIN, WITHIN)
        layout.setSpacing(GROUP)
        layout.addWidget(self._sign)
        layout.addWidget(self._text, 1)
        layout.addWidget(self._act)
        layout.addWidget(self._close)
        self.hide()
        notices.shown.connect(self.show_notice)
        notices.withdrawn.connect(self._withdraw)

    @property
    def text(self) -> str:
        """What the bar says; empty when it is hidden."""
        return self._notice.text if self._notice else ""

    def show_notice(self, notice: Notice) -> None:
        """Show `notice` instead of what stands here."""
        self._notice = notice
        name = "caution" if notice.kind == "problem" else "info"
        self._sign.setPixmap(icon(name, look().theme.ink).pixmap(20, 20))
        self._text.setText(notice.text)
        self._act.setText(notice.button or "")
        self._act.setVisible(notice.button is not None)
        self.show()
        self.setAccessibleName(notice.text)
        QAccessible.updateAccessibility(QAccessibleEvent(self, QAccessible.Event.Alert))

    def dismiss(self) -> None:
        """Close the bar."""
        self._notice = None
        self.hide()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.key() == Qt.Key.Key_Escape:
            self.dismiss()
        else:
            super().keyPressEvent(event)

    def _withdraw(self, topic: str) -> None:
        if self._notice is not None and topic and self._notice.topic == topic:
            self.dismiss()

    def _do(self) -> None:
        notice = self._notice
        self.dismiss()
        if notice is not None and notice.act is not None:
            notice.act()

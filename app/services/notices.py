"""Short sentences to the user, shown in a bar under the header until closed or overtaken."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from typing import Literal

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QAccessible, QAccessibleEvent

from app.errors import sentence_of
from app.widgets.notice import NoticeBar
from core.errors import GradewashError


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
    passing : bool
        It answers what was just tried, and leaves with the next thing that is done.
    """

    text: str
    kind: Literal["problem", "note"] = "problem"
    topic: str = ""
    button: str = ""
    act: Callable[[], None] | None = None
    passing: bool = False


class Notices(QObject):
    """Where everybody leaves a notice; the bar shows the last one.

    Signals
    -------
    shown(notice: Notice)
    withdrawn(topic: str)
    settled()
    moved_on()
    """

    shown = Signal(object)
    withdrawn = Signal(str)
    settled = Signal()
    moved_on = Signal()

    def problem(self, text: str) -> None:
        """Something failed."""
        self.shown.emit(Notice(text))

    def note(self, text: str, topic: str = "") -> None:
        """Something worth knowing."""
        self.shown.emit(Notice(text, "note", topic))

    def hint(self, text: str) -> None:
        """Why what was tried is not done; it leaves with the next thing that is."""
        self.shown.emit(Notice(text, "note", passing=True))

    def move_on(self) -> None:
        """Something else is done: another page, an edit, another study."""
        self.moved_on.emit()

    def show(self, notice: Notice) -> None:
        """Any notice."""
        self.shown.emit(notice)

    @contextmanager
    def reporting(self) -> Iterator[None]:
        """Around an edit that may not be allowed: what it says is shown, and nothing changes."""
        try:
            yield
        except GradewashError as error:
            self.shown.emit(Notice(str(error), passing=True))

    def failed(self, error: Exception) -> None:
        """Work that failed: what is meant for the user is shown, a mistake of ours is raised."""
        if not isinstance(error, GradewashError | MemoryError):
            raise error
        self.problem(sentence_of(error))

    def settle(self) -> None:
        """Something has succeeded since: what failed before is of no interest any more."""
        self.settled.emit()

    def withdraw(self, topic: str) -> None:
        """What notices of this topic said no longer holds."""
        self.withdrawn.emit(topic)


class NoticeDisplay(QObject):
    """Shows the last notice in the window's bar."""

    def __init__(self, notices: Notices, bar: NoticeBar) -> None:
        super().__init__(bar)
        self._bar = bar
        self._notice: Notice | None = None
        # An edit may come with what is said of it, in the same turn: that is no later act.
        self._just_said = QTimer(self, singleShot=True, interval=0)
        notices.shown.connect(self._show)
        notices.withdrawn.connect(self._withdraw)
        notices.settled.connect(self._settle)
        notices.moved_on.connect(self._move_on)
        bar.action_asked.connect(self._act)
        bar.closed.connect(self._forget)

    @property
    def text(self) -> str:
        """What the bar says; empty when it is hidden."""
        return self._notice.text if self._notice else ""

    def _show(self, notice: Notice) -> None:
        self._notice = notice
        self._just_said.start()
        self._bar.tell(notice.text, notice.button, caution=notice.kind == "problem")
        QAccessible.updateAccessibility(QAccessibleEvent(self._bar, QAccessible.Event.Alert))

    def _withdraw(self, topic: str) -> None:
        if self._notice is not None and topic and self._notice.topic == topic:
            self._forget()
            self._bar.clear()

    def _settle(self) -> None:
        # One with a topic tells of something that lasts, and whoever showed it takes it away.
        if self._notice is not None and self._notice.kind == "problem" and not self._notice.topic:
            self._forget()
            self._bar.clear()

    def _move_on(self) -> None:
        said = self._notice
        if said is not None and said.passing and not self._just_said.isActive():
            self._forget()
            self._bar.clear()

    def _forget(self) -> None:
        self._notice = None

    def _act(self) -> None:
        notice = self._notice
        self._forget()
        self._bar.clear()
        if notice is not None and notice.act is not None:
            notice.act()

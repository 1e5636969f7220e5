"""Checks the sheets of the open class set in processes beside the window.

Results arrive one by one, each kept in the folder before it is shown; whoever stops in between
loses nothing.
"""

from __future__ import annotations

from collections.abc import Set
from functools import partial
from time import monotonic

from PySide6.QtCore import QObject, Qt, Signal

from app.services.class_set.underway import Underway
from app.state.language import speak_without_window
from app.state.tasks import Task, give_back, own_pool
from core.class_set.check_one import Outcome
from core.class_set.checking import check_folder, still_to_check, to_check
from core.class_set.folder import ClassFolder
from core.class_set.kept_checks import Kept, KeptChecks, check_key
from core.class_set.pool import CheckingPool
from core.progress import Progress, ShouldStop

HERE = 1
"""So many sheets are checked by the worker itself: processes take longer to begin than that."""


class _Relay(QObject):
    """Carries results from the worker's thread to the window's."""

    begun = Signal(int)
    found = Signal(str, object)
    came = Signal(str, object)


class ClassChecker(QObject):
    """One check of all that is unchecked at a time.

    Signals
    -------
    changed()
        `underway` is another now.
    checked(digest: str, kept: Kept)
    ended(stopped: bool)
    failed(error: Exception)
    """

    changed = Signal()
    checked = Signal(str, object)
    ended = Signal(bool)
    failed = Signal(object)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        # A thread of its own: it waits for the processes, and others need theirs meanwhile.
        self._pool = own_pool()
        self.destroyed.connect(lambda *_, pool=self._pool: give_back(pool))
        self._relay: _Relay | None = None
        self._task: Task | None = None
        self._stop: list[bool] = []
        self._begun = 0.0
        self.underway: Underway | None = None

    def begin(self, folder: ClassFolder, language: str, known: Set[str]) -> None:
        """Check what has not been checked, with the sentences in a language.

        Parameters
        ----------
        known : set of str
            Digests whose checks are shown: one that was kept while Stop was pressed is told now.
        """
        if self.underway is not None:
            return
        stop = self._stop = []
        relay = self._relay = _Relay(self)
        queued = Qt.ConnectionType.QueuedConnection
        relay.begun.connect(partial(self._on_begun, relay), queued)
        relay.found.connect(partial(self._on_found, relay), queued)
        relay.came.connect(partial(self._on_result, relay), queued)
        self.underway = Underway("checking", 0, 0)

        def work(progress: Progress, should_stop: ShouldStop) -> None:
            def stopped() -> bool:
                return bool(stop) or should_stop()

            undone = still_to_check(folder, language)
            relay.begun.emit(len(undone))
            kept = KeptChecks(folder.path)
            waiting = {each.digest for _, each in undone} | known
            for each in to_check(folder.class_set):
                if each.digest not in waiting:
                    key = check_key(each, folder.class_set.exercise, language)
                    relay.found.emit(each.digest, kept.find(key))
            if not undone:
                return
            if len(undone) <= HERE:
                for outcome in check_folder(folder, language, should_stop=stopped):
                    _tell(relay, kept, outcome)
                return
            begin = None if language == "en" else partial(speak_without_window, language)
            with CheckingPool(begin=begin) as pool:
                outcomes = check_folder(
                    folder,
                    language,
                    executor=pool.executor,
                    renew=pool.renew,
                    should_stop=stopped,
                )
                for outcome in outcomes:
                    _tell(relay, kept, outcome)

        self._task = Task(work, self._pool)
        self._task.done.connect(lambda nothing: self._end(relay, stopped=False))
        self._task.failed.connect(partial(self._on_failed, relay))
        self._task.start()
        self.changed.emit()

    def stop(self) -> None:
        """Check no more: what is under way is let go."""
        if self._relay is None or self.underway is None:
            return
        self._stop.append(True)
        relay, task = self._relay, self._task
        if task is not None:
            task.cancel()
        self._end(relay, stopped=True)

    def _on_begun(self, relay: _Relay, count: int) -> None:
        if relay is self._relay:
            self._begun = monotonic()
            self.underway = Underway("checking", 0, count)
            self.changed.emit()

    def _on_found(self, relay: _Relay, digest: str, kept: Kept | None) -> None:
        if relay is self._relay and kept is not None:
            self.checked.emit(digest, kept)

    def _on_result(self, relay: _Relay, digest: str, kept: Kept | None) -> None:
        if relay is not self._relay or self.underway is None:
            return
        seconds, now = monotonic() - self._begun, self.underway
        self.underway = Underway("checking", now.done + 1, now.of, seconds)
        self.changed.emit()
        if kept is not None:
            self.checked.emit(digest, kept)

    def _end(self, relay: _Relay, *, stopped: bool) -> None:
        if relay is not self._relay:
            return
        self._relay, self._task, self.underway = None, None, None
        relay.deleteLater()
        self.changed.emit()
        self.ended.emit(stopped)

    def _on_failed(self, relay: _Relay, error: Exception) -> None:
        if relay is self._relay:
            self._end(relay, stopped=True)
            self.failed.emit(error)


def _tell(relay: _Relay, kept: KeptChecks, outcome: Outcome) -> None:
    """In the worker: the check as it is kept, without its pixels."""
    relay.came.emit(outcome.digest, kept.find(outcome.key))

"""Brings many pictures in, one after the other, in the folder's thread between the saves."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path
from time import monotonic

from PySide6.QtCore import QObject, Signal

from app.services.class_set.document import ClassDocument
from app.services.class_set.keeper import ClassKeeper
from app.services.class_set.underway import Underway
from core.class_set.arrivals import Arrival, arrival_of
from core.class_set.bringing import Told, bring_in, files_in
from core.errors import Cancelled
from core.progress import Progress, ShouldStop

_Step = tuple[Told | None, Arrival]


class Bringer(QObject):
    """One bringing in at a time; what is asked for meanwhile follows.

    Signals
    -------
    changed()
        `underway` is another now.
    ended(told: tuple of Told)
        All that was asked for is in, or was called off.
    failed(error: Exception)
        The disk is full or gone, or a file is not there; what was told is kept.
    """

    changed = Signal()
    ended = Signal(object)
    failed = Signal(object)

    def __init__(
        self, document: ClassDocument, keeper: ClassKeeper, parent: QObject | None = None
    ) -> None:
        super().__init__(parent)
        self._document, self._keeper = document, keeper
        self._steps: Iterator[Told] | None = None
        self._waiting: list[tuple[Path, ...]] = []
        self._told: list[Told] = []
        self._of, self._begun, self._stop = 0, 0.0, False
        self.underway: Underway | None = None

    def add(self, paths: Sequence[Path]) -> None:
        """Bring files and folders in."""
        self._waiting.append(tuple(paths))
        if self.underway is None:
            self._begin()

    def stop(self) -> None:
        """Bring in no more; what is in stays."""
        self._waiting.clear()
        self._stop = True
        if self.underway is not None:
            self._show(stopping=True)

    def forget(self) -> None:
        """The class set is closed: nothing more arrives."""
        self.stop()
        self._steps, self.underway = None, None

    def _begin(self) -> None:
        folder, paths = self._keeper.folder, self._waiting.pop(0)
        if folder is None:
            self._waiting.clear()
            return
        self._stop, self._of, self._begun, self._told = False, 0, monotonic(), []
        self.underway = Underway("bringing", 0, 0)
        self.changed.emit()
        stopped = lambda: self._stop  # noqa: E731 - asked in the folder's thread

        def work(progress: Progress, should_stop: ShouldStop) -> tuple[int, Iterator[Told]]:
            files = files_in(paths)
            return len(files), bring_in(folder, files, should_stop=stopped)

        def done(found: tuple[int, Iterator[Told]]) -> None:
            if self.underway is None:
                return
            self._of, self._steps = found
            self._begun = monotonic()
            self._next()

        self._keeper.run(work, done, self._on_failed)

    def _next(self) -> None:
        steps, folder, keeper = self._steps, self._keeper.folder, self._keeper
        if steps is None or folder is None:
            return

        def work(progress: Progress, should_stop: ShouldStop) -> _Step:
            before = folder.class_set
            try:
                told = next(steps, None)
            except Cancelled:
                told = None
            arrival = arrival_of(before, folder.class_set)
            keeper.arrived(arrival)
            return told, arrival

        keeper.run(work, self._on_step, self._on_failed)

    def _on_step(self, step: _Step) -> None:
        told, arrival = step
        if self.underway is None:
            return
        self._document.arrive(arrival)
        if told is None:
            self._end()
            return
        self._told.append(told)
        self._show(stopping=self._stop)
        self._next()

    def _show(self, *, stopping: bool) -> None:
        seconds = monotonic() - self._begun
        self.underway = Underway("bringing", len(self._told), self._of, seconds, stopping)
        self.changed.emit()

    def _end(self) -> None:
        told, self._steps, self.underway = tuple(self._told), None, None
        self.changed.emit()
        if self._waiting:
            self._begin()
        self.ended.emit(told)

    def _on_failed(self, error: Exception) -> None:
        if self.underway is None:
            return
        self._waiting.clear()
        self._end()
        self.failed.emit(error)

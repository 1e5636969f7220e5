"""Keeps the open class set's folder in step with the window: one thread, one thing at a time.

Whatever touches `class-set.json` runs here in the order it was asked for, so a save never falls
into the middle of bringing a picture in.
"""

from __future__ import annotations

from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, QTimer, Signal

from app.services.class_set.document import ClassDocument
from app.state.tasks import Task, Work, give_back, own_pool
from core.class_set.arrivals import Arrival, with_arrival
from core.class_set.folder import ClassFolder
from core.class_set.model import ClassSet
from core.progress import Progress, ShouldStop

SAVE_AFTER_MS = 400
"""At most so much work is only in the window: a run of letters is one save."""


class ClassKeeper(QObject):
    """Saves the class set after each edit.

    Signals
    -------
    saved()
        The disk has all that was there when the save began.
    failed(error: Exception)
    """

    saved = Signal()
    failed = Signal(object)

    def __init__(self, document: ClassDocument, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._document = document
        self._pool = own_pool()
        self.destroyed.connect(lambda *_, pool=self._pool: give_back(pool))
        self._folder: ClassFolder | None = None
        self._arrivals: list[Arrival] = []
        self._on_disk: ClassSet | None = None
        self._saving = False
        self._timer = QTimer(self, singleShot=True, interval=SAVE_AFTER_MS)
        self._timer.timeout.connect(self.save)
        document.changed.connect(lambda before, after: self._rest())

    @property
    def folder(self) -> ClassFolder | None:
        """The folder that is held; None while no class set is open."""
        return self._folder

    @property
    def unsaved(self) -> bool:
        """Whether something is in the window alone."""
        now = self._document.class_set
        return self._folder is not None and now is not None and now != self._on_disk

    def hold(self, folder: ClassFolder) -> None:
        """Keep this folder in step from now on."""
        self._folder = folder
        self._arrivals = []
        self._on_disk = folder.class_set

    def run(
        self,
        work: Work,
        done: Callable[[Any], object],
        failed: Callable[[Exception], object] | None = None,
    ) -> None:
        """Do something with the folder, once all that was asked for before is done."""
        task = Task(work, self._pool)
        task.done.connect(done)
        task.failed.connect(failed or self.failed.emit)
        task.start()

    def arrived(self, arrival: Arrival) -> None:
        """Called in the folder's thread: what follows is saved with this."""
        self._arrivals.append(arrival)

    def save(self) -> None:
        """Write what is in the window, in the folder's thread."""
        self._timer.stop()
        folder, class_set = self._folder, self._document.class_set
        if folder is None or class_set is None or self._saving or not self.unsaved:
            return
        self._saving = True
        arrivals = self._arrivals

        def work(progress: Progress, should_stop: ShouldStop) -> ClassSet:
            whole = class_set
            for arrival in arrivals:
                whole = with_arrival(whole, arrival)
            folder.save(whole)
            return class_set

        self.run(work, self._on_saved, self._on_failed)

    def finish(self) -> None:
        """Write what is unsaved and let the folder go, now: the program or the class set ends.

        No worker of the folder's may run any more.

        Raises
        ------
        ClassSetError
            It cannot be written; the folder is still held.
        """
        self._timer.stop()
        folder, class_set = self._folder, self._document.class_set
        if folder is None:
            return
        if class_set is not None and class_set != folder.class_set:
            for arrival in self._arrivals:
                class_set = with_arrival(class_set, arrival)
            folder.save(class_set)
        folder.close()
        self._folder = None
        self._saving = False

    def let_go(self) -> None:
        """Let the folder go as it is on disk."""
        self._timer.stop()
        if self._folder is not None:
            self._folder.close()
        self._folder = None
        self._saving = False

    def _rest(self) -> None:
        if self.unsaved and not self._timer.isActive():
            self._timer.start()

    def _on_saved(self, class_set: ClassSet) -> None:
        self._saving = False
        self._on_disk = class_set
        self.saved.emit()
        self._rest()

    def _on_failed(self, error: Exception) -> None:
        self._saving = False
        self.failed.emit(error)

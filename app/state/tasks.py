"""Long work beside the window: it runs in a thread pool, reports, and can be called off.

Work takes `progress` and `should_stop` and touches arrays and QImage, never widgets or QPixmap.
What it gives comes back through a queued signal and is handed on in the GUI thread, so nothing
arrives once `cancel()` has returned.
"""

from __future__ import annotations

import logging
from collections.abc import Callable
from time import monotonic
from typing import Any

from PySide6.QtCore import QObject, Qt, QThreadPool, QTimer, Signal, Slot
from shiboken6 import isValid

from core.errors import Cancelled
from core.progress import Progress, ShouldStop

log = logging.getLogger(__name__)

Work = Callable[[Progress, ShouldStop], Any]

SHOW_PROGRESS_AFTER_MS = 300
"""Work that ends sooner shows no progress: a flash would only disturb."""


TELL_EACH_S = 0.05
"""Progress reaches the window at most so often: every message is a turn of the event loop, and
plans of some milliseconds, one after the other, would send hundreds."""


def _sparing(tell: Progress) -> Progress:
    """Progress that is told in steps worth showing."""
    when = 0.0

    def progress(share: float) -> None:
        nonlocal when
        now = monotonic()
        if now - when >= TELL_EACH_S:
            when = now
            tell(share)

    return progress


class _Relay(QObject):
    """Carries messages from the worker's thread to the thread this object was made in."""

    progressed = Signal(float)
    ended = Signal(object, object)  # result, exception


class _Runner:
    """Runs the work in a pool thread; no QRunnable, which PySide6 keeps for good once started."""

    def __init__(self, work: Work, relay: _Relay, should_stop: ShouldStop) -> None:
        self._work: Work | None = work
        self._relay = relay
        self._should_stop = should_stop

    def __call__(self) -> None:
        result, error = None, None
        # Work holds photos, and Qt may keep this runner: it is let go with the work.
        work, self._work = self._work, None
        assert work is not None
        try:
            result = work(_sparing(self._relay.progressed.emit), self._should_stop)
        except Exception as exception:  # handed on: the GUI thread decides what is shown
            error = exception
        self._relay.ended.emit(result, error)


_own_pools: list[QThreadPool] = []


def own_pool() -> QThreadPool:
    """One thread, and what is to be done in it in the order it was asked for.

    For work that takes long because it waits for others, which would keep a thread from all
    else, and for work that must not overlap.
    """
    pool = QThreadPool()
    pool.setMaxThreadCount(1)
    _own_pools.append(pool)
    return pool


def give_back(pool: QThreadPool) -> None:
    """The pool is wanted no more."""
    if pool in _own_pools:
        _own_pools.remove(pool)


_unfinished: set[Task] = set()
"""Started tasks, cancelled or not: the worker speaks through them to the end, whoever closes
the window that began them. (So no parent: it would delete them too early.)"""


class Task(QObject):
    """One piece of work; made and started in the GUI thread.

    Signals
    -------
    progressed(share: float)
    done(result: object)
    failed(error: Exception)
        At most one of `done` and `failed`, and neither after `cancel()`.
    """

    progressed = Signal(float)
    done = Signal(object)
    failed = Signal(object)

    def __init__(self, work: Work, pool: QThreadPool | None = None) -> None:
        """`pool` is where it runs, from `own_pool`; otherwise with all other work."""
        super().__init__()
        self._pool = pool or QThreadPool.globalInstance()
        self._over = False
        self._cancelled = False
        self._relay = _Relay(self)
        queued = Qt.ConnectionType.QueuedConnection
        self._relay.progressed.connect(self._on_progress, queued)
        self._relay.ended.connect(self._on_end, queued)
        self._runner = _Runner(work, self._relay, lambda: self._cancelled)

    @property
    def running(self) -> bool:
        """Whether a result may still arrive."""
        return not self._over and not self._cancelled

    def start(self) -> None:
        """Queue the work."""
        _unfinished.add(self)
        self._pool.start(self._runner)

    def cancel(self) -> None:
        """Ask the work to stop; nothing arrives from here on."""
        self._cancelled = True

    @Slot(float)
    def _on_progress(self, share: float) -> None:
        if self.running:
            self.progressed.emit(share)

    @Slot(object, object)
    def _on_end(self, result: object, error: Exception | None) -> None:
        _unfinished.discard(self)
        self.deleteLater()
        if not self.running:
            if error is not None and not isinstance(error, Cancelled):
                log.info("cancelled work failed", exc_info=error)
            return
        self._over = True
        if error is None:
            self.done.emit(result)
        elif not isinstance(error, Cancelled):
            self.failed.emit(error)


class Latest(QObject):
    """A place for one piece of work at a time: the new one calls off the old.

    Signals
    -------
    busy(share: float)
        Work has run for 0.3 s and more; 0..1.
    idle()
        Nothing runs any more.
    """

    busy = Signal(float)
    idle = Signal()

    def __init__(self, parent: QObject | None = None, pool: QThreadPool | None = None) -> None:
        super().__init__(parent)
        self._pool = pool
        self._task: Task | None = None
        self._share = 0.0
        self._timer = QTimer(self, singleShot=True, interval=SHOW_PROGRESS_AFTER_MS)
        self._timer.timeout.connect(self._show)

    @property
    def running(self) -> bool:
        """Whether a result may still arrive."""
        return self._task is not None

    def run(
        self,
        work: Work,
        done: Callable[[Any], None],
        failed: Callable[[Exception], None] | None = None,
    ) -> None:
        """Call off what runs here and start `work`.

        Parameters
        ----------
        work : callable
            Runs in another thread with (progress, should_stop).
        done : callable
            Takes the result, in the GUI thread.
        failed : callable, optional
            Takes the exception, in the GUI thread; without it the exception is raised there,
            for the one place that shows errors.
        """
        if self._task is not None:
            self._task.cancel()
        task = self._task = Task(work, self._pool)
        self._share = 0.0
        self._timer.start()
        task.progressed.connect(lambda share: self._progress(task, share))
        task.done.connect(lambda result: self._end(task, lambda: done(result)))
        task.failed.connect(lambda error: self._end(task, lambda: _fail(error, failed)))
        task.start()

    def cancel(self) -> None:
        """Call off what runs here."""
        if self._task is not None:
            self._task.cancel()
            self._task = None
            self._timer.stop()
            self.idle.emit()

    def _progress(self, task: Task, share: float) -> None:
        if isValid(self) and task is self._task:
            self._share = share
            if not self._timer.isActive():
                self.busy.emit(share)

    def _show(self) -> None:
        if self._task is not None:
            self.busy.emit(self._share)

    def _end(self, task: Task, then: Callable[[], None]) -> None:
        if not isValid(self) or task is not self._task:
            return  # the window that asked has gone, or something newer runs
        self._task = None
        self._timer.stop()
        self.idle.emit()
        then()


def _fail(error: Exception, failed: Callable[[Exception], None] | None) -> None:
    if failed is None:
        raise error
    failed(error)


def cancel_all() -> None:
    """Call off everything; for the end of the program."""
    for task in tuple(_unfinished):
        task.cancel()


def wait_for_tasks(timeout_ms: int = 5000) -> bool:
    """Wait until no worker runs; for the end of the program and of a test."""
    until = monotonic() + timeout_ms / 1000
    done = True
    for pool in (QThreadPool.globalInstance(), *_own_pools):
        done = pool.waitForDone(max(0, round(1000 * (until - monotonic())))) and done
    return done

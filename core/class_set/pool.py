"""A pool of processes that check pictures on this machine."""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import signal
import weakref
from collections.abc import Callable
from concurrent.futures import Executor, ProcessPoolExecutor
from threading import Thread
from time import sleep

WORKERS = 2
"""Processes unless asked otherwise: a school's machine has other things to do too."""


class CheckingPool:
    """Processes for `check_all`; a context manager that ends them, at once when it is left early.

    Parameters
    ----------
    workers : int
    begin : callable, optional
        Called first in each worker; can be pickled. A window that speaks another language
        begins by speaking it there too: what a check says is put into words in the worker.
    """

    def __init__(self, workers: int = WORKERS, begin: Callable[[], None] | None = None) -> None:
        self._workers = workers
        self._begin = begin
        self._pool = self._made()

    @property
    def executor(self) -> Executor:
        """The pool as it is now."""
        return self._pool

    def renew(self) -> Executor:
        """A fresh pool in place of one whose worker died."""
        self._pool.shutdown(wait=False, cancel_futures=True)
        self._pool = self._made()
        return self._pool

    def close(self) -> None:
        """Take back what waits; workers end with what they are at."""
        self._pool.shutdown(wait=False, cancel_futures=True)

    def end(self) -> None:
        """End the workers at once, whatever they are at: what they told is kept already."""
        # A public way comes only with Python 3.14 (terminate_workers).
        workers = list((getattr(self._pool, "_processes", None) or {}).values())
        self.close()
        for worker in workers:
            with contextlib.suppress(ValueError, OSError):  # it ended by itself meanwhile
                worker.terminate()

    def __enter__(self) -> CheckingPool:
        return self

    def __exit__(self, kind: type[BaseException] | None, *_: object) -> None:
        if kind is None:
            self.close()
        else:
            self.end()

    def _made(self) -> ProcessPoolExecutor:
        # Fresh interpreters: a fork of a program with threads, as a window has, may hang.
        pool = ProcessPoolExecutor(
            self._workers,
            mp_context=multiprocessing.get_context("spawn"),
            initializer=_begin,
            initargs=(self._begin,),
        )
        Thread(target=_watch, args=(weakref.ref(pool),), name="watch pool", daemon=True).start()
        return pool


_LOOK_EACH_S = 0.2
_PATIENCE = 5
"""So many looks in a row a pool may know nothing of a worker that was killed."""


def _watch(made: weakref.ref[ProcessPoolExecutor]) -> None:
    """Break a pool that waits for ever for the rest of what a killed worker had begun to say.

    A worker that is killed while it hands over a result leaves half a message in the pipe. The
    pool's thread then reads on, sees no more that a worker died, and would also keep the program
    from ending. It gives up when nobody is left who could write.
    """
    thread, workers, results, looks = None, None, None, 0
    while True:
        sleep(_LOOK_EACH_S)
        pool = made()
        if thread is None:
            if pool is None:
                return
            # There once the first job was handed on. No public way leads to any of them.
            thread = getattr(pool, "_executor_manager_thread", None)
            workers = getattr(pool, "_processes", None)
            results = getattr(pool, "_result_queue", None)
            if workers is None or results is None:
                thread = None
        del pool
        if thread is None or workers is None or results is None:
            continue
        if not thread.is_alive():
            return
        killed = any(worker.exitcode for worker in list(workers.values()))
        looks = looks + 1 if killed else 0
        if looks > _PATIENCE:
            for worker in list(workers.values()):
                with contextlib.suppress(ValueError, OSError):
                    worker.kill()
            with contextlib.suppress(ValueError, OSError):
                results._writer.close()
            return


def _begin(then: Callable[[], None] | None) -> None:
    """In each worker: one thread, low priority, and an end when the program ends."""
    for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
        os.environ.setdefault(name, "1")
    with contextlib.suppress(ValueError, OSError):
        # Ctrl+C reaches every process of a terminal: without a word, as the program itself ends.
        signal.signal(signal.SIGINT, signal.SIG_DFL)
    with contextlib.suppress(AttributeError, OSError):
        os.nice(5)
    Thread(target=_end_with_program, name="end with program", daemon=True).start()
    if then is not None:
        then()


def _end_with_program() -> None:
    """A worker whose program was killed would wait for work for ever."""
    program = multiprocessing.parent_process()
    if program is not None:
        program.join()
        os._exit(0)

"""A pool of processes that check pictures on this machine."""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import signal
from collections.abc import Callable
from concurrent.futures import Executor, ProcessPoolExecutor
from threading import Thread

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
        return ProcessPoolExecutor(
            self._workers,
            mp_context=multiprocessing.get_context("spawn"),
            initializer=_begin,
            initargs=(self._begin,),
        )


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

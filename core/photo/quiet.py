"""No chatter from the decoders: damage is told by our own sentence, or does not matter."""

from __future__ import annotations

import contextlib
import logging
import os
import threading
import warnings
from collections.abc import Iterator
from contextlib import contextmanager
from typing import Any

_lock = threading.Lock()
_depth = 0
_saved: Any = None
_stderr_lock = threading.Lock()


@contextmanager
def quiet() -> Iterator[None]:
    """No warnings and no log lines of Pillow and tifffile.

    Python's own `catch_warnings` restores the filters wrongly when two threads overlap in it,
    so the outermost of ours saves and restores them.
    """
    global _depth, _saved
    with _lock:
        if _depth == 0:
            _saved = warnings.catch_warnings()
            _saved.__enter__()
            warnings.simplefilter("ignore")
            for name in ("PIL", "tifffile"):
                logging.getLogger(name).setLevel(logging.CRITICAL + 1)
        _depth += 1
    try:
        yield
    finally:
        with _lock:
            _depth -= 1
            if _depth == 0:
                _saved.__exit__(None, None, None)


@contextmanager
def silent_stderr() -> Iterator[None]:
    """Nothing on the process's error channel: libtiff writes there from C.

    One thread at a time; where there is no such channel nothing needs to be done.
    """
    with _stderr_lock:
        try:
            kept = os.dup(2)
        except OSError:
            yield
            return
        try:
            nowhere = os.open(os.devnull, os.O_WRONLY)
            os.dup2(nowhere, 2)
            os.close(nowhere)
            yield
        finally:
            with contextlib.suppress(OSError):
                os.dup2(kept, 2)
            os.close(kept)

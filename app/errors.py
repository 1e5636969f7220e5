"""The one place that decides what a user is told when something fails.

`core` raises; slots, workers and paint events let it through; it ends here as one sentence in the
notice bar. A mistake of ours is logged whole, and the window stays.
"""

from __future__ import annotations

import logging
import sys
from collections.abc import Callable
from types import TracebackType

from core.errors import Cancelled, GradewashError
from core.i18n import translate

log = logging.getLogger(__name__)

Show = Callable[[str], None]


def sentence_of(error: BaseException) -> str:
    """What to tell the user about `error`: one sentence, and what to do."""
    if isinstance(error, GradewashError):
        return str(error)
    if isinstance(error, MemoryError):
        return translate(
            "errors", "There is not enough memory for this: close other programs and try again."
        )
    return translate(
        "errors",
        "Something went wrong inside the program. Your study is still open; "
        "if this happens again, please report what you did.",
    )


def install_hook(show: Show) -> None:
    """Send every exception that nobody caught (slots, paint events) to `show`.

    Parameters
    ----------
    show : callable
        Takes the sentence. It must not fail; if it does, that is logged.
    """

    def hook(kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt):
            sys.__excepthook__(kind, error, trace)
            return
        if isinstance(error, Cancelled):
            return
        if not isinstance(error, GradewashError):
            log.error("uncaught", exc_info=(kind, error, trace))
        try:
            show(sentence_of(error))
        except Exception:  # the hook is the last station: a failure here has nowhere to go
            log.exception("could not show an error")

    sys.excepthook = hook

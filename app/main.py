"""Where the program starts: a command goes to `core.cli`, anything else opens the window.

The photo's opening begins in a thread before Qt is even imported, so that reading the file and
starting the window take the time of the longer of the two.
"""

from __future__ import annotations

import gc
import sys
from collections.abc import Sequence
from concurrent.futures import Future
from pathlib import Path
from threading import Thread
from typing import TYPE_CHECKING

import core.cli
import sample_scenes
from app.screen import missing_to_draw, need_a_screen
from core.cli.layout import complain
from core.errors import UsageError

if TYPE_CHECKING:
    from core.study_file.opening import FromFile

COMMANDS = {
    "card": "app.cards.command",
    "swatches": "app.cards.swatches_command",
    "class": "app.cards.class_verbs",
}
"""Commands that draw, and so need Qt, if only for one verb; `core.cli` has the others."""


def main(argv: Sequence[str] | None = None) -> int:
    """Run the program.

    Parameters
    ----------
    argv : sequence of str, optional
        The arguments without the program's name; `sys.argv` otherwise.

    Returns
    -------
    int
        The exit status.
    """
    arguments = list(sys.argv[1:] if argv is None else argv)
    known = {*core.cli.COMMANDS, *COMMANDS}
    if arguments and (arguments[0] in known or _means_command(arguments)):
        return _run_command(arguments)
    path = Path(arguments[0]) if arguments else None
    try:
        need_a_screen()
    except UsageError as error:
        complain(str(error))
        return 2
    pause_collecting()
    sample = sample_scenes.DEFAULT if path is None else None
    early = open_early(path or sample_scenes.path(sample_scenes.DEFAULT))
    try:
        # deferred: start-up time - the photo is already being opened while Qt is imported
        from app.start import run_window
    except ImportError as error:
        return _cannot_draw(error)
    return run_window(early, path, sample)


def _run_command(arguments: Sequence[str]) -> int:
    try:
        return core.cli.run(arguments, COMMANDS)
    except ImportError as error:
        return _cannot_draw(error)


def _cannot_draw(error: ImportError) -> int:
    """Say which library of the system is missing; anything else is a fault of ours."""
    missing = missing_to_draw(error)
    if missing is None:
        raise error
    complain(str(missing))
    return 2


def _means_command(arguments: Sequence[str]) -> bool:
    """Whether this asks for a command, if one that does not exist: the command line says so.

    A photo or a study is one argument, with an ending or a folder, or there in this folder.
    """
    first = arguments[0]
    if first.startswith("-") or len(arguments) > 1:
        return True
    return first.isalpha() and not Path(first).exists()


def pause_collecting() -> None:
    """Keep Python's collector of circular references from running while the program starts.

    Nearly all that is made then stays, and going through it again and again takes 20 to 40 ms.
    `app.start` lets it run again once the bands are on the screen.
    """
    gc.disable()


def open_early(path: Path) -> Future[FromFile]:
    """Begin opening a photo or a study in a thread of its own."""
    # Not in the thread: two threads that import the same packages at once may find them half made.
    from core.study_file.opening import open_file  # deferred: commands do not need it

    future: Future[FromFile] = Future()

    def work() -> None:
        try:
            future.set_result(open_file(path))
        except Exception as error:  # handed on: the window shows it
            future.set_exception(error)

    Thread(target=work, name="first photo", daemon=True).start()
    return future


if __name__ == "__main__":
    sys.exit(main())

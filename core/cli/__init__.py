"""The command line without a window: one module a command.

A command's module has `add_arguments(parser)` and `run(args) -> int`; it is imported only when
it is called. A new command is one line in `COMMANDS`.

May import everything of `core`; `app.main` imports it.
"""

from __future__ import annotations

import contextlib
import errno
import os
import sys
from collections.abc import Mapping, Sequence
from importlib import import_module
from pathlib import Path

from core.cli.layout import complain
from core.cli.parser import Parser
from core.errors import GradewashError, UsageError
from core.file_sentences import why_not_read
from core.i18n import translate
from core.version import program_version

COMMANDS: dict[str, str] = {
    "new": "core.cli.new",
    "show": "core.cli.show",
    "read": "core.cli.read",
    "mix": "core.cli.mix",
    "choose": "core.cli.choose",
    "check": "core.cli.check",
    "scrap": "core.cli.scrap",
    "paints": "core.cli.paints",
    "class": "core.cli.class_set",
}
"""The module of each command."""


def run(argv: Sequence[str], extra: Mapping[str, str] | None = None) -> int:
    """Run one command.

    Parameters
    ----------
    argv : sequence of str
        The command's name and its arguments, without the program's.
    extra : mapping, optional
        Further commands and their modules, which `core` itself may not know.

    Returns
    -------
    int
        What the process should exit with: 0; 2 after an error, which stands on stderr
        in one line; 130 when interrupted.
    """
    _prepare_output()
    try:
        code = _run(list(argv), {**COMMANDS, **(extra or {})})
        sys.stdout.flush()
        return code
    except GradewashError as error:
        complain(str(error))
        return 2
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:
        # Whoever read our output has seen enough (`gradewash read sky.jpg | head -1`).
        _drop_output()
        return 0
    except OSError as error:
        if error.errno == errno.ENAMETOOLONG:  # wherever a name was first tried
            complain(why_not_read(Path(), error))
            return 2
        if error.errno not in _OUTPUT_FAILED:
            raise
        _drop_output()
        complain(
            translate(
                "command line",
                "Not all could be written out, because the output is closed or full. A file that "
                "was to be saved is saved.",
            )
        )
        return 2
    except MemoryError:
        complain(
            translate(
                "command line",
                "There is not enough memory for this: close other programs and try again.",
            )
        )
        return 2


_OUTPUT_FAILED = (errno.ENOSPC, errno.EDQUOT, errno.EFBIG, errno.EBADF, errno.EIO, errno.EINVAL)


def _prepare_output() -> None:
    """Make sure that there is an output, and that no character stops it."""
    if sys.stdout is None:
        # Whoever started us closed it. Its number must not be taken by a file that is opened
        # next; what is written there fails, and that is then told.
        handle = os.open(os.devnull, os.O_RDONLY)
        if handle != 1:
            os.dup2(handle, 1)
        sys.stdout = os.fdopen(1, "w", closefd=False)
    if hasattr(sys.stdout, "reconfigure"):
        # A terminal that lacks a character shows another; it is no reason to stop.
        sys.stdout.reconfigure(errors="replace")


def _drop_output() -> None:
    # Python would complain once more while closing it.
    with contextlib.suppress(OSError, ValueError):
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())


def _run(argv: list[str], commands: Mapping[str, str]) -> int:
    if not argv or argv[0] in ("-h", "--help"):
        print(_overview(commands))
        return 0
    if argv[0] == "--version":
        print(f"gradewash {program_version()}")
        return 0
    name, *rest = argv
    if name not in commands:
        raise UsageError(
            translate("command line", "There is no command {name}: use one of {names}.").format(
                name=name, names=", ".join(commands)
            )
        )
    _refuse_empty(rest)
    module = import_module(commands[name])
    parser = Parser(prog=f"gradewash {name}")
    module.add_arguments(parser)
    try:
        args = parser.parse_args(rest)
    except SystemExit:  # after --help
        return 0
    return int(module.run(args))


def _refuse_empty(arguments: Sequence[str]) -> None:
    """An empty name would stand for the folder that one is in, which nobody means by it."""
    if "" not in arguments:
        return
    before = arguments[arguments.index("") - 1] if arguments[0] else ""
    if before in ("-o", "--output"):
        return  # says so itself
    if before.startswith("-"):
        text = translate("command line", "{option} needs a value: give it one, or leave it out.")
        raise UsageError(text.format(option=before))
    raise UsageError(translate("command line", "An empty name means no file and no folder."))


def _overview(commands: Mapping[str, str]) -> str:
    """What `gradewash --help` prints: every command with what it does."""
    does = {
        "new": translate("command line", "begin a study with a sky photo"),
        "show": translate("command line", "tell what is in a study"),
        "read": translate("command line", "read a sky photo in bands: hue, value, intensity"),
        "mix": translate("command line", "plan the mixes for a sky from the paints of a box"),
        "choose": translate("command line", "see what each sky of a folder has to teach"),
        "check": translate("command line", "check painted sheets against the photo"),
        "scrap": translate("command line", "hold dried strokes against the bands: what to add"),
        "paints": translate("command line", "read a painted swatch card into a box"),
        "swatches": translate("command line", "print a card for the class's own paints"),
        "class": translate("command line", "keep, check and mark the sheets of a whole class"),
        "card": translate("command line", "print a plan, a worksheet or findings as a PDF"),
    }
    width = max(map(len, commands))
    lines = [
        translate("command line", "usage: gradewash [PHOTO|STUDY]   open the window"),
        translate("command line", "       gradewash COMMAND ...     do one thing without a window"),
        "",
        translate("command line", "Commands:"),
        *(f"  {name:<{width}}  {does[name]}" for name in commands),
        "",
        translate("command line", "gradewash COMMAND --help tells more about one of them."),
    ]
    return "\n".join(lines)

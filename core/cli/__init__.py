"""The command line without a window: one module a command.

A command's module has `add_arguments(parser)` and `run(args) -> int`; it is imported only when
it is called. A new command is one line in `COMMANDS`.
"""

from __future__ import annotations

import argparse
import os
import sys
from collections.abc import Mapping, Sequence
from importlib import import_module
from typing import NoReturn

from core.errors import GradewashError, UsageError
from core.i18n import translate

COMMANDS: dict[str, str] = {
    "new": "core.cli.new",
    "show": "core.cli.show",
    "read": "core.cli.read",
    "mix": "core.cli.mix",
    "check": "core.cli.check",
}
"""The module of each command."""


class _Parser(argparse.ArgumentParser):
    """Says what is wrong in one line instead of printing how it is used."""

    def error(self, message: str) -> NoReturn:
        raise UsageError(
            translate("command line", "{message} (see {command} --help)").format(
                message=message, command=self.prog
            )
        )


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
    if hasattr(sys.stdout, "reconfigure"):
        # A terminal that lacks a character shows another; it is no reason to stop.
        sys.stdout.reconfigure(errors="replace")
    try:
        code = _run(list(argv), {**COMMANDS, **(extra or {})})
        sys.stdout.flush()
        return code
    except GradewashError as error:
        print(f"gradewash: {' '.join(str(error).split())}", file=sys.stderr)
        return 2
    except KeyboardInterrupt:
        return 130
    except BrokenPipeError:
        # Whoever read our output has seen enough (`gradewash read sky.jpg | head -1`).
        # Python would complain once more while closing stdout.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return 0


def _run(argv: list[str], commands: Mapping[str, str]) -> int:
    names = ", ".join(commands)
    if not argv or argv[0] in ("-h", "--help"):
        print(
            translate("command line", "usage: gradewash COMMAND ...  or  gradewash [PHOTO|STUDY]")
        )
        print(translate("command line", "Commands: {names}.").format(names=names))
        print(translate("command line", "gradewash COMMAND --help tells more about one."))
        return 0
    name, *rest = argv
    if name not in commands:
        raise UsageError(
            translate("command line", "There is no command {name}: use one of {names}.").format(
                name=name, names=names
            )
        )
    module = import_module(commands[name])
    parser = _Parser(prog=f"gradewash {name}")
    module.add_arguments(parser)
    try:
        args = parser.parse_args(rest)
    except SystemExit:  # after --help
        return 0
    return int(module.run(args))

"""The command line's parser: errors in one plain line, and no usage printed with them."""

from __future__ import annotations

import argparse
import re
from typing import NoReturn

from core.errors import UsageError
from core.i18n import translate


class Parser(argparse.ArgumentParser):
    """Says what is wrong in one line instead of printing how it is used."""

    def error(self, message: str) -> NoReturn:
        raise UsageError(
            translate("command line", "{message} (see {command} --help)").format(
                message=_plain(message), command=self.prog
            )
        )


def _plain(message: str) -> str:
    """What argparse says, in our words; as it is where we have none."""
    if found := re.fullmatch(r"the following arguments are required: (.*)", message):
        names = found[1].replace("-o/--output", "-o FILE")
        return translate("command line", "Missing: {names}").format(names=names)
    if found := re.fullmatch(r"unrecognized arguments: (.*)", message):
        return translate("command line", "Not understood: {names}").format(names=found[1])
    if found := re.fullmatch(r"argument (?:-\w/)?(--[\w-]+)\S*: expected one argument", message):
        return translate(
            "command line",
            "{option} needs a value after it; one that begins with - is written {option}=-1",
        ).format(option=found[1])
    return message

"""Remove a class set: what it wrote, and nothing else."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from core.class_set.deleting import delete_class_set, written_by
from core.cli.class_set.common import add_folder, count_text
from core.cli.layout import say
from core.file_sentences import shown_name
from core.i18n import translate
from core.places import data_folder


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class delete`."""
    add_folder(parser)
    parser.add_argument(
        "--yes", action="store_true", help=translate("command line", "do not ask first")
    )


def run(args: argparse.Namespace) -> int:
    """Name what goes, ask where somebody can answer, remove it."""
    folder = Path(args.folder)
    ours = written_by(folder)
    pictures = count_text(
        translate("command line", "{n} picture"),
        translate("command line", "{n} pictures"),
        len(ours.pictures),
    )
    say(
        translate(
            "command line",
            "{name}: {pictures} with what was found on them, and all marks and remarks.",
        ).format(name=shown_name(folder), pictures=pictures)
    )
    if not args.yes and sys.stdin is not None and sys.stdin.isatty():
        question = translate("command line", "Remove them for good? Type yes: ")
        if input(question).strip().casefold() not in ("yes", "y", "sí", "si"):
            say(translate("command line", "Nothing was removed."))
            return 0
    delete_class_set(folder, data_folder())
    left = sorted(each.name for each in folder.iterdir())
    if left:
        say(
            translate(
                "command line", "Removed. Other things in the folder were left: {names}."
            ).format(names=", ".join(left[:5]))
        )
    else:
        say(translate("command line", "Removed; the folder is empty."))
    say(
        translate(
            "command line", "Backups, and the phone the pictures came from, keep their own copies."
        )
    )
    return 0

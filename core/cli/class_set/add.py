"""Bring pictures, studies or whole folders into a class set."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path

from core.class_set.bringing import Told, bring_in, files_in
from core.class_set.folder import ClassFolder
from core.cli.class_set.common import (
    add_folder,
    count_text,
    opened,
    say_missing,
    say_questions,
    sorted_now,
)
from core.cli.layout import say
from core.errors import UsageError
from core.i18n import translate


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class add`."""
    add_folder(parser)
    parser.add_argument(
        "source",
        metavar="PICTURE|STUDY|FOLDER",
        nargs="+",
        help=translate("command line", "pictures, studies handed in, or folders of them"),
    )
    parser.add_argument(
        "--order",
        metavar="time|name",
        default="time",
        help=translate(
            "command line",
            "what tells the order they were taken in: the time in the pictures (the default), or "
            "their names",
        ),
    )


def run(args: argparse.Namespace) -> int:
    """Bring them in one by one; each is safe once its line is printed."""
    if args.order not in ("time", "name"):
        raise UsageError(
            translate("command line", "--order {text} is not known: use time or name.").format(
                text=args.order
            )
        )
    files = files_in([Path(each) for each in args.source])
    added, wrong, seen = 0, 0, 0
    with opened(args) as folder:
        for told in bring_in(folder, files, args.order):
            if told.sentence:
                wrong += 1
                line = told.sentence
                if told.name not in line:
                    line = f"{told.name}: {line}"
                say(f"! {line}")
            elif told.added:
                added += told.added
                say(f"+ {_named(told, folder)}")
                sys.stdout.flush()
            else:
                seen += 1
        found = sorted_now(folder.path, folder.class_set)
        placed = len(found.placement.places)
        parts = [
            count_text(
                translate("command line", "{n} picture is new."),
                translate("command line", "{n} pictures are new."),
                added,
            )
        ]
        if seen:
            parts.append(
                count_text(
                    translate("command line", "{n} was there already."),
                    translate("command line", "{n} were there already."),
                    seen,
                )
            )
        parts.append(
            translate("command line", "{placed} of {all} pictures have found their place.").format(
                placed=placed, all=len(folder.class_set.brought)
            )
        )
        say(" ".join(parts))
        say_missing(folder.missing)
        say_questions(folder.class_set, found)
    return 2 if wrong and not added and not seen else 0


def _named(told: Told, folder: ClassFolder) -> str:
    """A file by its own name, and by the class set's where that is another."""
    names = {each.digest: each.picture.name for each in folder.class_set.brought}
    kept = names.get(told.digest, told.name)
    if kept == told.name:
        return told.name
    return translate("command line", "{name}, kept as {kept}").format(name=told.name, kept=kept)

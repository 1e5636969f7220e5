"""What the verbs share: opening the folder, saying a place, telling what is to be placed."""

from __future__ import annotations

import argparse
from collections.abc import Sequence
from pathlib import Path

from core.class_set.folder import ClassFolder, open_folder
from core.class_set.kept_checks import found_checks
from core.class_set.model import ClassSet
from core.class_set.place_text import place_typed
from core.class_set.questions import Sorted, shown_slot, sort_pictures
from core.class_set.ticket import Slot
from core.cli.layout import say
from core.errors import GradewashError, UsageError
from core.i18n import translate
from core.photo import strip_private
from core.pictures import digest_of
from core.places import data_folder


def add_folder(parser: argparse.ArgumentParser) -> None:
    """The argument every verb begins with."""
    parser.add_argument(
        "folder", metavar="FOLDER", help=translate("command line", "the class set's folder")
    )


def opened(args: argparse.Namespace) -> ClassFolder:
    """The class set's folder, held."""
    return open_folder(Path(args.folder), data_folder())


def slot_of(text: str, class_set: ClassSet) -> Slot:
    """A place as it is written: `14/1` for a sheet, `14/w1` for a worksheet page.

    Raises
    ------
    UsageError
        It is none.
    ClassSetError
        No student has the code.
    """
    slot = place_typed(text, class_set.class_list)
    if slot is None:
        raise UsageError(
            translate(
                "command line",
                "{text} is not a place: write 14/1 for the first sheet of student 14, 14/w1 for "
                "the worksheet page about it, or aside.",
            ).format(text=text)
        )
    return slot


def picture_meant(text: str, folder: ClassFolder) -> str:
    """The digest of the picture that a name, the picture's file, or the start of a digest means.

    Raises
    ------
    UsageError
        None, or several.
    """
    brought = folder.class_set.brought
    path = Path(text)
    if path.is_file():
        try:
            digest = digest_of(strip_private(path.read_bytes()))
        except (OSError, GradewashError):
            digest = ""
        if any(each.digest == digest for each in brought):
            return digest
    named = [each.digest for each in brought if each.picture.name == path.name]
    begun = [each.digest for each in brought if len(text) >= 6 and each.digest.startswith(text)]
    found = named or begun
    if len(found) == 1:
        return found[0]
    if found:
        raise UsageError(
            translate(
                "command line",
                "{n} pictures are called {name}: give the picture's own file, or the start of its "
                "digest from gradewash class show --json.",
            ).format(n=len(found), name=path.name)
        )
    raise UsageError(
        translate(
            "command line",
            "There is no picture {name} in this class set: gradewash class show lists those to "
            "place.",
        ).format(name=path.name)
    )


def say_questions(class_set: ClassSet, found: Sorted) -> None:
    """What is to be placed or looked at, one line each."""
    for question in found.questions:
        name = class_set.picture(question.digest).picture.name
        say(f"> {name}: {question.sentence}")


def say_missing(missing: Sequence[str]) -> None:
    """The pictures that are gone from the folder."""
    for name in missing:
        say(
            translate(
                "command line",
                "{name} is gone from the folder: bring it in again with gradewash class add.",
            ).format(name=name)
        )


def sorted_now(folder: Path, class_set: ClassSet) -> Sorted:
    """Where the pictures are, with whatever was checked."""
    return sort_pictures(class_set, found_checks(folder, class_set))


def count_text(one: str, more: str, n: int) -> str:
    """The text for one or for more, with its number."""
    return (one if n == 1 else more).format(n=n)


__all__ = [
    "add_folder",
    "count_text",
    "opened",
    "picture_meant",
    "say_missing",
    "say_questions",
    "shown_slot",
    "slot_of",
    "sorted_now",
]

"""Say whose a picture is, or put it aside."""

from __future__ import annotations

import argparse

from core.class_set import edits
from core.class_set.questions import shown_slot
from core.cli.class_set.common import add_folder, opened, picture_meant, slot_of
from core.cli.layout import say
from core.i18n import translate


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class place`."""
    add_folder(parser)
    parser.add_argument(
        "picture",
        metavar="PICTURE",
        help=translate("command line", "its name, as gradewash class show gives it, or its file"),
    )
    parser.add_argument(
        "place",
        metavar="14/1|14/w1|aside|auto",
        help=translate(
            "command line",
            "student and sheet; w before the number for the worksheet page; aside for a picture "
            "that has no place; auto to let its ticket decide again",
        ),
    )


def run(args: argparse.Namespace) -> int:
    """Put it there and keep that."""
    with opened(args) as folder:
        class_set = folder.class_set
        digest = picture_meant(args.picture, folder)
        name = class_set.picture(digest).picture.name
        word = args.place.strip().lower()
        if word == "aside":
            folder.save(edits.lay_aside(class_set, digest))
            say(translate("command line", "{name} is laid aside.").format(name=name))
        elif word == "auto":
            folder.save(edits.let_decide(class_set, digest))
            say(translate("command line", "The ticket of {name} decides again.").format(name=name))
        else:
            slot = slot_of(args.place, class_set)
            folder.save(edits.place(class_set, digest, slot))
            say(
                translate("command line", "{name} is at {place}.").format(
                    name=name, place=shown_slot(slot, class_set)
                )
            )
    return 0

"""Begin a study with a photo and its lines, without a window."""

from __future__ import annotations

import argparse
from pathlib import Path

from core.cli import read
from core.cli.layout import say
from core.cli.opening import naming
from core.errors import UsageError
from core.i18n import translate
from core.pictures import PictureStore
from core.reading.wording import Wording
from core.study import study_of, with_title
from core.study_file.document import study_to_bytes
from core.study_file.opening import SUFFIX, open_file
from core.study_file.save import write_bytes
from core.words import band_sentence


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash new`."""
    parser.description = translate(
        "command line", "Begin a study: the photo with its lines, in one file."
    )
    parser.add_argument("photo", metavar="PHOTO", help=translate("command line", "the sky photo"))
    parser.add_argument(
        "-o",
        "--output",
        metavar="FILE",
        help=translate("command line", "the study to write; otherwise named as the photo, here"),
    )
    parser.add_argument(
        "--title",
        metavar="TEXT",
        help=translate("command line", "the title; otherwise made from the photo's name"),
    )
    parser.add_argument(
        "--force",
        action="store_true",
        help=translate("command line", "replace a file that is there already"),
    )
    read.add_line_arguments(parser)


def run(args: argparse.Namespace) -> int:
    """Read the photo, write the study, say what is in it."""
    source = Path(args.photo)
    target = _target(args.output, source)
    if target.exists() and not args.force:
        raise UsageError(
            translate(
                "command line",
                "{name} is there already: choose another name with -o, or replace it with --force.",
            ).format(name=target.name)
        )
    if not target.parent.is_dir():
        raise UsageError(
            translate(
                "command line",
                "There is no folder {name}: make it first, or choose another by -o.",
            ).format(name=target.parent)
        )
    with naming(source.name):
        found = open_file(source)
    if found.study is not None:
        raise UsageError(
            translate("command line", "{name} is a study already: begin one with a photo.").format(
                name=source.name
            )
        )
    report = read.read_file(found, args)
    store = PictureStore()
    if found.data is None:
        raise UsageError(
            translate(
                "command line", "{name} is too large to keep in a study: take a smaller copy of it."
            ).format(name=source.name)
        )
    study = study_of(store.add(source.name, found.data), report.sky.bands)
    if args.title is not None:
        study = with_title(study, args.title)
    write_bytes(target, study_to_bytes(study, store))
    for notice in report.notices:
        say(notice)
    for reading in report.sky.readings:
        say(band_sentence(reading, Wording()))
    say(translate("command line", "Saved {name}.").format(name=target.name))
    return 0


def _target(asked: str | None, source: Path) -> Path:
    """Where the study goes; a name without an ending gets ours."""
    path = Path(source.with_suffix(SUFFIX).name if asked is None else asked)
    return path if path.suffix else path.with_suffix(SUFFIX)

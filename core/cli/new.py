"""Begin a study with a photo and its lines, without a window."""

from __future__ import annotations

import argparse
from collections.abc import Mapping
from pathlib import Path

from core.cli import read
from core.cli.layout import say
from core.cli.opening import opened
from core.cli.output import output_path
from core.errors import UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.pictures import PictureStore, may_name_somebody, not_kept_sentence
from core.reading.wording import Wording
from core.study import (
    MOST_TITLE,
    Study,
    digests_of,
    study_of,
    with_bands,
    with_title,
    without_work,
)
from core.study_file.document import study_to_bytes
from core.study_file.opening import SUFFIX, FromFile
from core.study_file.save import write_bytes
from core.words import band_sentence


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash new`."""
    parser.description = translate(
        "command line", "Begin a study: the photo with its lines, in one file."
    )
    parser.add_argument(
        "photo",
        metavar="PHOTO|STUDY",
        help=translate(
            "command line",
            "the sky photo, or a study for a new lesson from it: photo, lines, paints and mixes "
            "stay, the student's work is left out",
        ),
    )
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
    title = None if args.title is None else _title(args.title)
    if not source.is_file():
        opened(source)  # says what is wrong with it
    asked = source.with_suffix(SUFFIX).name if args.output is None else args.output
    target = output_path(asked, source, SUFFIX, replace=args.force)
    found = opened(source)
    report = read.read_file(found, args)
    name = shown_name(source)
    study, store = _begun(found, name)
    study = with_bands(study, report.sky.bands)
    if title is not None:
        study = with_title(study, title)
    # Saved before anything is said: whoever reads that may go away.
    write_bytes(target, study_to_bytes(study, store))
    for notice in report.notices:
        say(notice)
    for reading in report.sky.readings:
        say(band_sentence(reading, Wording()))
    if found.study is None and may_name_somebody(name):
        say(not_kept_sentence(name))
    say(translate("command line", "Saved {name}.").format(name=shown_name(target)))
    return 0


def _begun(found: FromFile, name: str) -> tuple[Study, Mapping[str, bytes]]:
    """The study without anybody's work, and the bytes of its photo."""
    if found.study is not None:
        study = without_work(found.study.study)
        wanted = digests_of(study)
        return study, {key: found.study.pictures[key] for key in wanted}
    store = PictureStore()
    if found.data is None:
        raise UsageError(
            translate(
                "command line", "{name} is too large to keep in a study: take a smaller copy of it."
            ).format(name=name)
        )
    return study_of(store.add(name, found.data)), store


def _title(text: str) -> str:
    title = " ".join(text.split())
    if not title or len(title) > MOST_TITLE:
        raise UsageError(
            translate(
                "command line", "--title needs a text of 1 to {most} letters: give such a one."
            ).format(most=MOST_TITLE)
        )
    return title

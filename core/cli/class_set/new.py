"""Begin a class set: a photo with its lines, and a list of codes."""

from __future__ import annotations

import argparse
from pathlib import Path

from core.class_set.folder import create_folder, holds_class_set, read_class_set, read_picture
from core.class_set.model import ClassSet, new_class_set
from core.class_set.next_lesson import begin_next_lesson, next_lesson
from core.class_set.students import (
    ClassList,
    class_list_of,
    codes_from,
    turned_by_spreadsheets,
)
from core.cli import read
from core.cli.class_set.common import add_folder, count_text
from core.cli.layout import say
from core.cli.opening import opened
from core.errors import UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.pictures import PictureStore
from core.places import data_folder
from core.study import Study, study_of, with_bands, without_work


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class new`."""
    add_folder(parser)
    parser.add_argument(
        "--from",
        dest="source",
        metavar="FOLDER",
        help=translate(
            "command line",
            "a new lesson from another class set: its photo, lines, paints and mixes, and its "
            "class unless --codes names another; the students' work is left out",
        ),
    )
    parser.add_argument(
        "--photo",
        metavar="PHOTO|STUDY|FOLDER",
        help=translate(
            "command line",
            "the sky photo, a study with its lines and paints, or another class set: its photo, "
            "lines and paints, without its students' work",
        ),
    )
    parser.add_argument(
        "--codes",
        metavar="01-30|FILE|FOLDER",
        help=translate(
            "command line",
            "a code for each student: a range, a list with commas, a file with one a line, or "
            "another class set, whose tickets then serve again",
        ),
    )
    parser.add_argument(
        "--class",
        dest="title",
        metavar="TEXT",
        help=translate("command line", "what the class is called, such as 7b"),
    )
    parser.add_argument(
        "--names",
        action="store_true",
        help=translate("command line", "take codes that look like names all the same"),
    )
    read.add_line_arguments(parser)


def run(args: argparse.Namespace) -> int:
    """Make the folder, say what is in it."""
    folder = Path(args.folder)
    _refuse_halves(args)
    if folder.exists() and not folder.is_dir():
        raise UsageError(
            translate("command line", "{name} is not a folder: give one for the class set.").format(
                name=shown_name(folder)
            )
        )
    notices: tuple[str, ...] = ()
    if args.source is not None:
        class_set = _next(Path(args.source), folder, args)
    else:
        class_list = _class_list(args.codes, names=args.names)
        exercise, photo, notices = _exercise(args)
        class_set = new_class_set(args.title or "", class_list, exercise)
        create_folder(folder, class_set, photo, data_folder()).close()
    class_list, exercise = class_set.class_list, class_set.exercise
    for notice in notices:
        say(notice)
    students = count_text(
        translate("command line", "{n} student"),
        translate("command line", "{n} students"),
        len(class_list.students),
    )
    bands = count_text(
        translate("command line", "{n} band"),
        translate("command line", "{n} bands"),
        0 if exercise.bands is None else exercise.bands.count,
    )
    say(
        translate(
            "command line",
            "Made {folder}: {students}, {bands}. Print the tickets with gradewash card {folder} "
            "--kind tickets -o tickets.pdf, then bring in pictures with gradewash class add.",
        ).format(folder=shown_name(folder), students=students, bands=bands)
    )
    _warn(class_list)
    return 0


def _refuse_halves(args: argparse.Namespace) -> None:
    """--from stands alone; without it both photo and codes are needed."""
    if args.source is None:
        missing = [
            name
            for name, value in (("--photo", args.photo), ("--codes", args.codes))
            if value is None
        ]
        if missing:
            raise UsageError(
                translate("command line", "Missing: {names}").format(names=", ".join(missing))
            )
    elif args.photo is not None or read.has_line_arguments(args):
        raise UsageError(
            translate(
                "command line",
                "--from brings photo and lines along: leave --photo, --bands, --lines and "
                "--horizon out.",
            )
        )


def _next(source: Path, folder: Path, args: argparse.Namespace) -> ClassSet:
    """The next lesson of a class set, its folder made."""
    before = read_class_set(source)
    class_list = None if args.codes is None else _class_list(args.codes, names=args.names)
    class_set = next_lesson(before, class_list, args.title)
    begin_next_lesson(source, class_set, folder, data_folder()).close()
    return class_set


def _exercise(args: argparse.Namespace) -> tuple[Study, bytes, tuple[str, ...]]:
    """What all share, the bytes of its photo, and what is to be said of it.

    One student's sheets and words stay out of it.
    """
    source = Path(args.photo)
    if source.is_dir() and holds_class_set(source):
        exercise = read_class_set(source).exercise
        assert exercise.photo is not None, "a class set has a photo"
        return exercise, read_picture(source, exercise.photo.digest), ()
    found = opened(source)
    report = read.read_file(found, args)
    if found.study is not None:
        study = found.study.study
        assert study.photo is not None, "read_file refuses a study without a photo"
        photo = found.study.pictures[study.photo.digest]
    elif found.data is None:
        raise UsageError(
            translate(
                "command line", "{name} is too large to keep in a study: take a smaller copy of it."
            ).format(name=shown_name(source))
        )
    else:
        store = PictureStore()
        picture = store.add(shown_name(source), found.data)
        study, photo = study_of(picture), store[picture.digest]
    exercise = without_work(with_bands(study, report.sky.bands))
    return exercise, photo, report.notices


def _class_list(codes: str, *, names: bool) -> ClassList:
    other = Path(codes)
    if other.is_dir() and holds_class_set(other):
        return read_class_set(other).class_list
    return class_list_of(codes_from(codes), names_too=names)


def _warn(class_list: ClassList) -> None:
    turned = [each.code for each in class_list.students if turned_by_spreadsheets(each.code)]
    # Numbers with a nought before them are the common case, and lose only the nought.
    odd = [code for code in turned if not code.isdecimal()]
    if odd:
        say(
            translate(
                "command line",
                "A spreadsheet that opens a CSV file makes a date or a number of {codes}: write "
                "the mark list as XLSX.",
            ).format(codes=", ".join(odd[:3]))
        )

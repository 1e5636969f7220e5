"""Write a study for each student, to be given out and handed in again."""

from __future__ import annotations

import argparse
from pathlib import Path

from core.class_set.studies import file_stem, study_bytes
from core.cli.class_set.common import add_folder, count_text, opened
from core.cli.layout import say
from core.errors import ClassSetError, UsageError
from core.file_sentences import why_not_written
from core.i18n import translate
from core.study_file.opening import SUFFIX
from core.study_file.save import write_bytes


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class studies`."""
    add_folder(parser)
    parser.add_argument(
        "-o",
        "--output",
        metavar="FOLDER",
        required=True,
        help=translate("command line", "where the studies go; made if it is not there"),
    )
    parser.add_argument(
        "--force",
        action="store_true",
        help=translate("command line", "replace studies that are there already"),
    )


def run(args: argparse.Namespace) -> int:
    """One file a student, named by the code."""
    output = Path(args.output)
    with opened(args) as folder:
        targets = {
            student.number: output / f"{file_stem(student.code, student.number)}{SUFFIX}"
            for student in folder.class_set.students
        }
        there = [target.name for target in targets.values() if target.exists()]
        if there and not args.force:
            raise UsageError(
                translate(
                    "command line",
                    "{name} is there already: choose another folder with -o, or replace it with "
                    "--force.",
                ).format(name=there[0])
            )
        try:
            output.mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise ClassSetError(why_not_written(output, error)) from error
        for number, target in targets.items():
            write_bytes(target, study_bytes(folder, number))
    say(
        count_text(
            translate("command line", "Wrote {n} study."),
            translate("command line", "Wrote {n} studies."),
            len(targets),
        )
    )
    return 0

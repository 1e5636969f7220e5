"""Plan the mixes for a sky photo: parts, strength, toning down, meetings, amounts and order."""

from __future__ import annotations

import argparse
import json
from dataclasses import replace
from pathlib import Path

from core.cli import read
from core.cli.layout import say
from core.cli.mix_report import plan_as_json, plan_in_words
from core.cli.report import report_as_json
from core.errors import UsageError
from core.i18n import translate
from core.paint.box.box import DEFAULT_BOX, GENERIC_BOXES, Box
from core.paint.box.box_file import open_box
from core.paint.options import MixOptions
from core.paint.wash.amounts import SHEETS
from core.pipeline import plan_sky


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash mix`: those of `read`, a box and a sheet."""
    read.add_arguments(parser)
    parser.description = translate(
        "command line", "Plan the mixes for a sky photo from the paints of a box."
    )
    parser.add_argument(
        "--box",
        metavar="NAME|FILE",
        help=translate(
            "command line",
            "the paints: school (a set of twelve), primary (six), measured (thirteen), or a box "
            "file; otherwise those of the study",
        ),
    )
    parser.add_argument(
        "--sheet",
        metavar="SIZE",
        help=translate(
            "command line", "the paper: {names}; otherwise as in the study, or A4"
        ).format(names=", ".join(SHEETS)),
    )


def run(args: argparse.Namespace) -> int:
    """Read the photo, plan its mixes, print the plan."""
    box = find_box(args.box)
    sheet = None if args.sheet is None else SHEETS[sheet_name(args.sheet)]
    report = read.read_as_asked(args)
    options = MixOptions(sheet=sheet or SHEETS["A4"])
    if report.study is not None and args.box is None:
        # With another box the wishes for single bands would not hold.
        box, options = report.study.box, report.study.mix
        if sheet is not None:
            options = replace(options, sheet=sheet)
    plan = plan_sky(report.sky, box, options)
    if args.json:
        whole = plan_as_json(report_as_json(report), plan)
        print(json.dumps(whole, indent=2, ensure_ascii=False))
    else:
        say(plan_in_words(report, plan))
    return 0


def find_box(asked: str | None) -> Box:
    """A box by its short name, or from a file.

    Raises
    ------
    BoxError
        The file is no box.
    UsageError
        Neither a name nor a file.
    """
    if asked is None:
        return DEFAULT_BOX
    if asked in GENERIC_BOXES:
        return GENERIC_BOXES[asked]
    path = Path(asked)
    if path.exists() or path.suffix:
        return open_box(path)
    raise UsageError(
        translate("command line", "There is no box {name}: use {names}, or a box file.").format(
            name=asked, names=", ".join(GENERIC_BOXES)
        )
    )


def sheet_name(asked: str) -> str:
    """The name of a paper size as the plan knows it.

    Raises
    ------
    UsageError
        There is no such size.
    """
    for name in SHEETS:
        if name.lower() == asked.strip().lower():
            return name
    raise UsageError(
        translate("command line", "There is no sheet size {name}: use {names}.").format(
            name=asked, names=", ".join(SHEETS)
        )
    )

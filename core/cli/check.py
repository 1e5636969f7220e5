"""Check painted sheets against a sky photo: findings in words, or everything as JSON."""

from __future__ import annotations

import argparse
import json
from dataclasses import replace
from pathlib import Path

from core.cli import read
from core.cli.check_json import checks_as_json
from core.cli.check_report import CheckReport, checks_in_words
from core.cli.check_terminal import AS_FOUND, for_terminal
from core.cli.corners import corners_from, turned_from
from core.cli.layout import say, terminal_width
from core.cli.mix import find_box, sheet_name
from core.cli.opening import naming
from core.cli.report import Report
from core.errors import UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.paint.options import MixOptions
from core.paint.wash.amounts import SHEETS
from core.photo import Photo, open_photo
from core.pipeline import change_between, plan_sky, reference_of
from core.reading.quality import CHANGES, ChangeFirst
from core.reading.units import Units
from core.sheet import check_sheet
from core.sheet.findings.findings import in_plan_terms
from core.sheet.findings.planned import Planned
from core.sheet.options import SheetOptions

_INCHES = ("letter", "quarter imperial")
"""Papers whose lengths are told in inches."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash check`."""
    parser.description = translate(
        "command line",
        "Check one or two painted sheets against a sky photo: hue, value, intensity, placement, "
        "edges, and what to try next.",
    )
    parser.add_argument(
        "photo",
        metavar="PHOTO|STUDY",
        help=translate("command line", "the sky photo, or a study with its lines"),
    )
    parser.add_argument(
        "sheet",
        metavar="SHEET",
        help=translate("command line", "a photo or scan of the painted sheet"),
    )
    parser.add_argument(
        "sheet2",
        metavar="SHEET2",
        nargs="?",
        help=translate("command line", "the second sheet, to be compared with the first"),
    )
    read.add_line_arguments(parser)
    parser.add_argument(
        "--corners",
        metavar="X,Y,...|auto",
        action="append",
        help=translate(
            "command line",
            "the painting's corners by hand, eight numbers in pixels: top left, top right, "
            "bottom right, bottom left; once for each sheet, auto where they are found",
        ),
    )
    parser.add_argument(
        "--turned",
        metavar="N",
        action="append",
        help=translate(
            "command line",
            "quarter turns clockwise that bring a sheet upright, 0 to 3; once for each sheet",
        ),
    )
    parser.add_argument(
        "--box",
        metavar="NAME|FILE",
        help=translate(
            "command line",
            "the paints the sheets were mixed from, as for mix: cures then name the planned "
            "mixes; otherwise those of the study",
        ),
    )
    parser.add_argument(
        "--sheet",
        dest="sheet_size",
        metavar="SIZE",
        help=translate(
            "command line",
            "the paper, so that lines are told in lengths too: {names}; otherwise as in the study",
        ).format(names=", ".join(SHEETS)),
    )
    parser.add_argument(
        "--scan",
        action="store_true",
        help=translate("command line", "the sheets are flat scans: smaller differences count"),
    )
    parser.add_argument(
        "--changed",
        metavar="WHAT",
        help=translate("command line", "what was to change on the second sheet: {names}").format(
            names=", ".join(CHANGES)
        ),
    )
    parser.add_argument(
        "--scores",
        action="store_true",
        help=translate(
            "command line", "print the scores too: the student's own scores should come first"
        ),
    )
    parser.add_argument(
        "--json", action="store_true", help=translate("command line", "print JSON instead of words")
    )


def run(args: argparse.Namespace) -> int:
    """Read the photo, check the sheets, print what was found."""
    intended = _intended(args)
    report = read.read_as_asked(args)
    sheets = [args.sheet] if args.sheet2 is None else [args.sheet, args.sheet2]
    photos = [_opened(Path(name)) for name in sheets]
    reference = reference_of(report.sky)
    corners, turns = (
        _each(args.corners, len(sheets), "--corners"),
        _each(args.turned, len(sheets), "--turned"),
    )
    planned = _planned(args, report)
    checks = []
    for number, (photo, at, turn) in enumerate(zip(photos, corners, turns, strict=True), 1):
        options = SheetOptions(
            corners=None if at in (None, AS_FOUND) else corners_from(at, photo.width, photo.height),
            turned=0 if turn is None else turned_from(turn),
            scan=args.scan,
        )
        with naming(photo.name):
            check = in_plan_terms(check_sheet(photo, reference, options), planned)
        checks.append((photo, for_terminal(check, photo, number)))
    second = checks[1][1] if len(checks) == 2 else None
    change = change_between((checks[0][1], second), intended)
    found = CheckReport(report, tuple(checks), change)
    if args.json:
        print(json.dumps(checks_as_json(found), indent=2, ensure_ascii=False))
    else:
        say(checks_in_words(found, scores=args.scores, width=terminal_width()))
    return 0


def _planned(args: argparse.Namespace, report: Report) -> Planned | None:
    """What the sheets were painted by: the study's plan, or one for the box and paper named."""
    study = report.study
    if args.box is None and args.sheet_size is None and study is None:
        return None
    box, options = find_box(args.box), MixOptions()
    if study is not None:
        options = study.mix if args.box is None else MixOptions(sheet=study.mix.sheet)
        box = study.box if args.box is None else box
    if args.sheet_size is not None:
        options = replace(options, sheet=SHEETS[sheet_name(args.sheet_size)])
    mixed = args.box is not None or study is not None
    plan = plan_sky(report.sky, box, options) if mixed else None
    units: Units = "in" if options.sheet.name in _INCHES else "cm"
    return Planned(plan, options.sheet, units)


def _opened(path: Path) -> Photo:
    with naming(shown_name(path)):
        return open_photo(path)


def _each(given: list[str] | None, count: int, option: str) -> list[str | None]:
    """What was given for each sheet; a sheet for which nothing was given has None."""
    values: list[str | None] = list(given or [])
    if len(values) > count:
        raise UsageError(
            translate(
                "command line",
                "{option} was given more often than there are sheets: leave one out.",
            ).format(option=option)
        )
    return values + [None] * (count - len(values))


def _intended(args: argparse.Namespace) -> ChangeFirst | None:
    if args.changed is None:
        return None
    if args.sheet2 is None:
        raise UsageError(
            translate("command line", "--changed compares two sheets: give a second sheet.")
        )
    for name in CHANGES:
        if name == args.changed:
            return name
    raise UsageError(
        translate("command line", "--changed {text} is not known: use one of {names}.").format(
            text=args.changed, names=", ".join(CHANGES)
        )
    )

"""Read a sky photo in bands: hue, value and intensity of each, in words or as JSON.

A study is read as its photo, with the lines it keeps.
"""

from __future__ import annotations

import argparse
import json
from dataclasses import replace
from pathlib import Path

from core.bands.lines import MAX_BANDS, MIN_BAND, bands_by_hand
from core.bands.propose import Proposal, propose
from core.cli.layout import say, terminal_width
from core.cli.opening import opened
from core.cli.report import Report, report_as_json, report_in_words
from core.errors import UsageError
from core.i18n import translate
from core.photo import Photo
from core.pipeline import read_sky
from core.reading.wording import Wording
from core.study_file.opening import FromFile


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash read`."""
    parser.description = translate(
        "command line", "Read a sky photo in bands: each band's hue, value and intensity."
    )
    parser.add_argument(
        "photo",
        metavar="PHOTO|STUDY",
        help=translate("command line", "the sky photo, or a study with its lines"),
    )
    add_line_arguments(parser)
    parser.add_argument(
        "--json", action="store_true", help=translate("command line", "print JSON instead of words")
    )


def add_line_arguments(parser: argparse.ArgumentParser) -> None:
    """How the lines are found, or given by hand."""
    parser.add_argument(
        "--bands",
        metavar="N",
        help=translate(
            "command line", "how many bands; otherwise as many as the colours are worth"
        ),
    )
    parser.add_argument(
        "--lines",
        metavar="Y,Y,...",
        help=translate(
            "command line", "the lines by hand: heights from 0 (top) to 1 (bottom of the photo)"
        ),
    )
    parser.add_argument(
        "--horizon",
        metavar="Y",
        help=translate("command line", "where the sky ends, 0 to 1; otherwise it is searched"),
    )


def has_line_arguments(args: argparse.Namespace) -> bool:
    """Whether any of the arguments of `add_line_arguments` was given."""
    return any(value is not None for value in (args.bands, args.lines, args.horizon))


def run(args: argparse.Namespace) -> int:
    """Read the photo and print what was read."""
    report = read_as_asked(args)
    if args.json:
        print(json.dumps(report_as_json(report), indent=2, ensure_ascii=False))
    else:
        say(report_in_words(report, Wording(), terminal_width()))
    return 0


def read_as_asked(args: argparse.Namespace) -> Report:
    """Open the photo and read it, with the lines that the arguments of `add_arguments` ask for.

    A study's own lines stay, unless the arguments ask for others.

    Raises
    ------
    UsageError
        The arguments do not fit together.
    PhotoError, StudyFileError
        The photo or the study cannot be opened.
    """
    return read_file(opened(Path(args.photo)), args)


def read_file(found: FromFile, args: argparse.Namespace) -> Report:
    """Read what was opened; as `read_as_asked`."""
    if args.bands is not None and args.lines is not None:
        raise UsageError(
            translate("command line", "--bands and --lines exclude each other: give one of them.")
        )
    count = None if args.bands is None else _count(args.bands)
    lines = None if args.lines is None else _heights(args.lines)
    horizon = None if args.horizon is None else _horizon(args.horizon)
    if found.study is None:
        assert found.photo is not None
        return read_photo(found.photo, count=count, lines=lines, horizon=horizon)
    study = found.study.study
    if found.photo is None:
        raise UsageError(
            translate("command line", "There is no photo in the study {title} yet.").format(
                title=study.title
            )
        )
    if count is None and lines is None and study.bands is not None:
        kept = study.bands
        if horizon is None:
            lines, horizon = kept.lines, kept.horizon
        else:
            lines = tuple(y for y in kept.lines if y <= horizon - MIN_BAND)
    report = read_photo(found.photo, count=count, lines=lines, horizon=horizon)
    return replace(report, study=study)


def read_photo(
    photo: Photo,
    *,
    count: int | None = None,
    lines: tuple[float, ...] | None = None,
    horizon: float | None = None,
) -> Report:
    """Propose lines, or take those given, and read the bands.

    Raises
    ------
    UsageError
        The lines do not fit into the sky.
    """
    proposal = propose(photo, count=count, horizon=horizon)
    notices = list(photo.notices)
    bands = proposal.bands
    if lines is None:
        if count is not None and bands.count != count:
            notices.append(
                translate(
                    "command line", "The sky has room for {n} bands only, not for {asked}."
                ).format(n=bands.count, asked=count)
            )
    else:
        _refuse_lines_below(lines, proposal, horizon)
        bands = bands_by_hand(lines, bands.horizon)
    if proposal.reason is not None:
        notices.append(proposal.reason)
    notices += proposal.remarks
    return Report(read_sky(photo, proposal, bands), tuple(notices))


def _refuse_lines_below(
    lines: tuple[float, ...], proposal: Proposal, horizon: float | None
) -> None:
    found = proposal.bands.horizon
    below = [y for y in lines if found - MIN_BAND < y < 1.0]
    if below and horizon is None:
        raise UsageError(
            translate(
                "command line",
                "The line {y:g} is below the horizon, found at {horizon:.2f}: "
                "say with --horizon where the sky ends.",
            ).format(y=below[0], horizon=found)
        )


def _count(text: str) -> int:
    try:
        count = int(text)
    except ValueError:
        count = 0
    if not 1 <= count <= MAX_BANDS:
        raise UsageError(
            translate(
                "command line", "--bands {text} is not a number of bands: give 1 to {most}."
            ).format(text=text, most=MAX_BANDS)
        )
    return count


def _horizon(text: str) -> float:
    y = _number(text)
    if y is None or not MIN_BAND <= y <= 1.0:
        raise UsageError(
            translate(
                "command line", "--horizon {text} is not a height in the photo: give 0.01 to 1."
            ).format(text=text)
        )
    return y


def _heights(text: str) -> tuple[float, ...]:
    heights = []
    for piece in text.split(","):
        y = _number(piece)
        if y is None:
            raise UsageError(
                translate(
                    "command line",
                    "--lines {text} does not list heights: give numbers with commas between, "
                    "such as 0.2,0.45.",
                ).format(text=text)
            )
        heights.append(y)
    return tuple(heights)


def _number(text: str) -> float | None:
    try:
        return float(text)
    except ValueError:
        return None

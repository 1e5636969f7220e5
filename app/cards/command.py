"""Print a card of a study, or of a photo, as a PDF: the plan, the worksheet or the findings."""

from __future__ import annotations

import argparse
import os
from collections.abc import Mapping
from pathlib import Path
from typing import TypeVar

from app.cards.class_command import CLASS_KINDS, class_pdf
from app.cards.dates import today
from app.state.settings import config_folder, load_settings
from core.cards import KINDS, gather
from core.cards.file import write_card
from core.class_set.folder import FILE_NAME, holds_class_set
from core.cli.layout import say
from core.cli.mix import find_box
from core.cli.opening import opened
from core.cli.output import output_path
from core.errors import UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.mixing import choose_box
from core.paint.wash.amounts import MOST_STUDENTS, USUAL_STUDENTS
from core.pictures import Picture, kept_name
from core.pipeline import Worked
from core.study import Study, study_of
from core.study_file.opening import FromFile

PAPER_NAMES = ("a4", "letter")


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash card`."""
    parser.description = translate(
        "command line", "Print a card as a PDF: plan, worksheet, findings, or kit list."
    )
    parser.add_argument(
        "source",
        metavar="STUDY|PHOTO|FOLDER",
        help=translate(
            "command line",
            "a study, a photo for a plan or a blank worksheet, or a class set's folder",
        ),
    )
    parser.add_argument(
        "--kind",
        metavar="KIND",
        help=translate(
            "command line",
            "plan (the default), worksheet, findings or kit; of a class set tickets (the default), "
            "worksheets, contact, slips, hard or kit",
        ),
    )
    parser.add_argument(
        "-o",
        "--output",
        metavar="FILE",
        required=True,
        help=translate("command line", "the PDF to write"),
    )
    parser.add_argument(
        "--paper",
        metavar="SIZE",
        default="a4",
        help=translate("command line", "a4 (the default) or letter"),
    )
    parser.add_argument(
        "--bw",
        action="store_true",
        help=translate(
            "command line", "for a black-and-white printer: no swatches, every colour named"
        ),
    )
    parser.add_argument(
        "--box",
        metavar="NAME|FILE",
        help=translate("command line", "other paints than the study's: a box's name, or its file"),
    )
    parser.add_argument(
        "--blank",
        action="store_true",
        help=translate("command line", "a worksheet without what the study holds"),
    )
    parser.add_argument(
        "--show-measured",
        action="store_true",
        help=translate("command line", "findings even before the student's own scores are in"),
    )
    parser.add_argument(
        "--students",
        metavar="N",
        type=int,
        help=translate(
            "command line",
            "for how many a kit list is: {usual} without it, or as many as the class has",
        ).format(usual=USUAL_STUDENTS),
    )


def run(args: argparse.Namespace) -> int:
    """Gather the data, lay the card out, write it."""
    _refuse_number(args.students)
    if holds_class_set(Path(args.source)):
        return _run_class(args)
    kind = _one_of("--kind", args.kind or "plan", KINDS)
    paper_name = _one_of("--paper", args.paper, PAPER_NAMES)
    source = Path(args.source)
    output = output_path(args.output, source, ".pdf", replace=True)
    box = None if args.box is None else find_box(args.box)
    found = opened(source)
    if kind == "findings" and found.study is None:
        raise UsageError(
            translate(
                "command line",
                "{name} is a photo: findings need a study with painted sheets.",
            ).format(name=shown_name(source))
        )
    study, pictures = _study_in(found)
    if box is not None:
        study = choose_box(study, box)
    data = gather(
        kind,
        study,
        pictures,
        load_settings(config_folder() / "settings.json").wording,
        known=Worked(photo=found.photo),
        date=today(),
        show_measured=args.show_measured,
    )
    begin_drawing()
    # deferred: start-up time - what is wrong with the arguments is said before
    from app.cards.card import CardChoice, card_title, lay_out_card
    from app.cards.paper import PAPERS
    from app.cards.pdf import pdf_of

    students = args.students or USUAL_STUDENTS
    choice = CardChoice(kind, PAPERS[paper_name], args.bw, args.blank, students)
    write_card(output, pdf_of(lay_out_card(data, choice), card_title(data, kind)))
    say(translate("command line", "Wrote {name}.").format(name=shown_name(output)))
    return 0


def _run_class(args: argparse.Namespace) -> int:
    """The same of a class set."""
    kind = _one_of("--kind", args.kind or "tickets", CLASS_KINDS)
    paper_name = _one_of("--paper", args.paper, PAPER_NAMES)
    folder = Path(args.source)
    output = output_path(args.output, folder / FILE_NAME, ".pdf", replace=True)
    begin_drawing()
    write_card(output, class_pdf(folder, kind, paper_name, bw=args.bw, students=args.students))
    say(translate("command line", "Wrote {name}.").format(name=shown_name(output)))
    return 0


def _refuse_number(students: int | None) -> None:
    if students is not None and not 1 <= students <= MOST_STUDENTS:
        raise UsageError(
            translate("command line", "--students takes 1 to {most}, not {n}.").format(
                most=MOST_STUDENTS, n=students
            )
        )


_Key = TypeVar("_Key", bound=str)


def begin_drawing() -> None:
    """Start Qt without a screen, if it does not run yet, with the program's own typeface."""
    # deferred: start-up time
    from PySide6.QtGui import QGuiApplication

    from app.fonts import load_fonts

    global _application
    if QGuiApplication.instance() is None:
        os.environ["QT_QPA_PLATFORM"] = "offscreen"
        _application = QGuiApplication(["gradewash"])
    load_fonts()


_application: object = None  # Qt's application lives as long as the program


def _study_in(found: FromFile) -> tuple[Study, Mapping[str, bytes]]:
    if found.study is not None:
        return found.study.study, found.study.pictures
    assert found.photo is not None, "what is no study is a photo"
    return study_of(Picture(kept_name(found.photo.name))), {}


def _one_of(option: str, asked: str, allowed: tuple[_Key, ...]) -> _Key:
    word = asked.strip().lower()
    for key in allowed:
        if key == word:
            return key
    raise UsageError(
        translate("command line", "{option} {asked} is not known: use one of {allowed}.").format(
            option=option, asked=asked, allowed=", ".join(allowed)
        )
    )

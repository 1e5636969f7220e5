"""Tell what is in a study: photo and bands, paints, sheets, and what was said of them."""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import Any

from core.cli.layout import fold, say, terminal_width
from core.cli.opening import opened
from core.cli.report import Report, report_as_json, report_in_words
from core.errors import UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.paint.box.names import box_name, paint_name
from core.pipeline import propose_for, read_sky
from core.reading.reading import read_colour
from core.reading.wording import Wording
from core.scrap.kept import tries_of
from core.scrap.words import advised_sentence
from core.sheet.findings.words import quality_word
from core.study import Study
from core.study_file.opening import FromFile
from core.words.phrases import colour_sentence_part
from core.worksheet.worksheet import QUALITIES, SheetPage


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash show`."""
    parser.description = translate(
        "command line", "Tell what is in a study: bands, paints, sheets, own scores, remark."
    )
    parser.add_argument("study", metavar="STUDY", help=translate("command line", "the study"))
    parser.add_argument(
        "--json", action="store_true", help=translate("command line", "print JSON instead of words")
    )


def run(args: argparse.Namespace) -> int:
    """Open the study, read its bands, print all."""
    path = Path(args.study)
    found = opened(path)
    if found.study is None:
        raise UsageError(
            translate(
                "command line", "{name} is a photo, not a study: use gradewash read for it."
            ).format(name=shown_name(path))
        )
    study, report = found.study.study, _read(found)
    if args.json:
        print(json.dumps(_as_json(study, report), indent=2, ensure_ascii=False))
    else:
        say(_in_words(study, report))
    return 0


def _read(found: FromFile) -> Report | None:
    """The bands as the study keeps them; proposed ones where it keeps none yet."""
    if found.study is None or found.photo is None:
        return None
    study, photo = found.study.study, found.photo
    sky = read_sky(photo, propose_for(photo, study.bands), study.bands)
    return Report(sky, photo.notices, study)


def _as_json(study: Study, report: Report | None) -> dict[str, Any]:
    """The form that the README documents."""
    read: dict[str, Any] = {"photo": None, "horizon": None, "bands": []}
    return {
        "title": study.title,
        **(read if report is None else report_as_json(report)),
        "box": {"name": study.box.name, "paints": list(study.box.keys)},
        "paper": study.mix.sheet.name,
        "sheets": [
            {
                "file": None if sheet is None else sheet.picture.name,
                "own_scores": {quality: page.scores.of(quality) for quality in QUALITIES},
                "answer": page.answer,
                "change_first": page.change_first,
                "date": page.date,
            }
            for sheet, page in zip(study.sheets, study.worksheet.pages, strict=True)
        ],
        "scraps": [
            {
                "letter": scrap.letter,
                "Lab": [round(part, 2) + 0.0 for part in scrap.Lab],
                "srgb": read_colour(scrap.Lab).hex,
                "parts": dict(scrap.parts),
                "added": dict(scrap.added),
                "advised": None if scrap.advised is None else dict(scrap.advised),
            }
            for scrap in study.scraps
        ],
        "student_code": study.worksheet.student_code,
        "class_code": study.worksheet.class_code,
        "remark": study.worksheet.remark,
    }


def _in_words(study: Study, report: Report | None) -> str:
    parts = [study.title]
    if report is None:
        parts.append(translate("command line", "There is no photo in it yet."))
    else:
        parts.append(report_in_words(report, Wording(), terminal_width()))
    paints = ", ".join(paint_name(paint) for paint in study.box.paints)
    parts.append("")
    parts.append(
        translate("command line", "Paints ({box}): {paints}.").format(
            box=box_name(study.box), paints=paints
        )
    )
    codes = (
        (translate("command line", "Student: {code}."), study.worksheet.student_code),
        (translate("command line", "Class: {code}."), study.worksheet.class_code),
    )
    said = [text.format(code=code) for text, code in codes if code]
    if said:
        parts.append(" ".join(said))
    for number in (1, 2):
        parts.append("")
        parts.extend(_sheet_in_words(study, number))
    if study.scraps:
        parts.append("")
        parts.extend(fold(line, terminal_width()) for line in _scraps_in_words(study))
    if study.worksheet.remark:
        remark = translate("command line", "The teacher's remark: {text}")
        parts.extend(["", remark.format(text=study.worksheet.remark)])
    return "\n".join(parts)


def _sheet_in_words(study: Study, number: int) -> list[str]:
    sheet, page = study.sheets[number - 1], study.worksheet.pages[number - 1]
    if sheet is None:
        first = translate("command line", "Sheet {n}: no picture yet.").format(n=number)
    else:
        first = translate("command line", "Sheet {n}: {name}.").format(
            n=number, name=sheet.picture.name
        )
    lines = [first]
    if page.date:
        lines.append(translate("command line", "Painted on {date}.").format(date=page.date))
    scores = _scores_in_words(page)
    if scores:
        lines.append(translate("command line", "Own scores: {scores}.").format(scores=scores))
    if page.answer:
        lines.append(
            translate("command line", "In their own words: {text}").format(text=page.answer)
        )
    if page.change_first:
        first_change = translate("command line", "To change first: {quality}.")
        lines.append(first_change.format(quality=quality_word(page.change_first)))
    return lines


def _scraps_in_words(study: Study) -> list[str]:
    """Every dried stroke that is kept, band by band, try by try."""
    lines = []
    for letter in sorted({scrap.letter for scrap in study.scraps}):
        for number, scrap in enumerate(tries_of(study.scraps, letter), 1):
            text = translate("command line", "Scrap of band {letter}, try {n}: {colour}. {advised}")
            colour = colour_sentence_part(read_colour(scrap.Lab), Wording())
            advised = advised_sentence(study.box, scrap)
            lines.append(text.format(letter=letter, n=number, colour=colour, advised=advised))
    return lines


def _scores_in_words(page: SheetPage) -> str:
    said = []
    for quality in QUALITIES:
        score = page.scores.of(quality)
        if score is not None:
            text = translate("command line", "{quality} {score}")
            said.append(text.format(quality=quality_word(quality), score=score))
    return ", ".join(said)

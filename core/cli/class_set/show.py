"""Tell what is in a class set: who has what in, what is to be placed, what the class found hard."""

from __future__ import annotations

import argparse
import json
from collections.abc import Mapping
from pathlib import Path
from typing import Any

from core.class_set.folder import missing_pictures, read_class_set
from core.class_set.hard import Hard, found_hard
from core.class_set.kept_checks import Kept, found_checks
from core.class_set.kept_scores import KeptScores, found_scores, offered, page_of
from core.class_set.model import ClassSet
from core.class_set.questions import Sorted, sort_pictures
from core.class_set.score_marks.words import reading_word
from core.class_set.spread import Spread, spreads_of
from core.class_set.standing import state_of, state_word
from core.class_set.ticket import Slot
from core.cli.class_set.common import add_folder, say_missing, say_questions
from core.cli.layout import say, table, terminal_width
from core.i18n import translate
from core.reading.quality import QUALITIES
from core.sheet.findings.words import quality_word
from core.words.lists import sentence_case
from core.worksheet.words import sheet_title

Scores = Mapping[tuple[str, int], KeptScores]
"""What was read of worksheet pages, as `found_scores` gives it."""


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class show`."""
    add_folder(parser)
    parser.add_argument(
        "--json", action="store_true", help=translate("command line", "print JSON instead of words")
    )


def run(args: argparse.Namespace) -> int:
    """Open, look, print; nothing is changed."""
    folder = Path(args.folder)
    class_set = read_class_set(folder)
    checks = found_checks(folder, class_set)
    found = sort_pictures(class_set, checks)
    spreads = spreads_of(class_set, found.placement, checks)
    hard, scores = found_hard(*spreads), found_scores(folder, found.placement)
    if args.json:
        told = _as_json(class_set, found, checks, scores, spreads, hard)
        print(json.dumps(told, indent=2, ensure_ascii=False))
        return 0
    _in_words(class_set, found, scores, spreads, hard)
    say_missing(missing_pictures(folder, class_set))
    return 0


def _in_words(
    class_set: ClassSet,
    found: Sorted,
    scores: Scores,
    spreads: tuple[tuple[Spread, ...], tuple[Spread, ...]],
    hard: tuple[Hard, ...],
) -> None:
    head = translate("command line", "{title}: {n} students, {placed} of {all} pictures placed.")
    title = " ".join(part for part in (class_set.title, class_set.exercise.title) if part)
    say(
        head.format(
            title=title,
            n=len(class_set.students),
            placed=len(found.placement.places),
            all=len(class_set.brought),
        )
    )
    print()
    rows = [
        (
            translate("command line", "Code"),
            translate("command line", "Sheet 1"),
            translate("command line", "Sheet 2"),
            translate("command line", "Worksheet"),
            translate("command line", "Mark"),
        )
    ]
    for student in class_set.students:
        states = [state_of(class_set, found.placement, student.number, i) for i in (0, 1)]
        pages = [
            str(i + 1) for i in (0, 1) if Slot(student.number, i, "page") in found.placement.places
        ]
        mark = class_set.entry(student.number).marking.mark
        rows.append(
            (
                student.code,
                state_word(states[0]),
                state_word(states[1]),
                ", ".join(pages) or "-",
                mark,
            )
        )
    print("\n".join(table(rows, terminal_width())))
    waiting = [
        line
        for student in class_set.students
        for index in (0, 1)
        if (line := _read_line(class_set, found, scores, student.number, index))
    ]
    if waiting:
        print()
        say(
            translate(
                "command line",
                "Read from worksheets, and not yet taken in Pin-up or with gradewash class scores:",
            )
        )
        for line in waiting:
            say(line)
    if found.questions:
        print()
        say(translate("command line", "To place, or to look at:"))
        say_questions(class_set, found)
    if hard:
        print()
        say(translate("command line", "What the class found hard:"))
        for one in hard:
            lead = "+" if one.kind == "praise" else "!"
            say(f"{lead} {' '.join(part for part in (one.text, one.teach) if part)}")
    counted = [one for one in spreads[0] if one.judged]
    if counted:
        print()
        print("\n".join(table(_count_rows(spreads), terminal_width())))


def _read_line(class_set: ClassSet, found: Sorted, scores: Scores, number: int, index: int) -> str:
    """What was read of a page that waits; empty where none does."""
    page, student = page_of(found.placement, number, index), class_set.class_list.student(number)
    kept = None if page is None else scores.get(page)
    own = class_set.entry(number).worksheet.pages[index].scores
    if kept is None or student is None or not offered(kept, own):
        return ""
    said = ", ".join(
        f"{quality_word(quality)} {reading_word(reading)}"
        for quality, reading in zip(QUALITIES, kept.rows, strict=True)
    )
    return f"{student.code}, {sheet_title(index).lower()}: {said}"


def _count_rows(
    spreads: tuple[tuple[Spread, ...], tuple[Spread, ...]],
) -> list[tuple[str, ...]]:
    """How many match the photo, band by band: first sheets, then second ones."""
    cells = [{(one.letter, one.quality): one for one in each} for each in spreads]
    letters = sorted({one.letter for each in spreads for one in each})
    rows = [
        (translate("command line", "Match"), *(sentence_case(quality_word(q)) for q in QUALITIES))
    ]
    for letter in letters:
        row = [letter]
        for quality in QUALITIES:
            said = [
                f"{one.matched}/{one.judged}"
                for each in cells
                if (one := each.get((letter, quality))) is not None
            ]
            row.append(" > ".join(said))
        rows.append(tuple(row))
    return rows


def _as_json(
    class_set: ClassSet,
    found: Sorted,
    checks: Mapping[str, Kept],
    scores: Scores,
    spreads: tuple[tuple[Spread, ...], tuple[Spread, ...]],
    hard: tuple[Hard, ...],
) -> dict[str, Any]:
    return {
        "title": class_set.title,
        "exercise": class_set.exercise.title,
        "pictures": len(class_set.brought),
        "students": [
            _student_as_json(class_set, found, checks, scores, student.number)
            for student in class_set.students
        ],
        "questions": [
            {
                "picture": class_set.picture(question.digest).picture.name,
                "digest": question.digest,
                "reason": question.reason,
                "place": _slot_as_json(question.place),
                "proposal": _slot_as_json(question.proposal),
                "there_now": question.there_now,
                "same_as": question.same_as,
                "text": question.sentence,
            }
            for question in found.questions
        ],
        "spread": [
            [
                {
                    "band": one.letter,
                    "quality": one.quality,
                    "judged": one.judged,
                    "matched": one.matched,
                    "above": one.above,
                    "below": one.below,
                    "told": one.told,
                }
                for one in each
            ]
            for each in spreads
        ],
        "found_hard": [
            {
                "kind": one.kind,
                "band": one.letter,
                "about": list(one.qualities),
                "text": one.text,
                "teach": one.teach,
            }
            for one in hard
        ],
    }


def _student_as_json(
    class_set: ClassSet,
    found: Sorted,
    checks: Mapping[str, Kept],
    scores: Scores,
    number: int,
) -> dict[str, Any]:
    student = class_set.class_list.student(number)
    assert student is not None
    marking = class_set.entry(number).marking
    sheets = []
    for index in (0, 1):
        place = found.placement.places.get(Slot(number, index))
        page = found.placement.places.get(Slot(number, index, "page"))
        kept = None if place is None else checks.get(place.digest)
        check = None if kept is None else kept.check
        sheets.append(
            {
                "file": None if place is None else class_set.picture(place.digest).picture.name,
                "digest": None if place is None else place.digest,
                "how": None if place is None else place.how,
                "worksheet": None if page is None else class_set.picture(page.digest).picture.name,
                "state": state_of(class_set, found.placement, number, index),
                "checked": kept is not None,
                "turned": None if check is None else check.turned,
                "findings": [] if check is None else [f.text for f in check.findings],
                "scores_read": _read_as_json(class_set, found, scores, number, index),
            }
        )
    return {
        "code": student.code,
        "number": number,
        "sheets": sheets,
        "strength": marking.strength,
        "next_step": marking.next_step,
        "remark": marking.remark,
        "mark": marking.mark,
    }


def _read_as_json(
    class_set: ClassSet, found: Sorted, scores: Scores, number: int, index: int
) -> dict[str, Any] | None:
    page = page_of(found.placement, number, index)
    kept = None if page is None else scores.get(page)
    if kept is None:
        return None
    own = class_set.entry(number).worksheet.pages[index].scores
    rows = zip(QUALITIES, kept.rows, strict=True) if kept.rows else ()
    return {
        "waits": offered(kept, own),
        "rows": [
            {"quality": quality, "reading": reading.kind, "score": reading.score}
            for quality, reading in rows
        ],
    }


def _slot_as_json(slot: Slot | None) -> dict[str, Any] | None:
    if slot is None:
        return None
    return {"number": slot.number, "sheet": slot.index + 1, "what": slot.what}

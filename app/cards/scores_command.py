"""`gradewash class scores`: read the scores crossed on worksheets, and take what the teacher says.

Without `--take` nothing becomes a student's score.
"""

from __future__ import annotations

import argparse
import json
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from core.class_set.folder import ClassFolder
from core.class_set.kept_scores import (
    KeptScores,
    find_scores,
    offered,
    page_of,
    pages_to_read,
    read_page,
    taken,
)
from core.class_set.model import ClassSet
from core.class_set.placing import Placement
from core.class_set.score_marks.words import reading_word
from core.class_set.ticket import Slot
from core.cli.class_set.common import add_folder, opened, slot_of, sorted_now
from core.cli.layout import complain, say
from core.errors import GradewashError, UsageError
from core.i18n import translate
from core.reading.quality import QUALITIES, Quality
from core.sheet.findings.words import quality_word
from core.worksheet.words import sheet_title

_NONE = "-"

Scores = dict[Quality, int | None]


@dataclass(frozen=True)
class _Page:
    """A worksheet page that has its place, and what was read of it."""

    slot: Slot
    digest: str
    kept: KeptScores


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash class scores`."""
    add_folder(parser)
    parser.add_argument(
        "--take",
        metavar="14/w1",
        action="append",
        default=[],
        help=translate(
            "command line",
            "make what was read of this worksheet page the student's own scores; may be given "
            "again for another page",
        ),
    )
    parser.add_argument(
        "--as",
        dest="instead",
        metavar="HUE,VALUE,INTENSITY,PLACEMENT",
        help=translate(
            "command line",
            "take these four scores instead, as you see them on the page: 7,6,-,9; - for none",
        ),
    )
    parser.add_argument(
        "--json", action="store_true", help=translate("command line", "print JSON instead of words")
    )


def run(args: argparse.Namespace) -> int:
    """Read what was not read yet, take what is to be taken, tell."""
    instead = _instead(args.instead, args.take)
    with opened(args) as folder:
        class_set = folder.class_set
        slots = [_page_slot(text, class_set) for text in args.take]
        placement = sorted_now(folder.path, class_set).placement
        # What cannot be taken is said before anything is.
        for slot in slots:
            _refuse_no_page(class_set, placement, slot)
        pages = _read(folder, placement)
        after, by_slot = class_set, {page.slot: page for page in pages}
        for slot in slots:
            scores = instead or _scores_of(class_set, by_slot[slot])
            _refuse_own(after, slot)
            after = taken(after, slot.number, slot.index, scores)
        folder.save(after)
        if args.json:
            told = {"pages": [_as_json(after, page, page.slot in slots) for page in pages]}
            print(json.dumps(told, indent=2, ensure_ascii=False))
        else:
            _in_words(after, pages, slots)
    return 0


def _page_slot(text: str, class_set: ClassSet) -> Slot:
    """The worksheet page about a sheet: `14/1` means it as `14/w1` does."""
    slot = slot_of(text, class_set)
    return Slot(slot.number, slot.index, "page")


def _instead(text: str | None, take: list[str]) -> Scores | None:
    """The scores that are given, by quality."""
    if text is None:
        return None
    if len(take) != 1:
        raise UsageError(
            translate(
                "command line", "--as belongs to one page: name it with --take, such as 14/w1."
            )
        )
    words = [word.strip() for word in text.split(",")]
    plain = all(word == _NONE or (word.isascii() and word.isdecimal()) for word in words)
    scores = [None if word == _NONE else int(word) for word in words] if plain else []
    right = all(score is None or 1 <= score <= 10 for score in scores)
    if len(scores) != len(QUALITIES) or not right or not any(scores):
        raise UsageError(
            translate(
                "command line",
                "--as {text} is not four scores: give hue, value, intensity and placement from 1 "
                "to 10, such as 7,6,-,9.",
            ).format(text=text)
        )
    return dict(zip(QUALITIES, scores, strict=True))


def _who(class_set: ClassSet, slot: Slot) -> str:
    student = class_set.class_list.student(slot.number)
    assert student is not None, "places are of the class list"
    return f"{student.code}, {sheet_title(slot.index).lower()}"


def _refuse_no_page(class_set: ClassSet, placement: Placement, slot: Slot) -> None:
    if page_of(placement, slot.number, slot.index) is None:
        raise UsageError(
            translate(
                "command line",
                "{place}: no picture of a worksheet page has this place: bring it in, or place it "
                "with gradewash class place.",
            ).format(place=_who(class_set, slot))
        )
    _refuse_own(class_set, slot)


def _refuse_own(class_set: ClassSet, slot: Slot) -> None:
    """What was typed, or taken before, is not written over."""
    if _has_own(class_set, slot):
        raise UsageError(
            translate(
                "command line",
                "{place}: there are own scores already; change them on the Worksheet page.",
            ).format(place=_who(class_set, slot))
        )


def _has_own(class_set: ClassSet, slot: Slot) -> bool:
    own = class_set.entry(slot.number).worksheet.pages[slot.index].scores
    return any(own.of(quality) is not None for quality in QUALITIES)


def _scores_of(class_set: ClassSet, page: _Page) -> Scores:
    """What was read, where it is a number."""
    read = {quality: page.kept.of(quality) for quality in QUALITIES}
    scores = {quality: None if one is None else one.score for quality, one in read.items()}
    if not any(scores.values()):
        raise UsageError(
            translate(
                "command line",
                "{place}: no number could be read: look at the page, then give its scores with "
                "--as.",
            ).format(place=_who(class_set, page.slot))
        )
    return scores


def _read(folder: ClassFolder, placement: Placement) -> list[_Page]:
    """Every page that has its place, in the list's order; those read before are looked up."""
    pages: list[_Page] = []
    wanted = set(pages_to_read(placement))
    forms = None
    for student in folder.class_set.students:
        for index in (0, 1):
            key = page_of(placement, student.number, index)
            if key is None or key not in wanted:
                continue
            kept = find_scores(folder.path, *key)
            if kept is None:
                if forms is None:
                    # deferred: start-up time - only what was not read yet needs Qt
                    from app.cards.class_command import score_forms
                    from app.cards.command import begin_drawing

                    begin_drawing()
                    forms = score_forms(folder.path, folder.class_set)
                try:
                    kept = read_page(folder.path, *key, folder.picture_path(key[0]), forms)
                except GradewashError as error:
                    complain(str(error))
                    kept = KeptScores()
                if sys.stderr.isatty():
                    print(f"\r{len(pages) + 1}/{len(wanted)}", end="", file=sys.stderr, flush=True)
            pages.append(_Page(Slot(student.number, index, "page"), key[0], kept))
    if forms is not None and sys.stderr.isatty():
        print(file=sys.stderr)
    return pages


def _in_words(class_set: ClassSet, pages: list[_Page], slots: list[Slot]) -> None:
    if not pages:
        say(translate("command line", "No picture of a worksheet page has its place yet."))
    for slot in slots:
        own = class_set.entry(slot.number).worksheet.pages[slot.index].scores
        said = ", ".join(
            f"{quality_word(quality)} {own.of(quality) or _NONE}" for quality in QUALITIES
        )
        taken_text = translate("command line", "Taken as own scores of {place}: {scores}.")
        say(taken_text.format(place=_who(class_set, slot), scores=said))
    waiting = [page for page in pages if _waits(class_set, page)]
    if waiting:
        say(translate("command line", "Read, and no score before you take it with --take:"))
    for page in waiting:
        said = ", ".join(
            f"{quality_word(quality)} {reading_word(reading)}"
            for quality, reading in zip(QUALITIES, page.kept.rows, strict=True)
        )
        say(f"{_who(class_set, page.slot)}: {said}")
        say(f"  {page.kept.crops}")
    unread = [page for page in pages if not page.kept.rows and not _has_own(class_set, page.slot)]
    for page in unread:
        name = class_set.picture(page.digest).picture.name
        say(
            translate(
                "command line",
                "{place}: fewer than two of the page's codes are seen in {name}: type its scores "
                "with --as.",
            ).format(place=_who(class_set, page.slot), name=name)
        )
    if pages and not waiting and not unread and not slots:
        say(translate("command line", "Nothing waits to be taken."))


def _waits(class_set: ClassSet, page: _Page) -> bool:
    own = class_set.entry(page.slot.number).worksheet.pages[page.slot.index].scores
    return offered(page.kept, own)


def _as_json(class_set: ClassSet, page: _Page, is_taken: bool) -> dict[str, Any]:
    student = class_set.class_list.student(page.slot.number)
    own = class_set.entry(page.slot.number).worksheet.pages[page.slot.index].scores
    rows = zip(QUALITIES, page.kept.rows, strict=True) if page.kept.rows else ()
    crops: Path | None = page.kept.crops
    return {
        "code": "" if student is None else student.code,
        "number": page.slot.number,
        "sheet": page.slot.index + 1,
        "file": class_set.picture(page.digest).picture.name,
        "waits": _waits(class_set, page),
        "taken": is_taken,
        "rows": [
            {
                "quality": quality,
                "reading": reading.kind,
                "score": reading.score,
                "own": own.of(quality),
            }
            for quality, reading in rows
        ],
        "crops": None if crops is None else str(crops),
    }

"""Hold a photo of dried strokes against the bands of a study: what each is, and what to add."""

from __future__ import annotations

import argparse
import json
from pathlib import Path
from typing import Any

from core.cli import read
from core.cli.layout import fold, say, terminal_width
from core.cli.opening import naming
from core.cli.output import output_path
from core.errors import UsageError
from core.file_sentences import shown_name
from core.i18n import translate
from core.paint.box.box import DEFAULT_BOX, Box
from core.paint.box.box_file import save_box
from core.paint.options import MixOptions
from core.paint.planned import MixPlan
from core.photo import open_photo
from core.pipeline import plan_sky
from core.reading.quality import COLOUR_QUALITIES
from core.reading.reading import read_colour
from core.reading.wording import Wording
from core.scrap.advice import Addition
from core.scrap.held import Held, hold, nearest_band, teach_box
from core.scrap.keeping import earlier_of
from core.scrap.strokes import FoundStroke, find_strokes
from core.scrap.teach import Lesson, taught_keys
from core.scrap.words import (
    advice_sentences,
    against_sentence,
    doubt_text,
    dry_note,
    nothing_taught,
    same_puddle_sentence,
    stroke_sentence,
    taught_sentence,
    teaching_hint,
)


def add_arguments(parser: argparse.ArgumentParser) -> None:
    """The arguments of `gradewash scrap`."""
    parser.description = translate(
        "command line",
        "Hold a photo of dried strokes on white paper against the bands: what each stroke is, and "
        "what to add to its puddle.",
    )
    parser.add_argument(
        "photo",
        metavar="STUDY|PHOTO",
        help=translate("command line", "the study whose mixes were painted, or a sky photo"),
    )
    parser.add_argument(
        "scrap",
        metavar="SCRAP",
        help=translate("command line", "a photo of the dried strokes"),
    )
    parser.add_argument(
        "--band",
        metavar="C",
        help=translate(
            "command line", "the band all strokes are for; otherwise the nearest of each"
        ),
    )
    parser.add_argument(
        "--fresh",
        action="store_true",
        help=translate(
            "command line", "the puddles are fresh: the scraps kept in the study do not count"
        ),
    )
    parser.add_argument(
        "--teach",
        metavar="BOX",
        help=translate(
            "command line",
            "let the strokes teach the study's box what its own paints are, and write it there",
        ),
    )
    parser.add_argument(
        "--force",
        action="store_true",
        help=translate("command line", "replace a box file that is there already"),
    )
    read.add_line_arguments(parser)
    parser.add_argument(
        "--json", action="store_true", help=translate("command line", "print JSON instead of words")
    )


def run(args: argparse.Namespace) -> int:
    """Plan the mixes, find the strokes, say what to add."""
    report = read.read_as_asked(args)
    box, options = DEFAULT_BOX, MixOptions()
    if report.study is not None:
        box, options = report.study.box, report.study.mix
    plan = plan_sky(report.sky, box, options)
    letter = None if args.band is None else _letter(args.band, plan)
    path = Path(args.scrap)
    output = None
    if args.teach is not None:
        output = output_path(args.teach, path, ".json", replace=args.force)
    with naming(shown_name(path)):
        strokes = find_strokes(open_photo(path)).strokes
    if not strokes:
        raise UsageError(
            translate(
                "command line",
                "{name} shows no painted stroke on white paper: photograph the dry scrap with "
                "white paper all around.",
            ).format(name=shown_name(path))
        )
    placed = [(stroke, letter or nearest_band(plan, stroke)) for stroke in strokes]
    kept = () if report.study is None else report.study.scraps
    marked = [(stroke, at) for stroke, at in placed if at is not None]
    held = hold(plan, marked, {} if args.fresh else earlier_of(kept, plan))
    taught, lessons = teach_box(plan.box, held)
    if output is not None and not lessons:
        raise UsageError(nothing_taught(plan.box))
    if args.json:
        print(json.dumps(_as_json(path, plan, held), indent=2, ensure_ascii=False))
    else:
        say(_in_words(held, box))
    if output is not None:
        save_box(taught, output)
        if not args.json:
            said = [taught_sentence(taught, taught_keys(lessons))]
            said.append(translate("command line", "Wrote {name}.").format(name=shown_name(output)))
            say(fold(" ".join(said), terminal_width()))
    return 0


def _letter(asked: str, plan: MixPlan) -> str:
    letter = asked.strip().upper()
    letters = [band.letter for band in plan.bands if band.target is not None]
    if letter not in letters:
        raise UsageError(
            translate("command line", "There is no band {name}: use one of {names}.").format(
                name=asked, names=", ".join(letters)
            )
        )
    return letter


def _in_words(held: tuple[Held, ...], box: Box) -> str:
    wording, width = Wording(), terminal_width()
    lines: list[str] = []
    for one in held:
        lines.append(translate("scrap", "Band {letter}").format(letter=one.letter))
        for stroke, check in zip(one.strokes, one.checks, strict=True):
            said = [stroke_sentence(check, wording), against_sentence(one.letter, check)]
            said += [doubt_text(doubt) for doubt in stroke.doubts]
            lines.append(fold("  " + " ".join(said), width))
        advised = list(advice_sentences(one, box, wording))
        if one.added:
            advised.append(same_puddle_sentence(box, one.added))
        if one.lesson is not None:
            advised.append(teaching_hint(box, one.lesson))
        lines.append(fold("  " + " ".join(advised), width))
        lines.append("")
    lines.append(dry_note())
    return "\n".join(lines)


def _as_json(path: Path, plan: MixPlan, held: tuple[Held, ...]) -> dict[str, Any]:
    return {"scrap": shown_name(path), "bands": [_band(one, plan.box) for one in held]}


def _band(held: Held, box: Box) -> dict[str, Any]:
    advice = held.advice
    return {
        "letter": held.letter,
        "parts": {} if held.mix is None else dict(held.mix.parts),
        "added": dict(held.added),
        "strokes": [_stroke(stroke, held, number) for number, stroke in enumerate(held.strokes)],
        "advice": None
        if advice is None
        else {
            "deed": advice.deed,
            "add": _addition(advice.addition),
            "or": None if advice.other is None else _addition(advice.other),
            "as_it_is": _addition(advice.as_it_is),
            "got_in": advice.got_in,
            "got_in_chance": round(advice.got_in_chance, 2),
            "serves": advice.serves,
            "one_puddle": advice.one_puddle,
        },
        "teaches": None if held.lesson is None else _lesson(held.lesson),
        "sentences": list(advice_sentences(held, box, Wording())),
    }


def _lesson(lesson: Lesson) -> dict[str, Any]:
    return {
        key: {"trust": card.trust, "spread": round(card.spread, 2), "scraps": len(card.scraps)}
        for key, card in lesson.paints.items()
    }


def _stroke(stroke: FoundStroke, held: Held, number: int) -> dict[str, Any]:
    check = held.checks[number]
    whole = check.whole
    assert whole is not None
    return {
        "region": [round(edge, 4) for edge in stroke.region],
        "Lab": [round(part, 2) + 0.0 for part in stroke.Lab],
        "srgb": read_colour(stroke.Lab).hex,
        "hue_steps": None if whole.hue_steps is None else round(whole.hue_steps, 2) + 0.0,
        "value_steps": round(whole.value_steps, 2) + 0.0,
        "chroma_steps": round(whole.chroma_steps, 2) + 0.0,
        "delta_E_2000": round(whole.delta_E_2000, 2),
        "verdicts": {quality: getattr(check, quality) for quality in COLOUR_QUALITIES},
        "doubts": list(stroke.doubts),
    }


def _addition(addition: Addition) -> dict[str, Any]:
    return {
        "parts": dict(addition.parts),
        "strength": round(addition.thinning, 2),
        "Lab": [round(part, 2) + 0.0 for part in addition.Lab],
        "srgb": read_colour(addition.Lab).hex,
        "delta_E_2000": round(addition.delta_E_2000, 2),
    }

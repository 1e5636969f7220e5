"""Every closed set of keys has words for every key, in both languages.

mypy demands every case (`match` with `assert_never`); this walks them, so that a key is neither
left in English nor said as another one is.
"""

from __future__ import annotations

import ast
from collections.abc import Callable, Iterator
from pathlib import Path
from typing import Any, get_args

import pytest

from core.cards.words import Label, label
from core.choosing.through import Sorting
from core.choosing.words import sorting_word
from core.class_set import hard, table
from core.class_set.model import State
from core.class_set.spread import Spread
from core.class_set.standing import state_word
from core.class_set.table import Plain
from core.lesson import asking
from core.lesson.lesson import Question
from core.paint.box.box import TWELVE_PAN
from core.paint.box.names import group_name
from core.paint.choice.band_plan import plan_colour
from core.paint.choice.band_ways import ways_for
from core.paint.mixture.shortfall import Fault, MainHue
from core.paint.mixture.strength import Strength
from core.paint.options import BandChoice
from core.paint.pigment.card_paint import Trust
from core.paint.pigment.paint import Group, Transparency
from core.paint.planned import Reach, SecondMix, Way
from core.paint.reasons import Reason, ReasonCode
from core.paint.toning.tone_down import StepNote
from core.paint.wash.amounts import SHEETS
from core.paint.wash.meeting import Meeting, MeetingNote
from core.paint.wash.order import Kind, Order, Stage, WorkStep
from core.paint.words import box as box_words
from core.paint.words import fit, ladder, own, parts, plan, second
from core.paint.words.reasons import reason_text
from core.reading.quality import ChangeFirst, Outcome, Quality, Verdict
from core.reading.reading import IntensitySaid, IntensityWord, SecondColour, ValueWord, read_colour
from core.reading.wheel import Family, HueClass, HueReading, Neutral
from core.reading.wording import Wording
from core.scrap import words as scrap_words
from core.scrap.strokes import Doubt
from core.sheet.findings import words as sheet_words
from core.sheet.measuring import Corner
from core.sheet.result import Change
from core.swatches.fields import FieldWord
from core.swatches.words import field_word
from core.words import names, verdicts
from core.worksheet import compare
from core.worksheet import words as worksheet_words
from core.worksheet.words import Prompt

ROOT = Path(__file__).parents[2]


def class_way(quality: Quality, up: int) -> str:
    return hard._way(Spread("A", quality, (2.0 * up,) * 3, True))


def meeting(note: MeetingNote) -> str:
    where = Meeting((), ("blue", "orange"), 0.0, note, "green", "red", None)
    return plan.meeting_text("A", "B", where)


def reason(code: ReasonCode) -> str:
    if code == "leans":
        return reason_text(TWELVE_PAN, Reason(code, ("lemon_yellow",)))
    if code == "two primaries":
        return reason_text(TWELVE_PAN, Reason(code, ("crimson", "ultramarine"), "violet"))
    return reason_text(TWELVE_PAN, Reason(code, ("ultramarine",), "red", "A", ("A", "B")))


def neutral(key: Neutral, leaning: Family | None = None) -> str:
    return names.neutral_name(HueReading(None, None, leaning, key, None, None))


def way(key: Way) -> str:
    grey = read_colour((50.0, 5.0, 5.0))
    planned = plan_colour(ways_for(grey, TWELVE_PAN, BandChoice())).classroom
    assert planned is not None
    return second.way_text(SecondMix(SecondColour(grey, 0.3, True), planned, key))


WORDS: dict[str, tuple[Any, Callable[[Any], str]]] = {
    "hue family": (Family, names.family_name),
    "class": (HueClass, lambda key: names.class_word(key, Wording())),
    "class, other word": (HueClass, lambda key: names.class_word(key, Wording("intermediate"))),
    "class with article": (HueClass, lambda key: names.class_with_article(key, Wording())),
    "value": (ValueWord, names.value_word_text),
    "intensity": (IntensityWord, names.intensity_text),
    "neutral": (Neutral, neutral),
    "neutral that leans": (Neutral, lambda key: neutral(key, "blue")),
    "fault of a mix": (Fault, fit.fault_text),
    "difference of a mix": (Fault, fit._more_fault),
    "main hue": (MainHue, fit._more_hue),
    "reach": (Reach, fit.reach_text),
    "reach like another band's": (Reach, lambda key: fit.reach_text(key, "A")),
    "reach on a card": (Reach, fit.reach_short_text),
    "reach beside parts by hand": (Reach, lambda key: fit.reach_text(key, by_hand=True)),
    "intensity, or pale": (IntensitySaid, names.intensity_text),
    "reason": (ReasonCode, reason),
    "meeting": (MeetingNote, meeting),
    "step of the ladder": (StepNote, lambda key: ladder.step_note_text(key, "A")),
    "way of a second colour": (Way, way),
    "strength": (Strength, parts.strength_text),
    "water of a strength": (Strength, parts.strength_note),
    "group of paints": (Group, group_name),
    "transparency": (Transparency, box_words.transparency_word),
    "how well a paint is known": (Trust, own.trust_word),
    "how photos are sorted": (Sorting, sorting_word),
    "field of a swatch card": (FieldWord, field_word),
    "wash": (Kind, lambda key: plan.kind_text(Order(key, (), False))),
    "work step": (Stage, lambda key: plan.work_step_text(WorkStep(key, ("A",)), SHEETS["A4"])),
    "verdict": (Verdict, verdicts.verdict_word),
    "outcome": (Outcome, verdicts.outcome_word),
    "label of a card": (Label, label),
    "doubt of a scrap": (Doubt, scrap_words.doubt_text),
    "quality or change": (ChangeFirst, sheet_words.quality_word),
    "corner": (Corner, sheet_words.corner_word),
    "quality as a title": (Quality, worksheet_words.quality_title),
    "change as a title": (ChangeFirst, worksheet_words.change_title),
    "prompt": (Prompt, worksheet_words.prompt_word),
    "prompt of sheet 1": (Prompt, lambda key: worksheet_words.prompt_question(key, 0)),
    "prompt of sheet 2": (Prompt, lambda key: worksheet_words.prompt_question(key, 1)),
    "what became of a change": (
        Outcome,
        lambda key: compare.change_sentence(Change((), "value", key)),
    ),
    "what became of a count": (
        Outcome,
        lambda key: compare.change_sentence(Change((), "blooms", key)),
    ),
    "question to the class": (Question, lambda key: asking.question_text(key, Wording())),
    "state of a sheet": (State, state_word),
    "column of a mark list": (Plain, table.plain_heading),
    "column of own scores": (Quality, lambda key: table.own_heading(key, 1)),
    **{
        f"way of the class, {up}": (Quality, lambda key, up=up: class_way(key, up))
        for up in (1, -1)
    },
    **{
        f"meaning of a score of {score}": (
            Quality,
            lambda key, score=score: sheet_words.score_meaning(key, score),
        )
        for score in (10, 7, 4, 1)
    },
}
"""What the keys are of, the closed set, and the words of one key."""

SILENT = {"reached", "paper", "lacks"}
"""A band within reach and bare paper need no word beyond what stands beside them; what a box lacks
is said by name (`fit.band_reach_text`)."""


@pytest.fixture(params=["en", "es"])
def language(request, qapp) -> Iterator[str]:
    from app.state.language import use_language

    use_language(request.param)
    yield request.param
    use_language("en")


@pytest.mark.parametrize("topic", WORDS)
def test_every_key_has_words_of_its_own(topic: str, language: str) -> None:
    keys, word = WORDS[topic]
    said = {key: word(key) for key in get_args(keys)}
    assert [key for key, text in said.items() if not text and key not in SILENT] == []
    assert "{" not in "".join(said.values())
    texts = [text for text in said.values() if text]
    assert len(set(texts)) == len(texts), said


def test_spanish_says_other_words(qapp) -> None:
    """A long set without a single difference would be one that never passes `translate`."""
    from app.state.language import use_language

    for topic, (keys, word) in WORDS.items():
        use_language("en")
        english = [word(key) for key in get_args(keys)]
        use_language("es")
        spanish = [word(key) for key in get_args(keys)]
        use_language("en")
        assert english != spanish, topic


def test_no_words_are_looked_up_in_a_dictionary_of_keys() -> None:
    """`{"key": translate(...)}[key]` hides a missing key from mypy; a `match` does not."""
    found = []
    for path in [*ROOT.glob("core/**/*.py"), *ROOT.glob("app/**/*.py")]:
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8"))):
            if not (isinstance(node, ast.Subscript) and isinstance(node.value, ast.Dict)):
                continue
            texts = ast.unparse(node.value)
            keys = [key.value for key in node.value.keys if isinstance(key, ast.Constant)]
            if "translate(" in texts and any(isinstance(key, str) for key in keys):
                found.append(f"{path.relative_to(ROOT)}:{node.lineno}")
    assert found == []

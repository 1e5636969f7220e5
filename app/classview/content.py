"""From the lesson to what the class view draws."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from app.drawing.classview.layout import LEAST_TEXT, LETTER_SHARE, ClassLayout
from app.drawing.classview.lines import LineView
from app.drawing.classview.names import WedgeName
from app.drawing.classview.tally import TallyView
from app.drawing.ladder import LadderView
from app.drawing.marks import ChipView
from app.drawing.views import WEDGE_COLOURS, ladder_view, wheel_view
from app.drawing.wheel.shape import WheelView
from app.look.theme import WALL
from core.colour.srgb import veiled
from core.i18n import translate
from core.lesson.asking import Answer, answer_to, choices, question_text
from core.lesson.lesson import Lesson, Question
from core.paint.planned import MixPlan
from core.paint.words.mix import mix_text
from core.paint.words.own import own_paints_short
from core.paint.words.tone_sentence import planned_toning
from core.reading.reading import BandReading
from core.reading.wheel import FAMILIES, Family
from core.reading.wording import Wording
from core.words import PlannedToning, family_name, tones_on_wheel
from core.words.lists import sentence_case

_MUTED_SHARE = 0.62


def muted_wedges() -> tuple[str, ...]:
    """The wedges that are not spoken of, faded into the wall."""
    return tuple(veiled(colour, WALL, _MUTED_SHARE) for colour in WEDGE_COLOURS)


def mix_of(plan: MixPlan | None, letter: str) -> str:
    """A band's mix in parts, doubted where an own paint is; empty while there is no plan for it."""
    if plan is None:
        return ""
    planned = next((band.classroom for band in plan.bands if band.letter == letter), None)
    if planned is None:
        return ""
    text, doubt = mix_text(plan.box, planned), own_paints_short(plan.box, planned.mix)
    return f"{text} ({doubt})" if doubt else text


def toning_of(plan: MixPlan | None, reading: BandReading) -> PlannedToning | None:
    """How the plan tones a band down; None while there is no plan for it."""
    if plan is None:
        return None
    band = next((band for band in plan.bands if band.letter == reading.letter), None)
    return None if band is None else planned_toning(plan.box, band)


def answers(
    lesson: Lesson, reading: BandReading, wording: Wording, plan: MixPlan | None
) -> dict[Question, Answer]:
    """All answers about the present band."""
    mix, toning = mix_of(plan, reading.letter), toning_of(plan, reading)
    return {
        question: answer_to(question, reading, wording, mix, toning)
        for question in lesson.questions
    }


def line_views(
    lesson: Lesson, reading: BandReading, wording: Wording, plan: MixPlan | None
) -> tuple[LineView, ...]:
    """The questions; nothing of an answer is in the view before it is given."""
    known = answers(lesson, reading, wording, plan)
    views = []
    for question in lesson.questions:
        count = lesson.hands_in_all(question)
        asked = question_text(question, wording)
        if lesson.is_answered(question):
            answer = known[question]
            right = lesson.hands_for_right(question, answer.choice)
            hands = hands_against(right, count)
            views.append(LineView(asked, answer.text, answer.second, hands=hands))
        else:
            present = question == lesson.question
            views.append(LineView(asked, present=present, hands=hands_text(count)))
    return tuple(views)


def hands_text(count: int) -> str:
    """How many hands went up; empty when none were counted."""
    if count == 0:
        return ""
    if count == 1:
        return translate("class view", "1 hand")
    return translate("class view", "{count} hands").format(count=count)


def hands_against(right: int, count: int) -> str:
    """How many of the hands went up for the answer; empty when none were counted."""
    if count == 0:
        return ""
    return translate("class view", "{right} of {hands}").format(
        right=right, hands=hands_text(count)
    )


def class_wheel(
    lesson: Lesson, reading: BandReading, layout: ClassLayout, plan: MixPlan | None = None
) -> WheelView:
    """The wheel as far as the class has come.

    Without an answer it is whole and empty; with the hue the marker waits in its wedge; with the
    intensity it takes its place; with the mix the way to the complement is drawn. A second colour
    comes with its own answer.
    """
    colour = reading.colour
    radius = max(layout.wheel.width() / 2, 1.0)
    options: dict[str, Any] = {
        "show_names": False,
        "muted": muted_wedges(),
        "marker": layout.letter_radius / radius,
        "letter": LETTER_SHARE,
        "intensity_words": (),
    }
    if colour is None or not lesson.is_answered("hue"):
        return wheel_view((), waiting=True, **options)
    placed = lesson.is_answered("intensity")
    second = reading.second if lesson.is_answered("second") else None
    return wheel_view(
        (reading,),
        # While it waits the marker keeps its rings off: they belong to a place.
        chosen=0 if placed else None,
        lit=tuple(FAMILIES.index(family) for family in lit_families(lesson, reading, plan)),
        waiting=not placed,
        show_way=lesson.is_answered("mix") and _tones(reading, plan),
        seconds=second is not None,
        **options,
    )


def _tones(reading: BandReading, plan: MixPlan | None) -> bool:
    """Whether the wheel shows a way to tone the band down."""
    return tones_on_wheel(reading.colour, toning_of(plan, reading))


def lit_families(
    lesson: Lesson, reading: BandReading, plan: MixPlan | None = None
) -> tuple[Family, ...]:
    """The wedges spoken of so far: the band's own, its second colour's, what tones it down."""
    colour = reading.colour
    if colour is None or not lesson.is_answered("hue"):
        return ()
    lit = [colour.hue.family]
    if lesson.is_answered("mix") and _tones(reading, plan):
        lit.append(colour.complement)
    if lesson.is_answered("second") and reading.second is not None:
        lit.append(reading.second.colour.hue.family)
    return tuple(dict.fromkeys(family for family in lit if family is not None))


def wedge_names(
    lesson: Lesson, reading: BandReading, plan: MixPlan | None = None
) -> tuple[WedgeName, ...]:
    """The names of the wedges spoken of, for the tags outside the wheel."""
    return tuple(
        WedgeName(FAMILIES.index(family), sentence_case(family_name(family)))
        for family in lit_families(lesson, reading, plan)
    )


def class_chip(lesson: Lesson, reading: BandReading) -> ChipView:
    """The band's colour; its second one beside it once that has been asked for."""
    colour, second = reading.colour, reading.second
    if colour is None:
        return ChipView(None)
    if second is None or "second" not in (lesson.question, *_answered(lesson)):
        return ChipView(colour.hex)
    return ChipView(colour.hex, second=second.colour.hex, share=second.share)


def _answered(lesson: Lesson) -> tuple[Question, ...]:
    return lesson.questions[: lesson.shown]


def class_ladder(
    lesson: Lesson, reading: BandReading, wording: Wording, layout: ClassLayout
) -> LadderView:
    """The value ladder, lying; the band's letter comes with its answer."""
    readings = (reading,) if lesson.is_answered("value") else ()
    return ladder_view(
        readings,
        wording,
        chosen=0 if readings else None,
        seconds=lesson.is_answered("second"),
        across=layout.ladder_across,
        tag_text=LEAST_TEXT * layout.height,
        numbers=False,
        letter_px=layout.letter_radius,
        letter=LETTER_SHARE,
    )


def tally_view(
    lesson: Lesson,
    question: Question,
    chosen: int,
    reading: BandReading,
    wording: Wording,
    hint: str,
) -> TallyView:
    """The guesses at one question, with the hands noted so far."""
    rows = tuple(
        (text, lesson.hands_for(question, key)) for key, text in choices(question, wording)
    )
    right = None
    if lesson.is_answered(question):
        key = answer_to(question, reading, wording).choice
        keys = [each for each, _ in choices(question, wording)]
        right = keys.index(key) if key in keys else None
    return TallyView(question_text(question, wording), rows, chosen, right, hint)


def spoken_text(
    lesson: Lesson, reading: BandReading, wording: Wording, plan: MixPlan | None
) -> str:
    """What a screen reader or a voice says of the screen: the question, and the answers given."""
    known = answers(lesson, reading, wording, plan)
    parts = [translate("class view", "Band {letter}.").format(letter=reading.letter)]
    for question in lesson.questions:
        if lesson.is_answered(question):
            answer = known[question]
            second = f", {answer.second}" if answer.second else ""
            parts.append(f"{question_text(question, wording)} {answer.text}{second}.")
    if lesson.question is not None:
        parts.append(question_text(lesson.question, wording))
    return " ".join(parts)


def painted_text() -> str:
    """What is said of the screen while the sky paints itself."""
    return translate(
        "class view", "The sky as its mixes are predicted to dry, at the right, beside the photo."
    )


def finder_text(reading: BandReading) -> str:
    """What is said of the screen while the viewfinder is held over a band."""
    return translate(
        "class view", "Viewfinder over band {letter}: arrows slide it, Space opens it."
    ).format(letter=reading.letter)


def letters_of(readings: Sequence[BandReading]) -> tuple[str, ...]:
    """The bands' letters from the top."""
    return tuple(reading.letter for reading in readings)

"""What the class is asked about a band, and the answers, short enough for the back row."""

from __future__ import annotations

from dataclasses import dataclass
from typing import assert_never

from core.i18n import translate
from core.lesson.lesson import Question
from core.reading.reading import (
    INTENSITY_WORDS,
    VALUE_WORDS,
    BandReading,
    ColourReading,
    IntensityWord,
)
from core.reading.wheel import FAMILIES, HUE_CLASSES
from core.reading.wording import Wording
from core.words.lists import sentence_case
from core.words.names import (
    class_word,
    family_name,
    hue_short,
    intensity_text,
    neutral_name,
    value_number,
    value_word_text,
)
from core.words.second import share_short
from core.words.toning import toning_short
from core.words.toning_planned import PlannedToning

NO_FAMILY = "near neutral"
"""The guess that a band has no hue family, and so no class."""


@dataclass(frozen=True)
class Answer:
    """What is shown once the class has guessed.

    Attributes
    ----------
    choice : str or None
        The guess that is right, among `choices`; None where there is nothing to guess.
    text, second : str
        The answer, and a smaller line below it, often empty.
    """

    choice: str | None
    text: str
    second: str = ""


def question_text(question: Question, wording: Wording) -> str:
    """The question as asked."""
    match question:
        case "hue":
            return translate("class view", "What hue is it?")
        case "class":
            return translate("class view", "Primary, secondary or {tertiary}?").format(
                tertiary=class_word("tertiary", wording)
            )
        case "value":
            return translate("class view", "How light or dark?")
        case "intensity":
            return translate("class view", "Intense or dull?")
        case "second":
            return translate("class view", "There is a second colour: what is it?")
        case "mix":
            return translate("class view", "How to mix it and tone it down?")
        case _:
            assert_never(question)


def choices(question: Question, wording: Wording) -> tuple[tuple[str, str], ...]:
    """What hands can go up for: key and text of each guess; none for the mix."""
    if question in ("hue", "second"):
        named = [(family, family_name(family)) for family in FAMILIES]
        return (*named, (NO_FAMILY, translate("class view", "near neutral")))
    if question == "class":
        classes = tuple((key, class_word(key, wording)) for key in HUE_CLASSES)
        return (*classes, (NO_FAMILY, translate("class view", "none of them")))
    if question == "value":
        return tuple((word, value_word_text(word)) for word in reversed(VALUE_WORDS))
    if question == "intensity":
        return tuple((word, _guess(word)) for word in reversed(INTENSITY_WORDS))
    return ()


def answer_to(
    question: Question,
    reading: BandReading,
    wording: Wording,
    mix: str = "",
    toning: PlannedToning | None = None,
) -> Answer:
    """The answer to a question about a band.

    Parameters
    ----------
    question : Question
    reading : BandReading
    wording : Wording
    mix : str
        The band's mix in parts, from the plan; empty while there is none.
    toning : PlannedToning or None
        How the plan tones it down; None while there is no plan.
    """
    colour = reading.colour
    if colour is None:
        return Answer(None, translate("class view", "No sky in this band"))
    match question:
        case "hue":
            return _hue(colour)
        case "class":
            return _class(colour, wording)
        case "value":
            text = translate("class view", "{word}, value {number}").format(
                word=value_word_text(colour.value_word),
                number=value_number(colour.munsell.value, wording),
            )
            return Answer(colour.value_word, sentence_case(text))
        case "intensity":
            said = sentence_case(intensity_text(colour.intensity_said))
            return Answer(colour.intensity_word, said)
        case "second":
            return _second(reading, wording)
        case "mix":
            return Answer(None, sentence_case(toning_short(colour, toning)), mix)
        case _:
            assert_never(question)


def _guess(word: IntensityWord) -> str:
    """A guess at the intensity: a thin wash is as weak as a greyed one, and is no duller."""
    return translate("class view", "dull or pale") if word == "dull" else intensity_text(word)


def _hue(colour: ColourReading) -> Answer:
    hue = colour.hue
    if hue.family is not None:
        second = ""
        if hue.also is not None:
            second = translate("class view", "near {hue}").format(hue=family_name(hue.also))
        return Answer(hue.family, sentence_case(family_name(hue.family)), second)
    second = ""
    if hue.leaning is not None:
        second = translate("class view", "leaning {hue}").format(hue=family_name(hue.leaning))
    return Answer(NO_FAMILY, sentence_case(neutral_name(hue)), second)


def _second(reading: BandReading, wording: Wording) -> Answer:
    """Hue and share of the second colour, its value and intensity below."""
    if reading.second is None:
        return Answer(None, translate("class view", "No second colour"))
    colour = reading.second.colour
    text = translate("class view", "{hue}, {share}").format(
        hue=hue_short(colour.hue), share=share_short(reading.second.share)
    )
    under = translate("class view", "{word}, value {number}").format(
        word=value_word_text(colour.value_word), number=value_number(colour.munsell.value, wording)
    )
    if colour.hue.family is not None:
        under = translate("class view", "{value}, {intensity}").format(
            value=under, intensity=intensity_text(colour.intensity_word)
        )
    return Answer(colour.hue.family or NO_FAMILY, sentence_case(text), under)


def _class(colour: ColourReading, wording: Wording) -> Answer:
    if colour.hue.hue_class is None:
        text = translate("class view", "None: {hue}").format(hue=hue_short(colour.hue))
        return Answer(NO_FAMILY, sentence_case(text))
    return Answer(colour.hue.hue_class, sentence_case(class_word(colour.hue.hue_class, wording)))

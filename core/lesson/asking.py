"""What the class is asked about a band, and the answers, short enough for the back row."""

from __future__ import annotations

from dataclasses import dataclass

from core.i18n import translate
from core.lesson.lesson import Question
from core.paint.wash.order import Order, Stage
from core.reading.reading import INTENSITY_WORDS, VALUE_WORDS, BandReading, ColourReading
from core.reading.wheel import FAMILIES
from core.reading.wording import Wording
from core.words.names import (
    class_word,
    family_name,
    hue_short,
    intensity_text,
    neutral_name,
    value_number,
    value_word_text,
)

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
    return {
        "hue": translate("class view", "What hue is it?"),
        "class": translate("class view", "Primary, secondary or {tertiary}?"),
        "value": translate("class view", "How light or dark?"),
        "intensity": translate("class view", "Intense or dull?"),
        "mix": translate("class view", "How to mix it and tone it down?"),
    }[question].format(tertiary=class_word("tertiary", wording))


def choices(question: Question, wording: Wording) -> tuple[tuple[str, str], ...]:
    """What hands can go up for: key and text of each guess; none for the mix."""
    if question == "hue":
        named = [(family, family_name(family)) for family in FAMILIES]
        return (*named, (NO_FAMILY, translate("class view", "near neutral")))
    if question == "class":
        named = [(key, class_word(key, wording)) for key in ("primary", "secondary", "tertiary")]
        return (*named, (NO_FAMILY, translate("class view", "none of them")))
    if question == "value":
        return tuple((word, value_word_text(word)) for word in reversed(VALUE_WORDS))
    if question == "intensity":
        return tuple((word, intensity_text(word)) for word in reversed(INTENSITY_WORDS))
    return ()


def answer_to(question: Question, reading: BandReading, wording: Wording, mix: str = "") -> Answer:
    """The answer to a question about a band.

    Parameters
    ----------
    question : Question
    reading : BandReading
    wording : Wording
    mix : str
        The band's mix in parts, from the plan; empty while there is none.
    """
    colour = reading.colour
    if colour is None:
        return Answer(None, translate("class view", "No sky in this band"))
    if question == "hue":
        return _hue(colour)
    if question == "class":
        return _class(colour, wording)
    if question == "value":
        text = translate("class view", "{word}, value {number}").format(
            word=value_word_text(colour.value_word),
            number=value_number(colour.munsell.value, wording),
        )
        return Answer(colour.value_word, _capital(text))
    if question == "intensity":
        word = colour.intensity_word
        return Answer(word, _capital(intensity_text(word)))
    return Answer(None, _capital(_toning(colour)), mix)


def _hue(colour: ColourReading) -> Answer:
    hue = colour.hue
    if hue.family is not None:
        second = ""
        if hue.also is not None:
            second = translate("class view", "near {hue}").format(hue=family_name(hue.also))
        return Answer(hue.family, _capital(family_name(hue.family)), second)
    second = ""
    if hue.leaning is not None:
        second = translate("class view", "leaning {hue}").format(hue=family_name(hue.leaning))
    return Answer(NO_FAMILY, _capital(neutral_name(hue)), second)


def _class(colour: ColourReading, wording: Wording) -> Answer:
    if colour.hue.hue_class is None:
        text = translate("class view", "None: {hue}").format(hue=hue_short(colour.hue))
        return Answer(NO_FAMILY, _capital(text))
    return Answer(colour.hue.hue_class, _capital(class_word(colour.hue.hue_class, wording)))


def _toning(colour: ColourReading) -> str:
    if colour.complement is None:
        return translate("class view", "No hue to tone down")
    complement = family_name(colour.complement)
    if colour.intensity_word == "intense":
        return translate("class view", "Keep it intense")
    if colour.intensity_word == "moderate":
        return translate("class view", "A little {complement}").format(complement=complement)
    if colour.intensity_word == "dull":
        return translate("class view", "More {complement}").format(complement=complement)
    return translate("class view", "Almost grey, with {complement}").format(complement=complement)


def _capital(text: str) -> str:
    return text[:1].upper() + text[1:]


@dataclass(frozen=True)
class Pace:
    """One step of the demonstration.

    Attributes
    ----------
    stage : "wet", "lay", "stop" or "dry"
    text : str
        Two or three words.
    """

    stage: Stage
    text: str


def paces(order: Order | None) -> tuple[Pace, ...]:
    """The steps of a demonstration, from the plan's order of work; in general without a plan."""
    if order is None:
        return (_pace("wet"), Pace("lay", translate("class view", "Lay")), *_ending())
    laid = [step.letters for step in order.steps if step.stage == "lay"]
    lays = [
        Pace("lay", translate("class view", "Lay {bands}").format(bands=", ".join(letters)))
        for letters in laid
    ]
    return (_pace("wet"), *lays, *_ending())


def _pace(stage: Stage) -> Pace:
    return Pace(
        stage,
        {
            "wet": translate("class view", "Wet"),
            "stop": translate("class view", "Stop"),
            "dry": translate("class view", "Dry"),
        }[stage],
    )


def _ending() -> tuple[Pace, Pace]:
    return _pace("stop"), _pace("dry")

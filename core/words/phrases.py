"""A colour in phrases: hue, value and intensity as they are read aloud."""

from __future__ import annotations

from core.i18n import translate
from core.reading.reading import ColourReading
from core.reading.wheel import HueReading
from core.reading.wording import Wording
from core.words.names import (
    class_with_article,
    family_name,
    intensity_text,
    neutral_name,
    value_number,
    value_word_text,
)


def hue_phrase(hue: HueReading, wording: Wording) -> str:
    """The hue in words: "blue-violet, a tertiary, near violet"; "near neutral, leaning blue"."""
    if hue.family is None or hue.hue_class is None:
        if hue.leaning is None:
            return neutral_name(hue)
        return translate("words", "{neutral}, leaning {hue}").format(
            neutral=neutral_name(hue), hue=family_name(hue.leaning)
        )
    name = family_name(hue.family)
    hue_class = class_with_article(hue.hue_class, wording)
    if hue.also is None:
        return translate("words", "{hue}, {a_class}").format(hue=name, a_class=hue_class)
    return translate("words", "{hue}, {a_class}, near {neighbour}").format(
        hue=name, a_class=hue_class, neighbour=family_name(hue.also)
    )


def value_phrase(colour: ColourReading, wording: Wording) -> str:
    """The value in words and number: "dark, value 4.4"."""
    number = value_number(colour.munsell.value, wording)
    if colour.value_word == "middle":
        return translate("words", "of middle value, {number}").format(number=number)
    return translate("words", "{word}, value {number}").format(
        word=value_word_text(colour.value_word), number=number
    )


def intensity_phrase(colour: ColourReading, wording: Wording) -> str:
    """The intensity in words: "intense", "of moderate intensity", "dull", "near neutral"."""
    if colour.intensity_word == "moderate":
        return translate("words", "of moderate intensity")
    return intensity_text(colour.intensity_said)


def colour_sentence_part(colour: ColourReading, wording: Wording) -> str:
    """Hue, value and intensity in one breath, without a subject and a full stop.

    A near neutral names no intensity again: "near neutral" has said it.
    """
    hue = hue_phrase(colour.hue, wording)
    value = value_phrase(colour, wording)
    if colour.hue.family is None:
        return translate("words", "{hue}; {value}").format(hue=hue, value=value)
    return translate("words", "{hue}; {value}; and {intensity}").format(
        hue=hue, value=value, intensity=intensity_phrase(colour, wording)
    )

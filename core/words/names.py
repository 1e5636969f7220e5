"""Single words and short forms: hue families, classes, value and intensity, for tables and cards.

Keys ("red-orange") are what the program works with; the text shown comes from here alone.
"""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.reading.reading import ColourReading, IntensitySaid, ValueWord
from core.reading.wheel import Family, HueClass, HueReading
from core.reading.wording import Wording


def family_name(family: Family) -> str:
    """The name of a hue family as shown."""
    match family:
        case "yellow":
            return translate("words", "yellow")
        case "yellow-orange":
            return translate("words", "yellow-orange")
        case "orange":
            return translate("words", "orange")
        case "red-orange":
            return translate("words", "red-orange")
        case "red":
            return translate("words", "red")
        case "red-violet":
            return translate("words", "red-violet")
        case "violet":
            return translate("words", "violet")
        case "blue-violet":
            return translate("words", "blue-violet")
        case "blue":
            return translate("words", "blue")
        case "blue-green":
            return translate("words", "blue-green")
        case "green":
            return translate("words", "green")
        case "yellow-green":
            return translate("words", "yellow-green")
        case _:
            assert_never(family)


def class_word(hue_class: HueClass, wording: Wording) -> str:
    """primary, secondary, and the class's own word for the six between."""
    match hue_class:
        case "primary":
            return translate("words", "primary")
        case "secondary":
            return translate("words", "secondary")
        case "tertiary":
            if wording.tertiary == "intermediate":
                return translate("words", "intermediate")
            return translate("words", "tertiary")
        case _:
            assert_never(hue_class)


def class_with_article(hue_class: HueClass, wording: Wording) -> str:
    """ "a primary", "a secondary", "a tertiary" or "an intermediate"."""
    match hue_class:
        case "primary":
            return translate("words", "a primary")
        case "secondary":
            return translate("words", "a secondary")
        case "tertiary":
            if wording.tertiary == "intermediate":
                return translate("words", "an intermediate")
            return translate("words", "a tertiary")
        case _:
            assert_never(hue_class)


def value_word_text(value_word: ValueWord) -> str:
    """The word for a value as shown."""
    match value_word:
        case "very dark":
            return translate("words", "very dark")
        case "dark":
            return translate("words", "dark")
        case "middle":
            return translate("words", "middle")
        case "light":
            return translate("words", "light")
        case "very light":
            return translate("words", "very light")
        case _:
            assert_never(value_word)


def value_number(value: float, wording: Wording) -> str:
    """A Munsell value on the class's own scale, one decimal."""
    # Adding 0 turns -0.0 into 0.0.
    return f"{round(wording.shown_value(value), 1) + 0.0:.1f}"


def value_end(white_end: bool, wording: Wording) -> str:
    """What stands at an end of the value scale: "10 white", "0 black"."""
    white = wording.white_is
    if white_end:
        return translate("words", "{number} white").format(number=white)
    return translate("words", "{number} black").format(number=10 - white)


def intensity_text(intensity_word: IntensitySaid) -> str:
    """The word for an intensity as shown: one of INTENSITY_WORDS, or "pale"."""
    match intensity_word:
        case "pale":
            return translate("words", "pale")
        case "near neutral":
            return translate("words", "near neutral")
        case "dull":
            return translate("words", "dull")
        case "moderate":
            return translate("words", "moderate")
        case "intense":
            return translate("words", "intense")
        case _:
            assert_never(intensity_word)


def neutral_name(hue: HueReading) -> str:
    """What a colour without a family is called: "grey" without any hue, else "near neutral"."""
    neutral = hue.neutral or "grey"
    plain = hue.leaning is None
    match neutral:
        case "white":
            return translate("words", "white") if plain else translate("words", "near white")
        case "grey":
            if plain:
                return translate("words", "neutral grey")
            return translate("words", "near neutral")
        case "black":
            return translate("words", "black") if plain else translate("words", "near black")
        case _:
            assert_never(neutral)


def hue_short(hue: HueReading) -> str:
    """The hue in the fewest words: "blue-violet", "near neutral"."""
    return family_name(hue.family) if hue.family is not None else neutral_name(hue)


def second_line(colour: ColourReading, wording: Wording) -> str:
    """What stands below the hue: "tertiary, near violet", "leaning blue", or nothing."""
    hue = colour.hue
    if hue.hue_class is not None:
        word = class_word(hue.hue_class, wording)
        if hue.also is None:
            return word
        return translate("words", "{hue_class}, near {hue}").format(
            hue_class=word, hue=family_name(hue.also)
        )
    if hue.leaning is not None:
        return translate("words", "leaning {hue}").format(hue=family_name(hue.leaning))
    return ""

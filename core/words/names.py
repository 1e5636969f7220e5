"""Single words and short forms: hue families, classes, value and intensity, for tables and cards.

Keys ("red-orange") are what the program reckons with; the text shown comes from here alone.
"""

from __future__ import annotations

from core.i18n import translate
from core.reading.reading import ColourReading
from core.reading.wheel import HueReading
from core.reading.wording import Wording


def family_name(family: str) -> str:
    """The name of a hue family as shown."""
    return {
        "yellow": translate("words", "yellow"),
        "yellow-orange": translate("words", "yellow-orange"),
        "orange": translate("words", "orange"),
        "red-orange": translate("words", "red-orange"),
        "red": translate("words", "red"),
        "red-violet": translate("words", "red-violet"),
        "violet": translate("words", "violet"),
        "blue-violet": translate("words", "blue-violet"),
        "blue": translate("words", "blue"),
        "blue-green": translate("words", "blue-green"),
        "green": translate("words", "green"),
        "yellow-green": translate("words", "yellow-green"),
    }[family]


def class_word(hue_class: str, wording: Wording) -> str:
    """primary, secondary, and the class's own word for the six between."""
    if hue_class == "primary":
        return translate("words", "primary")
    if hue_class == "secondary":
        return translate("words", "secondary")
    if wording.tertiary == "intermediate":
        return translate("words", "intermediate")
    return translate("words", "tertiary")


def class_with_article(hue_class: str, wording: Wording) -> str:
    """ "a primary", "a secondary", "a tertiary" or "an intermediate"."""
    if hue_class == "primary":
        return translate("words", "a primary")
    if hue_class == "secondary":
        return translate("words", "a secondary")
    if wording.tertiary == "intermediate":
        return translate("words", "an intermediate")
    return translate("words", "a tertiary")


def value_word_text(value_word: str) -> str:
    """The word for a value as shown."""
    return {
        "very dark": translate("words", "very dark"),
        "dark": translate("words", "dark"),
        "middle": translate("words", "middle"),
        "light": translate("words", "light"),
        "very light": translate("words", "very light"),
    }[value_word]


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


def intensity_text(intensity_word: str) -> str:
    """The word for an intensity as shown."""
    return {
        "near neutral": translate("words", "near neutral"),
        "dull": translate("words", "dull"),
        "moderate": translate("words", "moderate"),
        "intense": translate("words", "intense"),
    }[intensity_word]


def neutral_name(hue: HueReading) -> str:
    """What a colour without a family is called: "grey" without any hue, else "near neutral"."""
    if hue.leaning is None:
        return {
            "white": translate("words", "white"),
            "grey": translate("words", "neutral grey"),
            "black": translate("words", "black"),
        }[hue.neutral or "grey"]
    return {
        "white": translate("words", "near white"),
        "grey": translate("words", "near neutral"),
        "black": translate("words", "near black"),
    }[hue.neutral or "grey"]


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

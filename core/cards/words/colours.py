"""What a card says of a colour."""

from __future__ import annotations

from core.i18n import translate
from core.reading.reading import BandReading, ColourReading
from core.reading.wording import Wording
from core.words import (
    class_word,
    family_name,
    hue_short,
    intensity_text,
    second_line,
    share_text,
    value_number,
    value_word_text,
)


def value_piece(colour: ColourReading, wording: Wording) -> str:
    """ "value 4.4, dark"."""
    return translate("cards", "value {number}, {word}").format(
        number=value_number(colour.munsell.value, wording),
        word=value_word_text(colour.value_word),
    )


def scale_piece(colour: ColourReading, wording: Wording) -> str:
    """Value and intensity: "value 4.4, dark; intense"; a near neutral says it as its hue."""
    value = value_piece(colour, wording)
    if colour.hue.family is None:
        return value
    return translate("cards", "{value}; {intensity}").format(
        value=value, intensity=intensity_text(colour.intensity_said)
    )


def second_piece(reading: BandReading, wording: Wording) -> str:
    """ "About a quarter: orange, secondary; value 8.1, light; dull"; empty for one colour."""
    if reading.second is None:
        return ""
    share, colour = share_text(reading.second.share), reading.second.colour
    return translate("cards", "{share}: {hue}; {scales}").format(
        share=share[:1].upper() + share[1:],
        hue=hue_pieces(colour, wording)[0],
        scales=scale_piece(colour, wording),
    )


def hue_pieces(colour: ColourReading, wording: Wording) -> tuple[str, str]:
    """Hue and class, and what may stand behind in a lighter weight: ", near violet"."""
    hue = hue_short(colour.hue)
    if colour.hue.hue_class is not None:
        hue = translate("cards", "{hue}, {second}").format(
            hue=hue, second=class_word(colour.hue.hue_class, wording)
        )
        if colour.hue.also is None:
            return hue, ""
        near = translate("cards", ", near {hue}").format(hue=family_name(colour.hue.also))
        return hue, near
    if colour.hue.leaning is None:
        return hue, ""
    leaning = translate("cards", ", leaning {hue}").format(hue=family_name(colour.hue.leaning))
    return hue, leaning


def hue_piece(colour: ColourReading, wording: Wording) -> str:
    """ "blue-violet, tertiary, near violet"."""
    second = second_line(colour, wording)
    hue = hue_short(colour.hue)
    if not second:
        return hue
    return translate("cards", "{hue}, {second}").format(hue=hue, second=second)


def sheet_readout(colour: ColourReading, wording: Wording) -> str:
    """A band of a sheet in few words: "violet 5.4, moderate"."""
    hue = hue_short(colour.hue)
    value = value_number(colour.munsell.value, wording)
    if colour.hue.family is None:
        return translate("cards", "{hue} {value}").format(hue=hue, value=value)
    return translate("cards", "{hue} {value}, {intensity}").format(
        hue=hue, value=value, intensity=intensity_text(colour.intensity_said)
    )


def scales_short(colour: ColourReading, wording: Wording) -> str:
    """ "value 4.4, intense"; of a near neutral the value alone."""
    number = translate("cards", "value {number}").format(
        number=value_number(colour.munsell.value, wording)
    )
    if colour.hue.family is None:
        return number
    return translate("cards", "{value}, {intensity}").format(
        value=number, intensity=intensity_text(colour.intensity_said)
    )

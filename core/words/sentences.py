"""Sentences about a colour and a band, to be read aloud to a class."""

from __future__ import annotations

from core.colour.difference import delta_E_2000
from core.i18n import translate
from core.reading.reading import BandReading, ColourReading
from core.reading.wheel import HueReading
from core.reading.wording import Wording
from core.words.names import (
    class_with_article,
    family_name,
    hue_short,
    intensity_text,
    neutral_name,
    value_number,
    value_word_text,
)

CLIPPED_NOTE_SHARE = 0.02
"""From this share of clipped pixels a band gets a note."""

FEW_PIXELS_SHARE = 0.2
"""Below this share of sky pixels a band's reading rests on little."""

SIDES_NOTE_DELTA_E = 6.0
"""From this difference between its left and right third, in CIEDE2000, a band gets a note.
Above 5 in delta E*ab an observer sees two colours (W. Mokrzycki, M. Tatol, 2011, "Colour
difference delta E: a survey", Machine Graphics and Vision 20(4)); CIEDE2000 is the smaller
number for most pairs, so this is the more patient bound."""


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
    return intensity_text(colour.intensity_word)


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


def band_sentence(reading: BandReading, wording: Wording) -> str:
    """The band in one sentence: "Band A is blue, a primary; dark, value 4.4; and intense."."""
    if reading.colour is None:
        return translate("words", "Band {letter} holds no sky: move its lines.").format(
            letter=reading.letter
        )
    return translate("words", "Band {letter} is {colour}.").format(
        letter=reading.letter, colour=colour_sentence_part(reading.colour, wording)
    )


def band_notes(reading: BandReading, wording: Wording) -> tuple[str, ...]:
    """What else should be known of a band, each note a sentence; often none."""
    if reading.colour is None:
        return ()
    notes = []
    if reading.two_colours:
        notes.append(translate("words", "Two colours here: split it?"))
    if reading.clipped_share >= 0.5:
        notes.append(
            translate("words", "Most of this band is clipped: the photo holds no detail there.")
        )
    elif reading.clipped_share >= CLIPPED_NOTE_SHARE:
        notes.append(
            translate(
                "words", "Part of this band is clipped: the photo holds no more detail there."
            )
        )
    if reading.pixel_share < FEW_PIXELS_SHARE:
        notes.append(translate("words", "Little of this band is sky: look at its lines."))
    sides = _sides_note(reading)
    if sides is not None:
        notes.append(sides)
    return tuple(notes)


def _sides_note(reading: BandReading) -> str | None:
    left, right = reading.left, reading.right
    if left is None or right is None:
        return None
    if float(delta_E_2000(left.Lab, right.Lab)) < SIDES_NOTE_DELTA_E:
        return None
    return translate("words", "It changes from {left} on the left to {right} on the right.").format(
        left=_side(left), right=_side(right)
    )


def _side(colour: ColourReading) -> str:
    return translate("words", "{hue} ({value}, {intensity})").format(
        hue=hue_short(colour.hue),
        value=value_word_text(colour.value_word),
        intensity=intensity_text(colour.intensity_word),
    )

"""Sentences about a band, to be read aloud to a class."""

from __future__ import annotations

from core.i18n import translate
from core.reading.reading import BandReading
from core.reading.wording import Wording
from core.words.phrases import colour_sentence_part
from core.words.second import two_colours_sentence
from core.words.sides import sides_note

CLIPPED_NOTE_SHARE = 0.02
"""From this share of clipped pixels a band gets a note."""

FEW_PIXELS_SHARE = 0.2
"""Below this share of sky pixels a band's reading rests on little."""


def band_sentence(reading: BandReading, wording: Wording) -> str:
    """The band in one sentence: "Band A is blue, a primary; dark, value 4.4; and intense."

    A band that holds two colours takes a sentence for each.
    """
    if reading.colour is None:
        return translate("words", "Band {letter} holds no sky: move its lines.").format(
            letter=reading.letter
        )
    if reading.second is not None:
        return two_colours_sentence(reading, wording)
    return translate("words", "Band {letter} is {colour}.").format(
        letter=reading.letter, colour=colour_sentence_part(reading.colour, wording)
    )


def band_notes(reading: BandReading, wording: Wording) -> tuple[str, ...]:
    """What else should be known of a band, each note a sentence; often none."""
    if reading.colour is None:
        return ()
    notes = []
    if reading.stacked:
        notes.append(translate("words", "Two colours here, one above the other: split it?"))
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
    sides = sides_note(reading, wording)
    if sides is not None:
        notes.append(sides)
    return tuple(notes)

"""From a band's reading to the texts of the table and of the spoken strip."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from core.i18n import translate
from core.reading.reading import BandReading, SecondColour
from core.reading.wording import Wording
from core.words import (
    PlannedToning,
    band_notes,
    band_sentence,
    hue_short,
    intensity_text,
    second_line,
    second_sentence,
    second_short,
    tone_down_sentence,
    value_number,
    value_word_text,
    way_on_wheel_sentence,
)
from core.words.lists import sentence_case


@dataclass(frozen=True)
class OtherColour:
    """The second colour of a band in the table: "#rrggbb", its share, and a word a column."""

    colour: str
    share: float
    hue: str
    value: str
    intensity: str


@dataclass(frozen=True)
class ReadoutRow:
    """One band's texts.

    Attributes
    ----------
    letter : str
    colour : str or None
        "#rrggbb"; None when the band holds no sky: then `hue` says so and the rest is empty.
    hue, hue_second : str
        Family, and class or leaning.
    value, value_second : str
        Number, and word.
    intensity, intensity_second : str
        Word, and chroma.
    spoken : str
        The whole as a sentence, for a screen reader.
    other : OtherColour or None
        The band's second colour.
    """

    letter: str
    colour: str | None
    hue: str
    hue_second: str
    value: str
    value_second: str
    intensity: str
    intensity_second: str
    spoken: str
    other: OtherColour | None = None


@dataclass(frozen=True)
class SpokenView:
    """What is read aloud of one band: big words, their second lines, how to tone it down.

    `other` is its second colour; the sentence begins with it.
    """

    letter: str
    colour: str | None
    hue: str
    hue_second: str
    value: str
    value_second: str
    intensity: str
    intensity_second: str
    sentence: str
    spoken: str
    other: OtherColour | None = None


def readout_rows(readings: Sequence[BandReading], wording: Wording) -> tuple[ReadoutRow, ...]:
    """The table's rows, top band first."""
    return tuple(_row(reading, wording) for reading in readings)


def _row(reading: BandReading, wording: Wording) -> ReadoutRow:
    colour = reading.colour
    spoken = band_sentence(reading, wording)
    if colour is None:
        nothing = translate("readout", "no sky here")
        return ReadoutRow(reading.letter, None, nothing, "", "", "", "", "", spoken)
    return ReadoutRow(
        letter=reading.letter,
        colour=colour.hex,
        hue=hue_short(colour.hue),
        hue_second=second_line(colour, wording),
        value=value_number(colour.munsell.value, wording),
        value_second=value_word_text(colour.value_word),
        intensity=intensity_text(colour.intensity_said),
        intensity_second=_chroma(colour.munsell.chroma),
        spoken=spoken,
        other=_other(reading.second, wording),
    )


def _other(second: SecondColour | None, wording: Wording) -> OtherColour | None:
    if second is None:
        return None
    colour = second.colour
    return OtherColour(
        colour.hex,
        second.share,
        second_short(second),
        value_number(colour.munsell.value, wording),
        intensity_text(colour.intensity_said),
    )


def _chroma(chroma: float) -> str:
    return translate("readout", "chroma {number}").format(number=f"{chroma:.1f}")


def spoken_view(
    reading: BandReading,
    wording: Wording,
    toning: PlannedToning | None = None,
    *,
    says_way: bool = False,
) -> SpokenView:
    """The strip's texts for one band.

    Parameters
    ----------
    reading : BandReading
    wording : Wording
    toning : PlannedToning or None
        How the plan tones it down; None while there is no plan.
    says_way : bool
        Whether this is the band that tells what toning down is on the wheel.
    """
    row = _row(reading, wording)
    if reading.colour is None:
        return SpokenView(
            row.letter, None, sentence_case(row.hue), "", "", "", "", "", row.spoken, row.spoken
        )
    number = translate("readout", "value {number} of 10").format(number=row.value)
    said = tone_down_sentence(reading, wording, toning)
    if says_way:
        said = f"{said} {way_on_wheel_sentence(reading.colour)}".strip()
    first = band_notes(reading, wording)[:1]
    if reading.second is not None:
        first = (second_sentence(reading.second, wording),)
    return SpokenView(
        letter=row.letter,
        colour=row.colour,
        hue=sentence_case(row.hue),
        hue_second=row.hue_second,
        value=sentence_case(row.value_second),
        value_second=number,
        intensity=sentence_case(row.intensity),
        intensity_second=row.intensity_second,
        sentence=" ".join((*first, said)).strip(),
        spoken=" ".join((row.spoken, said)).strip(),
        other=row.other,
    )

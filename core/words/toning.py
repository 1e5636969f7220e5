"""How to tone a colour down with its complement, in a sentence."""

from __future__ import annotations

from dataclasses import dataclass

from core.i18n import translate
from core.reading.reading import BandReading, ColourReading
from core.reading.wheel import FAMILIES, Family, complement, hue_class, wheel_distance
from core.reading.wording import Wording
from core.words.names import family_name


@dataclass(frozen=True)
class ToneDownParts:
    """A paint of the box that tones a mix down, in parts.

    Attributes
    ----------
    paint : str
        Its name as shown.
    parts, to_parts : int
        So many parts of it to so many parts of the mix.
    """

    paint: str
    parts: int
    to_parts: int


def box_family(family: Family) -> Family:
    """The family a school box most likely has nearest to a family.

    Boxes hold the primaries and mostly the secondaries, ready mixed; of the six hues between
    they hold none (common practice). So a hue between becomes the secondary beside it.

    >>> box_family("blue-green")
    'green'
    """
    if hue_class(family) != "tertiary":
        return family
    beside = [other for other in FAMILIES if wheel_distance(family, other) == 1]
    return next(other for other in beside if hue_class(other) == "secondary")


def touch_family(family: Family) -> Family | None:
    """The primary of which a touch turns the box's paint into the family itself.

    None where the box has the family: blue-green is the box's green and a touch of blue.
    """
    if hue_class(family) != "tertiary":
        return None
    beside = [other for other in FAMILIES if wheel_distance(family, other) == 1]
    return next(other for other in beside if hue_class(other) == "primary")


def tone_down_sentence(
    reading: BandReading | ColourReading, wording: Wording, parts: ToneDownParts | None = None
) -> str:
    """What toning down means for a band.

    Parameters
    ----------
    reading : BandReading or ColourReading
    wording : Wording
    parts : ToneDownParts or None
        What measured paints of the box would take, when that is known.

    Returns
    -------
    str
        One to three short sentences; empty for a band without a colour.
    """
    colour = reading.colour if isinstance(reading, BandReading) else reading
    if colour is None:
        return ""
    if colour.intensity_word == "intense":
        return translate("words", "This is intense: nothing to tone down.")
    own = colour.hue.family or colour.hue.leaning
    if own is None:
        return _without_hue(colour)
    return " ".join([_with_complement(colour, own), _from_the_box(complement(own), parts)])


def _without_hue(colour: ColourReading) -> str:
    if colour.hue.neutral == "white":
        return translate("words", "No hue to tone down: leave the paper white.")
    if colour.hue.neutral == "black":
        return translate(
            "words",
            "No hue to tone down: mix two complements strongly, until neither shows.",
        )
    return translate(
        "words",
        "No hue to tone down: mix two complements, such as blue and orange, until neither shows.",
    )


def _with_complement(colour: ColourReading, own: Family) -> str:
    if colour.hue.neutral == "white":
        text = translate(
            "words",
            "This is nearly white: a very thin wash of {hue}, with a speck of its complement, "
            "{complement}.",
        )
    elif colour.hue.neutral == "black":
        text = translate(
            "words",
            "This is nearly black: mix {hue} strongly with its complement, {complement}, until "
            "only a hint of {hue} is left.",
        )
    elif colour.hue.neutral == "grey":
        text = translate(
            "words",
            "Start with {hue} and add its complement, {complement}, until only a hint of {hue} is "
            "left: on the wheel that moves in from {hue} almost to the middle.",
        )
    elif colour.intensity_word == "dull":
        text = translate(
            "words",
            "Tone {hue} down well with its complement, {complement}: on the wheel that moves in "
            "from {hue} straight towards the middle.",
        )
    else:
        text = translate(
            "words",
            "Tone {hue} down a little with its complement, {complement}: on the wheel that moves "
            "in from {hue} straight towards the middle.",
        )
    return text.format(hue=family_name(own), complement=family_name(complement(own)))


def _from_the_box(opposite: Family, parts: ToneDownParts | None) -> str:
    if parts is not None:
        return _measured(parts)
    touch = touch_family(opposite)
    if touch is None:
        return translate("words", "The {hue} in the box will do it: add it in specks.").format(
            hue=family_name(opposite)
        )
    return translate(
        "words",
        "The {hue} in the box comes close: add it in specks, and a touch of {touch} moves it the "
        "last step along the wheel to {complement}.",
    ).format(
        hue=family_name(box_family(opposite)),
        touch=family_name(touch),
        complement=family_name(opposite),
    )


def _measured(parts: ToneDownParts) -> str:
    if parts.parts == 1:
        text = translate("words", "From your box: about 1 part {paint} in {whole}.")
    else:
        text = translate("words", "From your box: about {parts} parts {paint} in {whole}.")
    return text.format(parts=parts.parts, paint=parts.paint, whole=parts.parts + parts.to_parts)

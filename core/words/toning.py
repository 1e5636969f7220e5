"""How to tone a colour down with its complement, in a sentence: one answer everywhere.

Before there is a plan the sentence speaks of the hue alone and claims nothing of a box. Once there
is one, it says what the band's mix does, and nothing else.
"""

from __future__ import annotations

from collections.abc import Sequence

from core.i18n import translate
from core.reading.reading import BandReading, ColourReading
from core.reading.wheel import FAMILIES, Family, complement, hue_class, wheel_distance
from core.reading.wording import Wording
from core.words.names import family_name
from core.words.toning_planned import PlannedToning, as_planned, pale_text, short_as_planned


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


def tones_on_wheel(colour: ColourReading | None, toning: PlannedToning | None = None) -> bool:
    """Whether a band is toned down with its complement: only then the wheel shows the way."""
    if colour is None or colour.complement is None:
        return False
    if toning is not None:
        return toning.kind == "toned" and toning.across
    return colour.intensity_word != "intense" and not colour.pale


def first_on_wheel(
    readings: Sequence[BandReading], tonings: Sequence[PlannedToning | None] = ()
) -> int | None:
    """Number of the first band that is toned down on the wheel; None where none is."""
    for number, reading in enumerate(readings):
        toning = tonings[number] if number < len(tonings) else None
        if tones_on_wheel(reading.colour, toning):
            return number
    return None


def way_on_wheel_sentence(colour: ColourReading) -> str:
    """What toning down is on the wheel: said once for a sky. Empty without any hue."""
    own = colour.hue.family or colour.hue.leaning
    if own is None:
        return ""
    return translate(
        "words", "On the wheel, toning down moves in from {hue} straight towards the middle."
    ).format(hue=family_name(own))


def tone_down_sentence(
    reading: BandReading | ColourReading, wording: Wording, toning: PlannedToning | None = None
) -> str:
    """What toning down means for a band.

    Parameters
    ----------
    reading : BandReading or ColourReading
    wording : Wording
    toning : PlannedToning or None
        What the plan does about it; None while there is no plan.

    Returns
    -------
    str
        One to three short sentences; empty for a band without a colour.
    """
    colour = reading.colour if isinstance(reading, BandReading) else reading
    if colour is None:
        return ""
    if toning is not None:
        return as_planned(colour, toning)
    own = colour.hue.family or colour.hue.leaning
    if colour.intensity_word == "intense":
        return translate("words", "This is intense: little or nothing to tone down.")
    if own is None:
        return _without_hue(colour)
    if colour.pale:
        return pale_text(colour)
    return " ".join([_with_complement(colour, own), _made_from(complement(own))]).strip()


def toning_short(colour: ColourReading, toning: PlannedToning | None = None) -> str:
    """The same in two to four words, for the back row."""
    if toning is not None:
        return short_as_planned(colour, toning)
    if colour.complement is None:
        return translate("class view", "No hue to tone down")
    opposite = family_name(colour.complement)
    if colour.intensity_word == "intense":
        return translate("class view", "Keep it intense")
    if colour.pale:
        return translate("class view", "Pale: more water")
    if colour.intensity_word == "moderate":
        return translate("class view", "A little {complement}").format(complement=opposite)
    if colour.intensity_word == "dull":
        return translate("class view", "More {complement}").format(complement=opposite)
    return translate("class view", "Almost grey, with {complement}").format(complement=opposite)


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
            "left.",
        )
    elif colour.intensity_word == "dull":
        text = translate("words", "Tone {hue} down well with its complement, {complement}.")
    else:
        text = translate("words", "Tone {hue} down a little with its complement, {complement}.")
    return text.format(hue=family_name(own), complement=family_name(complement(own)))


def _made_from(opposite: Family) -> str:
    """How a hue between is made; nothing for the primaries and secondaries, which have a name."""
    touch = touch_family(opposite)
    if touch is None:
        return ""
    return translate("words", "A {hue} with a touch of {touch} makes {complement}.").format(
        hue=family_name(box_family(opposite)),
        touch=family_name(touch),
        complement=family_name(opposite),
    )

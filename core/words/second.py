"""The second colour of a band in words: what it covers, and what it is."""

from __future__ import annotations

from core.i18n import translate
from core.reading.reading import BandReading, SecondColour
from core.reading.wording import Wording
from core.words.names import hue_short
from core.words.phrases import colour_sentence_part

_EVEN = 0.45
"""From this share on neither colour is said to be most of the band."""


def share_text(share: float) -> str:
    """A share as it is said: "about a third"; never finer than the eye counts.

    >>> share_text(0.31)
    'about a third'
    """
    parts = (
        (1 / 8, translate("words", "about an eighth")),
        (1 / 6, translate("words", "about a sixth")),
        (1 / 5, translate("words", "about a fifth")),
        (1 / 4, translate("words", "about a quarter")),
        (1 / 3, translate("words", "about a third")),
        (2 / 5, translate("words", "about two fifths")),
        (1 / 2, translate("words", "nearly half")),
    )
    return min(parts, key=lambda part: abs(part[0] - share))[1]


def two_colours_sentence(reading: BandReading, wording: Wording) -> str:
    """Both colours of a band; empty where it has one.

    "Band B holds two colours. Most of it is near neutral, leaning violet; dark, value 3.2; about
    a third is orange, a secondary; light, value 7.1; and intense."
    """
    second = reading.second
    if reading.colour is None or second is None:
        return ""
    if second.share < _EVEN:
        text = translate(
            "words",
            "Band {letter} holds two colours. Most of it is {main}. {share} of it is {second}.",
        )
    else:
        text = translate(
            "words",
            "Band {letter} holds two colours. A little more than half is {main}. {share} of it "
            "is {second}.",
        )
    share = share_text(second.share)
    return text.format(
        letter=reading.letter,
        main=colour_sentence_part(reading.colour, wording),
        share=share[:1].upper() + share[1:],
        second=colour_sentence_part(second.colour, wording),
    )


def second_short(second: SecondColour) -> str:
    """In the fewest words: "and about a third orange"."""
    return translate("words", "and {share} {hue}").format(
        share=share_text(second.share), hue=hue_short(second.colour.hue)
    )

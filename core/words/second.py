"""The second colour of a band in words: what it covers, and what it is."""

from __future__ import annotations

from core.i18n import translate
from core.reading.reading import BandReading, SecondColour
from core.reading.wording import Wording
from core.words.lists import sentence_case
from core.words.names import hue_short
from core.words.phrases import colour_sentence_part

_HALF = 0.45
"""From this share on it is nearly half."""


def share_short(share: float) -> str:
    """The nearest share one counts in: "a third"; never finer than the eye sees.

    >>> share_short(0.31)
    'a third'
    """
    if share >= _HALF:
        return translate("words", "nearly half")
    parts = (
        (1 / 8, translate("words", "an eighth")),
        (1 / 6, translate("words", "a sixth")),
        (1 / 5, translate("words", "a fifth")),
        (1 / 4, translate("words", "a quarter")),
        (1 / 3, translate("words", "a third")),
        (2 / 5, translate("words", "two fifths")),
    )
    return min(parts, key=lambda part: abs(part[0] - share))[1]


def share_text(share: float) -> str:
    """The same, said to be a guess: "about a third"."""
    if share >= _HALF:
        return share_short(share)
    return translate("words", "about {share}").format(share=share_short(share))


def two_colours_sentence(reading: BandReading, wording: Wording) -> str:
    """Both colours of a band; empty where it has one.

    "Band B holds two colours. Most of it is near neutral, leaning violet; dark, value 3.2. About
    a third of it is orange, a secondary; light, value 7.1; and intense."
    """
    second = reading.second
    if reading.colour is None or second is None:
        return ""
    if second.share < _HALF:
        text = translate("words", "Band {letter} holds two colours. Most of it is {main}.")
    else:
        text = translate(
            "words", "Band {letter} holds two colours. A little more than half is {main}."
        )
    main = text.format(letter=reading.letter, main=colour_sentence_part(reading.colour, wording))
    return f"{main} {second_sentence(second, wording)}"


def second_sentence(second: SecondColour, wording: Wording) -> str:
    """ "About a third of it is orange, a secondary; light, value 7.1; and intense."."""
    share = share_text(second.share)
    return translate("words", "{share} of it is {second}.").format(
        share=sentence_case(share), second=colour_sentence_part(second.colour, wording)
    )


def second_short(second: SecondColour) -> str:
    """In the fewest words: "a third: orange"."""
    return translate("words", "{share}: {hue}").format(
        share=share_short(second.share), hue=hue_short(second.colour.hue)
    )

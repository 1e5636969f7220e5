"""How a band differs from its left to its right: only what differs is said."""

from __future__ import annotations

from core.colour.difference import delta_E_2000
from core.i18n import translate
from core.reading.reading import BandReading, ColourReading
from core.reading.wheel import FAMILIES, Family
from core.reading.wording import Wording
from core.words.names import family_name, hue_short, intensity_text, value_number

SIDES_NOTE_DELTA_E = 6.0
"""From this difference between its left and right third, in CIEDE2000, a band gets a note.
Above 5 in delta E*ab an observer sees two colours (W. Mokrzycki, M. Tatol, 2011, "Colour
difference delta E: a survey", Machine Graphics and Vision 20(4)); CIEDE2000 is the smaller
number for most pairs, so this is the more patient bound."""

_VALUE_STEPS = 0.5
_CHROMA_STEPS = 1.0
_TURN_DEG = 8.0
"""Less than these, in Munsell steps and in degrees of the wheel, nobody sees across a band."""


def sides_note(reading: BandReading, wording: Wording) -> str | None:
    """What changes from left to right; None for nothing, and where a second colour says it."""
    left, right = reading.left, reading.right
    if left is None or right is None or reading.second is not None:
        return None
    if float(delta_E_2000(left.Lab, right.Lab)) < SIDES_NOTE_DELTA_E:
        return None
    pieces = [*_hue(left, right), *_value(left, right, wording), *_intensity(left, right)]
    if pieces:
        return translate(
            "words", "It changes from {left} on the left to {right} on the right."
        ).format(
            left=", ".join(piece[0] for piece in pieces),
            right=", ".join(piece[1] for piece in pieces),
        )
    towards = _turned(left, right)
    if towards is None:
        return None
    return translate("words", "On the right it leans a little more to {hue}.").format(
        hue=family_name(towards)
    )


def _hue(left: ColourReading, right: ColourReading) -> list[tuple[str, str]]:
    names = hue_short(left.hue), hue_short(right.hue)
    return [names] if names[0] != names[1] else []


def _value(left: ColourReading, right: ColourReading, wording: Wording) -> list[tuple[str, str]]:
    if abs(left.munsell.value - right.munsell.value) < _VALUE_STEPS:
        return []
    text = translate("words", "value {number}")
    return [
        (
            text.format(number=value_number(left.munsell.value, wording)),
            text.format(number=value_number(right.munsell.value, wording)),
        )
    ]


def _intensity(left: ColourReading, right: ColourReading) -> list[tuple[str, str]]:
    one, other = left.munsell.chroma, right.munsell.chroma
    if left.intensity_word != right.intensity_word:
        # A near neutral has said so where its hue would stand.
        if left.hue.family is None or right.hue.family is None:
            return []
        return [(intensity_text(left.intensity_said), intensity_text(right.intensity_said))]
    if abs(one - other) < _CHROMA_STEPS:
        return []
    text = translate("words", "chroma {number}")
    return [(text.format(number=f"{one:.1f}"), text.format(number=f"{other:.1f}"))]


def _turned(left: ColourReading, right: ColourReading) -> Family | None:
    """The neighbour on the wheel towards which the right side turns within one family."""
    one, other, family = left.hue.wheel_deg, right.hue.wheel_deg, right.hue.family
    if one is None or other is None or family is None:
        return None
    turn = (other - one + 180) % 360 - 180
    if abs(turn) < _TURN_DEG:
        return None
    return FAMILIES[(FAMILIES.index(family) + (1 if turn > 0 else -1)) % len(FAMILIES)]

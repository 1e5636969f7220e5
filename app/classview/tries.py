"""The scraps of a band, tried one after the other, as the class sees them."""

from __future__ import annotations

from app.drawing.classview.tries import TryColour
from core.i18n import translate
from core.reading.reading import BandReading, read_colour
from core.scrap.kept import ScrapEntry, tries_of

MOST_SHOWN = 3
"""The first and the last ones of more: each needs room to be judged."""


def try_colours(scraps: tuple[ScrapEntry, ...], reading: BandReading) -> tuple[TryColour, ...]:
    """The tries of a band in their order, and the band itself last; empty without any."""
    tries = list(enumerate(tries_of(scraps, reading.letter), 1))
    if not tries or reading.colour is None:
        return ()
    shown = tries if len(tries) <= MOST_SHOWN else [tries[0], *tries[1 - MOST_SHOWN :]]
    found = [
        TryColour(
            read_colour(scrap.Lab).hex,
            translate("class view", "Try {number}").format(number=number),
        )
        for number, scrap in shown
    ]
    band = translate("class view", "Band {letter}").format(letter=reading.letter)
    return (*found, TryColour(reading.colour.hex, band))


def tries_text(tries: tuple[TryColour, ...]) -> str:
    """What a screen reader says of them."""
    if not tries:
        return translate("class view", "No scrap of this band is kept.")
    return translate("class view", "Scraps, side by side: {names}.").format(
        names=", ".join(one.name for one in tries)
    )

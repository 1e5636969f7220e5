"""From the bands' readings to what wheel and ladder show: the same for screen and cards."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Any

from app.drawing.ladder import LadderMark, LadderView
from app.drawing.wheel.shape import (
    WheelMarker,
    WheelView,
)
from core.colour.contrast import ink_on
from core.reading.reading import BandReading, ColourReading, intensity_place
from core.reading.wheel import FAMILIES, FAMILY_SRGB
from core.reading.wording import Wording
from core.words import family_name, intensity_text, value_end

WEDGE_COLOURS = tuple(FAMILY_SRGB[family] for family in FAMILIES)
WEDGE_INKS = tuple(ink_on(colour) for colour in WEDGE_COLOURS)


def wheel_view(
    readings: Sequence[BandReading],
    chosen: int | None = None,
    *,
    seconds: bool = True,
    **options: Any,
) -> WheelView:
    """The wheel of some bands.

    Parameters
    ----------
    readings : sequence of BandReading
        A band without a pixel of sky has no marker.
    chosen : int or None
        Number of the chosen band among `readings`.
    seconds : bool
        Show second colours too.
    options
        Further fields of WheelView.
    """
    markers: list[WheelMarker] = []
    others: list[WheelMarker] = []
    marked = None
    for number, reading in enumerate(readings):
        if reading.colour is None:
            continue
        if number == chosen:
            marked = len(markers)
        markers.append(_marker(reading.letter, reading.colour, number))
        if seconds and reading.second is not None:
            others.append(_marker(reading.letter, reading.second.colour, number, second=True))
    words = tuple(intensity_text(word) for word in ("dull", "moderate", "intense"))
    fields: dict[str, Any] = {
        "markers": (*markers, *others),
        "colours": WEDGE_COLOURS,
        "inks": WEDGE_INKS,
        "names": tuple(family_name(family) for family in FAMILIES),
        "chosen": marked,
        "intensity_words": words,
    }
    return WheelView(**(fields | options))


def _marker(
    letter: str, colour: ColourReading, number: int, *, second: bool = False
) -> WheelMarker:
    family, complement = colour.hue.family, colour.complement
    return WheelMarker(
        letter=letter,
        wheel_deg=colour.hue.wheel_deg,
        place=intensity_place(colour.munsell.value, colour.munsell.chroma),
        colour=colour.hex,
        ink=ink_on(colour.hex),
        family=None if family is None else FAMILIES.index(family),
        complement=None if complement is None else FAMILIES.index(complement),
        band=number,
        second=second,
    )


def point_marker(colour: ColourReading) -> WheelMarker:
    """The place of a colour under the mouse: a marker without a letter."""
    return _marker("", colour, 0)


def ladder_view(
    readings: Sequence[BandReading],
    wording: Wording,
    chosen: int | None = None,
    *,
    seconds: bool = True,
    **options: Any,
) -> LadderView:
    """The value ladder of some bands; parameters as for `wheel_view`."""
    marks: list[LadderMark] = []
    others: list[LadderMark] = []
    marked = None
    for number, reading in enumerate(readings):
        if reading.colour is None:
            continue
        if number == chosen:
            marked = len(marks)
        marks.append(_mark(reading.letter, reading.colour, number))
        if seconds and reading.second is not None:
            others.append(_mark(reading.letter, reading.second.colour, number, second=True))
    return LadderView(
        marks=(*marks, *others),
        chosen=marked,
        white_is=wording.white_is,
        ends=(value_end(True, wording), value_end(False, wording)),
        **options,
    )


def _mark(letter: str, colour: ColourReading, number: int, *, second: bool = False) -> LadderMark:
    return LadderMark(letter, colour.munsell.value, colour.hex, ink_on(colour.hex), number, second)

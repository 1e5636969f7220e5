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
from core.reading.reading import BandReading, intensity_place
from core.reading.wheel import FAMILIES, FAMILY_SRGB
from core.reading.wording import Wording
from core.words import family_name, intensity_text, value_end

WEDGE_COLOURS = tuple(FAMILY_SRGB[family] for family in FAMILIES)
WEDGE_INKS = tuple(ink_on(colour) for colour in WEDGE_COLOURS)


def wheel_view(
    readings: Sequence[BandReading], chosen: int | None = None, **options: Any
) -> WheelView:
    """The wheel of some bands.

    Parameters
    ----------
    readings : sequence of BandReading
        A band without a pixel of sky has no marker.
    chosen : int or None
        Number of the chosen band among `readings`.
    options
        Further fields of WheelView.
    """
    markers = []
    marked = None
    for number, reading in enumerate(readings):
        colour = reading.colour
        if colour is None:
            continue
        if number == chosen:
            marked = len(markers)
        family, complement = colour.hue.family, colour.complement
        markers.append(
            WheelMarker(
                letter=reading.letter,
                wheel_deg=colour.hue.wheel_deg,
                place=intensity_place(colour.munsell.value, colour.munsell.chroma),
                colour=colour.hex,
                ink=ink_on(colour.hex),
                family=None if family is None else FAMILIES.index(family),
                complement=None if complement is None else FAMILIES.index(complement),
                band=number,
            )
        )
    words = tuple(intensity_text(word) for word in ("dull", "moderate", "intense"))
    fields: dict[str, Any] = {
        "markers": tuple(markers),
        "colours": WEDGE_COLOURS,
        "inks": WEDGE_INKS,
        "names": tuple(family_name(family) for family in FAMILIES),
        "chosen": marked,
        "intensity_words": words,
    }
    return WheelView(**(fields | options))


def ladder_view(
    readings: Sequence[BandReading],
    wording: Wording,
    chosen: int | None = None,
    **options: Any,
) -> LadderView:
    """The value ladder of some bands; parameters as for `wheel_view`."""
    marks = []
    marked = None
    for number, reading in enumerate(readings):
        colour = reading.colour
        if colour is None:
            continue
        if number == chosen:
            marked = len(marks)
        marks.append(
            LadderMark(reading.letter, colour.munsell.value, colour.hex, ink_on(colour.hex), number)
        )
    return LadderView(
        marks=tuple(marks),
        chosen=marked,
        white_is=wording.white_is,
        ends=(value_end(True, wording), value_end(False, wording)),
        **options,
    )

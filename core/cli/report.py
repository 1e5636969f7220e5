"""What `gradewash read` prints: a table and sentences, or JSON."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any

from core.cli.layout import table
from core.i18n import translate
from core.pipeline import SkyReading
from core.reading.percent import percent_text
from core.reading.reading import BandReading, ColourReading
from core.reading.wording import Wording
from core.study import Study
from core.words import (
    band_notes,
    band_sentence,
    first_on_wheel,
    hue_short,
    intensity_text,
    share_text,
    tone_down_sentence,
    value_number,
    value_word_text,
    way_on_wheel_sentence,
)

_COLOUR_FIELDS = (
    "hue",
    "hue_class",
    "wheel_deg",
    "munsell",
    "value",
    "value_word",
    "chroma",
    "intensity_word",
    "Lab",
    "srgb",
    "complement",
)


@dataclass(frozen=True)
class Report:
    """A photo that was read.

    Attributes
    ----------
    sky : SkyReading
    notices : tuple of str
        What should be known of the photo and of the lines, translated.
    study : Study or None
        The study it was read of; None for a photo.
    """

    sky: SkyReading
    notices: tuple[str, ...]
    study: Study | None = None


def report_as_json(report: Report) -> dict[str, Any]:
    """The report as JSON holds it; the README documents the form."""
    return {
        "photo": {
            "file": report.sky.photo.name,
            "width": report.sky.photo.width,
            "height": report.sky.photo.height,
            "notices": list(report.notices),
        },
        "horizon": round(report.sky.bands.horizon, 4),
        "bands": [_band_as_json(reading, Wording()) for reading in report.sky.readings],
    }


def _band_as_json(reading: BandReading, wording: Wording) -> dict[str, Any]:
    colour, second = reading.colour, reading.second
    return {
        "letter": reading.letter,
        "top": round(reading.top, 4),
        "bottom": round(reading.bottom, 4),
        **(dict.fromkeys(_COLOUR_FIELDS) if colour is None else _colour_as_json(colour)),
        "second": None
        if second is None
        else {"share": round(second.share, 3), **_colour_as_json(second.colour)},
        "notes": list(band_notes(reading, wording)),
        "sentence": band_sentence(reading, wording),
    }


def _colour_as_json(colour: ColourReading) -> dict[str, Any]:
    hue, munsell = colour.hue, colour.munsell
    return {
        "hue": hue.family,
        "hue_class": hue.hue_class,
        "wheel_deg": None if hue.wheel_deg is None else round(hue.wheel_deg, 1),
        "munsell": munsell.notation,
        "value": round(munsell.value, 2),
        "value_word": colour.value_word,
        "chroma": round(munsell.chroma, 2),
        "intensity_word": colour.intensity_word,
        "Lab": [round(number, 2) + 0.0 for number in colour.Lab],
        "srgb": colour.hex,
        "complement": colour.complement,
    }


def report_in_words(report: Report, wording: Wording, width: int | None = None) -> str:
    """The report as plain text: a table, then sentences that can be read aloud.

    Parameters
    ----------
    width : int, optional
        What the table may measure.
    """
    photo = report.sky.photo
    head = translate("command line", "{name}, {width} x {height} pixels; the sky ends at {y}.")
    parts = [
        head.format(
            name=photo.name,
            width=photo.width,
            height=photo.height,
            y=_percent(report.sky.bands.horizon),
        )
    ]
    parts.extend(report.notices)
    rows = [_table_head()]
    for reading in report.sky.readings:
        rows += _rows(reading, wording)
    parts.extend(["", *table(rows, width)])
    first = first_on_wheel(report.sky.readings)
    for number, reading in enumerate(report.sky.readings):
        sentences = [
            band_sentence(reading, wording),
            *band_notes(reading, wording),
            tone_down_sentence(reading, wording),
        ]
        if number == first and reading.colour is not None:
            sentences.append(way_on_wheel_sentence(reading.colour))
        parts.extend(["", " ".join(s for s in sentences if s)])
    return "\n".join(parts)


def _table_head() -> tuple[str, ...]:
    return (
        translate("command line", "Band"),
        translate("command line", "Height"),
        translate("command line", "Hue"),
        translate("command line", "Value"),
        translate("command line", "Intensity"),
        translate("command line", "Munsell"),
        translate("command line", "sRGB"),
    )


def _rows(reading: BandReading, wording: Wording) -> list[tuple[str, ...]]:
    """A band's line of the table, and one more for its second colour."""
    place = f"{100 * reading.top:.0f}-{_percent(reading.bottom)}"
    colour, second = reading.colour, reading.second
    if colour is None:
        return [(reading.letter, place, translate("command line", "no sky"), "", "", "", "")]
    rows = [(reading.letter, place, *_cells(colour, wording))]
    if second is not None:
        rows.append(("", share_text(second.share), *_cells(second.colour, wording)))
    return rows


def _cells(colour: ColourReading, wording: Wording) -> tuple[str, ...]:
    value = f"{value_number(colour.munsell.value, wording)} {value_word_text(colour.value_word)}"
    return (
        hue_short(colour.hue),
        value,
        intensity_text(colour.intensity_said),
        colour.munsell.notation,
        colour.hex,
    )


def _percent(y: float) -> str:
    return percent_text(100 * y)

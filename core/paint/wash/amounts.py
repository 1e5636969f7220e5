"""How much of each mix to prepare before the sheet is wet.

No published figure was found for the paint a wash takes. The default is computed from what paper
can hold: a sheet of 300 g/m2 absorbs 300 to 400 mL/m2 at most, of which a wash on a wetted sheet
takes about a fifth. A rule of thumb: a class that weighs its board before and after (one gram is
one millilitre) can put its own figure in its place.
"""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from types import MappingProxyType

from core.reading.reading import BandReading

MOST_STUDENTS = 99
USUAL_STUDENTS = 30

PAINT_ML_PER_1000_CM2 = 6.5
"""Wash that one wetted sheet takes: rule of thumb, 5 to 8."""

WATER_ML_PER_1000_CM2 = (8.0, 12.0)
"""Clean water to wet one side evenly: rule of thumb."""

SPARE = 1.8
"""Mixed for every millilitre taken: running out halfway ruins a wash, so about twice."""

LEAST_ML = 1.0
"""A score of drops: a smaller puddle dries in its well while one looks for the brush."""

DROPS_PER_ML = 20
"""The usual drop of thin watery liquid: 20 to the millilitre, as European pharmacopoeias count."""

TEASPOON_ML = 5.0
"""The metric teaspoon."""

BRUSH_CM2 = (230.0, 270.0)
"""Covered by one load of a large round brush, size 12: published weighing trials of sable
brushes; synthetic hair gives less."""


@dataclass(frozen=True)
class PaintSheet:
    """A sheet of paper and the rectangle painted on it, landscape.

    Attributes
    ----------
    name : str
    width_mm, height_mm : float
    border_mm : float
        Taped border on every side.
    """

    name: str
    width_mm: float
    height_mm: float
    border_mm: float = 10.0

    @property
    def painted_mm(self) -> tuple[float, float]:
        """Width and height of the painted rectangle."""
        return self.width_mm - 2 * self.border_mm, self.height_mm - 2 * self.border_mm

    @property
    def painted_cm2(self) -> float:
        """Area of the painted rectangle."""
        width, height = self.painted_mm
        return width * height / 100


SHEETS: MappingProxyType[str, PaintSheet] = MappingProxyType(
    {
        "A5": PaintSheet("A5", 210, 148),
        "A4": PaintSheet("A4", 297, 210),
        "A3": PaintSheet("A3", 420, 297),
        "letter": PaintSheet("letter", 279.4, 215.9),
        "quarter imperial": PaintSheet("quarter imperial", 381, 279),
    }
)
"""Usual sizes (ISO 216; US letter; a quarter of 22 x 30 inches)."""


@dataclass(frozen=True)
class BandAmount:
    """One band on the sheet.

    Attributes
    ----------
    letter : str
    area_cm2 : float
    ml : float
        To mix, the spare included, in half millilitres.
    ends_mm : float
        How far below the top of the painted rectangle the band ends.
    """

    letter: str
    area_cm2: float
    ml: float
    ends_mm: float


@dataclass(frozen=True)
class Amounts:
    """All mixes of a sheet.

    Attributes
    ----------
    bands : tuple of BandAmount
    total_ml : float
    water_ml : tuple of 2 floats
        Clean water to wet the sheet, from and to.
    own_figure : bool
        Whether the class's own measured figure was used.
    """

    bands: tuple[BandAmount, ...]
    total_ml: float
    water_ml: tuple[float, float]
    own_figure: bool


def amounts(
    readings: Sequence[BandReading], sheet: PaintSheet, own_ml_per_1000_cm2: float | None = None
) -> Amounts:
    """Millilitres of every mix.

    Parameters
    ----------
    readings : sequence of BandReading
        From the top down; together they fill the painted rectangle, as the sky fills the sheet.
    sheet : PaintSheet
    own_ml_per_1000_cm2 : float, optional
        What the class measured that a sheet takes; the spare is still added.

    Raises
    ------
    ValueError
        A figure that is not above 0.
    """
    if own_ml_per_1000_cm2 is not None and not own_ml_per_1000_cm2 > 0:
        raise ValueError(f"millilitres per 1000 cm2 must be above 0, not {own_ml_per_1000_cm2}")
    taken = own_ml_per_1000_cm2 or PAINT_ML_PER_1000_CM2
    _, height_mm = sheet.painted_mm
    if not readings:
        return Amounts((), 0.0, (0.0, 0.0), own_ml_per_1000_cm2 is not None)
    top, bottom = readings[0].top, readings[-1].bottom
    bands = []
    for reading in readings:
        area = sheet.painted_cm2 * (reading.bottom - reading.top) / (bottom - top)
        ml = max(LEAST_ML, area / 1000 * taken * SPARE)
        bands.append(
            BandAmount(
                reading.letter,
                area,
                math.ceil(ml * 2) / 2,
                height_mm * (reading.bottom - top) / (bottom - top),
            )
        )
    low, high = (sheet.painted_cm2 / 1000 * water for water in WATER_ML_PER_1000_CM2)
    return Amounts(
        tuple(bands),
        sum(band.ml for band in bands),
        (low, high),
        own_ml_per_1000_cm2 is not None,
    )

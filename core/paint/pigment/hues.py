"""Where a paint stands on the wheel."""

from __future__ import annotations

from functools import cache

import numpy as np

from core.colour.munsell import Lab_to_munsell, munsell_of
from core.paint.pigment.catalogue import Paint
from core.paint.pigment.measured import FULL_LOAD_ML, half_load_ml, load_Lab, measured_paints
from core.reading.wheel import read_hue

FULL_COLOUR = 15.0
"""Half loads at which a paint shows its own hue: thinner, cadmium yellow looks a lemon; thicker,
several blues look alike and prussian is black."""


def paint_deg(paint: Paint) -> float | None:
    """Degrees on the wheel, 0..360, of a paint's full wash; None for black and white."""
    return None if paint.group in ("black", "white") else _measured_deg(paint.measured_as)


@cache
def _measured_deg(key: str) -> float | None:
    data = measured_paints()
    load = np.zeros(len(data.keys))
    load[data.index(key)] = min(FULL_COLOUR * half_load_ml(key), FULL_LOAD_ML)
    return read_hue(munsell_of(Lab_to_munsell(load_Lab(load)))).wheel_deg


def turn(start_deg: float, end_deg: float) -> float:
    """The shorter way from one angle to another, -180 < degrees <= 180, clockwise positive.

    >>> turn(350.0, 10.0)
    20.0
    """
    way = (end_deg - start_deg) % 360
    return way - 360 if way > 180 else way


def offsets(paints: tuple[Paint, ...], hue_deg: float) -> dict[str, float]:
    """How far each coloured paint stands from a hue on the wheel, degrees, clockwise positive."""
    off = {}
    for paint in paints:
        place = paint_deg(paint)
        if place is not None:
            off[paint.key] = turn(hue_deg, place)
    return off

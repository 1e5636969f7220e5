"""Where a paint stands on the wheel."""

from __future__ import annotations

from functools import cache, lru_cache

import numpy as np
from numpy.typing import NDArray

from core.colour.munsell import Lab_to_munsell, munsell_of
from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.measured import FULL_LOAD_ML, half_load_ml, load_Lab, measured_paints
from core.paint.pigment.own import card_Lab, own_half_load_ml
from core.paint.pigment.paint import Paint
from core.reading.wheel import read_hue

FULL_COLOUR = 15.0
"""Half loads at which a paint shows its own hue: thinner, cadmium yellow looks a lemon; thicker,
several blues look alike and prussian is black."""


def paint_deg(paint: Paint) -> float | None:
    """Degrees on the wheel, 0..360, of a paint's full wash; None for black and white."""
    if paint.group in ("black", "white"):
        return None
    return _measured_deg(paint.measured_as) if paint.card is None else _card_deg(paint.card)


# benchmarks/cache_hits.py: 2,175 calls, 11 misses of 0.9 ms.
@cache
def _measured_deg(key: str) -> float | None:
    data = measured_paints()
    load = np.zeros(len(data.keys))
    load[data.index(key)] = min(FULL_COLOUR * half_load_ml(key), FULL_LOAD_ML)
    return read_hue(munsell_of(Lab_to_munsell(load_Lab(load)))).wheel_deg


# A plan of a sky with twelve own paints asks 89 times: 10 misses of 0.9 ms.
@lru_cache(maxsize=256)
def _card_deg(card: CardPaint) -> float | None:
    return read_hue(munsell_of(Lab_to_munsell(full_colour(card)))).wheel_deg


def full_colour(card: CardPaint) -> NDArray[np.float64]:
    """CIELAB, shape (3,), of a paint's full wash, by which its hue is told."""
    load = min(FULL_COLOUR * own_half_load_ml(card), FULL_LOAD_ML)
    Lab: NDArray[np.float64] = card_Lab(card, np.array([load]))[0]
    return Lab


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

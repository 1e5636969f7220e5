"""In what a mix falls short of its band: hue, value, intensity, each on its own scale."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np

from core.colour import Lab_to_LCh
from core.paint.pigment.hues import turn
from core.reading.quality import Verdict
from core.reading.reading import ColourReading

Fault = Literal["too weak", "too dark", "too light", "too dull", "too intense"]

MATCHES_WITHIN, CLOSE_WITHIN = 3.0, 6.0
"""Delta E 2000. Nine in ten held-out mixtures are within 2.9 of what the model said, so a nearer
prediction cannot be told from a match."""

MainHue = Literal["yellow", "orange", "red", "violet", "blue", "green"]

MAIN_HUES: tuple[MainHue, ...] = ("yellow", "orange", "red", "violet", "blue", "green")
"""Primaries and secondaries, clockwise, 60 degrees apart."""


@dataclass(frozen=True)
class Shortfall:
    """Mix minus band.

    Attributes
    ----------
    hue_deg : float or None
        Degrees on the wheel, clockwise positive; None where one of the two has no hue.
    value : float
        Munsell steps; positive: the mix is lighter.
    chroma : float
        Munsell chroma; positive: the mix is more intense.
    hue_Lab : float
        How much of the difference in CIELAB is one of hue, signed as `hue_deg`: tells whether
        a turn of the hue can be seen at this intensity.
    """

    hue_deg: float | None
    value: float
    chroma: float
    hue_Lab: float


def shortfall(mix: ColourReading, band: ColourReading) -> Shortfall:
    """What a mix lacks or has too much of."""
    start, end = band.hue.wheel_deg, mix.hue.wheel_deg
    hue_deg = None if start is None or end is None else turn(start, end)
    _, C1, h1 = Lab_to_LCh(np.array(band.Lab))
    _, C2, h2 = Lab_to_LCh(np.array(mix.Lab))
    # CIELAB's hue angle runs against the wheel: red at 30, yellow at 90, blue at 280.
    way = (h2 - h1 + 180) % 360 - 180
    hue_Lab = float(-2 * np.sqrt(C1 * C2) * np.sin(np.radians(way) / 2))
    return Shortfall(
        hue_deg,
        mix.munsell.value - band.munsell.value,
        mix.munsell.chroma - band.munsell.chroma,
        hue_Lab,
    )


def verdict(delta_E_2000: float) -> Verdict:
    """What a difference amounts to."""
    if delta_E_2000 <= MATCHES_WITHIN:
        return "matches"
    return "close" if delta_E_2000 <= CLOSE_WITHIN else "off"


def leans_towards(band_deg: float, drift: float) -> MainHue:
    """The main hue a drift goes towards: what "too violet" or "too green" names.

    >>> leans_towards(240.0, 12.0)
    'green'
    >>> leans_towards(240.0, -12.0)
    'violet'
    """
    place = band_deg / 60
    nearest = round(place)
    if abs(place - nearest) < 0.25:  # at a main hue: the next one that way
        return MAIN_HUES[(nearest + (1 if drift > 0 else -1)) % 6]
    return MAIN_HUES[int(np.ceil(place) if drift > 0 else np.floor(place)) % 6]

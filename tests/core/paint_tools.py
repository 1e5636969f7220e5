"""Bands to plan for: the true colours of the sample skies, and single colours."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cache

import numpy as np

import sample_scenes
from core.colour import hex_to_srgb, srgb_to_Lab
from core.paint.box.box import TWELVE_PAN, Box
from core.paint.plan import plan_mixes
from core.paint.planned import MixPlan
from core.reading.reading import BandReading, ColourReading, read_colour


def colour(text: str) -> ColourReading:
    """The reading of a screen colour."""
    return read_colour(srgb_to_Lab(hex_to_srgb(text)))


def lab(L: float, a: float, b: float) -> ColourReading:
    """The reading of a CIELAB colour."""
    return read_colour(np.array([L, a, b], dtype=float))


def bands(colours: Sequence[ColourReading | None]) -> list[BandReading]:
    """Bands of equal height, from the top down."""
    height = 1 / len(colours)
    return [
        BandReading(
            "ABCDEFGH"[i], i * height, (i + 1) * height, one, None, None, None, 0.0, False, 0.0, 1.0
        )
        for i, one in enumerate(colours)
    ]


def sky(name: str) -> list[BandReading]:
    """The bands of a sample scene as it was drawn."""
    return bands([lab(*band.Lab) for band in sample_scenes.truth(name).bands])


@cache
def sky_plan(name: str, box: Box = TWELVE_PAN) -> MixPlan:
    """The plan of a sample scene, with nothing asked for."""
    return plan_mixes(sky(name), box)

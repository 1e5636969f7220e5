"""The everyday word for a paint of one's own, and where it leans: from the colour it was fitted to.

Nobody asks a class whether its tube is a violet: the full wash tells. Bounds lie half-way between
the measured paints on either side, or at the families' own bounds where none was measured
(`core.reading.wheel`); what is a brown rather than an orange is common practice.
"""

from __future__ import annotations

import numpy as np

from core.colour.munsell import Lab_to_munsell, munsell_of
from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.hues import full_colour, turn
from core.paint.pigment.own import card_Lab, own_half_load_ml
from core.paint.pigment.paint import Group, Lean
from core.reading.wheel import read_hue

GREY_CHROMA = 2.5
"""Below this a full wash has no hue to speak of: a black, or a white."""

LIGHT_VALUE = 7.0

_FROM_DEG: tuple[tuple[float, Group], ...] = (
    (0.0, "yellow"),
    (46.0, "orange"),
    (91.0, "red"),
    (168.0, "violet"),
    (210.0, "blue"),
    (274.0, "green"),
    (336.0, "yellow"),
)
"""Degrees on the wheel from which a full wash is called so."""

ORANGE_CHROMA, ORANGE_VALUE = 13.5, 5.5
"""An orange below either is a brown."""

OCHRE_CHROMA, OCHRE_VALUE = 8.0, 5.5
RED_EARTH_CHROMA, RED_EARTH_DEG = 10.5, 116.0

THIN = 2.0
"""Half loads of the wash by which blues are told apart; thicker, they look alike."""

GREEN_BLUE_DEG, VIOLET_BLUE_DEG = 241.0, 238.0
"""Thin washes. Those of cobalt and ultramarine cannot be told apart: both lean to violet here."""

ORANGE_RED_DEG, VIOLET_RED_DEG = 114.0, 119.0
GREEN_YELLOW_DEG, ORANGE_YELLOW_DEG = -5.0, 1.0


def group_of(card: CardPaint) -> Group:
    """The group a fitted paint belongs to."""
    full = munsell_of(Lab_to_munsell(full_colour(card)))
    deg = read_hue(full).wheel_deg
    if deg is None or full.chroma < GREY_CHROMA:
        return "white" if full.value > LIGHT_VALUE else "black"
    group = next(name for start, name in reversed(_FROM_DEG) if deg >= start)
    dull = {
        "orange": full.chroma < ORANGE_CHROMA or full.value < ORANGE_VALUE,
        "yellow": deg < 180 and (full.chroma < OCHRE_CHROMA or full.value < OCHRE_VALUE),
        "red": deg < RED_EARTH_DEG and full.chroma < RED_EARTH_CHROMA,
    }
    return "brown" if dull.get(group) else group


def lean_of(card: CardPaint, group: Group) -> Lean:
    """Which secondary a fitted primary leans to; a brown leans to orange, others to none."""
    full = read_hue(munsell_of(Lab_to_munsell(full_colour(card)))).wheel_deg
    if group == "brown":
        return "orange"
    if full is None:
        return ""
    if group == "yellow":
        off = turn(0.0, full)
        return "green" if off < GREEN_YELLOW_DEG else "orange" if off > ORANGE_YELLOW_DEG else ""
    if group == "red":
        return "orange" if full < ORANGE_RED_DEG else "violet" if full > VIOLET_RED_DEG else ""
    if group == "blue":
        thin = card_Lab(card, np.array([THIN * own_half_load_ml(card)]))[0]
        deg = read_hue(munsell_of(Lab_to_munsell(thin))).wheel_deg
        if deg is None:
            return ""
        return "green" if deg > GREEN_BLUE_DEG else "violet" if deg < VIOLET_BLUE_DEG else ""
    return ""

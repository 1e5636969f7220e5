"""How a teacher would build a hue from the paints on a table.

A single paint where one stands at the hue, else the two on either side of it; and, to tone down,
one paint from across the wheel. Anything else may hit the colour, but cannot be steered by
somebody who thinks in hue, value and intensity.
"""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from itertools import combinations

from core.paint.catalogue import Paint
from core.paint.hues import paint_deg, turn
from core.reading import ColourReading

SINGLE_WITHIN_DEG = 26.0
"""A paint this near the hue counts as standing at it: less than one step of the wheel."""

WIDEST_ARC_DEG = 140.0
EASY_ARC_DEG = 105.0
"""Between two paints up to this far apart the hues stay clean; wider, they pass through grey.
On this wheel a warm red and a yellow are 103 apart, crimson and ultramarine 86, lemon and
cerulean 98; lemon and ultramarine, a known dull green, 117."""

NEIGHBOUR_DEG = 60.0
"""A paint further from the hue than two steps is no neighbour: blue is not made with crimson."""

ACROSS_WITHIN_DEG = 68.0
"""How far from the exact opposite a paint still tones down rather than turns the hue."""

GREY_REACH_DEG = 75.0
"""A grey's leaning is so slight that a paint anywhere near may carry it."""

GREY_BASE_DEG = 240.0
"""A colour without any hue is built as the greys of skies are: on a blue."""

EARTHS = ("raw_sienna", "burnt_sienna")
EARTH_PRICE, EARTH_CHROMA, EARTH_SLOPE = 0.3, 6.0, 0.35
"""An earth is a teacher's choice for a dull warm colour, not for an intense one."""

MIXED_ARC_DEG = 75.0
"""A green or an earth is a mixture already: it only makes hues with a near neighbour."""

LEAN_PRICE = 1.1
"""A paint that leans to another secondary than the one being mixed dulls it; every split-primary
palette is built on this (common practice)."""

SAME_SIDE_PRICE = 0.2

ARC_SLOPE, FAR_SLOPE, ASTRAY_SLOPE, SINGLE_SLOPE = 0.03, 0.08, 0.02, 0.01
ASTRAY_SLOPE_GREY = 0.008
"""Price of a degree too wide, too far, beside the opposite, beside the hue."""


@dataclass(frozen=True)
class Structure:
    """Which paints make the hue and which tones it down.

    Attributes
    ----------
    base : tuple of str
        One or two paint keys.
    toner : str or None
    price : float
        What this way of building costs, on the scale of delta E 2000.
    """

    base: tuple[str, ...]
    toner: str | None
    price: float

    @cached_property
    def keys(self) -> frozenset[str]:
        """All paints together."""
        return frozenset(self.base) | ({self.toner} if self.toner else set())


def structures(paints: tuple[Paint, ...], target: ColourReading) -> tuple[Structure, ...]:
    """All sensible ways to build a colour from some paints, the plainest for each set.

    Parameters
    ----------
    paints : tuple of Paint
        Those that may be used; black and white are passed over.
    target : ColourReading

    Returns
    -------
    tuple of Structure
        Empty when no paint stands anywhere near the hue.
    """
    hue = GREY_BASE_DEG if target.hue.wheel_deg is None else target.hue.wheel_deg
    off = offsets(paints, hue)
    earth = {paint.key for paint in paints if paint.measured_as in EARTHS}
    too_intense = max(0.0, target.munsell.chroma - EARTH_CHROMA)

    grey = target.hue.family is None
    astray_slope = ASTRAY_SLOPE_GREY if grey else ASTRAY_SLOPE
    by_key = {paint.key: paint for paint in paints}

    best: dict[frozenset[str], Structure] = {}
    for base, plain_price in _bases(off, grey=grey):
        if len(base) == 2 and any(by_key[key].group in ("green", "brown") for key in base):
            one, other = base
            if abs(turn(off[one], off[other])) > MIXED_ARC_DEG:
                continue
        price = plain_price + _leaning_price([by_key[key] for key in base])
        if earth & set(base):
            price += EARTH_PRICE + EARTH_SLOPE * too_intense
        options = [Structure(base, None, price)]
        for key, away in off.items():
            astray = 180 - abs(away)
            if key not in base and astray <= ACROSS_WITHIN_DEG:
                options.append(Structure(base, key, price + astray_slope * astray))
        for option in options:
            known = best.get(option.keys)
            if known is None or option.price < known.price:
                best[option.keys] = option
    return tuple(best.values())


def offsets(paints: tuple[Paint, ...], hue_deg: float) -> dict[str, float]:
    """How far each coloured paint stands from a hue on the wheel, degrees, clockwise positive."""
    off = {}
    for paint in paints:
        place = paint_deg(paint)
        if place is not None:
            off[paint.key] = turn(hue_deg, place)
    return off


def _bases(off: dict[str, float], *, grey: bool) -> list[tuple[tuple[str, ...], float]]:
    """One paint at the hue, or two on either side of it, with what each way costs."""
    reach = GREY_REACH_DEG if grey else SINGLE_WITHIN_DEG
    slope = 0.0 if grey else SINGLE_SLOPE
    bases: list[tuple[tuple[str, ...], float]] = [
        ((key,), slope * abs(away)) for key, away in off.items() if abs(away) <= reach
    ]
    for (one, at_one), (other, at_other) in combinations(off.items(), 2):
        left, right = sorted((at_one, at_other))
        arc = right - left
        if max(-left, right) <= SINGLE_WITHIN_DEG and not left < 0 < right:
            bases.append(((one, other), SAME_SIDE_PRICE))
        elif left < 0 < right and arc <= WIDEST_ARC_DEG:
            too_wide = max(0.0, arc - EASY_ARC_DEG)
            too_far = max(0.0, max(-left, right) - NEIGHBOUR_DEG)
            bases.append(((one, other), ARC_SLOPE * too_wide + FAR_SLOPE * too_far))
    return bases


_SECONDARY_OF = {
    frozenset({"yellow", "red"}): "orange",
    frozenset({"yellow", "brown"}): "orange",
    frozenset({"red", "blue"}): "violet",
    frozenset({"yellow", "blue"}): "green",
}


def _leaning_price(base: list[Paint]) -> float:
    """What it costs that paints of a pair lean away from the secondary they are to make."""
    wanted = _SECONDARY_OF.get(frozenset(paint.group for paint in base))
    if wanted is None:
        return 0.0
    return LEAN_PRICE * sum(paint.leans not in ("", wanted) for paint in base)

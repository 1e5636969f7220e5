"""Greys: a blue and a brown, or the three primaries."""

from __future__ import annotations

from itertools import product

from core.paint.choice.structure import Structure
from core.paint.pigment.catalogue import Paint
from core.paint.reasons import Cost

GREY_PAIR_PRICE, GREY_STEERED_PRICE, GREY_BLUE_PRICE = -0.4, 0.0, 0.4
"""A blue and a brown earth grey each other cleanly, ultramarine best (common practice)."""

GREY_THREE_PRICE = 1.0
"""Without an earth, the three primaries make the grey (common practice)."""


def grey_pairs(paints: tuple[Paint, ...]) -> list[Structure]:
    """A blue and a brown, alone or with one more paint that turns the grey."""
    browns = [paint for paint in paints if paint.group == "brown"]
    ways = []
    for blue in _plain(paints, "blue"):
        dear = 0.0 if blue.measured_as == "ultramarine" else GREY_BLUE_PRICE
        for brown in browns:
            pair = {blue.key, brown.key}
            ways.append(_grey(blue, brown, GREY_PAIR_PRICE + dear, None))
            ways += [
                _grey(blue, brown, GREY_STEERED_PRICE + dear, paint.key)
                for paint in paints
                if paint.key not in pair
                and paint.group not in ("black", "white", "blue")
                and not paint.is_strong
            ]
    return ways


def _grey(blue: Paint, brown: Paint, price: float, steer: str | None) -> Structure:
    cost = Cost("greys less cleanly", price)
    return Structure((blue.key,), brown.key, (cost,), steer, True)


def grey_threes(paints: tuple[Paint, ...], dear: float = 0.0) -> list[Structure]:
    """A yellow, a red and a blue; the red is called the toner, for the ladder's sake."""
    cost = Cost("greys less cleanly", GREY_THREE_PRICE + dear)
    threes = product(_plain(paints, "yellow"), _plain(paints, "red"), _plain(paints, "blue"))
    return [
        Structure((yellow.key, blue.key), red.key, (cost,), None, True)
        for yellow, red, blue in threes
    ]


def _plain(paints: tuple[Paint, ...], group: str) -> list[Paint]:
    return [paint for paint in paints if paint.group == group and not paint.is_strong]

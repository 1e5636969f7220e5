"""An own paint as a card leaves it: ultramarine, misjudged, with four ways it may differ."""

from __future__ import annotations

import numpy as np

from core.paint.box.box import Box
from core.paint.box.own_paint import paint_of_card
from core.paint.own.known import trust_of
from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.measured import measured_paints

DATA = measured_paints()
ROW = DATA.index("ultramarine")
BANDS = np.linspace(0, 1, 41)
WAYS = np.array(
    [
        0.5 * np.ones(82),
        np.concatenate([0.35 * BANDS, np.zeros(41)]),
        np.concatenate([0.3 * np.cos(3 * BANDS), np.zeros(41)]),
        np.concatenate([np.zeros(41), 0.4 * BANDS]),
    ]
)
KEY = "own_our_blue"
OTHERS = ("mid_yellow", "crimson", "burnt_sienna")


def box_of(theta: np.ndarray, ways: np.ndarray = WAYS) -> Box:
    """A box whose blue is ultramarine moved by theta, as a card would leave it."""
    K = DATA.K[ROW] * np.exp(theta[:41])
    S = DATA.S[ROW] * np.exp(theta[41:])
    card = CardPaint(tuple(K), tuple(S), tuple(map(tuple, ways)), 4.0, trust_of(4.0), "window", 1)
    own = paint_of_card("our blue", "ultramarine", card)
    assert own.key == KEY
    return Box("ours", (own, *(CATALOGUE[key] for key in OTHERS)))


TRUE = box_of(np.zeros(82), np.zeros((0, 82)))
WRONG = box_of(-2.4 * WAYS[0] + 1.2 * WAYS[1] - 1.5 * WAYS[2])

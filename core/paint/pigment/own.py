"""The paints of a box that a swatch card told of, beside the measured ones."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache

import numpy as np

from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.film import film_reflectance
from core.paint.pigment.measured import (
    FULL_LOAD_ML,
    TINTED_ML,
    VISIBLE,
    half_load_ml,
    measured_paints,
)
from core.paint.pigment.pigments import Floats, Pigments

OwnRows = tuple[tuple[str, CardPaint], ...]
"""Keys of a box's own paints, and what their card says of each."""


# One object for the same paints: tables and starts are kept by it. A plan of a sky asks 71 times.
@lru_cache(maxsize=64)
def pigments_with(own: OwnRows, used: frozenset[str]) -> Pigments:
    """The measured paints and a box's own.

    Parameters
    ----------
    own : tuple of (key, CardPaint)
        No key of a measured paint among them.
    used : frozenset of str
        Rows among which mixes are looked for: the search goes through what the box has, and
        takes no longer for own paints than for measured ones.

    Returns
    -------
    Pigments
        The same object for the same paints, as long as it is remembered.
    """
    data = measured_paints()
    keys = (*data.keys, *(key for key, _ in own))
    halves = (*map(half_load_ml, data.keys), *(own_half_load_ml(card) for _, card in own))
    return replace(
        data,
        keys=keys,
        K=np.concatenate([data.K, [card.K for _, card in own]]),
        S=np.concatenate([data.S, [card.S for _, card in own]]),
        searched=tuple(row for row, key in enumerate(keys) if key in used),
        half_loads_ml=halves,
    )


def card_Lab(card: CardPaint, loads_ml: Floats) -> Floats:
    """CIELAB, shape (n, 3), of a paint alone at loads, shape (n,), in millilitres."""
    return measured_paints().spectrum_to_Lab(_alone(card, loads_ml))


# A plan of a sky with twelve own paints asks 686 times: 12 misses of 0.7 ms.
@lru_cache(maxsize=256)
def own_half_load_ml(card: CardPaint) -> float:
    """As `half_load_ml`, of a paint of one's own."""
    loads = np.geomspace(1e-6, FULL_LOAD_ML, 400)
    kept = _alone(card, loads) / measured_paints().paper
    below = kept[:, VISIBLE].min(axis=1) <= 0.5
    return float(loads[np.argmax(below)]) if below.any() else FULL_LOAD_ML


# Asked once a paint for `Paint.is_strong`, by every copy of the paint: a miss takes 0.9 ms.
@lru_cache(maxsize=256)
def own_parts_to_tint_white(card: CardPaint, to_L: float = 60.0) -> float:
    """As `parts_to_tint_white`, of a paint of one's own."""
    data = measured_paints()
    white = data.index("chinese_white")
    parts = np.geomspace(1e-4, 100, 500)
    loads = np.stack([np.full_like(parts, TINTED_ML), TINTED_ML * parts], axis=1) * 100
    K, S = np.stack([data.K[white], card.K]), np.stack([data.S[white], card.S])
    L = data.spectrum_to_Lab(film_reflectance(loads, K, S, data.crowding, data.paper))[:, 0]
    below = to_L >= L
    return float(parts[np.argmax(below)]) if below.any() else float("inf")


def _alone(card: CardPaint, loads_ml: Floats) -> Floats:
    data = measured_paints()
    load = np.asarray(loads_ml, float)[:, None] * 100
    return film_reflectance(
        load, np.array(card.K)[None], np.array(card.S)[None], data.crowding, data.paper
    )

"""How well a fitted paint is known: what its mixes may still be off by.

The posterior of a fit is kept as the four directions of (log K, log S) that move reference mixes
most: nearly all of the spread. A mix's spread is what those of its own paints move it by, water
adjusted as a painter would: a wash that is only stronger or weaker is no error.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass

import numpy as np

from core.paint.box.box import Box
from core.paint.own.layer import Lab_slopes, film_slopes
from core.paint.own.prior import BANDS, LEFT_OUT
from core.paint.pigment.card_paint import CardPaint, Light, Trust
from core.paint.pigment.film import film_reflectance, paper_inside
from core.paint.pigment.measured import half_load_ml, measured_paints
from core.paint.pigment.own import own_half_load_ml
from core.paint.pigment.pigments import Floats
from core.paint.search.metric import local_metric

KEPT = 4
"""Directions kept of a paint's posterior."""

WELL_BELOW, ROUGHLY_BELOW = 2.5, 5.0
"""Median spread of the reference mixes, CIEDE2000, below which a paint is known well, roughly."""

FLOOR, YELLOW_FLOOR = 1.0, 2.0
"""What the film itself is off by; a yellow's spread promises too much."""

CAUTIOUS = 0.85
"""Of the posterior's own spread: with it 91 to 95% of mixes lie within twice the stated error, by
a window, under lamps and with six paints unknown."""

LAMPS = 1.4
"""Under lamps the true error is so much wider."""

CREAM = 24.0
"""Half loads from which no card says much: its strokes are washes."""

CREAM_ERROR = 4.0

_TOTALS, _SHARES = (2.0, 6.0, 18.0), (0.5, 0.25, 0.75)
_STEP = 1e-3


def trust_of(spread: float) -> Trust:
    """The word for the median spread of the reference mixes."""
    if spread < WELL_BELOW:
        return "known well"
    return "roughly" if spread < ROUGHLY_BELOW else "stands in"


def posterior_directions(
    K: Floats, S: Floats, spread_of_theta: Floats
) -> tuple[tuple[tuple[float, ...], ...], float]:
    """What is kept of a paint's posterior, and the median spread of its reference mixes.

    Parameters
    ----------
    K, S : ndarray, shape (41,), float
    spread_of_theta : ndarray, shape (82, k), float
        A square root of the covariance of (log K, log S).
    """
    moved = _reference_slopes(K, S) @ spread_of_theta
    flat = moved.reshape(-1, moved.shape[-1])
    _, _, ways = np.linalg.svd(flat, full_matrices=False)
    kept = spread_of_theta @ ways[:KEPT].T
    spread = float(np.median(np.linalg.norm(moved @ ways[:KEPT].T, axis=(1, 2))))
    return tuple(tuple(map(float, way)) for way in kept.T), spread


def _reference_slopes(K: Floats, S: Floats) -> Floats:
    """How theta moves 108 mixes with the measured paints, at matched strength, (m, 3, 82).

    In units of CIEDE2000.
    """
    data = measured_paints()
    partners = [row for row, key in enumerate(data.keys) if key not in LEFT_OUT]
    own_half = own_half_load_ml(CardPaint(tuple(K), tuple(S), (), 0.0, "roughly", "window", 0))
    rows, own, other = [], [], []
    for row in partners:
        for total in _TOTALS:
            for share in _SHARES:
                rows.append(row)
                own.append(100 * total * share * own_half)
                other.append(100 * total * (1 - share) * half_load_ml(data.keys[row]))
    one, two = np.array(own)[:, None], np.array(other)[:, None]
    thin = 1 + data.crowding * (one + two)
    layer_K = one * K + two * data.K[rows]
    layer_S = (one * S + two * data.S[rows]) / thin
    R, by_K, by_S = film_slopes(layer_K, layer_S, paper_inside(data.paper))
    Lab, by_XYZ = Lab_slopes(R @ data.weights)
    by_R = local_metric(Lab) @ by_XYZ @ data.weights.T
    by_theta = np.concatenate(
        [by_R * (by_K * one * K)[:, None], by_R * (by_S * one / thin * S)[:, None]], axis=2
    )
    crowd = data.crowding * (one + two) / thin
    by_load = np.einsum("ncb,nb->nc", by_R, by_K * layer_K + by_S * layer_S * (1 - crowd))
    return _matched(by_theta, by_load)


def _matched(moves: Floats, by_load: Floats) -> Floats:
    """Moves, (n, 3, k), without what a change of the load, (n, 3), makes up for."""
    size = (by_load**2).sum(axis=1)[:, None, None] + 1e-12
    along = by_load[:, :, None]
    left: Floats = moves - along * (along * moves).sum(axis=1, keepdims=True) / size
    return left


@dataclass(frozen=True)
class MixKnown:
    """How well a mix with paints of one's own is known.

    Attributes
    ----------
    error : float
        What it may be off by, CIEDE2000: within it two times of three, within twice it nine
        times of ten.
    own : tuple of str
        Keys of its own paints, the least known first.
    hardly : tuple of str
        Those of them that only stand in for their nearest relative.
    """

    error: float
    own: tuple[str, ...]
    hardly: tuple[str, ...]


def mix_known(box: Box, loads_ml: Mapping[str, float]) -> MixKnown | None:
    """How well a mix is known; None where none of its paints is one's own.

    Parameters
    ----------
    box : Box
    loads_ml : mapping of paint key to millilitres
    """
    cards = {
        key: card
        for key in loads_ml
        if (card := box.paint(key).card) is not None and loads_ml[key] > 0
    }
    if not cards:
        return None
    spreads = {key: _spread(box, loads_ml, key, card) for key, card in cards.items()}
    yellow = any(box.paint(key).group == "yellow" for key in cards)
    error = float(np.sqrt(sum(s**2 for s in spreads.values()) + _floor(yellow) ** 2))
    error *= CAUTIOUS * max(light_factor(card.light) for card in cards.values())
    if _half_loads(box, loads_ml) >= CREAM:
        error = max(error, CREAM_ERROR)
    own = tuple(sorted(cards, key=lambda key: -spreads[key]))
    return MixKnown(error, own, tuple(key for key in own if cards[key].trust == "stands in"))


def floor_of(box: Box, keys: Iterable[str]) -> float:
    """What a mix of some paints may be off by, CIEDE2000, were each of them what it is taken for.

    0 where none of them is one's own.
    """
    own = [paint for key in keys if (paint := box.paint(key)).card is not None]
    if not own:
        return 0.0
    yellow = any(paint.group == "yellow" for paint in own)
    lights = [light_factor(paint.card.light) for paint in own if paint.card is not None]
    return CAUTIOUS * _floor(yellow) * max(lights)


def light_factor(light: Light) -> float:
    """How much wider than stated the error is in a light."""
    return LAMPS if light == "lamps" else 1.0


def _floor(yellow: bool) -> float:
    return YELLOW_FLOOR if yellow else FLOOR


def _half_loads(box: Box, loads_ml: Mapping[str, float]) -> float:
    return sum(load / box.paint(key).half_load_ml for key, load in loads_ml.items())


def _spread(box: Box, loads_ml: Mapping[str, float], key: str, card: CardPaint) -> float:
    """Root of the summed squares of what a paint's directions move a mix by."""
    if not card.directions:
        return 0.0
    data = box.pigments
    load = box.load_vector(dict(loads_ml))[None] * 100
    row = data.index(key)

    def Lab_of(direction: Floats | None, stronger: float = 1.0) -> Floats:
        K, S = data.K, data.S
        if direction is not None:
            K, S = K.copy(), S.copy()
            K[row] *= np.exp(_STEP * direction[:BANDS])
            S[row] *= np.exp(_STEP * direction[BANDS:])
        R = film_reflectance(load * stronger, K, S, data.crowding, data.paper)
        Lab: Floats = data.spectrum_to_Lab(R)[0]
        return Lab

    here = Lab_of(None)
    metric = local_metric(here)
    moves = np.stack(
        [metric @ (Lab_of(np.array(way)) - here) / _STEP for way in card.directions], axis=1
    )
    by_load = metric @ (Lab_of(None, 1 + _STEP) - here) / _STEP
    return float(np.linalg.norm(_matched(moves[None], by_load[None])))

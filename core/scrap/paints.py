"""The paints that may be in a puddle: what each adds, and how well it is known."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import assert_never

import numpy as np
from numpy.typing import NDArray

from core.paint.box.box import Box
from core.paint.mixture.mix import Mix
from core.paint.own.known import floor_of
from core.paint.pigment.card_paint import CardPaint, Trust
from core.paint.pigment.fast_film import coarse_Lab
from core.paint.pigment.film import film_over, paper_inside, through_surface
from core.paint.pigment.paint import Paint
from core.paint.pigment.pigments import Pigments

Floats = NDArray[np.float64]

STRENGTH_SPREAD = 0.3
"""Standard deviation of the natural log of a paint's strength against the one measured: what a
class buys is another maker's (assumed, as in the design's simulator)."""


FILM_ERROR = 0.7
"""What the film is off by in washes of measured paints, CIEDE2000 (DEVELOPERS.md)."""

OWN_LEFT = 0.05
"""Spread of the log of an own paint's strength beside what its card leaves open: the class paints
with the very tube the card was painted with."""

_BANDS = 41


@dataclass(frozen=True, eq=False)
class Ways:
    """How an own paint may differ from what its card says.

    Attributes
    ----------
    paint : int
        Its number among the paints.
    row : int
        Among the box's pigments.
    at : slice
        Its places among all ways.
    directions : ndarray, shape (ways, 82)
        A standard deviation of log K and log S each.
    """

    paint: int
    row: int
    at: slice
    directions: Floats


@dataclass(frozen=True, eq=False)
class Paints:
    """The paints of a box that may be added to a puddle, or may have got into it.

    Attributes
    ----------
    box : Box
    keys : tuple of str
        Those of the mix first, in its order; then the rest of the box.
    mixed : int
        How many of them the mix holds.
    units : ndarray, shape (paints, pigments)
        What a unit load of each is to the box's pigments.
    spread : ndarray, shape (paints,)
        Standard deviation of the log of each one's strength.
    error : float
        What the film's colour of the mix may be off by (CIEDE2000), were its paints what they are
        taken for: more with paints of one's own.
    own : tuple of Ways
        Of the paints known from a card alone, those of the mix first.
    """

    box: Box
    keys: tuple[str, ...]
    mixed: int
    units: Floats
    spread: Floats
    error: float
    own: tuple[Ways, ...] = ()

    @property
    def ways(self) -> int:
        """In how many ways own paints may differ from what is known of them."""
        return self.own[-1].at.stop if self.own else 0

    @property
    def mixed_ways(self) -> int:
        """How many of these are of the mix's paints: they come first."""
        return max((ways.at.stop for ways in self.own if ways.paint < self.mixed), default=0)

    def Lab(self, loads: Floats, moved: Floats | None = None) -> Floats:
        """CIELAB, shape (..., 3), of loads, shape (..., paints), in millilitres.

        Parameters
        ----------
        moved : ndarray, shape (..., ways), optional
            How far own paints are moved along their ways, in standard deviations.
        """
        data = self.box.pigments
        if moved is None or not self.own:
            return data.Lab(loads @ self.units)
        pigment = 100 * loads @ self.units
        K, S = pigment @ data.K, pigment @ data.S
        for ways in self.own:
            load = 100 * loads[..., ways.paint, None] * self.units[ways.paint, ways.row]
            more = np.expm1(moved[..., ways.at] @ ways.directions)
            K = K + load * data.K[ways.row] * more[..., :_BANDS]
            S = S + load * data.S[ways.row] * more[..., _BANDS:]
        S = S / (1 + data.crowding * pigment.sum(axis=-1)[..., None])
        R = through_surface(film_over(K, S, paper_inside(data.paper)))
        return data.spectrum_to_Lab(R)

    def rough_Lab(self, loads: Floats, moved: Floats | None = None) -> Floats:
        """The same for loads of shape (n, paints), quick and within about 0.2 (CIEDE2000).

        Parameters
        ----------
        moved : ndarray, shape (ways,), optional
            The same for all of them.
        """
        few = self.few if moved is None or not self.own else self._moved(moved)
        return coarse_Lab(loads @ self.units[:, list(few.searched)], few).astype(float)

    def _moved(self, moved: Floats) -> Pigments:
        K, S = self.few.K.copy(), self.few.S.copy()
        for ways in self.own:
            more = np.exp(moved[ways.at] @ ways.directions)
            K[ways.row] *= more[:_BANDS]
            S[ways.row] *= more[_BANDS:]
        return replace(self.few, K=K, S=S)

    @cached_property
    def few(self) -> Pigments:
        """The pigments of these paints alone to be looked through."""
        used = tuple(int(row) for row in np.flatnonzero(self.units.any(axis=0)))
        return replace(self.box.pigments, searched=used)


def paints_for(box: Box, mix: Mix) -> Paints:
    """The paints to reckon with for a mix.

    Black and white come in only where the mix holds them: they are not what a puddle is mended
    with (common practice: no black, no white).

    Raises
    ------
    ValueError
        The mix holds no paint.
    """
    if not mix.parts:
        raise ValueError("bare paper has no puddle")
    rest = [
        paint.key
        for paint in box.paints
        if paint.key not in mix.keys and paint.group not in ("black", "white")
    ]
    keys = (*mix.keys, *rest)
    return Paints(
        box=box,
        keys=keys,
        mixed=len(mix.keys),
        units=np.stack([box.load_vector({key: 1.0}) for key in keys]),
        spread=np.array([strength_spread(box.paint(key)) for key in keys]),
        error=max(FILM_ERROR, floor_of(box, mix.keys)),
        own=_own_ways(box, keys),
    )


def _own_ways(box: Box, keys: tuple[str, ...]) -> tuple[Ways, ...]:
    found: list[Ways] = []
    start = 0
    for number, key in enumerate(keys):
        card = box.paint(key).card
        if card is not None and card.directions:
            at = slice(start, start + len(card.directions))
            directions = np.array(card.directions)
            found.append(Ways(number, box.pigments.index(box.paint(key).pigment), at, directions))
            start = at.stop
    return tuple(found)


def strength_spread(paint: Paint) -> float:
    """How far a paint's strength may be from what is known of it, natural log.

    Of a paint known from a card what is beside the ways its card leaves open.
    """
    return STRENGTH_SPREAD if paint.card is None else _own_spread(paint.card)


def _own_spread(card: CardPaint) -> float:
    if card.directions:
        return OWN_LEFT
    trust: Trust = card.trust
    match trust:
        case "known well":
            return 0.12
        case "roughly":
            return 0.2
        case "stands in":
            return STRENGTH_SPREAD
        case _:
            assert_never(trust)

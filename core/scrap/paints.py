"""The paints that may be in a puddle: what each adds, and how well it is known."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import assert_never

import numpy as np
from numpy.typing import NDArray

from core.paint.box.box import Box
from core.paint.mixture.mix import Mix
from core.paint.own.known import mix_known
from core.paint.pigment.card_paint import Trust
from core.paint.pigment.fast_film import coarse_Lab
from core.paint.pigment.paint import Paint
from core.paint.pigment.pigments import Pigments

Floats = NDArray[np.float64]

STRENGTH_SPREAD = 0.3
"""Standard deviation of the natural log of a paint's strength against the one measured: what a
class buys is another maker's (assumed, as in the design's simulator)."""


FILM_ERROR = 0.7
"""What the film is off by in washes of measured paints, CIEDE2000 (DEVELOPERS.md)."""


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
        What the film's colour of the mix may be off by (CIEDE2000): more with paints known from
        a card alone.
    """

    box: Box
    keys: tuple[str, ...]
    mixed: int
    units: Floats
    spread: Floats
    error: float

    def Lab(self, loads: Floats) -> Floats:
        """CIELAB, shape (..., 3), of loads, shape (..., paints), in millilitres."""
        return self.box.pigments.Lab(loads @ self.units)

    def rough_Lab(self, loads: Floats) -> Floats:
        """The same for loads of shape (n, paints), quick and within about 0.2 (CIEDE2000)."""
        return coarse_Lab(loads @ self.units[:, list(self.few.searched)], self.few).astype(float)

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
        error=_film_error(box, mix),
    )


def _film_error(box: Box, mix: Mix) -> float:
    known = mix_known(box, mix.loads_ml)
    return FILM_ERROR if known is None else max(known.error, FILM_ERROR)


def strength_spread(paint: Paint) -> float:
    """How far a paint's strength may be from what is known of it, natural log."""
    return STRENGTH_SPREAD if paint.card is None else _own_spread(paint.card.trust)


def _own_spread(trust: Trust) -> float:
    """The same of a paint known from a card: the washes matched there fix its strength."""
    match trust:
        case "known well":
            return 0.12
        case "roughly":
            return 0.2
        case "stands in":
            return STRENGTH_SPREAD
        case _:
            assert_never(trust)

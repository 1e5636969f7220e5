"""What a puddle is likely to hold, estimated from its planned parts and the strokes painted of it.

Every paint of the mix may be off by a factor, every stroke has a strength of its own, and at most
one other paint of the box may have got in. For each paint that may have, and for none, the most
likely puddle is found (MAP, Gauss-Newton on CIELAB); how well each explains the strokes, and how
seldom paint gets in, says how likely it is. Puddles drawn from around these stand for what is not
known: an addition is judged on all of them.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from statistics import NormalDist

import numpy as np
from numpy.typing import NDArray

from core.scrap.model import FURTHEST, LOAD_SPREAD, Model, Stroke
from core.scrap.paints import Floats, Paints

DRAWN = 64
"""Puddles that stand for what is not known: with 24 the median error after an advice is 3% more."""


@dataclass(frozen=True, eq=False)
class Puddle:
    """What a puddle may hold now.

    Attributes
    ----------
    paints : Paints
    planned : ndarray, shape (paints,)
        Parts asked for, with what was added since.
    amounts : ndarray, shape (drawn, paints)
        Parts that may be in it, measured by what they colour; each row is one possibility.
    unit : ndarray, shape (drawn, paints)
        What one more part of each paint would be in the same measure.
    weight : ndarray, shape (drawn,)
        How likely each possibility is; they sum to 1.
    load_ml : ndarray, shape (drawn,)
        Strength of the last stroke.
    got_in : ndarray, shape (paints,)
        Chance that each paint got in that does not belong; 0 for those of the mix.
    misfit : float
        How badly its strokes agree with one puddle: the squares of what is off, in spreads, a
        stroke; near 0 for a single stroke.
    moved : ndarray, shape (drawn, ways), or None
        How far own paints are from what their card says, in standard deviations, in each
        possibility; None where the box has none.
    """

    paints: Paints
    planned: Floats
    amounts: Floats
    unit: Floats
    weight: Floats
    load_ml: Floats
    got_in: Floats
    misfit: float = 0.0
    moved: Floats | None = None

    @property
    def middle(self) -> Floats:
        """The parts in it, shape (paints,): the mean of what is possible."""
        return self.weight @ self.amounts


def estimate(
    paints: Paints, parts: Sequence[float], load_ml: float, strokes: Sequence[Stroke]
) -> Puddle:
    """What a puddle holds, by the strokes painted of it.

    Parameters
    ----------
    paints : Paints
        Its first `mixed` paints are the mix's.
    parts : sequence of float, one for each paint of the mix
    load_ml : float
        Planned.
    strokes : sequence of Stroke
        At least one; all of the same puddle, in the order painted.

    Raises
    ------
    ValueError
        No stroke.
    """
    if not strokes:
        raise ValueError("a puddle is estimated from at least one stroke")
    model = Model(paints, np.asarray(parts, float), load_ml, strokes)
    means = model.most_likely()
    spreads, evidence = model.around(means)
    chance = np.exp(evidence - evidence.max())
    chance /= chance.sum()
    shares = _allot(chance, DRAWN)
    which = np.repeat(np.arange(len(shares)), shares)
    others = model.unknowns + len(paints.keys)
    normals = _normals(DRAWN, others + paints.ways - paints.mixed_ways)
    steps = np.einsum("hij,hj->hi", spreads[which], normals[:, : model.unknowns])
    drawn = np.clip(means[which] + steps, -FURTHEST, FURTHEST)
    # Where the puddle bends away from the parabola, a draw counts as much as it is likely.
    log_weight = -0.5 * model.cost(drawn, which) + 0.5 * model.drawn_cost(steps, which)
    log_weight += np.log(np.maximum(chance[which] / shares[which], 1e-12))
    log_weight -= model.peak(means)[which]
    weight = np.exp(np.clip(log_weight - log_weight.max(), -30, 0))
    amounts, unit = model.puddle(drawn, which, normals[:, model.unknowns : others])
    moved = model.moved(drawn)
    if moved is not None:
        moved[:, paints.mixed_ways :] = normals[:, others:]
    got_in = np.zeros(len(paints.keys))
    got_in[paints.mixed :] = chance[1:]
    return Puddle(
        paints=paints,
        planned=model.planned(strokes[-1]),
        amounts=amounts,
        unit=unit,
        weight=weight / weight.sum(),
        load_ml=load_ml * np.exp(LOAD_SPREAD * drawn[:, -1]),
        got_in=got_in,
        misfit=float((model.residuals(means, np.arange(len(means))) ** 2).sum(-1).min())
        / len(strokes),
        moved=moved,
    )


def _allot(chance: Floats, total: int) -> NDArray[np.int_]:
    """`total` draws shared out by chance, as evenly as whole numbers allow."""
    bounds = np.round(np.cumsum(chance) * total).astype(int)
    return np.diff(bounds, prepend=0)


_PRIMES = (2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71)


@lru_cache(maxsize=16)
def _normals(count: int, width: int) -> Floats:
    """Standard normal numbers spread evenly (Halton's sequence): the same every time.

    Source: J. H. Halton, 1960, Numerische Mathematik 2, 84-90 (the sequence of radical inverses).
    Beyond its usable bases the columns begin again, shifted.
    """
    table = np.empty((count, width))
    for column in range(width):
        base, turn = _PRIMES[column % 12], column // 12
        for row in range(count):
            number, place, value = row + 1 + 7 * turn, 1.0, 0.0
            while number:
                place /= base
                value += place * (number % base)
                number //= base
            table[row, column] = NormalDist().inv_cdf((value + 0.37 * turn) % 1 or 0.5)
    return np.asarray(table - table.mean(axis=0))

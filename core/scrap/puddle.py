"""What a puddle is likely to hold, estimated from its planned parts and the strokes painted of it.

Every paint of the mix may be off by a factor, every stroke has a strength of its own, and at most
one other paint of the box may have got in. For each paint that may have, and for none, the most
likely puddle is found (MAP, Gauss-Newton on CIELAB); how well each explains the strokes, and how
seldom paint gets in, says how likely it is. Puddles drawn from around these stand for what is not
known: an addition is judged on all of them.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache
from statistics import NormalDist
from types import MappingProxyType

import numpy as np
from numpy.typing import NDArray

from core.scrap.paints import Floats, Paints

MISCOUNTED = 0.4
"""Standard deviation of the natural log of a paint's parts against those asked for."""

LOAD_SPREAD = 0.5
"""The same of a stroke's strength against the planned one."""

CAMERA = 1.0
"""Standard deviation of a reading, in CIELAB, besides the film's own error. In a and b it grows
with chroma, as a phone's does: see `_sigma`."""

GOT_IN = 0.25
"""Chance that another paint is in the puddle: one in four (assumed)."""

GOT_IN_SHARE, GOT_IN_SPREAD = 0.12, 0.6
"""How much of it, as a share of the planned parts: the middle, and the spread of its log."""

ADDED_OFF = 0.2
"""How far what was added, or will be, is from what was asked for, natural log."""

DRAWN = 24
"""Puddles that stand for what is not known."""

_STEPS = 9
_DIFFERENCE = 0.02
_FURTHEST = 3.0  # spreads a single step, and an unknown as a whole, may go


@dataclass(frozen=True)
class Stroke:
    """One dried stroke of a puddle.

    Attributes
    ----------
    Lab : tuple of 3 floats
        As read, the paper's white undone.
    added : mapping of paint key to parts
        What had been added to the planned mix when it was painted.
    """

    Lab: tuple[float, float, float]
    added: Mapping[str, float] = field(default_factory=lambda: MappingProxyType({}))


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
    """

    paints: Paints
    planned: Floats
    amounts: Floats
    unit: Floats
    weight: Floats
    load_ml: Floats
    got_in: Floats
    misfit: float = 0.0

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
    model = _Model(paints, np.asarray(parts, float), load_ml, strokes)
    means = model.most_likely()
    spreads, evidence = model.around(means)
    chance = np.exp(evidence - evidence.max())
    chance /= chance.sum()
    shares = _allot(chance, DRAWN)
    which = np.repeat(np.arange(len(shares)), shares)
    normals = _normals(DRAWN, model.unknowns + len(paints.keys))
    steps = np.einsum("hij,hj->hi", spreads[which], normals[:, : model.unknowns])
    drawn = np.clip(means[which] + steps, -_FURTHEST, _FURTHEST)
    # Where the puddle bends away from the parabola, a draw counts as much as it is likely.
    log_weight = -0.5 * model.cost(drawn, which) + 0.5 * model.drawn_cost(steps, which)
    log_weight += np.log(np.maximum(chance[which] / shares[which], 1e-12))
    log_weight -= model.peak(means)[which]
    weight = np.exp(np.clip(log_weight - log_weight.max(), -30, 0))
    amounts, unit = model.puddle(drawn, which, normals[:, model.unknowns :])
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
    )


class _Model:
    """The strokes as the film paints them.

    The unknowns of one possibility, each in its own spread: a factor for every paint of the mix,
    how much of another paint got in, the strength of what is added of the mix's paints and of
    those added before, and the strength of every stroke. Possibility 0 is that nothing got in.
    """

    def __init__(
        self, paints: Paints, parts: Floats, load_ml: float, strokes: Sequence[Stroke]
    ) -> None:
        self.paints, self.parts, self.load_ml = paints, parts, load_ml
        self.mixed = paints.mixed
        self.others = len(paints.keys) - self.mixed
        self.added = np.zeros((len(strokes), len(paints.keys)))
        for row, stroke in zip(self.added, strokes, strict=True):
            for key, count in stroke.added.items():
                row[paints.keys.index(key)] += count
        before = self.added[:, self.mixed :].any(axis=0)
        self.tried = [*range(self.mixed), *(self.mixed + np.flatnonzero(before)).tolist()]
        self.first_load = self.mixed + 1 + len(self.tried)
        self.unknowns = self.first_load + len(strokes)
        self.seen = np.array([stroke.Lab for stroke in strokes])
        self.sigma = _sigma(self.seen, paints.error)
        self.factor = np.hypot(MISCOUNTED, paints.spread[: self.mixed])
        # Of a factor seen, how much is the paint's strength: that part goes for what is added too.
        self.ours = (paints.spread[: self.mixed] / self.factor) ** 2
        self.own = np.hypot(paints.spread, ADDED_OFF)
        left = paints.spread[: self.mixed] * np.sqrt(1 - self.ours)
        self.own[: self.mixed] = np.hypot(left, ADDED_OFF)
        self.prior = np.full(1 + self.others, np.log(GOT_IN / max(self.others, 1)))
        self.prior[0] = np.log(1 - GOT_IN) if self.others else 0.0

    def planned(self, stroke: Stroke) -> Floats:
        """Parts asked for, shape (paints,), with what was added before a stroke."""
        planned = np.zeros(len(self.paints.keys))
        planned[: self.mixed] = self.parts
        for key, count in stroke.added.items():
            planned[self.paints.keys.index(key)] += count
        return planned

    def base(self, unknowns: Floats, which: NDArray[np.int_]) -> Floats:
        """Parts (..., paints) of the puddle as first mixed."""
        amounts = np.zeros((*unknowns.shape[:-1], len(self.paints.keys)))
        amounts[..., : self.mixed] = self.parts * np.exp(self.factor * unknowns[..., : self.mixed])
        share = GOT_IN_SHARE * np.exp(GOT_IN_SPREAD * unknowns[..., self.mixed])
        rows = np.nonzero(which > 0)[0]
        amounts[rows, ..., self.mixed - 1 + which[rows]] = share[rows] * self.parts.sum()
        return amounts

    def residuals(self, unknowns: Floats, which: NDArray[np.int_]) -> Floats:
        """Colours off, shape (..., 3 * strokes), in spreads.

        Parameters
        ----------
        unknowns : ndarray, shape (n, ..., unknowns)
        which : ndarray, shape (n,)
            The possibility of each.
        """
        amounts = self.base(unknowns, which)[..., None, :] + self.added * self._own(unknowns)
        share = amounts / amounts.sum(axis=-1, keepdims=True)
        strength = self.load_ml * np.exp(LOAD_SPREAD * unknowns[..., self.first_load :])
        off = (self.paints.Lab(share * strength[..., None]) - self.seen) / self.sigma
        return np.asarray(off.reshape(*off.shape[:-2], -1))

    def _own(self, unknowns: Floats) -> Floats:
        """Strength (..., 1, paints) of what is added, as far as the unknowns hold it."""
        own = np.zeros((*unknowns.shape[:-1], 1, len(self.paints.keys)))
        own[..., 0, : self.mixed] = self.ours * self.factor * unknowns[..., : self.mixed]
        tried = unknowns[..., self.mixed + 1 : self.first_load]
        own[..., 0, self.tried] += self.own[self.tried] * tried
        return np.asarray(np.exp(own))

    def cost(self, unknowns: Floats, which: NDArray[np.int_]) -> Floats:
        """Squares of all that is off, the unknowns' own included, shape (n,)."""
        return np.asarray((self.residuals(unknowns, which) ** 2).sum(-1) + (unknowns**2).sum(-1))

    def most_likely(self) -> Floats:
        """The most likely unknowns of every possibility, shape (possibilities, unknowns)."""
        which = np.arange(1 + self.others)
        best = np.zeros((len(which), self.unknowns))
        cost = self.cost(best, which)
        for _ in range(_STEPS):
            off, J = self._slopes(best, which)
            H = np.einsum("hri,hrj->hij", J, J) + np.eye(self.unknowns)
            g = np.einsum("hri,hr->hi", J, off) + best
            step = np.clip(-np.linalg.solve(H, g[..., None])[..., 0], -1.5, 1.5)
            for share in (1.0, 0.3):
                tried = np.clip(best + share * step, -_FURTHEST, _FURTHEST)
                new = self.cost(tried, which)
                better = new < cost
                best[better], cost[better] = tried[better], new[better]
        return best

    def _slopes(self, at: Floats, which: NDArray[np.int_]) -> tuple[Floats, Floats]:
        steps = _DIFFERENCE * np.vstack([np.zeros(self.unknowns), np.eye(self.unknowns)])
        off = self.residuals(at[:, None] + steps, which)
        J = (off[:, 1:] - off[:, :1]) / _DIFFERENCE
        return off[:, 0], np.swapaxes(J, 1, 2)

    def around(self, means: Floats) -> tuple[Floats, Floats]:
        """A root of each possibility's covariance, and the log of how likely it is."""
        which = np.arange(len(means))
        _, J = self._slopes(means, which)
        self._H = np.einsum("hri,hrj->hij", J, J) + np.eye(self.unknowns)
        roots = np.linalg.cholesky(np.linalg.inv(self._H))
        log_volume = np.log(np.einsum("hii->hi", roots)).sum(-1)
        return roots, self.prior - 0.5 * self.cost(means, which) + log_volume

    def drawn_cost(self, steps: Floats, which: NDArray[np.int_]) -> Floats:
        """What the parabola takes a step away from its middle for."""
        return np.asarray(np.einsum("ni,nij,nj->n", steps, self._H[which], steps))

    def peak(self, means: Floats) -> Floats:
        """Log likelihood at each middle, which the chances hold already."""
        return -0.5 * self.cost(means, np.arange(len(means)))

    def puddle(
        self, unknowns: Floats, which: NDArray[np.int_], normals: Floats
    ) -> tuple[Floats, Floats]:
        """What is in the puddle after the last stroke, and what one more part of each would be."""
        unit = np.exp(self.own * normals)
        unit[:, self.tried] = self._own(unknowns)[:, 0, self.tried]
        return self.base(unknowns, which) + self.added[-1] * unit, unit


def _sigma(Lab: Floats, film_error: float) -> Floats:
    chroma = np.hypot(Lab[:, 1], Lab[:, 2])
    wider = 1 + 0.015 * chroma
    both = float(np.hypot(CAMERA, film_error))
    return np.asarray(both * np.stack([np.ones_like(wider), wider, wider], -1))


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

"""The strokes of a puddle as the film paints them: what is unknown, and how far a guess is off.

Every unknown is counted in its own spread, so that its prior is a normal one of spread 1. A paint
known from a swatch card may move along the directions its card leaves open.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
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

_STEPS = 9
_DIFFERENCE = 0.02
FURTHEST = 3.0  # spreads a single step, and an unknown as a whole, may go


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


class Model:
    """The strokes as the film paints them.

    The unknowns of one possibility, each in its own spread: a factor for every paint of the mix,
    how much of another paint got in, the strength of what is added of the mix's paints and of
    those added before, how the mix's own paints differ from what their card says, and the strength
    of every stroke. Possibility 0 is that nothing got in.

    Parameters
    ----------
    paints : Paints
    parts : ndarray, shape (mixed,)
    load_ml : float
        Planned.
    strokes : sequence of Stroke
    camera : float
        Spread of a reading besides the film's own error, CIELAB.
    """

    def __init__(
        self,
        paints: Paints,
        parts: Floats,
        load_ml: float,
        strokes: Sequence[Stroke],
        camera: float = CAMERA,
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
        first = self.mixed + 1 + len(self.tried)
        self.ways = slice(first, first + paints.mixed_ways)
        self.first_load = self.ways.stop
        self.unknowns = self.first_load + len(strokes)
        self.seen = np.array([stroke.Lab for stroke in strokes])
        self.sigma = _sigma(self.seen, paints.error, camera)
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
        moved = self.moved(unknowns)
        moved = None if moved is None else moved[..., None, :]
        off = (self.paints.Lab(share * strength[..., None], moved) - self.seen) / self.sigma
        return np.asarray(off.reshape(*off.shape[:-2], -1))

    def moved(self, unknowns: Floats) -> Floats | None:
        """How far own paints are moved, shape (..., ways); None where there are none."""
        if not self.paints.ways:
            return None
        moved = np.zeros((*unknowns.shape[:-1], self.paints.ways))
        moved[..., : self.paints.mixed_ways] = unknowns[..., self.ways]
        return moved

    def _own(self, unknowns: Floats) -> Floats:
        """Strength (..., 1, paints) of what is added, as far as the unknowns hold it."""
        own = np.zeros((*unknowns.shape[:-1], 1, len(self.paints.keys)))
        own[..., 0, : self.mixed] = self.ours * self.factor * unknowns[..., : self.mixed]
        tried = unknowns[..., self.mixed + 1 : self.ways.start]
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
                tried = np.clip(best + share * step, -FURTHEST, FURTHEST)
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


def _sigma(Lab: Floats, film_error: float, camera: float) -> Floats:
    chroma = np.hypot(Lab[:, 1], Lab[:, 2])
    wider = 1 + 0.015 * chroma
    both = float(np.hypot(camera, film_error))
    return np.asarray(both * np.stack([np.ones_like(wider), wider, wider], -1))

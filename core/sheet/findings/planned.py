"""What was planned for a sheet, and how its mixes would have to change.

The sheet's colour is looked for among the mixes of the planned paints: what was really on the
brush. As far as that is from the plan, the plan is leaned the other way, so that the same hand
comes out right. How strong the wash is stays out of it: that is water, not parts.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from core.colour import delta_E_2000
from core.paint.box.box import Box
from core.paint.mixture.mix import Mix
from core.paint.planned import MixPlan, PlannedMix
from core.paint.wash.amounts import PaintSheet
from core.reading.reading import ColourReading
from core.reading.units import Units

_MOST_PARTS = 8
_LOADS = np.exp(np.linspace(np.log(0.25), np.log(4.0), 13))
_FITS = 7.0  # dE00 up to which the planned paints explain the sheet's colour
_LEAST_PART = 0.35  # a paint left out altogether, in parts
_CHANGED = 0.06  # of all parts: a share that moves less stays unsaid
_MOST_LEANED = 2.2  # times a paint's share: what is further off wants a second look, not more
_PLAIN = 0.02  # cost of one part more, so that few parts win among equals


@dataclass(frozen=True)
class Correction:
    """Other parts for a mix.

    Attributes
    ----------
    keys : tuple of str
        The paints, as the plan lists them.
    old, new : tuple of int
        Their parts.
    more, less : tuple of str
        Paints to take more and less of.
    """

    keys: tuple[str, ...]
    old: tuple[int, ...]
    new: tuple[int, ...]
    more: tuple[str, ...]
    less: tuple[str, ...]


@dataclass(frozen=True)
class Planned:
    """The plan that a sheet was painted by.

    Attributes
    ----------
    plan : MixPlan or None
        None where no mixes are planned.
    sheet : PaintSheet or None
        The paper; None where its size is not known.
    units : Units
        Lengths are told in.
    """

    plan: MixPlan | None = None
    sheet: PaintSheet | None = None
    units: Units = "cm"

    def mix_of(self, letter: str) -> PlannedMix | None:
        """The mix to use for a band; None where none is planned or it is bare paper."""
        if self.plan is None:
            return None
        for band in self.plan.bands:
            if band.letter == letter:
                mix = band.classroom
                return mix if mix is not None and mix.mix.parts else None
        return None

    def correction(self, letter: str, found: ColourReading) -> Correction | None:
        """Better parts for a band that came out as `found`; None where the mix stays as it is."""
        planned = self.mix_of(letter)
        if planned is None or self.plan is None:
            return None
        return corrected(self.plan.box, planned.mix, found)


@lru_cache(maxsize=128)
def corrected(box: Box, mix: Mix, found: ColourReading) -> Correction | None:
    """Parts that lean a mix back from what came out of it.

    Parameters
    ----------
    box : Box
    mix : Mix
        As planned.
    found : ColourReading
        The sheet's.
    """
    keys = mix.keys
    if len(keys) < 2:
        return None
    old = tuple(count for _, count in mix.parts)
    shares = _all_shares(len(keys))
    loads = mix.load_ml * _LOADS
    units = np.stack([box.load_vector({key: 1.0}) for key in keys])
    Lab = box.pigments.Lab((shares[:, None] * loads[:, None])[..., None, :] @ units)[..., 0, :]
    apart = np.asarray(delta_E_2000(Lab, np.array(found.Lab))).min(axis=1)
    best = int(apart.argmin())
    if apart[best] > _FITS:
        return None
    plan = np.array(old) / sum(old)
    painted = np.maximum(shares[best], _LEAST_PART / _MOST_PARTS)
    wanted = plan * np.clip(plan / painted, 1 / _MOST_LEANED, _MOST_LEANED)
    wanted = wanted / wanted.sum()
    new = _parts_near(wanted, sum(old))
    change = np.array(new) / sum(new) - plan
    more = tuple(key for key, move in zip(keys, change, strict=True) if move > _CHANGED)
    less = tuple(key for key, move in zip(keys, change, strict=True) if move < -_CHANGED)
    if not more or not less:
        return None
    return Correction(keys, old, new, more, less)


@lru_cache(maxsize=8)
def _all_shares(count: int) -> np.ndarray:
    """All shares (n, count) of whole parts, none of them all zero."""
    found = {
        tuple(part / sum(parts) for part in parts)
        for parts in itertools.product(range(_MOST_PARTS + 1), repeat=count)
        if 0 < sum(parts) <= _MOST_PARTS
    }
    return np.array(sorted(found))


def _parts_near(shares: np.ndarray, total: int) -> tuple[int, ...]:
    """Whole parts, every paint at least once, near these shares; about `total` of them."""
    count = len(shares)
    best: tuple[float, tuple[int, ...]] | None = None
    for whole in range(max(count, total - 2), min(12, total + 3) + 1):
        parts = np.maximum(np.round(shares * whole), 1).astype(int)
        off = float(np.abs(parts / parts.sum() - shares).sum())
        cost = off + _PLAIN * abs(int(parts.sum()) - total)
        if best is None or cost < best[0]:
            best = cost, tuple(int(part) for part in parts)
    assert best is not None
    return best[1]

"""What may be added to a puddle: touches and parts of one or two paints, each at its best thinning.

Water is not among them: how far to thin is found for every addition, none included.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from core.colour import delta_E_2000
from core.paint.pigment.measured import FULL_LOAD_ML
from core.paint.search.metric import local_metric
from core.scrap.paints import Floats, Paints
from core.scrap.puddle import Puddle

TOUCH = 0.25
"""Of a part: what the tip of a brush brings (assumed); half of it is the least anybody can add."""

AMOUNTS = (0.125, 0.25, 0.5, 1.0, 2.0, 3.0)
"""Parts of a paint that may be added."""

OF_TWO = AMOUNTS[:5]
"""The same where two are added."""

MOST_GROWN = 3.0
"""A puddle is never made more than so many times what it was."""

PAINT_PRICE, SECOND_PRICE, PART_PRICE = 0.04, 0.12, 0.04
"""What a paint, a second one, and a part more have to gain (CIEDE2000): few paints, small touches.
The prototype's 0.35 a paint and 0.12 a part guarded against a single guess of the puddle; here an
addition is judged on all that it may hold, and lower prices halve the median error without doing
more harm (benchmarks/scrap.py)."""

THINNEST_ML = 3e-4
_LOADS = np.geomspace(THINNEST_ML, FULL_LOAD_ML, 11)
_LOOKED_AT = 12
_SHORT_LIST = 36


@dataclass(frozen=True, eq=False)
class Judged:
    """Additions, each judged on everything the puddle may hold; arrays one row an addition.

    Attributes
    ----------
    added : ndarray, shape (n, paints)
        Parts of each paint.
    delta_E : ndarray, shape (n, drawn)
        CIEDE2000 to the band at the best thinning, for each possible puddle.
    load_ml : ndarray, shape (n, drawn)
        That thinning.
    Lab : ndarray, shape (n, drawn, 3)
        The colour then.
    expected : ndarray, shape (n,)
        The mean of `delta_E`, by the puddle's weights.
    price : ndarray, shape (n,)
        `expected`, and what the addition costs.
    """

    added: Floats
    delta_E: Floats
    load_ml: Floats
    Lab: Floats
    expected: Floats
    price: Floats


def judge_additions(puddle: Puddle, target_Lab: Floats) -> Judged:
    """The most promising additions to a puddle, the first of them none at all.

    Parameters
    ----------
    puddle : Puddle
    target_Lab : ndarray, shape (3,)
    """
    paints = puddle.paints
    added = _candidates(len(paints.keys), paints.mixed)
    room = (MOST_GROWN - 1) * min(puddle.planned.sum(), puddle.middle.sum())
    added = added[added.sum(axis=1) <= room + 1e-9]
    costs = prices(added)
    rows = _likeliest(puddle)
    amounts = puddle.amounts[rows] + added[:, None, :] * puddle.unit[rows]
    weight = puddle.weight[rows] / puddle.weight[rows].sum()
    moved = None if puddle.moved is None else puddle.moved[rows]
    rough = _rough_distance(paints, amounts, target_Lab, moved) @ weight + costs
    rough[0] = -1.0  # none at all is always looked at
    short = np.argsort(rough, kind="stable")[:_SHORT_LIST]
    return _judge(puddle, added[short], target_Lab)


def as_it_is(puddle: Puddle, target_Lab: Floats) -> float:
    """Expected CIEDE2000 to a colour at the best thinning, nothing added."""
    judged = _judge(puddle, np.zeros((1, len(puddle.paints.keys))), target_Lab)
    return float(judged.expected[0])


def prices(added: Floats) -> Floats:
    """What additions (n, paints) cost, in CIEDE2000."""
    several = np.maximum((added > 0).sum(axis=1) - 1, 0)
    cost: Floats = PAINT_PRICE * (added > 0).any(axis=1) + SECOND_PRICE * several
    return np.asarray(cost + PART_PRICE * added.sum(axis=1))


def _judge(puddle: Puddle, added: Floats, target_Lab: Floats) -> Judged:
    amounts = puddle.amounts + added[:, None, :] * puddle.unit
    share = amounts / amounts.sum(axis=-1, keepdims=True)
    load = _best_load(puddle.paints, share, target_Lab, puddle.moved)
    Lab = puddle.paints.Lab(share * load[..., None], puddle.moved)
    off = np.asarray(delta_E_2000(Lab, target_Lab))
    expected = off @ puddle.weight
    return Judged(added, off, load, Lab, expected, expected + prices(added))


def _likeliest(puddle: Puddle) -> NDArray[np.int_]:
    order = np.argsort(-puddle.weight, kind="stable")
    return order[: min(_LOOKED_AT, len(order))]


def _rough_distance(
    paints: Paints, amounts: Floats, target_Lab: Floats, moved: Floats | None
) -> Floats:
    share = amounts / amounts.sum(axis=-1, keepdims=True)
    distance, _ = _along_thinnings(paints, share, target_Lab, moved)
    return distance


def _best_load(paints: Paints, share: Floats, target_Lab: Floats, moved: Floats | None) -> Floats:
    """The load, shape (n, drawn), at which shares (n, drawn, paints) come nearest."""
    _, load = _along_thinnings(paints, share, target_Lab, moved)
    return load


def _along_thinnings(
    paints: Paints, share: Floats, target_Lab: Floats, moved: Floats | None
) -> tuple[Floats, Floats]:
    """Distance and load where the line of a mix's thinnings passes a colour.

    The colours at a few loads are joined by straight pieces, in the space in which distances
    around the target are CIEDE2000.
    """
    flat = share.reshape(-1, share.shape[-1])
    Lab = _thinnings(paints, share, moved).reshape(len(flat), len(_LOADS), 3)
    place = (Lab - target_Lab) @ local_metric(target_Lab).T
    start, way = place[:, :-1], np.diff(place, axis=1)
    along = -(start * way).sum(-1) / np.maximum((way**2).sum(-1), 1e-12)
    along = np.clip(along, 0.0, 1.0)
    apart = ((start + along[..., None] * way) ** 2).sum(-1)
    piece = apart.argmin(axis=1)
    row = np.arange(len(flat))
    log = np.log(_LOADS)
    load = np.exp(log[piece] + along[row, piece] * np.diff(log)[piece])
    distance = np.sqrt(apart[row, piece])
    return distance.reshape(share.shape[:-1]), load.reshape(share.shape[:-1])


def _thinnings(paints: Paints, share: Floats, moved: Floats | None) -> Floats:
    """Colours (n, drawn, loads, 3) of shares (n, drawn, paints), roughly."""
    loads = share[..., None, :] * _LOADS[:, None]
    if moved is None:
        return paints.rough_Lab(loads.reshape(-1, share.shape[-1]))
    worlds = [
        paints.rough_Lab(loads[:, world].reshape(-1, share.shape[-1]), moved[world])
        for world in range(len(moved))
    ]
    return np.stack([Lab.reshape(len(share), len(_LOADS), 3) for Lab in worlds], axis=1)


@lru_cache(maxsize=32)
def _candidates(paints: int, mixed: int) -> Floats:
    """Additions (n, paints): none, one paint, two of which at least one is in the mix."""
    rows = [np.zeros(paints)]
    for one in range(paints):
        for amount in AMOUNTS:
            row = np.zeros(paints)
            row[one] = amount
            rows.append(row)
    for one, other in itertools.combinations(range(paints), 2):
        if one >= mixed:
            continue
        for amounts in itertools.product(OF_TWO, OF_TWO):
            row = np.zeros(paints)
            row[[one, other]] = amounts
            rows.append(row)
    found = np.array(rows)
    found.flags.writeable = False
    return found

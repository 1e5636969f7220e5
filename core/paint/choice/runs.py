"""The same paints, and the same mix, from band to band.

A class that changes paints for every band of one blue sky learns nothing about washes. So the
bands are chosen together: changing paints from one band to the next has a price, and neighbours
that hold the same paints share one mix, thinned, wherever that is as near as the eye can tell.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache

import numpy as np

from core.colour import delta_E_2000
from core.paint.box.box import Box
from core.paint.mixture.mix import Mix
from core.paint.mixture.strength import mix_half_load
from core.paint.pigment.measured import FULL_LOAD_ML
from core.reading.reading import ColourReading

PaintSet = frozenset[str]
Parts = tuple[tuple[str, int], ...]

CHANGE_PRICE = 1.4
ADD_PRICE = 0.8
"""What it costs, on the scale of delta E 2000, to change paints from one band to the next, or
only to add a paint to a mix or leave one out."""

SHARED_WITHIN, SHARED_WORSE = 2.0, 0.6
"""Delta E 2000 that a shared mix may be off, or further off than a band's own."""

SHARED_WITHIN_PALE, PALE_FROM_VALUE = 3.0, 7.5
"""In a pale sky one mix, thinned, serves as long as it still matches: washes so thin are laid by
the water in the brush, and three mixes of them are one too many or two."""

SHARED_PART_PRICE = 0.1


@dataclass(frozen=True)
class Place:
    """What a band's neighbours ask of it.

    Attributes
    ----------
    prefer : frozenset of str
        Paints to use when a teacher would build the colour from them.
    shared : parts or None
        The parts in which a run of neighbours uses them, if the band is one of that run.
    letters : tuple of str
        The bands of that run.
    beside : tuple of frozensets of str
        The paints of the bands above and below.
    """

    prefer: PaintSet = frozenset()
    shared: Parts | None = None
    letters: tuple[str, ...] = ()
    beside: tuple[PaintSet, ...] = ()


ALONE = Place()


def choose_sets(prices: Sequence[Mapping[PaintSet, float]]) -> tuple[PaintSet | None, ...]:
    """The set of paints for every band, all bands together.

    Parameters
    ----------
    prices : sequence of mappings
        For every band from the top, what its best mix of each set costs; empty where nothing is
        to be chosen, and there the chain breaks.

    Returns
    -------
    tuple of frozenset or None
        The cheapest chain (Viterbi's dynamic programming); None where nothing was to be chosen.
    """
    best: dict[PaintSet, tuple[float, tuple[PaintSet | None, ...]]] = {}
    done: tuple[PaintSet | None, ...] = ()
    for options in prices:
        if not options:
            done = (*_cheapest(best, done), None)
            best = {}
            continue
        before = best
        best = {}
        for paints, price in options.items():
            cost, chain = 0.0, done
            if before:
                cost, chain = min(
                    (
                        (cost + _change(above, paints), chain)
                        for above, (cost, chain) in before.items()
                    ),
                    key=lambda item: item[0],
                )
            best[paints] = (cost + price, (*chain, paints))
    return _cheapest(best, done)


def _change(above: PaintSet, paints: PaintSet) -> float:
    if above == paints:
        return 0.0
    return ADD_PRICE if above < paints or paints < above else CHANGE_PRICE


def change_price(beside: Sequence[PaintSet], paints: PaintSet) -> float:
    """What it costs to change from the paints of the bands beside to these."""
    return sum(_change(other, paints) for other in beside)


def _cheapest(
    best: Mapping[PaintSet, tuple[float, tuple[PaintSet | None, ...]]],
    done: tuple[PaintSet | None, ...],
) -> tuple[PaintSet | None, ...]:
    return min(best.values(), key=lambda item: item[0])[1] if best else done


def best_load_ml(box: Box, parts: Parts, target: ColourReading) -> tuple[float, float]:
    """The load, in millilitres, at which fixed parts come nearest a colour, and how near.

    Returns
    -------
    load_ml : float
    delta_E_2000 : float
    """
    return _best_load_ml(box.only(key for key, _ in parts), parts, target)


# Without it the edits of benchmarks/memories.py take 1.4 times as long.
@lru_cache(maxsize=1024)
def _best_load_ml(box: Box, parts: Parts, target: ColourReading) -> tuple[float, float]:
    counts = {key: count for key, count in parts if count}
    vector = box.load_vector({key: float(count) for key, count in counts.items()})
    half = mix_half_load(box, counts)
    shares = vector / vector.sum()
    aim = np.array(target.Lab)
    # Along one mix's washes the difference may dip twice: look everywhere, then step in.
    grid = np.geomspace(half * 0.02, FULL_LOAD_ML, 60)
    at = int(np.argmin(delta_E_2000(box.pigments.Lab(grid[:, None] * shares), aim)))
    fine = np.geomspace(grid[max(at - 1, 0)], grid[min(at + 1, len(grid) - 1)], 60)
    gaps = delta_E_2000(box.pigments.Lab(fine[:, None] * shares), aim)
    at = int(np.argmin(gaps))
    return float(fine[at]), float(gaps[at])


def share_mixes(
    box: Box, targets: Sequence[ColourReading | None], mixes: Sequence[Mix | None]
) -> tuple[Parts | None, ...]:
    """Parts that neighbours of the same paints can share, thinned or strengthened.

    Parameters
    ----------
    box : Box
    targets : sequence of ColourReading or None
    mixes : sequence of Mix or None
        Each band's own mix; None where it must not be touched.

    Returns
    -------
    tuple of parts or None
        None where a band keeps its own mix.
    """
    shared: list[Parts | None] = [None] * len(mixes)
    start = 0
    while start < len(mixes):
        end = start + 1
        while end < len(mixes) and _may_share(mixes[start], mixes[end]):
            end += 1
        while end > start + 1:
            parts = _shared_parts(box, targets[start:end], mixes[start:end])
            if parts is not None:
                shared[start:end] = [parts] * (end - start)
                break
            end -= 1
        start = max(end, start + 1)
    _stretch(box, targets, mixes, shared)
    return tuple(shared)


def _stretch(
    box: Box,
    targets: Sequence[ColourReading | None],
    mixes: Sequence[Mix | None],
    shared: list[Parts | None],
) -> None:
    """Let a run's mix serve the next band too, whatever its own paints, where none would tell."""
    number = len(shared)
    for way in (range(1, number), range(number - 2, -1, -1)):
        step = 1 if way.step > 0 else -1
        for at in way:
            parts, mix, target = shared[at - step], mixes[at], targets[at]
            if parts is None or shared[at] is not None or mix is None or target is None:
                continue
            if mix.parts and _serves(box, parts, target, mix) is not None:
                shared[at] = parts


def _may_share(one: Mix | None, other: Mix | None) -> bool:
    return one is not None and other is not None and bool(one.parts and other.parts)


def _serves(box: Box, parts: Parts, target: ColourReading, own: Mix) -> float | None:
    """How near parts come to a band in place of its own mix; None where the eye would tell."""
    pale = target.munsell.value >= PALE_FROM_VALUE
    alone = float(delta_E_2000(np.array(own.Lab), np.array(target.Lab)))
    within = SHARED_WITHIN_PALE if pale else SHARED_WITHIN
    gap = best_load_ml(box, parts, target)[1]
    return gap if gap <= max(within, alone + SHARED_WORSE) else None


def _shared_parts(
    box: Box, targets: Sequence[ColourReading | None], mixes: Sequence[Mix | None]
) -> Parts | None:
    bands = [
        (target, mix)
        for target, mix in zip(targets, mixes, strict=True)
        if target is not None and mix is not None
    ]
    best: tuple[float, Parts] | None = None
    for parts in dict.fromkeys(mix.parts for _, mix in bands):
        cost = SHARED_PART_PRICE * sum(count for _, count in parts)
        for target, mix in bands:
            gap = _serves(box, parts, target, mix)
            if gap is None:
                break
            cost += gap
        else:
            if best is None or cost < best[0]:
                best = (cost, parts)
    return None if best is None else best[1]

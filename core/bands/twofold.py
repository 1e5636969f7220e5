"""Does a band hold two colours, and which? Only where the eye would say so.

Two colours are two groups of cells that are apart (few cells have a colour between) and that meet
at edges (the colour changes over a short way). A graded wash has no edges and grain has no groups.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.bands.cells import Cells

Floats32 = NDArray[np.float32]
Bools = NDArray[np.bool_]

LEAST_SHARE = 0.12
"""What the smaller colour must cover: less is a detail."""

_LEAST_SKY = 0.2
"""Of a band, that must be sky: of less, what is left of the land could be taken for a colour."""

APART = 10.0
"""Working-space units between the two: about a step of value, or two names apart in hue."""

_TOLD_APART = 0.74
"""Least share of the spread that the two groups explain. An even slope has 0.75, a bell of grain
0.64 (2 / pi), two clear groups 1; soft edges and clouds that are shaded bring it down."""

_EDGE_AND_GROUPS = 0.5
_GROUPS_COUNT = 2.0
"""The change across an edge, as a share of the way from one colour to the other, and how far the
spread explained is above 0.75: what one lacks the other may make up for. On drawn skies clouds
score 0.54 to 1.4, slopes, glows and grain up to 0.33."""

_LEAST_EDGE = 0.3
"""Below this change across an edge nothing makes two colours of a wash."""

_HARD = 0.75
"""Change across an edge, as a share of the way between the colours, from which it is hard."""

_STACKED = 0.7
"""How far better than guessing one line across the band must tell the two apart."""

_STEEP = 25.0
"""Units between the halves of a slope downwards that nobody would lay as one wash."""

_LEAST_STEP = 8.0
"""Units between two colours above each other that are worth a line."""

_BINS = 64
CORE = 0.3
"""How far, as a share of the way to the other colour, a pixel may be off its own and still show
that colour rather than an edge."""


@dataclass(frozen=True, eq=False)
class Two:
    """Two colours of a band, the one that covers more first.

    Attributes
    ----------
    share : float
        What the second covers of the band's sky, 0..0.5.
    main, second : ndarray, shape (3,)
        Working space, at the band's middle height.
    start, way : ndarray, shape (3,)
        Where the first is among colours without the band's steps, and the way to the second.
    level : bool
        Whether the steps from row to row were left out to tell them apart.
    soft : bool
        Whether one melts into the other rather than ending at an edge.
    """

    share: float
    main: NDArray[np.float64]
    second: NDArray[np.float64]
    start: Floats32
    way: Floats32
    level: bool
    soft: bool

    def places(self, work: Floats32, steps: Floats32) -> Floats32:
        """How far colours, shape (n, 3), are from the main colour (0) to the second (1).

        Parameters
        ----------
        work : ndarray, shape (n, 3)
            Working space.
        steps : ndarray, shape (n, 3)
            What the sky changes by down to each, see `Cells.steps_at`.
        """
        away = work - (self.start + steps if self.level else self.start)
        return np.asarray(away @ (self.way / (self.way @ self.way)))


@dataclass(frozen=True)
class Twofold:
    """What a band holds: two colours between each other, or above each other, or neither."""

    two: Two | None = None
    stacked: bool = False


ONE = Twofold()


def find_two(cells: Cells, first: int, last: int) -> Twofold:
    """Look for two colours in some rows.

    Parameters
    ----------
    cells : Cells
    first, last : int
        The first row, and the one after the last, see `Cells.rows_between`.
    """
    rows = slice(first, last)
    weights = cells.weights[rows]
    flat = weights.reshape(-1)
    if float(flat.mean()) < _LEAST_SKY:
        return ONE
    # Over a wash that grades downwards clouds show once that is taken out; soft edges can look
    # like such a wash and are then better left in.
    for level in (True, False):
        colours = (cells.level if level else cells.colours)[rows].reshape(-1, 3)
        split = _split(colours, flat)
        below = min(cells.below, max(1, (last - first) // (4 if level else 8)))
        if split is None or not _is_told_apart(split):
            continue
        places = split.places.reshape(weights.shape)
        edge = _edge(places, weights, cells.beside, below)
        if _score(split, edge) < _EDGE_AND_GROUPS:
            continue
        if not level and _one_above_the_other(places, weights):
            continue
        return Twofold(_two(split, cells, rows, weights, level=level, soft=edge < _HARD))
    return Twofold(stacked=_is_stacked(cells.steps[rows], weights.sum(axis=1), cells.below))


@dataclass(frozen=True, eq=False)
class _Split:
    """Colours split in two.

    Attributes
    ----------
    places : ndarray, shape (n,)
        From the first group's mean (0) to the second's (1).
    share : float
        Of the second group.
    start, way : ndarray, shape (3,)
    explained : float
        Share of the spread along the way that is between the groups.
    """

    places: Floats32
    share: float
    start: Floats32
    way: Floats32
    explained: float


def _split(colours: Floats32, weights: Floats32) -> _Split | None:
    """Part colours, shape (n, 3), where they fall apart best; None where it is not worth it.

    Notes
    -----
    First a cut along the direction in which they spread most (Otsu, 1979, "A threshold selection
    method from gray-level histograms"), then a few rounds of two means (Lloyd, 1982).
    """
    total = float(weights.sum())
    if total <= 0:
        return None
    mean = (weights @ colours) / total
    away = colours - mean
    spread = (away * weights[:, None]).T @ away / total
    widths, directions = np.linalg.eigh(spread)
    # Two groups so small and so near that they would not count spread at least so much.
    if widths[-1] < LEAST_SHARE * (1 - LEAST_SHARE) * _LEAST_STEP**2:
        return None
    second = _cut(away @ directions[:, -1].astype(np.float32), weights)
    share, way, middle = 0.0, mean, mean
    for _ in range(4):
        part = weights * second
        heavy = float(part.sum())
        share = heavy / total
        if not 0.02 < share < 0.98:
            return None
        high = (part @ away) / heavy
        low = -high * share / (1 - share)
        way, middle = high - low, (high + low) / 2
        now = (away - middle) @ way > 0
        if np.array_equal(now, second):
            break
        second = now
    length = float(way @ way)
    places = ((away - low) @ way) / length
    off = places - share
    explained = share * (1 - share) / max(float(weights @ (off * off)) / total, 1e-9)
    return _Split(places, share, mean + low, way, explained)


def _cut(along: Floats32, weights: Floats32) -> Bools:
    """Which points are beyond the cut that leaves the two parts most different."""
    low, high = float(along[weights > 0].min()), float(along[weights > 0].max())
    bins = ((along - low) * (_BINS / max(high - low, 1e-6))).astype(np.intp)
    np.clip(bins, 0, _BINS - 1, out=bins)
    counts = np.bincount(bins, weights, _BINS)
    before, summed = np.cumsum(counts), np.cumsum(counts * np.arange(_BINS))
    total, whole = before[-1], summed[-1]
    both = np.maximum(before * (total - before), 1e-9)
    between = np.where(before < total, (summed * total - before * whole) ** 2 / both, 0.0)
    return np.asarray(bins > int(np.argmax(between)))


def _is_told_apart(split: _Split) -> bool:
    """Whether the two groups are large enough, and are apart."""
    small = min(split.share, 1 - split.share)
    apart = float(np.linalg.norm(split.way))
    return small >= LEAST_SHARE and apart >= APART and split.explained >= _TOLD_APART


def _score(split: _Split, edge: float) -> float:
    """How clearly two groups are two colours to the eye: see `_EDGE_AND_GROUPS`."""
    if edge < _LEAST_EDGE:
        return 0.0
    return edge + _GROUPS_COUNT * (split.explained - 0.75)


def _edge(places: Floats32, weights: Floats32, beside: int, below: int) -> float:
    """Mean change over a short way where one group passes into the other."""
    second = places > 0.5
    change = count = 0.0
    for gap, axis in ((beside, 1), (below, 0)):
        if places.shape[axis] <= gap:
            continue
        one, other = _shifted(axis, gap)
        pairs = np.minimum(weights[one], weights[other]) * (second[one] != second[other])
        count += float(pairs.sum())
        change += float((pairs * np.abs(places[one] - places[other])).sum())
    return change / count if count > 0 else 0.0


def _shifted(axis: int, gap: int) -> tuple[tuple[slice, ...], tuple[slice, ...]]:
    everything = slice(None)
    if axis:
        return (everything, slice(None, -gap)), (everything, slice(gap, None))
    return (slice(None, -gap), everything), (slice(gap, None), everything)


def _two(
    split: _Split, cells: Cells, rows: slice, weights: Floats32, *, level: bool, soft: bool
) -> Two:
    colours, places = cells.colours[rows].reshape(-1, 3), split.places
    start, way, share = split.start, split.way, split.share
    if share > 0.5:
        start, way, places, share = start + way, -way, 1 - places, 1 - share
    flat = weights.reshape(-1)
    return Two(
        share,
        _middle(colours, flat * (places < CORE), flat * (places < 0.5)),
        _middle(colours, flat * (places > 1 - CORE), flat * (places > 0.5)),
        start,
        way,
        level,
        soft,
    )


def _middle(colours: Floats32, core: Floats32, all_of_it: Floats32) -> NDArray[np.float64]:
    """Mean of a group's colours, of those that show it plainly if there are enough."""
    total = float(core.sum())
    used = core if total > 0.2 * float(all_of_it.sum()) else all_of_it
    return np.asarray((used @ colours) / max(float(used.sum()), 1e-9), dtype=np.float64)


def _is_stacked(steps: Floats32, weights: Floats32, below: int) -> bool:
    """Whether the steps from row to row are those of two colours above each other."""
    split = _split(steps, weights)
    if split is None or min(split.share, 1 - split.share) < LEAST_SHARE:
        return False
    apart = float(np.linalg.norm(split.way))
    places, weights = split.places[:, None], weights[:, None]
    if apart < _LEAST_STEP or not _one_above_the_other(places, weights):
        return False
    gap = min(below, max(1, len(places) // 8))
    return apart >= _STEEP or _score(split, _edge(places, weights, 1, gap)) >= _EDGE_AND_GROUPS


def _one_above_the_other(places: Floats32, weights: Floats32) -> bool:
    """Whether one line across tells the groups apart much better than none."""
    in_second = (weights * (places > 0.5)).sum(axis=1)
    in_first = weights.sum(axis=1) - in_second
    second, first = float(in_second.sum()), float(in_first.sum())
    above = np.cumsum(in_second - in_first)
    right = max(float(above.max()) + first, second - float(above.min()))
    guessed, total = max(first, second), first + second
    return right - guessed >= _STACKED * (total - guessed)

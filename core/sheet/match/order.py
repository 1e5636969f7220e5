"""Cutting a sheet's profile into the reference's bands, in order.

The sheet's vertical profile is cut into as many pieces as the reference has bands by exact dynamic
programming; each piece is drawn towards its band's colour and each line towards its place in the
reference.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.medians import channels_first, medians
from core.colour.working_space import Floats, dot_planes

SAMPLES = 400
"""Rows of a profile."""

_PULL = 40.0  # samples' worth of trust in the reference's colour (plus a shift common to all)
_PRIOR = 200.0  # cost of a line lying one deviation from its place
_DEVIATION = 0.08
_POOL = 2  # samples taken together in the search
_MOST_WAYS = 8
_AT_ONCE = 32  # rows of a profile worked out together: as many as fit the processor's cache


def profile_of(W: Floats, mask: NDArray[np.bool_] | None = None) -> Floats:
    """Median colour of each of `SAMPLES` rows, (SAMPLES, 3), of working colours (h, w, 3).

    Rows without any pixel in `mask` are filled from their neighbours.
    """
    h = len(W)
    edges = np.linspace(0, h, SAMPLES + 1)
    low = edges[:-1].astype(int)
    high = np.maximum(low + 1, np.ceil(edges[1:]).astype(int))
    if mask is None or mask.all():
        return _row_medians(np.moveaxis(W, -1, 0), low, high)
    channels = channels_first(W)
    rows = np.empty((SAMPLES, 3))
    for i, (first, last) in enumerate(zip(low, high, strict=True)):
        part = channels[:, first:last].reshape(3, -1)[:, mask[first:last].ravel()]
        rows[i] = medians(part) if part.size else np.nan
    known = np.isfinite(rows[:, 0])
    if not known.all():
        if not known.any():
            return np.zeros((SAMPLES, 3))
        index = np.arange(SAMPLES)
        for c in range(3):
            rows[:, c] = np.interp(index, index[known], rows[known, c])
    return rows


def _row_medians(channels: Floats, low: NDArray[np.int_], high: NDArray[np.int_]) -> Floats:
    """Medians (n, 3) of the rows from `low` to `high` (n,) each, of a picture (3, h, w)."""
    found = np.empty((len(low), 3))
    for start in range(0, len(low), _AT_ONCE):
        some = slice(start, start + _AT_ONCE)
        first, count = low[some] - low[start], high[some] - low[some]
        part = np.ascontiguousarray(channels[:, low[start] : high[some][-1]])
        for n in np.unique(count):
            which = np.flatnonzero(count == n)
            rows = part[:, first[which, None] + np.arange(n)]
            found[start + which] = medians(rows.reshape(3, len(which), -1)).T
    return found


def band_colours(profile: Floats, lines: tuple[float, ...]) -> Floats:
    """Median colour of the middle of each band, (bands, 3)."""
    edges = np.array([0.0, *lines, 1.0])
    colours = []
    for top, bottom in itertools.pairwise(edges):
        trim = 0.2 * (bottom - top)
        low = min(int((top + trim) * SAMPLES), SAMPLES - 1)
        high = max(low + 1, int((bottom - trim) * SAMPLES))
        colours.append(np.median(profile[low:high], axis=0))
    return np.asarray(colours)


@dataclass(frozen=True, eq=False)
class Search:
    """Ways to cut a profile.

    Attributes
    ----------
    ways : tuple of tuple of float
        Lines: the cheapest way first, then the cheapest with each line in another valley.
    pieces : list of (n + 1, n + 1) float64
        Cost of each band reaching from one row to another, prior of its lower line included.
    """

    ways: tuple[tuple[float, ...], ...]
    pieces: list[Floats]

    def cost(self, lines: tuple[float, ...]) -> float:
        """Cost a sample of any lines (squared working units), large but finite."""
        n = len(self.pieces[0]) - 1
        cuts = [0, *(min(n, max(0, round(line * n))) for line in lines), n]
        total = sum(
            float(piece[a, b]) for piece, a, b in zip(self.pieces, cuts, cuts[1:], strict=False)
        )
        return total / n if np.isfinite(total) else 1e6


def order_bands(wanted: Floats, lines: tuple[float, ...], sheet: Floats) -> Search:
    """Cut the sheet's profile into the bands `wanted` (bands, 3), in order."""
    n = SAMPLES
    trim = round(0.01 * n)  # the ragged edge of the tape shows in the outermost rows
    profile = sheet.copy()
    profile[:trim], profile[n - trim :] = profile[trim], profile[n - trim - 1]
    # The last row of each pair stands for both: half the rows, a quarter of the work.
    profile = profile.reshape(-1, _POOL, 3).mean(axis=1)
    n //= _POOL
    narrow = float(np.diff([0.0, *lines, 1.0]).min())
    shortest = max(2, round(min(0.04, 0.4 * narrow) * n))
    first = np.concatenate([np.zeros((1, 3)), np.cumsum(profile, axis=0)])
    second = np.concatenate([[0.0], np.cumsum((profile**2).sum(1))])
    span = np.arange(n + 1)[None] - np.arange(n + 1)[:, None]
    count = np.maximum(span, 1)
    total = first.T[:, None] - first.T[..., None]
    mean = total / count
    scatter = (second[None] - second[:, None]) - dot_planes(total, total) / count
    scatter = np.where(span >= shortest, scatter, np.inf)
    trust = _PULL / _POOL
    pull = trust * count / (count + trust)
    where = np.arange(n + 1) / n
    places = lines
    forward: list[Floats] = []
    costs: list[Floats] = []
    for _ in range(2):  # once more with the shift the first answer shows
        shift = np.median(band_colours(sheet, places) - wanted, axis=0)
        shift = shift * min(1.0, 12.0 / (float(np.linalg.norm(shift)) + 1e-9))
        forward, costs = [np.where(np.arange(n + 1) == 0, 0.0, np.inf)], []
        for k, colour in enumerate(wanted):
            away = mean - colour[:, None, None]
            away -= shift[:, None, None]
            cost = dot_planes(away, away)
            cost *= pull
            cost += scatter
            if k < len(lines):
                cost += _PRIOR / _POOL * ((where - lines[k]) / _DEVIATION)[None] ** 2
            costs.append(cost)
            forward.append((forward[-1][:, None] + cost).min(axis=0))
        places = _trace(forward, costs, n, n)
    backward = [np.where(np.arange(n + 1) == n, 0.0, np.inf)]
    for cost in reversed(costs[1:]):
        backward.insert(0, (cost + backward[0][None]).min(axis=1))
    ways = [(float(forward[-1][n]), places)]
    for k in range(len(lines)):
        curve = forward[k + 1] + backward[k]
        for place in _valleys(curve, round(places[k] * n), max(3, round(0.03 * n))):
            above = _trace(forward[: k + 2], costs[: k + 1], place, n)
            below = _trace_down(backward[k:], costs[k + 1 :], place, n)
            ways.append((float(curve[place]), (*above, place / n, *below)))
    ways.sort()
    unique = tuple(dict.fromkeys(way for _, way in ways))
    return Search(unique[:_MOST_WAYS], costs)


def _valleys(curve: Floats, chosen: int, apart: int) -> list[int]:
    """The two lowest local minima at least `apart` from the chosen place."""
    inner = np.arange(1, len(curve) - 1)
    low = (curve[inner] <= curve[inner - 1]) & (curve[inner] < curve[inner + 1])
    places = [int(i) for i in inner[low & np.isfinite(curve[inner])] if abs(i - chosen) >= apart]
    return sorted(places, key=lambda i: float(curve[i]))[:2]


def _trace(forward: list[Floats], costs: list[Floats], end: int, n: int) -> tuple[float, ...]:
    """Lines before `end` on the cheapest way to it."""
    cuts = []
    for k in range(len(costs) - 1, 0, -1):
        end = int((forward[k] + costs[k][:, end]).argmin())
        cuts.append(end / n)
    return tuple(reversed(cuts))


def _trace_down(
    backward: list[Floats], costs: list[Floats], start: int, n: int
) -> tuple[float, ...]:
    """Lines after `start` on the cheapest way from it."""
    cuts = []
    for k in range(len(costs) - 1):
        start = int((costs[k][start] + backward[k + 1]).argmin())
        cuts.append(start / n)
    return tuple(cuts)

"""Finding the reference's lines on a sheet.

The sheet's vertical profile is cut into as many pieces as the reference has bands, in order,
by exact dynamic programming; each piece is drawn towards its band's colour and each line towards
its place in the reference. Then both profiles are described by soft steps (`steps`), and the
difference of the two half-way points is the displacement, so that like is compared with like.
"""

from __future__ import annotations

import itertools
from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.sheet.space import Floats, W_to_linear, linear_to_W
from core.sheet.steps import Steps, Target, fit_steps

SAMPLES = 400
"""Rows of a profile."""
TELLABLE = 4.0
"""Neighbouring bands closer than this, in working units, give no line that can be told."""

_PULL = 40.0  # samples' worth of trust in the reference's colour (plus a shift common to all)
_PRIOR = 200.0  # cost of a line lying one deviation from its place
_DEVIATION = 0.08
_POOL = 2  # samples taken together in the search
_MOST_WAYS = 8
_COLOUR_TRUST = 0.4  # as _PULL, in the fit of soft steps
_PRIOR_FIT = 400.0
_WIDTH_FIT = 3.0
_ORDER_SHARE = 0.1  # weight of the search's cost beside the fit's
_SLIDE = 0.015
_ON_IT = 0.006
_PRESSED = 0.4  # share of its height in the reference
_DOUBT = 0.003  # standard error of a place from which the profile is too flat to tell
_RIVAL = 0.1  # share of the cost by which a second reading must be worse to be ruled out


@dataclass(frozen=True)
class Line:
    """A line found on a sheet; positions are shares of the height.

    Attributes
    ----------
    should, at : float
    sure : bool
        False: "cannot tell".
    contrast : float
        Smaller of the two colour steps across the line, reference and sheet, working units.
    width : float
        10-90% width of the sheet's step.
    error : float
        Standard error of the place on the sheet, as the fit sees it.
    """

    should: float
    at: float
    sure: bool
    contrast: float
    width: float
    error: float


def profile_of(W: Floats, mask: NDArray[np.bool_] | None = None) -> Floats:
    """Median colour of each of `SAMPLES` rows, (SAMPLES, 3), of working colours (h, w, 3).

    Rows without any pixel in `mask` are filled from their neighbours.
    """
    h = len(W)
    edges = np.linspace(0, h, SAMPLES + 1)
    rows = np.empty((SAMPLES, 3))
    for i in range(SAMPLES):
        low = int(edges[i])
        high = max(low + 1, int(np.ceil(edges[i + 1])))
        part = W[low:high].reshape(-1, 3)
        if mask is not None:
            part = part[mask[low:high].ravel()]
        rows[i] = np.median(part, axis=0) if len(part) else np.nan
    known = np.isfinite(rows[:, 0])
    if not known.all():
        if not known.any():
            return np.zeros((SAMPLES, 3))
        index = np.arange(SAMPLES)
        for c in range(3):
            rows[:, c] = np.interp(index, index[known], rows[known, c])
    return rows


def density_of(profile: Floats) -> Floats:
    """Optical densities (natural log, times 20) of a profile in working colours.

    Paint adds up in density, so the half-way point of a wash lies there whatever its softness;
    in the working space a wide step from dark to pale would seem to lie too low.
    """
    return -20.0 * np.log(np.clip(W_to_linear(profile), 0.004, 1.2))


def match_lines(reference: Floats, lines: tuple[float, ...], sheet: Floats) -> tuple[Line, ...]:
    """Where each line of the reference lies on the sheet.

    Parameters
    ----------
    reference, sheet : (SAMPLES, 3) float64
        Profiles in working colours.
    lines : tuple of float
        The reference's lines, shares of its sky's height.
    """
    if not lines:
        return ()
    own = _fit_reference(reference, lines)
    its, rivals = _fit_sheet(reference, lines, own, sheet)
    kept = np.diff([0.0, *its.at, 1.0]) / np.diff([0.0, *lines, 1.0])
    answer = []
    for k, line in enumerate(lines):
        contrast = min(_step_between(own, k), _step_between(its, k))
        # A line that lies in its transition is where it should be. One put a little beside it is
        # compared with the transition's middle; where the fit slides far off, the fit is in doubt.
        beside = float(own.at[k]) - line
        beside = float(np.sign(beside)) * min(max(abs(beside) - _ON_IT, 0.0), _SLIDE)
        at = float(np.clip(its.at[k] - beside, 0.005, 0.995))
        # Another reading of the sheet that is nearly as good and puts the line elsewhere.
        doubt = any(
            other.cost < its.cost + _RIVAL * (1 + its.cost) and abs(other.at[k] - its.at[k]) > 0.02
            for other in rivals
        )
        # A band pressed together next to the line is more likely one the fit invented.
        pressed = min(kept[k], kept[k + 1]) < _PRESSED
        flat = float(its.error[k]) > _DOUBT
        sure = contrast >= TELLABLE and not (doubt or pressed or flat)
        answer.append(Line(line, at, sure, contrast, float(its.width[k]), float(its.error[k])))
    return tuple(answer)


def _step_between(steps: Steps, k: int) -> float:
    linear = np.exp(np.clip(-steps.colours[k : k + 2] / 20.0, -6.0, 0.3))
    a, b = linear_to_W(linear)
    return float(np.linalg.norm(b - a))


def _fit_reference(profile: Floats, lines: tuple[float, ...]) -> Steps:
    """The reference's lines were set by a person or the proposal: they hold where they are."""
    density = density_of(profile)
    colours = band_colours(density, lines)
    target = Target(colours, 0.4, np.asarray(lines), 3000.0, 3.0)
    fits = [fit_steps(density, lines, target, softness=softness) for softness in (0.15, 0.6)]
    return min(fits, key=lambda fit: fit.cost)


def _fit_sheet(
    reference: Floats, lines: tuple[float, ...], own: Steps, sheet: Floats
) -> tuple[Steps, list[Steps]]:
    """The best reading of the sheet, and other readings of it."""
    wanted = band_colours(reference, lines)
    density = density_of(sheet)
    search = order_bands(wanted, lines, sheet)
    ways = list(search.ways)
    ways += [lines, tuple((np.add(lines, ways[0]) / 2).tolist())]
    shift = np.median(band_colours(density, ways[0]) - own.colours, axis=0)
    target = Target(own.colours + shift, _COLOUR_TRUST, own.at, _PRIOR_FIT, _WIDTH_FIT)
    coarse = [fit_steps(density, way, target, softness=0.4, pool=4, rounds=14) for way in ways]
    coarse = [
        replace(fit, cost=fit.cost + _ORDER_SHARE * search.cost(tuple(fit.at.tolist())))
        for fit in coarse
    ]
    coarse.sort(key=lambda fit: fit.cost)
    best = coarse[0]
    start = tuple(float(v) for v in best.at)
    loose = Target(best.colours, 0.4, best.at, 5.0, 0.3)
    fine = [
        fit_steps(density, start, loose, softness=softness, rounds=30) for softness in (0.15, 0.6)
    ]
    final = min(fine, key=lambda fit: fit.cost)
    # Costs of coarse and fine fits differ; rivals are compared with the coarse winner.
    return replace(final, cost=best.cost), coarse[1:]


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
    total = first[None] - first[:, None]
    mean = total / count[..., None]
    scatter = (second[None] - second[:, None]) - (total**2).sum(-1) / count
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
            cost = scatter + pull * ((mean - colour - shift) ** 2).sum(-1)
            if k < len(lines):
                cost = cost + _PRIOR / _POOL * ((where - lines[k]) / _DEVIATION)[None] ** 2
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

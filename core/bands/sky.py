"""Finding the sky: which skyline parts the photo best, and which others come close."""

from __future__ import annotations

from dataclasses import dataclass, replace

import numpy as np
from numpy.typing import NDArray

from core.bands.grid import Grid
from core.bands.mixture import Mixture, fit_mixture
from core.bands.ranks import median, quantile
from core.bands.skyline import (
    DARK_ABOVE,
    Skyline,
    best_skylines,
    edge_strengths,
    first_guesses,
    is_sky,
    steps_at,
)
from core.progress import Progress, ShouldStop, step

Floats32 = NDArray[np.float32]


@dataclass(frozen=True)
class Candidate:
    """One way to end the sky.

    Attributes
    ----------
    skyline : ndarray, shape (columns,), int
        Cells of sky from the top of each column.
    horizon : float
        One height for the whole skyline, 0..1.
    score : float
        How well it parts the photo; larger is better, the units are the working space's.
    step : float
        Working-space units between what is above and below it, over most of its length;
        negative where the upper side is the darker; 0 for the whole picture.
    rougher : float
        How much rougher the lower side is: log of the ratio of textures; 0 for the whole picture.
    """

    skyline: Skyline
    horizon: float
    score: float
    step: float
    rougher: float


_SKY_PARTS, _GROUND_PARTS = 3, 4
_ROUNDS = (5, 3, 3)
"""Steps of fitting before each drawing of the skyline."""

_FIT_CELLS = 1500
"""Cells a mixture is fitted to."""

_CLIP = 3.0
"""The most that one cell may say for or against the sky."""

_STIFFNESS = 3.0
_SETTLE_NEAR, _SETTLE_MIDDLE = 0.04, 0.06
_SETTLE_COLOURS = 0.08
_SETTLE_EDGES = 2.0
_SETTLE_STIFFNESS = 1.5

_EDGE_REWARD = 3.0
_STRONG_EDGE = 10.0

_CLEAR = 6.0
"""A score that needs no second look."""

_LASTING = 10.0
"""Working-space units of a step from sky to land that are no cloud's."""

_INNER_EDGE = 0.8
_TWINS = 0.03

WHOLE_PICTURE = 4.0
"""Score of a sky that fills the picture: what an edge must beat."""


def find_sky(
    grid: Grid, *, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> list[Candidate]:
    """Skylines that part the photo, best first.

    The whole picture as sky is always among them. Candidates whose horizons nearly agree
    are one.
    """
    edges, unsigned = edge_strengths(grid)
    features = _features(grid)
    reward = (_EDGE_REWARD * np.minimum(edges / _STRONG_EDGE, 1.5)).astype(np.float32)
    found = [_candidate(grid, edges, np.full(grid.columns, grid.rows, dtype=np.intp))]
    guesses = first_guesses(grid, edges, unsigned)
    skylines = _refined(grid, features, reward, guesses, progress, should_stop)
    found += [_candidate(grid, edges, skyline) for skyline in skylines]
    found = [_minus_inner_edges(candidate, found) for candidate in found]
    return _without_twins(sorted(found, key=lambda c: c.score, reverse=True))


def _minus_inner_edges(candidate: Candidate, found: list[Candidate]) -> Candidate:
    """Doubt a sky that holds another good skyline: what is below land is water, not sky."""
    inner = [
        other.score - _CLEAR
        for other in found
        if (other.skyline <= candidate.skyline + 1).all()
        and other.horizon < candidate.horizon - _TWINS
    ]
    return replace(candidate, score=candidate.score - _INNER_EDGE * max([0.0, *inner]))


def _features(grid: Grid) -> Floats32:
    """What a cell is known by, shape (5, rows, columns): each spreads by about 1 in a sky."""
    height = np.linspace(0, 1, grid.rows, dtype=np.float32)[:, None]
    return np.stack(
        [
            grid.work[..., 0] / 8,
            grid.work[..., 1] / 3,
            grid.work[..., 2] / 3,
            1.5 * np.log(grid.texture + 0.3),
            np.broadcast_to(1.5 * height, grid.texture.shape),
        ]
    ).astype(np.float32)


@dataclass(eq=False)
class _Search:
    """A skyline that is being drawn anew, and what was learnt of the colours on either side."""

    skyline: Skyline
    sky: Mixture | None = None
    ground: Mixture | None = None
    gain: Floats32 | None = None
    settled: bool = False

    def learn(self, grid: Grid, features: Floats32, rounds: int) -> bool:
        """Learn sky and ground anew; False where one of them is too small for that."""
        above = is_sky(self.skyline, grid.rows)
        sky = features[:, above & grid.opaque]
        ground = features[:, ~above & grid.opaque]
        if min(sky.shape[1], ground.shape[1]) < max(8, above.size // 200):
            return False
        self.sky = fit_mixture(_thinned(sky), _SKY_PARTS, rounds=rounds, start=self.sky)
        self.ground = fit_mixture(_thinned(ground), _GROUND_PARTS, rounds=rounds, start=self.ground)
        everything = features.reshape(len(features), -1)
        ratio = self.sky.log_density(everything) - self.ground.log_density(everything)
        gain = np.clip(ratio, -_CLIP, _CLIP).reshape(above.shape)
        self.gain = np.where(grid.opaque, gain, 0.0).astype(np.float32)
        return True


def _refined(
    grid: Grid,
    features: Floats32,
    reward: Floats32,
    guesses: list[Skyline],
    progress: Progress | None,
    should_stop: ShouldStop | None,
) -> list[Skyline]:
    """Learn sky and ground from each skyline and draw it anew, a few times over.

    A guess whose sky or ground becomes too small is given up.
    """
    searches = [_Search(guess) for guess in guesses]
    for number, rounds in enumerate(_ROUNDS):
        step(number / len(_ROUNDS), progress, should_stop)
        searches = [one for one in searches if one.settled or one.learn(grid, features, rounds)]
        moving = [one for one in searches if not one.settled]
        gains = [one.gain for one in moving if one.gain is not None]
        if not gains:
            break
        drawn = best_skylines(np.stack(gains), reward[None], stiffness=_STIFFNESS)
        for search, again in zip(moving, drawn, strict=True):
            search.settled = np.array_equal(again, search.skyline)
            search.skyline = again
    return _settle(searches, reward)


def _settle(searches: list[_Search], reward: Floats32) -> list[Skyline]:
    """Move skylines to the edges near them, with what the colours say turned low.

    The mixtures take a patch of dull sky for ground where the land is nearly its colour;
    the edge of the land is there all the same.
    """
    gains = [one.gain for one in searches if one.gain is not None]
    if not gains:
        return []
    rows = reward.shape[0] - 1
    heights = np.arange(rows + 1)[:, None]
    held = []
    for search in searches:
        near = np.abs(heights - search.skyline) <= _SETTLE_NEAR * rows
        near |= np.abs(heights - median(search.skyline)) <= _SETTLE_MIDDLE * rows
        held.append(np.where(near, _SETTLE_EDGES * reward, -1e6).astype(np.float32))
    gain = _SETTLE_COLOURS * np.stack(gains)
    return list(best_skylines(gain, np.stack(held), stiffness=_SETTLE_STIFFNESS))


def _thinned(points: Floats32) -> Floats32:
    return np.ascontiguousarray(points[:, :: max(1, points.shape[1] // _FIT_CELLS)])


def _candidate(grid: Grid, edges: Floats32, skyline: Skyline) -> Candidate:
    horizon = quantile(skyline, 0.7) / grid.rows
    share = float(skyline.mean()) / grid.rows
    above = is_sky(skyline, grid.rows)
    if share > 0.985 or above.all():
        return Candidate(skyline, horizon, WHOLE_PICTURE, 0.0, 0.0)
    if not above.any():
        return Candidate(skyline, horizon, -np.inf, 0.0, 0.0)
    along = np.minimum(edges[skyline, np.arange(grid.columns)], 3 * _STRONG_EDGE)
    # A land's edge goes all the way; a cloud's is strong in places.
    edge = float(along.mean() + quantile(along, 0.3)) / 2
    broad = median(steps_at(grid, skyline, max(1, grid.rows // 18)), axis=0)
    step = float(np.sqrt((broad**2).sum()) * np.sign(broad[0]))
    # Below a cloud's edge the sky goes on as above it: little is left of the step farther off.
    lasting = step if step > 0 else -DARK_ABOVE * step
    rough = np.log(grid.texture + 0.3)
    rougher_below = float(rough[~above].mean() - rough[above].mean())
    jagged = float(np.abs(np.diff(skyline)).mean()) if grid.columns > 1 else 0.0
    tiny = max(0.0, 0.12 - share) * 100
    score = edge + 2.5 * rougher_below - jagged - tiny - 2 * max(0.0, _LASTING - lasting)
    return Candidate(skyline, horizon, score, step, rougher_below)


def _without_twins(candidates: list[Candidate]) -> list[Candidate]:
    kept: list[Candidate] = []
    for candidate in candidates:
        if all(abs(candidate.horizon - other.horizon) > _TWINS for other in kept):
            kept.append(candidate)
    return kept

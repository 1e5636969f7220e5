"""Finding the painted rectangle in a photo or scan.

Quadrilaterals of straight edges are judged at a glance (`quads`); the best is moved onto the edge
of the paint (`refine`) and checked closely (`evidence`). Where that leaves doubt, the next best
are checked too, then those found on the bright paper alone. The log-odds of the winner, beside the
best different one, give the confidence.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour import srgb8_to_linear
from core.colour.working_space import Floats
from core.photo import Photo
from core.progress import Progress, ShouldStop, step
from core.sheet.find.evidence import evidence_of, log_odds
from core.sheet.find.quads import candidates, judge
from core.sheet.find.refine import refine
from core.sheet.result import Corners

SURE = 0.5
"""Confidence below which the user is asked to look at the corners."""

_CLEAR = 2.5  # log-odds beyond which nothing else is looked at
_CHECKED = 6  # quadrilaterals checked closely where there is doubt
_APART = 0.02  # of the side: nearer ones are the same rectangle


@dataclass(frozen=True)
class FoundCorners:
    """The painted rectangle's corners in fractions of the photo, and how sure they are, 0..1."""

    corners: Corners
    confidence: float


@dataclass(frozen=True, eq=False)
class Proposal:
    """A rectangle on the paint's edge, (4, 2) pixels, its first judgement and its evidence."""

    quad: Floats
    score: float
    evidence: Floats

    @property
    def log_odds(self) -> float:
        """That it is the painted one."""
        return log_odds(self.score, self.evidence)


def find_corners(
    photo: Photo, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> FoundCorners:
    """Propose the painted rectangle.

    Returns
    -------
    FoundCorners
        Confidence 0 and the whole picture when nothing like a sheet is there.
    """
    linear = srgb8_to_linear(photo.pixels)
    step(0.1, progress, should_stop)
    quads, features = candidates(linear)
    step(0.5, progress, should_stop)
    proposals = propose(linear, quads, features, 1)
    step(0.6, progress, should_stop)
    if not proposals or proposals[0].log_odds < _CLEAR:
        proposals = propose(linear, quads, features, _CHECKED)
        step(0.75, progress, should_stop)
        quads, features = candidates(linear, on_paper=True)
        step(0.9, progress, should_stop)
        proposals += propose(linear, quads, features, _CHECKED)
    step(1.0, progress, should_stop)
    if not proposals:
        return FoundCorners(((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)), 0.0)
    best, confidence = choose(proposals)
    size = np.array([photo.pixels.shape[1], photo.pixels.shape[0]])
    a, b, c, d = ((float(x), float(y)) for x, y in best.quad / size)
    return FoundCorners((a, b, c, d), confidence)


def propose(
    linear: NDArray[np.float32], quads: Floats, features: Floats, count: int
) -> list[Proposal]:
    """The best `count` different quadrilaterals, refined and checked."""
    if len(quads) == 0:
        return []
    score = judge(features)
    left = score.copy()
    found: list[Proposal] = []
    while len(found) < count and np.isfinite(left).any():
        k = int(left.argmax())
        quad = refine(linear, quads[k])
        found.append(Proposal(quad, float(score[k]), evidence_of(linear, quad)))
        left[~_differ(quads, quads[k])] = -np.inf
    return found


def choose(proposals: list[Proposal]) -> tuple[Proposal, float]:
    """The likeliest proposal, and its confidence beside the likeliest different one."""
    best = max(proposals, key=lambda each: each.log_odds)
    others = [each for each in proposals if _differ(each.quad[None], best.quad)[0]]
    rival = max((each.log_odds for each in others), default=-np.inf)
    doubt = np.clip(min(best.log_odds, best.log_odds - rival), -30, 30)
    return best, float(1 / (1 + np.exp(-doubt)))


def _differ(quads: Floats, quad: Floats) -> NDArray[np.bool_]:
    """Which of the quadrilaterals (n, 4, 2) are other rectangles than this one."""
    apart = np.abs(quads - quad).max(axis=(1, 2)) > _APART * np.ptp(quad, axis=0).max()
    return np.asarray(apart)

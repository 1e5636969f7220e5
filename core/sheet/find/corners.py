"""Finding the painted rectangle in a photo or scan.

Quadrilaterals of straight edges are judged at a glance (`quads`); the best is moved onto the edge
of the paint (`refine`) and checked closely (`evidence`). Where that leaves doubt, the next best
are checked too, then those found on the bright paper alone, then those inside a paper's outline.
The log-odds of the winner, beside the best different one, give the confidence.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats
from core.progress import Progress, ShouldStop, part_of, step
from core.sheet.find.evidence import evidence_of, log_odds
from core.sheet.find.quads import candidates, judge
from core.sheet.find.refine import refine
from core.sheet.find.sight import Sight
from core.sheet.find.within import paint_near, paint_on_papers
from core.sheet.result import Corners

SURE = 0.5
"""Confidence below which the user is asked to look at the corners."""

_CLEAR = 2.5  # log-odds beyond which nothing else is looked at
_CHECKED = 6  # quadrilaterals of each look checked closely where there is doubt
_APART = 0.02  # of the side: nearer ones are the same rectangle
_POLISHED = 2
_NEARLY, _HOPELESS = 1.0, -1.5  # log-odds
_MORE_ALIKE = 0.75  # times the difference in tint
_SHARED = 0.012  # of the side: two rectangles share one that is no further apart
_CLOSE = 0.006  # the same of those found on their paper: a border of 1% is one side's difference


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
    sight: Sight, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> FoundCorners:
    """Propose the painted rectangle.

    Returns
    -------
    FoundCorners
        Confidence 0 and the whole picture when nothing like a sheet is there.
    """
    step(0.1, progress, should_stop)
    quads, features = candidates(sight)
    step(0.4, progress, should_stop)
    proposals = propose(sight, quads, features, 1)
    step(0.5, progress, should_stop)
    if not proposals or proposals[0].log_odds < _CLEAR:
        share = part_of(progress, 0.5, 1.0)
        proposals = propose_all(sight, quads, features, share, should_stop, proposals)
    step(1.0, progress, should_stop)
    if not proposals:
        return FoundCorners(((0.0, 0.0), (1.0, 0.0), (1.0, 1.0), (0.0, 1.0)), 0.0)
    best, confidence = choose(proposals)
    size = np.array(sight.linear.shape[1::-1])
    a, b, c, d = ((float(x), float(y)) for x, y in best.quad / size)
    return FoundCorners((a, b, c, d), confidence)


def propose_all(
    sight: Sight,
    quads: Floats,
    features: Floats,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
    first: Sequence[Proposal] = (),
) -> list[Proposal]:
    """What every look at a picture proposes: `candidates` as given, the `first` of which may be
    known, those on the bright paper, those inside a paper's outline, and those beside the
    likeliest so far."""
    proposals = propose(sight, quads, features, _CHECKED, known=first)
    step(0.3, progress, should_stop)
    proposals += propose(sight, *candidates(sight, on_paper=True), _CHECKED)
    step(0.6, progress, should_stop)
    proposals += propose(sight, *paint_on_papers(sight), _CHECKED, apart=_CLOSE)
    step(0.8, progress, should_stop)
    # Should a side of the likeliest lie on the paper's edge, the paint's is close by.
    likeliest = sorted(proposals, key=lambda each: -each.log_odds)[:_POLISHED]
    near = paint_near(sight, [each.quad for each in likeliest])
    proposals += propose(sight, *near, _CHECKED, apart=_CLOSE)
    step(1.0, progress, should_stop)
    return proposals


def propose(
    sight: Sight,
    quads: Floats,
    features: Floats,
    count: int,
    apart: float = _APART,
    known: Sequence[Proposal] = (),
) -> list[Proposal]:
    """The best `count` quadrilaterals that are so much apart, refined and checked; the first of
    them may be `known`."""
    if len(quads) == 0:
        return []
    score = judge(features)
    left = score.copy()
    found: list[Proposal] = []
    while len(found) < count and np.isfinite(left).any():
        k = int(left.argmax())
        if len(found) < len(known):
            found.append(known[len(found)])
        else:
            quad = refine(sight.linear, quads[k])
            found.append(Proposal(quad, float(score[k]), evidence_of(sight.linear, quad)))
        left[~_differ(quads, quads[k], apart)] = -np.inf
    return found


def choose(proposals: list[Proposal]) -> tuple[Proposal, float]:
    """The likeliest proposal, and its confidence beside the likeliest different one."""
    best = max(proposals, key=lambda each: each.log_odds)
    wider = [each for each in proposals if _has_a_pale_wash_more(each, best)]
    if wider:
        best = max(wider, key=lambda each: each.log_odds)
    others = [each for each in proposals if _differ(each.quad[None], best.quad)[0]]
    rival = max((each.log_odds for each in others), default=-np.inf)
    doubt = np.clip(min(best.log_odds, best.log_odds - rival), -30, 30)
    return best, float(1 / (1 + np.exp(-doubt)))


def _has_a_pale_wash_more(wide: Proposal, narrow: Proposal) -> bool:
    """Whether a rectangle is nearly as likely as another that it goes beyond on one side, and what
    lies outside of it is more of one tint: then a last pale wash was taken for the paper."""
    if wide.log_odds < max(narrow.log_odds - _NEARLY, _HOPELESS):
        return False
    if wide.evidence[0] > _MORE_ALIKE * narrow.evidence[0]:
        return False
    start = wide.quad
    along = np.roll(start, -1, axis=0) - start
    length = np.linalg.norm(along, axis=1)
    inward = np.stack([-along[:, 1], along[:, 0]], -1) / length[:, None]
    ends = np.stack([narrow.quad, np.roll(narrow.quad, -1, axis=0)], axis=1)
    inside = ((ends - start[:, None]) * inward[:, None]).sum(-1) / length.mean()
    shared = (np.abs(inside) < _SHARED).all(axis=1)
    return shared.sum() == 3 and bool(inside[~shared].min() > 2 * _APART)


def _differ(quads: Floats, quad: Floats, apart: float = _APART) -> NDArray[np.bool_]:
    """Which of the quadrilaterals (n, 4, 2) are other rectangles than this one."""
    away = np.abs(quads - quad).max(axis=(1, 2)) > apart * np.ptp(quad, axis=0).max()
    return np.asarray(away)

"""Scores from 1 to 10: a second opinion, one for each quality, never put together.

Every difference is measured in tolerances first (see `compare`: up to 1 it matches, up to 2 it
is close). A gap up to 1 scores 10, 2 scores 7, 4 scores 4, and 8 or more scores 1, with straight
lines between; a quality's score is the mean over the bands or lines that can be judged, and below
10 where one of them does not match. So a sheet that comes nearer never scores less.
"""

from __future__ import annotations

import numpy as np

from core.reading.quality import Quality
from core.sheet.findings.words import score_meaning
from core.sheet.result import BandCheck, LineCheck, Scores

_GAPS = (1.0, 2.0, 4.0, 8.0)
_POINTS = (10.0, 7.0, 4.0, 1.0)
_BELOW_ALL = 9.9


def score_of_gap(gap: float) -> float:
    """1..10 for a difference in tolerances.

    >>> score_of_gap(0.3), score_of_gap(3.0)
    (10.0, 5.5)
    """
    return float(np.interp(abs(gap), _GAPS, _POINTS))


def nearest_meaning(quality: Quality, score: float) -> str:
    """The words of the nearest of 10, 7, 4 and 1; those of 10 say "every", so it takes a 10."""
    anchors = (10,) if score > _BELOW_ALL else (7, 4, 1)
    return score_meaning(quality, min(anchors, key=lambda anchor: abs(anchor - score)))


def score_sheet(bands: tuple[BandCheck, ...], lines: tuple[LineCheck, ...]) -> Scores:
    """The four scores; None where nothing can be judged (one band has no line)."""
    return Scores(
        hue=_mean([band.hue_gap for band in bands]),
        value=_mean([band.value_gap for band in bands]),
        intensity=_mean([band.intensity_gap for band in bands]),
        placement=_mean([line.gap for line in lines]),
    )


def _mean(gaps: list[float | None]) -> float | None:
    known = [gap for gap in gaps if gap is not None]
    if not known:
        return None
    score = round(float(np.mean([score_of_gap(gap) for gap in known])), 1)
    # A 10 says "every": one that is hardly off must not be rounded away.
    return score if max(map(abs, known)) <= _GAPS[0] else min(score, _BELOW_ALL)

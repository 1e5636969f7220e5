"""Hard edges: places where the colour changes within a few hundredths of the height.

Courses of something sharp are followed across the sheet (`courses`), and the change is measured
along each (`sharpness`), so that one over part of the width is found as well.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.medians import channels_first
from core.colour.working_space import Floats
from core.sheet.painted.courses import (
    STRIPS,
    Course,
    Evidence,
    evidence_of,
    extended,
    find_courses,
    mean_evidence,
    strip_profiles,
)
from core.sheet.painted.sharpness import Sharpness, sharpness_along
from core.sheet.painted.strokes import usual_step

HARD_WIDTH = 0.025
"""A change is hard when its 10-90% width is below this share of the height."""

_FULL_RUN = 0.75
_LEAST_RUN = 0.2  # of the width: shorter edges are stains and blooms
_LEAST_STEP = 1.1  # working units: fainter ones nobody sees, and JPEG makes them by itself
_LEAST_PARTIAL_STEP = 2.0
_LEAST_SHARE = 0.62  # of the change around, explained by the step
# JPEG keeps colour in coarse steps. In a soft wash they look like faint edges, explaining less.
_FAINT_STEP, _LEAST_FAINT_SHARE = 3.0, 0.78
# Of every strip from side to side, so much evidence is no JPEG's: the rim of a wash that dried
# explains less than a plain step.
_EVERYWHERE = 6.0
_CARRIED_ON = 0.3  # of the width: from here on an edge is looked for further on
_FADED = 0.4  # share of its step that an edge must keep where it was carried on
_SAME = 0.015
# Times the steps that a sheet shows elsewhere: unevenness seldom makes one so large, and hardly
# ever one from side to side.
_STANDS_OUT, _PARTIAL_STANDS_OUT = 2.9, 4.5


@dataclass(frozen=True)
class RawEdge:
    """An edge without its meaning: height, extent across the width, 10-90% width, step."""

    at: float
    start: float
    end: float
    width: float
    step: float
    full: bool


def find_edges(W: Floats, mask: NDArray[np.bool_] | None = None) -> tuple[RawEdge, ...]:
    """Hard edges of a picture in working colours (h, w, 3), from the top."""
    W = np.moveaxis(channels_first(W), 0, -1)  # each channel in order: it is gone through often
    strips = strip_profiles(W, mask)
    evidence = evidence_of(strips)
    edges: list[RawEdge] = []
    for course in find_courses(evidence):
        edge = _measured(W, course, evidence, mask)
        if edge is None or any(_repeats(edge, other) for other in edges):
            continue
        if _stands_out(edge, strips):
            edges.append(edge)
    return tuple(sorted(edges, key=lambda edge: edge.at))


def _measured(
    W: Floats, course: Course, evidence: Evidence, mask: NDArray[np.bool_] | None
) -> RawEdge | None:
    run = _span(course)
    if run < _LEAST_RUN:
        return None
    fit = sharpness_along(W, course, mask)
    certain = run >= _FULL_RUN and mean_evidence(evidence, course) >= _EVERYWHERE
    if fit is None or not _is_hard(fit, certain):
        return None
    if _CARRIED_ON <= run < _FULL_RUN:
        whole = extended(course, evidence)
        if _goes_on(W, course, whole, fit, evidence, mask):
            course, run = whole, 1.0
            fit = sharpness_along(W, course, mask) or fit
    full = run >= _FULL_RUN
    if fit.size < (_LEAST_STEP if full else _LEAST_PARTIAL_STEP):
        return None
    strips = course[0]
    return RawEdge(
        at=fit.at,
        start=float(strips[0]) / STRIPS,
        end=float(strips[-1] + 1) / STRIPS,
        width=fit.width,
        step=fit.size,
        full=full,
    )


def _stands_out(edge: RawEdge, strips: Floats) -> bool:
    """Whether it is larger than what the wash shows anyway where it is streaky or blotchy."""
    first, last = round(edge.start * STRIPS), round(edge.end * STRIPS) - 1
    usual = usual_step(strips, first, last, edge.at)
    return edge.step >= (_STANDS_OUT if edge.full else _PARTIAL_STANDS_OUT) * usual


def _span(course: Course) -> float:
    return float(course[0][-1] - course[0][0] + 1) / STRIPS


def _is_hard(fit: Sharpness, certain: bool) -> bool:
    faint = fit.size < _FAINT_STEP and not certain
    share = _LEAST_FAINT_SHARE if faint else _LEAST_SHARE
    return fit.width < HARD_WIDTH and fit.size >= _LEAST_STEP and fit.share >= share


def _goes_on(
    W: Floats,
    course: Course,
    whole: Course,
    fit: Sharpness,
    evidence: Evidence,
    mask: NDArray[np.bool_] | None,
) -> bool:
    """Whether the same edge is there on either side of its course as well."""
    strips, rows = whole
    for beyond in (strips < course[0][0], strips > course[0][-1]):
        if beyond.sum() < 2:
            continue
        further = strips[beyond], rows[beyond]
        side = sharpness_along(W, further, mask)
        if side is None or side.width >= HARD_WIDTH or mean_evidence(evidence, further) <= 0:
            return False
        if float(side.step @ fit.step) < _FADED * fit.size**2:
            return False
    return True


def _repeats(edge: RawEdge, other: RawEdge) -> bool:
    """A piece of an edge that was found already."""
    shared = min(edge.end, other.end) - max(edge.start, other.start)
    return abs(edge.at - other.at) < _SAME and shared > 0

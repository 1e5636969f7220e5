"""Checking one proposed rectangle against the picture: paint inside, one even paper all round.

What is looked at is within a few hundredths of the side around the proposed edge. Paint only
darkens its paper, so outside must be no darker; the paper outside has one tint and runs on
smoothly; at a true corner both sides end, and beyond it is nothing but paper.
"""

from __future__ import annotations

import warnings

import numpy as np
from numpy.typing import NDArray

from core.colour.medians import medians, medians_of_known
from core.colour.working_space import Floats, linear_to_W
from core.sheet.sampling import sampled

EVIDENCE = (
    "tints differ", "uneven", "darker outside", "no edge", "out of sight", "beyond", "darker side",
)  # fmt: skip

_CELLS, _FINE = 48, 4  # along a side; samples along a cell
_OUTSIDE = np.linspace(0.009, 0.019, 4)  # distances from the edge, shares of the side
_CLOSE = np.linspace(0.003, 0.007, 4)  # where a border of 1% still is paper
_ENDS = 0.05  # natural log: so much darker further out, and the paper ends before
_INSIDE = -np.linspace(0.010, 0.026, 4)
_BEYOND = np.linspace(0.010, 0.026, 4)
_DARKER = 0.05  # natural log
_NO_EDGE = 2.0  # working units
_NOTHING = np.array([0.15, 0.15, 1.0, 1.0, 1.0, 10.0, 1.0])  # what cannot be seen bears nothing out


def evidence_of(linear: NDArray[np.float32], quad: Floats) -> Floats:
    """How badly the picture fits a painted rectangle with these corners.

    Parameters
    ----------
    linear : (h, w, 3) float32
        The photo in linear light.
    quad : (4, 2) float64
        Corners in pixels, clockwise.

    Returns
    -------
    (7,) float64
        For a right rectangle all are small: the largest difference in tint between the papers
        outside two sides; the roughness of the roughest side's paper along it (natural log
        units both); the share of the edge with darker outside than inside; the share of the
        faintest side without an edge; the share outside the photo; the largest colour step,
        across a side's line prolonged, just beyond a corner (working units); of the worst side, the
        share with darker outside.
    """
    start, end = quad, np.roll(quad, -1, axis=0)
    along = (end - start) / np.linalg.norm(end - start, axis=1, keepdims=True)
    outward = np.stack([along[:, 1], -along[:, 0]], axis=-1)
    size = 0.85 * float(np.linalg.norm(end - start, axis=1).mean())
    t = np.linspace(0.03, 0.97, _CELLS * _FINE)[:, None]
    line = start[:, None] * (1 - t) + end[:, None] * t

    def strip(places: Floats, distances: Floats) -> Floats:
        """Colours at distances (m,), or (4, m) of each side's own, from places (4, n, 2)."""
        far = np.broadcast_to(distances, (4, distances.shape[-1]))[:, None, :, None] * size
        return _seen(linear, places[:, :, None] + outward[:, None, None] * far)

    def cells(distances: Floats) -> Floats:
        return _median(strip(line, distances).reshape(4, _CELLS, -1, 3), 2)

    def patches(corners: Floats, way: Floats, far: Floats, distances: Floats) -> Floats:
        places = corners[:, None] + way[:, None] * (far[:, :, None] * size)
        return _median(strip(places, distances).reshape(4, -1, 3), 1)

    with warnings.catch_warnings():
        warnings.simplefilter("ignore", RuntimeWarning)  # what is outside the photo is NaN
        outer, inner = cells(_OUTSIDE), cells(_INSIDE)
        close = cells(_CLOSE)
        ends = _brightness(close) > _brightness(outer) + _ENDS
        outer[ends] = close[ends]
        seen = np.isfinite(outer).all(axis=-1)
        if seen.mean() < 0.25:
            return _NOTHING.copy()
        paper, paint = (np.log(np.maximum(colour, 1e-3)) for colour in (outer, inner))
        rise = (paper - paint).mean(axis=-1)
        step = np.linalg.norm(linear_to_W(outer) - linear_to_W(inner), axis=-1)
        tint = _median(paper - paper.mean(axis=-1, keepdims=True), 1)
        rough = np.nanstd(np.diff(paper.mean(axis=-1), axis=1), axis=1)
        darker = np.nanmean(np.where(seen, rise < -_DARKER, np.nan), axis=1)
        faint = np.nanmean(np.where(seen, step < _NO_EDGE, np.nan), axis=1)
        # Beyond a corner is the border of the side beside it: closer by where that ends soon.
        apart = np.where(ends[:, None], _CLOSE, _OUTSIDE)
        beyond = []
        for corners, way, beside in ((start, -along, 1), (end, along, -1)):
            far = np.where(np.roll(ends, beside)[:, None], _CLOSE, _BEYOND)
            beyond.append(
                linear_to_W(patches(corners, way, far, apart))
                - linear_to_W(patches(corners, way, far, _INSIDE))
            )
        steps = np.linalg.norm(beyond, axis=-1)
        known = tint[np.isfinite(tint).all(axis=1)]
        return np.array(
            [
                np.ptp(known, axis=0).max(), np.nanmax(rough), np.nanmean(darker), np.nanmax(faint),
                1 - seen.mean(), np.nanmax(steps) if np.isfinite(steps).any() else 0.0,
                np.nanmax(darker),
            ]
        )  # fmt: skip


# Fitted by tools/fit_corners.py and rounded.
WEIGHTS = np.array([3.08, 0.46, -1.28, -0.10, -2.41, -4.16, -1.03])
_MOST_DARKER, _IMPOSSIBLE = 0.6, 12.0
_MOST_HIDDEN, _UNSEEN = 0.1, 6.0


def terms_of(score: float, evidence: Floats) -> Floats:
    """What the weights belong to: a one, the first judgement and the evidence, (7,)."""
    tints, rough, _, faint, _, beyond, darker = evidence
    # Logarithms: real paper and mixed light spread over orders of magnitude.
    return np.array(
        [
            1.0, np.clip(score, -8.0, 8.0) / 4, np.log(np.clip(tints, 0.01, 0.3) / 0.02),
            np.log(np.clip(rough, 0.01, 0.3) / 0.02), darker, faint,
            np.log(np.clip(beyond, 0.5, 30.0)),
        ]
    )  # fmt: skip


def log_odds(score: float, evidence: Floats) -> float:
    """Log-odds that a quadrilateral is the painted rectangle.

    Parameters
    ----------
    score : float
        `quads.judge` of it.
    evidence : (7,) float64
        `evidence_of` it.
    """
    # By hand, because the fitted sheets hold too little of it. Paint never lightens its paper: most
    # of the edge darker outside cannot be, however neat the rest. And what is cut off by the
    # photo's edge was not looked at.
    wrong_way = max(0.0, float(evidence[2]) - _MOST_DARKER)
    hidden = max(0.0, float(evidence[4]) - _MOST_HIDDEN)
    fitted = float(terms_of(score, evidence) @ WEIGHTS)
    return fitted - _IMPOSSIBLE * wrong_way - _UNSEEN * hidden


def _median(values: Floats, axis: int) -> Floats:
    """`np.nanmedian`, a tenth as slow."""
    rows = np.ascontiguousarray(np.moveaxis(values, axis, -1))
    return medians_of_known(rows) if np.isnan(rows).any() else medians(rows)


def _brightness(cells: Floats) -> Floats:
    """Log of the median brightness of each side (4,) of cells (4, n, 3)."""
    return np.asarray(np.log(np.maximum(_median(cells.mean(axis=-1), 1), 1e-3)))


def _seen(linear: NDArray[np.float32], at: Floats) -> Floats:
    """Colours (..., 3) at pixel places (..., 2), NaN outside the picture."""
    h, w = linear.shape[:2]
    x, y = at[..., 0], at[..., 1]
    got = sampled(linear, at - 0.5).astype(np.float64)
    got[(x < 0) | (x > w) | (y < 0) | (y > h)] = np.nan
    return np.asarray(got)

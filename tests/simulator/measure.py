"""Comparing a check with the truth of its scene."""

from __future__ import annotations

import itertools
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.bands.careful import read_bands
from core.bands.lines import Bands
from core.colour import XYZ_to_Lab, delta_E_2000, linear_to_XYZ, srgb8_to_linear
from core.photo import Photo
from core.sheet import Reference, make_reference
from core.sheet.result import SheetCheck
from simulator.scenes import Scene

FOUND = 0.02
"""A rectangle is found when its worst corner is within this share of the side."""
SAME_HEIGHT = 0.015
FULL = 0.75


def photo_of(pixels: NDArray[np.uint8], name: str = "sky.png") -> Photo:
    return Photo(pixels, None, pixels.shape[1], pixels.shape[0], name)


def reference_of(scene: Scene) -> Reference:
    """The scene's sky, with its true lines."""
    return reference_from(scene.reference, scene.lines)


def reference_from(pixels: NDArray[np.uint8], lines: tuple[float, ...]) -> Reference:
    photo, bands = photo_of(pixels), Bands(1.0, lines)
    sky = np.ones(pixels.shape[:2], dtype=bool)
    return make_reference(photo, bands, read_bands(photo, sky, bands), sky)


def corner_error(scene: Scene, check: SheetCheck) -> float:
    """Distance of the worst corner from the truth, as a share of the mean side."""
    found = np.asarray(check.corners) * scene.shot.size
    side = np.linalg.norm(np.roll(scene.corners, -1, axis=0) - scene.corners, axis=1).mean()
    worst = [
        np.linalg.norm(np.roll(scene.corners, turn, axis=0) - found, axis=1).max()
        for turn in range(4)
    ]
    return float(min(worst) / side)


def colour_errors(scene: Scene, check: SheetCheck) -> list[float]:
    """Delta E 2000 of each third of each band, corrected picture against the paint itself."""
    truth = cell_colours(scene.painting.paint, scene.spec.lines)
    found = cell_colours(srgb8_to_linear(check.picture), scene.spec.lines)
    return [float(v) for v in np.ravel(delta_E_2000(truth, found))]


def cell_colours(linear: NDArray[np.floating], lines: tuple[float, ...]) -> NDArray[np.float64]:
    """CIELAB (bands * 3, 3) of the median of each third of each band, edges left out."""
    h, w = linear.shape[:2]
    edges = [0.0, *lines, 1.0]
    cells = []
    for top, bottom in itertools.pairwise(edges):
        trim = 0.15 * (bottom - top)
        rows = slice(round((top + trim) * h), round((bottom - trim) * h))
        for third in range(3):
            columns = slice(round((third + 0.05) * w / 3), round((third + 0.95) * w / 3))
            cells.append(np.median(linear[rows, columns].reshape(-1, 3), axis=0))
    return np.asarray(XYZ_to_Lab(linear_to_XYZ(np.asarray(cells, dtype=np.float64))))


@dataclass(frozen=True)
class Shift:
    """Error of one line's displacement in percent of the height, and whether it was told."""

    error: float
    told: bool


def shifts(scene: Scene, check: SheetCheck) -> list[Shift]:
    found = []
    for line, true, should in zip(check.lines, scene.spec.lines, scene.lines, strict=True):
        error = 100 * ((line.at - line.should) - (true - should))
        found.append(Shift(abs(error), line.shift_pct is not None))
    return found


@dataclass(frozen=True)
class Tally:
    """Right ones among those said, and among those that are there."""

    said: int = 0
    right: int = 0
    there: int = 0
    found: int = 0

    def __add__(self, other: Tally) -> Tally:
        return Tally(
            self.said + other.said,
            self.right + other.right,
            self.there + other.there,
            self.found + other.found,
        )

    @property
    def precision(self) -> float:
        return self.right / self.said if self.said else 1.0

    @property
    def recall(self) -> float:
        return self.found / self.there if self.there else 1.0


def edge_tallies(
    scene: Scene, check: SheetCheck, leave_out: tuple[float, float] | None = None
) -> tuple[Tally, Tally]:
    """Hard edges across the full width, and those over a part of it.

    Transitions whose true width is within `leave_out` count neither way.
    """
    truth = [(y, max(0.0, a), min(1.0, b)) for y, a, b in scene.hard]
    said = [(edge.at, edge.start, edge.end, edge.full) for edge in check.hard_edges]
    if leave_out is not None:
        low, high = leave_out
        lines = zip(scene.spec.lines, scene.spec.widths, strict=True)
        doubtful = [y for y, width in lines if low <= width <= high]
        truth = [t for t in truth if t[0] not in doubtful]
        said = [e for e in said if not any(abs(e[0] - y) < SAME_HEIGHT for y in doubtful)]

    def same(one: tuple[float, float, float], at: float, start: float, end: float) -> bool:
        shared = min(one[2], end) - max(one[1], start)
        return abs(one[0] - at) < SAME_HEIGHT and shared > 0.5 * min(one[2] - one[1], end - start)

    full = Tally(
        said=sum(edge[3] for edge in said),
        right=sum(edge[3] and any(same(t, *edge[:3]) for t in truth) for edge in said),
        there=sum(t[2] - t[1] >= FULL for t in truth),
        found=sum(
            t[2] - t[1] >= FULL and any(edge[3] and same(t, *edge[:3]) for edge in said)
            for t in truth
        ),
    )
    part = Tally(
        said=sum(not edge[3] for edge in said),
        right=sum(not edge[3] and any(same(t, *edge[:3]) for t in truth) for edge in said),
        there=sum(t[2] - t[1] < FULL for t in truth),
        found=sum(t[2] - t[1] < FULL and any(same(t, *edge[:3]) for edge in said) for t in truth),
    )
    return full, part


def bloom_tally(scene: Scene, check: SheetCheck) -> Tally:
    aspect = scene.spec.aspect
    there = scene.spec.blooms

    def near(x: float, y: float, r: float) -> bool:
        return any(np.hypot((x - b.x) * aspect, y - b.y) < max(r, b.radius) for b in there)

    def seen(bloom: object) -> bool:
        return any(
            np.hypot((f.x - bloom.x) * aspect, f.y - bloom.y) < max(f.radius, bloom.radius)  # type: ignore[attr-defined]
            for f in check.blooms
        )

    return Tally(
        said=len(check.blooms),
        right=sum(near(f.x, f.y, f.radius) for f in check.blooms),
        there=len(there),
        found=sum(seen(bloom) for bloom in there),
    )


def keys(check: SheetCheck) -> set[str]:
    """What the notices are about."""
    return {notice.key for notice in check.notices}

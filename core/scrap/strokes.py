"""The dried strokes on white paper in a picture, and the colour of each.

Proposed are patches on the paper, or reaching over its edge, that are painted all over and not
mere pencil. A region drawn by hand is read the same way. Colours are relative to the bare paper
around each stroke, times the paper of the paints' measurements: so bare paper reads as what the
film says of no paint.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from core.bands.careful import geometric_median
from core.colour import Lab_to_XYZ, XYZ_to_Lab, linear_to_XYZ
from core.colour.lab import XYZ_to_linear
from core.colour.working_space import W_to_linear, linear_to_W
from core.errors import PhotoError
from core.i18n import translate
from core.paint.pigment.measured import paper_Lab
from core.photo import Photo
from core.progress import Progress, ShouldStop, step
from core.scrap.paper import Bools, Floats, Floats32, Paper, find_paper

Region = tuple[float, float, float, float]
"""Left, top, right, bottom: fractions of the picture's width and height."""

Doubt = Literal["no paper", "over-exposed", "shines", "shadow", "uneven"]
"""What makes a stroke's colour uncertain."""

MOST_STROKES = 12

_PAINTED = 0.055  # natural log of the channel paint takes most from, against paper
_LEAST_AREA = 0.0012  # of the picture
_LEAST_WIDTH = 0.012  # of its longer side
_FULL = 0.3  # share of its own box a stroke covers at least
_SHINE, _SHINES = 1.08, 0.01
_UNEVEN = 9.0  # spread in the working space of the middle half of a stroke
_SHADED, _IN_SHADOW = 0.12, 0.12
"""Natural log by which paper beside a stroke is darker in a shadow; share of it that is."""
_READ_PIXELS = 4000


@dataclass(frozen=True)
class FoundStroke:
    """A stroke in a picture.

    Attributes
    ----------
    region : Region
    Lab : tuple of 3 floats
        Its colour, the light undone.
    doubts : tuple of Doubt
    """

    region: Region
    Lab: tuple[float, float, float]
    doubts: tuple[Doubt, ...] = ()


@dataclass(frozen=True, eq=False)
class Scrap:
    """A picture of strokes, its light undone once: strokes are found and read in it.

    Attributes
    ----------
    paper : Paper
    strokes : tuple of FoundStroke
        Proposed, from the left to the right and from the top down.
    """

    paper: Paper
    strokes: tuple[FoundStroke, ...]


def find_strokes(
    photo: Photo, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> Scrap:
    """The strokes of a picture; none where it shows no white paper.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    """
    step(0.0, progress, should_stop)
    paper = find_paper(photo)
    step(0.6, progress, should_stop)
    found = []
    if paper.bare is not None:
        parts, boxes = _patches(paper.relative, paper.bare)
        for number in boxes:
            step(0.7, progress, should_stop)
            found.append(_read(paper, parts == number))
    step(1.0, progress, should_stop)
    return Scrap(paper, tuple(in_order(found)))


def read_region(scrap: Scrap, region: Region) -> FoundStroke:
    """A stroke in a region drawn by hand.

    Raises
    ------
    PhotoError
        The region is too small, or holds nothing painted.
    """
    height, width = scrap.paper.relative.shape[:2]
    left, top, right, bottom = region
    columns = slice(int(max(left, 0) * width), int(np.ceil(min(right, 1) * width)))
    rows = slice(int(max(top, 0) * height), int(np.ceil(min(bottom, 1) * height)))
    mask: Bools = np.zeros((height, width), bool)
    mask[rows, columns] = True
    if mask.sum() < 25:
        raise PhotoError(
            translate("scrap", "That is too small to read: draw the box over the stroke's middle.")
        )
    if scrap.paper.bare is None:
        return _read(scrap.paper, mask)
    painted = mask & (_density(scrap.paper.relative) > _PAINTED)
    if painted.sum() < max(25, 0.1 * mask.sum()):
        raise PhotoError(
            translate("scrap", "There is only bare paper: draw the box over a painted stroke.")
        )
    return _read(scrap.paper, painted, region)


def in_order(strokes: Sequence[FoundStroke]) -> list[FoundStroke]:
    """Strokes as they are read: rows from the top, each from the left."""
    left = sorted(strokes, key=lambda stroke: stroke.region[1] + stroke.region[3])
    ordered: list[FoundStroke] = []
    while left:
        first = left[0]
        middle = (first.region[1] + first.region[3]) / 2
        row = [one for one in left if one.region[1] <= middle <= one.region[3]] or [first]
        ordered += sorted(row, key=lambda stroke: stroke.region[0])
        left = [one for one in left if one not in row]
    return ordered


def _density(relative: Floats32) -> Floats32:
    """Natural log of what is missing in the channel that misses most: 0 on bare paper."""
    return np.asarray(-np.log(np.maximum(relative.min(-1), 1e-3)))


def _patches(relative: Floats32, bare: Bools) -> tuple[NDArray[np.int32], list[int]]:
    """Painted patches, numbered, and the numbers of those that may be strokes."""
    from scipy.ndimage import binary_opening, find_objects, label  # deferred: start-up time

    height, width = bare.shape
    painted = (_density(relative) > _PAINTED) & _hull(bare)
    reach = max(1, round(_LEAST_WIDTH * max(height, width) / 2))
    disc = np.hypot(*np.mgrid[-reach : reach + 1, -reach : reach + 1]) <= reach
    parts, _ = label(binary_opening(painted, disc))
    good: list[tuple[int, int]] = []
    for number, box in enumerate(find_objects(parts), 1):
        if box is None:
            continue
        part = parts[box] == number
        area = int(part.sum())
        touches = (
            (box[0].start == 0) + (box[1].start == 0)
            + (box[0].stop == height) + (box[1].stop == width)
        )  # fmt: skip
        if area < _LEAST_AREA * bare.size or area > 0.5 * bare.size or touches > 1:
            continue
        if area < _FULL * part.size:
            continue
        good.append((area, number))
    good.sort(reverse=True)
    return parts, [number for _, number in good[:MOST_STROKES]]


def _hull(mask: Bools) -> Bools:
    """The convex hull of a mask, filled: a stroke over the paper's edge is on the paper too."""
    rows = np.flatnonzero(mask.any(axis=1))
    first = mask.argmax(axis=1)[rows]
    last = mask.shape[1] - 1 - mask[:, ::-1].argmax(axis=1)[rows]
    left = _chain(rows, first, 1)
    right = _chain(rows, last, -1)
    columns = np.arange(mask.shape[1])
    inside: Bools = np.zeros_like(mask)
    span = np.arange(rows[0], rows[-1] + 1)
    low, high = np.interp(span, *left), np.interp(span, *right)
    inside[span] = (columns >= low[:, None]) & (columns <= high[:, None])
    return inside


def _chain(
    rows: NDArray[np.int_], columns: NDArray[np.int_], side: int
) -> tuple[list[int], list[int]]:
    """One side of the hull from the top down (A. M. Andrew, 1979, Inf. Proc. Letters 9, 216)."""
    kept: list[tuple[int, int]] = []
    for row, column in zip(rows.tolist(), columns.tolist(), strict=True):
        while len(kept) > 1:
            (r1, c1), (r2, c2) = kept[-2], kept[-1]
            if side * ((c2 - c1) * (row - r1) - (column - c1) * (r2 - r1)) >= 0:
                kept.pop()
            else:
                break
        kept.append((row, column))
    return [row for row, _ in kept], [column for _, column in kept]


def _read(paper: Paper, mask: Bools, region: Region | None = None) -> FoundStroke:
    height, width = mask.shape
    rows, columns = np.flatnonzero(mask.any(1)), np.flatnonzero(mask.any(0))
    box = (slice(rows[0], rows[-1] + 1), slice(columns[0], columns[-1] + 1))
    core = _middle(mask[box])
    inside = paper.relative[box][core]
    inside = inside[:: max(1, len(inside) // _READ_PIXELS)]
    ground = _ground(paper, mask, box)
    relative = inside / ground
    points = linear_to_W(relative)
    colour = geometric_median(points)
    doubts: list[Doubt] = []
    if paper.bare is None:
        doubts.append("no paper")
    elif paper.over_exposed:
        doubts.append("over-exposed")
    if paper.bare is not None and _shines(paper.relative[box] / ground, mask[box]):
        doubts.append("shines")
    if paper.bare is not None and _in_shadow(paper, mask, box):
        doubts.append("shadow")
    away = np.sqrt(((points - colour) ** 2).sum(-1))
    if np.median(away) > _UNEVEN:
        doubts.append("uneven")
    found = region or (
        columns[0] / width, rows[0] / height, (columns[-1] + 1) / width, (rows[-1] + 1) / height
    )  # fmt: skip
    left, top, right, bottom = (float(edge) for edge in found)
    linear = W_to_linear(colour)
    if paper.bare is not None:
        linear = linear * XYZ_to_linear(Lab_to_XYZ(np.array(paper_Lab())))
    L, a, b = XYZ_to_Lab(linear_to_XYZ(linear)).tolist()
    return FoundStroke((left, top, right, bottom), (L, a, b), tuple(doubts))


def _middle(part: Bools) -> Bools:
    """The pixels well inside a stroke: its edge is darker where the paint ran to, or paler."""
    from scipy.ndimage import distance_transform_edt  # deferred: start-up time

    depth = distance_transform_edt(np.pad(part, 1))[1:-1, 1:-1]
    return np.asarray(depth >= max(1.0, 0.4 * depth.max()))


def _shines(relative: Floats, part: Bools) -> bool:
    """Whether some of what a stroke encloses is brighter than bare paper."""
    from scipy.ndimage import binary_fill_holes  # deferred: start-up time

    enclosed = relative[binary_fill_holes(part)]
    return bool((enclosed.mean(-1) > _SHINE).mean() > _SHINES)


def _around(mask: Bools, box: tuple[slice, slice]) -> tuple[slice, slice]:
    """A stroke's box and a little around it."""
    out = max(4, round(0.03 * max(mask.shape)))
    return (
        slice(max(box[0].start - out, 0), box[0].stop + out),
        slice(max(box[1].start - out, 0), box[1].stop + out),
    )


def _in_shadow(paper: Paper, mask: Bools, box: tuple[slice, slice]) -> bool:
    """Whether much of the paper beside a stroke is darker than the rest, and as colourless."""
    from scipy.ndimage import binary_dilation  # deferred: start-up time

    around = _around(mask, box)
    beside = ~binary_dilation(mask[around], iterations=3)
    logs = np.log(np.maximum(paper.relative[around][beside], 1e-3))
    if len(logs) == 0:
        return False
    mean = logs.mean(-1)
    paperlike = (np.abs(logs - mean[:, None]).max(-1) < 0.06) & (mean > -1.0)
    return bool((paperlike & (mean < -_SHADED)).mean() > _IN_SHADOW)


def _ground(paper: Paper, mask: Bools, box: tuple[slice, slice]) -> Floats:
    """What is left of the light on the paper around a stroke, (3,): 1 where the surface fits."""
    if paper.bare is None:
        return np.ones(3)
    around = _around(mask, box)
    near = paper.bare[around]
    if near.sum() < 60:
        return np.ones(3)
    return np.asarray(np.median(paper.relative[around][near], axis=0), dtype=np.float64)

"""Reading one painted field: its paper, its stroke from dark to pale, and what is wrong with it.

Colours are read beside the paper next to them, so that slow light and a tinted lamp go out.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from core.colour import Lab_to_XYZ, XYZ_to_Lab, XYZ_to_linear, linear_to_XYZ
from core.paint.pigment.measured import measured_paints, paper_Lab
from core.swatches.layout import HEIGHT, Floats, field_rect
from core.swatches.projective import seen_at, through

FieldWord = Literal[
    "read", "bare", "shines", "over the edge", "too dark", "hard shadow", "check", "left out"
]
"""What is said of a field on the picture."""

Triple = tuple[float, float, float]

PX_PER_MM = 4
EDGE_MM = 1.0
"""How far within its outline a field is looked at."""

GAP_MM = (0.8, 3.0)
"""How far from a field its paper is read."""

MIDDLE = 0.46
"""Share of a field's height that is read: the stroke's edges are dark."""
ENDS_MM, CELL_MM = 1.5, 0.5
PAINTED = 4.0
"""CIELAB from the paper at which a cell holds paint."""

LEAST_CELLS = 4
PIECES_ALONE, PIECES_MIX = 8, 6
SHINE, SHINE_SHARE = 1.08, 0.01
OVER_SHARE = 0.30
STEP_MM = 3
ROUGH = 0.02
"""Of the paper's light along a field, natural log: what strays further counts little."""

HARD_SHADOW, ACROSS = 0.10, 0.15
"""What a shadow's edge leaves beside that, and from one side of a field to the other."""
PALEST_L = 60.0
CLIPPED = 0.9867
"""Linear light of 253.5 of 255: as white as a picture can be."""


@dataclass(frozen=True)
class FieldReading:
    """What was read of one field.

    Attributes
    ----------
    row, field : int
        Its place on the card.
    word : FieldWord
        "read" or "too dark" where it is used.
    Lab : tuple of Lab triples
        From dark to pale; empty where nothing can be read.
    """

    row: int
    field: int
    word: FieldWord
    Lab: tuple[Triple, ...]

    @property
    def used(self) -> bool:
        """Whether the fit hears it."""
        return self.word in ("read", "too dark")


@dataclass(frozen=True, eq=False)
class Strips:
    """A field and the paper above and below it, in linear light.

    Attributes
    ----------
    row, field : int
    above, below : ndarray, shape (width, 3), float
        Natural logarithms of the paper's colour along the field.
    whole : ndarray, shape (height, width, 3), float
        The field itself, a millimetre off its edges.
    """

    row: int
    field: int
    above: Floats
    below: Floats
    whole: Floats

    @property
    def clipped(self) -> float:
        """Share of the paper that is as white as the picture can hold, in some channel."""
        seen = np.concatenate([self.above, self.below])
        return float((seen >= np.log(CLIPPED)).any(axis=1).mean())

    @property
    def tint(self) -> Floats:
        """The paper's tint, (3,): the lamp's and the camera's."""
        seen = np.median(np.concatenate([self.above, self.below]), axis=0)
        tint: Floats = seen - seen.mean()
        return tint


def strips_of(linear: NDArray[np.float32], H: Floats, row: int, field: int) -> Strips:
    """Look at one field of a picture, (h, w, 3), in linear light; H leads from mm to pixels."""
    left, top, width, height = field_rect(row, field)
    along = np.arange(left + 0.5 / PX_PER_MM, left + width, 1 / PX_PER_MM)

    def strip(start: float, end: float) -> Floats:
        down = np.arange(start + 0.5 / PX_PER_MM, end, 1 / PX_PER_MM)
        at = np.stack(np.meshgrid(along, down), axis=-1)
        return np.maximum(seen_at(linear, through(H, at)).astype(np.float64), 1e-4)

    def paper(start: float, end: float) -> Floats:
        logs: Floats = np.log(np.median(strip(start, end), axis=0))
        return logs

    return Strips(
        row,
        field,
        paper(top - GAP_MM[1], top - GAP_MM[0]),
        paper(top + height + GAP_MM[0], top + height + GAP_MM[1]),
        strip(top + EDGE_MM, top + height - EDGE_MM),
    )


def read_field(strips: Strips, tint: Floats) -> FieldReading:
    """Read one field.

    Parameters
    ----------
    strips : Strips
    tint : ndarray, shape (3,)
        The whole card's: paint over an edge has another one.
    """
    above, below = _along(strips.above), _along(strips.below)
    share = np.linspace(EDGE_MM, HEIGHT - EDGE_MM, len(strips.whole))[:, None, None] / HEIGHT
    relative = strips.whole / np.exp(above * (1 - share) + below * share)
    Lab = _cells(relative)
    painted = _from_paper(Lab) > PAINTED
    course: tuple[Triple, ...] = ()
    if painted.sum() >= LEAST_CELLS:
        course = _course(Lab[painted], PIECES_MIX if strips.field else PIECES_ALONE)
    word = _word(strips, above, below, tint, relative, course)
    return FieldReading(strips.row, strips.field, word, course)


def _word(
    strips: Strips,
    above: Floats,
    below: Floats,
    tint: Floats,
    relative: Floats,
    course: tuple[Triple, ...],
) -> FieldWord:
    if not course:
        return "bare"
    off = [strips.above - above, strips.below - below]
    # A shadow darkens all channels, on both sides of the field; paint leaves one channel be.
    both = np.minimum(*(np.abs(one).min(axis=1) for one in off))
    jump = min(_jump(strips.above), _jump(strips.below))
    apart = float(np.abs(np.median(above - below, axis=0)).min())
    if float(np.quantile(both, 0.9)) > HARD_SHADOW or max(jump, apart) > ACROSS:
        return "hard shadow"
    for noisy, fitted in ((strips.above, above), (strips.below, below)):
        seen = _calm(noisy)
        beside = _from_paper(_Lab(np.exp(np.minimum(seen - fitted, 0.0)))) > PAINTED
        own = seen - seen.mean(axis=1, keepdims=True) - tint
        coloured = _from_paper(_Lab(np.exp(own))) > PAINTED
        if float((beside | coloured).mean()) > OVER_SHARE:
            return "over the edge"
    if float((_middle(relative) > SHINE).all(axis=2).mean()) > SHINE_SHARE:
        return "shines"
    return "too dark" if course[-1][0] < PALEST_L else "read"


def _along(seen: Floats) -> Floats:
    """The course of the light along the paper, (width, 3): smooth, and above what darkens it."""
    x = np.linspace(-0.5, 0.5, len(seen))
    A = np.stack([np.ones_like(x), x, x * x], axis=1)
    weight = np.ones((len(x), 1))
    fitted = seen
    for _ in range(6):
        fitted = A @ np.linalg.lstsq(A * weight, seen * weight, rcond=None)[0]
        off = np.abs(seen - fitted).max(axis=1, keepdims=True)
        weight = 1 / (1 + (off / ROUGH) ** 2)
    return fitted


def _cells(relative: Floats) -> Floats:
    """CIELAB, (n, 3), of half millimetres along the middle of a field."""
    middle, size = _middle(relative), int(CELL_MM * PX_PER_MM)
    many = middle.shape[1] // size
    cells = middle[:, : many * size].reshape(len(middle), many, size, 3)
    return _Lab(np.median(cells, axis=(0, 2)))


def _middle(relative: Floats) -> Floats:
    """The part of a field that is read."""
    cut = round((len(relative) - MIDDLE * HEIGHT * PX_PER_MM) / 2)
    ends = int(ENDS_MM * PX_PER_MM)
    return relative[cut : len(relative) - cut, ends:-ends]


def _calm(seen: Floats) -> Floats:
    """The paper's colour along the field without a picture's noise, over some millimetres."""
    wide = STEP_MM * PX_PER_MM
    sums = np.concatenate([np.zeros((1, 3)), np.cumsum(seen, axis=0)])
    means = (sums[wide:] - sums[:-wide]) / wide
    middle = np.clip(np.arange(len(seen)) - wide // 2, 0, len(means) - 1)
    calm: Floats = means[middle]
    return calm


def _jump(seen: Floats) -> float:
    """The greatest step of the light along the paper, over some millimetres, in every channel."""
    wide = STEP_MM * PX_PER_MM
    sums = np.concatenate([np.zeros((1, 3)), np.cumsum(seen, axis=0)])
    means = (sums[wide:] - sums[:-wide]) / wide
    gap = wide + PX_PER_MM
    return float(np.abs(means[gap:] - means[:-gap]).min(axis=1).max())


def _course(Lab: Floats, pieces: int) -> tuple[Triple, ...]:
    """A stroke's cells from dark to pale, in pieces of equal way through CIELAB: their medians."""
    density = np.log(np.maximum(XYZ_to_linear(Lab_to_XYZ(Lab)), 1e-4)).sum(axis=1)
    Lab = Lab[np.argsort(density)]
    steps = np.linalg.norm(np.diff(_smooth(Lab), axis=0), axis=1)
    way = np.concatenate([[0.0], np.cumsum(steps)])
    piece = np.minimum((way / max(way[-1], 1e-9) * pieces).astype(int), pieces - 1)
    found = [np.median(Lab[piece == n], axis=0) for n in range(pieces) if (piece == n).any()]
    return tuple((float(L), float(a), float(b)) for L, a, b in found)


def _smooth(Lab: Floats) -> Floats:
    padded = np.concatenate([Lab[:1], Lab[:1], Lab, Lab[-1:], Lab[-1:]])
    smooth: Floats = np.mean([padded[n : n + len(Lab)] for n in range(5)], axis=0)
    return smooth


def _Lab(share: Floats) -> Floats:
    """CIELAB of linear colours as shares of the paper."""
    data = measured_paints()
    paper = XYZ_to_linear(data.paper @ data.weights)
    return XYZ_to_Lab(linear_to_XYZ(np.maximum(share * paper, 1e-7)))


def _from_paper(Lab: Floats) -> Floats:
    """CIELAB distance from the paper."""
    far: Floats = np.linalg.norm(Lab - np.array(paper_Lab()), axis=-1)
    return far

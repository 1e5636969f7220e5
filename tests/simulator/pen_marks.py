"""A worksheet's rows of boxes as students mark them: crosses, ticks, circles, second thoughts.

What a row was meant to say is drawn first; nothing here knows how it will be read.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Literal

import numpy as np
from numpy.typing import NDArray
from PIL import Image, ImageDraw
from scipy.ndimage import gaussian_filter, gaussian_filter1d

from core.class_set.page_crop import Box

Floats = NDArray[np.float64]
Grey = NDArray[np.uint8]

PX = 8.0
"""Pixels a millimetre of the sheet as it is printed and marked."""

_FINER = 3  # strokes are drawn so many times larger

PENS = {  # grey from, to; width in mm from, to; grain of the paper that shows in it
    "fountain pen": ((18, 50), (0.45, 0.8), 0.0),
    "ball pen": ((35, 85), (0.33, 0.55), 0.1),
    "pencil": ((90, 138), (0.4, 0.75), 0.35),
    "faint pencil": ((162, 195), (0.35, 0.6), 0.35),
    "felt pen": ((15, 45), (1.0, 1.7), 0.0),
}
USUAL_PENS = ("fountain pen", "ball pen", "ball pen", "pencil", "pencil", "felt pen")

KINDS = ("cross", "tick", "slash", "circle", "fill")

Meant = Literal["one", "blank", "corrected", "between", "struck", "smudge", "dot", "erased"]


@dataclass(frozen=True)
class Row:
    """What somebody did to a row.

    Attributes
    ----------
    meant : Meant
    score : int or None
        The number that was meant; of "corrected" and "erased" the last one.
    kind, pen : str
        How it was marked.
    also : tuple of int
        Other numbers that were touched.
    """

    meant: Meant
    score: int | None
    kind: str
    pen: str
    also: tuple[int, ...] = ()


class Paper:
    """A printed page to be written on.

    Parameters
    ----------
    grey : (h, w) uint8
        `PX` pixels a millimetre.
    """

    def __init__(self, grey: Grey, rng: np.random.Generator) -> None:
        self.grey = grey.astype(np.float32)
        self.rng = rng

    def stroke(self, points: Floats, pen: str) -> None:
        """A line through points in mm, in one go."""
        (light, dark), (thin, thick), grain = PENS[pen]
        self.line(points, self.rng.uniform(light, dark), self.rng.uniform(thin, thick), grain)

    def line(self, points: Floats, grey: float, width: float, grain: float = 0.0) -> None:
        """The same with a tone and a width in mm."""
        scale = PX * _FINER
        low = np.floor((points.min(0) - width - 0.5) * PX).astype(int)
        high = np.ceil((points.max(0) + width + 0.5) * PX).astype(int)
        low = np.maximum(low, 0)
        high = np.minimum(high, [self.grey.shape[1], self.grey.shape[0]])
        if (high <= low).any():
            return
        size = (high - low) * _FINER
        mask = Image.new("L", (int(size[0]), int(size[1])))
        draw = ImageDraw.Draw(mask)
        at = [tuple(p) for p in (points - low / PX) * scale]
        radius = width * scale / 2
        draw.line(at, 255, max(1, round(2 * radius)), "curve")
        for x, y in (at[0], at[-1]):
            draw.ellipse((x - radius, y - radius, x + radius, y + radius), 255)
        small = mask.resize((int(high[0] - low[0]), int(high[1] - low[1])), Image.Resampling.BOX)
        cover = np.asarray(small, np.float32) / 255
        if grain:
            rough = gaussian_filter(self.rng.standard_normal(cover.shape), 0.7)
            cover = cover * np.clip(1 - grain + 1.2 * grain * rough, 0.15, 1)
        part = self.grey[low[1] : high[1], low[0] : high[0]]
        part += cover * (np.minimum(part, grey) - part)

    def smear(self, x: float, y: float, radius: float, depth: float) -> None:
        """A soft grey stain, in mm; what a thumb or an eraser leaves."""
        high, wide = self.grey.shape
        r = radius * 3
        j0, j1 = max(0, int((x - r) * PX)), min(wide, int((x + r) * PX))
        i0, i1 = max(0, int((y - r) * PX)), min(high, int((y + r) * PX))
        yy, xx = np.mgrid[i0:i1, j0:j1] / PX
        stretch, turn = self.rng.uniform(0.5, 1.0), self.rng.uniform(0, np.pi)
        a = (xx - x) * np.cos(turn) + (yy - y) * np.sin(turn)
        b = -(xx - x) * np.sin(turn) + (yy - y) * np.cos(turn)
        stain = np.exp(-((a / radius) ** 2 + (b / (radius * stretch)) ** 2))
        self.grey[i0:i1, j0:j1] *= (1 - depth * stain).astype(np.float32)

    def done(self) -> Grey:
        """The marked page."""
        return np.clip(self.grey + 0.5, 0, 255).astype(np.uint8)


def by_hand(rng: np.random.Generator, corners: Sequence[tuple[float, float]]) -> Floats:
    """A line through corners as a hand draws it: not quite straight."""
    points = np.asarray(corners, float)
    pieces = []
    for a, b in pairwise(points):
        n = max(3, int(np.linalg.norm(b - a) / 0.8))
        pieces.append(a + (b - a) * np.linspace(0, 1, n, endpoint=False)[:, None])
    line = np.concatenate([*pieces, points[-1:]])
    return line + 0.6 * gaussian_filter1d(
        rng.normal(0, 0.45, line.shape), 3.0, axis=0, mode="nearest"
    )


def draw_mark(paper: Paper, kind: str, box: Box, pen: str) -> None:
    """One mark on a box."""
    rng = paper.rng
    x = box.x + box.width / 2 + rng.normal(0, 0.09 * box.width)
    y = box.y + box.height / 2 + rng.normal(0, 0.10 * box.height)
    size = box.height
    if kind == "cross":
        a = size * rng.uniform(0.3, 0.62)
        b = a * rng.uniform(0.75, 1.4)
        paper.stroke(by_hand(rng, [(x - b, y - a), (x + b, y + a)]), pen)
        paper.stroke(by_hand(rng, [(x + b, y - a), (x - b, y + a)]), pen)
    elif kind == "tick":
        a = size * rng.uniform(0.35, 0.75)
        corners = [(x - 0.6 * a, y), (x - 0.1 * a, y + 0.6 * a), (x + 1.15 * a, y - a)]
        paper.stroke(by_hand(rng, corners), pen)
    elif kind == "slash":
        a = size * rng.uniform(0.42, 0.75)
        paper.stroke(by_hand(rng, [(x - 0.5 * a, y + a), (x + 0.5 * a, y - a)]), pen)
    elif kind == "circle":
        rx, ry = box.width * rng.uniform(0.28, 0.6), size * rng.uniform(0.4, 0.8)
        t = rng.uniform(0, 2 * np.pi) + np.linspace(0, 2 * np.pi * rng.uniform(0.92, 1.1), 40)
        wide = 1 + 0.04 * gaussian_filter1d(rng.normal(0, 1, 40), 6, mode="nearest")
        ring = np.stack([x + rx * wide * np.cos(t), y + ry * wide * np.sin(t)], -1)
        paper.stroke(ring, pen)
    elif kind == "fill":
        n, inset = int(rng.integers(5, 12)), rng.uniform(0.3, 1.2)
        top, high = box.y + inset, (box.height - 2 * inset) / n
        zigzag = []
        for k in range(n + 1):
            zigzag.append((box.x + inset + rng.uniform(0, 1.8), top + high * k))
            right = box.x + box.width - inset - rng.uniform(0, 1.8)
            zigzag.append((right, top + high * (k + 0.5)))
        paper.stroke(by_hand(rng, zigzag), pen)
    else:
        raise ValueError(kind)


def draw_row(paper: Paper, boxes: Sequence[Box], row: Row) -> None:
    """What was done to a row."""
    rng = paper.rng
    if row.meant == "one":
        assert row.score is not None
        draw_mark(paper, row.kind, boxes[row.score - 1], row.pen)
    elif row.meant == "corrected":
        assert row.score is not None
        wrong = boxes[row.also[0] - 1]
        draw_mark(paper, row.kind, wrong, row.pen)
        if rng.random() < 0.5:
            draw_mark(paper, "fill" if row.kind != "fill" else "cross", wrong, row.pen)
        draw_mark(paper, row.kind, boxes[row.score - 1], row.pen)
    elif row.meant == "between":
        one = boxes[min(row.also) - 1]
        middle = Box(one.x + one.width / 2 + 0.4, one.y, one.width, one.height)
        draw_mark(paper, row.kind, middle, row.pen)
    elif row.meant == "struck":
        first, last = boxes[0], boxes[-1]
        y = first.y + first.height / 2
        ends = [(first.x + rng.uniform(0, 30), y + rng.normal(0, 1.5))]
        ends.append((last.x + last.width - rng.uniform(0, 30), y + rng.normal(0, 1.5)))
        paper.stroke(by_hand(rng, ends), row.pen)
    elif row.meant == "smudge":
        box = boxes[row.also[0] - 1]
        for _ in range(int(rng.integers(1, 3))):
            paper.smear(
                box.x + rng.uniform(0, box.width),
                box.y + rng.uniform(0, box.height),
                rng.uniform(1.5, 4.5),
                rng.uniform(0.08, 0.25),
            )
    elif row.meant == "dot":
        box = boxes[row.also[0] - 1]
        at = [box.x + rng.uniform(2, box.width - 2), box.y + rng.uniform(1.5, box.height - 1.5)]
        width = rng.uniform(0.8, 2.0)
        paper.line(np.array([at, [at[0] + 0.1, at[1] + 0.1]]), rng.uniform(20, 120), width)
    elif row.meant == "erased":
        assert row.score is not None
        wrong = boxes[row.also[0] - 1]
        before = paper.grey.copy()
        draw_mark(paper, row.kind, wrong, row.pen)
        left = rng.uniform(0.06, 0.2)
        paper.grey = before + left * (paper.grey - before)
        centre = wrong.x + wrong.width / 2, wrong.y + wrong.height / 2
        paper.smear(*centre, rng.uniform(2.5, 4), rng.uniform(0.02, 0.08))
        draw_mark(paper, row.kind, boxes[row.score - 1], row.pen)


def write_words(paper: Paper, x: float, y: float, width: float, lines: int) -> None:
    """Something like handwriting on lines 8 mm apart, below the rows."""
    rng, pen = paper.rng, str(paper.rng.choice(["ball pen", "pencil"]))
    for line in range(lines):
        at = x + rng.uniform(0, 4)
        while at < x + width * rng.uniform(0.6, 1.0):
            n = int(rng.integers(4, 12))
            rise = rng.uniform(-2.6, 1.4, n)
            word = np.stack([at + 1.2 * np.arange(n), y + 8 * line - 1.2 + rise], -1)
            paper.stroke(word + rng.normal(0, 0.2, word.shape), pen)
            at += 1.2 * n + rng.uniform(2, 4)


def drawn_row(rng: np.random.Generator, kind: str, pen: str) -> Row:
    """What a student does to a row: mostly one mark, as they make it, now and then not."""
    score = int(rng.integers(1, 11))
    other = int((score + rng.integers(1, 10) - 1) % 10) + 1
    chance = rng.random()
    if chance < 0.07:
        return Row("blank", None, "-", pen)
    if chance < 0.14:
        return Row("corrected", score, kind, pen, (other,))
    if chance < 0.16:
        low = min(score, 9)
        return Row("between", None, kind, pen, (low, low + 1))
    if chance < 0.17:
        return Row("struck", None, "-", pen)
    if chance < 0.19:
        return Row("smudge", None, "-", pen, (score,))
    if chance < 0.21:
        return Row("dot", None, "-", pen, (score,))
    if chance < 0.23:
        return Row("erased", score, kind, "pencil", (other,))
    return Row("one", score, kind, pen)

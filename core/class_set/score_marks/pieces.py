"""What was written on a row: pieces of ink that are not printed, near ones joined to one mark."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.class_set.score_marks.form import PX_PER_MM, ScoreRow
from core.class_set.score_marks.hull import area, clipped, hull_of
from core.class_set.score_marks.settle import RIM, boxes_px, outlines_of

Floats = NDArray[np.float32]

FAINTEST = 0.10
"""Ink below this is paper: its grain, a phone's noise, what a JPEG leaves."""

ABOVE_NOISE = 3.0
"""Ink stands out when it is so many times the noise of the bare paper darker than its middle."""

PRINT_MM = 0.4
WORDS_MM = 1.0
"""Around what is printed nothing is judged: so far it may lie from where it was settled. The words
above and below were not laid on the print themselves, so they may lie farther off."""

WORDS_FIT = 0.1
"""Mean ink of the printed words above that beside them; less where other words were printed, in
another language. Then nothing is judged where words may be."""

JOINED_MM = 2.2
"""Pieces nearer to each other than this are of one mark: print cuts a stroke in two."""

LEAST_MM2 = 0.08
"""Full black of so many square millimetres; less is a speck."""

MOST_DARK = 0.8
"""Ink darker counts as this: a felt pen weighs little more than a ball pen."""

STROKE_DARK = 0.2
STROKE_EDGE = 0.25
"""What a pen drew is so dark, and its edges are so steep, in ink a millimetre: the faintest pencil
had .38, smudges and what an eraser left at most .17 (measured on seeds below 1000)."""

SOLID_DARK = 0.6
"""So dark is no smudge, though the middle of a filled box has no edges."""

ON_BOX = 0.68
"""So much of a hull lies on the box that a piece belongs to."""

OVER_MM = 0.35
"""A mark may reach so far over its box above and below and still lie within it."""


@dataclass(frozen=True)
class Mark:
    """One mark on a row.

    Attributes
    ----------
    shares : tuple of float
        How its hull lies on the boxes, 1 first; together 1.
    on_boxes : float
        The share of its hull that lies on any box.
    mass : float
        In mm2 of full black.
    drawn : bool
        Dark and sharp enough to be of a pen: no smudge.
    length : float
        How long it is, in mm: that of an even stroke with its ink's spread. Specks that were
        joined to a dot do not make it long.
    inset : float
        How far within the box most of it lies on its middle is, from left or right, in mm.
    """

    shares: tuple[float, ...]
    on_boxes: float
    mass: float
    drawn: bool
    length: float
    inset: float

    @property
    def box(self) -> int:
        """The box most of it lies on, counted from 0."""
        return int(np.argmax(self.shares))


def marks_on(ink: Floats, row: ScoreRow) -> list[Mark]:
    """The marks on a settled row, those beside its boxes too."""
    # deferred: start-up time
    from scipy.ndimage import (
        binary_opening,
        find_objects,
        gaussian_gradient_magnitude,
        label,
        maximum_filter,
    )

    printed = _printed(ink, row)
    bare = ink[~printed]
    middle = float(np.median(bare))
    noise = 1.4826 * float(np.median(np.abs(bare - middle)))
    written = (ink > max(FAINTEST, middle + ABOVE_NOISE * noise)) & ~printed
    written = binary_opening(written, np.ones((2, 2)))
    near = maximum_filter(written, 2 * round(JOINED_MM / 2 * PX_PER_MM) + 1)
    labels, _ = label(near)
    labels = labels * written
    weight = np.where(written, np.minimum(ink, MOST_DARK), 0)
    steep = gaussian_gradient_magnitude(ink, 1.0) * PX_PER_MM
    marks: list[Mark] = []
    on_box: dict[int, list[int]] = {}
    for number, where in enumerate(find_objects(labels), 1):
        if where is None:
            continue
        mark = _mark(labels == number, where, weight, ink, steep, row)
        if mark.mass < LEAST_MM2:
            continue
        if mark.drawn and mark.shares[mark.box] >= ON_BOX and mark.on_boxes > 0.5:
            on_box.setdefault(mark.box, []).append(number)
        else:
            marks.append(mark)
    # A stroke over the printed number is cut in two: what was drawn on one box is one mark.
    everywhere = (slice(0, ink.shape[0]), slice(0, ink.shape[1]))
    for numbers in on_box.values():
        marks.append(_mark(np.isin(labels, numbers), everywhere, weight, ink, steep, row))
    return marks


def _mark(
    mask: NDArray[np.bool_],
    where: tuple[slice, slice],
    weight: Floats,
    ink: Floats,
    steep: Floats,
    row: ScoreRow,
) -> Mark:
    part = mask[where]
    hull = [(x + where[1].start, y + where[0].start) for x, y in hull_of(part)]
    reach = OVER_MM * PX_PER_MM
    over = [
        area(clipped(hull, (left, top - reach, right, bottom + reach)))
        for left, top, right, bottom in boxes_px(row)
    ]
    together = sum(over)
    whole = max(area(hull), 1e-6)
    shares = tuple(each / together for each in over) if together else tuple(0.0 for _ in over)
    dark = float(np.percentile(ink[where][part], 85))
    edge = float(np.percentile(steep[where][part], 85))
    left, right = min(x for x, _ in hull), max(x for x, _ in hull)
    own = boxes_px(row)[int(np.argmax(shares))]
    middle = (left + right) / 2
    return Mark(
        shares,
        together / whole,
        float(weight[where][part].sum()) / PX_PER_MM**2,
        dark >= SOLID_DARK or (dark >= STROKE_DARK and edge >= STROKE_EDGE),
        _length(part, weight[where]) / PX_PER_MM,
        min(middle - own[0], own[2] - middle) / PX_PER_MM,
    )


def _length(part: NDArray[np.bool_], weight: Floats) -> float:
    """Pixels along the direction in which most of the ink lies."""
    y, x = np.nonzero(part)
    spread = np.cov(x, y, aweights=weight[part], ddof=0) if len(x) > 1 else np.zeros((2, 2))
    return float(np.sqrt(12 * max(np.linalg.eigvalsh(spread)[-1], 0.0)))


def _printed(ink: Floats, row: ScoreRow) -> NDArray[np.bool_]:
    """Where print is, or may be: nothing is judged there."""
    from scipy.ndimage import maximum_filter  # deferred: start-up time

    outlines = outlines_of(row)
    words = 1 - row.printed.astype(np.float32) / 255 - outlines
    near_words = maximum_filter(words, 2 * round(WORDS_MM * PX_PER_MM) + 1) > 0.15
    around = np.ones_like(near_words)
    top = min(box[1] for box in boxes_px(row, RIM))
    bottom = max(box[3] for box in boxes_px(row, RIM))
    around[max(0, round(top)) : round(bottom)] = False
    on, off = words > 0.3, around & ~near_words
    fit = float(ink[on].mean() - ink[off].mean()) if on.any() and off.any() else 1.0
    near = maximum_filter(outlines, 2 * round(PRINT_MM * PX_PER_MM) + 1) > 0.15
    return np.asarray(near | (near_words if fit > WORDS_FIT else around))

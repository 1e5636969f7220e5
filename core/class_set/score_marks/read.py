"""A whole worksheet page: every row's reading, from the picture and what is printed on it."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.class_set.score_marks.decide import CANNOT_TELL, RowReading, reading_of
from core.class_set.score_marks.form import ScoreForm
from core.class_set.score_marks.ink import light_of
from core.class_set.score_marks.pieces import marks_on
from core.class_set.score_marks.rows import Lying, find_page, sampled
from core.class_set.score_marks.settle import Settled, settled
from core.class_set.score_marks.sharpness import sharpness

LEAST_FIT = 0.15
"""Mean ink of a row's outlines above that beside them: rows that were there had .25 to .45, other
places of a page mostly below .1 and at most .19 (measured on seeds below 1000). Every row has to be
found: codes along one edge alone tell the far rows so badly that each was once taken for the next,
and then the last one lay where no row is."""

LEAST_SHARP = 1.4
"""Pages more blurred than this are left to the teacher: faint pencil is lost first, and what is
left of a correction may look like one mark. Usual pictures had 1.56 and more at 1600 pixels, 1.46
at 1280; a blur of 4 pixels at 12 megapixels 1.39 at most (measured on seeds below 1000)."""


@dataclass(frozen=True)
class PageReading:
    """What was read from a page.

    Attributes
    ----------
    rows : tuple of RowReading
        From the top; one for each of the form's.
    crops : tuple of (h, w, 3) uint8
        The rows as they were looked at, to be shown beside what was read.
    """

    rows: tuple[RowReading, ...]
    crops: tuple[NDArray[np.uint8], ...]


def read_scores(pixels: NDArray[np.uint8], forms: tuple[ScoreForm, ...]) -> PageReading | None:
    """Read a photographed worksheet page; None where fewer than two of its codes are seen.

    Parameters
    ----------
    pixels : (h, w, 3) uint8
        The picture, as it was taken.
    forms : tuple of ScoreForm
        What is printed on this page, on each size of paper it may be printed on.
    """
    ways = find_page(pixels, forms)
    if not ways:
        return None
    light = light_of(pixels)
    # Codes of a bent page do not always tell which paper it is: the boxes do.
    first = [settled(light, way.H, way.form.rows[0]) for way in ways]
    for best in np.argsort([-laid.fit for laid in first]):
        lying = ways[best]
        rest = [settled(light, lying.H, row) for row in lying.form.rows[1:]]
        laid = [first[best], *rest]
        if sure := all(on.fit >= LEAST_FIT for on in laid):
            break
    lines = [sharpness(on.ink, row) for row, on in zip(lying.form.rows, laid, strict=True)]
    sure = sure and float(np.median(lines)) >= LEAST_SHARP
    found, crops = [], []
    for row, on in zip(lying.form.rows, laid, strict=True):
        # Where one row was not found, the others may be their neighbours.
        reading = reading_of(marks_on(on.ink, row), len(row.boxes)) if sure else CANNOT_TELL
        found.append(reading)
        crops.append(_crop(pixels, lying, on))
    return PageReading(tuple(found), tuple(crops))


def _crop(pixels: NDArray[np.uint8], lying: Lying, laid: Settled) -> NDArray[np.uint8]:
    channels = [sampled(pixels[..., k], lying.H, laid.x, laid.y) for k in range(3)]
    return np.asarray(np.clip(np.stack(channels, -1) + 0.5, 0, 255).astype(np.uint8))

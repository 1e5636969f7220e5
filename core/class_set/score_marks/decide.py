"""Which number a row says, from its marks; in doubt none."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from core.class_set.score_marks.pieces import Mark

Reading = Literal["number", "blank", "cannot tell"]
"""What can be said of a row: a closed set, put into words in `words`."""

ON_ONE_BOX = 0.68
"""So much of a mark's hull must lie on one box: two thirds. At half, marks between two boxes
became numbers (measured on the simulator's seeds below 1000)."""

INSET_MM = 2.5
"""And its middle so far within that box: a slash drawn at the gap may lie on one box alone."""

BESIDE = 0.25
"""A mark with less of its hull on boxes lies beside them: handwriting, a stain."""

STROKE_MM = 4.0
"""A stroke is longer than this: the shortest tick had 7.3 mm, dots of up to 2 mm came out up to 3.5
at 1280 pixels (measured on seeds below 1000)."""

LEAST = 0.45
"""mm2 of full black that a number takes: a slash of 6 mm with a faint pencil has about so much."""

NOTHING = 0.2
"""Below this a row is blank; between the two, it cannot be told."""

DOUBT = 0.3
"""So much of dots and smudges beside too little else: somebody meant something."""

SECOND = 0.25
"""A second mark of so many mm2 and of this share of the first: an answer was corrected."""

PLAIN_SECOND = 0.4
"""A second mark of so many mm2, whatever the first has."""


@dataclass(frozen=True)
class RowReading:
    """What was read from one row.

    Attributes
    ----------
    kind : Reading
    score : int or None
        1 to 10 where it is a number.
    """

    kind: Reading
    score: int | None = None

    def __post_init__(self) -> None:
        if (self.kind == "number") != (self.score is not None):
            raise ValueError(f"a reading with a number has one, others none: {self}")


CANNOT_TELL = RowReading("cannot tell")
BLANK = RowReading("blank")


def reading_of(marks: Sequence[Mark], boxes: int) -> RowReading:
    """The number that is marked, if one and only one is.

    Parameters
    ----------
    marks : sequence of Mark
    boxes : int
        How many the row has.
    """
    total, doubt, between = [0.0] * boxes, [0.0] * boxes, 0.0
    for mark in marks:
        if mark.on_boxes < BESIDE:
            continue
        if not mark.drawn or mark.length < STROKE_MM:
            for number, share in enumerate(mark.shares):
                doubt[number] += mark.mass * share
        elif mark.shares[mark.box] >= ON_ONE_BOX and mark.inset >= INSET_MM:
            total[mark.box] += mark.mass
        else:
            between += mark.mass
    first, second = sorted(total, reverse=True)[:2]
    if between > SECOND:
        return CANNOT_TELL
    if first < LEAST:
        quiet = first + between < NOTHING and max(doubt) <= DOUBT
        return BLANK if quiet else CANNOT_TELL
    if second > PLAIN_SECOND or second > max(SECOND, SECOND * first):
        return CANNOT_TELL
    return RowReading("number", total.index(first) + 1)

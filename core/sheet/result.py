"""What a sheet check says, as frozen values the page, the cards and the command line share.

Positions on a sheet are fractions of the painted rectangle, seen upright: x from 0 (left) to 1,
y from 0 (top) to 1. Positions in a photo are fractions of the photo's width and height.
"""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from core.bands.lines import Bands
from core.reading.quality import ChangeFirst, Outcome
from core.sheet.measuring import (
    BandCheck,
    Bloom,
    Difference,
    Finding,
    HardEdge,
    Light,
    LineCheck,
    Notice,
    PaleCorner,
    Scores,
    SecondCheck,
    Strength,
    Washes,
)
from core.sheet.options import Corners, Point, SheetOptions

__all__ = [
    "BandCheck",
    "Bloom",
    "Change",
    "ChangeRow",
    "Corners",
    "Difference",
    "Finding",
    "HardEdge",
    "Light",
    "LineCheck",
    "Notice",
    "PaleCorner",
    "Point",
    "Scores",
    "SecondCheck",
    "SheetCheck",
    "SheetOptions",
    "Strength",
    "Washes",
]


@dataclass(frozen=True, eq=False)
class SheetCheck:
    """Everything a check found.

    Attributes
    ----------
    picture : (h, w, 3) uint8
        The painted rectangle upright, straightened and with its light corrected, sRGB.
    corners : Corners
        Used or found, in the photo as it is (not turned).
    corner_confidence : float
        0..1; below `core.sheet.find.corners.SURE` the user is asked. 1 when set by hand.
    turned : int
        As asked for.
    better_turn : int or None
        The `turned` that fits the reference better, when another does.
    bands : Bands
        The sheet's own lines, as fractions of the painted height (horizon 1).
    findings : tuple of Finding
        At most five, praise first, then the most useful.
    strength : Strength
        Whether the whole sheet has too little or too much of the right paint.
    beyond : tuple of BandCheck
        The bands beside the photo at that strength: what is off beyond it. Empty when the
        strength is not spoken of.
    washes : Washes
        Which bands are on the sheet at all.
    provisional : bool
        The corners are a proposal only: everything holds as far as they do.
    """

    name: str
    picture: NDArray[np.uint8]
    corners: Corners
    corner_confidence: float
    turned: int
    better_turn: int | None
    light: Light
    bands: Bands
    lines: tuple[LineCheck, ...]
    band_checks: tuple[BandCheck, ...]
    hard_edges: tuple[HardEdge, ...]
    blooms: tuple[Bloom, ...]
    pale_corners: tuple[PaleCorner, ...]
    scores: Scores
    findings: tuple[Finding, ...]
    notices: tuple[Notice, ...] = ()
    scan: bool = False
    strength: Strength = Strength()
    beyond: tuple[BandCheck, ...] = ()
    washes: Washes = Washes()
    provisional: bool = False

    @property
    def readable(self) -> bool:
        """Whether lines and bands mean anything: the painting was found and is upright."""
        keys = {notice.key for notice in self.notices}
        return self.better_turn is None and "corners not found" not in keys


@dataclass(frozen=True)
class ChangeRow:
    """One thing compared between two sheets.

    Attributes
    ----------
    about : one of CHANGES
    before, after : str
        In a few words ("off by 6%", "2 hard edges").
    outcome : "improved" or "worse" or "stayed"
    past : bool
        It went past the photo: too light before, too dark now. That is never an improvement.
    """

    about: ChangeFirst
    letter: str | None
    before: str
    after: str
    outcome: Outcome
    past: bool = False


@dataclass(frozen=True)
class Change:
    """The second sheet against the first.

    Attributes
    ----------
    rows : tuple of ChangeRow
        The small table: every quality of every band, the lines, edges and blooms.
    intended : one of CHANGES or None
        What the student meant to change; `worked` says
        whether it did: None when nothing was named or it cannot be told.
    findings : tuple of Finding
        What improved, what got worse, in words.
    """

    rows: tuple[ChangeRow, ...]
    intended: ChangeFirst | None
    worked: Outcome | None
    findings: tuple[Finding, ...] = field(default=())

    @property
    def telling(self) -> tuple[ChangeRow, ...]:
        """The rows worth showing: what improved, what got worse, and what reads otherwise now."""
        order = {"improved": 0, "worse": 1, "stayed": 2}
        rows = sorted(self.rows, key=lambda row: order[row.outcome])
        return tuple(row for row in rows if row.outcome != "stayed" or row.before != row.after)

    @property
    def unchanged(self) -> int:
        """How many things compared read the same on both sheets."""
        return len(self.rows) - len(self.telling)

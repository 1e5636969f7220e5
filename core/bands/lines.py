"""The lines that cut a sky into bands, and the edits a teacher can make to them.

Every edit is a pure function that returns new bands. A drag beyond its neighbours stops at them,
so lines never cross, and no band gets thinner than `MIN_BAND`.
"""

from __future__ import annotations

import math
import string
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise

from core.errors import UsageError
from core.i18n import translate

MIN_BAND = 0.01
"""The thinnest band, as a share of the photo's height."""

MAX_BANDS = 26
"""One letter a band."""

# Sums of fractions miss by a few last digits; far below a pixel of any photo.
_SLACK = 1e-9


@dataclass(frozen=True)
class Bands:
    """Where the bands of a sky begin and end.

    Attributes
    ----------
    horizon : float
        The end of the sky, as a fraction of the photo's height: 0 top, 1 bottom.
    lines : tuple of float
        The boundaries between bands, as fractions of the photo's height, ascending.

    Raises
    ------
    ValueError
        A band thinner than `MIN_BAND`, lines out of order, a horizon below the photo,
        or more than `MAX_BANDS` bands.

    Examples
    --------
    >>> Bands(0.8, (0.2, 0.5)).edges
    (0.0, 0.2, 0.5, 0.8)
    """

    horizon: float
    lines: tuple[float, ...] = ()

    def __post_init__(self) -> None:
        object.__setattr__(self, "horizon", float(self.horizon))
        object.__setattr__(self, "lines", tuple(float(y) for y in self.lines))
        edges = self.edges
        if not all(math.isfinite(y) for y in edges) or edges[-1] > 1.0:
            raise ValueError(f"lines and horizon must lie in 0..1, got {edges}")
        if any(b - a < MIN_BAND - _SLACK for a, b in pairwise(edges)):
            raise ValueError(f"lines must ascend and be {MIN_BAND} apart, got {edges}")
        if self.count > MAX_BANDS:
            raise ValueError(f"at most {MAX_BANDS} bands, got {self.count}")

    @cached_property
    def edges(self) -> tuple[float, ...]:
        """0, every line, the horizon: one more than there are bands."""
        return (0.0, *self.lines, self.horizon)

    @property
    def count(self) -> int:
        """How many bands there are."""
        return len(self.lines) + 1

    @property
    def letters(self) -> tuple[str, ...]:
        """The bands' letters from the top: A, B, C..."""
        return tuple(string.ascii_uppercase[: self.count])

    def band_at(self, y: float) -> int | None:
        """The number of the band at height `y`; None above the photo or below the sky."""
        if not 0.0 <= y <= self.horizon:
            return None
        return sum(1 for line in self.lines if line <= y)


def move_line(bands: Bands, index: int, y: float) -> Bands:
    """Line `index` (0 is the topmost) moved to `y`, or as near as its neighbours allow."""
    edges = bands.edges
    at = _checked(index, len(bands.lines)) + 1
    y = _clamp(y, edges[at - 1] + MIN_BAND, edges[at + 1] - MIN_BAND)
    return Bands(bands.horizon, (*bands.lines[:index], y, *bands.lines[index + 1 :]))


def move_horizon(bands: Bands, y: float) -> Bands:
    """The end of the sky moved to `y`, or as near as the last line and the photo allow."""
    return Bands(_clamp(y, bands.edges[-2] + MIN_BAND, 1.0), bands.lines)


def can_split(bands: Bands, index: int) -> bool:
    """Whether band `index` has room for one more line."""
    index = _checked(index, bands.count)
    top, bottom = bands.edges[index], bands.edges[index + 1]
    return bands.count < MAX_BANDS and bottom - top >= 2 * MIN_BAND - _SLACK


def split_band(bands: Bands, index: int) -> Bands:
    """Band `index` cut in the middle.

    Raises
    ------
    UsageError
        The band is too thin, or every letter is taken.
    """
    _refuse_unless_room(bands, index)
    top, bottom = bands.edges[index], bands.edges[index + 1]
    return _insert(bands, index, (top + bottom) / 2)


def add_line(bands: Bands, y: float) -> Bands:
    """A new line at `y`, shifted so far that neither new band is too thin.

    Raises
    ------
    UsageError
        `y` is not in the sky, the band there is too thin, or every letter is taken.
    """
    index = bands.band_at(y)
    if index is None:
        raise UsageError(
            translate("bands", "There is no sky at that height: add the line above the horizon.")
        )
    _refuse_unless_room(bands, index)
    top, bottom = bands.edges[index], bands.edges[index + 1]
    return _insert(bands, index, _clamp(y, top + MIN_BAND, bottom - MIN_BAND))


def remove_line(bands: Bands, index: int) -> Bands:
    """Without line `index`: the bands above and below it become one."""
    index = _checked(index, len(bands.lines))
    return Bands(bands.horizon, bands.lines[:index] + bands.lines[index + 1 :])


def bands_by_hand(lines: Sequence[float], horizon: float) -> Bands:
    """Bands from lines that somebody typed.

    Parameters
    ----------
    lines : sequence of float
        Fractions of the photo's height, in any order.
    horizon : float
        Where the sky ends, as a fraction of the photo's height.

    Raises
    ------
    UsageError
        The lines do not cut a sky; the message says which and what to do.
    """
    if not (math.isfinite(horizon) and MIN_BAND <= horizon <= 1.0):
        raise UsageError(
            translate(
                "bands", "The horizon {y:g} is not in the photo: give a height from 0.01 to 1."
            ).format(y=horizon)
        )
    ordered = tuple(sorted(float(y) for y in lines))
    if len(ordered) >= MAX_BANDS:
        raise UsageError(
            translate("bands", "{n} lines are too many: give at most {most}.").format(
                n=len(ordered), most=MAX_BANDS - 1
            )
        )
    for y in ordered:
        if not (math.isfinite(y) and MIN_BAND - _SLACK <= y <= horizon - MIN_BAND + _SLACK):
            raise UsageError(
                translate(
                    "bands",
                    "The line {y:g} is not inside the sky: "
                    "give heights from {lowest:g} to {highest:g}.",
                ).format(y=y, lowest=MIN_BAND, highest=round(horizon - MIN_BAND, 4))
            )
    for y, following in pairwise(ordered):
        if following - y < MIN_BAND - _SLACK:
            raise UsageError(
                translate(
                    "bands",
                    "The lines {y:g} and {following:g} are too close: "
                    "leave at least 0.01 between them.",
                ).format(y=y, following=following)
            )
    return Bands(horizon, ordered)


def _insert(bands: Bands, index: int, y: float) -> Bands:
    return Bands(bands.horizon, (*bands.lines[:index], y, *bands.lines[index:]))


def _refuse_unless_room(bands: Bands, index: int) -> None:
    if can_split(bands, index):
        return
    if bands.count >= MAX_BANDS:
        raise UsageError(
            translate("bands", "There are {most} bands already: remove a line first.").format(
                most=MAX_BANDS
            )
        )
    raise UsageError(
        translate("bands", "This band is too thin to split: move one of its lines first.")
    )


def _checked(index: int, count: int) -> int:
    if not 0 <= index < count:
        raise ValueError(f"index {index} outside 0..{count - 1}")
    return index


def _clamp(y: float, low: float, high: float) -> float:
    if math.isnan(y):
        raise ValueError("a height must be a number, got nan")
    # Two bands of exactly the least height leave no room: rounding may even put high below low.
    return max(low, min(y, high)) if low <= high else (low + high) / 2

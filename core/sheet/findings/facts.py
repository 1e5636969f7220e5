"""Everything the findings of a sheet speak of, in one value."""

from __future__ import annotations

from dataclasses import dataclass, replace

from core.reading.reading import BandReading
from core.sheet.findings.compare import uneven_sides
from core.sheet.findings.planned import Planned
from core.sheet.findings.strength import is_seen
from core.sheet.result import (
    BandCheck,
    Bloom,
    HardEdge,
    LineCheck,
    Notice,
    PaleCorner,
    SheetCheck,
    Strength,
    Washes,
)


@dataclass(frozen=True, eq=False)
class Facts:
    """What was found of a sheet; `reference` has the readings of the photo's bands, `height_mm`
    is None where the size of the paper is not known."""

    bands: tuple[BandCheck, ...]
    lines: tuple[LineCheck, ...]
    edges: tuple[HardEdge, ...]
    blooms: tuple[Bloom, ...]
    corners: tuple[PaleCorner, ...]
    reference: tuple[BandReading, ...]
    notices: tuple[Notice, ...]
    strength: Strength = Strength()
    beyond: tuple[BandCheck, ...] = ()
    washes: Washes = Washes()
    planned: Planned | None = None
    height_mm: float | None = None

    @property
    def too_much(self) -> int:
        """1 where all of the sheet is too strong, -1 where it is too pale, else 0."""
        if not is_seen(self.strength, self.bands):
            return 0
        return 1 if self.strength.share > 1 else -1

    @property
    def over_exposed(self) -> bool:
        """Whether it may be the photo that is too pale, not the paint."""
        return any(notice.key == "over-exposed" for notice in self.notices)

    @property
    def missing(self) -> tuple[str, ...]:
        """Letters of the bands that are not on the sheet."""
        return tuple(self.bands[k].letter for k in self.washes.missing)

    @property
    def to_cure(self) -> tuple[BandCheck, ...]:
        """The bands as they are to be spoken of one by one: without those that are missing, and
        beyond what the strength of the whole sheet explains."""
        bands = self.beyond if self.too_much and self.beyond else self.bands
        return tuple(band for band in bands if band.letter not in self.missing)

    @property
    def lines_off(self) -> tuple[LineCheck, ...]:
        """Lines far enough from their place to be spoken of."""
        gone = lines_gone(self.washes)
        return tuple(
            line
            for k, line in enumerate(self.lines)
            if line.verdict in ("close", "off") and k not in gone
        )

    @property
    def uneven(self) -> tuple[BandCheck, ...]:
        """Bands one side of which differs more than the other."""
        return tuple(band for band in self.to_cure if uneven_sides(band) is not None)


def lines_gone(washes: Washes) -> set[int]:
    """Numbers, from 0, of the lines above and below bands that are missing: nothing meets there."""
    return {k for missing in washes.missing for k in (missing - 1, missing)}


def on_washes(
    edges: tuple[HardEdge, ...], blooms: tuple[Bloom, ...], there: str, letters: str
) -> tuple[tuple[HardEdge, ...], tuple[Bloom, ...]]:
    """Edges and blooms with the letters of the washes that are `there`, instead of missing ones."""

    def above(letter: str) -> str | None:
        return next((each for each in reversed(there) if each <= letter), None)

    def below(letter: str) -> str | None:
        return next((each for each in there if each >= letter), None)

    def between(edge: HardEdge) -> HardEdge:
        ends = (above(edge.letters[0]), below(edge.letters[-1]))
        found = tuple(dict.fromkeys(letter for letter in ends if letter is not None))
        return replace(edge, letters=found if len(edge.letters) > 1 else found[:1])

    def within(bloom: Bloom) -> Bloom:
        return replace(bloom, letter=above(bloom.letter) or below(bloom.letter) or bloom.letter)

    if there == letters:
        return edges, blooms
    return tuple(map(between, edges)), tuple(map(within, blooms))


def facts_of(check: SheetCheck, planned: Planned | None = None) -> Facts:
    """What can be said of a sheet that was checked; in the plan's terms, where there is one."""
    letters = "".join(band.letter for band in check.band_checks)
    gone = {letters[k] for k in check.washes.missing}
    there = "".join(letter for letter in letters if letter not in gone)
    edges, blooms = on_washes(check.hard_edges, check.blooms, there, letters)
    return Facts(
        check.band_checks,
        check.lines,
        edges,
        blooms,
        check.pale_corners,
        tuple(band.reference for band in check.band_checks),
        check.notices,
        check.strength,
        check.beyond,
        check.washes,
        planned,
        _height_mm(check, planned),
    )


def _height_mm(check: SheetCheck, planned: Planned | None) -> float | None:
    """How high the painted rectangle is, where the size of the paper is known."""
    if planned is None or planned.sheet is None:
        return None
    width, height = planned.sheet.painted_mm
    upright = check.picture.shape[0] > check.picture.shape[1]
    return max(width, height) if upright else min(width, height)

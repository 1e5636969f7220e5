"""What the class found hard: how many sheets are off in a band, and whether the same way.

A share alone says little: where many are off this way and as many that way, nothing is to be
taught. So the direction must pass a two-sided sign test, and as many tests are made, each must
pass it so clearly that one false sentence in fifty classes is the most to be expected.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass, replace
from math import comb

from core.class_set.kept_checks import Kept
from core.class_set.model import ClassSet
from core.class_set.placing import Placement
from core.class_set.ticket import Slot
from core.reading.quality import QUALITIES, Quality
from core.sheet.result import SheetCheck

OFF_SHARE = 1 / 3
"""Of the sheets judged: fewer are not spoken of."""

LEVEL = 0.01
"""Two-sided level of one sign test."""

FALSE_SENTENCES = 0.02
"""Share of classes without any direction of which something may be said all the same: the tests
made on one class share it (Bonferroni)."""


@dataclass(frozen=True)
class Spread:
    """One quality of one band across the class's first sheets, or its second.

    Attributes
    ----------
    letter : str
        The band; for placement, the band above the line.
    quality : Quality
    gaps : tuple of float
        One for each sheet that can be judged: 0 up to a tolerance matches; the sign is the
        direction (hue: clockwise on the wheel; value: lighter; intensity: more intense;
        placement: too low is positive). In the order of size, so that nobody is to be found.
    told : bool
        Enough sheets are off, and the same way.
    """

    letter: str
    quality: Quality
    gaps: tuple[float, ...]
    told: bool = False

    @property
    def judged(self) -> int:
        """Sheets of which it can be told."""
        return len(self.gaps)

    @property
    def matched(self) -> int:
        """Sheets that match."""
        return sum(abs(gap) <= 1 for gap in self.gaps)

    @property
    def above(self) -> int:
        """Sheets that are off in the positive direction."""
        return sum(gap > 1 for gap in self.gaps)

    @property
    def below(self) -> int:
        """Sheets that are off in the negative direction."""
        return sum(gap < -1 for gap in self.gaps)

    @property
    def off(self) -> int:
        """Sheets that are off either way."""
        return self.above + self.below

    @property
    def direction(self) -> int:
        """+1 or -1, the way most are off; 0 where there is none."""
        return int(self.above > self.below) - int(self.above < self.below)

    @property
    def share_off(self) -> float:
        """Off, of those judged; 0 where none is."""
        return self.off / self.judged if self.judged else 0.0


def sign_test(one_way: int, other_way: int) -> float:
    """Two-sided p of the sign test: how easily chance alone divides them so.

    Notes
    -----
    Dixon and Mood (1946), The statistical sign test, J. Am. Stat. Assoc. 41, 557-566.

    Examples
    --------
    >>> sign_test(8, 0), sign_test(3, 3)
    (0.0078125, 1.0)
    """
    n, few = one_way + other_way, min(one_way, other_way)
    if n == 0:
        return 1.0
    tail = sum(comb(n, k) for k in range(few + 1))
    return min(1.0, 2.0 * float(tail) / float(2**n))


def checks_at(
    placement: Placement, checks: Mapping[str, SheetCheck], numbers: Sequence[int], index: int
) -> tuple[SheetCheck, ...]:
    """The readable checks of everybody's sheet `index`, 0 or 1.

    Parameters
    ----------
    checks : mapping
        By the picture's digest.
    numbers : sequence of int
        The students'.
    """
    found = []
    for number in numbers:
        check = checks.get(placement.digest_at(Slot(number, index)) or "")
        other_sky = check is not None and any(n.key == "other sky" for n in check.notices)
        if check is not None and check.readable and not other_sky:
            found.append(check)
    return tuple(found)


def spread(checks: Sequence[SheetCheck]) -> tuple[Spread, ...]:
    """Each band's hue, value, intensity and lower line across the sheets.

    Parameters
    ----------
    checks : sequence of SheetCheck
        Of one exercise, from `checks_at`; pixels are not looked at.

    Returns
    -------
    tuple of Spread
        Band by band from the top, then in the order of QUALITIES; a band without a line below
        has no placement.
    """
    gaps: dict[tuple[str, Quality], list[float]] = {}
    for check in checks:
        for letter in (band.letter for band in check.band_checks):
            for quality in QUALITIES:
                gap = signed_gap(check, letter, quality)
                if gap is not None:
                    gaps.setdefault((letter, quality), []).append(gap)
    rank = {quality: place for place, quality in enumerate(QUALITIES)}
    rows = sorted(gaps, key=lambda row: (row[0], rank[row[1]]))
    return told_apart([Spread(*row, tuple(sorted(gaps[row]))) for row in rows])


def spreads_of(
    class_set: ClassSet, placement: Placement, checks: Mapping[str, Kept]
) -> tuple[tuple[Spread, ...], tuple[Spread, ...]]:
    """The spreads of everybody's first sheets, and of the second ones.

    Parameters
    ----------
    checks : mapping
        From `core.class_set.kept_checks.found_checks`.
    """
    made = {digest: kept.check for digest, kept in checks.items() if kept.check is not None}
    numbers = [student.number for student in class_set.students]
    return (
        spread(checks_at(placement, made, numbers, 0)),
        spread(checks_at(placement, made, numbers, 1)),
    )


def told_apart(spreads: Sequence[Spread]) -> tuple[Spread, ...]:
    """The same, with `told` answered for all of them together."""
    tested = [one for one in spreads if one.off and one.share_off >= OFF_SHARE]
    level = min(LEVEL, FALSE_SENTENCES / len(tested)) if tested else 0.0
    return tuple(
        replace(one, told=one in tested and sign_test(one.above, one.below) <= level)
        for one in spreads
    )


def signed_gap(check: SheetCheck, letter: str, quality: Quality) -> float | None:
    """A sheet's difference in tolerances, with its direction as the sign; None: cannot tell."""
    if quality == "placement":
        line = next((line for line in check.lines if line.letter == letter), None)
        if line is None or line.shift_pct is None:
            return None
        return float(line.shift_pct / line.allowed_pct)
    band = next((band for band in check.band_checks if band.letter == letter), None)
    if band is None or band.whole is None:
        return None
    gap, step = {
        "hue": (band.hue_gap, band.whole.hue_steps),
        "value": (band.value_gap, band.whole.value_steps),
        "intensity": (band.intensity_gap, band.whole.chroma_steps),
    }[quality]
    if gap is None:
        return None
    # A hue that is off without a direction (grey beside it) counts as matching neither way.
    if step is None:
        return None if gap > 1 else gap
    return float(gap if step >= 0 else -gap)

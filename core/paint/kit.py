"""What a class needs for a plan: paper, tape, paint, brushes, water and time for so many.

The amounts of paint follow the plan's own chain of measures: the millilitres of each mix, its
strength as parts of water to one of tube paint, and its parts. All else is common practice, and so
stands as a round figure: who paints every week knows better.
"""

from __future__ import annotations

import math
from dataclasses import dataclass

from core.paint.mixture.strength import WATER_TO_ONE
from core.paint.planned import MixPlan, PlannedMix
from core.paint.wash.amounts import LEAST_ML, MOST_STUDENTS, PaintSheet

SHEETS_EACH = 2
"""The exercise: a sheet, and a second, better one."""

SPARE_PAPER = 10
"""One sheet more for so many: some tear, some begin again (common practice)."""

TAPE_OVER_MM = 20.0
"""Of each strip, beyond the sheet: to press down, and to peel it by (common practice)."""

JAR_ML = 250.0
JARS_FOR_TWO = 2
"""One to rinse, one kept clean, filled anew for the second sheet (common practice)."""

TAPE_MIN, MIX_MIN, LOOK_MIN = 5, 2, 10
"""Minutes to tape and mark a sheet, to mix and try one mix, and to hold the dry sheet against the
photo and score it (common practice)."""


@dataclass(frozen=True)
class PaintNeed:
    """How much tube paint one student takes for all sheets.

    Attributes
    ----------
    key : str
        A paint of the plan's box.
    ml : float
        At most, where every strength is at its thickest.
    """

    key: str
    ml: float


@dataclass(frozen=True)
class Kit:
    """What so many students need.

    Attributes
    ----------
    students : int
    sheet : PaintSheet
    paper : int
        Sheets of paper for all, the spare ones included.
    tape_mm : float
        For one student's sheets.
    paints : tuple of PaintNeed
        The most first.
    wells : int
        Different mixes at a time.
    water_ml : tuple of 2 floats
        Clean water to wet and to mix one student's sheets, from and to.
    jars : int
        For all.
    minutes : tuple of 2 ints
        One sheet, from and to.
    mix_min : int
        Of these, to mix and try.
    wet_min, dry_min : tuple of 2 ints
        Of these, while the sheet shines, and while it dries.
    """

    students: int
    sheet: PaintSheet
    paper: int
    tape_mm: float
    paints: tuple[PaintNeed, ...]
    wells: int
    water_ml: tuple[float, float]
    jars: int
    minutes: tuple[int, int]
    mix_min: int
    wet_min: tuple[int, int]
    dry_min: tuple[int, int]

    @property
    def spare(self) -> int:
        """Sheets of paper more than will be painted."""
        return self.paper - self.students * SHEETS_EACH

    @property
    def rinse_ml(self) -> float:
        """What fills all jars once for each sheet."""
        return self.jars * JAR_ML * SHEETS_EACH


def kit_for(plan: MixPlan, students: int) -> Kit:
    """What a plan takes for so many students.

    Parameters
    ----------
    plan : MixPlan
    students : int
        1 to 99.

    Raises
    ------
    ValueError
        Another number of students.
    """
    if not 1 <= students <= MOST_STUDENTS:
        raise ValueError(f"a class has 1 to {MOST_STUDENTS} students, not {students}")
    mixes = _mixes(plan)
    wet, dry = _minutes(plan, "wet"), _minutes(plan, "dry")
    wells = len({planned.mix.parts for planned, _ in mixes})
    fixed = (TAPE_MIN if mixes else 0) + MIX_MIN * wells + LOOK_MIN
    width, height = plan.sheet.width_mm, plan.sheet.height_mm
    wash_ml = sum(ml for _, ml in mixes)
    low, high = plan.amounts.water_ml if mixes else (0.0, 0.0)
    painted = students * SHEETS_EACH
    return Kit(
        students,
        plan.sheet,
        painted + math.ceil(painted / SPARE_PAPER),
        SHEETS_EACH * (2 * (width + height) + 4 * TAPE_OVER_MM),
        _paints(mixes),
        wells,
        (SHEETS_EACH * (low + wash_ml), SHEETS_EACH * (high + wash_ml)),
        JARS_FOR_TWO * math.ceil(students / 2),
        (5 * ((fixed + wet[0] + dry[0]) // 5), 5 * math.ceil((fixed + wet[1] + dry[1]) / 5)),
        MIX_MIN * wells,
        wet,
        dry,
    )


def _mixes(plan: MixPlan) -> list[tuple[PlannedMix, float]]:
    """Every mix with its millilitres on one sheet, those of second colours too."""
    found: list[tuple[PlannedMix, float]] = []
    for band, amount in zip(plan.bands, plan.amounts.bands, strict=True):
        if band.classroom is not None and band.classroom.mix.parts:
            found.append((band.classroom, band.amount_ml))
        second = band.second
        if second is not None and second.planned.mix.parts:
            found.append((second.planned, max(LEAST_ML, second.target.share * amount.ml)))
    return found


def _paints(mixes: list[tuple[PlannedMix, float]]) -> tuple[PaintNeed, ...]:
    needed: dict[str, float] = {}
    for planned, ml in mixes:
        paint_ml = ml / (1 + WATER_TO_ONE[planned.strength])
        for key in planned.mix.keys:
            needed[key] = needed.get(key, 0.0) + SHEETS_EACH * paint_ml * planned.mix.share(key)
    return tuple(
        PaintNeed(key, ml) for key, ml in sorted(needed.items(), key=lambda item: -item[1])
    )


def _minutes(plan: MixPlan, stage: str) -> tuple[int, int]:
    steps = [step.minutes for step in plan.order.steps if step.stage == stage and step.minutes]
    return sum(low for low, _ in steps), sum(high for _, high in steps)

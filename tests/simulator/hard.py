"""Classes with planted faults, and classes without any direction, as spreads."""

from __future__ import annotations

from functools import cache

import numpy as np

from core.class_set.spread import Spread, told_apart
from core.reading.quality import QUALITIES

BANDS = "ABCDE"
CELLS = len(BANDS) * len(QUALITIES) - 1
"""Every band's four qualities, but no line below the last."""

POPULATION = 400
_PLANTED = {("A", "value"): 1.4, ("A", "intensity"): -1.3, ("C", "placement"): -1.4}
"""Tolerances the class as a whole is off by; one student is about 1 either side of it."""


def cells() -> list[tuple[str, str]]:
    """Band and quality of every cell."""
    return [
        (letter, quality)
        for letter in BANDS
        for quality in QUALITIES
        if not (letter == BANDS[-1] and quality == "placement")
    ]


@cache
def population() -> dict[tuple[str, str], np.ndarray]:
    """Signed gaps of many students in every cell."""
    rng = np.random.default_rng(2027)
    return {
        cell: _PLANTED.get(cell, 0.0) + 0.62 * rng.standard_normal(POPULATION) for cell in cells()
    }


def planted_draw(seed: int, students: int) -> tuple[Spread, ...]:
    """A class drawn from the population."""
    rng = np.random.default_rng([61, seed])
    chosen = rng.choice(POPULATION, students, replace=False)
    return told_apart(
        [Spread(*cell, tuple(sorted(gaps[chosen]))) for cell, gaps in population().items()]  # type: ignore[arg-type]
    )


def chance_spreads(
    rng: np.random.Generator, students: int, off_cells: int, share: float
) -> tuple[Spread, ...]:
    """A class of which `share` is off in some cells, each student either way by chance."""
    spreads = []
    for number, cell in enumerate(cells()):
        off = rng.random(students) < (share if number < off_cells else 0.0)
        sign = rng.choice((-1.0, 1.0), students)
        gaps = np.where(off, 2.0 * sign, 0.3 * sign)
        spreads.append(Spread(*cell, tuple(sorted(gaps))))  # type: ignore[arg-type]
    return told_apart(spreads)

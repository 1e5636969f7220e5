"""Fit the weights that tell a bloom from any other pale patch.

    python tools/fit_blooms.py

Simulated sheets (tests/simulator) of the seeds below: plain ones, and ones whose washes were laid
in streaks and clouds, whose pale patches are no blooms. A candidate is a bloom when it is on one
and has about its size; those that only touch one count neither way. The weights
of `core.sheet.painted.blooms` are a logistic regression with a small penalty, blooms and others
weighing alike. The constant is then lowered by hand: a false alarm costs more than a miss.
"""

from __future__ import annotations

import os
import sys
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "tests"))
sys.path.insert(0, str(Path(__file__).parents[1]))

from simulator import Scene, cases, measure, scene

from core.photo import open_photo
from core.sheet import check, check_sheet
from core.sheet.painted.blooms import bloom_candidates, relative_density
from core.sheet.result import SheetOptions
from tools.logistic import balanced_weights

SEEDS = range(600, 720)
PENALTY = 2e-4


def density_of(one: Scene) -> np.ndarray | None:
    """The paint of the straightened sheet as the check looks at it; None where its corners went
    wrong."""
    seen = []
    usual = check.find_blooms
    check.find_blooms = lambda density: seen.append(density) or usual(density)
    try:
        photo = open_photo(one.jpeg, name="sheet.jpg")
        options = SheetOptions(scan=one.shot.scan)
        found = check_sheet(photo, measure.reference_of(one), options)
    finally:
        check.find_blooms = usual
    return seen[0] if measure.corner_error(one, found) < measure.FOUND else None


def rows_of(one: Scene) -> list[list[float]]:
    """Bloom or not, then the features, of each candidate that is clearly one or the other."""
    density = density_of(one)
    if density is None:
        return []
    even = relative_density(density)
    h, w = even.shape
    rows = []
    for (y, x, r), features in zip(*bloom_candidates(even), strict=True):
        kind = kind_of(one, (x + 0.5) / w, (y + 0.5) / h, r / h)
        if kind is not None:
            rows.append([kind, *features])
    return rows


def kind_of(one: Scene, x: float, y: float, radius: float) -> float | None:
    """1 for a bloom, 0 for something else, None for what only touches a bloom."""
    kind: float | None = 0.0
    for bloom in one.spec.blooms:
        far = float(np.hypot((x - bloom.x) * one.spec.aspect, y - bloom.y))
        if far < 0.5 * bloom.radius and 0.55 < radius / bloom.radius < 1.7:
            return 1.0
        if far < 1.3 * max(radius, bloom.radius):
            kind = None
    return kind


def fit(rows: np.ndarray) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Mean and scale of the features; the constant and their weights."""
    features = rows[:, 1:]
    mean, scale = features.mean(axis=0), features.std(axis=0)
    terms = np.column_stack([np.ones(len(rows)), (features - mean) / scale])
    return mean, scale, balanced_weights(rows[:, 0] > 0.5, terms, PENALTY)


def main() -> None:
    scenes = (draw(seed) for seed in SEEDS for draw in (scene, cases.uneven))
    rows = np.array([row for one in scenes for row in rows_of(one)])
    mean, scale, weights = fit(rows)
    print(f"{len(rows)} candidates, {int(rows[:, 0].sum())} blooms")
    for name, values in (("_MEAN", mean), ("_SCALE", scale), ("_WEIGHTS", weights[1:])):
        print(f"{name} = np.array([" + ", ".join(f"{v:.4f}" for v in values) + "])")
    print(f"constant {weights[0]:.2f}")


if __name__ == "__main__":
    main()

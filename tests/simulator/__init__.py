"""Simulated practice sheets with a known truth, for tests and benchmarks.

`scene(seed)` draws a whole case: a reference sky, and a sheet painted after it with known
faults, photographed or scanned. Nothing in here is used by the program itself.

Seeds below `TUNING_SEEDS` were used while the sheet check was built; figures are reported
from `REPORT_SEED` upwards, which nothing was tuned on.
"""

from simulator.camera import Shot, photograph
from simulator.scenes import REPORT_SEED, TUNING_SEEDS, Scene, scene
from simulator.sheets import Bloom, Painting, SheetSpec, paint

__all__ = [
    "REPORT_SEED",
    "TUNING_SEEDS",
    "Bloom",
    "Painting",
    "Scene",
    "SheetSpec",
    "Shot",
    "paint",
    "photograph",
    "scene",
]

"""How fast the mix search is, and how near brute force it comes. Prints ratios in one run.

    python benchmarks/mix_search.py

Baseline of the same run: the exact film worked out plainly for the coarse table's mixes.
"""

from __future__ import annotations

import argparse
import os
import sys
import time
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1]))

from core.colour import delta_E_2000, srgb_to_Lab
from core.paint.box.box import TWELVE_PAN
from core.paint.options import BandChoice, MixOptions
from core.paint.pigment.measured import FULL_LOAD_ML, half_load_ml, load_Lab, measured_paints
from core.paint.plan import plan_mixes
from core.paint.search.closest import closest_mixes
from core.paint.search.recipes import forget_tables, whole_parts, whole_table
from core.paint.search.recipes import known as known_rows
from core.paint.search.refine import known as known_starts
from core.reading.reading import BandReading, read_colour

LOADS = 60


def reachable(rng: np.random.Generator, count: int, paints: int) -> np.ndarray:
    """Colours of random mixes of one to three paints, loads log-uniform: surely reachable."""
    loads = np.zeros((count, 13))
    for row in loads:
        some = rng.choice(paints, rng.integers(1, 4), replace=False)
        row[some] = rng.dirichlet(np.ones(len(some))) * 10 ** rng.uniform(-3.7, np.log10(0.16))
    return load_Lab(loads)


def brute_force(keys: tuple[str, ...], targets: np.ndarray) -> np.ndarray:
    """Smallest delta E 2000 of all whole parts up to 12 at 60 loads, exact film."""
    best = np.full(len(targets), np.inf)
    half = np.array([half_load_ml(key) for key in keys])
    for subset in (s for s in whole_table().subsets if max(s) < len(keys)):
        ways = whole_parts(len(subset))
        shares = np.zeros((len(ways), 13))
        shares[:, subset] = ways / ways.sum(axis=1, keepdims=True)
        faint = 0.05 / (shares[:, : len(keys)] / half).sum(axis=1)
        loads = np.exp(
            np.log(faint)[:, None]
            + np.linspace(0, 1, LOADS) * (np.log(FULL_LOAD_ML) - np.log(faint))[:, None]
        )
        Lab = load_Lab((shares[:, None] * loads[:, :, None]).reshape(-1, 13))
        for number, target in enumerate(targets):
            # The cheap distance first: 2000's weights never shrink one below a sixth.
            near = Lab[((Lab - target) ** 2).sum(axis=1) < (6 * best[number] + 1) ** 2]
            if len(near):
                best[number] = min(best[number], float(delta_E_2000(near, target).min()))
    return best


def timed(action, repeats: int = 5) -> float:
    """Median milliseconds."""
    times = []
    for _ in range(repeats):
        start = time.perf_counter()
        action()
        times.append((time.perf_counter() - start) * 1000)
    return float(np.median(times))


def updates() -> list[float]:
    """Milliseconds for the whole plan of five bands after one band's wish has changed."""
    sky = [(70, 80, 140), (190, 130, 140), (240, 150, 90), (250, 205, 120), (130, 180, 220)]
    readings = []
    for number, rgb in enumerate(sky):
        colour = read_colour(srgb_to_Lab(np.array(rgb) / 255))
        top = number / 5
        readings.append(
            BandReading("ABCDE"[number], top, top + 0.2, colour, None, None, None, 0, False, 0, 1)
        )
    wishes = [
        BandChoice(forbidden=("ultramarine",)),
        BandChoice(forbidden=("cerulean_blue",)),
        BandChoice(pinned=("burnt_sienna",)),
        *(BandChoice(parts=(("ultramarine", 2), ("crimson", n))) for n in (1, 2, 3)),
    ]
    times = []
    for letter in "ABCDE":
        for wish in wishes:
            plan_mixes(readings, TWELVE_PAN)
            options = MixOptions().with_choice(letter, wish)
            start = time.perf_counter()
            plan_mixes(readings, TWELVE_PAN, options)
            times.append((time.perf_counter() - start) * 1000)
    return times


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--targets", type=int, default=100)
    parser.add_argument("--quick", action="store_true", help="no brute force (a minute or two)")
    args = parser.parse_args()
    keys = measured_paints().keys[:12]
    rng = np.random.default_rng(2)
    targets = reachable(rng, args.targets, 12)

    def table_again() -> None:
        forget_tables()
        whole_table()

    def search_again() -> None:
        known_rows.forget()
        known_starts.forget()
        closest_mixes(keys, targets[:8])

    table = timed(table_again)
    recipes = whole_table()
    loads = recipes.shares * recipes.load_ml[:, None]

    def plain() -> None:
        for start in range(0, len(loads), 8192):
            load_Lab(loads[start : start + 8192])

    baseline = timed(plain, 3)
    search = timed(search_again)
    print(f"exact film for {len(loads)} mixes (baseline) {baseline:8.0f} ms   1.00")
    print(f"coarse table, once                       {table:8.0f} ms   {table / baseline:.2f}")
    print(f"8 bands, sets of 1 to 3 of 12 paints     {search:8.0f} ms   {search / baseline:.2f}")
    print(f"table and 8 bands together               {table + search:8.0f} ms   limit 250 ms")

    rows = updates()
    print(
        f"5-band plan, one paint or part changed: median {np.median(rows):.0f} ms, "
        f"worst {max(rows):.0f} ms   limit 50 ms"
    )

    found = closest_mixes(keys, targets)
    ours = np.array([candidates.delta_E.min() for candidates in found])
    print(
        f"{args.targets} reachable targets: left over, median {np.median(ours):.2f}, "
        f"worst {ours.max():.2f} delta E 2000"
    )
    if not args.quick:
        exact = brute_force(keys, targets)
        print(
            f"behind brute force: median {np.median(ours - exact):.2f}, "
            f"worst {(ours - exact).max():.2f}   limit 0.50"
        )


if __name__ == "__main__":
    main()

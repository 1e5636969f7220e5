"""All benchmarks in one table: each step of the job as a ratio to a baseline of the same run.

    python benchmarks/table.py [--only start,drag] [--times 5]

A ratio of 2 takes twice as long as what it is held against. "Grows" is how many times as long the
largest size takes as the smallest. Printed as Markdown, with the date and the machine: README
quotes it. It takes some minutes, most of them for brute force.
"""

from __future__ import annotations

import argparse
import os
import sys
import time
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
os.environ.setdefault("OMP_NUM_THREADS", "1")

sys.path.insert(0, str(Path(__file__).parents[1]))
sys.path.insert(0, str(Path(__file__).parents[1] / "tests"))

from whole_job import MEASURES, Measure, machine, measured


def ratio_text(ratio: float) -> str:
    """A ratio as it is read: "1.4", "1/350"."""
    if ratio >= 0.095:
        return f"{ratio:.1f}" if ratio < 10 else f"{ratio:.0f}"
    return f"1/{round(1 / ratio):,}"


def row(measure: Measure) -> str:
    """One line of the table."""
    first, last = measure.points[0], measure.points[-1]
    ratios = ", ".join(
        f"{point.size} {ratio_text(point.work / point.baseline)}" for point in measure.points
    )
    grows = f"{last.work / first.work:.1f} times from {first.size} to {last.size}"
    took = f"{1000 * last.work:.1f}" if last.work < 0.1 else f"{1000 * last.work:,.0f}"
    return f"| {measure.what} | {measure.against} | {ratios} | {grows} | {took} ms |"


def main() -> None:
    """Measure and print."""
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    names = [which.__name__ for which in MEASURES]
    parser.add_argument("--only", default="", help=f"some of {', '.join(names)}")
    parser.add_argument("--times", type=int, default=5, help="runs of each, in turns")
    asked = parser.parse_args()
    wanted = [name for name in asked.only.split(",") if name] or names
    if unknown := set(wanted) - set(names):
        parser.error(f"{', '.join(sorted(unknown))}: choose from {', '.join(names)}")
    print(f"{time.strftime('%Y-%m-%d')}, {machine()}, load {os.getloadavg()[0]:.1f}\n")
    print("| step | against | times as long | grows | the largest took |")
    print("|---|---|---|---|---|")
    for which in MEASURES:
        if which.__name__ in wanted:
            print(row(measured(which, asked.times)), flush=True)


if __name__ == "__main__":
    main()

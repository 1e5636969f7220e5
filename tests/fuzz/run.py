"""The long run: counts by outcome, and every find with the number that makes it again.

python -m tests.fuzz.run --pictures 10000 --studies 3000 --boxes 2500 --classes 500 --seed 1
"""

from __future__ import annotations

import argparse
import sys
import time

from tests.fuzz.runner import run

_OPTIONS = {"pictures": "picture", "studies": "study", "boxes": "box", "classes": "class set"}


def main() -> int:
    """Run what was asked for; 1 if there was a find."""
    parser = argparse.ArgumentParser(description=__doc__.split("\n")[0])
    for option in _OPTIONS:
        parser.add_argument(f"--{option}", type=int, default=0)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--by-name", action="store_true", help="counts for each sound file too")
    asked = parser.parse_args()
    finds = 0
    for option, kind in _OPTIONS.items():
        count = getattr(asked, option)
        if not count:
            continue
        began = time.monotonic()
        outcome = run(kind, count, asked.seed)
        told = ", ".join(f"{what} {n}" for what, n in sorted(outcome.counts.items()))
        print(
            f"{option}: {count} cases, seed {asked.seed}: {told}; slowest "
            f"{outcome.slowest_s:.2f} s of CPU, most memory {outcome.most_rss_kb / 1e6:.2f} GB, "
            f"{time.monotonic() - began:.0f} s",
            flush=True,
        )
        if asked.by_name:
            for (name, what), n in sorted(outcome.by_name.items()):
                print(f"    {name}: {what} {n}")
        for find in outcome.finds:
            print(f"    {find}")
        finds += len(outcome.finds)
    return 1 if finds else 0


if __name__ == "__main__":
    sys.exit(main())

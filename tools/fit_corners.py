"""Fit the weights that tell a right painted rectangle from a wrong one.

    python tools/fit_corners.py [--rows FILE.npz] [--few N]

Simulated sheets (tests/simulator), of the seeds below: sheets as real paper, light and cameras make
them, with bands and with landscapes, and the clean ones; with `--more`, some with the tape left on
and some in shadow. On real paper a right rectangle looks worse than any clean one, so most of the
rows are of real paper. Of each photo all that `core.sheet.find.corners.propose_all` checks are
taken; a proposal is right when its worst corner is within 2% of the side. One along the tape's
outer edge looks right in every way but that it is tape, which `core.sheet.light.tape` tells: it
counts neither way. The weights of `core.sheet.find.evidence` are a logistic regression with a small
penalty; the wrong ones are many, so right and wrong weigh alike. No evidence may speak for a
rectangle, and a side that is darker outside counts at least as much as `BOUNDS` says: that is
known, and too rare here to be learned.
`--rows` keeps what was measured, so that fitting again takes no time. `--few` takes the first N
sheets of each kind alone: weights of those are worth nothing, but they show that the tool runs.
"""

from __future__ import annotations

import argparse
import os
import sys
from pathlib import Path

os.environ.setdefault("OMP_NUM_THREADS", "1")

import numpy as np

sys.path.insert(0, str(Path(__file__).parents[1] / "tests"))
sys.path.insert(0, str(Path(__file__).parents[1]))

from simulator import Scene, cases, measure, scene

from core.photo import open_photo
from core.sheet.find import corners
from core.sheet.find.evidence import terms_of
from core.sheet.find.quads import candidates
from core.sheet.find.sight import Sight
from core.sheet.light.straighten import aspect_of, straighten
from core.sheet.light.tape import shows_tape
from tools.logistic import balanced_weights

REAL = range(62)
PICTURED = range(12)
PLAIN = range(16)
TAPED = range(200, 260)
SHADOWED = range(200, 230)
PENALTY = 0.002
BOUNDS = [(None, None), (0, None), (None, 0), (None, -0.1), (None, -1), (None, 0), (None, 0)]
"""Least and most of each weight, in the order of `terms_of`."""


def rows_of(one: Scene) -> list[list[float]]:
    """Right or wrong, then the terms, of each proposal checked."""
    sight = Sight.of(open_photo(one.jpeg, name="sheet.jpg"))
    linear = sight.linear
    truth = one.corners * (linear.shape[1] / one.shot.size[0])
    found = corners.propose_all(sight, *candidates(sight))
    if one.shot.tape is not None:
        found = [each for each in found if not known_as_tape(linear, each, one.shot.scan)]
    return [
        [
            float(error_of(each.quad, truth) < measure.FOUND),
            *terms_of(each.score, each.evidence),
        ]
        for each in found
    ]


def pictured(seed: int) -> Scene:
    """A landscape on real paper."""
    return cases.on_real_paper(seed, pictured=True)


def known_as_tape(linear: np.ndarray, each: corners.Proposal, scan: bool) -> bool:
    """Whether the check would tell of tape there; unlikely proposals are never asked about."""
    height, width = linear.shape[:2]
    if each.score < 2:
        return False
    return shows_tape(straighten(linear, each.quad, aspect_of(each.quad, width, height, scan)))


def error_of(quad: np.ndarray, truth: np.ndarray) -> float:
    """The worst corner's distance from the truth, a share of the side, whichever way up."""
    side = np.linalg.norm(np.roll(truth, -1, axis=0) - truth, axis=1).mean()
    turns = (np.roll(truth, turn, axis=0) for turn in range(4))
    return float(min(np.linalg.norm(turn - quad, axis=1).max() for turn in turns) / side)


def report(rows: np.ndarray, weights: np.ndarray) -> None:
    """Print the weights and how the proposals they were fitted on come out."""
    right = rows[:, 0] > 0.5
    odds = rows[:, 1:] @ weights
    print(f"{len(rows)} proposals, {right.sum()} right")
    print(f"right ones called unsure {np.mean(odds[right] < 0):.1%}")
    print(f"wrong ones called sure {np.mean(odds[~right] >= 0):.1%}")
    print("in the order of core.sheet.find.evidence.terms_of")
    print("WEIGHTS = np.array([" + ", ".join(f"{w:.3f}" for w in weights) + "])")


def main() -> None:
    parser = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    parser.add_argument("--rows", type=Path)
    parser.add_argument("--more", action="store_true", help="tape and shadows too")
    parser.add_argument("--few", type=int, help="sheets of each kind, instead of all")
    args = parser.parse_args()
    if args.rows and args.rows.exists():
        rows = np.load(args.rows)["rows"]
    else:
        scenes = [(cases.on_real_paper, REAL), (pictured, PICTURED), (scene, PLAIN)]
        if args.more:
            scenes += [(cases.taped, TAPED), (cases.shadowed, SHADOWED)]
        rows = np.array(
            [
                row
                for draw, seeds in scenes
                for seed in seeds[: args.few]
                for row in rows_of(draw(seed))
            ]
        )
        if args.rows:
            np.savez(args.rows, rows=rows)
    report(rows, balanced_weights(rows[:, 0] > 0.5, rows[:, 1:], PENALTY, BOUNDS))


if __name__ == "__main__":
    main()

"""The short run of the fuzzing: some hundred damaged files of every kind."""

from __future__ import annotations

import os

import pytest

from tests.fuzz.mutators import damaged
from tests.fuzz.runner import run

COUNTS = {"picture": 250, "study": 120, "box": 120, "class set": 60}


@pytest.mark.skipif(os.name == "nt", reason="limits of POSIX")
@pytest.mark.parametrize("kind", COUNTS)
def test_damaged_files_give_a_result_or_a_sentence(kind: str) -> None:
    outcome = run(kind, COUNTS[kind], seed=2027)
    assert outcome.finds == []
    assert sum(outcome.counts.values()) == COUNTS[kind]
    # Both must come about, or the damages are of no use.
    assert outcome.counts["refused"] > COUNTS[kind] // 20
    assert COUNTS[kind] - outcome.counts["refused"] > COUNTS[kind] // 40


def test_a_seed_gives_the_same_damage_again() -> None:
    import numpy as np

    data = bytes(range(256)) * 4
    made = [damaged(data, np.random.default_rng((5, n))) for n in range(40)]
    assert made == [damaged(data, np.random.default_rng((5, n))) for n in range(40)]
    assert len(set(made)) > 30

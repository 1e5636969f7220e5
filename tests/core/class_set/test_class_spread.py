"""What the class found hard: planted faults are found, chance is not spoken of."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from later import Later
from simulator.hard import CELLS, chance_spreads, planted_draw

from core.class_set.hard import LEAST, found_hard
from core.class_set.spread import Spread, sign_test, told_apart

stats = Later("scipy.stats")


@pytest.mark.parametrize(("one", "other"), [(0, 0), (1, 0), (5, 2), (8, 0), (13, 13), (30, 2)])
def test_sign_test_is_scipys_binomial_test(one: int, other: int) -> None:
    """Against scipy.stats.binomtest (exact, two-sided, p = 1/2)."""
    expected = stats.binomtest(one, one + other, 0.5).pvalue if one + other else 1.0
    assert sign_test(one, other) == pytest.approx(expected, rel=1e-12)


def test_counts_are_what_they_say() -> None:
    one = Spread("A", "value", (-2.0, -0.5, 0.0, 1.0, 1.5, 3.0))
    assert (one.judged, one.matched, one.above, one.below, one.direction) == (6, 3, 2, 1, 1)


def test_planted_faults_are_found() -> None:
    """A small version of `benchmarks/class_set.py hard`, other seeds: 40 draws of 20 students."""
    found = 0
    for seed in range(40):
        told = {(s.letter, s.quality) for s in planted_draw(seed, 20) if s.told}
        found += {("A", "value"), ("A", "intensity"), ("C", "placement")} <= told
    assert found >= 38


def test_random_signs_are_hardly_ever_spoken_of() -> None:
    """Any number of cells may be off: the tests share what may be said falsely."""
    rng = np.random.default_rng(31)
    for off_cells in (1, 5, CELLS):
        said = sum(
            any(s.told for s in chance_spreads(rng, 28, off_cells, share=0.7)) for _ in range(400)
        )
        assert said / 400 <= 0.03  # 2 % is the most to be expected; 0.7 % is one deviation


def test_small_classes_get_counts_and_no_sentence() -> None:
    few = LEAST - 1
    first = told_apart([Spread("A", "value", (3.0,) * few)])
    second = told_apart([Spread("A", "value", (0.0,) * few)])
    assert not any(one.told for one in first)
    assert found_hard(first, second) == ()


def test_sentences_bear_no_code_and_say_what_to_teach() -> None:
    gaps = (0.0,) * 8 + (2.5,) * 12
    first = told_apart(
        [Spread("A", "value", gaps), Spread("A", "intensity", tuple(-g for g in gaps))]
    )
    second = told_apart([Spread("A", "value", (0.0,) * 20), Spread("A", "intensity", (0.0,) * 20)])
    step, praise = found_hard(first, second)
    assert step.text.startswith("Band A came lighter and duller on 12 of 20 sheets.")
    assert step.teach.endswith(".")
    assert praise.kind == "praise"
    assert "20 of 20" in praise.text


def test_at_most_three_steps() -> None:
    gaps = (3.0,) * 30
    spreads = told_apart([Spread(letter, "value", gaps) for letter in "ABCDEF"])
    assert all(one.told for one in spreads)
    assert sum(one.kind == "step" for one in found_hard(spreads, ())) == 3


def test_both_ways_is_no_direction() -> None:
    gaps = (-3.0,) * 10 + (3.0,) * 10
    assert not told_apart([Spread("A", "hue", gaps)])[0].told
    assert replace(Spread("A", "hue", gaps)).direction == 0


@pytest.mark.parametrize(
    ("intensity", "value", "words"),
    [
        (-2.0, 0.9, "more paint into the same water"),  # thin, hence dull
        (-2.0, 0.0, "less of the complement"),  # as light as the photo, and dull
        (-2.0, -0.9, "less of the complement"),  # dark and dull: too much toned down
        (2.0, -0.9, "more water"),  # strong, hence intense
        (2.0, 0.0, "with a little of the complement"),
    ],
)
def test_a_thin_wash_is_told_to_hold_more_paint_and_not_less_complement(
    intensity: float, value: float, words: str
) -> None:
    first = told_apart(
        [Spread("A", "value", (value,) * 20), Spread("A", "intensity", (intensity,) * 20)]
    )
    (step, *_) = found_hard(first, ())
    assert words in step.teach

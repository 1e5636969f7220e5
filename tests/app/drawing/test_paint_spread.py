"""Crowded marks part without overlapping, whatever the crowd."""

from __future__ import annotations

import itertools
import math

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.optimize import isotonic_regression

from app.drawing.spread import spread_disc, spread_line

PLACES = st.lists(st.floats(0, 100), min_size=1, max_size=26)
CROWDS = st.lists(
    st.tuples(st.floats(-95, 95), st.floats(-95, 95)), min_size=1, max_size=26
) | st.builds(
    lambda middle, offsets: [(middle[0] + x, middle[1] + y) for x, y in offsets],
    st.tuples(st.floats(-80, 80), st.floats(-80, 80)),
    st.lists(st.tuples(st.floats(-3, 3), st.floats(-3, 3)), min_size=2, max_size=26),
)


@given(PLACES, st.floats(0.5, 30))
def test_line_keeps_gap_and_order(places: list[float], gap: float) -> None:
    moved = spread_line(places, gap)
    order = sorted(range(len(places)), key=lambda i: (places[i], i))
    for one, other in itertools.pairwise(order):
        assert moved[other] - moved[one] >= gap - 1e-9


@given(PLACES, st.floats(0.5, 30))
def test_line_stays_between_its_ends(places: list[float], gap: float) -> None:
    moved = spread_line(places, gap, 0.0, 100.0)
    assert min(moved) >= -1e-9
    assert max(moved) <= 100.0 + 1e-9


@given(PLACES, st.floats(0.5, 30))
def test_line_moves_as_little_as_possible(places: list[float], gap: float) -> None:
    # scipy.optimize.isotonic_regression (Busing 2022's PAVA) is the reference.
    ordered = np.sort(np.asarray(places))
    steps = gap * np.arange(len(places))
    best = isotonic_regression(ordered - steps).x + steps
    assert sorted(spread_line(places, gap)) == pytest.approx(sorted(best), abs=1e-8)


def test_line_without_crowd_stays() -> None:
    assert spread_line([1.0, 50.0, 99.0], 10.0) == (1.0, 50.0, 99.0)
    assert spread_line([], 10.0) == ()


@settings(deadline=None)
@given(CROWDS)
def test_discs_never_overlap_and_stay_inside(crowd: list[tuple[float, float]]) -> None:
    radius, moved = spread_disc(crowd, 11.0, 6.0, 92.0)
    assert radius <= 11.0
    for one, other in itertools.combinations(moved, 2):
        assert math.dist(one, other) >= 2 * radius - 1e-6
    for x, y in moved:
        assert math.hypot(x, y) <= 92.0 + 1e-6


@settings(deadline=None)
@given(st.lists(st.tuples(st.floats(150, 240), st.floats(20, 88)), min_size=1, max_size=7))
def test_seven_bands_keep_size_and_clearance(polar: list[tuple[float, float]]) -> None:
    crowd = [(r * math.sin(math.radians(a)), -r * math.cos(math.radians(a))) for a, r in polar]
    radius, moved = spread_disc(crowd, 11.0, 6.0, 92.0)
    assert radius == 11.0
    for one, other in itertools.combinations(moved, 2):
        assert math.dist(one, other) >= 2 * 11.0 + 2.0


def test_disc_alone_stays() -> None:
    assert spread_disc([(10.0, 20.0)], 11.0, 6.0, 92.0) == (11.0, ((10.0, 20.0),))
    assert spread_disc([], 11.0, 6.0, 92.0) == (11.0, ())


def test_two_bands_of_one_colour_part_sideways() -> None:
    """So that the distance from the middle, the intensity, is still read."""
    _, (one, other) = spread_disc([(0.0, -50.0), (0.0, -50.0)], 11.0, 6.0, 92.0)
    assert abs(one[0] - other[0]) > 25.0
    assert abs(one[1] - other[1]) < 6.0

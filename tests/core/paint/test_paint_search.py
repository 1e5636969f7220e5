"""The closest mix: the coarse table, the refinement, and what is asked of them."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.colour import delta_E_2000
from core.paint.pigment.measured import FULL_LOAD_ML, load_Lab, measured_paints
from core.paint.search.closest import closest_mixes
from core.paint.search.metric import local_metric
from core.paint.search.recipes import MAX_PARTS, nearest_rows, whole_parts, whole_table
from core.paint.search.refine import known, refine

KEYS = measured_paints().keys[:12]


def reachable(count, seed, paints=12):
    rng = np.random.default_rng(seed)
    loads = np.zeros((count, 13))
    for row in loads:
        some = rng.choice(paints, rng.integers(1, 4), replace=False)
        row[some] = rng.dirichlet(np.ones(len(some))) * 10 ** rng.uniform(-3.7, -0.8)
    return load_Lab(loads)


def test_whole_parts_are_small_and_without_a_common_factor():
    for paints in (1, 2, 3):
        ways = whole_parts(paints)
        assert (ways >= 1).all()
        assert ways.sum(axis=1).max() <= MAX_PARTS
        assert (np.gcd.reduce(ways, axis=1) == 1).all()
    assert whole_parts(1).tolist() == [[1]]


def test_the_table_holds_every_set_of_one_to_three_paints():
    table = whole_table()
    wanted = {s for size in (1, 2, 3) for s in combinations(range(13), size)}
    assert set(table.subsets) == wanted
    assert len(table.subsets) == len(table.first) == 377
    for subset, held in zip(table.subsets, table.members, strict=True):
        assert np.flatnonzero(held).tolist() == list(subset)
        assert table.subsets[table.number[frozenset(subset)]] == subset


def test_the_table_is_near_the_exact_film():
    table = whole_table()
    rows = range(0, len(table.load_ml), 37)
    loads = np.array([table.load(row) for row in rows])
    gap = delta_E_2000(load_Lab(loads), table.Lab[::37].astype(float))
    assert gap.max() < 1.9
    assert np.median(gap) < 0.15
    assert table.load_ml.max() == pytest.approx(FULL_LOAD_ML)


def test_the_nearest_row_of_every_set_is_the_nearest():
    table = whole_table()
    target = (60.0, -4.0, -20.0)
    distance, row = nearest_rows(target)
    away = np.linalg.norm((table.Lab - np.array(target)) @ local_metric(target).T, axis=1)
    for first, last, at, gap in zip(
        table.first, [*table.first[1:], len(away)], row, distance, strict=True
    ):
        assert first <= at < last
        assert gap == pytest.approx(away[first:last].min(), rel=1e-4)


def test_starts_that_were_asked_for_before_are_answered_the_same():
    """Whatever else is asked for along with them: every set is worked out by itself."""
    columns = [(0,), (1, 6), (0, 6, 9), (2, 3)]
    loads = np.zeros((4, 13))
    for row, paints in enumerate(columns):
        loads[row, list(paints)] = 0.002
    targets = np.repeat(reachable(1, 3), 4, axis=0)
    known.forget()
    fresh = refine(columns, loads, targets, keep=5)
    assert len(known) == 4
    again = refine(columns, loads, targets, keep=5)
    known.forget()
    refine(columns[2:], loads[2:], targets[2:], keep=5)
    mixed = refine(columns, loads, targets, keep=5)
    for other in (again, mixed):
        for name in ("start", "parts", "load_ml", "Lab", "delta_E"):
            np.testing.assert_allclose(getattr(other, name), getattr(fresh, name), atol=1e-9)
    assert fresh.start.tolist() == sorted(fresh.start.tolist())


@given(st.tuples(st.floats(5, 95), st.floats(-60, 60), st.floats(-60, 60)), st.integers(0, 99))
def test_the_local_metric_is_ciede2000_for_small_steps(Lab, seed):
    Lab = np.array(Lab)
    step = np.random.default_rng(seed).normal(size=3) * 0.01
    near = np.linalg.norm(local_metric(Lab) @ step)
    exact = float(delta_E_2000(Lab + step, Lab))
    assert near == pytest.approx(exact, rel=0.05, abs=1e-4)


def test_reachable_colours_are_reached_with_countable_parts():
    targets = reachable(12, 5)
    for found, target in zip(closest_mixes(KEYS, targets), targets, strict=True):
        assert found.delta_E.min() < 1.5
        assert (found.parts.sum(axis=1) <= MAX_PARTS).all()
        assert ((found.parts > 0).sum(axis=1) <= 3).all()
        assert (found.load_ml <= FULL_LOAD_ML * (1 + 1e-9)).all()
        shares = found.parts / found.parts.sum(axis=1, keepdims=True)
        np.testing.assert_allclose(load_Lab(shares * found.load_ml[:, None]), found.Lab, atol=1e-9)
        np.testing.assert_allclose(delta_E_2000(found.Lab, target), found.delta_E, atol=1e-9)


@settings(max_examples=8, deadline=None)
@given(st.integers(0, 10_000), st.sampled_from([6, 12]))
def test_the_search_is_near_brute_force(seed, reached_with):
    """All whole parts of six paints at forty loads: never clearly better than the search.

    Also for colours that need other paints: then the nearest there is has to be found.
    """
    keys = KEYS[:6]
    target = reachable(1, seed, reached_with)[0]
    found = closest_mixes(keys, target)[0].delta_E.min()
    best = np.inf
    for subset in (s for s in whole_table().subsets if max(s) < 6):
        ways = whole_parts(len(subset), 8)
        shares = np.zeros((len(ways), 13))
        shares[:, subset] = ways / ways.sum(axis=1, keepdims=True)
        loads = np.geomspace(1e-5, FULL_LOAD_ML, 40)
        Lab = load_Lab(shares[:, None] * loads[:, None])
        best = min(best, float(delta_E_2000(Lab, target).min()))
    assert found <= best + 0.5


def test_paints_that_must_be_in_are_in():
    sienna = measured_paints().index("burnt_sienna")
    found = closest_mixes(KEYS, reachable(2, 1), frozenset({"burnt_sienna"}))
    assert all((candidates.parts[:, sienna] > 0).all() for candidates in found)
    four = frozenset(KEYS[:4])
    assert not len(closest_mixes(KEYS, reachable(1, 1), four)[0].cost)
    assert not len(closest_mixes(KEYS[:3], reachable(1, 1), frozenset({KEYS[9]}))[0].cost)

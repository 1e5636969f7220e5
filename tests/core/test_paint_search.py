"""The closest mix: the coarse table, the refinement, and what is asked of them."""

from __future__ import annotations

from itertools import combinations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from core.colour import delta_E_2000
from core.paint.closest import closest_mixes
from core.paint.measured import FULL_LOAD_ML, load_Lab, measured_paints
from core.paint.metric import local_metric
from core.paint.recipes import MAX_PARTS, recipes_of, whole_parts

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
    recipes = recipes_of(KEYS)
    wanted = {s for size in (1, 2, 3) for s in combinations(range(12), size)}
    assert set(recipes.subsets) == wanted
    assert len(recipes.subsets) == 298


@pytest.mark.parametrize("keys", [KEYS, KEYS[::3], KEYS[4:5]])
def test_the_table_is_near_the_exact_film(keys):
    recipes = recipes_of(keys)
    loads = np.zeros((len(recipes.load_ml), 13))
    loads[:, recipes.rows] = recipes.shares * recipes.load_ml[:, None]
    some = slice(None, None, 37)
    gap = delta_E_2000(load_Lab(loads[some]), recipes.Lab[some].astype(float))
    assert gap.max() < 1.9
    assert np.median(gap) < 0.15
    assert recipes.load_ml.max() == pytest.approx(FULL_LOAD_ML)


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
    for subset in recipes_of(keys).subsets:
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

"""Exact change points, checked against another library's exact search and against brute force."""

from __future__ import annotations

from itertools import combinations, pairwise

import numpy as np
import pytest
from later import Later

from core.bands.changepoints import best_cuts

ruptures = Later("ruptures")


def _profile(rng: np.random.Generator, n: int, pieces: int) -> np.ndarray:
    edges = np.sort(rng.choice(np.arange(1, n), pieces - 1, replace=False))
    which = np.searchsorted(edges, np.arange(n), side="right")
    slope = np.linspace(0, 8, n)[:, None] * rng.normal(size=3)
    return rng.normal(0, 15, (pieces, 3))[which] + slope + rng.normal(0, 1, (n, 3))


@pytest.mark.parametrize("seed", range(6))
def test_cuts_equal_those_of_ruptures(seed: int) -> None:
    """ruptures 1.1.10, Truong, Oudre & Vayatis 2020, `Dynp` with model "l2" and equal weights."""
    rng = np.random.default_rng(seed)
    profile = _profile(rng, 70, 5)
    ours = best_cuts(profile, np.ones(70), most=7, shortest=4)
    theirs = ruptures.Dynp(model="l2", min_size=4, jump=1).fit(profile)
    assert sorted(ours) == [1, 2, 3, 4, 5, 6, 7]
    for pieces in range(2, 8):
        ends = theirs.predict(n_bkps=pieces - 1)
        assert ours[pieces].at == tuple(ends[:-1])
        assert ours[pieces].cost == pytest.approx(theirs.cost.sum_of_costs(ends), rel=1e-9)


@pytest.mark.parametrize("seed", range(4))
def test_weighted_cuts_equal_brute_force(seed: int) -> None:
    rng = np.random.default_rng(seed)
    n, shortest = 16, 2
    profile = _profile(rng, n, 4)
    weights = rng.uniform(0, 1, n)
    weights[rng.integers(0, n, 3)] = 0.0

    def cost(at: tuple[int, ...]) -> float:
        total = 0.0
        for a, b in zip((0, *at), (*at, n), strict=True):
            w = weights[a:b]
            if w.sum() > 0:
                mean = np.average(profile[a:b], axis=0, weights=w)
                total += float((w[:, None] * (profile[a:b] - mean) ** 2).sum())
        return total

    ours = best_cuts(profile, weights, most=4, shortest=shortest)
    for pieces in (1, 2, 3, 4):
        every = [
            at
            for at in combinations(range(1, n), pieces - 1)
            if min(np.diff((0, *at, n))) >= shortest
        ]
        best = min(every, key=cost)
        assert ours[pieces].cost == pytest.approx(cost(best), rel=1e-9, abs=1e-9)
        assert cost(ours[pieces].at) == pytest.approx(cost(best), rel=1e-9, abs=1e-9)


def test_numbers_that_do_not_fit_are_left_out() -> None:
    assert sorted(best_cuts(np.zeros((10, 3)), np.ones(10), most=7, shortest=4)) == [1, 2]
    assert sorted(best_cuts(np.zeros((1, 3)), np.ones(1), most=7)) == [1]


def test_more_pieces_never_cost_more() -> None:
    rng = np.random.default_rng(9)
    cuts = best_cuts(rng.normal(0, 9, (120, 3)), rng.uniform(0, 1, 120), most=7, shortest=3)
    costs = [cuts[k].cost for k in sorted(cuts)]
    assert all(b <= a + 1e-9 for a, b in pairwise(costs))


@pytest.mark.parametrize("weights", [np.zeros(5), -np.ones(5), np.ones(4)])
def test_senseless_weights_are_refused(weights: np.ndarray) -> None:
    with pytest.raises(ValueError, match="weights"):
        best_cuts(np.zeros((5, 3)), weights, most=2)

"""The same paints from band to band: the chain of sets, and mixes shared."""

from __future__ import annotations

from itertools import pairwise, product

import numpy as np
import pytest
from paint_tools import sky

from core.colour import delta_E_2000
from core.paint.box.box import TWELVE_PAN
from core.paint.choice.runs import (
    ADD_PRICE,
    CHANGE_PRICE,
    SHARED_WITHIN,
    SHARED_WORSE,
    best_load_ml,
    choose_sets,
    share_mixes,
)
from core.paint.mixture.mix import make_mix
from core.paint.pigment.measured import FULL_LOAD_ML

A, B, AB, C = frozenset("a"), frozenset("b"), frozenset("ab"), frozenset("c")


def cost(chain, prices):
    total = sum(price[paints] for price, paints in zip(prices, chain, strict=True))
    for one, other in pairwise(chain):
        if one != other:
            total += ADD_PRICE if one < other or other < one else CHANGE_PRICE
    return total


@pytest.mark.parametrize("seed", range(20))
def test_the_chain_is_the_cheapest_of_all(seed):
    rng = np.random.default_rng(seed)
    prices = [{paints: rng.uniform(0, 3) for paints in (A, B, AB, C)} for _ in range(4)]
    best = min(product((A, B, AB, C), repeat=4), key=lambda chain: cost(chain, prices))
    assert cost(choose_sets(prices), prices) == pytest.approx(cost(best, prices))


def test_paints_are_kept_unless_changing_gains_enough():
    assert choose_sets([{A: 0.0, B: 1.0}, {A: 0.5, B: 0.0}]) == (A, A)
    assert choose_sets([{A: 0.0, B: 3.0}, {A: 3.0, B: 0.0}]) == (A, B)


def test_bands_without_a_choice_break_the_chain():
    assert choose_sets([]) == ()
    assert choose_sets([{}, {A: 1.0}, {}, {B: 1.0}, {}]) == (None, A, None, B, None)


def test_the_best_load_is_the_best_of_many():
    target = sky("fell")[1].colour
    load, gap = best_load_ml(TWELVE_PAN, (("ultramarine", 5), ("burnt_sienna", 1)), target)
    for other in np.geomspace(1e-5, FULL_LOAD_ML, 200):
        mix = make_mix(TWELVE_PAN, {"ultramarine": 5, "burnt_sienna": 1}, other)
        assert float(delta_E_2000(np.array(mix.Lab), np.array(target.Lab))) >= gap - 0.02
    assert 0 < load <= FULL_LOAD_ML


def test_a_shared_mix_is_never_clearly_worse_than_a_bands_own():
    targets = [band.colour for band in sky("fell")]
    own = []
    for parts in ({"ultramarine": 5, "burnt_sienna": 1}, {"ultramarine": 6, "burnt_sienna": 1}):
        for target in targets[:2]:
            load, _ = best_load_ml(TWELVE_PAN, tuple(sorted(parts.items())), target)
            own.append(make_mix(TWELVE_PAN, parts, load))
    both = [*targets[:2], *targets[:2]]
    shared = share_mixes(TWELVE_PAN, both, own)
    for parts, mix, target in zip(shared, own, both, strict=True):
        assert parts is not None
        alone = float(delta_E_2000(np.array(mix.Lab), np.array(target.Lab)))
        gap = best_load_ml(TWELVE_PAN, parts, target)[1]
        assert gap <= max(SHARED_WITHIN, alone + SHARED_WORSE) + 1e-9
    assert len(set(shared)) == 1


def test_nothing_is_shared_across_other_paints_or_gaps():
    target, pink = sky("fell")[0].colour, sky("dusk")[3].colour
    blue = make_mix(TWELVE_PAN, {"ultramarine": 1}, 0.001)
    red = make_mix(TWELVE_PAN, {"crimson": 1}, 0.001)
    assert share_mixes(TWELVE_PAN, [target, pink, target], [blue, red, None]) == (None, None, None)

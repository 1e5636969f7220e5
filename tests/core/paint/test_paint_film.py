"""The film's exact limits (Kubelka 1948; Beer-Lambert) and the mixture's own laws."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.paint.pigment.film import film_over, film_reflectance, paper_inside, through_surface
from core.paint.pigment.measured import (
    FULL_LOAD_ML,
    load_Lab,
    load_reflectance,
    measured_paints,
    paper_Lab,
)

positive = st.floats(1e-3, 30)
share = st.floats(0.0, 1.0)


@given(K=positive, S=positive, ground=share)
def test_infinite_thickness_is_the_kubelka_munk_ratio(K, S, ground):
    thick = 1e7
    ratio = K / S
    expected = 1 + ratio - np.sqrt(ratio**2 + 2 * ratio)
    assert film_over(thick * K, thick * S, ground) == pytest.approx(expected, abs=1e-9)


@given(K=st.floats(0, 30), ground=share)
def test_without_scattering_it_is_beer_lambert_over_the_paper(K, ground):
    assert film_over(K, 0.0, ground) == pytest.approx(ground * np.exp(-2 * K), abs=1e-9)
    assert film_over(K, 1e-13, ground) == pytest.approx(ground * np.exp(-2 * K), abs=1e-9)


@given(S=st.floats(0, 30), ground=share)
def test_without_absorption_only_scattering_counts(S, ground):
    # Kubelka 1948: with K = 0, R = (S (1 - Rg) + Rg) / (S (1 - Rg) + 1).
    expected = (S * (1 - ground) + ground) / (S * (1 - ground) + 1)
    assert film_over(0.0, S, ground) == pytest.approx(expected, abs=1e-9)


@given(K=st.floats(0, 5), S=st.floats(0, 5), ground=share, cut=share)
def test_two_layers_of_one_paint_are_one_thicker_layer(K, S, ground, cut):
    below = film_over(cut * K, cut * S, ground)
    assert film_over((1 - cut) * K, (1 - cut) * S, below) == pytest.approx(
        float(film_over(K, S, ground)), abs=1e-9
    )


@given(R=share)
def test_the_surface_gives_back_the_paper(R):
    assert through_surface(paper_inside(R)) == pytest.approx(R, abs=1e-12)


def test_no_paint_is_paper():
    data = measured_paints()
    bare = load_reflectance(np.zeros(13))
    np.testing.assert_allclose(bare, data.paper, atol=1e-9)
    np.testing.assert_allclose(load_Lab(np.zeros(13)), paper_Lab(), atol=1e-12)


@given(
    loads=st.lists(st.floats(0, 0.05), min_size=13, max_size=13), order=st.permutations(range(13))
)
def test_the_order_of_paints_does_not_matter(loads, order):
    data = measured_paints()
    order = list(order)
    shuffled = film_reflectance(
        np.array(loads)[order] * 100, data.K[order], data.S[order], data.crowding, data.paper
    )
    np.testing.assert_allclose(shuffled, load_reflectance(loads), atol=1e-9)


@given(paint=st.integers(0, 12), load=st.floats(0, FULL_LOAD_ML), cut=share)
def test_one_paint_split_in_two_is_itself(paint, load, cut):
    data = measured_paints()
    # The same paint entered twice, as if two tubes of it were mixed.
    K = np.concatenate([data.K, data.K[[paint]]])
    S = np.concatenate([data.S, data.S[[paint]]])
    loads = np.zeros(14)
    loads[paint] = load * cut
    loads[13] = load * (1 - cut)
    split = film_reflectance(loads * 100, K, S, data.crowding, data.paper)
    whole = np.zeros(13)
    whole[paint] = load
    np.testing.assert_allclose(split, load_reflectance(whole), atol=1e-9)


def test_value_falls_as_a_wash_grows_stronger():
    loads = np.geomspace(1e-5, FULL_LOAD_ML, 80)
    for paint in range(13):
        vectors = np.zeros((80, 13))
        vectors[:, paint] = loads
        L = load_Lab(vectors)[:, 0]
        assert (np.diff(L) < 0.25).all(), measured_paints().keys[paint]


def test_shapes_are_kept():
    assert load_Lab(np.zeros((2, 5, 13))).shape == (2, 5, 3)
    assert load_reflectance(np.zeros((4, 13))).shape == (4, 41)

"""Lines and their edits: no edit, however wild, may break the rules of a band."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.bands.lines import (
    MAX_BANDS,
    MIN_BAND,
    Bands,
    add_line,
    bands_by_hand,
    can_split,
    move_horizon,
    move_line,
    remove_line,
    split_band,
)
from core.errors import UsageError

anywhere = st.floats(-0.5, 1.5, allow_nan=False)


@st.composite
def some_bands(draw: st.DrawFn) -> Bands:
    thicknesses = draw(st.lists(st.floats(MIN_BAND, 1.0), min_size=1, max_size=12))
    room = draw(st.floats(min(0.99, len(thicknesses) * MIN_BAND + 0.01), 1.0))
    spare = room - len(thicknesses) * MIN_BAND
    total = sum(thicknesses)
    y, edges = 0.0, []
    for thickness in thicknesses:
        y += MIN_BAND + spare * thickness / total
        edges.append(y)
    return Bands(min(edges[-1], 1.0), tuple(edges[:-1]))


def holds(bands: Bands) -> None:
    edges = bands.edges
    assert edges[0] == 0.0
    assert edges[-1] == bands.horizon <= 1.0
    assert all(b - a >= MIN_BAND - 1e-9 for a, b in pairwise(edges))
    assert len(bands.letters) == bands.count == len(edges) - 1


@given(some_bands(), st.lists(st.tuples(st.integers(0, 4), st.integers(0, 30), anywhere)))
def test_any_run_of_edits_keeps_the_rules(bands: Bands, edits: list) -> None:
    for kind, number, y in edits:
        if kind == 0 and bands.lines:
            bands = move_line(bands, number % len(bands.lines), y)
        elif kind == 1:
            bands = move_horizon(bands, y)
        elif kind == 2 and can_split(bands, number % bands.count):
            bands = split_band(bands, number % bands.count)
        elif kind == 3:
            try:
                bands = add_line(bands, y)
            except UsageError:
                in_sky = bands.band_at(y)
                assert in_sky is None or not can_split(bands, in_sky)
        elif kind == 4 and bands.lines:
            bands = remove_line(bands, number % len(bands.lines))
        holds(bands)


@given(some_bands(), st.integers(0, 30), anywhere)
def test_a_line_moves_where_it_is_asked_or_stops_at_its_neighbour(
    bands: Bands, number: int, y: float
) -> None:
    if not bands.lines:
        return
    index = number % len(bands.lines)
    moved = move_line(bands, index, y)
    low, high = bands.edges[index] + MIN_BAND, bands.edges[index + 2] - MIN_BAND
    if low <= y <= high:
        assert moved.lines[index] == y
    elif y < low:
        assert moved.lines[index] == pytest.approx(low)
    else:
        assert moved.lines[index] == pytest.approx(high)
    others = [i for i in range(len(bands.lines)) if i != index]
    assert [moved.lines[i] for i in others] == [bands.lines[i] for i in others]


@given(some_bands(), st.integers(0, 30))
def test_splitting_and_removing_undo_each_other(bands: Bands, number: int) -> None:
    index = number % bands.count
    if not can_split(bands, index):
        return
    assert remove_line(split_band(bands, index), index) == bands


def test_the_horizon_stops_at_the_last_line_and_the_photo() -> None:
    bands = Bands(0.8, (0.2, 0.5))
    assert move_horizon(bands, 0.1).horizon == pytest.approx(0.51)
    assert move_horizon(bands, 3.0).horizon == 1.0
    assert move_horizon(bands, 0.6) == Bands(0.6, (0.2, 0.5))


def test_edges_letters_and_the_band_under_a_height() -> None:
    bands = Bands(0.8, (0.2, 0.5))
    assert bands.edges == (0.0, 0.2, 0.5, 0.8)
    assert bands.letters == ("A", "B", "C")
    assert [bands.band_at(y) for y in (0.0, 0.1, 0.2, 0.79, 0.8, 0.81, -0.1)] == [
        0,
        0,
        1,
        2,
        2,
        None,
        None,
    ]


def test_a_new_line_beside_another_keeps_its_distance() -> None:
    assert add_line(Bands(1.0, (0.5,)), 0.501).lines == pytest.approx((0.5, 0.51))
    assert add_line(Bands(1.0, (0.5,)), 0.499).lines == pytest.approx((0.49, 0.5))


@pytest.mark.parametrize(
    ("horizon", "lines"),
    [
        (1.1, ()),
        (0.0, ()),
        (0.8, (0.5, 0.2)),
        (0.8, (0.2, 0.2)),
        (0.8, (0.795,)),
        (0.8, (0.9,)),
        (0.8, (0.005,)),
        (float("nan"), ()),
        (0.8, (float("nan"),)),
        (1.0, tuple(i / 30 for i in range(1, MAX_BANDS + 1))),
    ],
)
def test_bands_that_break_a_rule_cannot_be_made(horizon: float, lines: tuple) -> None:
    with pytest.raises(ValueError, match=r"lines|bands"):
        Bands(horizon, lines)


def test_what_cannot_be_split_says_so() -> None:
    with pytest.raises(UsageError, match="too thin"):
        split_band(Bands(0.5, (0.015,)), 0)
    full = Bands(1.0, tuple(i / MAX_BANDS for i in range(1, MAX_BANDS)))
    with pytest.raises(UsageError, match="remove a line"):
        split_band(full, 3)
    with pytest.raises(UsageError, match="above the horizon"):
        add_line(Bands(0.5), 0.7)
    with pytest.raises(ValueError, match="index"):
        remove_line(Bands(0.5), 0)


def test_lines_typed_by_hand_may_stand_in_any_order() -> None:
    assert bands_by_hand([0.45, 0.2], 0.8) == Bands(0.8, (0.2, 0.45))


@pytest.mark.parametrize(
    ("lines", "horizon", "word"),
    [
        ([0.2, 0.205], 0.8, "0.2 and 0.205"),
        ([0.9], 0.8, "0.9"),
        ([-0.1], 0.8, "-0.1"),
        ([float("nan")], 0.8, "nan"),
        ([0.2], 1.4, "1.4"),
        ([0.2], float("nan"), "nan"),
        ([i / 40 for i in range(1, 30)], 1.0, "29"),
    ],
)
def test_lines_that_do_not_fit_are_named_in_one_sentence(
    lines: list, horizon: float, word: str
) -> None:
    with pytest.raises(UsageError) as caught:
        bands_by_hand(lines, horizon)
    assert word in str(caught.value)
    assert "\n" not in str(caught.value)

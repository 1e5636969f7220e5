"""The painter's wheel: families, angles, complements, and readings near bounds and greys."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.colour import Munsell, hex_to_srgb, srgb_to_Lab
from core.reading.reading import read_colour
from core.reading.wheel import (
    CLOSE_SHARE,
    FAMILIES,
    FAMILY_SRGB,
    LOWER_BOUND,
    complement,
    family_of,
    hue_class,
    hue_of_wheel_deg,
    read_hue,
    wheel_deg,
    wheel_distance,
)

hues = st.floats(0, 100)

# The traditional painter's wheel (common practice).
COMPLEMENTS = [
    ("red", "green"),
    ("yellow", "violet"),
    ("blue", "orange"),
    ("red-orange", "blue-green"),
    ("yellow-orange", "blue-violet"),
    ("yellow-green", "red-violet"),
]


def turn(deg1, deg2):
    return abs((deg1 - deg2 + 180) % 360 - 180)


@pytest.mark.parametrize(("one", "other"), COMPLEMENTS)
def test_complements(one, other):
    assert complement(one) == other
    assert complement(other) == one
    assert wheel_distance(one, other) == 6


def test_classes():
    assert [f for f in FAMILIES if hue_class(f) == "primary"] == ["yellow", "red", "blue"]
    assert [f for f in FAMILIES if hue_class(f) == "secondary"] == ["orange", "violet", "green"]
    assert all("-" in f for f in FAMILIES if hue_class(f) == "tertiary")
    with pytest.raises(ValueError, match="brown"):
        hue_class("brown")


def test_neighbours_share_a_colour():
    """Every tertiary stands between the primary and the secondary it is named by or made of."""
    made_of = {"orange": {"red", "yellow"}, "green": {"blue", "yellow"}, "violet": {"red", "blue"}}
    for index, family in enumerate(FAMILIES):
        if hue_class(family) == "tertiary":
            beside = {FAMILIES[index - 1], FAMILIES[(index + 1) % 12]}
            assert beside == set(family.split("-"))
        if hue_class(family) == "secondary":
            beside = {FAMILIES[index - 2], FAMILIES[(index + 2) % 12]}
            assert beside == made_of[family]


def test_steps_between_families():
    assert wheel_distance("yellow", "yellow") == 0
    assert wheel_distance("yellow", "yellow-green") == 1
    assert wheel_distance("yellow-green", "yellow-orange") == 2


@given(hues)
def test_the_angle_lies_in_the_wedge_of_the_family(hue):
    centre = FAMILIES.index(family_of(hue)) * 30
    assert 0 <= wheel_deg(hue) < 360
    assert turn(wheel_deg(hue), centre) <= 15 + 1e-9


@given(hues, st.floats(0, 0.05))
def test_the_angle_has_no_jump(hue, step):
    # The narrowest family is 2.6 hundred-steps wide and has 30 degrees.
    assert turn(wheel_deg(hue), wheel_deg((hue + step) % 100)) <= step * 30 / 2.6 + 1e-6


@given(hues)
def test_the_angle_goes_round(hue):
    back = hue_of_wheel_deg(wheel_deg(hue))
    assert abs((back - hue + 50) % 100 - 50) < 1e-6


def test_the_seam():
    assert family_of(0) == family_of(100) == family_of(99.9) == "red-violet"
    assert wheel_deg(0) == pytest.approx(wheel_deg(100))
    assert turn(wheel_deg(0.001), wheel_deg(99.999)) < 0.01


def test_centres_stand_at_whole_steps():
    bounds = sorted(LOWER_BOUND.values())
    for family, start in LOWER_BOUND.items():
        end = next((b for b in bounds if b > start), bounds[0] + 100)
        assert wheel_deg((start + end) / 2 % 100) == pytest.approx(FAMILIES.index(family) * 30)


def test_near_a_bound_both_are_named():
    start, end = LOWER_BOUND["blue"], LOWER_BOUND["blue-violet"]
    width = end - start
    inside = CLOSE_SHARE * width
    assert read_hue(Munsell(start + inside - 0.01, 5, 6)).also == "blue-green"
    assert read_hue(Munsell(start + inside + 0.01, 5, 6)).also is None
    assert read_hue(Munsell(end - inside - 0.01, 5, 6)).also is None
    assert read_hue(Munsell(end - inside + 0.01, 5, 6)).also == "blue-violet"


@given(hues, st.floats(1.5, 20))
def test_the_neighbour_is_a_neighbour(hue, chroma):
    reading = read_hue(Munsell(hue, 5, chroma))
    assert reading.family is not None
    assert reading.neutral is reading.leaning is None
    assert reading.also is None or wheel_distance(reading.family, reading.also) == 1


@pytest.mark.parametrize(
    ("hue", "value", "chroma", "leaning", "neutral"),
    [
        (72.0, 5, 1.49, "blue", "grey"),
        (72.0, 8.5, 1.0, "blue", "white"),
        (72.0, 8.49, 1.0, "blue", "grey"),
        (72.0, 2.49, 1.0, "blue", "black"),
        (72.0, 2.5, 1.0, "blue", "grey"),
        (72.0, 5, 0.49, None, "grey"),
        (None, 10, 0.0, None, "white"),
        (None, 0, 0.0, None, "black"),
    ],
)
def test_near_neutrals(hue, value, chroma, leaning, neutral):
    reading = read_hue(Munsell(hue, value, chroma))
    assert (reading.family, reading.also, reading.hue_class) == (None, None, None)
    assert (reading.leaning, reading.neutral) == (leaning, neutral)
    assert (reading.wheel_deg is None) == (leaning is None)


@pytest.mark.parametrize("family", FAMILIES)
def test_wedges_are_drawn_in_their_own_hue(family):
    reading = read_colour(srgb_to_Lab(hex_to_srgb(FAMILY_SRGB[family])))
    assert reading.hue.family == family
    assert reading.hue.also is None
    assert reading.intensity_word in ("moderate", "intense")
    assert turn(reading.hue.wheel_deg, FAMILIES.index(family) * 30) <= 10

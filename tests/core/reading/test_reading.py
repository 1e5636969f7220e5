"""Reading a colour: the words of value and intensity, and where a marker stands."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.colour import hex_to_srgb, srgb_to_Lab
from core.reading.reading import (
    INTENSITY_RINGS,
    INTENSITY_WORDS,
    VALUE_WORDS,
    intensity_bounds,
    intensity_place,
    intensity_word,
    read_colour,
    read_colours,
    value_word,
)
from core.reading.wheel import FAMILIES, complement


def read(text):
    return read_colour(srgb_to_Lab(hex_to_srgb(text)))


@pytest.mark.parametrize(
    ("value", "word"),
    [
        (0, "very dark"),
        (2.49, "very dark"),
        (2.5, "dark"),
        (4.5, "middle"),
        (6.5, "light"),
        (8.49, "light"),
        (8.5, "very light"),
        (10, "very light"),
    ],
)
def test_value_words(value, word):
    assert value_word(value) == word


@given(st.floats(0, 10))
def test_intensity_words_rise_with_chroma(value):
    dull, moderate, intense = intensity_bounds(value)
    assert 0 < dull < moderate < intense
    words = [
        intensity_word(value, chroma)
        for chroma in (0, dull - 1e-9, dull, moderate - 1e-9, moderate, intense - 1e-9, intense, 30)
    ]
    assert words == [word for word in INTENSITY_WORDS for _ in range(2)]


def test_dark_colours_are_intense_at_a_lower_chroma():
    assert intensity_word(1.5, 6) == "intense"
    assert intensity_word(6, 6) == "moderate"


@given(st.floats(0, 10), st.floats(0, 40))
def test_a_marker_stands_in_the_ring_of_its_word(value, chroma):
    ring = INTENSITY_WORDS.index(intensity_word(value, chroma))
    place = intensity_place(value, chroma)
    assert INTENSITY_RINGS[ring] - 1e-9 <= place <= INTENSITY_RINGS[ring + 1] + 1e-9


def test_markers_move_outwards_with_chroma():
    places = [intensity_place(5, chroma) for chroma in np.linspace(0, 14, 50)]
    assert np.all(np.diff(places) > 0)


@given(st.tuples(st.floats(0, 100), st.floats(-150, 150), st.floats(-150, 150)))
def test_every_Lab_reads(Lab):
    reading = read_colour(Lab)
    assert reading.Lab == Lab
    assert reading.value_word in VALUE_WORDS
    assert reading.intensity_word in INTENSITY_WORDS
    assert all(0 <= channel <= 1 for channel in reading.srgb)
    assert (reading.hue.family is None) == (reading.intensity_word == "near neutral")
    own = reading.hue.family or reading.hue.leaning
    assert own is None or own in FAMILIES
    assert reading.complement == (None if own is None else complement(own))


def test_a_hex_goes_round():
    assert read("#87ceeb").hex == "#87ceeb"


def test_numbers_are_plain_so_that_they_compare_and_store():
    reading = read("#87ceeb")
    assert reading == read("#87ceeb")
    numbers = [*reading.srgb, *reading.Lab, reading.munsell.hue, reading.munsell.value]
    assert {type(number) for number in numbers} == {float}


def test_black_white_and_grey():
    for text, neutral in (("#000000", "black"), ("#ffffff", "white"), ("#808080", "grey")):
        reading = read(text)
        assert reading.hue.neutral == neutral
        assert reading.munsell.hue is None
        assert reading.complement is None


def test_many_read_as_each_alone():
    Lab = np.random.default_rng(2).random((9, 3)) * [100, 60, 60]
    for together, row in zip(read_colours(Lab), Lab, strict=True):
        alone = read_colour(row)
        # A sum of another length may round its last digit differently.
        assert together.srgb == pytest.approx(alone.srgb, abs=1e-12)
        assert together.munsell.notation == alone.munsell.notation
        assert together.hue.family == alone.hue.family
    assert read_colours(np.empty((0, 3))) == ()


def test_what_cannot_be_read_is_refused():
    with pytest.raises(ValueError, match="finite"):
        read_colour([50, np.nan, 0])
    with pytest.raises(ValueError, match=r"\(n, 3\)"):
        read_colours([50, 0, 0])

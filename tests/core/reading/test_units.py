"""Lengths in centimetres and in eighths of an inch."""

from __future__ import annotations

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.reading.units import MM_PER_INCH, length_number, length_text, size_text


@pytest.mark.parametrize(
    ("mm", "cm", "inches"),
    [
        (0, "0", "0"),
        (1, "0.1", "0"),
        (2, "0.2", "1/8"),
        (25.4, "2.5", "1"),
        (190, "19", "7 1/2"),
        (277, "27.7", "10 7/8"),
        (297, "29.7", "11 3/4"),
        (215.9, "21.6", "8 1/2"),
        (25.3, "2.5", "1"),
    ],
)
def test_lengths(mm, cm, inches) -> None:
    assert length_number(mm, "cm") == cm
    assert length_number(mm, "in") == inches


def test_units_stand_once() -> None:
    assert length_text(190, "cm") == "19 cm"
    assert size_text(277, 190, "cm") == "27.7 × 19 cm"
    assert size_text(277, 190, "in") == "10 7/8 × 7 1/2 in"


@given(st.floats(0, 2000))
def test_what_is_said_is_within_half_of_its_last_step(mm) -> None:
    assert abs(float(length_number(mm, "cm")) * 10 - mm) <= 0.5 + 1e-9
    inches = sum(Fraction(part) for part in length_number(mm, "in").split())
    assert abs(float(inches) * MM_PER_INCH - mm) <= MM_PER_INCH / 16 + 1e-9

"""A mix in parts, its strength, and what it looks like wet."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.paint.box.box import TWELVE_PAN
from core.paint.mixture.drying import DRYING_STEPS
from core.paint.mixture.mix import bare_paper, make_mix
from core.paint.mixture.strength import STRENGTHS, mix_half_load, strength_of
from core.paint.pigment.measured import FULL_LOAD_ML, paper_Lab
from core.paint.words.mix import parts_text, strength_note, strength_text
from core.paint.words.plan import strengths_text, wet_text


def test_a_common_factor_is_taken_out_and_zeros_dropped():
    mix = make_mix(TWELVE_PAN, {"crimson": 2, "ultramarine": 4, "sap_green": 0}, 0.003)
    assert mix.parts == (("ultramarine", 2), ("crimson", 1))
    assert mix.loads_ml == pytest.approx({"ultramarine": 0.002, "crimson": 0.001})
    assert mix.load_ml_per_unit == pytest.approx(0.001)
    assert mix.share("sap_green") == 0
    assert parts_text(TWELVE_PAN, mix) == "2 ultramarine : 1 crimson"


@pytest.mark.parametrize("parts", [{}, {"crimson": 0}, {"crimson": -1}, {"cobalt_blue": 1}])
def test_what_is_no_mix_is_refused(parts):
    with pytest.raises(ValueError, match=r"one part|not in the box"):
        make_mix(TWELVE_PAN, parts, 0.001)


def test_loads_are_clamped_to_what_was_measured():
    assert make_mix(TWELVE_PAN, {"crimson": 1}, 5).load_ml == FULL_LOAD_ML
    assert make_mix(TWELVE_PAN, {"crimson": 1}, -5).Lab == pytest.approx(paper_Lab(), abs=1e-9)


def test_bare_paper():
    assert bare_paper().Lab == paper_Lab()
    assert strength_of(TWELVE_PAN, bare_paper()) == "paper"
    assert parts_text(TWELVE_PAN, bare_paper()) == "bare paper"


PARTS = {"ultramarine": 3, "warm_red": 1}


@given(st.floats(1e-6, FULL_LOAD_ML), st.floats(1.0, 50.0))
def test_strength_never_falls_as_the_load_rises(load, times):
    weak = strength_of(TWELVE_PAN, make_mix(TWELVE_PAN, PARTS, load))
    strong = strength_of(TWELVE_PAN, make_mix(TWELVE_PAN, PARTS, load * times))
    assert STRENGTHS.index(strong) >= STRENGTHS.index(weak)


@pytest.mark.parametrize("paint", ["ultramarine", "crimson", "prussian_blue", "mid_yellow"])
def test_every_strength_is_reached_and_is_lighter_than_the_next(paint):
    half = mix_half_load(TWELVE_PAN, {paint: 1})
    mixes = [make_mix(TWELVE_PAN, {paint: 1}, half * times) for times in np.geomspace(0.1, 40, 60)]
    values: dict[str, list[float]] = {}
    for mix in mixes:
        values.setdefault(strength_of(TWELVE_PAN, mix), []).append(mix.Lab[0])
    assert tuple(values) == STRENGTHS[1:]
    lightest = [max(found) for found in values.values()]
    assert lightest == sorted(lightest, reverse=True)


@pytest.mark.parametrize(
    ("value", "words"),
    [(8.6, {"weak tea", "tea"}), (7.3, {"tea", "coffee"}), (3.5, {"milk", "cream"})],
)
def test_pale_blue_washes_are_tea_and_dark_ones_milk(value, words):
    half = mix_half_load(TWELVE_PAN, {"ultramarine": 1})
    loads = np.geomspace(half / 20, half * 60, 400)
    mixes = [make_mix(TWELVE_PAN, {"ultramarine": 1}, load) for load in loads]
    nearest = min(mixes, key=lambda mix: abs(mix.Lab[0] - value * 10))
    assert strength_of(TWELVE_PAN, nearest) in words


def test_strengths_are_explained_in_water():
    assert strength_text("milk") == "milk strength"
    assert strength_note("paper") == ""
    text = strengths_text(["milk", "tea", "paper", "tea"])
    assert text.index("tea is 1 part paint") < text.index("milk 1 to ")
    assert strengths_text(["paper"]) == ""


def test_wet_looks_darker_by_the_setting():
    assert wet_text(0) == ""
    assert "a quarter of a value step" in wet_text(DRYING_STEPS)
    assert "half a value step" in wet_text(0.5)

"""Gaps, verdicts and scores: monotone, loose near grey, widened where the light was not undone."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from core.colour import srgb_to_Lab
from core.reading.quality import QUALITIES
from core.reading.reading import BandReading, read_colour
from core.sheet.findings.compare import compare_bands
from core.sheet.findings.scores import nearest_meaning, score_of_gap
from core.sheet.findings.words import score_meaning


def band(rgb: tuple[int, int, int]) -> BandReading:
    colour = read_colour(srgb_to_Lab(np.array(rgb) / 255))
    return BandReading("A", 0.0, 1.0, colour, colour, colour, colour, 0.0, False, 0.0, 1.0)


def compared(one, other, **how):
    how = {"scan": False, "corrected": True, "sides": True} | how
    return compare_bands((band(one),), (band(other),), **how)[0]


@given(st.floats(0, 20), st.floats(0, 20))
def test_a_smaller_gap_never_scores_less(one, other):
    near, far = sorted((one, other))
    assert 1 <= score_of_gap(far) <= score_of_gap(near) <= 10


def test_the_anchors():
    assert [score_of_gap(gap) for gap in (0.0, 1.0, 2.0, 4.0, 8.0, 50.0)] == [10, 10, 7, 4, 1, 1]


@pytest.mark.parametrize("quality", QUALITIES)
def test_every_anchor_has_words(quality):
    words = {score_meaning(quality, score) for score in (10, 7, 4, 1)}
    assert len(words) == 4
    assert nearest_meaning(quality, 10.0) == score_meaning(quality, 10)
    # The words of 10 speak of every band: one band further off, and they would not be true.
    assert nearest_meaning(quality, 9.1) == score_meaning(quality, 7)
    with pytest.raises(ValueError, match="10, 7, 4 and 1"):
        score_meaning(quality, 5)


def test_the_same_colour_matches():
    check = compared((90, 130, 200), (90, 130, 200))
    assert (check.hue, check.value, check.intensity, check.overall) == ("matches",) * 4
    assert check.remark == ""


def test_two_steps_of_value_are_off():
    check = compared((90, 130, 200), (130, 172, 240))
    assert check.value == "off"
    assert check.whole.value_steps > 1
    assert "lighter" in check.remark


def test_greys_have_no_hue_to_compare():
    check = compared((150, 150, 152), (150, 152, 150))
    assert check.whole.hue_steps is None
    assert check.hue == "matches"
    assert compared((150, 150, 152), (90, 130, 200)).hue == "cannot tell"


def test_a_hue_means_less_near_grey():
    pale = compared((200, 205, 225), (208, 202, 226))
    strong = compared((60, 80, 190), (110, 60, 190))
    assert pale.hue in ("matches", "close")
    assert strong.hue_gap > pale.hue_gap


def test_an_uncorrected_photo_claims_less():
    one, other = (90, 130, 200), (104, 145, 214)
    tight, loose = compared(one, other), compared(one, other, corrected=False)
    assert loose.value_gap < tight.value_gap


def test_a_photo_claims_nothing_below_five_where_a_scan_may():
    one, other = (90, 130, 200), (98, 139, 208)
    assert compared(one, other).whole.delta_E_2000 < 5
    assert compared(one, other).value == "matches"
    assert compared(one, other, scan=True).value_gap >= compared(one, other).value_gap


def test_sides_stay_unsaid_when_asked():
    assert compared((90, 130, 200), (90, 130, 200), sides=False).left is None

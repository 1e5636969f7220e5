"""The tone-down ladder, the toners compared, and the blues side by side."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest
from paint_tools import colour, sky, sky_plan

import sample_scenes
from core.paint.box.box import THIRTEEN, TWELVE_PAN
from core.paint.choice.alternatives import main_group
from core.paint.choice.faults import compare_group, one_part_more
from core.paint.mixture.mix import make_mix
from core.paint.pigment.measured import load_Lab
from core.paint.toning.tone_down import FRACTIONS, tone_down_ladder, toned_Lab
from core.paint.toning.toners import compare_toners, toners, true_complement, try_toners
from core.paint.words.plan import drift_text, ladder_text, ladder_title
from core.paint.words.tone import toners_text

ORANGE = make_mix(THIRTEEN, {"cadmium_red": 1, "cadmium_yellow": 1}, 0.004)


def test_the_fractions_are_shares_of_all_paint():
    assert [str(f) for f in FRACTIONS] == ["0", "1/20", "1/10", "1/5", "1/3"]
    loads = dict(ORANGE.loads_ml)
    loads["cerulean_blue"] = ORANGE.load_ml / 9  # one part to nine
    expected = load_Lab(THIRTEEN.load_vector(loads))
    found = toned_Lab(THIRTEEN, ORANGE, {"cerulean_blue": 1}, [0.1])[0]
    np.testing.assert_allclose(found, expected, atol=1e-9)
    np.testing.assert_allclose(
        toned_Lab(THIRTEEN, ORANGE, {"cerulean_blue": 1}, [0.0])[0], ORANGE.Lab, atol=1e-9
    )


def test_intensity_falls_along_the_ladder():
    ladder = tone_down_ladder(THIRTEEN, ORANGE, {"cerulean_blue": 1})
    chroma = [step.colour.munsell.chroma for step in ladder.steps]
    assert chroma == sorted(chroma, reverse=True)
    assert ladder.steps[-1].value_drift < 0
    assert ladder.matched is None
    assert ladder.complement is not None


@pytest.mark.parametrize("name", sample_scenes.names())
def test_notes_of_a_ladder_come_in_order(name):
    """More intense, then the match, then too dull, then mud: never back."""
    rank = {"more intense": 0, "matches": 1, "nearest": 1, "mix": 1, "duller": 2, "mud": 3}
    for band in sky_plan(name).bands:
        ladder = band.tone_down
        if ladder is None or ladder.matched is None:
            continue
        ranks = [rank[step.note] for step in ladder.steps]
        assert ranks == sorted(ranks)
        assert ladder.steps[ladder.matched].note in ("matches", "nearest", "mix")


def test_the_matched_step_is_the_one_the_mix_uses():
    """3 crimson : 1 warm red : 1 sap green is a fifth sap green: the ladder marks 1/5."""
    band = sky_plan("dusk").band("D")
    share = band.classroom.toner_share
    fraction = band.tone_down.steps[band.tone_down.matched].fraction
    assert fraction == share


def test_mud_is_said_where_the_hue_is_gone():
    blue = make_mix(TWELVE_PAN, {"ultramarine": 1}, 0.002)
    ladder = tone_down_ladder(TWELVE_PAN, blue, {"warm_red": 1}, blue.colour)
    assert ladder.steps[0].note == "matches"
    assert ladder.steps[-1].note in ("mud", "duller")
    grey = tone_down_ladder(TWELVE_PAN, blue, {"warm_red": 1}, colour("#808080"))
    assert all(step.note != "mud" for step in grey.steps)


def test_ladder_in_words():
    band = sky_plan("dusk").band("D")
    text = ladder_text(TWELVE_PAN, band.tone_down, "D")
    assert text.startswith("Toning down with sap green (near the complement, green): ")
    assert text.endswith("1 part in 5 matches D; 1 in 10 is still too intense, 1 in 3 too dull.")
    intense = sky_plan("ember").band("C")
    assert ladder_text(TWELVE_PAN, intense.tone_down, "C").endswith(
        ": none is needed; 1 part in 10 is already too dull."
    )
    assert "the true complement is" in ladder_title(
        TWELVE_PAN, tone_down_ladder(TWELVE_PAN, ORANGE_SCHOOL, {"sap_green": 1}, ORANGE_TARGET)
    )
    last = tone_down_ladder(THIRTEEN, ORANGE, {"prussian_blue": 1}).steps[-1]
    assert "darker" in drift_text(last)


ORANGE_SCHOOL = make_mix(TWELVE_PAN, {"warm_red": 1, "mid_yellow": 1}, 0.002)
ORANGE_TARGET = sky("dusk")[4].colour


def test_toners_are_ranked_by_the_complement():
    best = toners(TWELVE_PAN, ORANGE_SCHOOL, ORANGE_TARGET.hue.wheel_deg)
    assert best[0].parts == (("cerulean_blue", 1),)
    red = make_mix(TWELVE_PAN, {"crimson": 3, "warm_red": 1}, 0.002)
    assert toners(TWELVE_PAN, red, 120.0)[0].parts == (("sap_green", 1),)
    black = make_mix(THIRTEEN, {"ivory_black": 1}, 0.1)
    assert isinstance(toners(THIRTEEN, black), tuple)


def test_the_true_complement_beside_the_boxs_green():
    """Red-orange: blue-green from two paints, and the bought green nearly as good (DESIGN)."""
    red_orange = make_mix(THIRTEEN, {"cadmium_red": 1, "cadmium_yellow": 1}, 0.002)
    mixed = true_complement(THIRTEEN, red_orange)
    assert mixed is not None
    ladder = tone_down_ladder(THIRTEEN, red_orange, {"cerulean_blue": 1}, red_orange.colour)
    assert ladder.complement == "blue-green"
    tried = compare_toners(THIRTEEN, ladder)
    assert (("sap_green", 1),) in [item.parts for item in tried]
    assert any(len(item.parts) == 2 for item in tried)
    text = toners_text(THIRTEEN, tried)
    assert " halves the intensity at 1 part in " in text
    assert "sap green" in text
    assert toners_text(THIRTEEN, tried[:1]) == ""


def test_a_toners_half_is_where_half_the_chroma_is_gone():
    tried = try_toners(THIRTEEN, ORANGE, [{"cobalt_blue": 1}])[0]
    shares = [0, tried.halves_at - 0.02, tried.halves_at]  # tried in steps of a fiftieth
    Lab = toned_Lab(THIRTEEN, ORANGE, {"cobalt_blue": 1}, shares)
    chroma = np.hypot(Lab[:, 1], Lab[:, 2])
    assert chroma[1] > chroma[0] / 2 >= chroma[2]


def test_blues_side_by_side():
    band = sky_plan("fell", THIRTEEN).band("A")
    assert main_group(THIRTEEN, band.classroom.mix) == "blue"
    compared = compare_group(THIRTEEN, "blue", band.target, band.classroom.mix)
    assert {item.paint for item in compared} == {
        paint.key for paint in THIRTEEN.paints if paint.group == "blue"
    }
    gaps = [item.delta_E_2000 for item in compared]
    assert gaps == sorted(gaps)
    for item in compared:
        assert item.paint in item.mix.keys
        if item.verdict == "off":
            assert item.faults or item.too
    assert compare_group(THIRTEEN, "violet", band.target) == ()


def test_one_part_too_much_tells_more_of_a_strong_paint():
    """Common practice: a drop too much prussian shows, where cerulean forgives."""
    touchy = make_mix(THIRTEEN, {"prussian_blue": 1, "lemon_yellow": 4}, 0.003)
    gentle = make_mix(THIRTEEN, {"cerulean_blue": 1, "lemon_yellow": 4}, 0.003)
    assert one_part_more(THIRTEEN, touchy, "prussian_blue") > one_part_more(
        THIRTEEN, gentle, "cerulean_blue"
    )
    assert one_part_more(THIRTEEN, gentle, "crimson") == 0.0
    assert Fraction(1, 20) in FRACTIONS

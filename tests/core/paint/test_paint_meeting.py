"""Where two washes meet on the wet sheet, and what the photo shows there."""

from __future__ import annotations

import numpy as np
import pytest
from paint_tools import sky_plan

import sample_scenes
from core.paint.box.box import THIRTEEN
from core.paint.mixture.mix import bare_paper, make_mix
from core.paint.mixture.transition import STRIPS, sample_transitions
from core.paint.pigment.measured import paper_Lab
from core.paint.wash.meeting import MUD_CHROMA, meet
from core.paint.words.plan import meeting_text

YELLOW = make_mix(THIRTEEN, {"cadmium_yellow": 1}, 0.001)
LEMON = make_mix(THIRTEEN, {"lemon_yellow": 1}, 0.004)
CERULEAN = make_mix(THIRTEEN, {"cerulean_blue": 1}, 0.004)
ORANGE = make_mix(THIRTEEN, {"cadmium_red": 1, "cadmium_yellow": 1}, 0.002)
BLUE = make_mix(THIRTEEN, {"ultramarine": 1}, 0.001)


def test_the_path_begins_and_ends_with_the_two_washes():
    met = meet(THIRTEEN, YELLOW, BLUE)
    np.testing.assert_allclose(met.path[0], YELLOW.Lab, atol=1e-9)
    np.testing.assert_allclose(met.path[-1], BLUE.Lab, atol=1e-9)
    assert all(one != other for one, other in zip(met.families[:-1], met.families[1:], strict=True))


def test_yellow_and_blue_run_through_green():
    met = meet(THIRTEEN, LEMON, CERULEAN)
    assert "green" in met.families
    assert met.lowest_chroma > MUD_CHROMA


def test_the_photo_decides_whether_the_new_hue_is_wanted():
    green = [LEMON.Lab, make_mix(THIRTEEN, {"sap_green": 1}, 0.001).Lab, CERULEAN.Lab]
    has = meet(THIRTEEN, LEMON, CERULEAN, green)
    assert has.note == "photo has it"
    assert "needs no mix of its own" in meeting_text("A", "B", has)
    lacks = meet(THIRTEEN, LEMON, CERULEAN, [LEMON.Lab, paper_Lab(), CERULEAN.Lab])
    assert lacks.note == "photo lacks it"
    assert lacks.photo_agrees is True
    assert "clean water between" in meeting_text("A", "B", lacks)


def test_complements_meet_in_mud_below_chroma_two():
    met = meet(THIRTEEN, ORANGE, BLUE)
    assert met.lowest_chroma < MUD_CHROMA
    assert met.note == "mud"
    assert "mud" in meeting_text("A", "B", met)
    assert "Leave a strip of clean water between." in meeting_text("A", "B", met)
    grey = meet(THIRTEEN, ORANGE, BLUE, [ORANGE.Lab, (60.0, 0.0, 0.0), BLUE.Lab])
    assert grey.note == "grey in photo too"


def test_one_wash_thinned_keeps_its_hue():
    thin = make_mix(THIRTEEN, {"ultramarine": 1}, 0.0007)
    met = meet(THIRTEEN, BLUE, thin, [BLUE.Lab, thin.Lab])
    assert met.note == "one hue"
    assert not met.happens
    assert meeting_text("A", "B", met) == "A runs into B: blue all the way."


def test_a_wash_meets_bare_paper():
    met = meet(THIRTEEN, BLUE, bare_paper())
    assert met.note == "paper"
    assert "white paper" in meeting_text("A", "B", met)


@pytest.mark.parametrize("name", sample_scenes.names())
def test_mud_warnings_are_the_ones_below_chroma_two(name):
    plan = sky_plan(name)
    for one, other in zip(plan.bands[:-1], plan.bands[1:], strict=True):
        met = one.meets_below
        clear = min(band.classroom.mix.colour.munsell.chroma for band in (one, other)) >= MUD_CHROMA
        assert (met.note == "mud") == (met.lowest_chroma < MUD_CHROMA and clear)
        assert meeting_text(one.letter, other.letter, met).endswith(".")


def test_transitions_are_sampled_from_middle_to_middle():
    ramp = np.repeat(np.linspace(0, 255, 200).astype(np.uint8)[:, None], 30, axis=1)
    pixels = np.stack([ramp] * 3, axis=-1)
    found = sample_transitions(pixels, (0.0, 0.5, 1.0))
    assert len(found) == 1
    L = [Lab[0] for Lab in found[0]]
    assert len(L) == STRIPS
    assert sorted(L) == L
    nothing = sample_transitions(pixels, (0.0, 0.5, 1.0), np.zeros(pixels.shape[:2], bool))
    assert nothing == (None,)
    assert sample_transitions(pixels, (0.0, 1.0)) == ()

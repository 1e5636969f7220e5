"""Whole plans: what they hold, what a teacher may ask, and what they say honestly."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest
from paint_tools import bands, colour, lab, sky, sky_plan

import sample_scenes
from core.errors import BoxError
from core.paint.box.box import SPLIT_PRIMARY, THIRTEEN, TWELVE_PAN, Box
from core.paint.mixture.mix import make_mix
from core.paint.options import BandChoice, MixOptions
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.measured import paper_Lab
from core.paint.plan import plan_mixes
from core.paint.wash.amounts import LEAST_ML, SHEETS
from core.paint.words.mix import band_reach_text, shortfall_text
from core.paint.words.tone_sentence import planned_toning
from core.progress import Cancelled
from core.reading.wording import Wording
from core.words import tone_down_sentence

SKIES = sample_scenes.names()


def asked(letter="A", **wish):
    return MixOptions().with_choice(letter, BandChoice(**wish))


@pytest.mark.parametrize("name", SKIES)
def test_a_plan_holds_everything_for_every_band(name):
    plan = sky_plan(name)
    for number, band in enumerate(plan.bands):
        assert band.classroom is not None
        assert band.amount_ml >= LEAST_ML
        assert band.classroom.why
        last = number == len(plan.bands) - 1
        assert (band.meets_below is None) == last
        assert len(band.alternatives) <= 3
        for item in band.alternatives:
            assert item.reasons
            assert set(item.planned.mix.keys) != set(band.classroom.mix.keys)
        if band.closest is not None:
            assert band.closest.delta_E_2000 < band.classroom.delta_E_2000 - 1.5
    assert plan.amounts.total_ml == sum(band.amount_ml for band in plan.bands)


def test_a_blue_sky_is_one_mix_thinned():
    """What every teacher writes: one puddle of ultramarine and burnt sienna, more water below."""
    plan = sky_plan("fell")
    assert plan.order.kind == "graded"
    assert {band.classroom.mix.parts for band in plan.bands} == {
        (("ultramarine", 5), ("burnt_sienna", 1))
    }
    loads = [band.classroom.mix.load_ml for band in plan.bands]
    assert loads == sorted(loads, reverse=True)
    assert [r.code for band in plan.bands[1:] for r in band.classroom.why] == [
        "same mix thinner"
    ] * 3
    lay = next(step for step in plan.order.steps if step.stage == "lay")
    assert lay.letters == ("A", "B", "C", "D")
    assert lay.thinning
    assert not plan.order.turn_sheet


def test_the_sunset_is_toned_with_complements():
    """Red with the box's green, orange with a blue; violets from crimson and ultramarine."""
    plan = sky_plan("dusk")
    assert plan.band("D").classroom.toners == ("sap_green",)
    assert plan.band("E").classroom.toners == ("cerulean_blue",)
    for letter in "AB":
        assert set(plan.band(letter).classroom.mix.keys) == {"crimson", "ultramarine"}
    assert plan.order.turn_sheet


def test_pinned_and_forbidden_paints():
    readings = sky("dusk")
    pinned = plan_mixes(readings, TWELVE_PAN, asked("D", pinned=("burnt_sienna",)))
    assert "burnt_sienna" in pinned.band("D").classroom.mix.keys
    forbidden = plan_mixes(readings, TWELVE_PAN, asked("D", forbidden=("sap_green",)))
    band = forbidden.band("D")
    shown = [band.classroom, band.closest, *(item.planned for item in band.alternatives)]
    assert not any("sap_green" in planned.mix.keys for planned in shown if planned)
    nowhere = plan_mixes(readings, TWELVE_PAN, MixOptions(forbidden=("crimson",)))
    for band in nowhere.bands:
        assert "crimson" not in band.classroom.mix.keys


def test_a_paint_left_out_is_not_proposed_as_toner_either():
    readings = sky("dusk")
    before = plan_mixes(readings, TWELVE_PAN).band("A").tone_down
    toner = before.toner[0][0]
    after = plan_mixes(readings, TWELVE_PAN, MixOptions(forbidden=(toner,))).band("A").tone_down
    assert after.base.parts == before.base.parts
    assert after.toner != before.toner


def test_other_bands_are_searched_as_before_when_one_wish_changes():
    readings = sky("dusk")
    before = plan_mixes(readings, TWELVE_PAN)
    after = plan_mixes(readings, TWELVE_PAN, asked("E", forbidden=("cerulean_blue",)))
    assert after.band("A").classroom == before.band("A").classroom
    assert after.band("E").classroom != before.band("E").classroom


def test_parts_set_by_hand_are_kept_and_judged():
    parts = (("crimson", 4), ("ultramarine", 2))
    plan = plan_mixes(sky("dusk"), TWELVE_PAN, asked("B", parts=parts))
    planned = plan.band("B").classroom
    assert planned.kind == "by hand"
    assert planned.mix.parts == (("ultramarine", 1), ("crimson", 2))
    fixed = plan_mixes(sky("dusk"), TWELVE_PAN, asked("B", parts=parts, load_ml=0.002))
    assert fixed.band("B").classroom.mix.load_ml == pytest.approx(0.002)
    assert fixed.band("B").classroom.delta_E_2000 >= planned.delta_E_2000 - 1e-6


def test_white_only_on_request():
    pale = [lab(90, 2, -12), lab(85, 14, 4)]
    for box in (TWELVE_PAN, THIRTEEN):
        plan = plan_mixes(bands(pale), box)
        used = {
            key for b in plan.bands for p in (b.classroom, b.closest) if p for key in p.mix.keys
        }
        assert not any(box.paint(key).group == "white" for key in used)
    asked_for = plan_mixes(
        bands(pale),
        TWELVE_PAN,
        MixOptions(allow_white=True).with_choice(
            "A", BandChoice(parts=(("ultramarine", 1), ("white", 6)))
        ),
    )
    assert "white" in asked_for.band("A").classroom.mix.keys


@pytest.mark.parametrize(
    ("choice", "says"),
    [
        ({"pinned": ("cobalt_blue",)}, "cobalt blue is not in this box"),
        ({"parts": (("cobalt_blue", 1),)}, "cobalt blue is not in this box"),
        ({"parts": (("crimson", 0),)}, "at least one part"),
        ({"forbidden": TWELVE_PAN.keys}, "No paint is left"),
        (
            {"pinned": ("crimson", "sap_green", "ultramarine", "black")},
            "pin up to three",
        ),
    ],
)
def test_wishes_that_cannot_be_met_are_said_in_one_sentence(choice, says):
    with pytest.raises(BoxError, match=says):
        plan_mixes(sky("dusk"), TWELVE_PAN, asked("A", **choice))


def test_unreachable_bands_say_so():
    plan = plan_mixes(bands([colour("#ff2fd0"), colour("#00ff40")]), TWELVE_PAN)
    assert [band.reach for band in plan.bands] == ["too intense", "too intense"]
    only_blue = Box("one", (CATALOGUE["ultramarine"],))
    assert plan_mixes(bands([lab(55, 0, 0)]), only_blue).band("A").reach == "too dull"
    assert plan_mixes(bands([lab(3, 0, 0)]), only_blue).band("A").reach == "too dark"
    bright = plan_mixes(bands([lab(97, -5, 25)]), SPLIT_PRIMARY).band("A")
    assert bright.reach in ("too light", "reached")


def test_a_box_without_neighbours_of_the_hue_says_so():
    reds = Box("reds", (CATALOGUE["crimson"], CATALOGUE["warm_red"]))
    band = plan_mixes(bands([colour("#3fae5f")]), reds).band("A")
    assert band.classroom.lacks == ("yellow", "blue")
    assert band.reach == "lacks"
    assert shortfall_text(band.classroom) == "no yellow and no blue in this box"
    text = "This box has no yellow and no blue: the nearest is shown."
    assert band_reach_text(band) == text


def test_what_is_as_white_as_paper_stays_paper():
    plan = plan_mixes(bands([lab(*paper_Lab()), lab(99, 0, 0), lab(60, 5, -30)]), TWELVE_PAN)
    for letter in "AB":
        band = plan.band(letter)
        assert band.classroom.kind == "paper"
        assert band.amount_ml == 0
        assert band.tone_down is None
    assert plan.band("B").meets_below.note == "paper"
    assert [s.letters for s in plan.order.steps if s.stage == "lay"] == [("C",)]
    assert [s.letters for s in plan.order.steps if s.stage == "leave"] == [("A", "B")]
    alone = plan_mixes(bands([lab(99, 0, 0)]), TWELVE_PAN)
    assert alone.order.kind == "none"
    assert alone.amounts.total_ml == 0


def test_a_band_without_sky_is_left_out():
    plan = plan_mixes(bands([colour("#6f8fc0"), None, colour("#d09a70")]), TWELVE_PAN)
    assert plan.band("B").target is None
    assert plan.band("A").meets_below is None
    assert all("B" not in step.letters for step in plan.order.steps)
    assert plan_mixes([], TWELVE_PAN).bands == ()


def test_cautions_name_only_paints_of_the_mixes_shown_as_chosen():
    plan = plan_mixes(sky("dusk"), THIRTEEN)
    named = {caution.paint for caution in plan.cautions}
    used = {key for band in plan.bands for key in band.classroom.mix.keys}
    assert named == {paint.key for paint in THIRTEEN.paints if paint.lists} & used
    none = Box("none", tuple(p for p in TWELVE_PAN.paints if not p.lists))
    assert plan_mixes(sky("dusk"), none).cautions == ()


def test_planning_can_be_stopped():
    with pytest.raises(Cancelled):
        plan_mixes(sky("pines"), TWELVE_PAN, should_stop=lambda: True)


def test_sheet_and_own_figure_reach_the_amounts():
    small = plan_mixes(sky("fell"), TWELVE_PAN, MixOptions(sheet=SHEETS["A3"]))
    more = plan_mixes(
        sky("fell"), TWELVE_PAN, MixOptions(sheet=SHEETS["A3"], own_ml_per_1000_cm2=13.0)
    )
    assert more.amounts.total_ml > 1.8 * small.amounts.total_ml
    assert more.amounts.own_figure


def test_the_sentence_of_toning_is_taken_from_the_plan():
    band = sky_plan("dusk").band("D")
    toning = planned_toning(TWELVE_PAN, band)
    assert (toning.kind, toning.toner, toning.parts, toning.whole) == ("toned", "sap green", 1, 5)
    sentence = tone_down_sentence(band.target, Wording(), toning)
    assert sentence.endswith("about 1 part sap green in 5.")


def test_toning_of_paper_greys_and_empty_bands():
    paper = plan_mixes(bands([lab(99, 0, 0)]), TWELVE_PAN).band("A")
    assert planned_toning(TWELVE_PAN, paper).kind == "paper"
    assert planned_toning(TWELVE_PAN, sky_plan("marsh").band("A")).kind == "greys"
    empty = plan_mixes(bands([None]), TWELVE_PAN).band("A")
    assert planned_toning(TWELVE_PAN, empty) is None


def test_parts_set_by_hand_are_toned_by_the_paint_across():
    parts = (("ultramarine", 5), ("burnt_sienna", 1))
    wish = MixOptions().with_choice("A", BandChoice(parts=parts))
    band = plan_mixes(sky("fell"), TWELVE_PAN, wish).band("A")
    toning = planned_toning(TWELVE_PAN, band)
    assert (toning.kind, toning.toner, toning.whole) == ("toned", "burnt sienna", 6)
    alone = MixOptions().with_choice("A", BandChoice(parts=(("ultramarine", 1),)))
    band = plan_mixes(sky("fell"), TWELVE_PAN, alone).band("A")
    toning = planned_toning(TWELVE_PAN, band)  # too intense by itself: the ladder says so too
    assert toning.kind == "speck"
    step = band.tone_down.steps[band.tone_down.matched]
    assert step.fraction == Fraction(toning.parts, toning.whole)


def test_colours_of_a_plan_are_those_of_its_parts():
    for band in sky_plan("pines").bands:
        mix = band.classroom.mix
        again = make_mix(TWELVE_PAN, dict(mix.parts), mix.load_ml)
        np.testing.assert_allclose(again.Lab, mix.Lab, atol=1e-9)

"""Plans make sense read aloud: nothing praised over the choice, nothing offered without a word.

Each rule is held over the sample scenes and over skies read from photographs, in every box.
"""

from __future__ import annotations

import re
from functools import cache
from itertools import pairwise

import numpy as np
import pytest
from paint_tools import bands, lab, sky, sky_plan

import sample_scenes
from core.paint.box.box import SPLIT_PRIMARY, THIRTEEN, TWELVE_PAN
from core.paint.choice.band_plan import CLEARLY_CLOSER
from core.paint.choice.band_ways import ways_for
from core.paint.mixture.mix import make_mix
from core.paint.options import BandChoice, MixOptions
from core.paint.plan import plan_mixes
from core.paint.reasons import MERITS
from core.paint.wash.amounts import SHEETS
from core.paint.wash.order import order_of_work
from core.paint.words.amounts import amount_of_it_text, step_share_text, wet_text
from core.paint.words.mix import (
    alternative_text,
    closest_text,
    reach_text,
    shortfall_text,
    why_text,
)
from core.paint.words.plan import ladder_text, order_texts

READ = {
    "clouds over blue": [(41.7, 2.2, -36.6), (34.6, 4.9, -36.6), (26.3, 9.3, -38.8)],
    "blue mist": [(50.8, -0.9, -29.8), (45.0, 0.2, -30.7), (38.7, 1.3, -31.1)],
    "pink dusk": [
        (45.8, 20.5, -42.4),
        (57.6, 18.4, -34.4),
        (69.7, 17.1, -23.5),
        (80.5, 15.7, -7.4),
    ],
    "lake at evening": [
        (48.2, 4.0, -21.0),
        (42.3, 6.1, 1.6),
        (59.7, 15.4, 28.2),
        (77.9, 9.3, 48.2),
    ],
    "white": [(96.8, -2.6, -3.6)],
}
"""CIELAB of the bands of five photographs, from the top down."""

BOXES = (TWELVE_PAN, SPLIT_PRIMARY, THIRTEEN)


def made_up():
    """Skies that nobody drew: from one colour at the top to another at the bottom."""
    rng = np.random.default_rng(11)
    for number in range(14):
        top = rng.uniform((25, -20, -40), (85, 25, 10))
        bottom = rng.uniform((50, -10, -15), (95, 35, 55))
        shares = np.linspace(0, 1, 1 + number % 4)
        yield f"made up {number}", [tuple(top + (bottom - top) * share) for share in shares]


def plans():
    """Every sky in every box, with its name."""
    for box in BOXES:
        for name in sample_scenes.names():
            yield f"{name}, {box.name}", sky_plan(name, box)
        for name, colours in [*READ.items(), *made_up()]:
            yield f"{name}, {box.name}", plan_mixes(bands([lab(*c) for c in colours]), box)


@cache
def all_plans():
    """Planned once, when the first test asks: collecting the tests costs nothing."""
    return dict(plans())


@cache
def all_bands():
    return [(f"{name}, {b.letter}", p, b) for name, p in all_plans().items() for b in p.bands]


def offered():
    for where, plan, band in all_bands():
        for item in band.alternatives:
            if item.prefer:
                yield where, plan, band, item


def test_no_alternative_is_only_praised():
    """What is better by every word said of it would have to be the choice."""
    found = list(offered())
    assert len(found) > 40
    for where, _, _, item in found:
        codes = {reason.code for reason in item.reasons}
        assert codes & MERITS, where
        assert codes - MERITS, where


def test_what_is_said_of_an_alternative_is_so():
    for where, plan, band, item in offered():
        own, other = band.classroom, item.planned
        at = plan.bands.index(band)
        beside = [b.classroom for b in plan.bands[max(at - 1, 0) : at + 2] if b.classroom]
        known = {key for planned in beside for key in planned.mix.keys}
        for reason in item.reasons:
            says = {
                "closer": other.delta_E_2000 < own.delta_E_2000,
                "further": other.delta_E_2000 > own.delta_E_2000,
                "fewer paints": len(other.mix.parts) < len(own.mix.parts),
                "more paints": len(other.mix.parts) > len(own.mix.parts),
                "fewer parts": other.mix.total < own.mix.total,
                "more parts": other.mix.total > own.mix.total,
                "forgiving": other.mix.total <= own.mix.total,
                "new paint": not known & set(reason.paints),
                "not shared": all(
                    plan.band(letter).classroom.mix.parts == own.mix.parts
                    for letter in reason.letters
                )
                and band.letter in reason.letters,
                "stains": any(plan.box.paint(key).is_strong for key in reason.paints),
            }
            assert says.get(reason.code, True), (where, reason)
            assert set(reason.paints) <= set(other.mix.keys), (where, reason)


def test_no_paint_is_warned_of_twice_in_a_sentence():
    for where, _, _, item in offered():
        warned = [r.paints for r in item.reasons if r.code not in MERITS and r.paints]
        assert len(warned) == len(set(warned)), where


def test_an_alternative_opens_two_more_paints_only_to_come_nearer():
    for where, plan, band, item in offered():
        at = plan.bands.index(band)
        beside = [b.classroom for b in plan.bands[max(at - 1, 0) : at + 2] if b.classroom]
        known = {key for planned in beside for key in planned.mix.keys}
        if len(set(item.planned.mix.keys) - known) > 1:
            assert item.reasons[0].code == "closer", where


def test_a_closer_mix_says_what_is_odd_about_it():
    found = [(where, plan, band) for where, plan, band in all_bands() if band.closest is not None]
    assert len(found) > 20
    for where, plan, band in found:
        gained = band.classroom.delta_E_2000 - band.closest.delta_E_2000
        assert gained > CLEARLY_CLOSER, where
        assert ", but " in closest_text(plan.box, band.closest), where


def test_a_closer_mix_is_shown_only_where_the_eye_would_see_what_it_gains():
    shown = 0
    for where, _, band in all_bands():
        own = band.classroom
        if own.verdict == "matches" and not own.faults and own.too is None:
            assert band.closest_to_show is None, where
        else:
            assert band.closest_to_show is band.closest, where
            shown += band.closest is not None
    assert shown > 10


def test_bare_paper_is_left_alone():
    papers = [band for _, _, band in all_bands() if band.classroom.kind == "paper"]
    assert papers
    for band in papers:
        assert band.closest is None
        assert band.alternatives == ()
        assert band.tone_down is None


def test_a_mix_that_is_not_a_match_says_in_what():
    for where, _, band in all_bands():
        if band.classroom.kind != "paper" and band.classroom.verdict != "matches":
            assert shortfall_text(band.classroom), where


def test_prices_are_the_sum_of_what_they_are_made_of():
    for reading in sky("pines"):
        for built in ways_for(reading.colour, TWELVE_PAN, BandChoice()).built:
            assert built.price == pytest.approx(sum(cost.price for cost in built.costs))
            assert built.structure.price <= built.price


def test_no_paint_stands_nearest_grey():
    texts = [why_text(plan.box, band.classroom) for _, plan, band in all_bands()]
    assert [text for text in texts if re.search(r"(nearest|side of) grey", text)] == []
    assert any("three primaries" in text for text in texts)


def test_every_alternative_has_a_merit_of_its_own():
    for where, _, band in all_bands():
        offers = [item for item in band.alternatives if item.prefer]
        for number, item in enumerate(offers):
            merits = {reason.code for reason in item.reasons} & MERITS
            for earlier in offers[:number]:
                known = {reason.code for reason in earlier.reasons}
                fewer = len(item.planned.mix.parts) < len(earlier.planned.mix.parts)
                off = earlier.planned.verdict != "matches"
                assert fewer or off or not merits <= known, where


def test_bands_that_share_their_parts_take_one_mix():
    assert sky_plan("fell").different_mixes == 1
    assert sky_plan("dusk").different_mixes == 5
    assert all_plans()[f"white, {TWELVE_PAN.name}"].different_mixes == 0


# The order of work


def test_wet_into_wet_is_said_only_beside_a_wet_band():
    for where, plan in all_plans().items():
        letters = [band.letter for band in plan.bands]
        wet: list[str] = []
        for step in plan.order.steps:
            if step.stage != "lay":
                continue
            if step.beside:
                assert step.beside in wet, where
                assert abs(letters.index(step.beside) - letters.index(step.letters[0])) == 1, where
            wet += step.letters
        texts = order_texts(plan.order, plan.sheet)
        for text in texts:
            if "wet into wet" in text:
                assert re.search(
                    r"wet sheet; then |beside the wet [A-H]|clean water between it and [A-H]; then",
                    text,
                ), text


def test_meetings_and_order_agree():
    """Where a strip is to stay clean nothing is laid wet into wet, and the other way round."""
    strips = 0
    for where, plan in all_plans().items():
        apart = {
            frozenset((band.letter, plan.bands[number + 1].letter))
            for number, band in enumerate(plan.bands)
            if band.meets_below is not None and not band.meets_below.runs_together
        }
        strips += len(apart)
        kept = set()
        for step in plan.order.steps:
            if step.stage != "lay":
                continue
            assert frozenset((step.letters[0], step.beside)) not in apart, where
            for one, other in pairwise(step.letters):
                assert frozenset((one, other)) not in apart, where
            if step.apart:
                kept.add(frozenset((step.letters[0], step.apart)))
        assert kept == apart, where
        pulled = any(step.stage == "pull" for step in plan.order.steps)
        if plan.order.kind == "variegated":
            painted = [band for band in plan.bands if band.amount_ml]
            assert pulled or len(apart) == len(painted) - 1 or len(painted) < len(plan.bands)
    assert strips > 3


def test_no_brush_is_rinsed_between_two_washes_of_one_mix():
    """Unless a strip of clean water is between them."""
    for where, plan in all_plans().items():
        lays = [step for step in plan.order.steps if step.stage == "lay"]
        for before, after in pairwise(lays):
            one = plan.band(before.letters[-1]).classroom.mix.parts
            other = plan.band(after.letters[0]).classroom.mix.parts
            assert one != other or after.apart, where
    # Far apart on the wheel: the grey between does not hide that one mix is one mix.
    washes = [make_mix(TWELVE_PAN, {"ultramarine": 1}, load) for load in (0.001, 0.003)]
    yellow = make_mix(TWELVE_PAN, {"mid_yellow": 1}, 0.0005)
    order = order_of_work("ABC", [yellow, *washes])
    assert sum(step.stage == "rinse" for step in order.steps) == 1


def test_a_match_has_no_complaint():
    for where, _, band in all_bands():
        chosen = band.classroom
        if chosen is not None and chosen.verdict == "matches":
            assert shortfall_text(chosen) == "", where


def test_a_third_colour_between_two_bands_is_one_the_plan_has():
    for where, plan in all_plans().items():
        for band in plan.bands:
            meeting = band.meets_below
            if meeting is not None and meeting.keep_from:
                lent = plan.band(meeting.keep_from).classroom.mix.colour.hue.family
                assert lent == meeting.keep_between, where


def test_one_band_alone_is_laid_on_the_wet_sheet():
    order = order_of_work("A", [make_mix(TWELVE_PAN, {"ultramarine": 1}, 0.002)])
    assert "Lay A on the wet sheet." in order_texts(order, SHEETS["A4"])


def test_no_brush_is_rinsed_for_a_grey():
    for name in ("quay", "marsh"):
        assert not any(step.stage == "rinse" for step in sky_plan(name).order.steps)
    for where, plan in all_plans().items():
        for before, after in pairwise(plan.order.steps):
            if before.stage == "rinse":
                chroma = plan.band(after.letters[0]).classroom.mix.colour.munsell.chroma
                assert chroma >= 2, where


def test_a_clear_colour_after_a_grey_wants_a_clean_brush():
    grey = make_mix(TWELVE_PAN, {"ultramarine": 3, "burnt_sienna": 2, "warm_red": 1}, 0.001)
    blue = make_mix(TWELVE_PAN, {"ultramarine": 1}, 0.003)
    assert any(step.stage == "rinse" for step in order_of_work("AB", [blue, grey]).steps)


# Mixes


def test_one_mix_serves_as_far_as_the_eye_can_tell():
    """A pale last band takes the run's blue thinned, rather than another blue."""
    plan = sky_plan("fell", SPLIT_PRIMARY)
    assert plan.order.kind == "graded"
    assert len({band.classroom.mix.parts for band in plan.bands}) == 1


def test_a_wish_for_one_band_goes_before_the_runs_mix():
    wish = MixOptions().with_choice("D", BandChoice(forbidden=("cool_blue",)))
    plan = plan_mixes(sky("fell"), SPLIT_PRIMARY, wish)
    assert "cool_blue" not in plan.band("D").classroom.mix.keys
    wish = MixOptions().with_choice("D", BandChoice(pinned=("ultramarine",)))
    plan = plan_mixes(sky("fell"), SPLIT_PRIMARY, wish)
    assert "ultramarine" in plan.band("D").classroom.mix.keys


def test_a_strong_blue_makes_greens_where_the_weak_one_leans_to_violet():
    mix = sky_plan("pines", SPLIT_PRIMARY).band("C").classroom.mix
    assert set(mix.keys) == {"cool_blue", "lemon_yellow"}
    assert mix.share("cool_blue") >= 0.25


def test_a_thin_wash_of_one_paint_serves_where_its_full_colour_stands_further_off():
    plan = plan_mixes(bands([lab(76, 26, -3)]), SPLIT_PRIMARY)
    assert plan.band("A").classroom.mix.keys == ("crimson",)
    assert plan.band("A").classroom.verdict == "matches"


def test_a_dull_blue_is_toned_with_orange_from_a_box_without_earths():
    plan = plan_mixes(bands([lab(60, -1, -12)]), SPLIT_PRIMARY)
    own = plan.band("A").classroom
    assert own.verdict == "matches"
    assert "make an orange between them, which tones it down" in why_text(SPLIT_PRIMARY, own)


def test_of_three_primaries_the_least_part_does_the_toning():
    found = [
        (where, band.classroom)
        for where, _, band in all_bands()
        if band.classroom.why[0].code == "three primaries"
    ]
    assert found
    for where, own in found:
        least = min(own.mix.keys, key=own.mix.share)
        assert own.toners == (least,), where
        assert set(own.base) == set(own.mix.keys) - {least}, where


def test_the_ladder_names_the_share_that_is_in_the_mix():
    for where, plan, band in all_bands():
        own, ladder = band.classroom, band.tone_down
        if ladder is None or not own.toners or own.verdict == "off":
            continue
        text = ladder_text(plan.box, ladder, band.letter, own)
        share = own.toner_share
        assert ladder.steps[ladder.matched].fraction == share, where
        plural = "s" if share.numerator > 1 else ""
        assert f": {share.numerator} part{plural} in {share.denominator} " in text, where
        assert (" match" in text) == (own.verdict == "matches"), where
        steps = [int(n) for n in re.findall(r"1 in (\d+) ", text)]
        assert all(a > b for a, b in pairwise(steps)), text


# Words


def test_the_same_reach_is_said_shortly_of_the_band_below():
    whole = reach_text("too intense")
    for reach in ("too intense", "too light", "too dark", "too dull", "out of reach"):
        short = reach_text(reach, "A")
        assert short.startswith("Like A, ")
        assert len(short) < len(whole)
    assert reach_text("reached", "A") == ""


def test_a_little_is_said_once():
    for where, plan, band in all_bands():
        text = shortfall_text(band.classroom)
        if text.count("a little") > 1:
            pytest.fail(f"{where}: {text}")
        for item in band.alternatives:
            assert alternative_text(plan.box, band.classroom, item).count("a little") <= 1


def test_drying_is_said_one_way():
    assert step_share_text(0.25) in wet_text(0.25)
    assert [step_share_text(steps) for steps in (0.25, 0.5, 1.0, 0.4)] == [
        "a quarter of a value step",
        "half a value step",
        "a whole value step",
        "0.4 of a value step",
    ]


def test_a_share_of_the_same_mix_is_measured_out():
    assert amount_of_it_text(3) == "3 mL of it, about half a teaspoon."

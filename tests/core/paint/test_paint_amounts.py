"""How much to prepare, and in what order to lay it: rules of thumb, marked as such."""

from __future__ import annotations

import re

import pytest
from paint_tools import bands, colour

from core.paint.box.box import TWELVE_PAN
from core.paint.mixture.mix import bare_paper, make_mix
from core.paint.wash.amounts import LEAST_ML, SHEETS, PaintSheet, amounts
from core.paint.wash.order import order_of_work
from core.paint.words.plan import (
    amount_text,
    amounts_note,
    brush_text,
    kind_text,
    measure_text,
    order_texts,
    puddle_text,
    total_text,
    water_text,
)

BLUE = colour("#6f8fc0")


def mix(load=0.001, **parts):
    return make_mix(TWELVE_PAN, parts, load)


def test_the_painted_rectangle_leaves_the_taped_border():
    assert SHEETS["A4"].painted_mm == (277, 190)
    assert SHEETS["A4"].painted_cm2 == pytest.approx(526.3)
    assert PaintSheet("own", 100, 80, 0).painted_cm2 == 80


def test_amounts_follow_the_area_with_a_margin():
    even = amounts(bands([BLUE] * 2), SHEETS["A3"])
    area = SHEETS["A3"].painted_cm2 / 2
    assert [band.area_cm2 for band in even.bands] == pytest.approx([area, area])
    # 6.5 mL a 1000 cm2, and almost as much again to spare.
    assert even.bands[0].ml >= area / 1000 * 6.5 * 1.8
    assert even.bands[0].ml <= area / 1000 * 6.5 * 1.8 + 0.5
    assert even.bands[-1].ends_mm == pytest.approx(277)
    assert even.total_ml == sum(band.ml for band in even.bands)
    assert not even.own_figure


def test_small_bands_get_what_can_be_handled():
    assert {band.ml for band in amounts(bands([BLUE] * 6), SHEETS["A5"]).bands} == {LEAST_ML}


def test_a_larger_sheet_takes_more():
    """Four bands: no floor hides the size of the sheet."""
    totals = [amounts(bands([BLUE] * 4), SHEETS[size]).total_ml for size in ("A5", "A4", "A3")]
    assert totals[1] >= 1.5 * totals[0]
    assert totals[2] >= 1.5 * totals[1]


@pytest.mark.parametrize(
    ("ml", "text"),
    [
        (1, "about 20 drops"),
        (2, "about 40 drops"),
        (2.5, "about half a teaspoon"),
        (5, "about a teaspoon"),
        (7.5, "about a teaspoon and a half"),
        (10, "about 2 teaspoons"),
        (12.5, "about 2 and a half teaspoons"),
    ],
)
def test_millilitres_without_a_syringe(ml, text):
    """20 drops to the millilitre (European Pharmacopoeia, water), 5 mL to the teaspoon."""
    assert measure_text(ml) == text


def test_one_chain_leads_from_parts_to_a_puddle():
    """A part is a measure of paint, for tubes and pans; wash is counted in millilitres alone."""
    text = puddle_text()
    assert all(word in text for word in ("part", "tube", "pan", "drops", "teaspoon"))
    for said in (text, amount_text(3), total_text(9, 3)):
        assert "load" not in said


def test_the_classes_own_figure_replaces_the_rule_of_thumb():
    usual = amounts(bands([BLUE]), SHEETS["A3"])
    own = amounts(bands([BLUE]), SHEETS["A3"], 13.0)
    assert own.total_ml == pytest.approx(2 * usual.total_ml, abs=0.5)
    assert "your own figure" in amounts_note(own)
    assert "rule of thumb" in amounts_note(usual)
    for figure in (0, -3, float("nan")):
        with pytest.raises(ValueError, match="above 0"):
            amounts(bands([BLUE]), SHEETS["A3"], figure)


def test_no_bands_no_paint():
    assert amounts([], SHEETS["A4"]).total_ml == 0


def test_in_words():
    assert amount_text(2) == "Mix 2 mL, about 40 drops."
    assert amount_text(0) == ""
    assert total_text(7, None) == "In all 7 mL."
    assert total_text(8, 2.0) == "Of each mix 2 mL, about 40 drops; in all 8 mL."
    assert "large" in brush_text()
    assert water_text(amounts(bands([BLUE]), SHEETS["A4"])) == (
        "Clean water to wet the sheet: 4 to 6 mL."
    )


def stages(order):
    return [step.stage for step in order.steps]


def test_a_graded_wash_runs_from_strong_to_weak():
    washes = [mix(load, ultramarine=5, burnt_sienna=1) for load in (0.004, 0.002, 0.001)]
    order = order_of_work("ABC", washes)
    assert order.kind == "graded"
    assert not order.turn_sheet
    texts = order_texts(order, SHEETS["A4"])
    first, rest = (
        "Lay A, the strongest, on the wet sheet; ",
        "then B and C with more and more water",
    )
    assert texts[3].startswith(first + rest)
    turned = order_of_work("ABC", washes[::-1])
    assert turned.turn_sheet
    assert next(s for s in turned.steps if s.stage == "lay").letters == ("C", "B", "A")
    assert "Turn the sheet upside down: the strongest band comes first." in order_texts(
        turned, SHEETS["A4"]
    )


def test_a_variegated_wash_goes_from_light_to_dark_and_rinses_between_hues():
    washes = [mix(0.003, ultramarine=1), mix(0.002, crimson=1), mix(0.0005, mid_yellow=1)]
    order = order_of_work("ABC", washes)
    assert order.kind == "variegated"
    laid = [step.letters for step in order.steps if step.stage == "lay"]
    assert [letter for group in laid for letter in group] == ["C", "B", "A"]
    assert stages(order).count("rinse") == len(laid) - 1 >= 1
    assert order.turn_sheet
    assert stages(order)[:3] == ["tape", "mix", "wet"]
    assert stages(order)[-3:] == ["stop", "dry", "peel"]


def test_a_long_sunset_is_rinsed_though_every_step_is_small():
    washes = [
        mix(0.003, ultramarine=1),
        mix(0.002, ultramarine=1, crimson=2),
        mix(0.0015, crimson=1),
        mix(0.001, warm_red=1),
        mix(0.0005, mid_yellow=1),
    ]
    assert "rinse" in stages(order_of_work("ABCDE", washes))


def test_every_band_is_laid_beside_a_wet_one():
    washes = [mix(load, crimson=1) for load in (0.001, 0.004, 0.0005, 0.003, 0.002)]
    washes[1] = mix(0.004, ultramarine=1)
    order = order_of_work("ABCDE", washes)
    laid = [letter for step in order.steps for letter in step.letters if step.stage == "lay"]
    assert sorted(laid) == list("ABCDE")
    places = ["ABCDE".index(letter) for letter in laid]
    for number in range(1, 5):
        assert any(abs(places[number] - place) == 1 for place in places[:number])


def test_times_are_ranges():
    order = order_of_work("A", [mix(ultramarine=1)])
    assert order.kind == "flat"
    for step in order.steps:
        if step.stage in ("wet", "dry"):
            low, high = step.minutes
            assert 0 < low < high
    texts = " ".join(order_texts(order, SHEETS["A4"]))
    assert "1 to 10 min" in texts
    assert "10 to 15 min" in texts
    assert "the lightest" not in texts


def test_bare_paper_is_left_alone():
    order = order_of_work("AB", [mix(ultramarine=1), bare_paper()])
    assert "Leave B without paint: the paper is its white." in order_texts(order, SHEETS["A4"])
    assert order_of_work("A", [bare_paper()]).kind == "none"
    assert "white of the paper" in kind_text(order_of_work("A", [bare_paper()]))
    assert order_of_work("", []).steps == ()


FIVE = [
    mix(0.003, ultramarine=1),
    mix(0.002, ultramarine=2, crimson=1),
    mix(0.0005, mid_yellow=1),
    mix(0.001, warm_red=1),
    mix(0.002, crimson=1),
]


def test_bands_that_would_go_grey_keep_a_strip_and_are_never_wet_into_wet():
    order = order_of_work("ABCDE", FIVE, apart={"B"})
    laid = [step for step in order.steps if step.stage == "lay"]
    (kept,) = [step for step in laid if step.apart]
    assert {kept.letters[0], kept.apart} == {"B", "C"}
    assert kept.beside != kept.apart
    texts = order_texts(order, SHEETS["A4"])
    (text,) = [text for text in texts if "strip of clean water" in text]
    assert "Lay B, with a strip of clean water between it and C" in text
    assert not any(re.search(r"B (beside|into) the wet C", text) for text in texts)


def test_the_demonstration_has_its_own_steps_in_order():
    order = order_of_work("ABCDE", FIVE)
    texts = order_texts(order, SHEETS["A4"])
    said = " ".join(texts)
    steps = ("clean water", "Lay C, the lightest", "pull the lower colour up", "Stop", "10 to 15")
    places = [said.index(step) for step in steps]
    assert places == sorted(places)
    assert "soft round brush, not the one you mixed with" in said
    assert "still cool it is still damp" in said
    assert "no puddle" in said


def test_nothing_is_pulled_where_no_bands_run_together():
    assert "pull" not in stages(order_of_work("A", FIVE[:1]))
    assert "pull" not in stages(order_of_work("AB", FIVE[:2], apart={"A"}))
    assert "pull" not in stages(order_of_work("ABC", [FIVE[0], bare_paper(), FIVE[2]]))


def test_one_puddle_goes_in_one_direction():
    loads = (0.003, 0.001, 0.002, 0.0008)
    order = order_of_work("ABCD", [mix(load, ultramarine=5, burnt_sienna=1) for load in loads])
    (laid,) = [step for step in order.steps if step.stage == "lay"]
    assert laid.letters == ("A", "B", "C", "D")
    assert "more water where a band is lighter" in " ".join(order_texts(order, SHEETS["A4"]))


def test_an_order_that_jumps_says_why():
    order = order_of_work("ABCDE", FIVE)
    first = next(step for step in order.steps if step.stage == "lay")
    assert first.letters[0] == "C"
    assert "outwards from it, the lighter side first" in " ".join(order_texts(order, SHEETS["A4"]))
    turned = order_of_work("ABC", FIVE[:3])
    assert "outwards" not in " ".join(order_texts(turned, SHEETS["A4"]))

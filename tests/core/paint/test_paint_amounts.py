"""How much to prepare, and in what order to lay it: rules of thumb, marked as such."""

from __future__ import annotations

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
    order_texts,
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


def test_small_bands_get_what_a_brush_can_hold():
    assert {band.ml for band in amounts(bands([BLUE] * 6), SHEETS["A5"]).bands} == {LEAST_ML}


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
    assert amount_text(3.5, 1) == "Mix 3.5 mL: one load of a large brush."
    assert "2 loads" in amount_text(6, 2)
    assert amount_text(0, 1) == ""
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
        if step.stage in ("wet", "stop", "dry"):
            low, high = step.minutes
            assert 0 < low < high
    texts = " ".join(order_texts(order, SHEETS["A4"]))
    assert "1 to 10 min" in texts
    assert "the lightest" not in texts


def test_bare_paper_is_left_alone():
    order = order_of_work("AB", [mix(ultramarine=1), bare_paper()])
    assert "Leave B without paint: the paper is its white." in order_texts(order, SHEETS["A4"])
    assert order_of_work("A", [bare_paper()]).kind == "none"
    assert "white of the paper" in kind_text(order_of_work("A", [bare_paper()]))
    assert order_of_work("", []).steps == ()

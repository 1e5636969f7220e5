from __future__ import annotations

from dataclasses import replace

import pytest

from app.mix.band_detail import detail_view, toners_of
from app.mix.box_view import box_view, boxes_to_choose, shown_order
from app.mix.meeting_view import meeting_view, stretches
from app.mix.plan_view import plan_view
from app.mix.stage_views import compared
from app.mix.texts import fit_mix
from app.mix.views import about_text, band_view, offers, why_sentences
from app.widgets.preview import sample_readings
from core.paint.box.box import SPLIT_PRIMARY, TWELVE_PAN, Box
from core.paint.mixture.shortfall import CLOSE_WITHIN, MATCHES_WITHIN
from core.paint.options import BandChoice, MixOptions
from core.paint.plan import plan_mixes

OPTIONS = MixOptions()
READINGS = sample_readings()
PLAN = plan_mixes(READINGS, TWELVE_PAN, OPTIONS)


def test_a_row_says_mix_strength_verdict_and_how_close() -> None:
    for band in PLAN.bands:
        view = band_view(PLAN, band, OPTIONS)
        assert view.photo == band.target.hex
        assert view.paint == band.classroom.mix.colour.hex
        assert [part.count for part in view.parts] == [n for _, n in band.classroom.mix.parts]
        assert f"{band.classroom.delta_E_2000:.1f}" in view.difference
        off = band.classroom.delta_E_2000
        expected = "matches" if off <= MATCHES_WITHIN else "close" if off <= CLOSE_WITHIN else "off"
        assert view.verdict == expected
        assert view.mix in view.spoken
        assert about_text(PLAN, band)


def test_wishes_are_said() -> None:
    choice = BandChoice(("ultramarine",), ("crimson",), (("ultramarine", 2), ("warm_red", 1)))
    options = OPTIONS.with_choice("A", choice)
    plan = plan_mixes(READINGS, TWELVE_PAN, options)
    view = band_view(plan, plan.bands[0], options)
    assert view.wishes == "Pinned: ultramarine; left out: crimson; set by hand"
    assert view.wishes in view.spoken
    assert view.asked == "Pinned: ultramarine; left out: crimson"
    assert "set by hand" in " ".join(why_sentences(plan, plan.band("A"))).lower()


def test_a_mix_in_lines_keeps_counts_with_their_paints(qapp) -> None:
    mix = "3 crimson : 12 warm red : 1 sap green"
    for width in range(90, 400, 7):
        lines = fit_mix(mix, (20,), 400, float(width)).lines
        assert not any(line.startswith(":") or line[-1].isdigit() for line in lines)
        assert " ".join(lines).replace("\u00a0", " ") == mix
    assert len(lines) == 1
    assert len(fit_mix(mix, (20,), 400, 240.0).lines) == 2
    assert "12 warm red" in fit_mix(mix, (20,), 400, 240.0).lines[0].replace("\u00a0", " ")


def test_a_band_without_sky_has_a_row_and_no_detail() -> None:
    empty = (replace(READINGS[0], colour=None), *READINGS[1:])
    plan = plan_mixes(empty, TWELVE_PAN, OPTIONS)
    view = band_view(plan, plan.bands[0], OPTIONS)
    assert view.mix == "No sky here"
    assert view.photo is None
    assert detail_view(plan, plan.bands[0], view, OPTIONS, None) is None
    assert meeting_view(plan.bands[0], plan.bands[1], None) is None
    assert plan_view(plan, OPTIONS).amounts[0].letter == "B"


def test_offers_to_take_hold_a_mix_and_those_to_avoid_none() -> None:
    for band in PLAN.bands:
        found = offers(PLAN, band)
        assert len(found) <= 4
        wanted = [item.planned.mix for item in band.alternatives if item.prefer]
        if band.closest is not None:
            wanted.insert(0, band.closest.mix)
        assert [offer.mix for offer in found if offer.mix is not None] == wanted


def test_the_detail_shows_ladder_comparison_and_parts() -> None:
    band = PLAN.bands[0]
    view = band_view(PLAN, band, OPTIONS)
    detail = detail_view(PLAN, band, view, OPTIONS, None)
    assert detail is not None
    assert detail.tone.folded  # nothing is toned down: a line says so
    assert detail.tone.title.startswith("Nothing to tone down: 1 part yellow ochre in ")
    assert detail.compare is not None
    assert {item.name for item in detail.compare.paints} == {
        "cerulean blue",
        "ultramarine",
        "prussian blue",
    }
    used = {part.key for part in detail.hand.parts}
    assert used | {key for key, _ in detail.hand.addable} == set(TWELVE_PAN.keys)
    assert not detail.hand.by_hand


def test_the_framed_rung_is_the_mix() -> None:
    toned = [band for band in PLAN.bands if band.classroom.toners]
    assert toned
    for band in toned:
        detail = detail_view(PLAN, band, band_view(PLAN, band, OPTIONS), OPTIONS, None)
        (framed,) = [step for step in detail.tone.steps if step.framed]
        share = band.classroom.toner_share
        assert framed.fraction.startswith(f"{share.numerator}/{share.denominator} ")
        assert framed.colour == band.classroom.mix.colour.hex


def test_every_toner_gives_its_own_ladder() -> None:
    band = PLAN.bands[0]
    view = band_view(PLAN, band, OPTIONS)
    choices = toners_of(PLAN, band)
    assert choices[0] == band.tone_down.toner
    titles = {detail_view(PLAN, band, view, OPTIONS, toner).tone.title for toner in choices}
    assert len(titles) == len(choices)


def test_compared_paints_keep_the_boxs_order() -> None:
    names = [item.name for item in compared(TWELVE_PAN, PLAN.bands[0], "blue")]
    assert names == ["cerulean blue", "ultramarine", "prussian blue"]


def test_stretches_of_a_meeting_begin_in_order() -> None:
    for band in PLAN.bands[:-1]:
        places = [share for share, _ in stretches(band.meets_below)]
        assert places[0] == 0
        assert places == sorted(set(places))
        assert places[-1] < 1


def test_the_plan_in_one_line_and_in_rows_agree() -> None:
    view = plan_view(PLAN, OPTIONS)
    if PLAN.each_ml is None:
        total = sum(float(row.ml) for row in view.amounts)
    else:  # said once for all
        assert f"{PLAN.each_ml:g} mL each" in view.total
        total = PLAN.each_ml * len(view.amounts)
    assert total == pytest.approx(PLAN.amounts.total_ml)
    assert f"{PLAN.amounts.total_ml:g} mL" in view.line
    assert "5 mixes" in view.line
    assert "A4" in view.line
    for letter in "ABCDE":
        assert letter in view.line.rsplit("Lay", 1)[1]
    nothing = replace(PLAN, bands=())
    assert "no mix to prepare" in plan_view(nothing, OPTIONS).line


def test_a_changed_box_says_so_until_it_is_kept() -> None:
    changed = Box(TWELVE_PAN.name, TWELVE_PAN.paints[1:])
    boxes, current = boxes_to_choose((), changed)
    view = box_view(boxes, current, (), MixOptions())
    assert view.boxes[current] == "Twelve-pan school box, changed"
    assert view.boxes[0] == "Twelve-pan school box"
    boxes, current = boxes_to_choose((), TWELVE_PAN)
    assert boxes[current] == TWELVE_PAN
    own = Box("Ours", SPLIT_PRIMARY.paints)
    boxes, current = boxes_to_choose((own,), own)
    assert box_view(boxes, current, (), MixOptions()).boxes[current] == "Ours"


def test_no_paint_jumps_when_it_is_ticked() -> None:
    known = ("a", "b", "c", "d")
    order = shown_order((), ("c", "a"), known)
    assert order == ["c", "a", "b", "d"]
    assert shown_order(order, ("a",), known) == order
    assert shown_order(order, ("c", "a", "own"), known) == [*order, "own"]
    assert shown_order([*order, "own"], ("c", "a"), known) == order

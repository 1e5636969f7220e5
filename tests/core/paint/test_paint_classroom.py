"""The classroom mix: built as a teacher would write it on the board."""

from __future__ import annotations

import numpy as np
import pytest
from paint_tools import bands, colour, lab, sky, sky_plan

import sample_scenes
from core.paint.box.box import SPLIT_PRIMARY, THIRTEEN, TWELVE_PAN
from core.paint.choice.classroom import classroom_mixes
from core.paint.choice.judge import LARGEST_PART, MOST_PARTS
from core.paint.choice.roles import structures
from core.paint.pigment.hues import paint_deg, turn
from core.paint.plan import plan_mixes
from core.reading.wheel import complement

SKIES = sample_scenes.names()
BOXES = (TWELVE_PAN, SPLIT_PRIMARY, THIRTEEN)


def painted(plan):
    return [band for band in plan.bands if band.classroom and band.classroom.mix.parts]


@pytest.mark.parametrize("box", BOXES, ids=lambda box: box.name)
@pytest.mark.parametrize("name", SKIES)
def test_no_black_no_white_and_parts_a_class_can_count(name, box):
    for band in painted(sky_plan(name, box)):
        mix = band.classroom.mix
        assert not {box.paint(key).group for key in mix.keys} & {"black", "white"}
        assert len(mix.parts) <= 3
        assert mix.total <= MOST_PARTS
        assert max(count for _, count in mix.parts) <= LARGEST_PART


@pytest.mark.parametrize("name", SKIES)
def test_a_strong_stainer_is_never_the_tiny_part_where_a_weaker_paint_serves(name):
    for band in painted(sky_plan(name)):
        for key, _ in band.classroom.mix.parts:
            if TWELVE_PAN.paint(key).is_strong:
                assert band.classroom.mix.share(key) >= 0.25


@pytest.mark.parametrize("name", SKIES)
def test_the_sample_skies_are_reached(name):
    """Matched or close in every band: the twelve-pan box can paint all six scenes."""
    for band in painted(sky_plan(name)):
        assert band.classroom.verdict != "off", band.letter


def wheel_target(degrees, chroma=25.0, L=65.0):
    """A colour of one wheel angle: the CIELAB hue that reads as it."""
    hues = np.arange(0, 360, 2.0)
    turns = np.radians(hues)
    readings = [lab(L, chroma * np.cos(h), chroma * np.sin(h)) for h in turns]
    return min(
        readings,
        key=lambda one: (
            999.0 if one.hue.wheel_deg is None else abs(turn(degrees, one.hue.wheel_deg))
        ),
    )


@pytest.mark.parametrize("degrees", range(0, 360, 15))
def test_hues_are_built_from_their_neighbours_and_toned_from_across(degrees):
    target = wheel_target(degrees)
    for way in structures(TWELVE_PAN.paints, target):
        places = [turn(target.hue.wheel_deg, paint_deg(TWELVE_PAN.paint(k))) for k in way.base]
        if len(places) == 2 and max(map(abs, places)) > 26:
            assert min(places) < 0 < max(places)
        assert max(map(abs, places)) <= 140
        if way.toner is not None:
            away = abs(turn(target.hue.wheel_deg, paint_deg(TWELVE_PAN.paint(way.toner))))
            assert away >= 180 - 68


@pytest.mark.parametrize(
    ("target", "toner"),
    [
        (colour("#cf7f7a"), "sap_green"),  # red: its complement is green
        (colour("#c98d5f"), "cerulean_blue"),  # orange: blue
        (colour("#6f9cc0"), "burnt_sienna"),  # blue: orange
    ],
)
def test_the_ladder_takes_the_paint_nearest_the_complement(target, toner):
    plan = plan_mixes(bands([target]), TWELVE_PAN)
    ladder = plan.band("A").tone_down
    assert ladder.complement == complement(target.hue.family)
    away = {
        paint.key: 180 - abs(turn(target.hue.wheel_deg, paint_deg(paint)))
        for paint in TWELVE_PAN.paints
        if paint_deg(paint) is not None and not paint.is_strong
    }
    assert away[ladder.toner[0][0]] <= min(away.values()) + 15
    assert ladder.toner[0][0] == toner


def test_greys_are_a_blue_and_a_brown():
    """Common practice: ultramarine and burnt sienna grey each other cleanly."""
    for band in sky_plan("marsh").bands:
        assert {"ultramarine", "burnt_sienna"} <= set(band.classroom.mix.keys)


def test_pinned_paints_are_in_every_mix():
    target = sky("dusk")[3].colour
    built = classroom_mixes(TWELVE_PAN, TWELVE_PAN.paints, target, frozenset({"burnt_sienna"}))
    assert built
    assert all("burnt_sienna" in item.mix.keys for item in built)


def test_no_paints_near_the_hue_leave_nothing_to_build():
    reds = tuple(TWELVE_PAN.paint(key) for key in ("crimson", "warm_red"))
    assert classroom_mixes(TWELVE_PAN, reds, colour("#3fae5f")) == ()

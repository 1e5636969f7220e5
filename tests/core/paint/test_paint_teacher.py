"""Mixes a teacher would stand by, in every box a class may own: each test is a kind of advice.

The boxes are all of one yellow, one red and one blue, and those that `tools.plan_table` writes its
table for; the colours are the sample scenes, photographs' readings and made-up hues.
"""

from __future__ import annotations

import re
from functools import cache
from itertools import combinations, product

import numpy as np
import pytest
from paint_tools import bands, lab, sky, sky_plan

import sample_scenes
from core.colour import delta_E_2000
from core.paint.box.box import TWELVE_PAN, Box
from core.paint.choice.band_plan import plan_colour
from core.paint.choice.band_ways import ways_for
from core.paint.choice.blues import TO_GREEN_FROM_DEG, is_blue
from core.paint.mixture.mix import in_order_of_mixing, make_mix
from core.paint.mixture.strength import mix_half_load
from core.paint.options import BandChoice, MixOptions
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.measured import load_Lab
from core.paint.pigment.primaries import MADE_OF, primaries_for
from core.paint.plan import plan_mixes
from core.paint.words.mix import (
    alternative_text,
    band_reach_text,
    closest_text,
    shortfall_text,
    why_text,
)
from core.paint.words.parts import parts_note
from core.paint.words.plan import ladder_text
from core.paint.words.tone_sentence import planned_toning
from core.reading.wheel import FAMILIES
from core.reading.wording import Wording
from core.words import tone_down_sentence, tones_on_wheel
from tools.plan_table import BOXES

PHOTOS = {
    "deep blue": [(41.7, 2.2, -36.6), (34.6, 4.9, -36.6), (26.3, 9.3, -38.8)],
    "blue hour": [(50.8, -0.9, -29.8), (45.0, 0.2, -30.7), (38.7, 1.3, -31.1)],
    "haze": [(74, -3, -17), (79, -4, -12), (88, -4, -6)],
    "evening": [(48.2, 4.0, -21.0), (42.3, 6.1, 1.6), (59.7, 15.4, 28.2), (77.9, 9.3, 48.2)],
    "green blue": [(38, -12, -20), (51, -13, -22), (82, -8, -4)],
    "rose": [(57.6, 18.4, -34.4), (69.7, 17.1, -23.5), (80.5, 15.7, -7.4), (92, 4, 12)],
}
"""CIELAB of the bands of six photographs, from the top down."""


@cache
def plans():
    """Scenes and photos in the ten boxes of the table, planned once for all tests."""
    found = {}
    for box in BOXES:
        for name in sample_scenes.names():
            found[f"{name}, {box.name}"] = sky_plan(name, box)
        for name, colours in PHOTOS.items():
            found[f"{name}, {box.name}"] = plan_mixes(bands([lab(*c) for c in colours]), box)
    rng = np.random.default_rng(77)
    coloured = [key for key, paint in CATALOGUE.items() if paint.group not in ("black", "white")]
    for number in range(30):  # boxes nobody would buy, and skies nobody drew
        box = box_of(*rng.choice(coloured, rng.integers(1, 8), replace=False).tolist())
        top, bottom = (
            rng.uniform((20, -30, -45), (95, 45, 20)),
            rng.uniform((40, -20, -20), (97, 45, 60)),
        )
        colours = [lab(*(top + (bottom - top) * share)) for share in (0, 0.5, 1)]
        found[f"box {number}: {', '.join(box.keys)}"] = plan_mixes(bands(colours), box)
    return found


def banded():
    for where, plan in plans().items():
        for band in plan.bands:
            yield f"{where}, {band.letter}", plan, band


def box_of(*keys: str) -> Box:
    return Box("", tuple(CATALOGUE[key] for key in keys))


def plan_one(box: Box, Lab):
    return plan_colour(ways_for(lab(*Lab), box, BandChoice()))


# The classroom's own mix: two primaries


YELLOWS = ("lemon_yellow", "mid_yellow", "yellow_ochre")
REDS = ("warm_red", "crimson")
BLUES = ("cerulean_blue", "cobalt_blue", "ultramarine", "cool_blue")
TRIOS = tuple(product(YELLOWS, REDS, BLUES))

MADE = [
    *((52, 40, 42), (62, 33, 48), (72, 24, 52), (78, 22, 30), (50, 30, 22)),  # orange and beside
    *((33, 28, -25), (48, 24, -20), (62, 26, -12), (40, 18, -34), (75, 16, -14)),  # violet
    *((45, -26, 8), (60, -22, 22), (52, -20, -10), (74, -16, 26), (82, -10, 6)),  # green
]
"""Secondaries and tertiaries, intense and dull, dark and pale."""

COUNTED = [(a, b) for a in range(1, 8) for b in range(1, 8) if a + b <= 9 and np.gcd(a, b) == 1]


def nearest_pair(one: str, other: str, Lab) -> float:
    """How near two paints come in parts a class counts, by trying them all."""
    box = box_of(one, other)
    shares = np.array([box.load_vector({one: a / (a + b), other: b / (a + b)}) for a, b in COUNTED])
    loads = np.geomspace(3e-5, 0.16, 40)
    colours = load_Lab((shares[:, None] * loads[:, None]).reshape(-1, shares.shape[1]))
    return float(delta_E_2000(colours, np.array(Lab)).min())


@pytest.mark.parametrize("more", [(), ("burnt_sienna",)], ids=["three", "with an earth"])
def test_two_primaries_make_a_secondary_wherever_they_come_near(more):
    """Common practice: the primaries' mix is the classroom's, within 3 of what the box reaches."""
    rng = np.random.default_rng(5)  # four hues a box
    held = 0
    for trio in TRIOS if not more else TRIOS[::4]:
        box = box_of(*trio, *more)
        for at in rng.permutation(len(MADE))[:4].tolist():
            Lab = MADE[at]
            band = plan_one(box, Lab)
            family = band.target.hue.family
            if family is None or len(primaries_for(family)) < 2:
                continue
            own, pair = band.classroom, primaries_for(family)
            one, other = (key for key in trio if CATALOGUE[key].group in pair)
            near = nearest_pair(one, other, Lab)
            reached = min(own.delta_E_2000, near)
            if band.closest is not None:
                reached = min(reached, band.closest.delta_E_2000)
            if near > reached + 3:
                continue
            offers = [own, *(item.planned for item in band.alternatives if item.prefer)]
            if any({one, other} <= set(planned.mix.keys) for planned in offers):
                held += 1
                continue
            # One paint that is the hue, or matches it, needs no other.
            stands = len(own.mix.keys) == 1 and own.delta_E_2000 <= near
            assert own.verdict == "matches" or stands, (trio, Lab, own.mix.parts)
    assert held > 8


@pytest.mark.parametrize("keys", [pair for trio in TRIOS[::5] for pair in combinations(trio, 2)])
def test_a_box_of_two_primaries_makes_what_they_make(keys):
    box = box_of(*keys)
    made = MADE_OF[frozenset(paint.group for paint in box.paints)]
    for Lab in MADE:
        band = plan_one(box, Lab)
        if band.target.hue.family not in made or nearest_pair(*keys, Lab) > 3:
            continue
        own = band.classroom
        assert set(own.mix.keys) == set(keys) or own.verdict == "matches", (keys, Lab)


def test_what_two_primaries_make_is_said_so():
    band = plan_one(box_of("lemon_yellow", "crimson", "ultramarine"), (69, 26, 38))
    assert set(band.classroom.mix.keys) == {"lemon_yellow", "crimson"}
    text = why_text(box_of("lemon_yellow", "crimson", "ultramarine"), band.classroom)
    assert text.startswith(
        "Lemon yellow and crimson: yellow and red are the two primaries that make orange."
    )
    for where, plan, band in banded():
        if band.closest_to_show is not None and len(plan.box.paints) == 3:
            text = closest_text(plan.box, band.closest_to_show)
            groups = {plan.box.paint(key).group for key in band.closest_to_show.mix.keys}
            if len(groups) == 2 and band.target.hue.family in MADE_OF.get(frozenset(groups), ()):
                assert "harder to steer" not in text, where


# A box without a primary


def test_a_box_without_a_primary_says_so():
    found = 0
    for where, plan, band in banded():
        family, own = band.target.hue.family, band.classroom
        if family is None or own.kind != "classroom":
            continue
        groups = {paint.group for paint in plan.box.paints}
        missing = tuple(primary for primary in primaries_for(family) if primary not in groups)
        if not missing or band.reach == "reached":
            assert own.lacks == (), where
            continue
        found += 1
        assert own.lacks == missing, where
        assert f"This box has no {missing[0]}" in band_reach_text(band), where
        assert not re.search(r"lighter|darker|duller|intense", shortfall_text(own)), where
        toning = planned_toning(plan.box, band)
        assert f"no {missing[0]}" in tone_down_sentence(band.target, Wording(), toning), where
    assert found > 20
    only_blues = box_of("ultramarine", "cerulean_blue")
    band = plan_mixes(sky("dusk"), only_blues).band("D")
    assert band_reach_text(band) == "This box has no red: the nearest is shown."


# Blues


def test_blues_are_toned_one_way():
    """Common practice: a brown earth is a dull orange; no yellow in a blue that is to stay blue."""
    toned = 0
    for where, plan, band in banded():
        hue = band.target.hue
        if hue.wheel_deg is None or not is_blue(hue.wheel_deg, hue.family) or band.classroom.lacks:
            continue
        groups = {paint.group for paint in plan.box.paints}
        offers = [item.planned for item in band.alternatives if item.prefer]
        for planned in (band.classroom, *offers, *filter(None, [band.closest_to_show])):
            used = {plan.box.paint(key).group for key in planned.mix.keys}
            to_green = hue.wheel_deg >= TO_GREEN_FROM_DEG
            assert "yellow" not in used or to_green or used & {"red", "brown"}, where
            toners = {plan.box.paint(key).group for key in planned.toners}
            if toners and "brown" in groups and planned is band.classroom:
                assert "brown" in toners, where
                toned += 1
    assert toned > 40


def test_an_earths_reason_is_the_same_from_sky_to_sky():
    texts = set()
    for _, plan, band in banded():
        for reason in band.classroom.why:
            if reason.code == "toned by earth":
                texts.add(why_text(plan.box, band.classroom).split(". ")[1])
    said = {text.rstrip(".") for text in texts}
    assert said == {"Burnt sienna, a dull orange, is its complement and tones it down"}


def test_a_blue_stays_mostly_blue():
    for where, plan, band in banded():
        hue, mix = band.target.hue, band.classroom.mix
        if hue.wheel_deg is None or not is_blue(hue.wheel_deg, hue.family) or not mix.parts:
            continue
        blue = sum(mix.share(key) for key in mix.keys if plan.box.paint(key).group == "blue")
        strong = any(plan.box.paint(key).is_strong for key in mix.keys)
        assert blue >= 0.5 or strong or band.classroom.lacks, where
        shown = band.closest_to_show
        if shown is not None:
            sides = {"blue", "violet"} | ({"green"} if hue.wheel_deg > 240 else set())
            share = sum(
                shown.mix.share(key) for key in shown.mix.keys if plan.box.paint(key).group in sides
            )
            assert share >= 0.5, where


# Strong paints, counts, shares


def test_the_strong_paint_comes_last():
    """Common practice: crimson and phthalo or prussian blue tint far more strongly than earths."""
    school = TWELVE_PAN
    ordered = in_order_of_mixing(school, {"crimson": 3, "ultramarine": 2})
    assert ordered == (("ultramarine", 2), ("crimson", 3))
    assert in_order_of_mixing(school, {"prussian_blue": 2, "lemon_yellow": 1})[0][0] == (
        "lemon_yellow"
    )
    # A touch of the complement is added after all.
    ordered = in_order_of_mixing(school, {"cerulean_blue": 1, "warm_red": 3, "mid_yellow": 3})
    assert [key for key, _ in ordered] == ["mid_yellow", "warm_red", "cerulean_blue"]
    for _, plan, band in banded():
        keys = band.classroom.mix.keys
        groups = {plan.box.paint(key).group for key in keys}
        if len(keys) == 2 and len(groups) == 2 and groups <= {"yellow", "red", "blue"}:
            first, last = (plan.box.paint(key).tints_strongly for key in keys)
            assert last or not first


def test_a_plan_says_once_that_parts_fit_the_measured_make():
    plan = sky_plan("dusk")
    text = parts_note(plan.box, plan.chosen_mixes)
    assert text.startswith("Parts fit the paints that were measured; yours may be stronger.")
    assert "less warm red or crimson and add it last" in text
    assert parts_note(TWELVE_PAN, [make_mix(TWELVE_PAN, {"ultramarine": 1}, 0.002)]) == ""


def test_no_colour_is_half_its_own_complement():
    """4 cerulean blue : 3 warm red : 1 mid yellow is no orange: a toner is a third at the most."""
    for where, _, band in banded():
        own, hue = band.classroom, band.target.hue
        if not own.toners or hue.family is None or own.lacks:
            continue
        if is_blue(hue.wheel_deg, hue.family):
            continue
        assert float(own.toner_share) <= 0.5, (where, own.mix.parts)
        if own.toner_share > 0.45:
            base = max(own.mix.share(key) for key in own.base)
            assert base >= max(own.mix.share(key) for key in own.toners), where


def test_a_dull_yellow_is_made_of_the_ochre_in_the_box():
    """Common practice; and not of a brown, a lemon and a blue beside it."""
    for Lab in ((79, 0, 21), (70, 1, 18), (84, 0, 20), (62, 2, 22)):
        band = plan_one(TWELVE_PAN, Lab)
        assert band.target.hue.family in ("yellow", "yellow-orange")
        mix = band.classroom.mix
        assert max(mix.keys, key=mix.share) == "yellow_ochre", (Lab, mix.parts)
    text = why_text(TWELVE_PAN, plan_one(TWELVE_PAN, (79, 0, 21)).classroom)
    assert text.startswith("Yellow ochre stands nearest yellow on the wheel. ")


def test_one_thinned_mix_serves_a_pale_sky():
    """Three bands so pale that the eye tells no more than their water."""
    pale = [(86, -3, -8), (89, -3, -6), (92, -2, -4)]
    plan = plan_mixes(bands([lab(*c) for c in pale]), TWELVE_PAN)
    assert plan.different_mixes == 1
    assert all(band.classroom.verdict == "matches" for band in plan.bands)


# Toning: one answer everywhere


def test_read_says_of_toning_what_the_mix_does():
    seen = set()
    for where, plan, band in banded():
        own = band.classroom
        toning = planned_toning(plan.box, band)
        text = tone_down_sentence(band.target, Wording(), toning)
        seen.add(toning.kind)
        assert " in the box" not in text, where
        if toning.kind == "toned":
            assert own.toners, where
            assert "nothing to tone down" not in text.lower(), where
            assert f" in {own.toner_share.denominator}" in text, where
        elif toning.kind in ("plain", "paper"):
            assert not own.toners, where
            assert " part" not in text, where
        if toning.kind == "plain" and band.tone_down is not None:
            said = ladder_text(plan.box, band.tone_down, band.letter, own)
            assert "plain is too intense" not in said, (where, said)
        assert tones_on_wheel(band.target, toning) <= (toning.kind == "toned"), where
    assert {"toned", "plain", "speck", "greys", "lacks"} <= seen


def test_only_paints_from_across_the_wheel_are_said_to_grey_each_other():
    """A blue and a yellow with much water are a pale green, not a grey of two complements."""
    said = 0
    for where, plan, band in banded():
        toning = planned_toning(plan.box, band)
        if toning.kind != "greys":
            continue
        said += 1
        assert band.classroom.toners, (where, band.classroom.mix.parts)
    assert said > 20


def test_no_reason_takes_back_the_one_before():
    """Never "turns it towards green", and then "burnt sienna keeps it from turning green"."""
    for where, plan, band in banded():
        if band.classroom is None:
            continue
        text = why_text(plan.box, band.classroom)
        turned = re.search(r"turns it a little towards (\S+?)\.", text)
        if turned:
            assert f"from turning {turned[1].split('-')[-1]}" not in text, (where, text)


def test_a_warning_of_thick_paint_compares_with_the_mix_that_is_shown():
    said = 0
    for where, plan, band in banded():
        own = band.classroom
        for item in band.alternatives:
            other = item.planned
            if "has to be laid thicker" in alternative_text(plan.box, own, item):
                said += 1
                assert other.mix.load_ml / mix_half_load(plan.box, dict(other.mix.parts)) > (
                    own.mix.load_ml / mix_half_load(plan.box, dict(own.mix.parts))
                ), where
    assert said


def test_the_ladders_frame_is_the_mix():
    for where, plan, band in banded():
        ladder, own = band.tone_down, band.classroom
        if ladder is None:
            continue
        if own.toners:
            rung = ladder.steps[ladder.matched]
            assert rung.fraction == own.toner_share, where
            assert float(delta_E_2000(np.array(rung.colour.Lab), np.array(own.mix.Lab))) < 0.01
        elif own.verdict == "matches":
            assert ladder.matched == 0, where
            text = ladder_text(plan.box, ladder, band.letter, own)
            assert ": none is needed" in text, where
            assert "too intense" not in text, where


# Sentences


def test_a_match_has_no_complaint():
    for where, plan, band in banded():
        own = band.classroom
        if own.verdict == "matches":
            assert shortfall_text(own) == "", where
            assert band.closest_to_show is None, where
            assert band_reach_text(band) == "", where
        for item in band.alternatives:
            text = alternative_text(plan.box, own, item)
            assert not re.search(r",,| ,|would be too|, better in .* and ", text), text


def test_the_nearest_is_not_said_of_parts_set_by_hand():
    choice = BandChoice(parts=(("ultramarine", 1),))
    options = MixOptions().with_choice("A", choice)
    for L in (15, 45, 85):
        band = plan_mixes(bands([lab(L, 60, -70)]), TWELVE_PAN, options).band("A")
        assert band.reach != "reached"
        assert "nearest" not in band_reach_text(band)


def test_a_band_that_is_not_light_is_not_left_to_the_paper():
    for where, _, band in banded():
        if band.reach == "too light":
            assert band.target.munsell.value >= 6.5, where


def test_every_hue_has_its_primaries():
    for family in FAMILIES:
        needed = primaries_for(family)
        assert set(needed) <= {"yellow", "red", "blue"}
        assert len(needed) == (1 if family in ("yellow", "red", "blue") else 2)

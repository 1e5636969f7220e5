"""What is said first: strength, washes that are missing, another sky; and what the photo has too.

Sheets are made from the sample scenes, whose truth is known: a copy with so many times the paint
(Beer's law: optical densities are multiplied), a blurred copy, or flat washes in its colours.
"""

from __future__ import annotations

import itertools

import numpy as np
import pytest
from sheet_pictures import (
    PAPER,
    checked,
    copy_of,
    photo_from,
    plain_reference,
    sample_sky,
    sheet_picture,
)
from simulator.measure import reference_from

from core.colour import srgb8_to_linear
from core.colour.working_space import linear_to_W
from core.paint.box.box import DEFAULT_BOX
from core.paint.plan import plan_mixes
from core.reading.reading import read_colour
from core.sheet import check_sheet
from core.sheet.findings.change import compare_checks
from core.sheet.findings.findings import in_plan_terms
from core.sheet.findings.planned import Planned, corrected
from core.sheet.match.likeness import apart_band_by_band, likeness, stronger
from core.sheet.match.order import profile_of
from core.sheet.match.orientation import OTHER_SKY, SAME_PAINT, judge_orientation

SCENES = ("dusk", "ember", "fell", "marsh", "pines", "quay")
COLOURED = ("dusk", "ember", "fell", "pines")


@pytest.fixture(scope="module")
def skies():
    """Every sample scene's sky with its true lines."""
    return {name: reference_from(*sample_sky(name)) for name in SCENES}


def copied(reference, strength: float = 1.0, blur: float = 0.012):
    """The sky of a reference copied, see `sheet_pictures.copy_of`."""
    return copy_of(srgb8_to_linear(reference.picture).astype(np.float64), strength, blur)


@pytest.fixture(scope="module")
def copies(skies):
    """A copy of every sky with its own strength, a little blurred."""
    return {name: copied(sky) for name, sky in skies.items()}


@pytest.mark.parametrize("strength", [0.4, 2.2])
@pytest.mark.parametrize("name", COLOURED)
def test_strength_comes_first_and_the_hues_are_praised(skies, name, strength):
    check = checked(skies[name], copied(skies[name], strength))
    assert "other sky" not in {notice.key for notice in check.notices}
    assert check.strength.told
    praise, *rest = check.findings
    assert praise.kind == "praise"
    assert praise.about == "hue"
    assert "right" in praise.text
    step = next(finding for finding in rest if finding.kind == "step")
    assert step.text.startswith("All of it is too " + ("pale" if strength < 1 else "strong"))


@pytest.mark.parametrize("blur", [0.004, 0.012])
@pytest.mark.parametrize("name", SCENES)
def test_a_blurred_copy_has_no_bloom_edge_or_pale_corner(skies, name, blur):
    """The moon of "dusk", blurred a little, is a pale patch with a rim where the photo has it."""
    check = checked(skies[name], copied(skies[name], blur=blur))
    assert (check.blooms, check.hard_edges, check.pale_corners) == ((), (), ())


def test_another_scene_is_another_sky_at_any_strength(skies):
    """Grey skies of two values are one another's at another strength: those cannot be told."""
    for name in COLOURED:
        for other in COLOURED:
            apart = likeness(skies[name].profile, skies[other].profile).apart
            assert (apart > OTHER_SKY) == (name != other)
        for strength in (0.4, 0.6, 1.6, 2.2):
            sheet = stronger(skies[name].profile, strength)
            found = likeness(skies[name].profile, sheet)
            assert found.apart < 1.0
            assert found.strength == pytest.approx(strength, rel=0.12)


def with_strengths(reference, painted, factors):
    """The painted sky in linear light, each band with so many times its paint."""
    edges = reference.bands.edges
    at = [y for a, b in itertools.pairwise(edges) for y in (a + 0.02, b - 0.02)]
    y = (np.arange(len(painted)) + 0.5) / len(painted)
    return painted ** np.interp(y, at, np.repeat(factors, 2))[:, None, None]


@pytest.mark.parametrize(("pale", "strong"), [(0.4, 2.0), (0.35, 1.0), (1.0, 2.2)])
@pytest.mark.parametrize("name", SCENES)
def test_bands_too_pale_or_too_strong_are_neither_another_sky_nor_turned(
    skies, copies, name, pale, strong
):
    reference, painted = skies[name], copies[name][:, ::2]
    bands = len(reference.bands.edges) - 1
    every = {
        tuple(np.where(at == one, pale, np.where(at == other, strong, 1.0)))
        for at in [np.arange(bands)]
        for one, other in itertools.permutations(range(bands), 2)
    }
    for factors in every:
        W = linear_to_W(with_strengths(reference, painted, factors))
        judged = judge_orientation(reference, W, profile_of(W), True)
        assert (judged.other_sky, judged.turn, judged.mirrored) == (False, 0, False)


@pytest.mark.parametrize("name", COLOURED)
def test_no_strength_of_each_band_makes_one_scene_of_another(skies, name):
    own = skies[name]
    for other in COLOURED:
        sheet = skies[other].profile
        apart = apart_band_by_band(own.profile, own.bands.lines, sheet, 1.0)
        assert (apart > SAME_PAINT) == (name != other)


def test_other_sky_never_hides_the_findings():
    green = ((0.1, 0.3, 0.1), (0.05, 0.2, 0.1), (0.2, 0.4, 0.1))
    check = check_sheet(photo_from(sheet_picture(green)), plain_reference())
    assert check.findings[0].text.startswith("This does not look like the same sky")
    spoken = {letter for finding in check.findings[1:] for letter in finding.letters}
    off = {b.letter for b in check.band_checks if "off" in (b.hue, b.value, b.intensity)}
    assert off <= spoken


FIVE = ((0.10, 0.12, 0.35), (0.25, 0.18, 0.45), (0.55, 0.25, 0.40), (0.80, 0.40, 0.25),
        (0.90, 0.75, 0.35))  # fmt: skip


def test_washes_that_are_missing_are_counted_and_named():
    reference = plain_reference(FIVE)
    check = check_sheet(photo_from(sheet_picture(FIVE[::2])), reference)
    text = next(f.text for f in check.findings if "I see" in f.text)
    assert text.startswith("I see three washes: B and D are missing.")
    assert "other sky" not in {notice.key for notice in check.notices}
    # Where a wash is missing, nothing meets: no line there has come nearer, or gone.
    change = compare_checks(check, check)
    assert not [row for row in change.rows if row.about == "placement"]


def test_one_wash_and_no_paint_say_so():
    reference = plain_reference(FIVE)
    one = check_sheet(photo_from(sheet_picture((FIVE[1],) * 5)), reference)
    assert any(f.text.startswith("I see one wash where the photo has five") for f in one.findings)
    blank = check_sheet(photo_from(sheet_picture(((1.0, 1.0, 1.0),) * 5)), reference)
    assert ["no paint" in finding.text.lower() for finding in blank.findings] == [True]


@pytest.mark.parametrize(("border", "kind"), [(80, "paper edge"), (0, "whole picture")])
def test_one_wash_to_the_edge_of_the_paper_says_what_it_is(border, kind):
    """Nothing in such a picture has an edge but the paper itself, where a desk shows around it."""
    grain = np.random.default_rng(3).normal(1, 0.03, (600 + 2 * border, 800 + 2 * border, 1))
    picture = np.ones((600 + 2 * border, 800 + 2 * border, 3)) * (0.2, 0.12, 0.06) * grain
    inside = slice(border, border + 600), slice(border, border + 800)
    picture[inside] = np.asarray(FIVE[3]) * PAPER * grain[inside]
    check = check_sheet(photo_from(np.clip(picture, 0, 1)), plain_reference(FIVE))
    keys = {notice.key for notice in check.notices}
    assert kind in keys
    assert not keys & {"corners not found", "other sky"}
    assert check.provisional
    assert any(f.text.startswith("I see one wash where the photo has five") for f in check.findings)
    low = border / (600 + 2 * border)
    assert abs(check.corners[0][1] - low) < 0.02
    single = check_sheet(photo_from(np.clip(picture, 0, 1)), plain_reference((FIVE[3],)))
    assert not any("I see one wash" in finding.text for finding in single.findings)


def test_every_band_that_is_off_is_spoken_of_once():
    wrong = ((0.10, 0.30, 0.12), (0.55, 0.50, 0.70), (0.55, 0.42, 0.45), (0.45, 0.20, 0.12),
             (0.90, 0.70, 0.60))  # fmt: skip
    check = check_sheet(photo_from(sheet_picture(wrong)), plain_reference(FIVE))
    colours = [f for f in check.findings if f.kind == "step"
               and f.about in ("hue", "value", "intensity")]  # fmt: skip
    spoken = [letter for finding in colours for letter in finding.letters]
    off = {b.letter for b in check.band_checks
           if any(v in ("close", "off") for v in (b.hue, b.value, b.intensity))}  # fmt: skip
    assert off
    assert off <= set(spoken)
    assert len(spoken) == len(set(spoken))
    assert len(check.findings) <= 5


def test_a_sheet_without_border_is_asked_about_and_its_findings_are_provisional(skies, copies):
    sky = skies["dusk"]
    check = check_sheet(photo_from(copies["dusk"] * PAPER), sky)
    assert check.provisional
    assert check.readable
    assert "whole picture" in {notice.key for notice in check.notices}
    assert any(finding.kind == "praise" for finding in check.findings)


def test_paint_to_the_edge_of_the_paper_is_asked_about(skies, copies):
    sky = skies["dusk"]
    painted = copies["dusk"] * PAPER
    h, w = painted.shape[:2]
    desk = np.ones((h + 80, w + 80, 3)) * (0.2, 0.12, 0.06)
    desk[40:-40, 40:-40] = painted
    check = check_sheet(photo_from(desk), sky)
    assert check.provisional
    assert "paper edge" in {notice.key for notice in check.notices}
    true = np.array([[40, 40], [40 + w, 40], [40 + w, 40 + h], [40, 40 + h]]) / [w + 80, h + 80]
    assert np.abs(np.asarray(check.corners) - true).max() < 0.02


def test_two_sheets_in_one_picture_are_asked_about(skies):
    sheet = sheet_picture()
    check = check_sheet(photo_from(np.concatenate([sheet, sheet], axis=1)), plain_reference())
    assert "several" in {notice.key for notice in check.notices}
    assert len(check.findings) >= 1


def test_a_mix_that_came_out_too_red_is_leaned_towards_blue():
    """Parts by the film of `core.paint`: a violet with more crimson than planned."""
    sky = plain_reference(((0.18, 0.12, 0.42),))
    plan = plan_mixes(sky.readings, DEFAULT_BOX)
    mix = plan.bands[0].classroom.mix
    assert {"crimson", "ultramarine"} <= set(mix.keys) or len(mix.keys) > 1
    L, a, b = mix.Lab
    redder = corrected(plan.box, mix, read_colour((L, a + 8, b + 8)))
    assert redder is not None
    assert redder.old == tuple(count for _, count in mix.parts)
    assert redder.new != redder.old
    assert set(redder.less).isdisjoint(redder.more)
    assert corrected(plan.box, mix, read_colour(mix.Lab)) is None


def test_lines_are_told_in_lengths_where_the_paper_is_known():
    reference = plain_reference()
    paint = [(0.2222, 0.4045, 0.7209)] * 9 + [(0.8889, 0.7416, 0.2558)] * 6
    check = check_sheet(photo_from(sheet_picture(tuple(paint + [(0.5, 0.2247, 0.1512)] * 9))),
                        reference)  # fmt: skip
    plan = plan_mixes(reference.readings, DEFAULT_BOX)
    plain = [f.text for f in check.findings if f.about == "placement"]
    told = in_plan_terms(check, Planned(None, plan.sheet, "cm"))
    lengths = [f.text for f in told.findings if f.about == "placement"]
    assert plain
    assert "cm" not in plain[0]
    assert " cm)" in lengths[0]

"""A box with paints of its own is planned as one of measured paints is."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest
from paint_tools import sky_plan

import sample_scenes
from core.paint.box.box import THIRTEEN, TWELVE_PAN, Box
from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.hues import paint_deg
from core.paint.pigment.leaning import group_of, lean_of
from core.paint.pigment.measured import load_Lab, measured_paints
from core.paint.pigment.paint import Paint
from core.paint.search.recipes import whole_table


def card_of(key: str, stronger: float = 1.0) -> CardPaint:
    """A card that says of a paint just what was measured."""
    data = measured_paints()
    row = data.index(key)
    K, S = data.K[row] * stronger, data.S[row] * stronger
    return CardPaint(tuple(K), tuple(S), (), 1.0, "known well", "window", 1)


def owned(paint: Paint, stronger: float = 1.0) -> Paint:
    """The paint as one of the class's own."""
    card = card_of(paint.measured_as, stronger)
    return replace(paint, key=f"own_{paint.key}", card=card)


def test_boxes_of_measured_paints_share_one_world():
    assert TWELVE_PAN.pigments is measured_paints()
    assert TWELVE_PAN.only(("ultramarine",)).pigments is THIRTEEN.pigments


def test_own_paints_stand_beside_the_measured_ones_and_only_the_box_is_searched():
    own = owned(CATALOGUE["crimson"])
    box = Box("ours", (*TWELVE_PAN.paints, own))
    pigments = box.pigments
    assert pigments.keys == (*measured_paints().keys, "own_crimson")
    assert {pigments.keys[row] for row in pigments.searched} == {
        paint.pigment for paint in box.paints
    }
    assert pigments is Box("other", box.paints).pigments
    load = box.load_vector({"own_crimson": 0.01, "ultramarine": 0.02})
    as_measured = TWELVE_PAN.load_vector({"crimson": 0.01, "ultramarine": 0.02})
    np.testing.assert_allclose(pigments.Lab(load), load_Lab(as_measured), atol=1e-10)


@pytest.mark.parametrize("scene", sample_scenes.names()[:3])
def test_own_paints_just_like_measured_ones_make_the_same_plan(scene):
    """All twelve of a school box known from a card that says just what was measured."""
    box = Box("ours", tuple(map(owned, TWELVE_PAN.paints)))

    def shown(plan, strip):
        return [
            [
                tuple((key.removeprefix(strip), count) for key, count in planned.mix.parts)
                for planned in (band.classroom, band.closest)
                if planned is not None
            ]
            for band in plan.bands
        ]

    # Cerulean leans, yellow ochre is an earth, ...: all that follows from group and leaning too.
    assert shown(sky_plan(scene, box), "own_") == shown(sky_plan(scene, TWELVE_PAN), "")


def test_a_paint_twice_as_strong_takes_half_the_parts():
    weak, strong = owned(CATALOGUE["crimson"]), owned(CATALOGUE["crimson"], 2.0)
    assert strong.half_load_ml == pytest.approx(weak.half_load_ml / 2, rel=0.06)
    assert strong.tint_parts < 0.6 * weak.tint_parts
    box = Box("ours", (strong, CATALOGUE["crimson"]))
    Lab = box.pigments.Lab(box.load_vector({strong.key: 0.001}))
    np.testing.assert_allclose(
        Lab, box.pigments.Lab(box.load_vector({"crimson": 0.002})), atol=0.05
    )


def test_tables_of_two_boxes_are_apart():
    one = Box("one", (owned(CATALOGUE["crimson"]), CATALOGUE["ultramarine"])).pigments
    other = Box("two", (owned(CATALOGUE["crimson"], 2.0), CATALOGUE["ultramarine"])).pigments
    assert one is not other
    assert len(whole_table(one).subsets) == 3
    assert not np.array_equal(whole_table(one).Lab, whole_table(other).Lab)
    assert len(whole_table().subsets) == 13 + 78 + 286


@pytest.mark.parametrize("key", measured_paints().keys)
def test_group_and_leaning_come_from_the_fitted_colour(key):
    """The catalogue's words for the measured paints: common practice."""
    paint, card = CATALOGUE[key], card_of(key)
    assert group_of(card) == paint.group
    if key != "cobalt_blue":  # its washes and ultramarine's cannot be told apart
        assert lean_of(card, paint.group) == paint.leans
    assert paint_deg(owned(paint)) == pytest.approx(paint_deg(paint)) or paint_deg(paint) is None


def test_a_violet_that_is_said_to_be_like_a_blue_is_a_violet():
    data = measured_paints()
    red, blue = data.index("alizarin_crimson"), data.index("ultramarine")
    K, S = 4 * data.K[red] + data.K[blue], 4 * data.S[red] + data.S[blue]
    assert group_of(CardPaint(tuple(K), tuple(S), (), 1.0, "roughly", "window", 1)) == "violet"

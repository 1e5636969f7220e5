from __future__ import annotations

import pytest

from core import mixing
from core.errors import BoxError
from core.paint.box.box import GENERIC_BOXES, SPLIT_PRIMARY, THIRTEEN, TWELVE_PAN, Box
from core.paint.box.own_paint import own_paint
from core.paint.mixture.mix import make_mix
from core.paint.options import BandChoice
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.wash.amounts import SHEETS
from core.study import Study

MIX = make_mix(TWELVE_PAN, {"ultramarine": 3, "crimson": 2}, 0.01)
STUDY = Study(box=TWELVE_PAN)


def test_a_paint_ticked_off_and_on_leaves_the_box_as_it_was() -> None:
    without = mixing.tick_paint(STUDY, "sap_green", False)
    assert "sap_green" not in without.box.by_key
    assert without.box.name == TWELVE_PAN.name
    assert mixing.tick_paint(without, "sap_green", True) == STUDY
    assert mixing.tick_paint(STUDY, "sap_green", True) is STUDY
    with pytest.raises(KeyError):
        mixing.tick_paint(STUDY, "gold", True)


@pytest.mark.parametrize("box", GENERIC_BOXES.values(), ids=GENERIC_BOXES.keys())
def test_any_paint_finds_back_to_its_place(box: Box) -> None:
    for key in box.keys:
        study = mixing.tick_paint(Study(box=box), key, False)
        assert mixing.tick_paint(study, key, True).box == box


def test_every_paint_of_the_catalogue_can_be_added_stand_ins_beside_their_like() -> None:
    study = Study(box=Box("one", (CATALOGUE["ultramarine"],)))
    for key in reversed(CATALOGUE):
        study = mixing.tick_paint(study, key, True)
    assert set(study.box.keys) == set(CATALOGUE)
    for paint in study.box.paints:
        if paint.is_stand_in:
            above = study.box.paints[study.box.keys.index(paint.key) - 1]
            assert above.measured_as == paint.measured_as


def test_the_last_paint_stays() -> None:
    one = Study(box=Box("one", (CATALOGUE["ultramarine"],)))
    with pytest.raises(BoxError, match="at least one paint"):
        mixing.tick_paint(one, "ultramarine", False)


def test_an_own_paint_is_put_in_once() -> None:
    study = mixing.put_paint(STUDY, own_paint("sky blue", "cerulean_blue"))
    assert study.box.keys[-1] == "own_sky_blue"
    with pytest.raises(BoxError, match="sky blue"):
        mixing.put_paint(study, own_paint("sky blue", "cobalt_blue"))


def test_a_box_is_named() -> None:
    assert mixing.name_box(STUDY, "  Our   cupboard ").box.name == "Our cupboard"
    for name in ("", "   ", "x" * 81):
        with pytest.raises(BoxError, match="1 to 80"):
            mixing.name_box(STUDY, name)


def test_another_box_drops_wishes_about_paints_it_lacks() -> None:
    study = mixing.pin(STUDY, "A", "sap_green", True)
    study = mixing.forbid(study, "A", "ultramarine", True)
    study = mixing.set_parts(study, "B", (("sap_green", 2), ("crimson", 1)), 0.01)
    study = mixing.set_parts(study, "C", (("crimson", 1),), 0.01)
    study = mixing.choose_box(study, SPLIT_PRIMARY)
    assert study.box is SPLIT_PRIMARY
    assert study.mix.choice("A") == BandChoice(forbidden=("ultramarine",))
    assert study.mix.choice("B") == BandChoice()
    assert study.mix.choice("C").parts == (("crimson", 1),)
    assert [letter for letter, _ in study.mix.choices] == ["A", "C"]
    # A tick that takes a wished paint away does the same.
    study = mixing.tick_paint(study, "crimson", False)
    assert study.mix.choice("C") == BandChoice()


def test_pinned_and_forbidden_exclude_each_other() -> None:
    study = mixing.pin(STUDY, "B", "ultramarine", True)
    assert study.mix.choice("B").pinned == ("ultramarine",)
    study = mixing.forbid(study, "B", "ultramarine", True)
    assert study.mix.choice("B") == BandChoice(forbidden=("ultramarine",))
    study = mixing.pin(study, "B", "ultramarine", True)
    assert study.mix.choice("B") == BandChoice(pinned=("ultramarine",))
    study = mixing.pin(study, "B", "ultramarine", False)
    assert study == STUDY


def test_a_paint_is_left_out_of_every_mix_and_used_again() -> None:
    study = mixing.pin(STUDY, "A", "ultramarine", True)
    study = mixing.pin(study, "A", "crimson", True)
    study = mixing.set_parts(study, "B", (("ultramarine", 2), ("crimson", 1)), 0.01)
    study = mixing.set_parts(study, "C", (("crimson", 1),), 0.01)
    out = mixing.forbid_everywhere(study, "ultramarine", True)
    assert out.box == study.box
    assert out.mix.forbidden == ("ultramarine",)
    assert out.mix.choice("A") == BandChoice(pinned=("crimson",))
    assert out.mix.choice("B") == BandChoice()
    assert out.mix.choice("C") == study.mix.choice("C")
    assert mixing.forbid_everywhere(out, "ultramarine", True) == out
    back = mixing.forbid_everywhere(out, "ultramarine", False)
    assert back.mix.forbidden == ()
    # Taken out of the box it is forgotten here too.
    assert mixing.tick_paint(out, "ultramarine", False).mix.forbidden == ()


def test_one_paint_at_least_is_left_to_mix_with() -> None:
    study = STUDY
    for key in study.box.keys[1:]:
        study = mixing.forbid_everywhere(study, key, True)
    with pytest.raises(BoxError, match="No paint is left"):
        mixing.forbid_everywhere(study, study.box.keys[0], True)


def test_three_paints_are_pinned_at_most() -> None:
    study = STUDY
    for key in TWELVE_PAN.keys[:3]:
        study = mixing.pin(study, "A", key, True)
    with pytest.raises(BoxError, match="three"):
        mixing.pin(study, "A", TWELVE_PAN.keys[3], True)


def test_parts_by_hand_start_from_the_mix_and_keep_the_load_free() -> None:
    study = mixing.set_part(STUDY, "A", MIX, "crimson", 3)
    assert study.mix.choice("A") == BandChoice(parts=(("ultramarine", 3), ("crimson", 3)))
    study = mixing.set_part(study, "A", MIX, "lemon_yellow", 1)
    assert dict(study.mix.choice("A").parts or ())["lemon_yellow"] == 1
    study = mixing.set_part(study, "A", MIX, "crimson", 0)
    assert study.mix.choice("A").parts == (("ultramarine", 3), ("lemon_yellow", 1))
    assert mixing.search_again(study, "A") == STUDY


def test_parts_that_cannot_be_mixed_are_refused() -> None:
    one = mixing.set_parts(STUDY, "A", (("crimson", 1), ("ultramarine", 0)))
    assert one.mix.choice("A").parts == (("crimson", 1),)
    with pytest.raises(BoxError, match="at least one part"):
        mixing.set_part(one, "A", MIX, "crimson", 0)
    with pytest.raises(BoxError, match="12 parts"):
        mixing.set_part(one, "A", MIX, "crimson", 13)


def test_stronger_and_weaker_are_inverse() -> None:
    study = mixing.set_load(STUDY, "A", MIX, 1)
    assert study.mix.choice("A").load_ml == pytest.approx(MIX.load_ml * 1.25)
    study = mixing.set_load(study, "A", MIX, -1)
    assert study.mix.choice("A").load_ml == pytest.approx(MIX.load_ml)
    taken = mixing.use_mix(STUDY, "A", MIX)
    assert taken.mix.choice("A") == BandChoice(parts=MIX.parts, load_ml=MIX.load_ml)


def test_hand_set_parts_keep_pins_and_a_pin_lets_go_of_the_hand() -> None:
    study = mixing.pin(STUDY, "A", "ultramarine", True)
    study = mixing.use_mix(study, "A", MIX)
    assert study.mix.choice("A").pinned == ("ultramarine",)
    study = mixing.forbid(study, "A", "black", True)
    assert study.mix.choice("A").parts is None
    assert mixing.forget_wishes(study, "A") == STUDY


def test_what_is_asked_for_the_whole_plan() -> None:
    study = mixing.set_sheet(STUDY, SHEETS["A3"])
    study = mixing.set_own_figure(study, 7.5)
    study = mixing.set_drying(study, 0.5)
    study = mixing.allow_white(study, True)
    mix = study.mix
    assert (mix.sheet.name, mix.own_ml_per_1000_cm2) == ("A3", 7.5)
    assert (mix.drying_steps, mix.allow_white) == (0.5, True)
    assert mixing.choose_box(study, THIRTEEN).mix == mix

"""Boxes: what comes along, what a teacher saves, and files that are no box."""

from __future__ import annotations

import json

import numpy as np
import pytest

from core import files
from core.errors import BoxError
from core.paint.box.box import (
    DEFAULT_BOX,
    GENERIC_BOXES,
    SPLIT_PRIMARY,
    THIRTEEN,
    TWELVE_PAN,
    Box,
)
from core.paint.box.box_file import box_from_json, box_to_json, open_box, save_box
from core.paint.box.cautions import cautions_for
from core.paint.box.own_paint import own_paint
from core.paint.pigment.catalogue import CATALOGUE
from core.paint.pigment.measured import measured_paints
from core.paint.words.plan import caution_text, paint_note, stand_ins_text


def test_the_boxes_that_come_along():
    assert [len(box.paints) for box in (TWELVE_PAN, SPLIT_PRIMARY, THIRTEEN)] == [12, 6, 13]
    assert set(GENERIC_BOXES) == {"school", "primary", "measured"}
    assert DEFAULT_BOX is TWELVE_PAN
    assert THIRTEEN.keys == measured_paints().keys


def test_measured_paints_are_no_stand_ins_and_the_others_say_whose_measurements_they_use():
    assert not any(paint.is_stand_in for paint in THIRTEEN.paints)
    for paint in TWELVE_PAN.paints:
        assert paint.measured_as in measured_paints().keys
        assert ("using" in paint_note(paint)) == paint.is_stand_in
    assert "mid yellow (cadmium yellow)" in stand_ins_text(TWELVE_PAN)
    assert stand_ins_text(TWELVE_PAN, ["ultramarine"]) == ""
    assert stand_ins_text(THIRTEEN) == ""


def test_two_names_for_one_measured_paint_add_up():
    box = Box("both", (CATALOGUE["warm_red"], CATALOGUE["cadmium_red"]))
    vector = box.load_vector({"warm_red": 0.01, "cadmium_red": 0.02})
    assert vector[measured_paints().index("cadmium_red")] == pytest.approx(0.03)
    assert np.count_nonzero(vector) == 1


def test_a_box_comes_back_from_its_file(tmp_path):
    box = Box("Our cupboard", (CATALOGUE["ultramarine"], own_paint("sky", "cerulean_blue")))
    path = tmp_path / "ours.json"
    save_box(box, path)
    assert open_box(path) == box
    assert box_from_json(box_to_json(TWELVE_PAN)) == TWELVE_PAN


def test_saving_leaves_the_old_box_when_it_fails(tmp_path, monkeypatch):
    path = tmp_path / "ours.json"
    save_box(TWELVE_PAN, path)
    before = path.read_bytes()

    def full(*_):
        raise OSError(28, "no space left")

    monkeypatch.setattr(files.os, "replace", full)
    with pytest.raises(BoxError, match=r"no room left for ours\.json"):
        save_box(SPLIT_PRIMARY, path)
    assert path.read_bytes() == before
    assert [item.name for item in tmp_path.iterdir()] == ["ours.json"]


def test_saving_where_no_folder_is(tmp_path):
    with pytest.raises(BoxError, match=r"no folder for ours\.json"):
        save_box(TWELVE_PAN, tmp_path / "missing" / "ours.json")


GOOD = {"gradewash_box": 1, "name": "ours", "paints": ["ultramarine"]}


@pytest.mark.parametrize(
    ("value", "says"),
    [
        ([], "holds no paint box"),
        ({"name": "x"}, "holds no paint box"),
        ({**GOOD, "gradewash_box": 3}, "newer version"),
        ({**GOOD, "name": " "}, "no usable name"),
        ({**GOOD, "name": "x" * 81}, "no usable name"),
        ({**GOOD, "paints": []}, "1 to 40 paints"),
        ({**GOOD, "paints": ["ultramarine"] * 41}, "1 to 40 paints"),
        ({**GOOD, "paints": ["ultramarine"] * 2}, "ultramarine stands twice"),
        ({**GOOD, "paints": ["mauve"]}, "no paint mauve"),
        ({**GOOD, "paints": [3]}, "cannot be read"),
        ({**GOOD, "paints": [{"name": "sky", "like": "mauve"}]}, "Nobody measured mauve"),
        ({**GOOD, "paints": [{"name": "", "like": "ultramarine"}]}, "needs a name"),
    ],
)
def test_what_is_no_box_is_said_in_one_sentence(value, says, tmp_path):
    path = tmp_path / "box.json"
    path.write_text(json.dumps(value), encoding="utf-8")
    with pytest.raises(BoxError, match=says) as caught:
        open_box(path)
    assert "\n" not in str(caught.value)


@pytest.mark.parametrize("data", [b"", b"{", b"\xff\xfe", b"[" * 50_000, b" " * 500_000])
def test_damaged_files_are_refused(data, tmp_path):
    path = tmp_path / "box.json"
    path.write_bytes(data)
    with pytest.raises(BoxError, match=r"box\.json"):
        open_box(path)


def test_a_missing_file(tmp_path):
    with pytest.raises(BoxError, match=r"There is no file none\.json"):
        open_box(tmp_path / "none.json")


def test_cautions_have_the_agreed_words():
    cautions = cautions_for(THIRTEEN, THIRTEEN.keys)
    listed = {caution.paint: caution.lists for caution in cautions}
    assert listed == {
        "cadmium_yellow": ("cadmium",),
        "cadmium_red": ("cadmium",),
        "cerulean_blue": ("cobalt",),
        "cobalt_blue": ("cobalt",),
    }
    text = caution_text(THIRTEEN, cautions[0])
    assert text.startswith("Cadmium red (usually PR108): The label of this paint lists cadmium;")
    assert text.endswith("your school's rules come first.")
    own = Box("own", (own_paint("our red", "cadmium_red"),))
    assert "perhaps cadmium" in caution_text(own, cautions_for(own, own.keys)[0])

"""`gradewash check`: words, JSON, and errors in one line."""

from __future__ import annotations

import json
import re

import numpy as np
import pytest
from PIL import Image
from sheet_pictures import PAINT, photo_from, sheet_picture
from simulator.camera import encode

from core.cli import run


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    folder = tmp_path_factory.mktemp("check")
    sky = np.repeat(np.asarray(PAINT), 100, axis=0)[:, None] * np.ones((1, 240, 1))
    Image.fromarray((encode(sky) * 255 + 0.5).astype(np.uint8)).save(folder / "sky.png")
    weak = tuple(tuple(c**0.45 for c in colour) for colour in PAINT)
    for name, paint in (("first.png", weak), ("second.png", PAINT)):
        Image.fromarray(photo_from(sheet_picture(paint)).pixels).save(folder / name)
    return folder


def check(folder, *arguments: str) -> int:
    names = [str(folder / a) if a.endswith(".png") else a for a in arguments]
    return run(["check", *names, "--lines", "0.3333,0.6667", "--horizon", "1"])


def test_json_has_the_documented_form(folder, capsys):
    assert check(folder, "sky.png", "first.png", "second.png", "--changed", "value", "--json") == 0
    whole = json.loads(capsys.readouterr().out)
    assert set(whole) == {"reference", "sheets", "change"}
    assert [band["letter"] for band in whole["reference"]["bands"]] == ["A", "B", "C"]
    first, second = whole["sheets"]
    assert second["file"] == "second.png"
    assert len(first["corners"]) == 4
    assert 0 <= first["corner_confidence"] <= 1
    assert set(first["light"]) == {"residual", "sides_compared", "notices"}
    band = second["bands"][0]
    for name in ("letter", "top", "bottom", "line_shift_pct", "hue_steps", "value_steps",
                 "chroma_steps", "delta_E_2000", "left", "centre", "right"):  # fmt: skip
        assert name in band
    assert band["verdicts"] == {"hue": "matches", "value": "matches", "intensity": "matches"}
    assert abs(band["line_shift_pct"]) <= 1
    assert second["bands"][2]["line_shift_pct"] is None
    assert second["scores"] == {"hue": 10, "value": 10, "intensity": 10, "placement": 10}
    assert all(set(f) == {"kind", "about", "bands", "text"} for f in first["findings"])
    assert whole["change"]["intended"] == "value"
    assert whole["change"]["worked"] == "improved"


def test_one_sheet_has_no_change(folder, capsys):
    assert check(folder, "sky.png", "second.png", "--json") == 0
    assert json.loads(capsys.readouterr().out)["change"] is None


def test_words_hold_no_scores_unless_asked(folder, capsys):
    assert check(folder, "sky.png", "first.png", "second.png") == 0
    text = capsys.readouterr().out
    assert "Sheet 1, first.png" in text
    assert "Sheet 2 against sheet 1" in text
    assert "Scores" not in text
    assert text.count("A phone photo does not show") == 1
    assert check(folder, "sky.png", "second.png", "--scores") == 0
    assert "Scores, a second opinion" in capsys.readouterr().out


def test_corners_by_hand_are_kept(folder, capsys):
    assert check(folder, "sky.png", "second.png", "--corners", "190,70,430,70,430,410,190,410",
                 "--json") == 0  # fmt: skip
    sheet = json.loads(capsys.readouterr().out)["sheets"][0]
    assert sheet["corners"] == [[190, 70], [430, 70], [430, 410], [190, 410]]
    assert sheet["corner_confidence"] == 1


@pytest.mark.parametrize(
    ("arguments", "says"),
    [
        (("--corners", "1,2,3"), "eight numbers"),
        (("--corners", "1,2,3,4,5,6,7,x"), "eight numbers"),
        (("--corners", "0,0,9,9,9,0,0,9"), "clockwise"),
        (("--turned", "7"), "0 to 3"),
        (("--turned", "1", "--turned", "1"), "leave one out"),
        (("--changed", "value"), "second sheet"),
        (("second.png", "--changed", "mood"), "placement"),
    ],
)
def test_what_cannot_be_is_one_line(folder, capsys, arguments, says):
    assert check(folder, "sky.png", "first.png", *arguments) == 2
    told = capsys.readouterr()
    assert told.out == ""
    assert told.err.startswith("gradewash: ")
    assert len(told.err.strip().splitlines()) == 1
    assert says in told.err


def test_a_missing_sheet_is_one_line(folder, capsys):
    assert check(folder, "sky.png", "none.png") == 2
    assert len(capsys.readouterr().err.strip().splitlines()) == 1


@pytest.fixture(scope="module")
def plain(folder):
    """A picture without any painting: soft blots, and no straight edge among them."""
    from scipy.ndimage import gaussian_filter

    blots = gaussian_filter(np.random.default_rng(1).normal(size=(400, 600, 3)), (25, 25, 0))
    pixels = 128 + 70 * blots / blots.std()
    Image.fromarray(np.clip(pixels, 0, 255).astype(np.uint8)).save(folder / "plain.png")
    return "plain.png"


NUMBERS = r"--corners (-?\d+,){7}-?\d+"


def test_corners_that_are_not_sure_are_given_as_numbers_and_the_findings_all_the_same(
    folder, capsys, plain
):
    assert check(folder, "sky.png", plain) == 0
    out = capsys.readouterr().out
    assert len(re.findall(NUMBERS, " ".join(out.split()))) == 1
    assert "drag" not in out
    assert "Provisional" in out
    assert "Band" in out


def test_the_second_sheet_names_its_own_option(folder, capsys, plain):
    assert check(folder, "sky.png", "first.png", plain) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert re.search("--corners auto " + NUMBERS, out)
    assert "against sheet 1" in out
    assert check(folder, "sky.png", "first.png", plain, "--json") == 0
    whole = json.loads(capsys.readouterr().out)
    first, second = whole["sheets"]
    assert (first["provisional"], second["provisional"]) == (False, True)
    assert any("--corners auto" in notice["text"] for notice in second["notices"])
    assert second["findings"]
    assert set(second["strength"]) == {"share", "told"}
    assert set(second["washes"]) == {"kind", "missing"}


def test_corners_may_be_left_as_found(folder, capsys):
    assert check(folder, "sky.png", "first.png", "second.png", "--corners", "auto", "--corners",
                 "190,70,430,70,430,410,190,410", "--json") == 0  # fmt: skip
    first, second = json.loads(capsys.readouterr().out)["sheets"]
    assert first["corner_confidence"] < 1
    assert second["corner_confidence"] == 1


def test_a_sheet_upside_down_names_the_turn(folder, capsys):
    with Image.open(folder / "second.png") as picture:
        picture.rotate(180).save(folder / "round.png")
    assert check(folder, "sky.png", "round.png") == 0
    out = capsys.readouterr().out
    assert out.count("upside down") == 1
    assert "with --turned 2." in out
    assert check(folder, "sky.png", "round.png", "--turned", "2") == 0
    assert "upside down" not in capsys.readouterr().out


def test_the_change_lists_what_changed_only(folder, capsys):
    assert check(folder, "sky.png", "first.png", "second.png") == 0
    table = capsys.readouterr().out.partition("Sheet 2 against sheet 1")[2]
    assert "nearer" in table
    assert not re.search(r"  (\S+(?: \S+)*) +\1 +stayed", table)
    assert "read the same on both sheets" in table


def test_an_error_names_its_file(folder, capsys):
    (folder / "letter.png").write_text("no picture")
    assert check(folder, "sky.png", "first.png", "letter.png") == 2
    assert "letter.png: This is not a picture" in capsys.readouterr().err

"""`gradewash paints`: a card's picture to a box, the documented JSON, one line an error."""

from __future__ import annotations

import json
from contextlib import redirect_stderr, redirect_stdout
from io import StringIO

import numpy as np
import pytest
from PIL import Image
from simulator.swatch_photos import LOADS, Stroke, painted, printed

from core.cli import run
from core.colour import XYZ_to_linear, linear_to_srgb
from core.paint.box.box import TWELVE_PAN
from core.paint.box.box_file import open_box, save_box
from core.paint.pigment.measured import half_load_ml, measured_paints
from core.swatches.asking import box_with_cards, cards_for

ASKED = (("our blue", "ultramarine"), ("our yellow", "mid_yellow"), ("school red", "crimson"))
CARDS = cards_for(ASKED, TWELVE_PAN)
LIKE = {"ultramarine": "ultramarine", "mid_yellow": "cadmium_yellow", "crimson": "alizarin_crimson"}


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    """A box, and a scan of its painted card."""
    place = tmp_path_factory.mktemp("paints")
    (card,) = CARDS
    data, nature = measured_paints(), {row.key: LIKE[row.like] for row in card.rows}
    strokes = {}
    for number, row in enumerate(card.rows):
        for field in range(3):
            keys = [nature[row.key]] + ([nature[row.partners[field - 1]]] if field else [])
            vector = np.zeros(len(data.keys))
            for key in keys:
                vector[data.index(key)] += 1 / len(keys)
            R = data.reflectance(LOADS[:, None] * vector / 100)
            linear = XYZ_to_linear(R @ data.weights) / XYZ_to_linear(data.paper @ data.weights)
            half = half_load_ml(keys[0]) * 100
            strokes[number, field] = Stroke(np.maximum(linear, 0), half * 22, half * 0.6)
    page = printed(card.code, [row.name for row in card.rows])
    scene = painted(page, strokes, np.random.default_rng(1))[::2, ::2]
    pixels = np.round(linear_to_srgb(np.clip(scene * 0.85, 0, 1)) * 255).astype(np.uint8)
    Image.fromarray(pixels).save(place / "scan.png")
    Image.fromarray(np.full((400, 300, 3), 200, np.uint8)).save(place / "empty.png")
    save_box(box_with_cards(TWELVE_PAN, CARDS), place / "box.json")
    return place


def called(*arguments):
    out, err = StringIO(), StringIO()
    with redirect_stdout(out), redirect_stderr(err):
        code = run([str(one) for one in arguments])
    return code, out.getvalue(), err.getvalue()


def test_a_scan_becomes_paints_of_the_box(folder):
    ours = folder / "ours.json"
    code, out, err = called(
        "paints", folder / "scan.png", "--box", folder / "box.json", "-o", ours, "--scan"
    )
    assert (code, err) == (0, "")
    for line in ("Our blue: known", "Our yellow: known", "School red: known", "Wrote ours.json."):
        assert line in out
    box = open_box(ours)
    assert {"own_our_blue", "own_our_yellow", "own_school_red"} <= set(box.keys)
    assert box.paint("own_our_blue").card.light == "scan"


def test_the_json_tells_all(folder):
    code, out, _ = called(
        "paints", folder / "scan.png", "--box", folder / "box.json", "--scan", "--json"
    )
    assert code == 0
    found = json.loads(out)
    assert list(found) == [
        "card", "code_read", "light", "corners", "paints", "fields", "questions", "said",
    ]  # fmt: skip
    assert found["card"] == CARDS[0].code
    assert found["code_read"] is True
    assert [paint["group"] for paint in found["paints"]] == ["blue", "yellow", "red"]
    assert len(found["fields"]) == 9
    assert {field["word"] for field in found["fields"]} == {"read"}
    assert found["fields"][1]["partner"] == "school red"
    assert found["questions"] == found["said"] == []


@pytest.mark.parametrize(
    ("picture", "box", "more", "says"),
    [
        ("empty.png", "box.json", (), "No swatch card was found in this picture"),
        ("scan.png", "primary", (), "This is a card of other paints"),
        ("scan.png", "box.json", ("--scan", "--lamps"), "A scan knows no lamps"),
        ("scan.png", "box.json", ("--page", "2"), "There is no page 2"),
        ("scan.png", "box.json", ("-o", "scan.png"), "would replace what is read"),
        ("none.png", "box.json", (), "none.png"),
        ("scan.png", "nowhere", (), "There is no box nowhere"),
    ],
)
def test_what_goes_wrong_is_one_line(folder, monkeypatch, picture, box, more, says):
    monkeypatch.chdir(folder)
    code, out, err = called("paints", picture, "--box", box, *more)
    assert (code, out) == (2, "")
    assert says in err
    assert err.count("\n") == 1

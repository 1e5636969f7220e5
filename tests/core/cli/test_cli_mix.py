"""`gradewash mix`: the words, the documented JSON, and one line for every error."""

from __future__ import annotations

import json
from contextlib import redirect_stdout
from io import StringIO
from pathlib import Path

import pytest

import sample_scenes
from core.cli import run
from core.paint.box.box import TWELVE_PAN
from core.paint.box.box_file import save_box

ROOT = Path(__file__).parents[3]
DUSK = str(sample_scenes.path("dusk"))
FELL = str(sample_scenes.path("fell"))
BAND_FIELDS = [
    "mixes",
    "alternatives",
    "reach",
    "tone_down",
    "meets_below",
    "amount_ml",
    "second_mix",
]
MIX_FIELDS = [
    "kind",
    "parts",
    "strength",
    "load_ml_per_unit",
    "predicted_Lab",
    "predicted_srgb",
    "delta_E_2000",
    "falls_short",
    "why",
]


def printed(capsys, *argv) -> str:
    assert run(["mix", *argv]) == 0
    return capsys.readouterr().out


def as_json(capsys, *argv):
    return json.loads(printed(capsys, *argv, "--json"))


@pytest.fixture(scope="module")
def dusk():
    """The JSON of one run, read once."""
    out = StringIO()
    with redirect_stdout(out):
        assert run(["mix", DUSK, "--json"]) == 0
    return json.loads(out.getvalue())


def test_the_plan_reads_from_the_top_down(capsys):
    # The two bands above its clouds.
    text = printed(capsys, FELL, "--lines", "0.22", "--horizon", "0.43")
    lines = text.splitlines()
    assert lines[0] == "fell.jpg. Box: twelve-pan school box."
    assert "  5 ultramarine : 1 burnt sienna, milk strength. Matches." in lines
    assert any(line.startswith("  The same mix as A, with more water.") for line in lines)
    assert "A graded wash: one mix, thinned from band to band." in lines
    places = [text.index(f"Band {letter} is") for letter in "AB"]
    assert places == sorted(places)
    assert all(line[:1].isupper() or line[:1] in " 5" or not line for line in lines[1:])


def test_json_is_that_of_read_and_more(dusk, capsys):
    assert run(["read", DUSK, "--json"]) == 0
    read = json.loads(capsys.readouterr().out)
    assert {key: dusk[key] for key in ("photo", "horizon")} == {
        key: read[key] for key in ("photo", "horizon")
    }
    assert list(dusk) == [*read, "box", "order", "cautions"]
    for band, read_band in zip(dusk["bands"], read["bands"], strict=True):
        assert {key: band[key] for key in read_band} == read_band
        assert list(band) == [*read_band, *BAND_FIELDS]


def test_json_fields(dusk):
    assert dusk["box"] == {"name": "twelve-pan school box", "paints": list(TWELVE_PAN.keys)}
    for band in dusk["bands"]:
        assert [mix["kind"] for mix in band["mixes"]] in (["classroom"], ["classroom", "closest"])
        for mix in band["mixes"]:
            assert list(mix) == MIX_FIELDS
            assert set(mix["falls_short"]) == {"hue", "value", "intensity"}
            assert all(isinstance(n, int) and n > 0 for n in mix["parts"].values())
        for other in band["alternatives"]:
            assert list(other) == [*MIX_FIELDS, "prefer"]
        fractions = [step["fraction"] for step in band["tone_down"]]
        usual = [0.0, 0.05, 0.1, 0.2, 0.3333]  # the mix's own share takes one's place
        assert sum(one != other for one, other in zip(fractions, usual, strict=True)) <= 1
        assert fractions == sorted(fractions)
        for step in band["tone_down"]:
            assert list(step) == ["fraction", "toner", "srgb", "chroma", "hue", "note"]
    meetings = [band["meets_below"] for band in dusk["bands"]]
    assert meetings[-1] is None
    for met in meetings[:-1]:
        assert list(met) == ["path", "named", "note"]
        assert len(met["path"]) == 9
    assert all(isinstance(text, str) for text in dusk["order"] + dusk["cautions"])


def test_the_documents_name_every_field(dusk):
    text = (ROOT / "docs" / "command_line.md").read_text(encoding="utf-8")
    for name in {*BAND_FIELDS, *MIX_FIELDS, "box", "order", "cautions", "prefer", "fraction"}:
        assert f'"{name}"' in text or f"`{name}`" in text, name


def test_boxes_by_name_and_by_file(capsys, tmp_path):
    six = as_json(capsys, FELL, "--box", "primary")
    assert len(six["box"]["paints"]) == 6
    path = tmp_path / "ours.json"
    save_box(TWELVE_PAN, path)
    again = as_json(capsys, FELL, "--box", str(path))
    assert again["box"]["paints"] == list(TWELVE_PAN.keys)


def test_sheet_sizes(capsys):
    small = as_json(capsys, FELL, "--sheet", "a5")
    large = as_json(capsys, FELL, "--sheet", "A3")
    total = [sum(band["amount_ml"] for band in one["bands"]) for one in (small, large)]
    assert total[1] > total[0]


@pytest.mark.parametrize(
    ("argv", "says"),
    [
        (["nowhere.jpg"], "There is no file nowhere.jpg"),
        ([DUSK, "--box", "nope"], "There is no box nope: use school, primary, measured"),
        ([DUSK, "--box", "nowhere.json"], "There is no file nowhere.json"),
        ([DUSK, "--box", str(ROOT / "README.md")], "README.md is not a paint box"),
        ([DUSK, "--sheet", "B9"], "There is no sheet size B9"),
        ([DUSK, "--bands", "many"], "is not a number of bands"),
        ([], "Missing: PHOTO"),
    ],
)
def test_errors_are_one_line_and_status_two(argv, says, capsys):
    assert run(["mix", *argv]) == 2
    out, err = capsys.readouterr()
    assert out == ""
    assert err.count("\n") == 1
    assert err.startswith("gradewash: ")
    assert says in err


def test_a_box_with_white_alone_has_nothing_to_mix(capsys, tmp_path):
    path = tmp_path / "white.json"
    path.write_text('{"gradewash_box": 1, "name": "white", "paints": ["white"]}', encoding="utf-8")
    assert run(["mix", DUSK, "--box", str(path)]) == 2
    assert "No paint is left to mix with" in capsys.readouterr().err

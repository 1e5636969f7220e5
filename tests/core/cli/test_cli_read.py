"""`gradewash read`: the words, the documented JSON, and one line for every error."""

from __future__ import annotations

import json
import os
import re
import subprocess
import sys
from pathlib import Path

import numpy as np
import pytest
from PIL import Image

import sample_scenes
from core.cli import run

ROOT = Path(__file__).parents[3]
FIELDS = [
    "letter",
    "top",
    "bottom",
    "hue",
    "hue_class",
    "wheel_deg",
    "munsell",
    "value",
    "value_word",
    "chroma",
    "intensity_word",
    "Lab",
    "srgb",
    "complement",
    "second",
    "notes",
    "sentence",
]
DUSK = str(sample_scenes.path("dusk"))


@pytest.fixture
def said(capsys):
    """Run the command; exit status, stdout, stderr."""

    def read(*arguments: str) -> tuple[int, str, str]:
        code = run(["read", *arguments])
        out, err = capsys.readouterr()
        return code, out, err

    return read


def made(folder: Path, *colours: tuple[int, int, int], name: str = "sky.png") -> str:
    """A picture of equal stripes."""
    rows = np.repeat(np.array(colours, np.uint8), 40, axis=0)
    Image.fromarray(np.repeat(rows[:, None], 90, axis=1)).save(folder / name)
    return str(folder / name)


def test_json_has_the_documented_form(said) -> None:
    code, out, err = said(DUSK, "--json")
    assert (code, err) == (0, "")
    found = json.loads(out)
    truth = sample_scenes.truth("dusk")
    assert list(found) == ["photo", "horizon", "bands"]
    assert found["photo"] == {"file": "dusk.jpg", "width": 1600, "height": 1000, "notices": []}
    assert found["horizon"] == pytest.approx(truth.horizon, abs=0.02)
    assert len(found["bands"]) == len(truth.bands)
    for band, true in zip(found["bands"], truth.bands, strict=True):
        assert list(band) == FIELDS
        assert band["letter"] == true.letter
        assert band["top"] == pytest.approx(true.top, abs=0.02)
        assert band["bottom"] == pytest.approx(true.bottom, abs=0.02)
        assert 0 <= band["wheel_deg"] < 360
        assert re.fullmatch(r"#[0-9a-f]{6}", band["srgb"])
        assert len(band["Lab"]) == 3
        assert band["hue"] in band["sentence"]
        assert f"{band['value']:.1f}" in band["sentence"]


def test_a_second_colour_has_the_fields_of_the_first_and_its_share(said, tmp_path) -> None:
    """A third of the lower band is a row of clouds drawn here, 30 of each 90 columns."""
    rows = np.full((120, 90, 3), (70, 110, 180), np.uint8)
    rows[60:, 10:25] = rows[60:, 50:65] = (235, 225, 220)
    Image.fromarray(rows).save(tmp_path / "clouds.png")
    arguments = (str(tmp_path / "clouds.png"), "--horizon", "1", "--lines", "0.5")
    plain, cloudy = json.loads(said(*arguments, "--json")[1])["bands"]
    assert plain["second"] is None
    assert list(cloudy) == FIELDS
    assert list(cloudy["second"]) == ["share", *FIELDS[3:14]]
    assert cloudy["second"]["share"] == pytest.approx(1 / 3, abs=0.01)
    assert cloudy["srgb"] == plain["srgb"] == "#466eb4"
    assert cloudy["second"]["srgb"] == "#ebe1dc"
    assert cloudy["notes"] == []
    words = said(*arguments)[1]
    assert "about a third" in words
    assert "Band B holds two colours. Most of it is blue" in words


def test_the_documents_show_what_is_printed(said) -> None:
    shown = (
        (ROOT / "docs" / "command_line.md").read_text("utf-8").split("```json\n")[1].split("```")[0]
    )
    example = json.loads(shown)
    found = json.loads(said(DUSK, "--json")[1])
    assert example["photo"] == found["photo"]
    assert example["horizon"] == found["horizon"]
    assert example["bands"] == found["bands"][: len(example["bands"])]


def test_words_name_every_band(said) -> None:
    code, out, err = said(DUSK)
    assert (code, err) == (0, "")
    assert out.startswith("dusk.jpg, 1600 x 1000 pixels; the sky ends at ")
    for letter in "ABCD":
        assert f"Band {letter} is " in out


def test_lines_by_hand(said) -> None:
    code, out, _ = said(DUSK, "--lines", "0.2,0.1", "--horizon", "0.5", "--json")
    found = json.loads(out)
    assert code == 0
    assert found["horizon"] == 0.5
    assert [(b["top"], b["bottom"]) for b in found["bands"]] == [(0, 0.1), (0.1, 0.2), (0.2, 0.5)]


@pytest.mark.parametrize("count", [1, 2, 7, 26])
def test_as_many_bands_as_asked_for(said, count: int) -> None:
    assert len(json.loads(said(DUSK, "--bands", str(count), "--json")[1])["bands"]) == count


def test_no_room_for_so_many_is_told(said) -> None:
    found = json.loads(said(DUSK, "--bands", "26", "--horizon", "0.1", "--json")[1])
    assert len(found["bands"]) <= 10
    assert "has room for" in found["photo"]["notices"][0]


def test_a_near_neutral_has_no_hue(said, tmp_path: Path) -> None:
    grey, colourless = (118, 121, 128), (119, 119, 119)
    path = made(tmp_path, grey, colourless)
    found = json.loads(said(path, "--lines", "0.5", "--horizon", "1", "--json")[1])["bands"]
    assert [band["hue"] for band in found] == [None, None]
    assert [band["hue_class"] for band in found] == [None, None]
    assert "leaning" in found[0]["sentence"]
    assert found[0]["wheel_deg"] is not None
    assert (found[1]["wheel_deg"], found[1]["complement"]) == (None, None)
    assert found[1]["munsell"].startswith("N")


def test_a_band_without_sky_has_no_colour(said, tmp_path: Path) -> None:
    pixels = np.full((100, 90, 4), 200, np.uint8)
    pixels[:50, :, 3] = 0
    Image.fromarray(pixels).save(tmp_path / "cut.png")
    path = str(tmp_path / "cut.png")
    _, out, _ = said(path, "--lines", "0.4", "--horizon", "1", "--json")
    first, second = json.loads(out)["bands"]
    assert [first[key] for key in FIELDS[3:14]] == [None] * 11
    assert second["srgb"] == "#c8c8c8"
    assert "no sky" in said(path, "--lines", "0.4", "--horizon", "1")[1]


def test_a_doubt_is_a_notice(said, tmp_path: Path) -> None:
    path = made(tmp_path, (60, 70, 90), (235, 240, 245))
    notices = json.loads(said(path, "--json")[1])["photo"]["notices"]
    assert any("check the horizon line" in notice.lower() for notice in notices)


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        ([], "PHOTO"),
        (["no_such.jpg"], "no_such.jpg"),
        ([DUSK, "--bands", "0"], "give 1 to 26"),
        ([DUSK, "--bands", "many"], "give 1 to 26"),
        ([DUSK, "--lines", "0.2;0.3"], "commas"),
        ([DUSK, "--lines", "nan"], "not inside the sky"),
        ([DUSK, "--lines", "0.3", "--bands", "3"], "exclude each other"),
        ([DUSK, "--lines", "0.8"], "--horizon"),
        ([DUSK, "--lines", "0.2,0.205"], "too close"),
        ([DUSK, "--horizon", "1.5"], "0.01 to 1"),
        ([DUSK, "--horizon", "nan"], "0.01 to 1"),
        ([DUSK, "--colour"], "--help"),
    ],
)
def test_an_error_is_one_line(said, arguments: list[str], words: str) -> None:
    code, out, err = said(*arguments)
    assert (code, out) == (2, "")
    assert err.startswith("gradewash: ")
    assert err.count("\n") == 1
    assert words in err


def test_help_is_no_error(said) -> None:
    code, out, err = said("--help")
    assert (code, err) == (0, "")
    assert "--horizon" in out


def test_a_process_of_its_own(tmp_path: Path) -> None:
    """Exit status and streams as a shell sees them, in a terminal that knows ASCII only."""
    environment = {**os.environ, "PYTHONPATH": str(ROOT), "PYTHONIOENCODING": "ascii"}
    program = "import sys; from core.cli import run; sys.exit(run(sys.argv[1:]))"
    (tmp_path / "text.jpg").write_text("no picture")

    def read(path: str) -> subprocess.CompletedProcess[str]:
        return subprocess.run(
            [sys.executable, "-c", program, "read", path],
            capture_output=True,
            text=True,
            check=False,
            env=environment,
            cwd=tmp_path,
        )

    good, bad = read(DUSK), read("text.jpg")
    assert (good.returncode, good.stderr) == (0, "")
    assert (bad.returncode, bad.stdout) == (2, "")
    assert bad.stderr.count("\n") == 1

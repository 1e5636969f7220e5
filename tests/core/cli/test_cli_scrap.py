"""`gradewash scrap`: strokes against the bands, in words and as JSON."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from simulator.scraps import jpeg_of, scrap_photo

from core.cli import run
from core.paint.box.box import TWELVE_PAN
from core.paint.mixture.mix import make_mix
from core.scrap.kept import ScrapEntry
from core.study_file.document import study_from_bytes, study_to_bytes

SKY = str(Path(__file__).parents[3] / "sample_scenes" / "dusk.jpg")


@pytest.fixture(scope="module")
def scrap(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """One stroke of a mix that wants more of its yellow, one that is far from every band."""
    orange = make_mix(TWELVE_PAN, {"warm_red": 2, "mid_yellow": 3}, 0.004)
    green = make_mix(TWELVE_PAN, {"sap_green": 5, "lemon_yellow": 1}, 0.02)
    path = tmp_path_factory.mktemp("scrap") / "scrap.jpg"
    path.write_bytes(jpeg_of(scrap_photo([orange.Lab, green.Lab], np.random.default_rng(1))))
    return path


def test_strokes_in_words(scrap: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["scrap", SKY, str(scrap)]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert out.count("The stroke is") == 2
    assert out.endswith("Only dry strokes are judged: wet paint looks darker.")


def test_strokes_as_json_all_for_one_band(scrap: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["scrap", SKY, str(scrap), "--band", "d", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    assert set(found) == {"scrap", "bands"}
    (band,) = found["bands"]
    assert band["letter"] == "D"
    assert len(band["strokes"]) == 2
    stroke = band["strokes"][0]
    assert set(stroke["verdicts"]) == {"hue", "value", "intensity"}
    assert set(band["advice"]) == {
        "deed", "add", "or", "as_it_is", "got_in", "got_in_chance", "serves", "one_puddle"
    }  # fmt: skip
    assert band["advice"]["deed"] in ("serves", "water", "stronger", "add", "begin again")


def test_a_band_that_is_not_there(scrap: Path, capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["scrap", SKY, str(scrap), "--band", "Z"]) == 2
    assert "There is no band Z: use one of A, B" in capsys.readouterr().err


def test_a_picture_without_strokes(capsys: pytest.CaptureFixture[str]) -> None:
    assert run(["scrap", SKY, SKY]) == 2
    error = capsys.readouterr().err
    assert error.count("\n") == 1
    assert "shows no painted stroke on white paper" in error


def test_scraps_kept_in_the_study_count_unless_the_puddle_is_fresh(
    scrap: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    study = tmp_path / "dusk.gradewash"
    assert run(["new", SKY, "-o", str(study)]) == 0
    opened = study_from_bytes(study.read_bytes())
    capsys.readouterr()
    assert run(["scrap", str(study), str(scrap), "--band", "d", "--json"]) == 0
    (band,) = json.loads(capsys.readouterr().out)["bands"]
    assert band["added"] == {}
    picture = opened.study.photo
    assert picture is not None
    kept = ScrapEntry(
        picture,
        "D",
        (65.0, 30.0, 25.0),
        tuple(band["parts"].items()),
        0.01,
        (),
        (("crimson", 1.0),),
    )
    study.write_bytes(study_to_bytes(replace(opened.study, scraps=(kept,)), opened.pictures))
    for fresh, added in (([], {"crimson": 1.0}), (["--fresh"], {})):
        command = ["scrap", str(study), str(scrap), "--band", "d", "--json", *fresh]
        assert run(command) == 0
        (band,) = json.loads(capsys.readouterr().out)["bands"]
        assert band["added"] == added

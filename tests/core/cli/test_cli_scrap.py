"""`gradewash scrap`: strokes against the bands, in words and as JSON."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from simulator.scraps import jpeg_of, scrap_photo

from core.cli import run
from core.paint.box.box import TWELVE_PAN
from core.paint.mixture.mix import make_mix

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

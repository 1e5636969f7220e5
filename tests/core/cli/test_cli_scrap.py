"""`gradewash scrap`: strokes against the bands, in words and as JSON."""

from __future__ import annotations

import json
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from own_paint_tools import KEY, TRUE, WRONG
from simulator.scraps import jpeg_of, scrap_photo

from core.cli import run
from core.paint.box.box import TWELVE_PAN
from core.paint.box.box_file import open_box
from core.paint.mixture.mix import make_mix
from core.photo import open_photo
from core.pipeline import plan_sky, propose_for, read_sky
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


@pytest.fixture
def own_study(tmp_path: Path) -> tuple[Path, Path]:
    """A study whose box has a paint from a card, and a scrap of a mix with it."""
    study = tmp_path / "dusk.gradewash"
    assert run(["new", SKY, "-o", str(study)]) == 0
    opened = study_from_bytes(study.read_bytes())
    ours = replace(opened.study, box=WRONG)
    study.write_bytes(study_to_bytes(ours, opened.pictures))
    photo = open_photo(SKY)
    plan = plan_sky(read_sky(photo, propose_for(photo)), WRONG, ours.mix)
    mix = next(
        band.classroom.mix
        for band in plan.bands
        if band.letter == "A" and band.classroom is not None
    )
    assert KEY in mix.keys
    whole = sum(count for _, count in mix.parts)
    vector = TRUE.load_vector({key: mix.load_ml * n / whole for key, n in mix.parts})
    L, a, b = TRUE.pigments.Lab(vector).tolist()
    scrap = tmp_path / "scrap.jpg"
    scrap.write_bytes(jpeg_of(scrap_photo([(L, a, b)], np.random.default_rng(3))))
    return study, scrap


def test_a_scrap_teaches_the_box_its_own_paint(
    own_study: tuple[Path, Path], tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    study, scrap = own_study
    command = ["scrap", str(study), str(scrap), "--band", "a"]
    capsys.readouterr()
    assert run([*command, "--json"]) == 0
    (band,) = json.loads(capsys.readouterr().out)["bands"]
    assert band["teaches"][KEY]["scraps"] == 1
    box = tmp_path / "taught.json"
    assert run([*command, "--teach", str(box)]) == 0
    out = " ".join(capsys.readouterr().out.split())
    assert "With --teach BOX this scrap teaches the box" in out
    assert "from your card and a scrap. Wrote taught.json." in out
    card = open_box(box).paint(KEY).card
    old = WRONG.paint(KEY).card
    assert card is not None
    assert old is not None
    assert card.spread < old.spread
    assert run([*command, "--teach", str(box)]) == 2  # it is there already
    capsys.readouterr()


def test_a_box_of_measured_paints_is_not_taught(
    scrap: Path, tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    box = tmp_path / "box.json"
    assert run(["scrap", SKY, str(scrap), "--teach", str(box)]) == 2
    error = capsys.readouterr().err
    assert "read a card first" in error
    assert error.count("\n") == 1
    assert not box.exists()


def test_scraps_are_shown_with_the_study(
    tmp_path: Path, capsys: pytest.CaptureFixture[str]
) -> None:
    study = tmp_path / "dusk.gradewash"
    assert run(["new", SKY, "-o", str(study)]) == 0
    opened = study_from_bytes(study.read_bytes())
    picture = opened.study.photo
    assert picture is not None
    parts, Lab = (("crimson", 1), ("mid_yellow", 2)), (65.0, 30.0, 25.0)
    scraps = tuple(
        ScrapEntry(picture, letter, Lab, parts, 0.01, (), advised)
        for letter, advised in (("D", (("crimson", 1.0),)), ("A", None), ("D", ()))
    )
    study.write_bytes(study_to_bytes(replace(opened.study, scraps=scraps), opened.pictures))
    capsys.readouterr()
    assert run(["show", str(study)]) == 0
    out = " ".join(capsys.readouterr().out.split())
    first, second, third = (
        out.index(f"Scrap of band {name}:") for name in ("A, try 1", "D, try 1", "D, try 2")
    )
    assert first < second < third
    assert "Advised: begin again." in out[first:second]
    assert "Advised: add 1 part of crimson." in out[second:third]
    assert "Advised: add no paint." in out[third:]
    assert run(["show", str(study), "--json"]) == 0
    shown = json.loads(capsys.readouterr().out)["scraps"]
    assert [one["letter"] for one in shown] == ["D", "A", "D"]
    assert [one["advised"] for one in shown] == [{"crimson": 1.0}, None, {}]

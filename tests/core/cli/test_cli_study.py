"""`gradewash new` and `gradewash show`, and studies where photos are read."""

from __future__ import annotations

import json
import re
from dataclasses import replace
from pathlib import Path

import pytest
from PIL import Image

import sample_scenes
from core.cli import run
from core.paint.box.box import GENERIC_BOXES
from core.study import SheetEntry, Study, with_sheet
from core.study_file.document import Opened, study_from_bytes, study_to_bytes
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

DUSK = sample_scenes.path("dusk")
REFERENCE = Path(__file__).parents[3] / "docs" / "command_line.md"


@pytest.fixture
def say(capsys, tmp_path: Path, monkeypatch: pytest.MonkeyPatch):
    """Run a command in a folder of its own; exit status, stdout, stderr."""
    monkeypatch.chdir(tmp_path)

    def command(*arguments: str) -> tuple[int, str, str]:
        code = run([*arguments])
        out, err = capsys.readouterr()
        return code, out, err

    return command


@pytest.fixture
def lesson(say, tmp_path: Path) -> Path:
    """A study of the sample dusk with three lines by hand."""
    code, _, err = say("new", str(DUSK), "-o", "lesson.gradewash", "--lines", "0.2,0.3,0.45")
    assert (code, err) == (0, "")
    return tmp_path / "lesson.gradewash"


def opened(path: Path) -> Opened:
    return study_from_bytes(path.read_bytes())


def filled(path: Path) -> Study:
    """Write a student's work into the study."""
    found = opened(path)
    study = with_sheet(found.study, 0, SheetEntry(replace(found.study.photo, name="first.jpg")))
    page = SheetPage(OwnScores(6, 7, 4), "Less water in band B.", "value", "2027-03-04")
    work = Worksheet("K7", "5b", (page, SheetPage()), "Fine greys.")
    study = replace(study, worksheet=work, box=GENERIC_BOXES["primary"])
    path.write_bytes(study_to_bytes(study, found.pictures))
    return study


def test_new_writes_photo_and_lines(say, tmp_path) -> None:
    code, out, err = say("new", str(DUSK), "-o", "lesson.gradewash")
    assert (code, err) == (0, "")
    assert "Band A is blue-violet" in out
    assert out.splitlines()[-1] == "Saved lesson.gradewash."
    study = opened(tmp_path / "lesson.gradewash").study
    assert study.title == "dusk"
    assert study.bands.lines == pytest.approx(sample_scenes.truth("dusk").lines, abs=0.02)
    assert [file.name for file in tmp_path.iterdir()] == ["lesson.gradewash"]


def test_new_takes_lines_title_and_a_name_without_ending(say, tmp_path) -> None:
    arguments = ["--lines", "0.2,0.3", "--horizon", "0.5", "--title", "Dusk  at the lake"]
    assert say("new", str(DUSK), "-o", "one", *arguments)[0] == 0
    study = opened(tmp_path / "one.gradewash").study
    assert study.title == "Dusk at the lake"
    assert study.bands.edges == (0.0, 0.2, 0.3, 0.5)
    assert say("new", str(DUSK), "--bands", "3")[0] == 0
    assert opened(tmp_path / "dusk.gradewash").study.bands.count == 3


def test_new_keeps_nothing_private(say, tmp_path) -> None:
    exif = Image.Exif()
    exif[0x010F] = "Camera of somebody"
    exif[0x0112] = 1
    with Image.open(DUSK) as photo:
        photo.resize((320, 200)).save(tmp_path / "given.jpg", exif=exif)
    assert say("new", "given.jpg")[0] == 0
    found = opened(tmp_path / "given.gradewash")
    assert b"somebody" not in found.pictures[found.study.photo.digest]


def test_new_never_replaces_a_file_unasked(say, lesson) -> None:
    before = lesson.read_bytes()
    code, out, err = say("new", str(DUSK), "-o", "lesson.gradewash")
    assert (code, out) == (2, "")
    assert "--force" in err
    assert err.count("\n") == 1
    assert lesson.read_bytes() == before
    assert say("new", str(DUSK), "-o", "lesson.gradewash", "--bands", "2", "--force")[0] == 0
    assert opened(lesson).study.bands.count == 2


def test_new_lesson_from_a_study_keeps_the_task_and_no_work(say, lesson, tmp_path) -> None:
    before = filled(lesson)
    code, _, err = say("new", "lesson.gradewash", "-o", "next.gradewash", "--title", "Again")
    assert (code, err) == (0, "")
    after = opened(tmp_path / "next.gradewash")
    kept = replace(before, title="Again", sheets=(None, None), worksheet=Worksheet())
    assert after.study == kept
    assert set(after.pictures) == {before.photo.digest}
    assert opened(lesson).study == before
    assert b"Less water" not in (tmp_path / "next.gradewash").read_bytes()


@pytest.mark.parametrize(
    ("arguments", "words"),
    [
        (["new", "gone.jpg"], "no file gone.jpg"),
        (["new", "lesson.gradewash"], "would replace"),
        (["new", str(DUSK), "-o", "gone/two.gradewash"], "folder"),
        (["new", str(DUSK), "-o", "two", "--bands", "99"], "--bands"),
        (["show", "gone.gradewash"], "gone.gradewash"),
        (["show", str(DUSK)], "gradewash read"),
        (["show"], "STUDY"),
    ],
)
def test_an_error_is_one_line_and_writes_nothing(say, lesson, tmp_path, arguments, words) -> None:
    code, out, err = say(*arguments)
    assert (code, out) == (2, "")
    assert words in err
    assert err.count("\n") == 1
    assert [file.name for file in tmp_path.iterdir()] == ["lesson.gradewash"]


def test_show_says_what_is_in_it(say, lesson) -> None:
    filled(lesson)
    code, out, err = say("show", "lesson.gradewash")
    assert (code, err) == (0, "")
    lines = out.splitlines()
    assert lines[0] == "dusk"
    assert "Band D is " in out
    assert "Band E is " not in out
    assert "(six-colour split primary box): lemon yellow, mid yellow" in out
    assert "Student: K7. Class: 5b." in lines
    assert "Sheet 1: first.jpg." in lines
    assert "Painted on 2027-03-04." in lines
    assert "Own scores: hue 6, value 7, intensity 4." in lines
    assert "In their own words: Less water in band B." in lines
    assert "To change first: value." in lines
    assert "Sheet 2: no picture yet." in lines
    assert lines[-1] == "The teacher's remark: Fine greys."


def test_show_as_json_has_the_documented_form(say, lesson) -> None:
    study = filled(lesson)
    shown = json.loads(say("show", "lesson.gradewash", "--json")[1])
    part = REFERENCE.read_text(encoding="utf-8").split("show STUDY")[1]
    documented = json.loads(re.search(r"```json\n(.*?)```", part, re.S).group(1))
    assert list(shown) == list(documented)
    assert list(shown["sheets"][0]) == list(documented["sheets"][0])
    assert list(shown["box"]) == list(documented["box"])
    assert shown["horizon"] == round(study.bands.horizon, 4)
    assert [band["bottom"] for band in shown["bands"]][:3] == [0.2, 0.3, 0.45]
    assert shown["box"]["paints"] == list(study.box.keys)
    assert shown["sheets"][0]["own_scores"] == {
        "hue": 6,
        "value": 7,
        "intensity": 4,
        "placement": None,
    }
    assert shown["sheets"][1]["file"] is None
    assert shown["remark"] == "Fine greys."


def test_show_of_a_study_without_a_photo(say, tmp_path) -> None:
    (tmp_path / "empty.gradewash").write_bytes(study_to_bytes(Study("Empty"), {}))
    code, out, _ = say("show", "empty.gradewash")
    assert code == 0
    assert "no photo" in out
    shown = json.loads(say("show", "empty.gradewash", "--json")[1])
    assert (shown["photo"], shown["bands"]) == (None, [])
    code, _, err = say("read", "empty.gradewash")
    assert code == 2
    assert "no photo" in err


def test_read_and_mix_take_a_study_with_its_lines_and_paints(say, lesson) -> None:
    study = filled(lesson)
    read = json.loads(say("read", "lesson.gradewash", "--json")[1])
    assert [band["bottom"] for band in read["bands"]][:3] == [0.2, 0.3, 0.45]
    assert read["horizon"] == round(study.bands.horizon, 4)
    other = json.loads(say("read", "lesson.gradewash", "--lines", "0.25", "--json")[1])
    assert len(other["bands"]) == 2
    lower = json.loads(say("read", "lesson.gradewash", "--horizon", "0.4", "--json")[1])
    assert [band["bottom"] for band in lower["bands"]] == [0.2, 0.3, 0.4]
    assert "six-colour split primary box" in say("mix", "lesson.gradewash")[1]
    assert "twelve-pan school box" in say("mix", "lesson.gradewash", "--box", "school")[1]

"""`gradewash class scores`: read, told with its doubt, and no score before it is taken."""

from __future__ import annotations

import json
from pathlib import Path

import numpy as np
import pytest
from class_set_tools import TAG, made_folder
from simulator.page_camera import photographed
from simulator.pen_marks import Paper, Row, draw_row
from simulator.printed_pages import printed_pages

from app.main import main
from core.class_set.bringing import bring_in
from core.class_set.folder import read_class_set
from core.worksheet.worksheet import OwnScores

pytestmark = pytest.mark.usefixtures("qapp")

ROWS = (
    Row("one", 7, "cross", "ball pen"),
    Row("corrected", 4, "cross", "ball pen", (9,)),
    Row("one", 10, "tick", "pencil"),
    Row("one", 1, "fill", "pencil"),
)


@pytest.fixture(scope="module")
def picture() -> bytes:
    """The first worksheet page of student 2, marked."""
    sheets = printed_pages("a4", "en", TAG, 2)
    rng = np.random.default_rng(3)
    page = Paper(sheets.greys[0], rng)
    for boxes, row in zip(sheets.boxes[0], ROWS, strict=True):
        draw_row(page, boxes, row)
    return photographed(page.done(), "1600", "usual", rng)


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch, picture: bytes) -> Path:
    for name in ("XDG_DATA_HOME", "LOCALAPPDATA", "HOME"):
        monkeypatch.setenv(name, str(tmp_path / "home"))
    (tmp_path / "IMG_9.jpg").write_bytes(picture)
    with made_folder(tmp_path) as made:
        for _ in bring_in(made, (tmp_path / "IMG_9.jpg",)):
            pass
        return made.path


@pytest.fixture
def scores(capsys, folder: Path):
    """Run the command; exit status, stdout, stderr."""

    def run(*arguments: str, verb: str = "scores") -> tuple[int, str, str]:
        code = main(["class", verb, str(folder), *arguments])
        out, err = capsys.readouterr()
        return code, " ".join(out.split()), err

    return run


def own(folder: Path, number: int = 2) -> OwnScores:
    return read_class_set(folder).entry(number).worksheet.pages[0].scores


def test_what_was_read_is_told_with_its_doubt_and_nothing_is_taken(scores, folder: Path) -> None:
    code, out, err = scores()
    assert (code, err) == (0, "")
    assert "02, sheet 1: hue read: 7, value cannot tell, intensity read: 10" in out
    assert "placement read: 1" in out
    assert own(folder) == OwnScores()
    # And so it is in what the class set tells.
    assert "02, sheet 1: hue read: 7" in scores(verb="show")[1]
    code, out, _ = scores("--json")
    (page,) = json.loads(out)["pages"]
    assert (page["code"], page["sheet"], page["waits"], page["taken"]) == ("02", 1, True, False)
    assert [row["reading"] for row in page["rows"]] == ["number", "cannot tell", "number", "number"]
    assert [row["own"] for row in page["rows"]] == [None] * 4
    assert Path(page["crops"]).is_file()


@pytest.mark.parametrize("place", ["02/w1", "02/1"])
def test_a_page_is_taken_on_an_explicit_word(scores, folder: Path, place: str) -> None:
    code, out, err = scores("--take", place)
    assert (code, err) == (0, "")
    assert "Taken as own scores of 02, sheet 1: hue 7, value -, intensity 10, placement 1." in out
    assert own(folder) == OwnScores(7, None, 10, 1)
    # Once: what is there is not written over.
    code, out, err = scores("--take", place, "--as", "1,1,1,1")
    assert (code, out) == (2, "")
    assert "there are own scores already" in err
    assert own(folder) == OwnScores(7, None, 10, 1)
    assert "Nothing waits to be taken." in scores()[1]


def test_what_the_teacher_sees_is_taken_instead(scores, folder: Path) -> None:
    assert scores("--take", "02/w1", "--as", "7, 9, 10, -")[0] == 0
    assert own(folder) == OwnScores(7, 9, 10, None)


@pytest.mark.parametrize(
    ("arguments", "sentence"),
    [
        (("--take", "01/w1"), "no picture of a worksheet page has this place"),
        (("--take", "02/w2"), "no picture of a worksheet page has this place"),
        (("--take", "99/w1"), "no student 99"),
        (("--take", "soon"), "not a place"),
        (("--as", "7,7,7,7"), "belongs to one page"),
        (("--take", "02/w1", "--take", "01/w1", "--as", "7,7,7,7"), "belongs to one page"),
        (("--take", "02/w1", "--as", "7,7,7"), "not four scores"),
        (("--take", "02/w1", "--as", "7,7,7,11"), "not four scores"),
        (("--take", "02/w1", "--as", "0,7,7,7"), "not four scores"),
        (("--take", "02/w1", "--as=-,-,-,-"), "not four scores"),
        (("--take", "02/w1", "--as", "7,\u0667,7,7"), "not four scores"),
        # What can be taken is not while the other cannot.
        (("--take", "02/w1", "--take", "01/w1"), "no picture of a worksheet page"),
    ],
)
def test_what_cannot_be_taken_is_one_sentence_and_changes_nothing(
    scores, folder: Path, arguments: tuple[str, ...], sentence: str
) -> None:
    before = (folder / "class-set.json").read_bytes()
    code, out, err = scores(*arguments)
    assert (code, out) == (2, "")
    assert sentence in err
    assert len(err.strip().splitlines()) == 1
    assert (folder / "class-set.json").read_bytes() == before


def test_a_class_set_without_worksheets_says_so(scores, folder: Path) -> None:
    assert scores("IMG_9.jpg", "aside", verb="place")[0] == 0
    assert "No picture of a worksheet page has its place yet." in scores()[1]


def test_the_page_whose_codes_are_not_seen_is_typed(scores, folder: Path, tmp_path: Path) -> None:
    from class_set_tools import sheet_jpeg

    (tmp_path / "IMG_10.jpg").write_bytes(sheet_jpeg(None, seed=4))
    assert scores(str(tmp_path / "IMG_10.jpg"), verb="add")[0] == 0
    assert scores("IMG_10.jpg", "01/w1", verb="place")[0] == 0
    out = scores()[1]
    assert "01, sheet 1: fewer than two of the page's codes are seen in IMG_10.jpg" in out
    assert "no number could be read" in scores("--take", "01/w1")[2]
    assert scores("--take", "01/w1", "--as", "3,4,5,6")[0] == 0
    assert own(folder, 1) == OwnScores(3, 4, 5, 6)
    assert "IMG_10.jpg" not in scores()[1]

"""`gradewash class`: the whole evening from the command line, and every error in one line."""

from __future__ import annotations

import contextlib
import csv
import io
import json
import shutil
from pathlib import Path

import numpy as np
import pytest
from class_set_tools import cut_sheet_jpeg, phone_exif, sheet_jpeg, sky_photo
from PIL import Image

import core.cli
from core.class_set import edits
from core.class_set.folder import open_folder, read_class_set
from core.class_set.model import Marking, new_class_set
from core.class_set.ticket import Ticket
from core.places import data_folder

HOMES = ("XDG_DATA_HOME", "LOCALAPPDATA", "HOME")


@pytest.fixture(autouse=True)
def own_data(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A data folder of its own, where locks are."""
    for name in HOMES:
        monkeypatch.setenv(name, str(tmp_path / "home"))


@pytest.fixture
def say(capsys: pytest.CaptureFixture[str]):
    """Run a command; gives its status, what it printed, and its error."""

    def run(*argv: object) -> tuple[int, str, str]:
        status = core.cli.run(["class", *map(str, argv)])
        out, err = capsys.readouterr()
        return status, out, err

    return run


@pytest.fixture(scope="module")
def made_once(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """A photo, and a class set of four made from it."""
    where = tmp_path_factory.mktemp("made")
    (where / "sky.png").write_bytes(sky_photo())
    output = io.StringIO()
    with pytest.MonkeyPatch.context() as patch, contextlib.redirect_stdout(output):
        for name in HOMES:
            patch.setenv(name, str(where / "home"))
        status = core.cli.run(
            ["class", "new", str(where / "7b"), "--photo", str(where / "sky.png"),
             "--codes", "01-04", "--class", "7b", "--lines", "0.3333,0.6667", "--horizon", "1"]
        )  # fmt: skip
    assert status == 0
    assert "4 students, 3 bands" in output.getvalue()
    return where


@pytest.fixture
def made(made_once: Path, tmp_path: Path) -> tuple[Path, str]:
    """A class set of four for this test alone, and its tag."""
    shutil.copy(made_once / "sky.png", tmp_path)
    folder = shutil.copytree(made_once / "7b", tmp_path / "7b")
    return folder, read_class_set(folder).class_list.tag


def shots(where: Path, *tickets: Ticket | None) -> Path:
    where.mkdir(exist_ok=True)
    for k, ticket in enumerate(tickets):
        notes = phone_exif(f"2027:03:18 10:15:{k:02d}")
        (where / f"IMG_{k + 1}.jpg").write_bytes(sheet_jpeg(ticket, seed=k, exif=notes))
    return where


def test_a_name_that_is_not_kept_is_told_with_the_one_that_is(made, tmp_path: Path, say) -> None:
    folder, _ = made
    pictures = shots(tmp_path / "in", None)
    (pictures / "IMG_1.jpg").rename(pictures / "Ann Tester.jpg")
    out = say("add", folder, pictures)[1]
    assert "+ Ann Tester.jpg, kept as picture 001.jpg" in out
    assert "> picture 001.jpg: No ticket could be read" in out


def test_an_evening(made, tmp_path: Path, say) -> None:
    folder, tag = made
    pictures = shots(
        tmp_path / "in", Ticket(tag, 1, "1"), Ticket(tag, 1, "2"), Ticket("ZZZZ", 2, "1"), None
    )
    status, out, _ = say("add", folder, pictures)
    assert status == 0
    assert "+ IMG_1.jpg" in out
    assert "4 pictures are new. 2 of 4 pictures have found their place." in out
    assert "> IMG_3.jpg: Its ticket belongs to another class list." in out
    assert "> IMG_4.jpg: No ticket could be read" in out
    status, out, _ = say("add", folder, pictures)
    assert "0 pictures are new. 4 were there already." in out
    assert say("place", folder, "IMG_3.jpg", "2/1")[1] == "IMG_3.jpg is at 02, sheet 1.\n"
    assert say("place", folder, pictures / "IMG_4.jpg", "aside")[0] == 0
    status, out, err = say("check", folder, "--jobs", "1")
    assert status == 0
    assert "3 sheets were checked." in out
    assert "3 of 3" in err
    assert "0 sheets were checked." in say("check", folder)[1]
    status, out, _ = say("show", folder)
    assert "7b" in out
    assert "02" in out
    assert "Match" in out
    shown = json.loads(say("show", folder, "--json")[1])
    assert [s["sheets"][0]["state"] for s in shown["students"]] == ["in", "in", "", ""]
    assert shown["students"][0]["sheets"][0]["findings"]
    assert shown["questions"] == []
    assert {one["judged"] for one in shown["spread"][0]} == {2}
    table = tmp_path / "marks.csv"
    assert say("table", folder, "-o", table)[0] == 0
    rows = list(csv.DictReader(io.StringIO(table.read_text("utf-8"))))
    assert [row["code"] for row in rows] == ["01", "02", "03", "04"]
    assert {row["mark"] for row in rows} == {""}
    assert say("table", folder, "-o", tmp_path / "marks.xlsx")[0] == 0
    status, out, _ = say("studies", folder, "-o", tmp_path / "out")
    assert "Wrote 4 studies." in out
    assert core.cli.run(["show", str(tmp_path / "out" / "01.gradewash")]) == 0
    status, out, _ = say("delete", folder, "--yes")
    assert status == 0
    assert "3 pictures" not in out  # five: four brought in, and the photo
    assert "5 pictures" in out
    assert list(folder.iterdir()) == []


def test_tickets_serve_again_in_the_next_lesson(made, tmp_path: Path, say) -> None:
    folder, _ = made
    status, _, err = say(
        "new", tmp_path / "next", "--photo", tmp_path / "sky.png", "--codes", folder
    )
    assert (status, err) == (0, "")
    assert read_class_set(tmp_path / "next").class_list == read_class_set(folder).class_list


@pytest.mark.parametrize(
    ("argv", "told"),
    [
        (("new", "{made}", "--photo", "{top}/sky.png", "--codes", "1-3"), "already"),
        (("new", "{top}/x", "--photo", "{top}/sky.png", "--codes", "9-3"), "backwards"),
        (("new", "{top}/x", "--photo", "{top}/sky.png", "--codes", "Anna Berg,K7"), "name"),
        (("new", "{top}/x", "--photo", "{top}/none.png", "--codes", "1-3"), "none.png"),
        (("new", "{top}/a/b", "--photo", "{top}/sky.png", "--codes", "1-3"), "no folder"),
        (("add", "{top}", "{top}/sky.png"), "no class set"),
        (("add", "{made}", "{top}/none"), "none"),
        (("add", "{made}", "{top}", "--order", "size"), "--order size"),
        (("place", "{made}", "IMG_1.jpg", "1/1"), "no picture IMG_1.jpg"),
        (("check", "{made}", "--jobs", "0"), "--jobs 0"),
        (("check", "{made}", "--corners", "right"), "belong together"),
        (("check", "{made}", "--picture", "IMG_1.jpg"), "belong together"),
        (("check", "{made}", "--picture", "IMG_1.jpg", "--corners", "auto"), "no picture IMG_1"),
        (("table", "{made}", "-o", "{top}/marks.ods"), ".csv or .xlsx"),
        (("table", "{made}", "-o", "{top}/m.csv", "--columns", "code,grade"), "no column grade"),
        (("table", "{made}", "-o", "{top}/m.csv", "--key", "{top}/none.csv"), "none.csv"),
        (("table", "{made}", "-o", "{made}/class-set.json"), "replace what is read"),
        (("show", "{top}"), "no class set"),
        (("delete", "{top}"), "nothing was removed"),
        (("frobnicate", "{made}"), "frobnicate"),
    ],
)
def test_errors_are_one_line(made, tmp_path: Path, say, argv, told: str) -> None:
    folder, _ = made
    before = sorted(tmp_path.rglob("*"))
    status, _, err = say(*(each.format(made=folder, top=tmp_path) for each in argv))
    assert status == 2
    assert told in err
    assert err.count("\n") == 1
    assert "Traceback" not in err
    left = [path for path in sorted(tmp_path.rglob("*")) if "home" not in path.parts]
    assert left == [path for path in before if "home" not in path.parts]


def test_a_place_is_told_as_people_write_it(made, tmp_path: Path, say) -> None:
    folder, _ = made
    say("add", folder, shots(tmp_path / "in", None))
    assert "01, sheet 2" in say("place", folder, "IMG_1.jpg", "1 2")[1]
    assert "04, worksheet page 1" in say("place", folder, "IMG_1.jpg", "04/w1")[1]
    assert "no student 9" in say("place", folder, "IMG_1.jpg", "9/1")[2]
    assert "is not a place" in say("place", folder, "IMG_1.jpg", "somewhere")[2]


def test_corners_are_given_for_one_picture_and_it_alone_is_checked(
    made, tmp_path: Path, say
) -> None:
    folder, tag = made
    (tmp_path / "in").mkdir()
    for name, number in (("IMG_1.jpg", 1), ("IMG_2.jpg", 2)):
        ticket = Ticket(tag, number, "1")
        (tmp_path / "in" / name).write_bytes(cut_sheet_jpeg(ticket, seed=number))
    say("add", folder, tmp_path / "in")

    def options():
        return read_class_set(folder).brought[0].options

    check = ("check", folder, "--picture", "IMG_1.jpg", "--corners")
    assert "No corners were found in IMG_1.jpg yet" in say(*check, "right")[2]
    status, out, err = say(*check, "260,190,1016,190,1016,700,260,700")
    assert (status, err) == (0, "")
    assert out == "01, sheet 1 was checked with these corners.\n"
    assert options().corners == pytest.approx(
        np.array([[260, 190], [1016, 190], [1016, 700], [260, 700]]) / (1280, 720)
    )
    shown = json.loads(say("show", folder, "--json")[1])
    first, second = (student["sheets"][0] for student in shown["students"][:2])
    assert first["findings"]
    assert not second["findings"]  # the other picture was left alone
    status, out, _ = say(*check, "auto")
    assert (status, options().corners) == (0, None)
    assert "Look at the painting's corners." in out
    status, out, _ = say(*check, "right", "--turned", "2")
    assert status == 0
    assert options().turned == 2
    assert options().corners is not None
    for wrong in ("1,2,3", "12,x,1,1,1,1,1,1", "0,0,99999,0,5,5,0,5"):
        before = options()
        status, out, err = say(*check, wrong)
        assert (status, out) == (2, "")
        assert "does not list four corners" in err
        assert options() == before
    # Four corners that make no rectangle are kept as told, and said to be none.
    status, _, err = say(*check, "10,10,11,10,10,11,600,11")
    assert status == 2


def test_a_sheet_whose_corners_are_given_turns_itself(made, tmp_path: Path, say) -> None:
    folder, tag = made
    (tmp_path / "in").mkdir()
    with Image.open(io.BytesIO(cut_sheet_jpeg(Ticket(tag, 1, "1")))) as upright:
        upright.transpose(Image.Transpose.ROTATE_180).save(tmp_path / "in" / "IMG_1.jpg")
    say("add", folder, tmp_path / "in")
    status, _, _ = say(
        "check", folder, "--picture", "IMG_1.jpg",
        "--corners", "264,20,1020,20,1020,530,264,530",
    )  # fmt: skip
    assert status == 0
    assert read_class_set(folder).brought[0].options.turned == 2


def test_no_scheduler_is_one_clear_line(made, tmp_path: Path, say, monkeypatch) -> None:
    folder, tag = made
    say("add", folder, shots(tmp_path / "in", Ticket(tag, 1, "1")))
    import core.cli.class_set.check as module

    def missing(name: str):
        raise ImportError(name)

    monkeypatch.setattr(module, "import_module", missing)
    status, _, err = say("check", folder, "--scheduler", "tcp://127.0.0.1:1")
    assert status == 2
    assert "needs the package distributed" in err
    assert err.count("\n") == 1


def test_next_lesson_keeps_the_task_and_nobodys_work(made, tmp_path: Path, say) -> None:
    folder, tag = made
    say("add", folder, shots(tmp_path / "in", Ticket(tag, 1, "1")))
    with open_folder(folder, data_folder()) as held:
        said = Marking("Good greys.", "Wetter paper.", "Well done.", "B+", ("late", ""), True)
        held.save(edits.with_marking(held.class_set, 1, said))
        before = held.class_set
    status, out, err = say("new", tmp_path / "next", "--from", folder)
    assert (status, err) == (0, "")
    assert "4 students, 3 bands" in out
    after = read_class_set(tmp_path / "next")
    assert after == new_class_set("7b", before.class_list, before.exercise)
    assert [file.name for file in (tmp_path / "next" / "pictures").iterdir()] == [
        before.exercise.photo.digest
    ]
    assert b"Good greys" not in (tmp_path / "next" / "class-set.json").read_bytes()
    assert read_class_set(folder) == before


def test_next_lesson_of_another_class(made, tmp_path: Path, say) -> None:
    folder, tag = made
    assert say("new", tmp_path / "8a", "--from", folder, "--codes", "01-20")[0] == 0
    after = read_class_set(tmp_path / "8a")
    assert len(after.students) == 20
    assert after.class_list.tag != tag
    assert after.title == ""
    say("new", tmp_path / "8b", "--from", folder, "--codes", "01-20", "--class", "8b")
    assert read_class_set(tmp_path / "8b").title == "8b"


@pytest.mark.parametrize(
    ("extra", "words"),
    [
        (("--codes", "01-04"), "Missing: --photo"),
        ((), "Missing: --photo, --codes"),
        (("--from", "{0}/7b", "--photo", "{0}/sky.png"), "leave --photo"),
        (("--from", "{0}/7b", "--bands", "3"), "leave --photo"),
        (("--from", "{0}/in"), "no class set in in"),
    ],
)
def test_half_a_wish_for_a_class_set_is_one_line(made, tmp_path, say, extra, words) -> None:
    (tmp_path / "in").mkdir()
    status, out, err = say("new", tmp_path / "other", *(each.format(tmp_path) for each in extra))
    assert (status, out) == (2, "")
    assert words in err
    assert err.count("\n") == 1
    assert not (tmp_path / "other").exists()

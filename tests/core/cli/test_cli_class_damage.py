"""`gradewash class` where something is wrong with the folder: one sentence, nothing lost."""

from __future__ import annotations

import errno
import io
import os
import shutil
import sys
from pathlib import Path

import pytest
from class_set_tools import made_folder, sheet_jpeg

import core.cli
import core.files
from core.class_set.bringing import bring_in, files_in
from core.class_set.checking import check_folder
from core.class_set.folder import FILE_NAME, open_folder, read_class_set
from core.class_set.students import class_list_of
from core.class_set.ticket import Ticket
from core.places import data_folder


@pytest.fixture(autouse=True)
def own_data(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    """A data folder of its own, where locks are."""
    for name in ("XDG_DATA_HOME", "LOCALAPPDATA", "HOME"):
        monkeypatch.setenv(name, str(tmp_path / "home"))


@pytest.fixture(scope="module")
def checked_class(tmp_path_factory) -> Path:
    """Sheet 1 of 01 and of 02, checked; the pictures beside it."""
    where = tmp_path_factory.mktemp("class")
    (where / "in").mkdir()
    with made_folder(where) as folder:
        tag = folder.class_set.class_list.tag
        for k in (1, 2):
            picture = sheet_jpeg(Ticket(tag, k, "1"), seed=k)
            (where / "in" / f"IMG_{k}.jpg").write_bytes(picture)
        for _ in bring_in(folder, files_in([where / "in"])):
            pass
        for _ in check_folder(folder):
            pass
    return where


@pytest.fixture
def made(tmp_path: Path, checked_class: Path) -> Path:
    """A copy of it."""
    shutil.copytree(checked_class / "in", tmp_path / "in")
    shutil.copytree(checked_class / "7b", tmp_path / "7b")
    return tmp_path / "7b"


@pytest.fixture
def say(capsys: pytest.CaptureFixture[str]):
    """Run a command; gives its status, what it printed, and its error, at most one line."""

    def run(*argv: object) -> tuple[int, str, str]:
        status = core.cli.run(["class", *map(str, argv)])
        out, err = capsys.readouterr()
        assert "Traceback" not in err
        if status:
            assert err.count("\n") <= 1
        return status, out, err

    return run


def digests(folder: Path) -> list[str]:
    return [each.digest for each in read_class_set(folder).brought]


def files(folder: Path) -> dict[str, bytes]:
    """Everything below, with its bytes."""
    return {
        str(path.relative_to(folder)): path.read_bytes()
        for path in sorted(folder.rglob("*"))
        if path.is_file()
    }


VERBS = (
    ("show",),
    ("add", "{top}/in"),
    ("check",),
    ("place", "IMG_1.jpg", "1/1"),
    ("table", "-o", "{top}/marks.csv"),
    ("studies", "-o", "{top}/out"),
    ("tidy",),
    ("delete", "--yes"),
)


@pytest.mark.parametrize("verb", VERBS, ids=lambda verb: verb[0])
def test_a_misspelt_folder_is_named_and_nothing_made(made, tmp_path, say, verb) -> None:
    before = files(tmp_path)
    name, *rest = (each.format(top=tmp_path) for each in verb)
    status, out, err = say(name, tmp_path / "7bb", *rest)
    assert (status, out) == (2, "")
    assert "7bb" in err
    assert {k: v for k, v in files(tmp_path).items() if "home" not in k} == before


def test_a_picture_that_is_gone_is_named_and_comes_back(made, tmp_path, say) -> None:
    gone = digests(made)[0]
    (made / "pictures" / gone).unlink()
    for verb in ("show", "check"):
        status, out, _ = say(verb, made)
        assert status == 0
        assert "IMG_1.jpg is gone from the folder: bring it in again" in out
    assert say("table", made, "-o", tmp_path / "marks.csv")[0] == 0
    assert "gone or damaged" in say("studies", made, "-o", tmp_path / "out")[2]
    say("add", made, tmp_path / "in")
    assert "is gone" not in say("show", made)[1]
    assert say("studies", made, "-o", tmp_path / "out", "--force")[0] == 0


def test_a_picture_that_was_damaged_is_told_and_mended_by_bringing_it_in_again(
    made, tmp_path, say
) -> None:
    broken = digests(made)[0]
    shutil.rmtree(made / "checks")
    (made / "pictures" / broken).write_bytes(b"\xff\xd8 no more than this")
    status, out, _ = say("check", made, "--jobs", "1")
    assert status == 0
    assert "1 sheet was checked." in out
    assert "> IMG_1.jpg: It is at 01, sheet 1, and could not be checked." in out
    assert "0 sheets were checked." in say("check", made, "--jobs", "1")[1]  # not over and over
    assert "0 pictures are new." in say("add", made, tmp_path / "in")[1]
    assert "1 sheet was checked." in say("check", made, "--jobs", "1")[1]
    assert "could not be checked" not in say("show", made)[1]


@pytest.mark.parametrize("verb", ["show", "check", "add"])
def test_without_its_photo_a_class_set_is_not_touched(made, tmp_path, say, verb) -> None:
    photo = read_class_set(made).exercise.photo.digest
    (made / "pictures" / photo).unlink()
    before = files(made)
    status, _, err = say(verb, made, *([tmp_path / "in"] if verb == "add" else []))
    assert status == 2
    assert "gone or damaged" in err
    assert files(made) == before


def test_a_class_set_whose_file_is_gone_keeps_its_pictures(made, tmp_path, say) -> None:
    (made / FILE_NAME).unlink()
    before = files(made)
    assert "no class set in 7b" in say("show", made)[2]
    photo = tmp_path / "sky.png"
    shutil.copy(next(iter((made / "pictures").iterdir())), photo)
    status, _, err = say("new", made, "--photo", photo, "--codes", "01-04")
    assert status == 2
    assert "whose file class-set.json is gone" in err
    assert files(made) == before


def test_two_windows_on_one_folder(made, tmp_path, say) -> None:
    with open_folder(made, data_folder()):
        before = files(made)
        for verb in (("add", made, tmp_path / "in"), ("check", made), ("place", made, "x", "1/1")):
            status, _, err = say(*verb)
            assert status == 2
            assert "7b is open in another window" in err
        assert say("show", made)[0] == 0  # looking is allowed
        assert files(made) == before
    assert say("add", made, tmp_path / "in")[0] == 0


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (errno.EROFS, "You may not write in 7b: copy the folder"),
        (errno.EACCES, "You may not write in 7b: copy the folder"),
        (errno.ENOSPC, "no room left"),
        (errno.EIO, "could not be written"),
    ],
)
def test_a_share_that_cannot_be_written(made, tmp_path, say, monkeypatch, number, words) -> None:
    """The disk says no as the system would: read-only, not allowed, full, unplugged."""
    before = files(made)

    def refuse(*args: object, **kwargs: object) -> int:
        raise OSError(number, os.strerror(number))

    for name in ("replace", "rename", "link"):
        monkeypatch.setattr(core.files.os, name, refuse)
    (tmp_path / "new").mkdir()
    tag = read_class_set(made).class_list.tag
    (tmp_path / "new" / "IMG_9.jpg").write_bytes(sheet_jpeg(Ticket(tag, 3, "1"), seed=9))
    for verb in (
        ("place", made, "IMG_1.jpg", "3/1"),
        ("place", made, "IMG_1.jpg", "aside"),
        ("add", made, tmp_path / "new"),
    ):
        status, _, err = say(*verb)
        assert status == 2
        assert words in err
        assert {k: v for k, v in files(made).items() if k in before} == before
    assert say("show", made)[0] == 0
    assert say("show", made, "--json")[0] == 0


def test_names_that_are_not_utf8(made, tmp_path, monkeypatch) -> None:
    folder = tmp_path / os.fsdecode(b"Klasse \xe4")
    try:
        shutil.copytree(made, folder)
    except OSError:
        pytest.skip("this system has no such names")
    picture = tmp_path / "in" / os.fsdecode(b"Bild \xff.jpg")
    tag = read_class_set(made).class_list.tag
    picture.write_bytes(sheet_jpeg(Ticket(tag, 3, "1"), seed=3))
    broken = tmp_path / "in" / os.fsdecode(b"kaputt \xfe.jpg")
    broken.write_bytes(picture.read_bytes()[:500])
    table = tmp_path / os.fsdecode(b"marks \xff.csv")
    # A terminal takes nothing but UTF-8.
    said = io.TextIOWrapper(io.BytesIO(), "utf-8", errors="strict")
    monkeypatch.setattr(sys, "stdout", said)
    monkeypatch.setattr(sys, "stderr", said)
    for verb in (
        ("add", folder, tmp_path / "in"),
        ("show", folder),
        ("check", folder, "--jobs", "1"),
        ("table", folder, "-o", table),
    ):
        assert core.cli.run(["class", *map(str, verb)]) == 0
    assert core.cli.run(["class", "show", str(tmp_path / os.fsdecode(b"no \xff"))]) == 2
    said.flush()
    text = said.buffer.getvalue().decode("utf-8")
    assert "+ Bild ?.jpg" in text
    assert "! kaputt ?.jpg" in text
    assert "no class set in no ?" in text
    assert table.is_file()
    assert [each.picture.name for each in read_class_set(folder).brought][-1] == "picture 003.jpg"


def test_a_class_of_one(tmp_path, say) -> None:
    assert len(class_list_of(("K7",)).students) == 1
    with made_folder(tmp_path, 1):
        pass
    assert say("show", tmp_path / "7b")[0] == 0
    assert say("table", tmp_path / "7b", "-o", tmp_path / "marks.xlsx")[0] == 0

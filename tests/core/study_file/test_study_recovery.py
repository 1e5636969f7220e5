"""Unsaved work survives a killed window, and only that."""

from __future__ import annotations

import os
import re
import shutil
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from core.study_file.contents import Contents
from core.study_file.locks import study_lock
from core.study_file.opening import open_contents
from core.study_file.recovery import SET_ASIDE, UnsavedWork, give_up, left_behind

TITLED = """{"format": "gradewash study", "version": 1, "title": "%s", "box": {"gradewash_box": 1,
"name": "ours", "paints": ["ultramarine"]}, "mix": {"paper": {"name": "A4", "width_mm": 210,
"height_mm": 297, "border_mm": 10}}, "photo": {"name": "sky.jpg", "member": "photo.jpg"},
"worksheet": {"remark": "A brave sky."}}"""


def work(title: str = "Dusk", photo: bytes = b"\xff\xd8photo") -> Contents:
    return Contents((TITLED % title).encode(), {"photo.jpg": photo})


ONE = work()

WINDOW = """
import sys
from pathlib import Path
from core.study_file.contents import Contents
from core.study_file.locks import study_lock
from core.study_file.recovery import UnsavedWork
folder = Path(sys.argv[1])
unsaved = UnsavedWork(folder)
text = sys.stdin.readline().encode()
unsaved.keep(Contents(text, {"photo.jpg": b"1"}), "Dusk", folder / "dusk.gradewash")
lock = study_lock(folder, folder / "dusk.gradewash")
assert lock.take()
print("ready", flush=True)
sys.stdin.readline()
"""


@pytest.fixture
def window(tmp_path: Path):
    with subprocess.Popen(
        [sys.executable, "-c", WINDOW, str(tmp_path)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
    ) as process:
        assert process.stdin is not None
        assert process.stdout is not None
        process.stdin.write(ONE.json.replace(b"\n", b" ") + b"\n")
        process.stdin.flush()
        assert process.stdout.readline().strip() == b"ready"
        yield process
        process.kill()


def test_work_of_a_running_window_is_left_alone(window, tmp_path: Path) -> None:
    assert left_behind(tmp_path) == ()
    assert not study_lock(tmp_path, tmp_path / "dusk.gradewash").take()


@pytest.mark.skipif(os.name == "nt", reason="no SIGKILL there")
def test_work_of_a_killed_window_is_offered_and_its_lock_is_free(window, tmp_path: Path) -> None:
    window.send_signal(signal.SIGKILL)
    window.wait()
    (recovered,) = left_behind(tmp_path)
    assert recovered.title == "Dusk"
    assert recovered.path == tmp_path / "dusk.gradewash"
    assert recovered.contents.json.split() == ONE.json.split()
    assert not recovered.partial
    assert dict(recovered.contents.pictures) == {"photo.jpg": b"1"}
    lock = study_lock(tmp_path, tmp_path / "dusk.gradewash")
    assert lock.take()
    lock.let_go()
    give_up(tmp_path, recovered)
    assert left_behind(tmp_path) == ()
    assert [file for file in tmp_path.rglob("*") if file.is_file()] == []


def test_keeping_again_writes_a_picture_once(tmp_path: Path) -> None:
    unsaved = UnsavedWork(tmp_path)
    unsaved.keep(ONE, "Dusk", None)
    picture = next(tmp_path.rglob("photo.jpg"))
    before = picture.stat().st_ino
    unsaved.keep(work("Dawn"), "Dawn", None)
    assert picture.stat().st_ino == before
    unsaved.keep(work("Dawn", b"other"), "Dawn", None)
    assert picture.read_bytes() == b"other"


def test_forgotten_leaves_nothing(tmp_path: Path) -> None:
    unsaved = UnsavedWork(tmp_path)
    unsaved.keep(ONE, "Dusk", None)
    unsaved.forget()
    assert [file for file in tmp_path.rglob("*") if file.is_file()] == []
    unsaved.keep(ONE, "Dusk", None)
    assert len(list(tmp_path.rglob("study.json"))) == 1


def test_a_folder_without_a_study_is_cleared(tmp_path: Path) -> None:
    (tmp_path / "unsaved" / "abc" / "pictures").mkdir(parents=True)
    assert left_behind(tmp_path) == ()
    assert not (tmp_path / "unsaved" / "abc").exists()


def test_one_study_by_two_ways_is_one_lock(tmp_path: Path) -> None:
    (tmp_path / "folder").mkdir()
    direct = study_lock(tmp_path, tmp_path / "dusk.gradewash")
    around = study_lock(tmp_path, tmp_path / "folder" / ".." / "dusk.gradewash")
    assert direct.take()
    assert not around.take()
    direct.let_go()
    assert around.take()
    around.let_go()


def kept(tmp_path: Path) -> Path:
    """Unsaved work whose window is gone."""
    unsaved = UnsavedWork(tmp_path)
    unsaved.keep(ONE, "Dusk", tmp_path / "dusk.gradewash")
    unsaved._lock.let_go()
    return tmp_path / "unsaved" / unsaved.key


def every_file(folder: Path) -> dict[str, bytes | None]:
    return {
        file.name: file.read_bytes() if os.access(file, os.R_OK) and file.is_file() else None
        for file in folder.rglob("*")
        if not file.name.endswith(".lock")
    }


def cannot_be_read(path: Path) -> None:
    """Reading it is an OSError, for root too."""
    path.unlink()
    path.symlink_to(path)


DAMAGES = {
    "no about": lambda folder: (folder / "about.json").unlink(),
    "about is cut": lambda folder: (folder / "about.json").write_bytes(b'{"title": "Du'),
    "about is another thing": lambda folder: (folder / "about.json").write_bytes(b"[[]]"),
    "about is deep": lambda folder: (folder / "about.json").write_bytes(b"[" * 200_000),
    "about cannot be read": lambda folder: cannot_be_read(folder / "about.json"),
    "no pictures folder": lambda folder: shutil.rmtree(folder / "pictures"),
    "no picture": lambda folder: (folder / "pictures" / "photo.jpg").unlink(),
    "picture cannot be read": lambda folder: cannot_be_read(folder / "pictures" / "photo.jpg"),
    "pictures is a file": lambda folder: (
        shutil.rmtree(folder / "pictures"),
        (folder / "pictures").write_bytes(b"x"),
    ),
    "study is cut": lambda folder: (folder / "study.json").write_bytes(ONE.json[:200]),
    "study has a wrong part": lambda folder: (folder / "study.json").write_bytes(
        ONE.json.replace(b"210", b'"wide"')
    ),
    "study is empty": lambda folder: (folder / "study.json").write_bytes(b""),
    "no study": lambda folder: (folder / "study.json").unlink(),
    "study cannot be read": lambda folder: cannot_be_read(folder / "study.json"),
    "study is a pipe": lambda folder: (
        (folder / "study.json").unlink(),
        os.mkfifo(folder / "study.json"),
    ),
}


@pytest.mark.skipif(os.name == "nt", reason="links and pipes")
@pytest.mark.parametrize("damage", DAMAGES)
def test_damaged_work_is_offered_as_far_as_it_goes_and_never_deleted(
    tmp_path: Path, damage: str
) -> None:
    folder = kept(tmp_path)
    DAMAGES[damage](folder)
    before = every_file(folder)
    (recovered,) = left_behind(tmp_path)
    assert every_file(folder) == before
    opened = open_contents(recovered.contents)
    assert opened.study is not None
    if "study" not in damage:
        assert opened.study.study.title == "Dusk"
        assert opened.study.study.worksheet.remark == "A brave sky."
    if "about" in damage:
        assert not recovered.partial
        assert recovered.title == "Dusk"
    else:
        assert recovered.partial
        give_up(tmp_path, recovered)
        (aside,) = (tmp_path / SET_ASIDE).iterdir()
        assert every_file(aside) == before
        assert re.match(r"\d{4}-\d\d-\d\d \d\d\.\d\d", aside.name)
    assert len(left_behind(tmp_path)) == (1 if "about" in damage else 0)


@pytest.mark.skipif(os.name == "nt", reason="links")
def test_work_of_which_nothing_can_be_read_is_set_aside_and_told(tmp_path: Path) -> None:
    folder = kept(tmp_path)
    cannot_be_read(folder / "study.json")
    cannot_be_read(folder / "pictures" / "photo.jpg")
    before = every_file(folder)
    told: list[Path] = []
    assert left_behind(tmp_path, told.append) == ()
    assert [every_file(place) for place in told] == [before]
    assert not folder.exists()


@pytest.mark.skipif(os.name == "nt", reason="modes")
def test_kept_work_is_private(tmp_path: Path) -> None:
    old = os.umask(0o022)
    try:
        data = tmp_path / "share" / "gradewash"
        folder = kept(data)
    finally:
        os.umask(old)
    for path in (data, folder, *data.rglob("*")):
        if path == data or path.is_relative_to(data / "unsaved"):
            assert path.stat().st_mode & 0o077 == 0, path

"""Unsaved work survives a killed window, and only that."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest

from core.study_file.contents import Contents
from core.study_file.locks import study_lock
from core.study_file.recovery import Keeper, give_up, left_behind

ONE = Contents(b'{"title": "Dusk"}', {"photo.jpg": b"\xff\xd8photo"})

WINDOW = """
import sys
from pathlib import Path
from core.study_file.contents import Contents
from core.study_file.locks import study_lock
from core.study_file.recovery import Keeper
folder = Path(sys.argv[1])
keeper = Keeper(folder)
keeper.keep(Contents(b'{"title": "Dusk"}', {"photo.jpg": b"1"}), "Dusk", folder / "dusk.gradewash")
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
        assert process.stdout is not None
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
    assert recovered.contents.json == b'{"title": "Dusk"}'
    assert dict(recovered.contents.pictures) == {"photo.jpg": b"1"}
    lock = study_lock(tmp_path, tmp_path / "dusk.gradewash")
    assert lock.take()
    lock.let_go()
    give_up(tmp_path, recovered)
    assert left_behind(tmp_path) == ()
    assert [file for file in tmp_path.rglob("*") if file.is_file()] == []


def test_keeping_again_writes_a_picture_once(tmp_path: Path) -> None:
    keeper = Keeper(tmp_path)
    keeper.keep(ONE, "Dusk", None)
    picture = next(tmp_path.rglob("photo.jpg"))
    before = picture.stat().st_ino
    keeper.keep(Contents(b'{"title": "Dawn"}', ONE.pictures), "Dawn", None)
    assert picture.stat().st_ino == before
    keeper.keep(Contents(b"{}", {"photo.jpg": b"other"}), "Dawn", None)
    assert picture.read_bytes() == b"other"


def test_forgotten_leaves_nothing(tmp_path: Path) -> None:
    keeper = Keeper(tmp_path)
    keeper.keep(ONE, "Dusk", None)
    keeper.forget()
    assert [file for file in tmp_path.rglob("*") if file.is_file()] == []
    keeper.keep(ONE, "Dusk", None)
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

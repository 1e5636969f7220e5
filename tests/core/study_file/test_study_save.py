"""Saving: whatever happens, the file holds the old study or the new one."""

from __future__ import annotations

import errno
import itertools
import os
import random
from pathlib import Path

import pytest
from to_be_killed import parent_of

from core import files
from core.errors import StudyFileError
from core.files import aside_of
from core.study_file.save import changed_on_disk, read_bytes, stamp_of, write_bytes


def save_without_end(target: str, size: str) -> None:
    """To be killed: saves one content after another."""
    for turn in itertools.count():
        write_bytes(Path(target), bytes([turn % 251]) * int(size))


def test_written_is_read(tmp_path: Path) -> None:
    path = tmp_path / "dusk.gradewash"
    stamp = write_bytes(path, b"one")
    assert read_bytes(path) == b"one"
    assert stamp == stamp_of(b"one")
    assert not changed_on_disk(path, stamp)
    assert os.listdir(tmp_path) == ["dusk.gradewash"]


def test_a_change_by_somebody_else_is_noticed(tmp_path: Path) -> None:
    path = tmp_path / "dusk.gradewash"
    stamp = write_bytes(path, b"one")
    path.write_bytes(b"two")
    assert changed_on_disk(path, stamp)
    path.unlink()
    assert changed_on_disk(path, stamp)


def test_what_a_killed_save_left_is_cleared(tmp_path: Path) -> None:
    path = tmp_path / "dusk.gradewash"
    write_bytes(path, b"one")
    aside_of(path).write_bytes(b"half")
    assert read_bytes(path) == b"one"
    assert os.listdir(tmp_path) == ["dusk.gradewash"]


@pytest.mark.skipif(os.name == "nt", reason="Windows itself refuses")
def test_a_save_that_runs_is_not_cleared_nor_joined(tmp_path: Path) -> None:
    path = tmp_path / "dusk.gradewash"
    write_bytes(path, b"one")
    running, _ = files._open_aside(path)
    with running:
        running.write(b"half")
        running.flush()
        assert read_bytes(path) == b"one"
        assert aside_of(path).read_bytes() == b"half"
        with pytest.raises(StudyFileError, match="another window"):
            write_bytes(path, b"two")
        assert aside_of(path).read_bytes() == b"half"
    write_bytes(path, b"two")
    assert path.read_bytes() == b"two"
    assert os.listdir(tmp_path) == ["dusk.gradewash"]


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    real = tmp_path / "real.gradewash"
    link = tmp_path / "link.gradewash"
    write_bytes(real, b"one")
    link.symlink_to(real)
    write_bytes(link, b"two")
    assert link.is_symlink()
    assert real.read_bytes() == b"two"


def test_permissions_stay(tmp_path: Path) -> None:
    path = tmp_path / "dusk.gradewash"
    write_bytes(path, b"one")
    path.chmod(0o640)
    write_bytes(path, b"two")
    assert path.stat().st_mode & 0o777 == 0o640


@pytest.mark.parametrize(
    ("number", "words"),
    [
        (errno.ENOSPC, "no room"),
        (errno.EACCES, "may not write"),
        (errno.EROFS, "may not write"),
        (errno.EIO, "could not be written"),
    ],
)
def test_a_save_that_fails_says_so_and_leaves_the_old_file(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch, number: int, words: str
) -> None:
    path = tmp_path / "dusk.gradewash"
    write_bytes(path, b"one")

    def fail(descriptor: int) -> None:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(files.os, "fsync", fail)
    with pytest.raises(StudyFileError, match=words):
        write_bytes(path, b"two")
    monkeypatch.undo()
    assert read_bytes(path) == b"one"
    assert os.listdir(tmp_path) == ["dusk.gradewash"]


def test_a_vanished_folder(tmp_path: Path) -> None:
    with pytest.raises(StudyFileError, match="folder"):
        write_bytes(tmp_path / "gone" / "dusk.gradewash", b"one")
    with pytest.raises(StudyFileError, match="There is no file"):
        read_bytes(tmp_path / "dusk.gradewash")
    with pytest.raises(StudyFileError, match="is a folder"):
        read_bytes(tmp_path)


@pytest.mark.skipif(os.name == "nt", reason="kills as POSIX does")
def test_killed_at_random_moments(tmp_path: Path) -> None:
    """Saves cut off by SIGKILL: always a whole file, never a stray one after the next read.

    As many as GRADEWASH_KILLS says, 100 without it.
    """
    path = tmp_path / "dusk.gradewash"
    size = 400_000
    write_bytes(path, bytes([250]) * size)
    rng = random.Random(5)
    with parent_of(
        "study_file.test_study_save", "save_without_end", str(path), str(size)
    ) as parent:
        for _ in range(int(os.environ.get("GRADEWASH_KILLS", "100"))):
            parent.kill_one(0, rng.uniform(0.0, 0.02))
            data = path.read_bytes()
            assert len(data) == size
            assert data.count(data[:1]) == size
            assert read_bytes(path) == data
            assert os.listdir(tmp_path) == [path.name]

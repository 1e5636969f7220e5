"""Files are written whole, never through a planted link, and read only where that can end."""

from __future__ import annotations

import errno
import os
import stat
import threading
from pathlib import Path

import pytest

from core.cards.file import write_card
from core.errors import BoxError, CardError, GradewashError, PhotoError, StudyFileError
from core.files import (
    NotRegularError,
    TooLargeError,
    aside_of,
    clear_aside,
    make_private_folder,
    read_file,
    write_file,
)
from core.paint.box.box import DEFAULT_BOX
from core.paint.box.box_file import open_box, save_box
from core.photo import open_photo
from core.study_file.opening import open_file
from core.study_file.save import read_bytes, write_bytes

pytestmark = pytest.mark.skipif(os.name == "nt", reason="links, pipes and modes of POSIX")


def mode_of(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


WRITERS = {
    "study": lambda path: write_bytes(path, b"new"),
    "card": lambda path: write_card(path, b"new"),
    "box": lambda path: save_box(DEFAULT_BOX, path),
    "file": lambda path: write_file(path, b"new"),
}


@pytest.mark.parametrize("kind", WRITERS)
@pytest.mark.parametrize("planted", ["aside", ".{}.saving", ".{}.part", "{}.new", ".{}.tmp"])
def test_a_planted_link_is_never_followed(tmp_path: Path, kind: str, planted: str) -> None:
    victim = tmp_path / "victim"
    victim.write_bytes(b"precious")
    path = tmp_path / "shared" / "lesson.out"
    path.parent.mkdir()
    link = aside_of(path) if planted == "aside" else path.with_name(planted.format(path.name))
    link.symlink_to(victim)
    WRITERS[kind](path)
    assert victim.read_bytes() == b"precious"
    assert path.stat().st_size > 0
    assert not path.is_symlink()


@pytest.mark.parametrize("kind", WRITERS)
def test_a_planted_hard_link_or_pipe_does_no_harm(tmp_path: Path, kind: str) -> None:
    victim, path = tmp_path / "victim", tmp_path / "lesson.out"
    victim.write_bytes(b"precious")
    os.link(victim, aside_of(path))
    WRITERS[kind](path)
    assert victim.read_bytes() == b"precious"
    path.unlink()
    os.mkfifo(aside_of(path))
    WRITERS[kind](path)
    assert path.stat().st_size > 0


@pytest.mark.parametrize("kind", WRITERS)
def test_the_file_behind_a_link_is_replaced(tmp_path: Path, kind: str) -> None:
    real, link = tmp_path / "real.out", tmp_path / "link.out"
    real.write_bytes(b"old")
    link.symlink_to(real)
    WRITERS[kind](link)
    assert link.is_symlink()
    assert real.read_bytes() != b"old"


@pytest.mark.parametrize("kind", WRITERS)
def test_what_is_no_file_is_not_replaced(tmp_path: Path, kind: str) -> None:
    pipe, folder, circle = tmp_path / "pipe", tmp_path / "folder", tmp_path / "circle"
    os.mkfifo(pipe)
    folder.mkdir()
    circle.symlink_to(circle)
    to_device = tmp_path / "device"
    to_device.symlink_to("/dev/null")
    for path in (pipe, folder, circle, to_device, Path("/dev/null"), Path(), tmp_path / ".."):
        before = os.lstat(path)
        with pytest.raises((GradewashError, OSError)) as caught:
            WRITERS[kind](path)
        after = os.lstat(path)
        assert (before.st_mode, before.st_ino) == (after.st_mode, after.st_ino)
        if kind != "file":
            assert isinstance(caught.value, StudyFileError | CardError | BoxError)
            assert str(caught.value).endswith(".")


@pytest.mark.parametrize(
    "name", ["x" * 300, "y" * 255, "z" * 250, "a\0b", "odd\ud83d", "caf\udce9"]
)
def test_names_of_every_kind_end_in_a_file_or_a_sentence(tmp_path: Path, name: str) -> None:
    path = tmp_path / name
    if name in ("y" * 255, "z" * 250, "caf\udce9"):
        write_bytes(path, b"data")
        assert read_bytes(path) == b"data"
        assert len(os.listdir(tmp_path)) == 1
        return
    with pytest.raises(StudyFileError) as caught:
        write_bytes(path, b"data")
    assert str(caught.value).endswith(".")
    assert str(caught.value).encode()
    assert os.listdir(tmp_path) == []


def test_private_is_private(tmp_path: Path) -> None:
    folder = tmp_path / "data" / "gradewash"
    old = os.umask(0o022)
    try:
        make_private_folder(folder)
        write_file(folder / "new", b"x", private=True)
        (folder / "loose").write_bytes(b"x")
        write_file(folder / "loose", b"y", private=True)
        write_file(tmp_path / "plain", b"x")
    finally:
        os.umask(old)
    assert mode_of(folder) == 0o700
    assert mode_of(folder / "new") == mode_of(folder / "loose") == 0o600
    assert mode_of(tmp_path / "plain") == 0o644
    folder.chmod(0o755)
    make_private_folder(folder)
    assert mode_of(folder) == 0o700


def test_at_no_moment_is_a_private_file_open_to_others(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    seen = []
    monkeypatch.setattr(os, "fchmod", lambda handle, mode: None)
    monkeypatch.setattr(os, "fsync", lambda handle: seen.append(os.fstat(handle).st_mode & 0o777))
    write_file(tmp_path / "kept", b"x", private=True)
    assert seen[0] == 0o600


def hanging(read: object, path: Path) -> str:
    """What a reader answers; a reader that hangs fails the test instead of the whole run."""
    answer: list[str] = []

    def work() -> None:
        try:
            read(path)  # type: ignore[operator]
        except (GradewashError, OSError) as error:
            answer.append(str(error))
        else:
            answer.append("")

    thread = threading.Thread(target=work, daemon=True)
    thread.start()
    thread.join(20)
    assert answer, f"{read} hangs on {path}"
    return answer[0]


@pytest.mark.parametrize(
    "read", [read_bytes, open_box, open_photo, open_file, lambda path: read_file(path, 10)]
)
def test_only_regular_files_are_read(tmp_path: Path, read: object) -> None:
    pipe = tmp_path / "pipe.gradewash"
    os.mkfifo(pipe)
    for path in (pipe, Path("/dev/zero"), Path("/dev/tty"), tmp_path):
        assert hanging(read, path)


def test_no_more_is_read_than_asked_for(tmp_path: Path) -> None:
    path = tmp_path / "long"
    path.write_bytes(b"x" * 11)
    assert read_file(path, 11) == b"x" * 11
    with pytest.raises(TooLargeError):
        read_file(path, 10)
    with pytest.raises(NotRegularError):
        read_file(Path("/dev/zero"), 10)


def test_clearing_removes_a_leftover_and_nothing_else(tmp_path: Path) -> None:
    path = tmp_path / "lesson.gradewash"
    aside_of(path).write_bytes(b"half")
    clear_aside(path)
    assert os.listdir(tmp_path) == []
    victim = tmp_path / "victim"
    victim.write_bytes(b"precious")
    aside_of(path).symlink_to(victim)
    clear_aside(path)
    assert aside_of(path).is_symlink()
    assert victim.read_bytes() == b"precious"


def test_a_failed_write_leaves_nothing(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    def fail(handle: int) -> None:
        raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))

    path = tmp_path / "card.pdf"
    path.write_bytes(b"old")
    monkeypatch.setattr(os, "fsync", fail)
    with pytest.raises(CardError, match="no room"):
        write_card(path, b"new")
    assert path.read_bytes() == b"old"
    assert os.listdir(tmp_path) == ["card.pdf"]
    with pytest.raises(PhotoError):
        open_photo(path)

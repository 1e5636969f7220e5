"""Writing a file so that the one before survives any crash, and reading it back."""

from __future__ import annotations

import contextlib
import errno
import hashlib
import os
import sys
from dataclasses import dataclass
from pathlib import Path
from typing import IO

from core.errors import StudyFileError
from core.i18n import translate
from core.study_file.contents import MOST_TOTAL

if sys.platform != "win32":
    import fcntl

_ASIDE_SUFFIX = ".saving"


@dataclass(frozen=True)
class Stamp:
    """What a file on disk was when it was read or written: tells later whether it changed."""

    size: int
    digest: str


def stamp_of(data: bytes) -> Stamp:
    """The stamp of a file with this content."""
    return Stamp(len(data), hashlib.sha256(data).hexdigest())


def read_bytes(path: Path) -> bytes:
    """The file's content, after clearing what a killed save may have left beside it.

    Raises
    ------
    StudyFileError
        It is not there, may not be read, or is far too large.
    """
    clear_aside(path)
    try:
        with path.open("rb") as stream:
            data = stream.read(MOST_TOTAL + MOST_TOTAL // 8)
            if stream.read(1):
                raise StudyFileError(
                    translate("study file", "{name} is too large to be a study.").format(
                        name=path.name
                    )
                )
    except OSError as error:
        raise StudyFileError(_reading(path, error)) from error
    return data


def write_bytes(path: Path, data: bytes) -> Stamp:
    """Put `data` at `path`, wholly or not at all.

    Written aside, flushed to the disk, then put in place in one step: whoever is killed in
    between leaves the old file as it was.

    Raises
    ------
    StudyFileError
        The folder is gone, full, or may not be written; nothing was changed.
    """
    target = _target(path)
    aside = aside_of(target)
    try:
        with _open_aside(aside) as stream:
            stream.write(data)
            stream.flush()
            os.fsync(stream.fileno())
            with contextlib.suppress(OSError):
                os.chmod(aside, target.stat().st_mode & 0o777)
            if sys.platform != "win32":
                os.replace(aside, target)  # while it is held: nobody may clear it before
        if sys.platform == "win32":
            os.replace(aside, target)
    except OSError as error:
        if not isinstance(error, BlockingIOError):
            with contextlib.suppress(OSError):
                aside.unlink(missing_ok=True)
        raise StudyFileError(_writing(path, error)) from error
    _flush_folder(target.parent)
    return stamp_of(data)


def changed_on_disk(path: Path, stamp: Stamp) -> bool:
    """Whether somebody else wrote the file since; a vanished file counts as changed."""
    try:
        if path.stat().st_size != stamp.size:
            return True
        return stamp_of(path.read_bytes()) != stamp
    except OSError:
        return True


def aside_of(path: Path) -> Path:
    """Where a save of `path` is written first: one name, so that no heap of them can grow."""
    return path.with_name(f".{path.name}{_ASIDE_SUFFIX}")


def clear_aside(path: Path) -> None:
    """Remove what a save that was killed left beside `path`; a save that still runs is not."""
    aside = aside_of(_target(path))
    # Windows itself refuses to remove a file that is being written.
    with contextlib.suppress(OSError):
        if sys.platform == "win32":
            aside.unlink(missing_ok=True)
        elif aside.exists():
            with aside.open("rb") as stream:
                fcntl.flock(stream, fcntl.LOCK_EX | fcntl.LOCK_NB)
                aside.unlink(missing_ok=True)


def _open_aside(aside: Path) -> IO[bytes]:
    """Open the file to write aside, held against whoever would clear it or save there too.

    Raises
    ------
    OSError
        It cannot be made; BlockingIOError when another save of the same file runs.
    """
    while True:
        handle = os.open(aside, os.O_RDWR | os.O_CREAT | getattr(os, "O_BINARY", 0), 0o666)
        stream = os.fdopen(handle, "wb")
        try:
            if sys.platform != "win32":
                _hold(handle)
                if not _is_still(handle, aside):
                    stream.close()
                    continue  # cleared between the two steps
            if os.fstat(handle).st_size:
                os.ftruncate(handle, 0)
        except BaseException:
            stream.close()
            raise
        return stream


def _hold(handle: int) -> None:
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError as error:
        # Some shared drives know no locks: there the name alone has to do.
        if error.errno not in (errno.ENOLCK, errno.ENOTSUP, errno.ENOSYS, errno.EINVAL):
            raise


def _is_still(handle: int, path: Path) -> bool:
    try:
        return os.path.samestat(os.fstat(handle), path.stat())
    except FileNotFoundError:
        return False


def _target(path: Path) -> Path:
    # A link keeps pointing where it did: the file behind it is replaced.
    return path.resolve() if path.is_symlink() else path


def _flush_folder(folder: Path) -> None:
    # The new name itself must reach the disk; Windows has no such call and needs none.
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def _reading(path: Path, error: OSError) -> str:
    if isinstance(error, FileNotFoundError):
        text = translate("study file", "{name} is not there any more; was it moved or renamed?")
    elif isinstance(error, IsADirectoryError):
        text = translate("study file", "{name} is a folder; choose a study file.")
    elif isinstance(error, PermissionError):
        text = translate("study file", "You may not read {name}; ask whoever owns it.")
    else:
        text = translate("study file", "{name} cannot be read; is the disk still connected?")
    return text.format(name=path.name)


def _writing(path: Path, error: OSError) -> str:
    if error.errno in (errno.ENOSPC, errno.EDQUOT):
        text = translate(
            "study file",
            "There is no room left for {name}; free some space or save it elsewhere. "
            "Your study is still open.",
        )
    elif isinstance(error, BlockingIOError):
        text = translate(
            "study file",
            "{name} is being saved by another window just now; try again. "
            "Your study is still open.",
        )
    elif isinstance(error, FileNotFoundError | NotADirectoryError):
        text = translate(
            "study file",
            "The folder for {name} is not there any more; save it elsewhere. "
            "Your study is still open.",
        )
    elif isinstance(error, PermissionError) or error.errno == errno.EROFS:
        text = translate(
            "study file",
            "You may not write {name} there; save it elsewhere. Your study is still open.",
        )
    else:
        text = translate(
            "study file",
            "{name} could not be saved there; save it elsewhere. Your study is still open.",
        )
    return text.format(name=path.name)

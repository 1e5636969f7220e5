"""Reading and writing files: bounded, never through a planted link, wholly or not at all.

Everything the program keeps goes through `write_file`, and everything it reads whole through
`read_file`: a study, a card, a paint box, the preferences. Each caller has its own error type;
`core.file_sentences` says in words what went wrong.
"""

from __future__ import annotations

import contextlib
import errno
import hashlib
import os
import re
import signal
import stat
import sys
import threading
from collections.abc import Iterator
from pathlib import Path
from typing import IO

if sys.platform != "win32":
    import fcntl

PRIVATE_FILE, PRIVATE_FOLDER = 0o600, 0o700

ASIDE_SUFFIX = ".saving"
"""Ends the name of a file that is being written, and of one that a killed save left."""

_LONGEST_NAME = 255  # bytes, on every file system in use
_TRIES = 20
# Names that POSIX has and Windows has not mean nothing there.
_EXTRA = getattr(os, "O_CLOEXEC", 0) | getattr(os, "O_BINARY", 0)
_NO_LINK = getattr(os, "O_NOFOLLOW", 0)
_NO_WAIT = getattr(os, "O_NONBLOCK", 0)


class NotRegularError(OSError):
    """Neither a file nor a folder: a device, a pipe, a socket."""


class TooLargeError(OSError):
    """The file holds more than was asked for at most."""


def open_regular(path: Path) -> IO[bytes]:
    """Open a regular file for reading; whatever could block or never end is refused.

    Raises
    ------
    OSError
        It is not there, may not be read, or is a folder; `NotRegularError` for anything else
        that is no file.
    """
    with _names_as_os_errors():
        # Looked at first: opening a device may already do something.
        _refuse_irregular(os.stat(path).st_mode, path)
        handle = os.open(path, os.O_RDONLY | _EXTRA | _NO_WAIT)
    try:
        _refuse_irregular(os.fstat(handle).st_mode, path)
        # Not by the handle: readers of pictures ask the stream for its name.
        return open(path, "rb", opener=lambda name, flags: handle)
    except BaseException:
        os.close(handle)
        raise


def read_file(path: Path, most: int) -> bytes:
    """The content of a regular file of at most `most` bytes.

    Raises
    ------
    OSError
        As `open_regular`; `TooLargeError` for a file that holds more.
    """
    with open_regular(path) as stream:
        data = stream.read(most + 1)
    if len(data) > most:
        raise TooLargeError(errno.EFBIG, os.strerror(errno.EFBIG), str(path))
    return data


def write_file(path: Path, data: bytes, *, private: bool = False, durable: bool = True) -> None:
    """Put `data` at `path`, wholly or not at all.

    Written aside into a file that did not exist before, flushed to the disk, then put in place
    in one step: whoever is killed in between leaves the old file as it was. A link keeps
    pointing where it did, and the file behind it is replaced. The permissions of a file that is
    replaced stay.

    Parameters
    ----------
    private : bool
        Nobody but the user may read it.
    durable : bool
        Wait until the disk has it; False for what may be lost in a power cut.

    Raises
    ------
    OSError
        The folder is gone, full, or may not be written, or something that is no file has the
        name; nothing was changed. `BlockingIOError` when another save of the same file runs.
    """
    with _clearing_up_after_interrupts():
        _write(path, data, private, durable)


def _write(path: Path, data: bytes, private: bool, durable: bool) -> None:
    target = behind_link(path)
    with _names_as_os_errors():
        mode = _mode_for(target, private)
        stream, aside = _open_aside(target, PRIVATE_FILE if private else 0o666)
    try:
        with stream:
            stream.write(data)
            stream.flush()
            if mode is not None and hasattr(os, "fchmod"):
                with contextlib.suppress(OSError):  # some shared drives know no permissions
                    os.fchmod(stream.fileno(), mode)
            if durable:
                os.fsync(stream.fileno())
            if sys.platform != "win32":
                os.replace(aside, target)  # while it is held: nobody may clear it before
        if sys.platform == "win32":
            os.replace(aside, target)
    except BaseException:
        with contextlib.suppress(OSError):
            aside.unlink(missing_ok=True)
        raise
    if durable:
        _flush_folder(target.parent)


def why_not_writable(path: Path) -> OSError | None:
    """What speaks against writing a file of this name, as far as that is seen beforehand.

    A folder that is not there does not: whoever asks may make it.
    """
    try:
        target = behind_link(path)
        with _names_as_os_errors():
            _check_name(target)
            _mode_for(target, False)
    except NotADirectoryError:
        return None
    except OSError as error:
        return error
    return None


def make_private_folder(folder: Path) -> None:
    """Make a folder, and those above it, that only the user may look into.

    Raises
    ------
    OSError
        It cannot be made.
    """
    folder.parent.mkdir(parents=True, exist_ok=True)
    with contextlib.suppress(FileExistsError):
        folder.mkdir(mode=PRIVATE_FOLDER)
    if not folder.is_dir():
        raise NotADirectoryError(errno.ENOTDIR, os.strerror(errno.ENOTDIR), str(folder))
    if sys.platform != "win32" and stat.S_IMODE(folder.stat().st_mode) & 0o077:
        with contextlib.suppress(OSError):  # somebody else's, or a drive without permissions
            folder.chmod(PRIVATE_FOLDER)


def behind_link(path: Path) -> Path:
    """The file that a link leads to; the path itself where it is no link.

    Raises
    ------
    OSError
        Links that lead round in a circle, or a name that cannot be one.
    """
    try:
        with _names_as_os_errors():
            return path.resolve() if path.is_symlink() else path
    except RuntimeError as error:  # Python 3.11 and 3.12 say it so
        raise OSError(errno.ELOOP, os.strerror(errno.ELOOP), str(path)) from error


def aside_of(path: Path) -> Path:
    """Where a save of `path` is written first: one name, so that no heap of them can grow."""
    name = f".{path.name}{ASIDE_SUFFIX}"
    if len(os.fsencode(name)) > _LONGEST_NAME:
        name = f".{hashlib.sha256(os.fsencode(path.name)).hexdigest()[:24]}{ASIDE_SUFFIX}"
    return path.with_name(name)


def clear_aside(path: Path) -> None:
    """Remove what a save that was killed left beside `path`; a save that still runs is not."""
    # Windows itself refuses to remove a file that is being written.
    with contextlib.suppress(OSError, ValueError):
        aside = aside_of(behind_link(path))
        if sys.platform == "win32":
            aside.unlink(missing_ok=True)
        else:
            _remove_leftover(aside)


@contextlib.contextmanager
def _clearing_up_after_interrupts() -> Iterator[None]:
    """Ctrl+C ends the program at once, but while a file is written it leaves nothing behind."""
    if (
        threading.current_thread() is not threading.main_thread()
        or signal.getsignal(signal.SIGINT) is not signal.SIG_DFL
    ):
        yield
        return
    signal.signal(signal.SIGINT, signal.default_int_handler)
    try:
        yield
    finally:
        signal.signal(signal.SIGINT, signal.SIG_DFL)


@contextlib.contextmanager
def _names_as_os_errors() -> Iterator[None]:
    """A zero byte or a lone surrogate in a name is a ValueError to Python, a wrong name to us."""
    try:
        yield
    except ValueError as error:
        raise OSError(errno.EINVAL, str(error)) from error


def _refuse_irregular(mode: int, path: Path) -> None:
    if stat.S_ISDIR(mode):
        raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR), str(path))
    if not stat.S_ISREG(mode):
        raise NotRegularError(errno.EINVAL, "not a regular file", str(path))


def _mode_for(target: Path, private: bool) -> int | None:
    """The permissions the file is to have; None for those that new files get."""
    try:
        before = os.lstat(target).st_mode
    except FileNotFoundError:
        return PRIVATE_FILE if private else None
    _refuse_irregular(before, target)
    return PRIVATE_FILE if private else stat.S_IMODE(before) & 0o777


def _check_name(target: Path) -> None:
    if not target.name:
        raise IsADirectoryError(errno.EISDIR, os.strerror(errno.EISDIR), str(target))
    if len(os.fsencode(target.name)) > _LONGEST_NAME:
        raise OSError(errno.ENAMETOOLONG, os.strerror(errno.ENAMETOOLONG), str(target))


def _open_aside(target: Path, mode: int = 0o666) -> tuple[IO[bytes], Path]:
    """A new file to write aside, held against whoever would clear it or save there too.

    What is there under its name and is no leftover of ours stays as it is: somebody may have
    put a link there that leads to another file.

    Raises
    ------
    OSError
        It cannot be made; BlockingIOError when another save of the same file runs.
    """
    _check_name(target)
    aside = aside_of(target)
    for _ in range(_TRIES):
        try:
            handle = os.open(aside, os.O_RDWR | os.O_CREAT | os.O_EXCL | _NO_LINK | _EXTRA, mode)
        except FileExistsError:
            if not _remove_leftover(aside):
                aside = target.with_name(f".{os.urandom(8).hex()}{ASIDE_SUFFIX}")
            continue
        try:
            _hold(handle)
            if _is_still(handle, aside):
                return os.fdopen(handle, "wb"), aside
        except BaseException:
            os.close(handle)
            raise
        os.close(handle)  # cleared between the two steps
    raise FileExistsError(errno.EEXIST, os.strerror(errno.EEXIST), str(aside))


def _remove_leftover(aside: Path) -> bool:
    """Remove the file of a save that was killed; False when it is none, and stays.

    Raises
    ------
    BlockingIOError
        The save still runs.
    """
    try:
        handle = os.open(aside, os.O_RDONLY | _NO_LINK | _NO_WAIT | _EXTRA)
    except FileNotFoundError:
        return True
    except OSError:  # a link, or somebody else's
        return False
    try:
        if not stat.S_ISREG(os.fstat(handle).st_mode):
            return False
        _hold(handle)
        if _is_still(handle, aside) and sys.platform != "win32":
            aside.unlink(missing_ok=True)
    except PermissionError:
        return False
    finally:
        os.close(handle)
    if sys.platform == "win32":
        aside.unlink(missing_ok=True)
    return True


def _hold(handle: int) -> None:
    if sys.platform == "win32":
        return
    try:
        fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
    except OSError as error:
        # Some shared drives know no locks: there the name alone has to do.
        if error.errno not in (errno.ENOLCK, errno.ENOTSUP, errno.ENOSYS, errno.EINVAL):
            raise


def _is_still(handle: int, path: Path) -> bool:
    try:
        return os.path.samestat(os.fstat(handle), os.lstat(path))
    except FileNotFoundError:
        return False


def _flush_folder(folder: Path) -> None:
    # The new name itself must reach the disk; Windows has no such call and needs none.
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def natural_key(name: str) -> tuple[tuple[int, int, str], ...]:
    """Sorts names as people do: IMG_9 before IMG_10.

    >>> sorted(["b10", "b9"], key=natural_key)
    ['b9', 'b10']
    """
    parts = re.findall(r"\d+|\D+", name.casefold())
    return tuple((0, int(part), "") if part.isdecimal() else (1, 0, part) for part in parts)

"""Writing a study's file so that the one before survives any crash, and reading it back."""

from __future__ import annotations

import hashlib
from dataclasses import dataclass
from pathlib import Path

from core.errors import StudyFileError
from core.file_sentences import shown_name, why_not_read, why_not_written
from core.files import TooLargeError, clear_aside, read_file, write_file
from core.i18n import translate
from core.study_file.contents import MOST_TOTAL

_MOST_BYTES = MOST_TOTAL + MOST_TOTAL // 8


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
        It is not there, may not be read, is no file, or is far too large.
    """
    clear_aside(path)
    try:
        return read_file(path, _MOST_BYTES)
    except TooLargeError as error:
        raise StudyFileError(
            translate("study file", "{name} is too large to be a study.").format(
                name=shown_name(path)
            )
        ) from error
    except OSError as error:
        raise StudyFileError(why_not_read(path, error)) from error


def write_bytes(path: Path, data: bytes, *, private: bool = False) -> Stamp:
    """Put `data` at `path`, wholly or not at all; see `core.files.write_file`.

    Raises
    ------
    StudyFileError
        The folder is gone, full, or may not be written; nothing was changed.
    """
    try:
        write_file(path, data, private=private)
    except OSError as error:
        raise StudyFileError(why_not_written(path, error)) from error
    return stamp_of(data)


def changed_on_disk(path: Path, stamp: Stamp) -> bool:
    """Whether somebody else wrote the file since; a vanished file counts as changed."""
    try:
        if path.stat().st_size != stamp.size:
            return True
        return stamp_of(read_file(path, stamp.size)) != stamp
    except OSError:
        return True

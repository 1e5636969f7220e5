"""Checks kept in the folder beside the pictures: made once, thrown away at no loss.

A check is kept under a key of everything it depends on, so one that no longer holds is simply
not found.
"""

from __future__ import annotations

import contextlib
import hashlib
import re
from dataclasses import fields
from functools import cache
from pathlib import Path
from typing import Any, Final, Literal, get_type_hints

import msgspec
import numpy as np

from core.class_set.folder import CHECKS, plain_files
from core.class_set.model import Brought, ClassSet
from core.errors import ClassSetError
from core.file_sentences import why_not_written
from core.files import read_file, write_file
from core.sheet.result import SheetCheck
from core.study import Study

CHECK_VERSION = 7
"""Raise it when `check_sheet` comes to find something else: what was kept then counts no more."""

FORMAT = "gradewash check"
SCORES_FORMAT: Final = "gradewash scores"
"""What `core.class_set.kept_scores` keeps beside the checks."""

_MOST = 16 << 20
KEY = re.compile(r"[0-9a-f]{64}")


def check_to_json(check: SheetCheck) -> bytes:
    """All of a check but its picture."""
    kept = {name: getattr(check, name) for name in _types()}
    return msgspec.json.encode(kept, enc_hook=_plain_number)


def check_from_json(data: bytes) -> SheetCheck:
    """A check without its picture, which has no pixels here.

    Raises
    ------
    ValueError
        Not a check of this version.
    """
    try:
        raw = msgspec.json.decode(data, type=dict[str, msgspec.Raw])
        kept: dict[str, Any] = {
            name: msgspec.json.decode(raw[name], type=of) for name, of in _types().items()
        }
    except (msgspec.MsgspecError, KeyError, UnicodeDecodeError) as error:
        raise ValueError(f"not a check: {error}") from error
    return SheetCheck(picture=np.zeros((0, 0, 3), np.uint8), **kept)


def check_key(brought: Brought, exercise: Study, language: str = "en") -> str:
    """What the check of a picture is kept under.

    Parameters
    ----------
    language : str
        Of the sentences in it.
    """
    bands, photo, options = exercise.bands, exercise.photo, brought.options
    depends = (
        CHECK_VERSION,
        language,
        brought.digest,
        None if photo is None else photo.digest,
        None if bands is None else (bands.horizon, *bands.lines),
        (options.corners, options.turned, options.scan, options.aspect),
    )
    return hashlib.sha256(repr(depends).encode()).hexdigest()


class KeptChecks:
    """The checks in a class set's folder.

    Parameters
    ----------
    folder : Path
        The class set's.
    """

    def __init__(self, folder: Path) -> None:
        self._folder = folder / CHECKS

    def keep(self, key: str, check: bytes, jpeg: bytes, grain: bytes, sentence: str) -> None:
        """Write what came of a picture.

        Raises
        ------
        ClassSetError
            The disk is full or gone.
        """
        kept = {
            "format": FORMAT,
            "sentence": sentence,
            "grain": grain,
            "check": msgspec.Raw(check or b"null"),
        }
        try:
            self._folder.mkdir(exist_ok=True)
            if jpeg:
                write_file(self._path(key, "jpg"), jpeg, durable=False)
            # Last, so that where it is there the picture is too.
            write_file(self._path(key, "json"), msgspec.json.encode(kept), durable=False)
        except OSError as error:
            raise ClassSetError(why_not_written(self._folder, error)) from error

    def find(self, key: str) -> Kept | None:
        """What is kept under a key; None where nothing usable is."""
        try:
            data = read_file(self._path(key, "json"), _MOST)
            kept = msgspec.json.decode(data, type=_Kept1)
            check = None
            if not kept.sentence:
                check = check_from_json(bytes(kept.check))
                if not self.picture(key).is_file():
                    return None
        except (OSError, ValueError, msgspec.MsgspecError):
            return None
        return Kept(key, check, kept.grain, kept.sentence)

    def older_than(self, key: str, picture: Path) -> bool:
        """Whether a picture's file was written anew since its check: it was damaged, say."""
        try:
            check = self._path(key, "json").stat().st_mtime_ns
            return picture.stat().st_mtime_ns > check
        except OSError:
            return False

    def picture(self, key: str) -> Path:
        """Where the straightened painting is, a JPEG."""
        return self._path(key, "jpg")

    def jpeg(self, key: str) -> bytes | None:
        """The straightened painting; None where it is gone."""
        with contextlib.suppress(OSError):
            return read_file(self._path(key, "jpg"), _MOST)
        return None

    def keep_only(self, keys: set[str]) -> None:
        """Throw away the checks that no longer hold."""
        for file in checks_written(self._folder):
            if file.stem not in keys:
                with contextlib.suppress(OSError):
                    file.unlink()

    def _path(self, key: str, suffix: str) -> Path:
        if not KEY.fullmatch(key):
            raise ValueError(f"not a check's key: {key!r}")
        return self._folder / f"{key}.{suffix}"


class Kept(msgspec.Struct, frozen=True):
    """What is kept of one picture.

    Attributes
    ----------
    check : SheetCheck or None
        Without its pixels; None when the picture could not be checked.
    grain : bytes
    sentence : str
        Why it could not be checked.
    """

    key: str
    check: SheetCheck | None
    grain: bytes = b""
    sentence: str = ""

    @property
    def found(self) -> SheetCheck | None:
        """The check, where a painting was found in the picture."""
        return self.check if self.check is not None and self.check.readable else None


class _Kept1(msgspec.Struct, frozen=True, forbid_unknown_fields=True):
    format: Literal["gradewash check"]
    sentence: str
    grain: bytes
    check: msgspec.Raw


class _About(msgspec.Struct, frozen=True):
    format: Literal["gradewash check", "gradewash scores"]


def found_checks(folder: Path, class_set: ClassSet, language: str = "en") -> dict[str, Kept]:
    """What is kept of the class set's pictures, by their digests."""
    kept = KeptChecks(folder)
    found = {}
    for each in class_set.brought:
        one = kept.find(check_key(each, class_set.exercise, language))
        if one is not None:
            found[each.digest] = one
    return found


def checks_written(folder: Path) -> list[Path]:
    """The files of kept checks in a folder: by their names, and where their content says so."""
    return [file for file in sorted(plain_files(folder)) if _is_ours(file)]


def _is_ours(file: Path) -> bool:
    if not KEY.fullmatch(file.stem):
        return False
    try:
        data = read_file(file, _MOST)
        if file.suffix == ".jpg":
            marks = (FORMAT.encode(), SCORES_FORMAT.encode())
            return data.startswith(b"\xff\xd8") and any(mark in data[:1024] for mark in marks)
        msgspec.json.decode(data, type=_About)
    except (OSError, msgspec.MsgspecError):
        return False
    return file.suffix == ".json"


@cache
def _types() -> dict[str, Any]:
    hints = get_type_hints(SheetCheck)
    return {
        field.name: hints[field.name] for field in fields(SheetCheck) if field.name != "picture"
    }


def _plain_number(value: Any) -> Any:
    """NumPy's numbers as Python's."""
    if isinstance(value, np.generic):
        return value.item()
    raise NotImplementedError(f"a check holds no {type(value)}")

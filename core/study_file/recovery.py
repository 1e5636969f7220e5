"""Unsaved work, kept in the user's data folder until it is saved or given up.

Each window keeps one folder: `study.json`, rewritten after changes, and its pictures, written
once each. A lock held by the window tells its folder from one whose window was killed. Only the
user may read any of it.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import logging
import os
import shutil
import uuid
from collections.abc import Callable
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path

from core.errors import StudyFileError
from core.files import ASIDE_SUFFIX, make_private_folder, read_file
from core.study_file.contents import MOST_JSON, MOST_PICTURE, Contents, picture_name_allowed
from core.study_file.document import study_from_contents
from core.study_file.locks import OpenLock
from core.study_file.save import Stamp, write_bytes

log = logging.getLogger(__name__)

SET_ASIDE = "set aside"
"""Folder of work that could not be read, or not wholly: nothing removes it but the user."""

_STUDY = "study.json"
_ABOUT = "about.json"
_PICTURES = "pictures"


@dataclass(frozen=True)
class Recovered:
    """Unsaved work that its window left behind.

    Attributes
    ----------
    title : str
        Of the study.
    path : Path or None
        Where it had last been saved.
    when : float
        Seconds since 1970 of its last change.
    contents : Contents
    stamp : Stamp or None
        What the file at `path` was when it was last read or written.
    partial : bool
        Not all of it could be read.
    """

    key: str
    title: str
    path: Path | None
    when: float
    contents: Contents
    stamp: Stamp | None = None
    partial: bool = False


class UnsavedWork:
    """Keeps one window's unsaved work.

    Parameters
    ----------
    data_folder : Path
        The user's data folder of the program; made when needed.
    """

    def __init__(self, data_folder: Path) -> None:
        self._root = data_folder / "unsaved"
        self.key = uuid.uuid4().hex
        self._folder = self._root / self.key
        self._lock = OpenLock(self._root, self.key)
        self._written: dict[str, str] = {}

    def keep(
        self, contents: Contents, title: str, path: Path | None, stamp: Stamp | None = None
    ) -> None:
        """Write the work as it is now.

        Raises
        ------
        StudyFileError
            The folder cannot be written; the work itself is untouched.
        """
        try:
            self._lock.take()
            for folder in (self._root, self._folder, self._folder / _PICTURES):
                make_private_folder(folder)
        except OSError as error:
            raise StudyFileError(str(error)) from error
        for name, data in contents.pictures.items():
            digest = hashlib.sha256(data).hexdigest()
            if self._written.get(name) != digest:
                write_bytes(self._folder / _PICTURES / name, data, private=True)
                self._written[name] = digest
        about = {
            "title": title,
            "path": None if path is None else str(path),
            "stamp": None if stamp is None else [stamp.size, stamp.digest],
        }
        write_bytes(self._folder / _ABOUT, json.dumps(about).encode(), private=True)
        # Last, so that a folder with a study has its pictures too.
        write_bytes(self._folder / _STUDY, contents.json, private=True)

    def forget(self) -> None:
        """Nothing is unsaved any more: leave nothing behind."""
        shutil.rmtree(self._folder, ignore_errors=True)
        self._written.clear()
        self._lock.let_go()


def left_behind(
    data_folder: Path, tell: Callable[[Path], object] | None = None
) -> tuple[Recovered, ...]:
    """Unsaved work whose window is gone, the newest first.

    Work of a window that still runs is not listed. Nothing is removed that was not read: what
    cannot be read at all is set aside with its date.

    Parameters
    ----------
    tell : callable, optional
        Called with the folder of each piece of work that was set aside.
    """
    root = data_folder / "unsaved"
    found = []
    for folder in sorted(root.iterdir()) if root.is_dir() else ():
        if folder.is_symlink() or not folder.is_dir():
            continue
        lock = OpenLock(root, folder.name)
        if not lock.take():
            continue
        try:
            recovered = None if _is_bare(folder) else _read(folder)
        finally:
            lock.let_go()
        if recovered is not None:
            found.append(recovered)
        elif _is_bare(folder):
            shutil.rmtree(folder, ignore_errors=True)
        else:
            place = set_aside(data_folder, folder.name)
            if place is not None and tell is not None:
                tell(place)
    _clear_locks(root)
    return tuple(sorted(found, key=lambda one: -one.when))


def give_up(data_folder: Path, recovered: Recovered) -> None:
    """Remove recovered work: it was opened, saved, or not wanted.

    What was read in part only is set aside instead: somebody may read the rest.
    """
    if recovered.partial:
        set_aside(data_folder, recovered.key)
    else:
        shutil.rmtree(data_folder / "unsaved" / recovered.key, ignore_errors=True)


def set_aside(data_folder: Path, key: str) -> Path | None:
    """Move unsaved work out of the way, under the date of its last change.

    Returns
    -------
    Path or None
        Where it is now; None where it could not be moved, and stays.
    """
    folder = data_folder / "unsaved" / key
    when = datetime.fromtimestamp(_last_change(folder))
    place = data_folder / SET_ASIDE / f"{when:%Y-%m-%d %H.%M.%S} {key[:8]}"
    try:
        make_private_folder(place.parent)
        folder.rename(place)
    except OSError as error:
        log.warning("cannot set %s aside: %s", folder, error)
        return None
    return place


def _is_bare(folder: Path) -> bool:
    """Whether no work was kept in it yet: its window was cut off before."""

    def fail(error: OSError) -> None:
        raise error

    try:
        files = [name for _, _, names in os.walk(folder, onerror=fail) for name in names]
    except OSError:
        return False
    return all(name == _ABOUT or name.endswith(ASIDE_SUFFIX) for name in files)


def _read(folder: Path) -> Recovered | None:
    """The work in a folder as far as it can be read; None where none of it can."""
    study, whole = _bytes(folder / _STUDY, MOST_JSON)
    pictures, all_read = _pictures(folder / _PICTURES)
    try:
        # What is said about the work is no part of it: without that it is offered all the same.
        about = json.loads(_bytes(folder / _ABOUT, MOST_JSON)[0])
        path = None if about["path"] is None else Path(about["path"])
        kept = about.get("stamp")
        stamp = None if kept is None else Stamp(int(kept[0]), str(kept[1]))
        title = str(about["title"])
    except (ValueError, KeyError, TypeError, IndexError, AttributeError, RecursionError):
        title, path, stamp = "", None, None
    for contents in (Contents(study, pictures), Contents(study, pictures, damaged=True)):
        if not (contents.json or contents.pictures):
            return None
        try:
            opened = study_from_contents(contents)
        except StudyFileError as error:
            log.warning("unsaved work in %s: %s", folder, error)
            continue
        partial = contents.damaged or not whole or not all_read or bool(opened.gone)
        title = title or opened.study.title
        return Recovered(folder.name, title, path, _last_change(folder), contents, stamp, partial)
    return None


def _bytes(path: Path, most: int) -> tuple[bytes, bool]:
    """A file's content, and whether it could be read."""
    try:
        return read_file(path, most), True
    except OSError as error:
        log.warning("unsaved work: %s", error)
        return b"", False


def _pictures(folder: Path) -> tuple[dict[str, bytes], bool]:
    """The pictures that can be read, and whether those are all."""
    try:
        files = sorted(file for file in folder.iterdir() if picture_name_allowed(file.name))
    except OSError:
        return {}, False
    read = {file.name: _bytes(file, MOST_PICTURE) for file in files}
    whole = all(came for _, came in read.values())
    return {name: data for name, (data, came) in read.items() if came}, whole


def _last_change(folder: Path) -> float:
    for file in (folder / _STUDY, folder):
        with contextlib.suppress(OSError):
            return file.stat().st_mtime
    return 0.0


def _clear_locks(root: Path) -> None:
    """Remove lock files whose folder is gone."""
    for file in root.glob("*.lock") if root.is_dir() else ():
        if not (root / file.stem).exists():
            lock = OpenLock(root, file.stem)
            with contextlib.suppress(OSError):
                if lock.take():
                    lock.let_go()

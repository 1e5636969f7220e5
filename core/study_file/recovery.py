"""Unsaved work, kept in the user's data folder until it is saved or given up.

Each window keeps one folder: `study.json`, rewritten after changes, and its pictures, written
once each. A lock held by the window tells its folder from one whose window was killed.
"""

from __future__ import annotations

import contextlib
import hashlib
import json
import shutil
import uuid
from collections.abc import Mapping
from dataclasses import dataclass
from pathlib import Path

from core.errors import StudyFileError
from core.study_file.contents import MOST_JSON, MOST_PICTURE, Contents, picture_name_allowed
from core.study_file.locks import OpenLock
from core.study_file.save import Stamp, write_bytes

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
    """

    key: str
    title: str
    path: Path | None
    when: float
    contents: Contents
    stamp: Stamp | None = None


class Keeper:
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
            (self._folder / _PICTURES).mkdir(parents=True, exist_ok=True)
        except OSError as error:
            raise StudyFileError(str(error)) from error
        for name, data in contents.pictures.items():
            digest = hashlib.sha256(data).hexdigest()
            if self._written.get(name) != digest:
                write_bytes(self._folder / _PICTURES / name, data)
                self._written[name] = digest
        about = {
            "title": title,
            "path": None if path is None else str(path),
            "stamp": None if stamp is None else [stamp.size, stamp.digest],
        }
        write_bytes(self._folder / _ABOUT, json.dumps(about).encode())
        # Last, so that a folder with a study has its pictures too.
        write_bytes(self._folder / _STUDY, contents.json)

    def forget(self) -> None:
        """Nothing is unsaved any more: leave nothing behind."""
        shutil.rmtree(self._folder, ignore_errors=True)
        self._written.clear()
        self._lock.let_go()


def left_behind(data_folder: Path) -> tuple[Recovered, ...]:
    """Unsaved work whose window is gone, the newest first.

    Work of a window that still runs is not listed. A folder without a readable study is removed.
    """
    root = data_folder / "unsaved"
    found = []
    for folder in sorted(root.iterdir()) if root.is_dir() else ():
        if not folder.is_dir():
            continue
        lock = OpenLock(root, folder.name)
        if not lock.take():
            continue
        try:
            recovered = _read(folder)
        finally:
            lock.let_go()
        if recovered is None:
            shutil.rmtree(folder, ignore_errors=True)
        else:
            found.append(recovered)
    _clear_locks(root)
    return tuple(sorted(found, key=lambda one: -one.when))


def give_up(data_folder: Path, recovered: Recovered) -> None:
    """Remove recovered work: it was opened, saved, or not wanted."""
    shutil.rmtree(data_folder / "unsaved" / recovered.key, ignore_errors=True)


def _read(folder: Path) -> Recovered | None:
    try:
        study = (folder / _STUDY).read_bytes()
        when = (folder / _STUDY).stat().st_mtime
        about = json.loads((folder / _ABOUT).read_bytes())
        pictures: Mapping[str, bytes] = {
            file.name: file.read_bytes()
            for file in sorted((folder / _PICTURES).iterdir())
            if picture_name_allowed(file.name) and file.stat().st_size <= MOST_PICTURE
        }
        title, path, kept = str(about["title"]), about["path"], about.get("stamp")
        stamp = None if kept is None else Stamp(int(kept[0]), str(kept[1]))
    except (OSError, ValueError, KeyError, TypeError, IndexError, AttributeError):
        return None
    if len(study) > MOST_JSON:
        return None
    return Recovered(
        folder.name,
        title,
        None if path is None else Path(path),
        when,
        Contents(study, pictures),
        stamp,
    )


def _clear_locks(root: Path) -> None:
    """Remove lock files whose folder is gone."""
    for file in root.glob("*.lock") if root.is_dir() else ():
        if not (root / file.stem).exists():
            lock = OpenLock(root, file.stem)
            with contextlib.suppress(OSError):
                if lock.take():
                    lock.let_go()

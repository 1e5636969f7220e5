"""Where the study is on disk, and the lock that says so to other windows."""

from __future__ import annotations

import logging
import os
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from core.study_file.locks import OpenLock, study_lock
from core.study_file.save import Stamp

log = logging.getLogger(__name__)


@dataclass(frozen=True)
class Place:
    """Where a study is.

    Attributes
    ----------
    path : Path or None
        None while it was never saved.
    stamp : Stamp or None
        What the file was when it was last read or written here.
    read_only : bool
        Saving asks for another name.
    """

    path: Path | None = None
    stamp: Stamp | None = None
    read_only: bool = False


class Whereabouts(QObject):
    """The place of the study that is open, held against other windows.

    Signals
    -------
    changed()
        The path, or whether it may be written.
    """

    changed = Signal()

    def __init__(self, data_folder: Path, parent: QObject | None = None) -> None:
        """`data_folder` keeps the locks: never the study's own folder."""
        super().__init__(parent)
        self._folder = data_folder
        self._place = Place()
        self._lock: OpenLock | None = None

    @property
    def place(self) -> Place:
        """Where the study is now."""
        return self._place

    @property
    def lock(self) -> OpenLock | None:
        """What is held for it."""
        return self._lock

    def try_lock(self, path: Path) -> tuple[bool, OpenLock | None]:
        """Whether the study at `path` may be open for changes here, and the lock for it."""
        if self._lock is not None and self._place.path and same_file(path, self._place.path):
            return True, self._lock
        try:
            lock = study_lock(self._folder, path)
            return (True, lock) if lock.take() else (False, None)
        except OSError as error:  # the data folder cannot be written: work goes on without
            log.warning("no lock for %s: %s", path, error)
            return True, None

    def put(self, place: Place, lock: OpenLock | None) -> None:
        """The study is at `place` from now on, and `lock` is held for it."""
        if lock is not self._lock:
            self.let_go()
        self._lock = lock
        before, self._place = self._place, place
        if (before.path, before.read_only) != (place.path, place.read_only):
            self.changed.emit()

    def refuse(self, lock: OpenLock | None) -> None:
        """A lock from `try_lock` is not wanted after all."""
        if lock is not None and lock is not self._lock:
            lock.let_go()

    def let_go(self) -> None:
        """Other windows may have the study."""
        lock, self._lock = self._lock, None
        if lock is not None:
            lock.let_go()


def may_write(path: Path) -> bool:
    """Whether the file itself forbids nothing; one that is not there yet may be written."""
    return not path.exists() or os.access(path, os.W_OK)


def same_file(one: Path, other: Path) -> bool:
    """Whether both lead to one file."""
    try:
        return one.samefile(other)
    except OSError:
        return one.absolute() == other.absolute()

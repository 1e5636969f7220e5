"""The folder of a class set: opened, kept up to date, never half written.

    class-set.json     everything but pixels, written whole
    pictures/<sha256>  each picture once, stripped, written before class-set.json speaks of it
    checks/<key>.*     what a check found, which can be thrown away (`core.class_set.kept_checks`)

One rename decides what holds: whoever is killed before it leaves the class set as it was.
"""

from __future__ import annotations

import contextlib
import errno
import hashlib
import os
import re
import stat
from pathlib import Path
from types import TracebackType

from core.class_set.model import ClassSet
from core.class_set.schema import class_set_from_json, class_set_to_json, photo_digest_in
from core.errors import ClassSetError
from core.file_sentences import shown_name, why_not_read, why_not_written
from core.files import clear_aside, read_file, write_file
from core.i18n import translate
from core.pictures import digest_of
from core.study_file.contents import MOST_PICTURE
from core.study_file.locks import OpenLock

FILE_NAME = "class-set.json"
PICTURES = "pictures"
CHECKS = "checks"
_MOST_JSON = 64 << 20
_DIGEST = re.compile(r"[0-9a-f]{64}")


def holds_class_set(folder: Path) -> bool:
    """Whether a folder is a class set's."""
    return (folder / FILE_NAME).is_file()


class ClassFolder:
    """A class set's folder, held open.

    Made by `create_folder` and `open_folder`; a context manager that lets the folder go.

    Attributes
    ----------
    path : Path
    class_set : ClassSet
        As it was last opened or saved.
    missing : tuple of str
        Names of the pictures that the class set speaks of and that are gone.
    """

    def __init__(self, path: Path, class_set: ClassSet, lock: OpenLock, data: bytes) -> None:
        self.path = path
        self.class_set = class_set
        self._lock = lock
        self._on_disk = digest_of(data)
        self.missing: tuple[str, ...] = ()

    def save(self, class_set: ClassSet) -> None:
        """Write the class set; once this returns, nothing of it can be lost.

        Raises
        ------
        ClassSetError
            The disk is full or gone, or somebody else wrote the file since; the class set on
            disk is as it was.
        """
        data = class_set_to_json(class_set)
        fresh = digest_of(data)
        if fresh == self._on_disk:
            self.class_set = class_set
            return
        file = self.path / FILE_NAME
        if self._changed(file):
            raise ClassSetError(
                translate(
                    "class set",
                    "Somebody else changed this class set meanwhile: open it again, then repeat "
                    "your last step.",
                )
            )
        _write(file, data)
        self._on_disk = fresh
        self.class_set = class_set

    def keep_picture(self, data: bytes) -> str:
        """Write a picture's stripped bytes, once; gives their digest.

        Raises
        ------
        ClassSetError
            The disk is full or gone.
        """
        digest = digest_of(data)
        target = self.path / PICTURES / digest
        if not _holds(target, digest):
            _make_folder(target.parent)
            _write(target, data)
        return digest

    def holds_picture(self, digest: str) -> bool:
        """Whether a picture is there, and whole."""
        return _holds(self.picture_path(digest), digest)

    def picture_path(self, digest: str) -> Path:
        """Where a picture's bytes are."""
        if not _DIGEST.fullmatch(digest):
            raise ValueError(f"not a digest: {digest!r}")
        return self.path / PICTURES / digest

    def read_picture(self, digest: str) -> bytes:
        """A picture's bytes.

        Raises
        ------
        ClassSetError
            They are gone, or are no longer what they were.
        """
        return read_picture(self.path, digest)

    def close(self) -> None:
        """Let others open the folder."""
        self._lock.let_go()

    def __enter__(self) -> ClassFolder:
        return self

    def __exit__(
        self,
        kind: type[BaseException] | None,
        error: BaseException | None,
        trace: TracebackType | None,
    ) -> None:
        self.close()

    def _changed(self, file: Path) -> bool:
        try:
            return digest_of(read_file(file, _MOST_JSON)) != self._on_disk
        except OSError:
            # Gone or unreadable: writing it anew says what is wrong, or puts it right.
            return False

    def clear_leftovers(self) -> None:
        """Remove pictures nobody speaks of: they were brought in when the program was killed."""
        wanted = {each.digest for each in self.class_set.brought}
        photo = self.class_set.exercise.photo
        if photo is not None:
            wanted.add(photo.digest)
        for file in plain_files(self.path / PICTURES):
            if _DIGEST.fullmatch(file.name) and file.name not in wanted:
                with contextlib.suppress(OSError):
                    file.unlink()
            elif file.name.startswith(".") and file.name.endswith(".saving"):
                clear_aside(file.with_name(file.name[1 : -len(".saving")]))

    def look_for_missing(self) -> None:
        """Note which pictures are spoken of and gone."""
        self.missing = missing_pictures(self.path, self.class_set)


def missing_pictures(folder: Path, class_set: ClassSet) -> tuple[str, ...]:
    """The names of pictures that a class set speaks of and that are gone from its folder."""
    return tuple(
        each.picture.name
        for each in class_set.brought
        if not (folder / PICTURES / each.digest).is_file()
    )


def create_folder(
    folder: Path, class_set: ClassSet, photo: bytes, data_folder: Path
) -> ClassFolder:
    """Make a class set's folder.

    Parameters
    ----------
    folder : Path
        New, or without a class set in it yet.
    class_set : ClassSet
    photo : bytes
        The exercise's photo, stripped.
    data_folder : Path
        The user's data folder of the program: locks are there.

    Raises
    ------
    ClassSetError
        There is a class set already, or pictures of one; or the folder cannot be written.
    """
    if (folder / FILE_NAME).exists():
        raise ClassSetError(
            translate(
                "class set", "There is a class set in {name} already: choose another folder."
            ).format(name=shown_name(folder))
        )
    _refuse_orphans(folder, digest_of(photo))
    _make_folder(folder)
    lock = _hold(folder, data_folder)
    try:
        made = ClassFolder(folder, class_set, lock, b"")
        made.keep_picture(photo)
        made.save(class_set)
    except BaseException:
        lock.let_go()
        raise
    return made


def open_folder(folder: Path, data_folder: Path) -> ClassFolder:
    """Open a class set's folder, alone.

    Raises
    ------
    ClassSetError
        No class set, damaged, of a newer version, or open in another window.
    """
    _refuse_other(folder)
    lock = _hold(folder, data_folder)
    try:
        clear_aside(folder / FILE_NAME)
        data = _read_json(folder)
        photo = read_picture(folder, photo_digest_in(data))
        opened = ClassFolder(folder, class_set_from_json(data, photo), lock, data)
        opened.clear_leftovers()
        opened.look_for_missing()
    except BaseException:
        lock.let_go()
        raise
    return opened


def read_class_set(folder: Path) -> ClassSet:
    """The class set of a folder, only to look at: nothing is held, nothing is cleared.

    Raises
    ------
    ClassSetError
        As `open_folder`.
    """
    _refuse_other(folder)
    data = _read_json(folder)
    return class_set_from_json(data, read_picture(folder, photo_digest_in(data)))


def read_picture(folder: Path, digest: str) -> bytes:
    """A picture of a class set's folder.

    Raises
    ------
    ClassSetError
        It is gone, or no longer what it was.
    """
    try:
        data = read_file(folder / PICTURES / digest, MOST_PICTURE)
    except OSError as error:
        raise _gone() from error
    if digest_of(data) != digest:
        raise _gone()
    return data


def folder_lock(folder: Path, data_folder: Path) -> OpenLock:
    """The lock of a class set's folder, whichever way it was reached."""
    real = os.path.normcase(folder.resolve())
    key = hashlib.sha256(real.encode("utf-8", "surrogatepass")).hexdigest()[:32]
    return OpenLock(data_folder / "open", key)


def _hold(folder: Path, data_folder: Path) -> OpenLock:
    try:
        lock = folder_lock(folder, data_folder)
        held = lock.take()
    except OSError as error:
        raise ClassSetError(why_not_written(data_folder, error)) from error
    if not held:
        raise ClassSetError(
            translate(
                "class set",
                "{name} is open in another window: close it there, then try again.",
            ).format(name=shown_name(folder))
        )
    return lock


def _refuse_other(folder: Path) -> None:
    if not (folder / FILE_NAME).exists():
        raise ClassSetError(
            translate(
                "class set",
                "There is no class set in {name}: make one with gradewash class new, or choose "
                "its folder.",
            ).format(name=shown_name(folder))
        )


def _refuse_orphans(folder: Path, photo: str) -> None:
    """Pictures of a class set whose file is gone would be cleared away as nobody's."""
    pictures = plain_files(folder / PICTURES)
    if any(_DIGEST.fullmatch(file.name) and file.name != photo for file in pictures):
        raise ClassSetError(
            translate(
                "class set",
                "{name} holds the pictures of a class set whose file {file} is gone: put that file "
                "back from a backup, or choose another folder.",
            ).format(name=shown_name(folder), file=FILE_NAME)
        )


def _read_json(folder: Path) -> bytes:
    try:
        return read_file(folder / FILE_NAME, _MOST_JSON)
    except OSError as error:
        raise ClassSetError(why_not_read(folder / FILE_NAME, error)) from error


def _gone() -> ClassSetError:
    return ClassSetError(
        translate(
            "class set",
            "A picture of this class set is gone or damaged: bring it in again, or open a backup "
            "of the folder.",
        )
    )


def _make_folder(folder: Path) -> None:
    try:
        folder.mkdir(parents=False, exist_ok=True)
    except OSError as error:
        raise ClassSetError(why_not_written(folder, error)) from error


def _write(path: Path, data: bytes) -> None:
    try:
        write_file(path, data)
    except OSError as error:
        raise ClassSetError(_why_not_kept(path, error)) from error


def _why_not_kept(path: Path, error: OSError) -> str:
    """A class set cannot be saved elsewhere in a moment, as a single file can."""
    if error.errno in (errno.EROFS, errno.EACCES, errno.EPERM):
        folder = path.parent.parent if path.parent.name == PICTURES else path.parent
        return translate(
            "class set",
            "You may not write in {name}: copy the folder to a place of your own, and open that.",
        ).format(name=shown_name(folder))
    return why_not_written(path, error)


def _holds(path: Path, digest: str) -> bool:
    """Whether a whole file of ours is there already, and no link."""
    try:
        return not path.is_symlink() and digest_of(read_file(path, MOST_PICTURE)) == digest
    except OSError:
        return False


def plain_files(folder: Path) -> list[Path]:
    """The files in a folder that is no link, links among them left out."""
    try:
        if not stat.S_ISDIR(folder.lstat().st_mode):
            return []
        return [
            Path(each.path) for each in os.scandir(folder) if each.is_file(follow_symlinks=False)
        ]
    except OSError:
        return []

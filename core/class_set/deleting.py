"""Removing a class set: only what it wrote, whatever else is in its folder.

A file is the class set's when its name and its content both say so. No link is followed, and a
link is never removed.
"""

from __future__ import annotations

import contextlib
import re
from dataclasses import dataclass
from pathlib import Path

from core.class_set.folder import CHECKS, FILE_NAME, PICTURES, folder_lock, plain_files
from core.class_set.kept_checks import checks_written
from core.class_set.schema import photo_digest_in
from core.errors import ClassSetError
from core.file_sentences import shown_name, why_not_written
from core.files import aside_of, clear_aside, read_file
from core.i18n import translate
from core.pictures import digest_of
from core.study_file.contents import MOST_PICTURE

_DIGEST = re.compile(r"[0-9a-f]{64}")


@dataclass(frozen=True)
class Ours:
    """What a class set wrote into its folder.

    Attributes
    ----------
    pictures, checks : tuple of Path
    file : Path
        `class-set.json`.
    """

    file: Path
    pictures: tuple[Path, ...]
    checks: tuple[Path, ...]


def written_by(folder: Path) -> Ours:
    """The files the class set in a folder wrote.

    Raises
    ------
    ClassSetError
        There is no class set in it.
    """
    file = folder / FILE_NAME
    try:
        if file.is_symlink():
            raise OSError("a link")
        photo_digest_in(read_file(file, MOST_PICTURE))
    except (OSError, ClassSetError) as error:
        raise ClassSetError(
            translate(
                "class set", "There is no class set of ours in {name}: nothing was removed."
            ).format(name=shown_name(folder))
        ) from error
    pictures = tuple(
        each
        for each in plain_files(folder / PICTURES)
        if _DIGEST.fullmatch(each.name) and _digest(each) == each.name
    )
    return Ours(file, pictures, tuple(checks_written(folder / CHECKS)))


def delete_class_set(folder: Path, data_folder: Path) -> Ours:
    """Remove what the class set wrote; gives what that was. The folder itself stays.

    Raises
    ------
    ClassSetError
        There is no class set, it is open in another window, or a file cannot be removed.
    """
    lock = folder_lock(folder, data_folder)
    if not lock.take():
        raise ClassSetError(
            translate(
                "class set",
                "{name} is open in another window: close it there, then try again.",
            ).format(name=shown_name(folder))
        )
    try:
        ours = written_by(folder)
        for each in (*ours.checks, *ours.pictures):
            _remove(each)
            clear_aside(each)
        # Last: until then the rest is still known to be ours, should this be cut short.
        _remove(ours.file)
        clear_aside(ours.file)
        for name in (CHECKS, PICTURES):
            _clear_asides(folder / name)
            with contextlib.suppress(OSError):  # not empty: something of others is in it
                if not (folder / name).is_symlink():
                    (folder / name).rmdir()
    finally:
        lock.let_go()
    return ours


def _remove(file: Path) -> None:
    try:
        file.unlink(missing_ok=True)
    except OSError as error:
        raise ClassSetError(why_not_written(file, error)) from error


def _clear_asides(folder: Path) -> None:
    """What saves that were killed left behind, of files whose names are ours."""
    for each in plain_files(folder):
        if each.name.startswith(".") and each.name.endswith(".saving"):
            target = each.with_name(each.name[1 : -len(".saving")])
            if _DIGEST.fullmatch(target.stem) and aside_of(target) == each:
                clear_aside(target)


def _digest(file: Path) -> str:
    try:
        return digest_of(read_file(file, MOST_PICTURE))
    except OSError:
        return ""

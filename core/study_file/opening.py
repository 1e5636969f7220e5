"""One file of either kind, told by its content: a study, or a photo that begins one."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from core.errors import PhotoError, StudyFileError
from core.i18n import translate
from core.photo import Photo, open_photo
from core.progress import Progress, ShouldStop, step
from core.study_file.contents import MOST_PICTURE, Contents
from core.study_file.save import Stamp, read_bytes, stamp_of

if TYPE_CHECKING:
    from core.study_file.document import Opened

SUFFIX = ".gradewash"

_ZIP = (b"PK\x03\x04", b"PK\x05\x06")


@dataclass(frozen=True, eq=False)
class FromFile:
    """What was in a file.

    Attributes
    ----------
    photo : Photo or None
        Ready for the screen; None where a study has no photo.
    data : bytes or None
        A photo's bytes as they were given, to be kept once they are stripped. None for a study,
        whose bytes are in `study`, and for a photo too large to be kept.
    study : Opened or None
        Where the file is a study.
    stamp : Stamp or None
        Of a study's file as it was read.
    """

    photo: Photo | None
    data: bytes | None = None
    study: Opened | None = None
    stamp: Stamp | None = None


def open_file(
    path: Path, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> FromFile:
    """Open a photo or a study.

    Raises
    ------
    PhotoError, StudyFileError
        It cannot be opened: one sentence.
    Cancelled
        `should_stop` answered True.
    """
    if is_study(path):
        # deferred: start-up time - most starts open a photo
        from core.study_file.document import study_from_bytes

        data = read_bytes(path)
        step(0.1, progress, should_stop)
        opened = study_from_bytes(data)
        photo = photo_of(opened, progress, should_stop)
        return FromFile(photo, None, opened, stamp_of(data))
    given = _small_enough(path)
    # Where the bytes cannot be had, `open_photo` knows the sentence.
    photo = open_photo(
        path if given is None else given,
        name=path.name,
        progress=progress,
        should_stop=should_stop,
    )
    return FromFile(photo, given)


def open_contents(
    contents: Contents, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> FromFile:
    """Open a study from its members, as unsaved work is kept; otherwise as `open_file`."""
    from core.study_file.document import study_from_contents  # deferred: start-up time

    opened = study_from_contents(contents)
    return FromFile(photo_of(opened, progress, should_stop), None, opened)


def photo_of(
    opened: Opened, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> Photo | None:
    """The reference photo of a study, decoded; None where it has none.

    Raises
    ------
    StudyFileError
        The picture in the study cannot be opened.
    """
    picture = opened.study.photo
    if picture is None:
        return None
    try:
        return open_photo(
            opened.pictures[picture.digest],
            name=picture.name,
            progress=progress,
            should_stop=should_stop,
        )
    except PhotoError as error:
        raise StudyFileError(
            translate(
                "study file",
                "The photo {name} in this study cannot be opened; open an older copy or a backup.",
            ).format(name=picture.name)
        ) from error


def is_study(path: Path) -> bool:
    """Whether the file is to be opened as a study: by its content, or by its name if need be."""
    try:
        if not path.is_file():
            return path.suffix.lower() == SUFFIX
        with path.open("rb") as stream:
            start = stream.read(4)
    except (OSError, ValueError):
        return path.suffix.lower() == SUFFIX
    return start in _ZIP or path.suffix.lower() == SUFFIX


def _small_enough(path: Path) -> bytes | None:
    """The file's bytes; None where they cannot be read, or are too many for a study."""
    try:
        if not path.is_file() or path.stat().st_size > MOST_PICTURE:
            return None
        return path.read_bytes()
    except (OSError, ValueError):
        return None

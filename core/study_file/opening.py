"""One file of either kind, told by its content: a study, or a photo that begins one."""

from __future__ import annotations

from dataclasses import dataclass, replace
from pathlib import Path
from typing import TYPE_CHECKING

from core.errors import PhotoError
from core.file_sentences import shown_name
from core.files import open_regular, read_file
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

    @property
    def damage(self) -> str:
        """What to tell of a damaged study; empty where all of it came through."""
        from core.study_file.gone import damage_notice  # deferred: start-up time

        return "" if self.study is None else damage_notice(self.study.gone)


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
        opened, photo = _with_photo(study_from_bytes(data), progress, should_stop)
        return FromFile(photo, None, opened, stamp_of(data))
    given = _small_enough(path)
    # Where the bytes cannot be had, `open_photo` knows the sentence.
    photo = open_photo(
        path if given is None else given,
        name=shown_name(path),
        progress=progress,
        should_stop=should_stop,
    )
    return FromFile(photo, given)


def open_contents(
    contents: Contents, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> FromFile:
    """Open a study from its members, as unsaved work is kept; otherwise as `open_file`."""
    from core.study_file.document import study_from_contents  # deferred: start-up time

    opened, photo = _with_photo(study_from_contents(contents), progress, should_stop)
    return FromFile(photo, None, opened)


def _with_photo(
    opened: Opened, progress: Progress | None = None, should_stop: ShouldStop | None = None
) -> tuple[Opened, Photo | None]:
    """The study with its photo decoded; a photo that cannot be opened does not cost the rest."""
    picture = opened.study.photo
    if picture is None:
        return opened, None
    try:
        photo = open_photo(
            opened.pictures[picture.digest],
            name=picture.name,
            progress=progress,
            should_stop=should_stop,
        )
    except PhotoError:
        from core.study_file.gone import photo_words  # deferred: start-up time

        study = replace(opened.study, photo=None)
        return replace(opened, study=study, gone=(*opened.gone, photo_words())), None
    return opened, photo


def is_study(path: Path) -> bool:
    """Whether the file is to be opened as a study: by its content, or by its name if need be."""
    try:
        if not path.is_file():
            return path.suffix.lower() == SUFFIX
        with open_regular(path) as stream:
            start = stream.read(4)
    except (OSError, ValueError):
        return path.suffix.lower() == SUFFIX
    return start in _ZIP or path.suffix.lower() == SUFFIX


def _small_enough(path: Path) -> bytes | None:
    """The file's bytes; None where they cannot be read, or are too many for a study."""
    try:
        return read_file(path, MOST_PICTURE)
    except OSError:
        return None

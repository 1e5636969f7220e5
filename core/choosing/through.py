"""A folder's photos, one after the other; a bad file is named and stops none of the others."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Literal

from core.choosing.look import SkyLook, look_at
from core.errors import GradewashError, PhotoError, UsageError
from core.file_sentences import shown_name, why_not_read
from core.files import natural_key, open_regular
from core.i18n import translate
from core.paint.box.box import Box
from core.photo.sniff import kind_of
from core.progress import ShouldStop, step

Sorting = Literal["folder", "bands", "hues", "reach"]
SORTINGS: tuple[Sorting, ...] = ("folder", "bands", "hues", "reach")

PICTURES = frozenset(
    f".{ending}"
    for ending in (
        *("jpg", "jpeg", "jpe", "jfif", "png", "webp", "heic", "heif", "hif", "avif"),
        *("tif", "tiff", "gif", "bmp"),
    )
)
"""Endings by which a file claims to be a picture: looked at, and named where it is none."""

MOST = 500
"""Photos of one folder: beyond that nobody looks through them."""


@dataclass(frozen=True, eq=False)
class Looked:
    """What became of one file: a look, or a sentence why there is none."""

    path: Path
    look: SkyLook | None
    sentence: str = ""


def photos_in(folder: Path) -> tuple[Path, ...]:
    """The picture files of a folder, not of those inside it, as people count.

    Raises
    ------
    UsageError
        There is no such folder, it cannot be read, or it holds no picture or too many.
    """
    try:
        files = [path for path in folder.iterdir() if not path.name.startswith(".")]
    except NotADirectoryError as error:
        text = translate("choosing", "{name} is not a folder: give one that holds photos.")
        raise UsageError(text.format(name=shown_name(folder))) from error
    except FileNotFoundError as error:
        text = translate("choosing", "There is no folder {name}: it may have been moved.")
        raise UsageError(text.format(name=shown_name(folder))) from error
    except (OSError, ValueError) as error:
        reason = error if isinstance(error, OSError) else OSError()
        raise UsageError(why_not_read(folder, reason)) from error
    found = sorted(filter(_may_be_picture, files), key=lambda path: natural_key(path.name))
    if not found:
        text = translate("choosing", "There is no photo in the folder {name}: choose another.")
        raise UsageError(text.format(name=shown_name(folder)))
    if len(found) > MOST:
        text = translate(
            "choosing",
            "{n} photos are in the folder {name}: put at most {most} that may do into one.",
        )
        raise UsageError(text.format(n=len(found), name=shown_name(folder), most=MOST))
    return tuple(found)


def _may_be_picture(path: Path) -> bool:
    if not path.is_file():
        return False
    if path.suffix.lower() in PICTURES:
        return True
    try:
        with open_regular(path) as stream:
            kind_of(stream.read(64))
    except (OSError, ValueError, PhotoError):
        return False
    return True


def look_one(path: Path, box: Box, should_stop: ShouldStop | None = None) -> Looked:
    """Look at one file.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    """
    try:
        return Looked(path, look_at(path, box, should_stop=should_stop))
    except GradewashError as error:
        return Looked(path, None, str(error))


def look_through(
    paths: Iterable[Path], box: Box, should_stop: ShouldStop | None = None
) -> Iterator[Looked]:
    """Look at them one after the other; each is told once it is done.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    """
    for path in paths:
        step(0.0, None, should_stop)
        yield look_one(path, box, should_stop)


def in_order(looks: Sequence[SkyLook], sorting: Sorting) -> tuple[SkyLook, ...]:
    """The looks as a teacher wants them: the most bands, the most hues, the best reach first.

    Equal ones stay in the order they came in.
    """
    match sorting:
        case "folder":
            return tuple(sorted(looks, key=lambda look: natural_key(look.path.name)))
        case "bands":
            return tuple(sorted(looks, key=lambda look: -look.bands.count))
        case "hues":
            return tuple(sorted(looks, key=lambda look: (-len(look.classes), -len(look.families))))
        case "reach":
            return tuple(sorted(looks, key=lambda look: len(look.beyond)))

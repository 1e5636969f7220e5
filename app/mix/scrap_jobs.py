"""What a worker does with a picture of a scrap: open it, find the strokes, hold them, keep them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import partial
from pathlib import Path

from PySide6.QtGui import QImage

from app.drawing.pyramid import image_of
from app.files.pasted import png_of
from core.errors import PhotoError
from core.file_sentences import shown_name, why_not_read
from core.files import TooLargeError, read_file
from core.i18n import translate
from core.photo import open_photo
from core.progress import Progress, ShouldStop, part_of, step
from core.scrap.keeping import picture_of
from core.scrap.strokes import Scrap, find_strokes
from core.study_file.contents import MOST_PICTURE

Read = Callable[[], tuple[str, bytes]]
"""Gives name and bytes of a picture."""


@dataclass(frozen=True, eq=False)
class ReadScrap:
    """A picture of strokes, found in it, and for the screen.

    Attributes
    ----------
    name : str
    scrap : Scrap
    image : QImage
        Its light undone.
    """

    name: str
    scrap: Scrap
    image: QImage


def from_path(path: Path) -> Read:
    """To read a file."""
    return partial(_read_path, path)


def from_image(image: QImage) -> Read:
    """To take a pasted picture."""
    return lambda: (translate("opening", "pasted picture"), png_of(image))


def read_scrap(read: Read, progress: Progress, should_stop: ShouldStop) -> ReadScrap:
    """Open a picture and find its strokes.

    Raises
    ------
    PhotoError
        It cannot be read.
    Cancelled
        `should_stop` answered True.
    """
    name, data = read()
    step(0.1, progress, should_stop)
    photo = open_photo(data, name=name, should_stop=should_stop)
    scrap = find_strokes(photo, part_of(progress, 0.5, 0.95), should_stop)
    image = image_of(picture_of(scrap))
    step(1.0, progress, should_stop)
    return ReadScrap(name, scrap, image)


def _read_path(path: Path) -> tuple[str, bytes]:
    try:
        return shown_name(path), read_file(path, MOST_PICTURE)
    except TooLargeError as error:
        raise PhotoError(
            translate("mix page", "{name} is too large: save a smaller copy as a JPEG.").format(
                name=shown_name(path)
            )
        ) from error
    except OSError as error:
        raise PhotoError(why_not_read(path, error)) from error

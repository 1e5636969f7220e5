"""What a worker does to check the sheets: decode, measure the reference, check, each kept.

Everything here is called from a worker. What was done once is remembered by what it was done
from, so that an undone edit shows its findings at once and a stopped run loses nothing finished.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

import core.sheet
from app.drawing.pyramid import Pyramid, image_of
from app.services.photo_jobs import OpenedPhoto
from core.errors import PhotoError, SheetError
from core.i18n import translate
from core.memory import Memory
from core.photo import open_photo
from core.pictures import Picture
from core.pipeline import SkyReading, reference_of
from core.progress import Progress, ShouldStop, part_of, step
from core.sheet.options import SheetOptions

if TYPE_CHECKING:
    from core.sheet.match.reference import Reference
    from core.sheet.result import SheetCheck


@dataclass(frozen=True)
class Wanted:
    """A sheet to be checked against a sky."""

    sky: SkyReading
    picture: Picture
    options: SheetOptions


@dataclass(frozen=True, eq=False)
class CheckedSheet:
    """A check, with its picture for the screen.

    Attributes
    ----------
    check : SheetCheck
    picture : Pyramid
        The straightened painting.
    """

    check: SheetCheck
    picture: Pyramid


class SheetJobs:
    """Where sheets are checked; one for a window.

    Attributes
    ----------
    opened, checked : Memory
        Decoded pictures by digest, and checked sheets by `Wanted`.
    """

    def __init__(self) -> None:
        self.opened: Memory[OpenedPhoto] = Memory(4)
        self.checked: Memory[CheckedSheet] = Memory(12)
        self._references: Memory[Reference] = Memory(3)

    def open(
        self,
        picture: Picture,
        data: bytes,
        progress: Progress | None = None,
        should_stop: ShouldStop | None = None,
    ) -> OpenedPhoto:
        """The photo of a sheet, decoded once."""
        found = self.opened.get(picture.digest)
        if found is not None:
            return found
        photo = open_photo(data, name=picture.name, progress=progress, should_stop=should_stop)
        return self.opened.put(
            picture.digest, OpenedPhoto(photo, Pyramid.of(image_of(photo.pixels)))
        )

    def check(
        self,
        wanted: Wanted,
        data: bytes | None,
        progress: Progress,
        should_stop: ShouldStop,
    ) -> CheckedSheet | str:
        """The check that was wanted; a sentence where it cannot be made.

        Parameters
        ----------
        data : bytes or None
            The picture's bytes; None when nobody keeps them.
        """
        found = self.checked.get(wanted)
        if found is not None:
            return found
        try:
            if data is None:
                raise SheetError(_lost(wanted.picture))
            opened = self.open(wanted.picture, data, part_of(progress, 0.0, 0.35), should_stop)
            step(0.35, progress, should_stop)
            sky = wanted.sky
            reference = self._references.either(sky, lambda: reference_of(sky))
            step(0.5, progress, should_stop)
            check = core.sheet.check_sheet(
                opened.photo,
                reference,
                wanted.options,
                progress=part_of(progress, 0.5, 1.0),
                should_stop=should_stop,
            )
        except (SheetError, PhotoError) as error:
            return str(error)
        return self.checked.put(wanted, CheckedSheet(check, Pyramid.of(image_of(check.picture))))


def _lost(picture: Picture) -> str:
    return translate(
        "checker", "The picture of this sheet, {name}, is not in the study: add it again."
    ).format(name=picture.name)

"""What a worker does to check the sheets: decode, measure the reference, check, each kept.

Everything here is called from a worker. What was done once is remembered by what it was done
from, so that an undone edit shows its findings at once and a stopped run loses nothing finished.
"""

from __future__ import annotations

from collections import OrderedDict
from collections.abc import Callable, Hashable
from dataclasses import dataclass
from threading import Lock
from typing import TYPE_CHECKING, Any, TypeVar

import numpy as np
from numpy.typing import NDArray

import core.sheet
from app.drawing.pyramid import Pyramid, image_of
from app.services.photo_jobs import OpenedPhoto
from core.bands.lines import Bands
from core.errors import PhotoError, SheetError
from core.i18n import translate
from core.photo import Photo, open_photo
from core.pictures import Picture
from core.progress import Progress, ShouldStop, step
from core.reading.reading import BandReading
from core.sheet.result import SheetCheck, SheetOptions

if TYPE_CHECKING:
    from core.sheet.match.reference import Reference

Kept = TypeVar("Kept")


class Memory:
    """Remembers the last few results of each kind; shared by workers."""

    def __init__(self, most: int) -> None:
        self._most = most
        self._kept: OrderedDict[Hashable, Any] = OrderedDict()
        self._lock = Lock()

    def get(self, key: Hashable) -> Any | None:
        """What was kept under `key`, or None."""
        with self._lock:
            if key in self._kept:
                self._kept.move_to_end(key)
            return self._kept.get(key)

    def put(self, key: Hashable, value: Kept) -> Kept:
        """Keep `value`, dropping what was not asked for longest."""
        with self._lock:
            self._kept[key] = value
            self._kept.move_to_end(key)
            while len(self._kept) > self._most:
                self._kept.popitem(last=False)
        return value

    def either(self, key: Hashable, make: Callable[[], Kept]) -> Kept:
        """What was kept under `key`, else what `make` gives, kept from now on."""
        found: Kept | None = self.get(key)
        return self.put(key, make()) if found is None else found


@dataclass(frozen=True)
class Sky:
    """The reference as it stands: two are the same when everything measured is.

    Attributes
    ----------
    photo : Photo
    bands : Bands
    readings : tuple of BandReading
    """

    photo: Photo
    bands: Bands
    readings: tuple[BandReading, ...]


@dataclass(frozen=True)
class Wanted:
    """A sheet to be checked against a sky."""

    sky: Sky
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


class Bench:
    """Where sheets are checked; one for a window.

    Attributes
    ----------
    opened, checked : Memory
        Decoded pictures by digest, and checked sheets by `Wanted`.
    """

    def __init__(self) -> None:
        self.opened = Memory(4)
        self.checked = Memory(12)
        self._references = Memory(3)

    def open(
        self,
        picture: Picture,
        data: bytes,
        progress: Progress | None = None,
        should_stop: ShouldStop | None = None,
    ) -> OpenedPhoto:
        """The photo of a sheet, decoded once."""
        found: OpenedPhoto | None = self.opened.get(picture.digest)
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
        sky_mask: NDArray[np.bool_],
        progress: Progress,
        should_stop: ShouldStop,
    ) -> CheckedSheet | str:
        """The check that was wanted; a sentence where it cannot be made.

        Parameters
        ----------
        data : bytes or None
            The picture's bytes; None when nobody keeps them.
        sky_mask : (h, w) bool
            Of the reference photo.
        """
        found: CheckedSheet | None = self.checked.get(wanted)
        if found is not None:
            return found
        try:
            if data is None:
                raise SheetError(_lost(wanted.picture))
            opened = self.open(wanted.picture, data, _part(progress, 0.0, 0.35), should_stop)
            step(0.35, progress, should_stop)
            sky = wanted.sky
            reference: Reference = self._references.either(
                sky, lambda: core.sheet.make_reference(sky.photo, sky.bands, sky.readings, sky_mask)
            )
            step(0.5, progress, should_stop)
            check = core.sheet.check_sheet(
                opened.photo,
                reference,
                wanted.options,
                progress=_part(progress, 0.5, 1.0),
                should_stop=should_stop,
            )
        except (SheetError, PhotoError) as error:
            return str(error)
        return self.checked.put(wanted, CheckedSheet(check, Pyramid.of(image_of(check.picture))))


def _part(progress: Progress, start: float, end: float) -> Progress:
    """Progress of a part, told as a share of the whole."""
    return lambda share: progress(start + share * (end - start))


def _lost(picture: Picture) -> str:
    return translate(
        "checker", "The picture of this sheet, {name}, is not in the study: add it again."
    ).format(name=picture.name)

"""One sky at a glance: its bands, their classes of hue, what the box makes of them."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from core.bands.lines import Bands
from core.paint.box.box import Box
from core.paint.options import MixOptions
from core.photo import Photo, open_photo
from core.pipeline import plan_sky, propose_for, read_sky
from core.progress import Progress, ShouldStop, part_of, step
from core.reading.reading import BandReading
from core.reading.wheel import FAMILIES, HUE_CLASSES, Family, HueClass

THUMBNAIL = 480
"""Pixels of its longer side."""

CLIPPED_SHARE = 0.1
"""From this share of a band's pixels without detail the photo speaks against itself."""


@dataclass(frozen=True, eq=False)
class SkyLook:
    """What a teacher wants to know of a photo before choosing it.

    Attributes
    ----------
    path : Path
    picture : ndarray, shape (h, w, 3), uint8
        The photo, made small, in sRGB. Read-only.
    bands : Bands
        As proposed.
    readings : tuple of BandReading
    sure : bool
        Whether nothing speaks against where the sky ends.
    doubt : str or None
        Why it is not; one sentence.
    remarks : tuple of str
        What bands do not tell of this sky: a heavy cloud, one colour, another colour to the left.
    beyond : tuple of str
        Letters of the bands that the box does not reach.
    """

    path: Path
    picture: NDArray[np.uint8]
    bands: Bands
    readings: tuple[BandReading, ...]
    sure: bool
    doubt: str | None
    remarks: tuple[str, ...]
    beyond: tuple[str, ...]

    @property
    def families(self) -> tuple[Family, ...]:
        """The hues of its bands and of their second colours, each once, clockwise."""
        colours = [reading.colour for reading in self.readings if reading.colour is not None]
        colours += [
            reading.second.colour for reading in self.readings if reading.second is not None
        ]
        found = {colour.hue.family for colour in colours}
        return tuple(family for family in FAMILIES if family in found)

    @property
    def classes(self) -> tuple[HueClass, ...]:
        """Which of primary, secondary and tertiary are among them."""
        found = {
            reading.colour.hue.hue_class for reading in self.readings if reading.colour is not None
        }
        return tuple(each for each in HUE_CLASSES if each in found)

    @property
    def dull(self) -> tuple[str, ...]:
        """Letters of the bands that want toning down, or are hardly coloured."""
        return tuple(
            reading.letter
            for reading in self.readings
            if reading.colour is not None
            and reading.colour.intensity_said in ("dull", "near neutral")
        )

    @property
    def clipped(self) -> tuple[str, ...]:
        """Letters of the bands in which the photo has lost light or detail."""
        return tuple(
            reading.letter for reading in self.readings if reading.clipped_share >= CLIPPED_SHARE
        )


def look_at(
    path: Path,
    box: Box,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> SkyLook:
    """Look at a photo.

    Parameters
    ----------
    path : Path
    box : Box
        The paints the class has.

    Raises
    ------
    PhotoError
        It cannot be opened: one sentence.
    Cancelled
        `should_stop` answered True.
    """
    photo = open_photo(path, progress=part_of(progress, 0.0, 0.3), should_stop=should_stop)
    proposal = propose_for(photo, None, None, part_of(progress, 0.3, 0.5), should_stop)
    sky = read_sky(photo, proposal, None, part_of(progress, 0.5, 0.7), should_stop)
    plan = plan_sky(
        sky, box, MixOptions(), progress=part_of(progress, 0.7, 1.0), should_stop=should_stop
    )
    beyond = tuple(
        band.letter
        for band in plan.bands
        if band.classroom is not None and band.classroom.verdict == "off"
    )
    step(1.0, progress, should_stop)
    return SkyLook(
        path,
        _small(photo),
        proposal.bands,
        sky.readings,
        proposal.sure,
        proposal.reason,
        proposal.remarks,
        beyond,
    )


def _small(photo: Photo) -> NDArray[np.uint8]:
    """The working copy in whole blocks averaged, its longer side about `THUMBNAIL` pixels."""
    height, width = photo.pixels.shape[:2]
    block = max(1, max(height, width) // THUMBNAIL)
    h, w = height // block, width // block
    cut = photo.pixels[: h * block, : w * block].reshape(h, block, w, block, 3)
    small: NDArray[np.uint8] = (cut.mean(axis=(1, 3)) + 0.5).astype(np.uint8)
    small.flags.writeable = False
    return small

"""The one door through which a picture file becomes a `Photo`."""

from __future__ import annotations

import io
from math import ceil, sqrt
from pathlib import Path

import numpy as np

from core.errors import PhotoError
from core.i18n import translate
from core.photo.model import Photo
from core.progress import Progress, ShouldStop, step

WORK_PIXELS = 3_500_000
"""Most pixels of a working copy, unless the caller asks otherwise."""

MAX_PIXELS = 130_000_000
"""Larger pictures are refused."""


def open_photo(
    source: Path | str | bytes,
    *,
    name: str | None = None,
    max_work_pixels: int = WORK_PIXELS,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Photo:
    """Open a picture file."""
    step(0.0, progress, should_stop)
    from PIL import Image, ImageOps  # deferred: start-up time

    try:
        data = source if isinstance(source, bytes) else Path(source).read_bytes()
        image = Image.open(io.BytesIO(data))
        width, height = image.size
        k = max(1, ceil(sqrt(width * height / max_work_pixels)))
        image.draft(None, (max(1, width // k), max(1, height // k)))
        upright = ImageOps.exif_transpose(image)
    except (OSError, SyntaxError, ValueError) as error:
        raise PhotoError(translate("photo", "This picture could not be opened.")) from error
    if (upright.width < upright.height) != (width < height):
        width, height = height, width
    opaque = None
    if upright.has_transparency_data:
        rgba = np.asarray(upright.convert("RGBA"))
        opaque = rgba[..., 3] > 127
        opaque.flags.writeable = False
    pixels = np.array(upright.convert("RGB"))
    pixels.flags.writeable = False
    step(1.0, progress, should_stop)
    if name is None:
        name = "" if isinstance(source, bytes) else Path(source).name
    return Photo(pixels, opaque, width, height, name)


def open_full(
    source: Path | str | bytes,
    *,
    name: str | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Photo:
    """Open a picture file at its full resolution."""
    return open_photo(
        source,
        name=name,
        max_work_pixels=1 << 40,
        progress=progress,
        should_stop=should_stop,
    )

"""The one door through which a picture file becomes a `Photo`."""

from __future__ import annotations

import io
import os
from pathlib import Path
from typing import IO

from core.errors import Cancelled, PhotoError
from core.file_sentences import shown_name, why_not_read
from core.files import open_regular
from core.i18n import translate
from core.photo.boxes import read_avif, read_heif
from core.photo.decoded import Decoded, damaged
from core.photo.finish import finish
from core.photo.jpeg import read_jpeg
from core.photo.model import Photo
from core.photo.plain import read_bmp, read_gif, read_webp
from core.photo.png import read_png
from core.photo.quiet import quiet, silent_stderr
from core.photo.sniff import kind_of
from core.photo.tiff import read_tiff
from core.progress import Progress, ShouldStop, step

WORK_PIXELS = 3_500_000
"""Most pixels of a working copy, unless the caller asks otherwise."""

_MAX_FILE_BYTES = 1_000_000_000
_MAX_PACKED_BYTES = 300_000_000


def open_photo(
    source: Path | str | bytes,
    *,
    name: str | None = None,
    max_work_pixels: int = WORK_PIXELS,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Photo:
    """Open a picture: JPEG, PNG, WebP, TIFF, HEIC, AVIF, GIF or BMP, told by its content.

    Colours become sRGB (profiles, EXIF and gamma included), the picture is turned upright
    once, and of several pictures in a file the main one is taken.

    Parameters
    ----------
    source : path or bytes
        A file, or a file's content.
    name : str or None
        What to call it; the file's name when None.
    max_work_pixels : int
        The working copy has at most about so many pixels (a narrow panorama up to twice as
        many). Large JPEGs are decoded at a reduced scale, other formats are averaged in
        linear light.
    progress, should_stop
        See `core.progress`.

    Returns
    -------
    Photo

    Raises
    ------
    PhotoError
        Whatever is wrong with the file, in one sentence.
    Cancelled
        `should_stop` answered True.
    """
    if max_work_pixels < 1:
        raise ValueError(f"max_work_pixels must be positive: {max_work_pixels}")
    step(0.0, progress, should_stop)
    if name is None:
        name = "" if isinstance(source, bytes) else shown_name(Path(source))
    try:
        with quiet():
            decoded = _decode(source, max_work_pixels)
            step(0.3, progress, should_stop)
            photo = finish(decoded, max_work_pixels, name, progress, should_stop)
    except (PhotoError, Cancelled):
        raise
    except MemoryError as error:
        raise PhotoError(
            translate(
                "photo",
                "There is not enough memory to open this picture: save a smaller copy and open "
                "that.",
            )
        ) from error
    except Exception as error:
        # The decoders are many and the files come from anywhere: what none of them foresaw is
        # still a damaged file to the user.
        raise PhotoError(damaged()) from error
    step(1.0, progress, should_stop)
    return photo


def open_full(
    source: Path | str | bytes,
    *,
    name: str | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Photo:
    """Open a picture at its full resolution; otherwise as `open_photo`.

    JPEGs above `MAX_PIXELS` are halved all the same, for memory.
    """
    return open_photo(
        source,
        name=name,
        max_work_pixels=1 << 40,
        progress=progress,
        should_stop=should_stop,
    )


def _decode(source: Path | str | bytes, max_work_pixels: int) -> Decoded:
    if isinstance(source, bytes):
        return _decode_stream(io.BytesIO(source), len(source), max_work_pixels)
    path = Path(source)
    try:
        with open_regular(path) as stream:
            return _decode_stream(stream, os.fstat(stream.fileno()).st_size, max_work_pixels)
    except IsADirectoryError as error:
        raise PhotoError(
            translate("photo", "This is a folder: choose a picture inside it instead.")
        ) from error
    except OSError as error:
        raise PhotoError(why_not_read(path, error)) from error


def _decode_stream(stream: IO[bytes], size: int, max_work_pixels: int) -> Decoded:
    kind = kind_of(stream.read(4096))
    stream.seek(0)
    # A TIFF may be large and is read piece by piece; the others are small for their pixels.
    if size > (_MAX_FILE_BYTES if kind == "tiff" else _MAX_PACKED_BYTES):
        raise PhotoError(
            translate("photo", "This file is too large to open: save a smaller copy as a JPEG.")
        )
    if kind == "tiff":
        with silent_stderr():
            return read_tiff(stream)
    data = stream.read()
    if kind == "jpeg":
        return read_jpeg(data, max_work_pixels)
    readers = {
        "png": read_png,
        "webp": read_webp,
        "heif": read_heif,
        "avif": read_avif,
        "gif": read_gif,
        "bmp": read_bmp,
    }
    return readers[kind](data)

"""JPEG: decoded at a reduced scale when large, since that costs a third of the time.

The reduced scale averages gamma-coded numbers over 2, 4 or 8 pixels. On skies that is
0.02 CIEDE2000 on average at 1/4, far below what a band's reading can tell.
"""

from __future__ import annotations

import io
from collections.abc import Iterator
from typing import TYPE_CHECKING

import numpy as np

from core.errors import PhotoError
from core.photo import meta
from core.photo.decoded import (
    MAX_JPEG_PIXELS,
    MAX_PIXELS,
    Decoded,
    check_size,
    damaged,
    from_image,
    incomplete,
    several_pictures,
)
from core.photo.reduce import wanted_factor
from core.photo.spaces import SRGB, adobe_rgb

if TYPE_CHECKING:
    from PIL import JpegImagePlugin

# Markers with nothing after them: TEM, RST0..7, SOI.
_BARE = {0x01, *range(0xD0, 0xD9)}
_FRAMES = {0xC0, 0xC1, 0xC2}
# Scans of a progressive file times its pixels: beyond this it was made to keep us waiting.
_MAX_SCAN_PIXELS = 4_000_000_000


def segments(data: bytes) -> Iterator[tuple[int, int, int]]:
    """Marker, start and end of each header segment, the start of scan (0xDA) included.

    `data[start:end]` is the whole segment with its marker. Stops where the data makes no
    sense or ends.
    """
    at = 2
    while at + 4 <= len(data):
        if data[at] != 0xFF:
            at += 1  # junk between segments: libjpeg skips it too
            continue
        marker = data[at + 1]
        if marker == 0xFF or marker == 0 or marker in _BARE:
            at += 1 if marker == 0xFF else 2
            continue
        if marker == 0xD9:
            return
        end = at + 2 + int.from_bytes(data[at + 2 : at + 4], "big")
        if end > len(data) or end < at + 4:
            return
        yield marker, at, end
        if marker == 0xDA:
            return
        at = end


def read_jpeg(data: bytes, max_work_pixels: int) -> Decoded:
    """Decode a JPEG, reduced by 2, 4 or 8 when it is large.

    Raises
    ------
    PhotoError
        Damaged, incomplete, too large, or of a kind that nobody decodes.
    """
    exif = xmp = None
    icc_parts: dict[int, bytes] = {}
    kept = [b"\xff\xd8"]
    size = None
    scan_at = None
    adobe = several = progressive = False
    for marker, start, end in segments(data):
        body = data[start + 4 : end]
        if marker == 0xE1 and body.startswith(b"Exif\0\0") and exif is None:
            exif = body
        elif marker == 0xE1 and body.startswith(b"http://ns.adobe.com/xap/1.0/\0"):
            xmp = body
        elif marker == 0xE2 and body.startswith(b"ICC_PROFILE\0") and len(body) > 14:
            icc_parts[body[12]] = body[14:]
        elif marker == 0xE2 and body.startswith(b"MPF\0"):
            several = True
        elif marker == 0xDA:
            scan_at = start
        elif marker in _FRAMES and len(body) >= 6:
            size = int.from_bytes(body[3:5], "big"), int.from_bytes(body[1:3], "big")
            progressive = marker == 0xC2
        adobe |= marker == 0xEE and body.startswith(b"Adobe")
        # Only what decoding needs goes on; a damaged side segment must not stop a picture.
        if marker != 0xDA and (not 0xE1 <= marker <= 0xEF or marker == 0xEE) and marker != 0xFE:
            kept.append(data[start:end])
    if size is None or scan_at is None:
        raise PhotoError(incomplete() if _ends_early(data) else damaged())
    check_size(*size, MAX_JPEG_PIXELS)
    if progressive and data.count(b"\xff\xda") * size[0] * size[1] > _MAX_SCAN_PIXELS:
        raise PhotoError(damaged())
    kept.append(memoryview(data)[scan_at:])  # type: ignore[arg-type]
    factor = wanted_factor(*size, max_work_pixels, (1, 2, 4, 8))
    if size[0] * size[1] > MAX_PIXELS:
        factor = max(factor, 2)
    image = _decode(b"".join(kept), factor)
    rows, model, _ = from_image(image)
    if model == "cmyk" and not adobe:
        # Pillow takes every CMYK JPEG for one of Adobe's, which are stored inverted.
        stored = rows
        rows = lambda top, bottom: 255 - stored(top, bottom)  # noqa: E731
    wide = adobe_rgb() if model == "rgb" and meta.names_adobe_rgb(exif) else SRGB
    photo = Decoded(rows, *image.size, *size, model, encoding=wide)
    photo.icc = b"".join(icc_parts[i] for i in sorted(icc_parts)) or None
    photo.orientation = meta.orientation(exif, xmp)
    # Phones keep a brightness map beside the picture; that is no second picture.
    if several and not (xmp and b"hdrgm" in xmp) and b"hdr-gain-map" not in data[:200_000]:
        photo.notices.append(several_pictures())
    return photo


def _decode(data: bytes, factor: int) -> JpegImagePlugin.JpegImageFile:
    from PIL import JpegImagePlugin  # deferred: start-up time

    def attempt(content: bytes) -> JpegImagePlugin.JpegImageFile:
        image = JpegImagePlugin.JpegImageFile(io.BytesIO(content))
        if factor > 1:
            image.draft(None, (max(1, image.width // factor), max(1, image.height // factor)))
        image.load()
        return image

    try:
        return attempt(data)
    except (OSError, SyntaxError, ValueError) as error:
        if "truncated" not in str(error):
            raise PhotoError(damaged()) from error
    # The end is missing: perhaps only the end marker. With every pixel there, nothing that
    # follows is read as picture, so two different endings must give the same pixels.
    try:
        image = attempt(data + b"\xff\xd9")
        other = attempt(data + b"\x5a\xa5\x3c" * 2000 + b"\xff\xd9")
    except (OSError, SyntaxError, ValueError) as error:
        raise PhotoError(incomplete()) from error
    if not np.array_equal(np.asarray(image), np.asarray(other)):
        raise PhotoError(incomplete())
    return image


def _ends_early(data: bytes) -> bool:
    return not data.rstrip(b"\0").endswith(b"\xff\xd9")

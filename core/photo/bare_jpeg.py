"""A JPEG built anew around its compressed picture, with nothing else in it.

Source: ITU-T T.81, annex B: what each segment holds, and how long it is.
"""

from __future__ import annotations

import io
import struct
from collections.abc import Callable

import numpy as np
from numpy.typing import NDArray

from core.photo import meta
from core.photo.bare_profile import bare_profile
from core.photo.jpeg import segments
from core.photo.quiet import quiet

_DQT, _DHT, _DRI, _SOS, _EOI, _COMMENT = 0xDB, 0xC4, 0xDD, 0xDA, 0xD9, 0xFE
_FRAMES = (0xC0, 0xC1, 0xC2)
_EXIF, _XMP = b"Exif\0\0", b"http://ns.adobe.com/xap/1.0/\0"
_ICC, _ADOBE = b"ICC_PROFILE\0", b"Adobe"
_JFIF = b"JFIF\0\x01\x02\0\0\x01\0\x01\0\0"  # version 1.02, square pixels, no thumbnail
_MOST_PROFILE = 65_000
_TAIL = 24
_MOST_CHECKED = 30_000_000


def bare_jpeg(data: bytes) -> bytes:
    """The JPEG with its compressed picture, its turn and the numbers of its profile alone.

    Parameters
    ----------
    data : bytes
        Content of a JPEG file.

    Raises
    ------
    ValueError
        It is not built as nearly all are: other segments, segments with room to spare, a profile
        made of tables, a picture for printing, no end. Then its pixels must be written anew.
    """
    exif = xmp = adobe = None
    jfif = False
    profile: dict[int, bytes] = {}
    tables: list[bytes] = []
    scan_at = None
    for marker, start, end in segments(data):
        body = data[start + 4 : end]
        if marker == _SOS:
            scan_at = start
        elif marker == 0xE0 and body.startswith(b"JFIF\0"):
            jfif = True
        elif marker == 0xE1 and body.startswith(_EXIF):
            exif = exif or body
        elif marker == 0xE1 and body.startswith(_XMP):
            xmp = body
        elif marker == 0xE2 and body.startswith(_ICC) and len(body) > 14:
            profile[body[12]] = body[14:]
        elif marker == 0xEE and body.startswith(_ADOBE) and len(body) >= 12:
            adobe = body[11]
        elif not (0xE0 <= marker <= 0xEF or marker == _COMMENT):
            tables.append(_exact(marker, body))
    if scan_at is None:
        raise ValueError("no picture in it")
    head = [b"\xff\xd8"]
    if jfif:
        head.append(_segment(0xE0, _JFIF))
    turn, wide = meta.orientation(exif, xmp), meta.names_adobe_rgb(exif)
    if turn != 1 or wide:
        head.append(_segment(0xE1, _EXIF + minimal_exif(turn, wide)))
    if profile:
        bare = bare_profile(b"".join(profile[i] for i in sorted(profile)))
        if len(bare) > _MOST_PROFILE:
            raise ValueError("a profile of unusual length")
        head.append(_segment(0xE2, _ICC + b"\x01\x01" + bare))
    if adobe is not None:
        head.append(_segment(0xEE, _ADOBE + b"\0\x64\0\0\0\0" + bytes([adobe])))
    return b"".join([*head, *tables, *_scans(data, scan_at)])


def ends_with_picture(bare: bytes) -> bool:
    """Whether the last bytes before the end marker belong to the picture.

    Between the last block of the picture and the end marker a decoder skips whatever stands
    there. So the last bytes are left out: if that changes no pixel, they are something else.
    """
    last = bare.rindex(b"\xff\xda")
    start = last + 2 + int.from_bytes(bare[last + 2 : last + 4], "big")
    cut = len(bare) - 2 - _TAIL
    if cut <= start:  # a last scan of a few bytes: nothing to speak of fits
        return True
    # Stops before a byte that would lack its second half.
    while bare[cut - 1 : cut] == b"\xff":
        cut -= 1
    if size_of(bare) > _MOST_CHECKED and b"\xff\xc2" in bare[:start]:
        return False  # a progressive one is decoded whole below: too much for a large one
    try:
        whole, short = _in_eighths(bare), _in_eighths(bare[:cut] + b"\xff\xd9")
    except (OSError, SyntaxError, ValueError):
        return True
    return not np.array_equal(whole, short)


def size_of(data: bytes) -> int:
    """How many pixels a JPEG says it has."""
    for marker, start, _ in segments(data):
        if marker in _FRAMES:
            height, width = struct.unpack_from(">2H", data, start + 5)
            return int(height * width)
    return 0


def _in_eighths(data: bytes) -> NDArray[np.uint8]:
    """The picture at an eighth of its size; whole where it is progressive.

    An eighth is the mean of each block, which every stretch of a sequential scan decides. The
    last scan of a progressive file holds finer things alone.
    """
    from PIL import JpegImagePlugin  # deferred: start-up time

    with quiet():
        image = JpegImagePlugin.JpegImageFile(io.BytesIO(data))
        if not image.info.get("progressive"):
            image.draft(None, (max(1, image.width // 8), max(1, image.height // 8)))
        image.load()
        return np.asarray(image)


def minimal_exif(orientation: int, adobe_rgb: bool = False) -> bytes:
    """An EXIF block (TIFF part only) that holds nothing else.

    >>> meta.orientation(minimal_exif(6)), meta.names_adobe_rgb(minimal_exif(1, True))
    (6, True)
    """
    turn = struct.pack("<HHIHH", 0x0112, 3, 1, orientation, 0)
    if not adobe_rgb:
        return b"II*\0" + struct.pack("<IH", 8, 1) + turn + struct.pack("<I", 0)
    first = struct.pack("<H", 2) + turn + struct.pack("<HHII", 0x8769, 4, 1, 38)
    within = struct.pack("<H", 2) + struct.pack("<HHIHH", 0xA001, 3, 1, 0xFFFF, 0)
    within += struct.pack("<HHII", 0xA005, 4, 1, 68)
    inter = struct.pack("<H", 1) + struct.pack("<HHI", 1, 2, 4) + b"R03\0"
    end = struct.pack("<I", 0)
    return b"II*\0" + struct.pack("<I", 8) + first + end + within + end + inter + end


def _segment(marker: int, body: bytes) -> bytes:
    return b"\xff" + bytes([marker]) + struct.pack(">H", len(body) + 2) + body


def _exact(marker: int, body: bytes) -> bytes:
    """The segment, if it is one that the picture needs and has not a byte to spare.

    Raises
    ------
    ValueError
        Another kind, or room in which something else could stand.
    """
    if marker == _DQT:
        fits = _whole(body, lambda at: 1 + (128 if body[at] >> 4 else 64))
    elif marker == _DHT:
        fits = _whole(body, lambda at: 17 + sum(body[at + 1 : at + 17]))
    elif marker in _FRAMES:
        fits = len(body) >= 6 and body[5] in (1, 3) and len(body) == 6 + 3 * body[5]
    else:
        fits = marker == _DRI and len(body) == 2
    if not fits:
        raise ValueError("a segment that an ordinary picture does not have")
    return _segment(marker, body)


def _whole(body: bytes, length_at: Callable[[int], int]) -> bool:
    """Whether a segment's tables fill it to the last byte."""
    at = 0
    while at < len(body):
        at += length_at(at)
    return at == len(body)


def _scans(data: bytes, at: int) -> list[bytes]:
    """From the first scan to the end marker, without notes between the scans.

    Raises
    ------
    ValueError
        A marker that belongs to no sound picture, or no end.
    """
    parts: list[bytes] = []
    while at + 4 <= len(data):
        marker = data[at + 1]
        end = at + 2 + int.from_bytes(data[at + 2 : at + 4], "big")
        if data[at] != 0xFF or end > len(data):
            break
        body = data[at + 4 : end]
        if marker == _SOS:
            if not body or len(body) != 4 + 2 * body[0]:
                break
            parts.append(_segment(marker, body))
            at = _next_marker(data, end)  # its entropy-coded data runs to the next real marker
            parts.append(data[end:at])
            if data[at : at + 2] == b"\xff\xd9":
                return [*parts, b"\xff\xd9"]
            continue
        if not (0xE0 <= marker <= 0xEF or marker == _COMMENT):
            parts.append(_exact(marker, body))
        at = end
    raise ValueError("no end, or a marker that does not belong here")


def _next_marker(data: bytes, at: int) -> int:
    while True:
        at = data.find(b"\xff", at)
        if at < 0 or at + 1 >= len(data):
            return len(data)
        # A stuffed byte or a restart marker belong to the data.
        if data[at + 1] == 0 or 0xD0 <= data[at + 1] <= 0xD7:
            at += 2
        else:
            return at

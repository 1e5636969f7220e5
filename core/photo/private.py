"""A picture's bytes without what they say about people: place, owner, camera, words.

The pixels are not decoded: whole segments are left out, or blanked where the file's own
offsets forbid that. Kept are the turn (EXIF orientation), the colour profile, and EXIF's one
mark that the numbers are Adobe RGB.
"""

from __future__ import annotations

import io
import struct
from collections.abc import Callable
from zlib import crc32

from core.photo import meta
from core.photo.jpeg import segments
from core.photo.open import open_full
from core.photo.plain import riff_chunks
from core.photo.png import chunks
from core.photo.private_boxes import blank_boxes
from core.photo.private_tiff import blank_tiff
from core.photo.sniff import kind_of

_PNG_KEPT = (
    b"IHDR PLTE IDAT IEND tRNS gAMA cHRM sRGB iCCP cICP sBIT bKGD pHYs acTL fcTL fdAT".split()
)
# Huffman tables, start of scan, quantisation tables, number of lines, restart interval.
_BETWEEN_SCANS = (0xC4, 0xDA, 0xDB, 0xDC, 0xDD)
_WEBP_KEPT = b"VP8X,VP8 ,VP8L,ALPH,ANIM,ANMF,ICCP".split(b",")


def strip_private(data: bytes) -> bytes:
    """The same picture without GPS, names, serial numbers, maker notes, comments and XMP.

    Parameters
    ----------
    data : bytes
        Content of a picture file that `open_photo` opens.

    Returns
    -------
    bytes
        JPEG, PNG, WebP and GIF lose the segments (and whatever follows the picture: further
        pictures, films); the compressed picture is bit for bit the same. TIFF, HEIC and AVIF
        keep their length: the private parts are overwritten in place, and small pictures that
        a HEIC keeps of itself stay. BMP has no such parts and comes back as it is.
        What is built too unusually for that (a BigTIFF, a damaged directory) comes back as
        an 8-bit sRGB PNG at full resolution: the only case in which pixels are re-encoded.

    Raises
    ------
    PhotoError
        Not a picture, or one that can neither be stripped nor opened.
    """
    kind = kind_of(data[:4096])
    strippers: dict[str, Callable[[bytes], bytes]] = {
        "jpeg": _strip_jpeg,
        "png": _strip_png,
        "webp": _strip_webp,
        "gif": _strip_gif,
        "tiff": blank_tiff,
        "heif": blank_boxes,
        "avif": blank_boxes,
        "bmp": lambda same: same,
    }
    try:
        return strippers[kind](data)
    except (ValueError, IndexError, struct.error):
        return _as_png(data)


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


def _strip_jpeg(data: bytes) -> bytes:
    exif = xmp = None
    kept = [b"\xff\xd8"]
    scan_at = None
    for marker, start, end in segments(data):
        body = data[start + 4 : end]
        if marker == 0xDA:
            scan_at = start
        elif marker == 0xE1 and body.startswith(b"Exif\0\0"):
            exif = exif or body
        elif marker == 0xE1 and body.startswith(b"http://ns.adobe.com/xap/1.0/\0"):
            xmp = body
        elif marker == 0xE0 and body.startswith(b"JFIF\0") and len(body) >= 14:
            kept.append(b"\xff\xe0\x00\x10" + body[:12] + b"\0\0")  # without its thumbnail
        elif (
            not 0xE0 <= marker <= 0xEF
            or (marker == 0xE2 and body.startswith(b"ICC_PROFILE\0"))
            or (marker == 0xEE and body.startswith(b"Adobe"))
        ) and marker != 0xFE:
            kept.append(data[start:end])
    if scan_at is None:
        raise ValueError("no picture in it")
    turn, adobe = meta.orientation(exif, xmp), meta.names_adobe_rgb(exif)
    if turn != 1 or adobe:
        block = b"Exif\0\0" + minimal_exif(turn, adobe)
        place = 2 if len(kept) > 1 and kept[1].startswith(b"\xff\xe0") else 1
        kept.insert(place, b"\xff\xe1" + struct.pack(">H", len(block) + 2) + block)
    return b"".join(kept) + _scans(data, scan_at)


def _scans(data: bytes, at: int) -> bytes:
    """From the first scan to the end marker, without notes between the scans.

    Raises
    ------
    ValueError
        A marker that belongs to no sound picture; the place of its end is then unknown.
    """
    parts: list[bytes] = []
    while at + 2 <= len(data):
        marker = data[at + 1]
        if marker == 0xD9:
            return b"".join([*parts, data[at : at + 2]])
        note = 0xE0 <= marker <= 0xEF or marker == 0xFE
        if data[at] != 0xFF or not (note or marker in _BETWEEN_SCANS):
            raise ValueError("a marker that does not belong here")
        end = at + 2 + int.from_bytes(data[at + 2 : at + 4], "big")
        if marker == 0xDA:  # its entropy-coded data runs to the next real marker
            end = _next_marker(data, end)
        if not note:
            parts.append(data[at:end])
        at = end
    return b"".join(parts)


def _next_marker(data: bytes, at: int) -> int:
    while True:
        at = data.find(b"\xff", at)
        if at < 0 or at + 1 >= len(data):
            return len(data)
        # A stuffed byte, a restart marker or a fill byte belong to the data.
        if data[at + 1] == 0 or 0xD0 <= data[at + 1] <= 0xD7:
            at += 2
        elif data[at + 1] == 0xFF:
            at += 1
        else:
            return at


def _strip_png(data: bytes) -> bytes:
    exif = xmp = None
    kept = [data[:8]]
    for name, start, end in chunks(data):
        if name == b"eXIf":
            exif = data[start:end]
        elif name == b"iTXt" and data[start:end].startswith(b"XML:com.adobe.xmp\0"):
            xmp = data[start:end]
        elif name in _PNG_KEPT:
            kept.append(data[start - 8 : end + 4])
    turn = meta.orientation(exif, xmp)
    if turn != 1 and len(kept) > 1:
        block = b"eXIf" + minimal_exif(turn)
        chunk = struct.pack(">I", len(block) - 4) + block + struct.pack(">I", crc32(block))
        kept.insert(2, chunk)
    return b"".join(kept)


def _strip_webp(data: bytes) -> bytes:
    exif = xmp = None
    kept: list[tuple[bytes, bytes]] = []
    for name, start, end in riff_chunks(data):
        content = data[start:end]
        if name == b"EXIF":
            exif = content
        elif name == b"XMP ":
            xmp = content
        elif name in _WEBP_KEPT:
            kept.append((name, content))
    turn = meta.orientation(exif, xmp)
    if turn != 1:
        kept.append((b"EXIF", minimal_exif(turn)))
    if kept and kept[0][0] == b"VP8X":
        flags = kept[0][1][0] & ~0x0C | (0x08 if turn != 1 else 0)  # RFC 9649, 2.7: EXIF, XMP
        kept[0] = (b"VP8X", bytes([flags]) + kept[0][1][1:])
    body = b"WEBP"
    for name, content in kept:
        body += name + struct.pack("<I", len(content)) + content + b"\0" * (len(content) & 1)
    return b"RIFF" + struct.pack("<I", len(body)) + body


def _strip_gif(data: bytes) -> bytes:
    """GIF89a, sections 17 to 27: comments and foreign application blocks go."""
    at = 13 + (3 << (data[10] & 7) + 1 if data[10] & 0x80 else 0)
    kept = [data[:at]]
    while data[at] != 0x3B:
        start = at
        if data[at] == 0x2C:
            table = data[at + 9]
            at = _gif_blocks(data, at + 11 + (3 << (table & 7) + 1 if table & 0x80 else 0))
        elif data[at] == 0x21:
            at = _gif_blocks(data, at + 2)
        else:
            raise ValueError("no such block")
        foreign = data[start + 1] == 0xFF and data[start + 3 : start + 14] not in (
            b"NETSCAPE2.0",
            b"ANIMEXTS1.0",
        )
        if data[start] == 0x2C or not (data[start + 1] == 0xFE or foreign):
            kept.append(data[start:at])
    return b"".join(kept) + b"\x3b"


def _gif_blocks(data: bytes, at: int) -> int:
    while data[at]:
        at += data[at] + 1
    return at + 1


def _as_png(data: bytes) -> bytes:
    from PIL import Image  # deferred: start-up time

    photo = open_full(data)
    image = Image.fromarray(photo.pixels)
    if photo.opaque is not None:
        image.putalpha(Image.fromarray(photo.opaque))
    buffer = io.BytesIO()
    image.save(buffer, "PNG")
    return buffer.getvalue()

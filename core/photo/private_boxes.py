"""HEIC and AVIF without their private parts: the EXIF and XMP items are overwritten in place.

Source: ISO/IEC 14496-12, 8.11 (meta, iinf, iloc), and ISO/IEC 23008-12, annex A (EXIF item).
"""

from __future__ import annotations

import struct

from core.photo.boxes import boxes

_NEEDED = {b"ftyp", b"meta", b"mdat", b"moov", b"idat", b"free", b"skip", b"styp"}


def blank_boxes(data: bytes) -> bytes:
    """Overwrite EXIF, XMP and foreign boxes with blanks; every offset stays.

    Raises
    ------
    ValueError
        The directory of items is missing or cannot be followed.
    """
    out = bytearray(data)
    found = False
    for name, start, end in boxes(data, 0, len(data)):
        if end > len(data):
            raise ValueError("cut short")
        if name == b"meta":
            found = True
            _blank_items(out, data, start + 4, end)
        elif name not in _NEEDED:  # films and notes that phones add
            out[start - 4 : start] = b"free"
            out[start:end] = bytes(end - start)
            if data[start - 4 : start] != name:
                raise ValueError("a long box of unknown meaning")
    if not found:
        raise ValueError("no directory of items")
    return bytes(out)


def _blank_items(out: bytearray, data: bytes, start: int, end: int) -> None:
    inner = {name: (first, last) for name, first, last in boxes(data, start, end)}
    if b"iinf" not in inner or b"iloc" not in inner:
        raise ValueError("no list of items")
    private = _private_items(data, *inner[b"iinf"])
    idat = inner.get(b"idat", (0, 0))[0]
    for item, place, length in _extents(data, *inner[b"iloc"], idat):
        if item not in private:
            continue
        if place < 0 or place + length > len(data):
            raise ValueError("an item outside the file")
        out[place : place + length] = _blank(private[item], length)


def _private_items(data: bytes, start: int, end: int) -> dict[int, bytes]:
    version = data[start]
    head = 6 if version == 0 else 8
    items = {}
    for name, first, _ in boxes(data, start + head, end):
        if name != b"infe" or data[first] < 2:
            continue
        wide = data[first] >= 3
        number = int.from_bytes(data[first + 4 : first + (8 if wide else 6)], "big")
        kind = data[first + (10 if wide else 8) :][:4]
        if kind in (b"Exif", b"mime", b"uri "):
            items[number] = kind
    return items


def _extents(data: bytes, start: int, end: int, idat: int) -> list[tuple[int, int, int]]:
    """Item, place and length of every stretch that the iloc box lists."""
    version = data[start]
    offset_size, length_size = data[start + 4] >> 4, data[start + 4] & 15
    base_size, index_size = data[start + 5] >> 4, data[start + 5] & 15
    if version > 2:
        raise ValueError("an unknown version")
    at = start + 6

    def number(size: int) -> int:
        nonlocal at
        if at + size > end:
            raise ValueError("cut short")
        at += size
        return int.from_bytes(data[at - size : at], "big")

    found = []
    for _ in range(number(4 if version == 2 else 2)):
        item = number(4 if version == 2 else 2)
        method = number(2) & 15 if version else 0
        number(2)
        base = number(base_size)
        for _ in range(number(2)):
            if version:
                number(index_size)
            place = base + number(offset_size)
            length = number(length_size)
            if method == 1:
                place += idat
            elif method:
                raise ValueError("items inside items")
            found.append((item, place, length))
    return found


def _blank(kind: bytes, length: int) -> bytes:
    """Nothing, in a form that readers of that kind of item accept."""
    if kind != b"Exif" or length < 18:
        return b" " * length if kind == b"mime" else bytes(length)
    # An EXIF block with an empty directory; the turn is the container's own matter.
    empty = struct.pack(">I", 0) + b"II*\0" + struct.pack("<IHI", 8, 0, 0)
    return empty.ljust(length, b"\0")

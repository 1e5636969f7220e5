"""What a TIFF's directories claim, looked at before any decoder believes them.

A directory of some bytes may name tiles millions of rows high, or ten thousand tags that all
point to the same stretch of the file, and a reader would make room for each.

Source: TIFF 6.0, sections 2 (directories) and 15 (tiles); BigTIFF as in libtiff.
"""

from __future__ import annotations

import struct
from collections.abc import Iterator
from typing import IO

from core.errors import PhotoError
from core.photo.decoded import MAX_PIXELS, MAX_SIDE, check_size, damaged

_SIZES = {1: 1, 2: 1, 3: 2, 4: 4, 5: 8, 6: 1, 7: 1, 8: 2, 9: 4, 10: 8, 11: 4, 12: 8, 13: 4}
_SIZES |= {16: 8, 17: 8, 18: 8}
_WIDTH, _HEIGHT, _BITS, _SAMPLES, _TILE_WIDTH, _TILE_HEIGHT = 256, 257, 258, 277, 322, 323
_NUMBERS = {1: "B", 3: "H", 4: "I", 16: "Q"}
MOST_PAGES = 50
_MOST_ENTRIES = 1000
_MOST_SAMPLES = 16
_MOST_BITS = 64
# Tiles are padded to whole ones; a tile may be larger than a small picture.
_TILE_ROOM = 4_000_000


def check_layout(stream: IO[bytes]) -> None:
    """Refuse a TIFF whose directories claim what no picture of its size holds.

    Parameters
    ----------
    stream : binary file
        Seekable; left at its beginning.

    Raises
    ------
    PhotoError
        Damaged, or far too large.
    """
    size = stream.seek(0, 2)
    claimed = 0
    for tags, room in _pages(stream):
        claimed += room
        if claimed > 2 * size + 1_000_000:
            raise PhotoError(damaged())
        _check_page(tags)
    stream.seek(0)


def _check_page(tags: dict[int, int]) -> None:
    width, height = tags.get(_WIDTH, 0), tags.get(_HEIGHT, 0)
    check_size(width, height)
    if tags.get(_SAMPLES, 1) > _MOST_SAMPLES or tags.get(_BITS, 1) > _MOST_BITS:
        raise PhotoError(damaged())
    across, down = tags.get(_TILE_WIDTH), tags.get(_TILE_HEIGHT)
    if across is None and down is None:
        return
    if not across or not down or max(across, down) > MAX_SIDE:
        raise PhotoError(damaged())
    padded = -(-width // across) * across * -(-height // down) * down
    if padded > min(4 * width * height + _TILE_ROOM, 2 * MAX_PIXELS):
        raise PhotoError(damaged())


def _pages(stream: IO[bytes]) -> Iterator[tuple[dict[int, int], int]]:
    """Single numbers by tag, and the bytes that all values take, of each of the first pages."""
    stream.seek(0)
    head = stream.read(16)
    order = "<" if head[:2] == b"II" else ">"
    big = head[2:4] in (b"+\0", b"\0+")
    at = _number(order, "Q", head[8:16]) if big else _number(order, "I", head[4:8])
    seen: set[int] = set()
    while at and at not in seen and len(seen) < MOST_PAGES:
        seen.add(at)
        stream.seek(at)
        count = _number(order, "Q", stream.read(8)) if big else _number(order, "H", stream.read(2))
        if count > _MOST_ENTRIES:
            raise PhotoError(damaged())
        length = 20 if big else 12
        table = stream.read(length * count)
        tags: dict[int, int] = {}
        room = 0
        for entry in range(0, len(table) - length + 1, length):
            tag, kind, many, value = _entry(order, big, table[entry : entry + length])
            room += _SIZES.get(kind, 1) * many
            if kind in _NUMBERS and many >= 1 and tag not in tags:
                letter = _NUMBERS[kind]
                if _SIZES[kind] * many <= len(value):
                    tags[tag] = _number(order, letter, value[: _SIZES[kind]])
                elif tag == _BITS:  # one for each channel, elsewhere in the file
                    stream.seek(_number(order, "Q" if big else "I", value))
                    tags[tag] = _number(order, letter, stream.read(_SIZES[kind]))
        yield tags, room
        stream.seek(at + (8 if big else 2) + length * count)
        at = _number(order, "Q", stream.read(8)) if big else _number(order, "I", stream.read(4))


def _entry(order: str, big: bool, entry: bytes) -> tuple[int, int, int, bytes]:
    tag, kind, many = struct.unpack_from(order + ("HHQ" if big else "HHI"), entry)
    return tag, kind, many, entry[12:] if big else entry[8:]


def _number(order: str, letter: str, data: bytes) -> int:
    """The number in these bytes; 0 where they are too few, since the file ends there."""
    try:
        return int(struct.unpack_from(order + letter, data)[0])
    except struct.error:
        return 0

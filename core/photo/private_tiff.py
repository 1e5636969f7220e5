"""TIFF without its private parts, in place: no offset moves, so no pixel does."""

from __future__ import annotations

import struct

from core.photo.meta import byte_order

_SIZES = {1: 1, 2: 1, 3: 2, 4: 4, 5: 8, 6: 1, 7: 1, 8: 2, 9: 4, 10: 8, 11: 4, 12: 8, 13: 4}
_EXIF, _GPS, _INTEROP = 34665, 34853, 40965
_DIRECTORIES = {_EXIF, _GPS, _INTEROP}
_STRIPS, _STRIP_BYTES, _TILES, _TILE_BYTES = 273, 279, 324, 325
# What a picture needs to be shown right (TIFF 6.0; 34675 is the ICC profile, 347 JPEG tables).
_KEPT = {
    *range(254, 267),
    *(_STRIPS, 274, 277, 278, _STRIP_BYTES, 280, 281, 282, 283, 284, 290, 291, 292, 293, 296),
    *(297, 301, 317, 318, 319, 320, 321, *range(322, 326), 332, 334, 336, 338, 339, 340, 341),
    *(342, 347, *range(512, 522), 529, 530, 531, 532, 32997, 34675),
}
_MAX_PAGES = 1000


def blank_tiff(data: bytes) -> bytes:
    """Take out every tag that the picture does not need, and overwrite what it pointed to.

    Raises
    ------
    ValueError
        A BigTIFF, or a directory that lies outside the file.
    """
    order = byte_order(data)
    if order is None:
        raise ValueError("not a classic TIFF")
    out = bytearray(data)
    (at,) = struct.unpack_from(order + "I", data, 4)
    pages: list[int] = []
    while at and at not in pages and len(pages) < _MAX_PAGES:
        (count,) = struct.unpack_from(order + "H", data, at)
        pages.append(at)
        (at,) = struct.unpack_from(order + "I", data, at + 2 + 12 * count)
    guarded = [(0, 8)]
    for page in pages:
        guarded += _needed(data, order, page)
    for page in pages:
        _clean(out, data, order, page, guarded)
    return bytes(out)


def _read(data: bytes, order: str, at: int) -> list[tuple[int, int, int, int, int]]:
    """Tag, place of the entry, type, place and length of the value, for each entry."""
    (count,) = struct.unpack_from(order + "H", data, at)
    found = []
    for i in range(count):
        entry = at + 2 + 12 * i
        tag, kind, number, value = struct.unpack_from(order + "HHII", data, entry)
        length = _SIZES.get(kind, 1) * number
        found.append((tag, entry, kind, entry + 8 if length <= 4 else value, length))
    return found


def _needed(data: bytes, order: str, page: int) -> list[tuple[int, int]]:
    """Stretches of the file that must not be overwritten: the page, its tags, its pixels."""
    tags = _read(data, order, page)
    held = [(page, page + 6 + 12 * len(tags))]
    held += [(place, place + length) for tag, _, _, place, length in tags if tag in _KEPT]
    values = {
        tag: _numbers(data, order, kind, place, length)
        for tag, _, kind, place, length in tags
        if tag in (_STRIPS, _STRIP_BYTES, _TILES, _TILE_BYTES)
    }
    for starts, sizes in ((_STRIPS, _STRIP_BYTES), (_TILES, _TILE_BYTES)):
        if starts in values and sizes not in values:
            raise ValueError("strips of unknown length")
        pairs = zip(values.get(starts, ()), values.get(sizes, ()), strict=False)
        held += [(start, start + size) for start, size in pairs]
    return held


def _numbers(data: bytes, order: str, kind: int, place: int, length: int) -> tuple[int, ...]:
    letter = {3: "H", 4: "I"}.get(kind)
    if letter is None:
        raise ValueError("strips in odd numbers")
    return struct.unpack_from(f"{order}{length // _SIZES[kind]}{letter}", data, place)


def _clean(
    out: bytearray, data: bytes, order: str, page: int, guarded: list[tuple[int, int]]
) -> None:
    tags = _read(data, order, page)
    next_page = data[page + 2 + 12 * len(tags) :][:4]
    kept = b""
    for tag, entry, _, place, length in tags:
        if tag in _KEPT:
            kept += data[entry : entry + 12]
        elif tag in _DIRECTORIES:
            (inner,) = struct.unpack_from(order + "I", data, place)
            _erase(out, data, order, inner, guarded, 0)
        else:
            _zero(out, place, length, guarded)
    # The kept entries close up; what remains of the directory's room is blank.
    room = 6 + 12 * len(tags)
    written = struct.pack(order + "H", len(kept) // 12) + kept + next_page
    out[page : page + room] = written.ljust(room, b"\0")


def _erase(
    out: bytearray,
    data: bytes,
    order: str,
    at: int,
    guarded: list[tuple[int, int]],
    depth: int,
) -> None:
    if at + 2 > len(data) or depth > 2:
        return
    for tag, entry, _, place, length in _read(data, order, at):
        if tag in _DIRECTORIES:
            (inner,) = struct.unpack_from(order + "I", data, place)
            _erase(out, data, order, inner, guarded, depth + 1)
        _zero(out, place, length, guarded)
        _zero(out, entry, 12, guarded)
    _zero(out, at, 2, guarded)


def _zero(out: bytearray, place: int, length: int, guarded: list[tuple[int, int]]) -> None:
    """Overwrite, except where a damaged offset points into what is needed."""
    end = min(place + length, len(out))
    if place >= end or any(place < stop and start < end for start, stop in guarded):
        return
    out[place:end] = bytes(end - place)

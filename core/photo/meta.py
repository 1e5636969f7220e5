"""The few facts of EXIF and XMP that decide how a picture is read: its turn and its colours."""

from __future__ import annotations

import re
import struct
from collections.abc import Iterator

_ORIENTATION = 0x0112
_EXIF_IFD = 0x8769
_COLOUR_SPACE = 0xA001
_INTEROP_IFD = 0xA005
_INTEROP_INDEX = 0x0001

_XMP_ORIENTATION = re.compile(rb"tiff:Orientation(?:\s*=\s*[\"']|\s*>\s*)([1-8])(?![0-9])")


def strip_exif_header(exif: bytes) -> bytes:
    """The TIFF part of an EXIF block; some programs write its header twice."""
    while exif.startswith(b"Exif\0\0"):
        exif = exif[6:]
    return exif


def entries(tiff: bytes, offset: int, order: str) -> Iterator[tuple[int, int, int, bytes]]:
    """Tag, type, count and the 4 value bytes of each entry of a directory.

    Stops quietly where the data ends: half an EXIF block is better than none.
    """
    if offset < 8 or offset + 2 > len(tiff):
        return
    (count,) = struct.unpack_from(order + "H", tiff, offset)
    for i in range(count):
        at = offset + 2 + 12 * i
        if at + 12 > len(tiff):
            return
        tag, kind, number = struct.unpack_from(order + "HHI", tiff, at)
        yield tag, kind, number, tiff[at + 8 : at + 12]


def byte_order(tiff: bytes) -> str | None:
    """The order mark of `struct`, or None when this is no TIFF data."""
    if len(tiff) >= 8 and tiff[:4] in (b"II*\0", b"MM\0*"):
        return "<" if tiff[:2] == b"II" else ">"
    return None


def _number(order: str, kind: int, value: bytes) -> int:
    if kind == 3:
        return int(struct.unpack(order + "H", value[:2])[0])
    return int(struct.unpack(order + "I", value)[0])


def orientation(exif: bytes | None, xmp: bytes | None = None) -> int:
    """How the stored picture must be turned, 1..8.

    Parameters
    ----------
    exif : bytes or None
        EXIF block, with or without its header.
    xmp : bytes or None
        Asked only when the EXIF names no orientation.

    Returns
    -------
    int
        EXIF 3.0 (CIPA DC-008), tag 0x0112; 1 (upright) for values outside 1..8.
    """
    tiff = strip_exif_header(exif or b"")
    order = byte_order(tiff)
    if order is not None:
        (first,) = struct.unpack_from(order + "I", tiff, 4)
        for tag, kind, _, value in entries(tiff, first, order):
            if tag == _ORIENTATION and kind in (3, 4):
                number = _number(order, kind, value)
                return number if 1 <= number <= 8 else 1
    found = _XMP_ORIENTATION.search(xmp[:1_000_000]) if xmp else None
    return int(found.group(1)) if found else 1


def names_adobe_rgb(exif: bytes | None) -> bool:
    """Whether the EXIF says Adobe RGB, as cameras do that embed no profile.

    Notes
    -----
    Source: DCF 2.0 (CIPA DC-009), "DCF optional colour space": InteroperabilityIndex "R03"
    with ColorSpace 65535 (uncalibrated). A few programs write ColorSpace 2 instead.
    """
    tiff = strip_exif_header(exif or b"")
    order = byte_order(tiff)
    if order is None:
        return False
    (first,) = struct.unpack_from(order + "I", tiff, 4)
    main = {tag: (kind, value) for tag, kind, _, value in entries(tiff, first, order)}
    if _EXIF_IFD not in main:
        return False
    within = {
        tag: (kind, value)
        for tag, kind, _, value in entries(tiff, _number(order, *main[_EXIF_IFD]), order)
    }
    space = _number(order, *within[_COLOUR_SPACE]) if _COLOUR_SPACE in within else 0
    if space == 2:
        return True
    pointer = within.get(_INTEROP_IFD) or main.get(_INTEROP_IFD)
    if space != 0xFFFF or pointer is None:
        return False
    return any(
        tag == _INTEROP_INDEX and value[:3] == b"R03"
        for tag, _, _, value in entries(tiff, _number(order, *pointer), order)
    )

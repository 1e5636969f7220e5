"""A colour profile built anew from its numbers: no name of a monitor, no words of its maker.

Source: ICC.1:2022, 7.2 (header), 8.3 (which tags a profile of curves and a matrix has),
10.6, 10.15, 10.18 and 10.31 (curveType, multiLocalizedUnicodeType, parametricCurveType, XYZType).
"""

from __future__ import annotations

import struct

from core.photo.icc import ProfileDamagedError, matrix_encoding, profile_model, tags_of

_COLUMNS = (b"rXYZ", b"gXYZ", b"bXYZ")
_CURVES = {"rgb": (b"rTRC", b"gTRC", b"bTRC"), "grey": (b"kTRC",)}
_MOST_SAMPLES = 4096
_D50 = struct.pack(">3i", 63190, 65536, 54061)


def bare_profile(icc: bytes) -> bytes:
    """A profile with the same curves and matrix, and nothing else.

    Raises
    ------
    ValueError
        It works with tables, is damaged, or is for another kind of picture.
    """
    try:
        model = profile_model(icc)
        if model not in _CURVES or matrix_encoding(icc) is None:
            raise ValueError("a profile of tables")
        tags = tags_of(icc)
        kept = {name: _curve(tags[name]) for name in _CURVES[model]}
        if model == "rgb":
            kept |= {name: b"XYZ \0\0\0\0" + tags[name][8:20] for name in _COLUMNS}
    except (ProfileDamagedError, struct.error) as error:
        raise ValueError("a damaged profile") from error
    # Every profile must have these; what they say is the same for all.
    kept |= {b"desc": _text("colours"), b"cprt": _text("none"), b"wtpt": b"XYZ \0\0\0\0" + _D50}
    return _written(b"RGB " if model == "rgb" else b"GRAY", kept)


def _written(space: bytes, tags: dict[bytes, bytes]) -> bytes:
    table, body = b"", b""
    start = 132 + 12 * len(tags)
    for name, content in tags.items():
        table += struct.pack(">4sII", name, start + len(body), len(content))
        body += content + b"\0" * (-len(content) % 4)
    head = struct.pack(">I4xI", start + len(body), 0x04200000)  # ICC version 4.2
    head += b"mntr" + space + b"XYZ " + struct.pack(">6H", 2000, 1, 1, 0, 0, 0) + b"acsp"
    head = head.ljust(68, b"\0") + _D50
    return head.ljust(128, b"\0") + struct.pack(">I", len(tags)) + table + body


def _curve(tag: bytes) -> bytes:
    if tag[:4] == b"para":
        kind = struct.unpack_from(">H", tag, 8)[0]
        numbers = tag[12 : 12 + 4 * (1, 3, 4, 5, 7)[kind]]
        return b"para\0\0\0\0" + struct.pack(">HH", kind, 0) + numbers
    count = struct.unpack_from(">I", tag, 8)[0]
    if count > _MOST_SAMPLES:
        raise ValueError("a curve of unusual length")
    return b"curv\0\0\0\0" + struct.pack(">I", count) + tag[12 : 12 + 2 * count]


def _text(words: str) -> bytes:
    encoded = words.encode("utf-16-be")
    return b"mluc\0\0\0\0" + struct.pack(">II4sII", 1, 12, b"enUS", len(encoded), 28) + encoded

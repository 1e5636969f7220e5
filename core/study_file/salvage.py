"""What is still whole in a damaged study file.

A zip says twice what is in it: in a header before each member, and in a list at the end. Damage
seldom hits both, and a check sum tells for each member whether it came through. Nothing here is
trusted further than that: sizes are bounded, and only the names of a study are looked for.

Source: PKWARE, APPNOTE 6.3.10, 4.3.7 (local file header) and 4.3.12 (central directory header).
"""

from __future__ import annotations

import struct
import zlib
from collections.abc import Iterator
from dataclasses import dataclass

from core.study_file.contents import MOST_JSON, MOST_PICTURE, MOST_TOTAL, picture_name_allowed

_LOCAL, _CENTRAL = b"PK\x03\x04", b"PK\x01\x02"
_MOST_HEADERS = 400
_STORED, _DEFLATED = 0, 8


@dataclass(frozen=True)
class Member:
    """What one header says of a member."""

    name: str
    starts: tuple[int, ...]
    method: int
    packed: int
    size: int
    checksum: int


@dataclass(frozen=True)
class Salvaged:
    """What came out.

    Attributes
    ----------
    whole : dict of str to bytes
        Members whose check sum holds, by their name in the file.
    doubtful : bytes or None
        The study's text, where it unpacks but its check sum does not hold.
    lost : tuple of str
        Names of members that are listed and did not come through.
    names_study : bool
        Some header names the text: the file was a study once.
    renamed : bool
        One of the two lists of members has names that no study has, the other has not.
    """

    whole: dict[str, bytes]
    doubtful: bytes | None
    lost: tuple[str, ...]
    names_study: bool
    renamed: bool


def salvage(data: bytes, study_member: str, folder: str) -> Salvaged:
    """Everything of a study that is whole.

    Parameters
    ----------
    data : bytes
        The damaged file.
    study_member : str
        Name of the text.
    folder : str
        What the pictures' names begin with.
    """
    whole: dict[str, bytes] = {}
    named: set[str] = set()
    doubtful = None
    total = 0
    listed, local = tuple(_listed(data)), tuple(_local(data))

    def known(members: tuple[Member, ...]) -> bool:
        return all(
            one.name == study_member
            or (one.name.startswith(folder) and picture_name_allowed(one.name[len(folder) :]))
            for one in members
        )

    for member in (*listed, *local):
        is_text = member.name == study_member
        picture = member.name.removeprefix(folder)
        if not is_text and (picture == member.name or not picture_name_allowed(picture)):
            continue
        named.add(member.name)
        if member.name in whole or member.size > (MOST_JSON if is_text else MOST_PICTURE):
            continue
        content, holds = _content(data, member)
        if content is None or total + len(content) > MOST_TOTAL:
            continue
        if holds:
            whole[member.name] = content
            total += len(content)
        elif is_text:
            doubtful = content
    return Salvaged(
        whole,
        None if study_member in whole else doubtful,
        tuple(sorted(named - set(whole) - {study_member})),
        study_member in named,
        known(listed) != known(local),
    )


def _content(data: bytes, member: Member) -> tuple[bytes | None, bool]:
    """A member's content, and whether its check sum holds."""
    found = None
    for start in member.starts:
        packed = data[start : start + member.packed]
        if member.method == _STORED:
            content = packed
        elif member.method == _DEFLATED:
            inflater = zlib.decompressobj(-15)
            try:
                content = inflater.decompress(packed, member.size + 1)
            except zlib.error:
                continue
        else:
            continue
        if len(content) != member.size:
            continue
        if zlib.crc32(content) == member.checksum:
            return content, True
        found = content
    return found, False


def _local(data: bytes) -> Iterator[Member]:
    for at in _places(data, _LOCAL):
        if at + 30 > len(data):
            return
        _, _, method, _, _, checksum, packed, size, name, extra = struct.unpack_from(
            "<5H3I2H", data, at + 4
        )
        begin = at + 30 + name + extra
        # Our own files have nothing between the name and the content.
        starts = (begin, at + 30 + name) if extra else (begin,)
        yield Member(_text(data[at + 30 : at + 30 + name]), starts, method, packed, size, checksum)


def _listed(data: bytes) -> Iterator[Member]:
    for at in _places(data, _CENTRAL):
        if at + 46 > len(data):
            return
        method, _, _, checksum, packed, size, name = struct.unpack_from("<3H3IH", data, at + 10)
        (offset,) = struct.unpack_from("<I", data, at + 42)
        lengths = struct.unpack_from("<2H", data, offset + 26) if offset + 30 <= len(data) else ()
        starts = {offset + 30 + sum(lengths), offset + 30 + name}
        yield Member(
            _text(data[at + 46 : at + 46 + name]),
            tuple(sorted(starts)),
            method,
            packed,
            size,
            checksum,
        )


def _places(data: bytes, mark: bytes) -> Iterator[int]:
    at = data.find(mark)
    for _ in range(_MOST_HEADERS):
        if at < 0:
            return
        yield at
        at = data.find(mark, at + 4)


def _text(name: bytes) -> str:
    return name.decode("ascii", "replace")

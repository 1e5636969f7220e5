"""The `.gradewash` file as a container: a zip with `study.json` and the pictures.

What comes in is not trusted: names, counts and sizes are checked before anything is unpacked,
and nothing is ever unpacked to disk. What the JSON means is `document`'s business.
"""

from __future__ import annotations

import io
import stat
import zipfile
import zlib
from types import MappingProxyType

from core.errors import StudyFileError
from core.i18n import translate
from core.study_file.contents import (
    MOST_JSON,
    MOST_MEMBERS,
    MOST_PICTURE,
    MOST_TOTAL,
    Contents,
    picture_name_allowed,
)
from core.study_file.salvage import salvage

STUDY_MEMBER = "study.json"
PICTURES = "pictures/"
_EPOCH = (1980, 1, 1, 0, 0, 0)
"""Members carry no time: the same study gives the same bytes."""


def pack(contents: Contents) -> bytes:
    """The bytes of a study file.

    Raises
    ------
    ValueError
        A picture's name is not allowed.
    StudyFileError
        The pictures are too large to be opened again.
    """
    if len(contents.pictures) > MOST_MEMBERS - 1:
        raise ValueError(f"at most {MOST_MEMBERS - 1} pictures go into a study")
    total = len(contents.json) + sum(map(len, contents.pictures.values()))
    biggest = max(map(len, contents.pictures.values()), default=0)
    if total > MOST_TOTAL or biggest > MOST_PICTURE or len(contents.json) > MOST_JSON:
        raise StudyFileError(
            translate(
                "study file",
                "The pictures of this study are too large to keep in one file; "
                "use smaller copies of them.",
            )
        )
    out = io.BytesIO()
    with zipfile.ZipFile(out, "w") as archive:
        archive.writestr(_member(STUDY_MEMBER), contents.json, zipfile.ZIP_DEFLATED)
        for name, data in contents.pictures.items():
            if not picture_name_allowed(name):
                raise ValueError(f"not a name for a picture in a study: {name!r}")
            # Stored as they are: photos are compressed already, and saving stays quick.
            archive.writestr(_member(PICTURES + name), data, zipfile.ZIP_STORED)
    return out.getvalue()


class DamagedError(StudyFileError):
    """The file was a study, and something in it did not come through."""


class ForeignError(StudyFileError):
    """The file holds what no study holds."""


def unpack_what_is_whole(data: bytes) -> Contents:
    """Read a study file's members; of a damaged one, those that are whole.

    Raises
    ------
    StudyFileError
        Not a study file, made to do harm, or nothing in it is whole.
    """
    try:
        return unpack(data)
    except (DamagedError, ForeignError) as error:
        found = salvage(data, STUDY_MEMBER, PICTURES)
        # A flipped bit gives a member another name in one place; whoever means harm writes
        # the same in both.
        harmful = isinstance(error, ForeignError) and not found.renamed
        if harmful or not found.names_study or not (found.whole or found.doubtful):
            raise
        whole = dict(found.whole)
        json = whole.pop(STUDY_MEMBER, None)
        pictures = {name.removeprefix(PICTURES): content for name, content in whole.items()}
        sound = json is not None and not found.lost
        return Contents(json or found.doubtful or b"", MappingProxyType(pictures), not sound)


def unpack(data: bytes) -> Contents:
    """Read a study file's members.

    Raises
    ------
    StudyFileError
        Not a study file, damaged, cut short, or made to do harm.
    """
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            members = archive.infolist()
            _check_members(members)
            read = {member.filename: _read(archive, member) for member in members}
    except StudyFileError:
        raise
    except (zipfile.BadZipFile, zlib.error, EOFError, OSError) as error:
        raise _damaged() from error
    except (NotImplementedError, RuntimeError, ValueError, LookupError, OverflowError) as error:
        # An unknown compression or encryption, a header that contradicts itself.
        raise _damaged() from error
    if STUDY_MEMBER not in read:
        raise StudyFileError(
            translate(
                "study file",
                "This is not a Gradewash study; choose a file whose name ends in .gradewash.",
            )
        )
    json = read.pop(STUDY_MEMBER)
    pictures = {name.removeprefix(PICTURES): content for name, content in read.items()}
    return Contents(json, MappingProxyType(pictures))


def _member(name: str) -> zipfile.ZipInfo:
    member = zipfile.ZipInfo(name, _EPOCH)
    member.external_attr = (stat.S_IFREG | 0o644) << 16
    return member


def _check_members(members: list[zipfile.ZipInfo]) -> None:
    names = [member.filename for member in members]
    total = 0
    for member in members:
        mode = member.external_attr >> 16
        picture = member.filename.removeprefix(PICTURES)
        known = member.filename == STUDY_MEMBER or (
            member.filename.startswith(PICTURES) and picture_name_allowed(picture)
        )
        odd_kind = stat.S_IFMT(mode) not in (0, stat.S_IFREG)
        if not known or odd_kind or member.flag_bits & 0x1:
            raise _foreign()
        most = MOST_JSON if member.filename == STUDY_MEMBER else MOST_PICTURE
        total += member.file_size
        if member.file_size > most or total > MOST_TOTAL:
            raise StudyFileError(
                translate(
                    "study file",
                    "This study unpacks to more than Gradewash will open; "
                    "it was not made by this program.",
                )
            )
    if len(members) > MOST_MEMBERS or len(set(names)) != len(names):
        raise _foreign()


def _read(archive: zipfile.ZipFile, member: zipfile.ZipInfo) -> bytes:
    # The size in the header may lie, so never read more than it says.
    with archive.open(member) as stream:
        content = stream.read(member.file_size)
        if len(content) != member.file_size or stream.read(1):
            raise _damaged()
    return content


def _damaged() -> DamagedError:
    return DamagedError(
        translate(
            "study file",
            "This study file is damaged or cut short; open an older copy or a backup of it.",
        )
    )


def _foreign() -> ForeignError:
    return ForeignError(
        translate(
            "study file",
            "This study file holds things Gradewash never puts there, so it stays closed; "
            "ask for a fresh copy.",
        )
    )

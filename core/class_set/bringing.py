"""Bringing pictures in: each stripped, its ticket read, kept once; and studies taken apart.

Every picture is acknowledged only after the folder has it, so a kill in between loses nothing
that was told, and bringing the same pictures in again adds only what is missing.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from pathlib import Path
from typing import Literal

import numpy as np

from core.class_set import edits
from core.class_set.codes import tickets_of_picture
from core.class_set.folder import ClassFolder
from core.class_set.model import Brought, ClassSet
from core.class_set.moment import Moment, moment_of, orders_by_time
from core.class_set.ticket import Slot
from core.errors import ClassSetError, GradewashError, PhotoError
from core.file_sentences import shown_name, why_not_read
from core.files import TooLargeError, natural_key, read_file
from core.i18n import translate
from core.photo import Photo, open_photo, strip_private
from core.pictures import Picture, digest_of
from core.progress import Progress, ShouldStop, step
from core.study_file.contents import MOST_PICTURE
from core.study_file.document import Opened, study_from_bytes
from core.study_file.opening import is_study

Order = Literal["time", "name"]

_CAMERA_NAME = re.compile(
    r"(?:(?:IMG|DSC[FN]?|PXL|MVIMG|DCIM|PICT|CIMG|HPIM|P|SCAN|PHOTO|IMAGE|PICTURE|SHEET|PAGE|"
    r"BILD|FOTO|IMAGEN|WA)[ _-]*)*[\d _.()-]*(?:(?:MP|HDR|BURST|COVER|PORTRAIT|NIGHT|EDIT|E|WA)"
    r"[ _-]*[\d _.()-]*)*",
    re.IGNORECASE | re.ASCII,
)


@dataclass(frozen=True)
class Told:
    """What became of one file.

    Attributes
    ----------
    name : str
        The file's own name, for the teacher; the class set may keep another.
    added : int
        Pictures that are new in the class set.
    digest : str
        Of the picture; empty for a study, or where it failed.
    sentence : str
        What went wrong; empty when all is well.
    """

    name: str
    added: int = 0
    digest: str = ""
    sentence: str = ""


def files_in(paths: Sequence[Path]) -> tuple[Path, ...]:
    """The files that are meant: those given, and all in the folders given, however deep.

    Hidden files are left out, and so is a folder that holds a class set.

    Raises
    ------
    ClassSetError
        One is not there.
    """
    found: dict[Path, None] = {}
    for path in paths:
        if path.is_dir():
            for each in sorted(path.rglob("*"), key=lambda each: natural_key(str(each))):
                hidden = any(part.startswith(".") for part in each.relative_to(path).parts)
                if each.is_file() and not hidden and each.suffix.lower() not in _NO_PICTURE:
                    found.setdefault(each)
        elif path.exists():
            found.setdefault(path)
        else:
            raise ClassSetError(why_not_read(path, FileNotFoundError()))
    return tuple(found)


_NO_PICTURE = {".txt", ".json", ".ini", ".db", ".csv", ".xlsx", ".pdf", ".mov", ".mp4", ".aae"}


def bring_in(
    folder: ClassFolder,
    files: Sequence[Path],
    order: Order = "time",
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> Iterator[Told]:
    """Bring files into the class set, one after the other; tells of each once it is safe.

    Parameters
    ----------
    folder : ClassFolder
        Saved after each file.
    files : sequence of Path
        Pictures and studies, from `files_in`.
    order : "time" or "name"
        What tells the order they were taken in: the moments in the pictures, or the files' names.
    progress, should_stop : callable, optional

    Raises
    ------
    ClassSetError
        The disk is full or gone: what was told is kept.
    Cancelled
        `should_stop` answered True; what was told is kept.
    """
    files = sorted(files, key=lambda file: natural_key(file.name))
    orders = _orders(files, order, _next_series(folder.class_set))
    seen: dict[str, tuple[int, int]] = {}
    for number, (file, place) in enumerate(zip(files, orders, strict=True)):
        step(number / len(files), progress, should_stop)
        try:
            told = _one(folder, file, place)
        except ClassSetError:
            raise
        except GradewashError as error:
            told = Told(shown_name(file), sentence=str(error))
        if told.digest and place is not None:
            seen.setdefault(told.digest, place)
        yield told
    folder.save(_in_one_series(folder.class_set, seen))
    step(1.0, progress, None)


def bring_picture(folder: ClassFolder, name: str, data: bytes, slot: Slot) -> str:
    """Bring one picture in and put it in its place; gives its digest once it is safe.

    Raises
    ------
    ClassSetError
        The disk is full or gone.
    PhotoError
        It is no picture.
    """
    digest = _picture(folder, name, data, None, slot).digest
    folder.save(edits.place(folder.class_set, digest, slot))
    return digest


def anonymous_name(name: str, number: int) -> str:
    """What a picture is called in the class set: a camera's or scanner's name stays, since it
    tells nobody anything; any other may be a student's.

    >>> anonymous_name("IMG_2063.jpg", 7), anonymous_name("PXL_20270318_101502.jpg", 7)
    ('IMG_2063.jpg', 'PXL_20270318_101502.jpg')
    >>> anonymous_name("Anna B sheet 1.JPG", 7)
    'picture 007.jpg'
    """
    path = Path(name)
    if path.stem and len(name) < 120 and _CAMERA_NAME.fullmatch(path.stem):
        return name
    suffix = path.suffix.lower()
    return f"picture {number:03d}{suffix if re.fullmatch(r'[.][a-z0-9]{1,5}', suffix) else ''}"


def looks_like(photo: Photo) -> Literal["sheet", "page"]:
    """What a picture without a readable ticket seems to show.

    A worksheet page is bright, colourless paper nearly all over its middle. Where that is wrong
    the picture is asked about, so little hangs on it.
    """
    height, width = photo.pixels.shape[:2]
    every = max(1, min(height, width) // 120)
    small = photo.pixels[::every, ::every].astype(np.float64)
    rows, columns = small.shape[:2]
    middle = small[rows // 4 : rows - rows // 4, columns // 4 : columns - columns // 4]
    high, low = middle.max(axis=-1), middle.min(axis=-1)
    white = max(1.0, float(np.percentile(small.max(axis=-1), 98)))
    paper = (high > _BRIGHT * white) & (high - low < _COLOURLESS * np.maximum(high, 1.0))
    return "page" if float(paper.mean()) > _MOSTLY else "sheet"


_BRIGHT, _COLOURLESS, _MOSTLY = 0.62, 0.16, 0.72


def _one(folder: ClassFolder, file: Path, order: tuple[int, int] | None) -> Told:
    data = _bytes_of(file)
    if is_study(file):
        return _study(folder, shown_name(file), study_from_bytes(data))
    return _picture(folder, shown_name(file), data, order, None)


def _bytes_of(file: Path) -> bytes:
    try:
        return read_file(file, MOST_PICTURE)
    except TooLargeError as error:
        raise PhotoError(
            translate("class set", "{name} is too large: bring in a smaller copy.").format(
                name=shown_name(file)
            )
        ) from error
    except OSError as error:
        raise PhotoError(why_not_read(file, error)) from error


def _picture(
    folder: ClassFolder,
    name: str,
    data: bytes,
    order: tuple[int, int] | None,
    hand: Slot | None,
) -> Told:
    class_set = folder.class_set
    clean = strip_private(data)
    digest = digest_of(clean)
    known = {each.digest: each for each in class_set.brought}
    if digest in known and folder.holds_picture(digest):
        return Told(name, 0, digest)
    photo = open_photo(clean, name=name)
    # From the picture as it came: what is kept of some kinds is smaller.
    tickets = tickets_of_picture(photo, data)
    folder.keep_picture(clean)
    brought = Brought(
        Picture(anonymous_name(name, len(class_set.brought) + 1), digest),
        order,
        tickets,
        looks_like(photo),
        hand=hand,
    )
    folder.save(edits.with_brought(class_set, brought))
    return Told(name, 0 if digest in known else 1, digest)


def _study(folder: ClassFolder, name: str, opened: Opened) -> Told:
    """A study that was handed in: its sheets and its worksheet go to their student."""
    class_set, study = folder.class_set, opened.study
    student = class_set.class_list.with_code(study.worksheet.student_code)
    if study.worksheet.student_code == "" or student is None:
        raise _NotThisFile(
            translate(
                "class set",
                "{name} does not say whose it is by a code of this class: write the code on its "
                "Worksheet page, save it, and bring it in again.",
            ).format(name=name)
        )
    photo = class_set.exercise.photo
    if study.photo is None or photo is None or study.photo.digest != photo.digest:
        raise _NotThisFile(
            translate(
                "class set",
                "{name} is a study of another photo: bring it into that lesson's class set.",
            ).format(name=name)
        )
    added = 0
    for index, sheet in enumerate(study.sheets):
        if sheet is None:
            continue
        before = len(folder.class_set.brought)
        slot = Slot(student.number, index)
        _picture(folder, sheet.picture.name, opened.pictures[sheet.picture.digest], None, slot)
        digest = digest_of(strip_private(opened.pictures[sheet.picture.digest]))
        placed = edits.place(folder.class_set, digest, slot)
        folder.save(edits.with_options(placed, digest, sheet.options))
        added += len(folder.class_set.brought) - before
    folder.save(edits.with_worksheet(folder.class_set, student.number, study.worksheet))
    return Told(name, added)


class _NotThisFile(GradewashError):
    """One file cannot be brought in; the others can."""


def _orders(files: Sequence[Path], order: Order, first: int) -> list[tuple[int, int] | None]:
    """(series, place) of each file, series numbered from `first`."""
    if order == "name":
        return [(first, place) for place in range(len(files))]
    moments: list[Moment | None] = []
    for file in files:
        try:
            moments.append(moment_of(_bytes_of(file)))
        except PhotoError:
            moments.append(None)
    return [
        None if found is None else (first + found[0], found[1]) for found in orders_by_time(moments)
    ]


def _in_one_series(class_set: ClassSet, seen: Mapping[str, tuple[int, int]]) -> ClassSet:
    """The class set with the order just seen, where it tells more than the one known.

    After a bringing in that was cut short the whole is brought in again: then the old series is
    part of the new one, and what came between its end and the rest is known.
    """
    members: dict[int | None, set[str]] = {}
    for each in class_set.brought:
        members.setdefault(each.order[0] if each.order else None, set()).add(each.digest)
    fresh = {order[0] for order in seen.values()}
    whole = {
        series
        for series, digests in members.items()
        if series is None or (digests <= seen.keys() and len(digests) < len(seen))
    } - fresh
    for each in class_set.brought:
        series = each.order[0] if each.order else None
        if each.digest in seen and series in whole:
            class_set = edits.with_brought(class_set, replace(each, order=seen[each.digest]))
    return class_set


def _next_series(class_set: ClassSet) -> int:
    """The number of a series nobody has yet."""
    return max((each.order[0] + 1 for each in class_set.brought if each.order), default=0)

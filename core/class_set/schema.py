"""What `class-set.json` holds, version 1: the file's own types, apart from the program's.

They change only together with `VERSION`; fields the version does not know mean a damaged or
foreign file. The exercise is kept as a study's own JSON, its photo named by its digest.
"""

from __future__ import annotations

from typing import Annotated, Literal

import msgspec
from msgspec import Meta, Struct

from core.class_set.edits import with_worksheet
from core.class_set.model import MOST_MARK, MOST_WORDS, Brought, ClassSet, Entry, Marking
from core.class_set.students import ClassList, Student
from core.class_set.ticket import Slot, Ticket
from core.errors import ClassSetError, StudyFileError
from core.i18n import translate
from core.pictures import Picture
from core.sheet.options import Corners, SheetOptions
from core.study_file import schema as study_schema
from core.study_file.contents import Contents
from core.study_file.document import (
    study_from_contents,
    study_to_contents,
    worksheet_to_schema,
)
from core.study_file.from_schema import worksheet_from_schema

VERSION = 1
FORMAT = "gradewash class set"

Digest = Annotated[str, Meta(pattern="^[0-9a-f]{64}$")]
Number = Annotated[int, Meta(ge=1, le=99)]
Index = Annotated[int, Meta(ge=0, le=1)]
Count = Annotated[int, Meta(ge=0, le=1_000_000)]
Words = Annotated[str, Meta(max_length=MOST_WORDS)]
State = Literal["", "in", "late", "missing", "excused"]


class Student1(Struct, frozen=True, forbid_unknown_fields=True):
    """A code and the number that stands on its tickets."""

    number: Number
    code: Annotated[str, Meta(min_length=1, max_length=120)]


class Ticket1(Struct, frozen=True, forbid_unknown_fields=True):
    """A code as it was read."""

    tag: Annotated[str, Meta(pattern="^[2-9A-HJ-NP-Z]{4}$")]
    number: Number
    kind: Annotated[str, Meta(pattern="^[12A-H]$")]


class Slot1(Struct, frozen=True, forbid_unknown_fields=True):
    """A place: student, first or second, painting or worksheet page."""

    number: Number
    index: Index
    what: Literal["sheet", "page"] = "sheet"


class Options1(Struct, frozen=True, forbid_unknown_fields=True):
    """How a sheet is to be looked at, as in a study."""

    corners: (
        Annotated[
            list[tuple[study_schema.Near, study_schema.Near]], Meta(min_length=4, max_length=4)
        ]
        | None
    ) = None
    turned: Annotated[int, Meta(ge=0, le=3)] = 0
    scan: bool = False
    aspect: study_schema.Positive | None = None


class Brought1(Struct, frozen=True, forbid_unknown_fields=True):
    """A picture; its bytes are in `pictures` under the digest."""

    name: Annotated[str, Meta(max_length=255)]
    digest: Digest
    order: tuple[Count, Count] | None = None
    tickets: Annotated[list[Ticket1], Meta(max_length=64)] = []
    looks_like: Literal["sheet", "page"] = "sheet"
    options: Options1 = Options1()
    hand: Slot1 | None = None
    aside: bool = False


class Marking1(Struct, frozen=True, forbid_unknown_fields=True):
    """The teacher's words, the mark as typed, a state for each sheet."""

    strength: Words = ""
    next_step: Words = ""
    remark: Words = ""
    mark: Annotated[str, Meta(max_length=MOST_MARK)] = ""
    states: tuple[State, State] = ("", "")
    done: bool = False


class Entry1(Struct, frozen=True, forbid_unknown_fields=True):
    """A student's own words and the teacher's."""

    number: Number
    worksheet: study_schema.Worksheet1 = study_schema.Worksheet1()
    marking: Marking1 = Marking1()


class ClassSet1(Struct, frozen=True, forbid_unknown_fields=True):
    """The whole of `class-set.json`."""

    format: Literal["gradewash class set"]
    version: Literal[1]
    title: Annotated[str, Meta(max_length=120)]
    tag: Annotated[str, Meta(pattern="^[2-9A-HJ-NP-Z]{4}$")]
    students: Annotated[list[Student1], Meta(min_length=1, max_length=99)]
    exercise: msgspec.Raw
    photo: Digest
    brought: Annotated[list[Brought1], Meta(max_length=5000)] = []
    entries: Annotated[list[Entry1], Meta(max_length=99)] = []


def class_set_to_json(class_set: ClassSet) -> bytes:
    """The bytes of `class-set.json`.

    Raises
    ------
    ValueError
        The exercise has no photo.
    """
    photo = class_set.exercise.photo
    if photo is None:
        raise ValueError("the exercise of a class set has a photo")
    exercise = study_to_contents(class_set.exercise, {photo.digest: b""}).json
    kept = ClassSet1(
        format="gradewash class set",
        version=1,
        title=class_set.title,
        tag=class_set.class_list.tag,
        students=[Student1(each.number, each.code) for each in class_set.students],
        exercise=msgspec.Raw(exercise),
        photo=photo.digest,
        brought=[_brought_out(each) for each in class_set.brought],
        entries=[_entry_out(each) for each in class_set.entries],
    )
    return msgspec.json.format(msgspec.json.encode(kept), indent=1)


def photo_digest_in(data: bytes) -> str:
    """Which picture is the exercise's photo; as `class_set_from_json`."""
    return _parse(data).photo


def class_set_from_json(data: bytes, photo: bytes) -> ClassSet:
    """The class set of a file's bytes.

    Parameters
    ----------
    data : bytes
    photo : bytes
        The exercise's photo.

    Raises
    ------
    ClassSetError
        Not a class set, damaged, or of a newer version: in one sentence.
    """
    kept = _parse(data)
    try:
        # The exercise's JSON names one picture, the photo, as a study file's does.
        named = msgspec.json.decode(kept.exercise, type=study_schema.Study1)
        members = {} if named.photo is None else {named.photo.member: photo}
        opened = study_from_contents(Contents(bytes(kept.exercise), members))
        if opened.gone:  # what a study may lack, an exercise may not
            raise ValueError(", ".join(opened.gone))
        class_list = ClassList(kept.tag, tuple(Student(s.number, s.code) for s in kept.students))
        class_set = ClassSet(
            kept.title,
            class_list,
            opened.study,
            tuple(_brought_in(each) for each in kept.brought),
            tuple(Entry(each.number, marking=_marking_in(each.marking)) for each in kept.entries),
        )
        for entry in kept.entries:
            worksheet = worksheet_from_schema(entry.worksheet)
            class_set = with_worksheet(class_set, entry.number, worksheet)
    except (ValueError, StudyFileError, msgspec.MsgspecError) as error:
        raise _wrong(str(error)) from error
    return class_set


def _parse(data: bytes) -> ClassSet1:
    try:
        about = msgspec.json.decode(data, type=dict[str, msgspec.Raw])
        form = msgspec.json.decode(about.get("format", b"null"))
        version = msgspec.json.decode(about.get("version", b"null"))
    except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError) as error:
        raise _wrong(str(error)) from error
    if form != FORMAT:
        raise ClassSetError(
            translate(
                "class set", "This folder's class-set.json is no class set: choose another folder."
            )
        )
    if isinstance(version, int) and version > VERSION:
        raise ClassSetError(
            translate(
                "class set",
                "This class set was made by a newer Gradewash; update this one to open it.",
            )
        )
    try:
        return msgspec.json.decode(data, type=ClassSet1)
    except (msgspec.MsgspecError, UnicodeDecodeError, RecursionError) as error:
        raise _wrong(str(error)) from error


def _wrong(detail: str) -> ClassSetError:
    return ClassSetError(
        translate(
            "class set",
            "This class set holds something that cannot be right ({detail}); "
            "open a backup of its folder.",
        ).format(detail=detail.rstrip(".")[:160])
    )


def _slot_out(slot: Slot | None) -> Slot1 | None:
    return None if slot is None else Slot1(slot.number, slot.index, slot.what)


def _brought_out(each: Brought) -> Brought1:
    options = each.options
    return Brought1(
        each.picture.name,
        each.digest,
        each.order,
        [Ticket1(ticket.tag, ticket.number, ticket.kind) for ticket in each.tickets],
        each.looks_like,
        Options1(
            None if options.corners is None else list(options.corners),
            options.turned,
            options.scan,
            options.aspect,
        ),
        _slot_out(each.hand),
        each.aside,
    )


def _brought_in(kept: Brought1) -> Brought:
    corners: Corners | None = None
    if kept.options.corners is not None:
        first, second, third, fourth = kept.options.corners
        corners = (first, second, third, fourth)
    return Brought(
        Picture(kept.name, kept.digest),
        kept.order,
        tuple(Ticket(ticket.tag, ticket.number, ticket.kind) for ticket in kept.tickets),
        kept.looks_like,
        SheetOptions(corners, kept.options.turned, kept.options.scan, kept.options.aspect),
        None if kept.hand is None else Slot(kept.hand.number, kept.hand.index, kept.hand.what),
        kept.aside,
    )


def _entry_out(entry: Entry) -> Entry1:
    said = entry.marking
    marking = Marking1(
        said.strength, said.next_step, said.remark, said.mark, said.states, said.done
    )
    return Entry1(entry.number, worksheet_to_schema(entry.worksheet), marking)


def _marking_in(kept: Marking1) -> Marking:
    return Marking(kept.strength, kept.next_step, kept.remark, kept.mark, kept.states, kept.done)

"""The class set as one frozen value.

What the teacher decided and what was read from the pictures is kept; whose a picture is follows
from both and is worked out again each time (`core.class_set.placing`), so the two cannot differ.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from core.class_set.students import ClassList, Student
from core.class_set.ticket import Slot, Ticket
from core.pictures import Picture
from core.sheet.options import SheetOptions
from core.study import Study
from core.worksheet.worksheet import Worksheet

State = Literal["", "in", "late", "missing", "excused"]
"""Of one sheet; empty: in time once its picture has its place, not yet until then."""

STATES: tuple[State, ...] = ("", "in", "late", "missing", "excused")

MOST_MARK = 40
MOST_WORDS = 2000


@dataclass(frozen=True)
class Brought:
    """A picture that was brought in.

    Attributes
    ----------
    picture : Picture
        Its bytes are kept stripped, under this digest.
    order : tuple of int or None
        Which series of shots (one camera, one time of bringing in) and the place in it; None
        where the order they were taken in is not known.
    tickets : tuple of Ticket
        Read from it; mostly one, or none.
    looks_like : "sheet" or "page"
        What it seems to show where no ticket says so.
    options : SheetOptions
        How the sheet is to be looked at; corners and turn set by hand.
    hand : Slot or None
        Where the teacher placed it.
    aside : bool
        The teacher laid it aside: it has no place and is not asked about.
    """

    picture: Picture
    order: tuple[int, int] | None = None
    tickets: tuple[Ticket, ...] = ()
    looks_like: Literal["sheet", "page"] = "sheet"
    options: SheetOptions = SheetOptions()
    hand: Slot | None = None
    aside: bool = False

    @property
    def digest(self) -> str:
        """What its bytes are known by."""
        return self.picture.digest


@dataclass(frozen=True)
class Marking:
    """What the teacher says of a student's two sheets.

    Attributes
    ----------
    strength, next_step : str
        Empty until the teacher took a draft, or wrote one.
    remark : str
    mark : str
        As typed: "7", "B+", "0". Empty is no mark.
    states : two of State
    done : bool
        The teacher went on to the next student.
    """

    strength: str = ""
    next_step: str = ""
    remark: str = ""
    mark: str = ""
    states: tuple[State, State] = ("", "")
    done: bool = False


@dataclass(frozen=True)
class Entry:
    """A student's own words and the teacher's; the pictures are in `ClassSet.brought`."""

    number: int
    worksheet: Worksheet = Worksheet()
    marking: Marking = Marking()


@dataclass(frozen=True)
class ClassSet:
    """The studies of one class.

    Attributes
    ----------
    title : str
        What the class is called: "7b". May be empty.
    class_list : ClassList
    exercise : Study
        Photo, lines, box and mixes: the same for all. It has no sheets of its own.
    brought : tuple of Brought
        In the order they were brought in; no digest twice.
    entries : tuple of Entry
        One a student, in the order of the list.
    """

    title: str
    class_list: ClassList
    exercise: Study
    brought: tuple[Brought, ...] = ()
    entries: tuple[Entry, ...] = ()

    def __post_init__(self) -> None:
        numbers = [student.number for student in self.class_list.students]
        if [entry.number for entry in self.entries] != numbers:
            raise ValueError("a class set has one entry for each student, in their order")
        digests = [each.digest for each in self.brought]
        if len(set(digests)) != len(digests) or "" in digests:
            raise ValueError("a class set holds each picture once, with its digest")

    @property
    def students(self) -> tuple[Student, ...]:
        """Who is in the class, in the list's order."""
        return self.class_list.students

    def entry(self, number: int) -> Entry:
        """The entry of a student.

        Raises
        ------
        KeyError
            No student has this number.
        """
        for entry in self.entries:
            if entry.number == number:
                return entry
        raise KeyError(number)

    def picture(self, digest: str) -> Brought:
        """The picture with this digest.

        Raises
        ------
        KeyError
            It was not brought in.
        """
        for each in self.brought:
            if each.digest == digest:
                return each
        raise KeyError(digest)


def new_class_set(title: str, class_list: ClassList, exercise: Study) -> ClassSet:
    """A class set without pictures."""
    entries = tuple(Entry(student.number) for student in class_list.students)
    return ClassSet(" ".join(title.split()), class_list, exercise, (), entries)

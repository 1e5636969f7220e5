"""What a printed code says: whose, and which sheet or worksheet page it is on.

The text is `GW`, the class list's tag, the student's number and a kind: a number alone, so a
ticket that is found tells nobody anything.
"""

from __future__ import annotations

import re
import secrets
from dataclasses import dataclass
from typing import Literal

What = Literal["sheet", "page"]

TAG_LETTERS = "23456789ABCDEFGHJKLMNPQRSTUVWXYZ"
"""Without 0, O, 1 and I, which are taken for each other when read aloud."""

MOST_STUDENTS = 99

SHEET_KINDS = "12"
PAGE_KINDS = ("ABCD", "EFGH")
"""The four corners of the worksheet's page 1 and page 2: top left, top right, bottom right,
bottom left."""

_TEXT = re.compile(
    rf"GW([{TAG_LETTERS}]{{4}})(\d\d)([{SHEET_KINDS}{''.join(PAGE_KINDS)}])", re.ASCII
)


@dataclass(frozen=True, order=True)
class Slot:
    """One of the four places of a student.

    Attributes
    ----------
    number : int
        The student's, 1..99.
    index : int
        0 for the first sheet, 1 for the second.
    what : "sheet" or "page"
        The painting, or the worksheet's page about it.
    """

    number: int
    index: int
    what: What = "sheet"

    def __post_init__(self) -> None:
        if self.index not in (0, 1) or not 1 <= self.number <= MOST_STUDENTS:
            raise ValueError(f"no such place: {self.number}/{self.index + 1}")


@dataclass(frozen=True)
class Ticket:
    """A code as it was read.

    Attributes
    ----------
    tag : str
        Of the class list it was printed for.
    number : int
        The student's.
    kind : str
        "1", "2" for a sheet; "A".."D", "E".."H" for a corner of the worksheet's page 1, 2.
    """

    tag: str
    number: int
    kind: str

    @property
    def slot(self) -> Slot:
        """The place it names."""
        if self.kind in SHEET_KINDS:
            return Slot(self.number, SHEET_KINDS.index(self.kind), "sheet")
        return Slot(self.number, 0 if self.kind in PAGE_KINDS[0] else 1, "page")


def new_tag() -> str:
    """A tag no other class list is likely to have: one of a million."""
    return "".join(secrets.choice(TAG_LETTERS) for _ in range(4))


def ticket_text(ticket: Ticket) -> str:
    """What is printed.

    >>> ticket_text(Ticket("7K3Q", 14, "1"))
    'GW7K3Q141'
    """
    text = f"GW{ticket.tag}{ticket.number:02d}{ticket.kind}"
    if ticket_of(text) != ticket:
        raise ValueError(f"not a ticket: {ticket}")
    return text


def ticket_of(text: str) -> Ticket | None:
    """The ticket a code's text means; None for a code of anything else.

    >>> ticket_of("GW7K3Q14A").slot
    Slot(number=14, index=0, what='page')
    >>> ticket_of("https://example.org") is None
    True
    """
    found = _TEXT.fullmatch(text)
    if found is None or int(found[2]) == 0:
        return None
    return Ticket(found[1], int(found[2]), found[3])

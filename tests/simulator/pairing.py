"""Evenings of pictures with what goes wrong in them, for the rules of `core.class_set.placing`.

Thirty students, two sheets each with a worksheet page; some missing, taken twice, unread,
forgotten, or taken in the wrong order.
"""

from __future__ import annotations

import random
from dataclasses import dataclass

from core.bands.lines import Bands
from core.class_set.model import Brought, ClassSet, new_class_set
from core.class_set.placing import place_all
from core.class_set.students import ClassList, Student
from core.class_set.ticket import Slot, Ticket
from core.pictures import Picture
from core.study import study_of

TAG = "7K3Q"
STUDENTS = 30


@dataclass(frozen=True)
class Tally:
    """Pictures of an evening: placed rightly, asked about, placed wrongly in silence."""

    pictures: int = 0
    placed: int = 0
    asked: int = 0
    proposed: int = 0
    wrong: int = 0

    def __add__(self, other: Tally) -> Tally:
        return Tally(
            self.pictures + other.pictures,
            self.placed + other.placed,
            self.asked + other.asked,
            self.proposed + other.proposed,
            self.wrong + other.wrong,
        )


def evening_set(
    seed: int,
    tickets: bool,
    *,
    ordered: bool = True,
    missing: float = 0.03,
    twice: float = 0.03,
    unread: float = 0.02,
    forgotten: float = 0.02,
    swapped: float = 0.01,
) -> tuple[ClassSet, dict[str, Slot]]:
    """A class set with an evening's pictures, and the true place of each by its digest."""
    rng = random.Random(f"evening {seed} {tickets}")
    brought: list[Brought] = []
    truth: dict[str, Slot] = {}

    def take(slot: Slot, coded: bool) -> None:
        number = len(brought)
        digest = f"{seed:08x}{number:056x}"
        kind = "12"[slot.index] if slot.what == "sheet" else "AE"[slot.index]
        read = coded and rng.random() > unread
        found = (Ticket(TAG, slot.number, kind),) if read else ()
        # An unread page is told from a painting by its looks.
        looks = slot.what
        order = (0, number) if ordered else None
        brought.append(Brought(Picture(f"IMG_{number}.jpg", digest), order, found, looks))
        truth[digest] = slot

    for number in range(1, STUDENTS + 1):
        for index in (0, 1):
            if rng.random() < missing:
                continue
            steps = ["page", "sheet"]
            if rng.random() < forgotten:
                steps.remove(rng.choice(steps))
            if rng.random() < swapped:
                steps.reverse()
            for what in steps:
                slot = Slot(number, index, "page" if what == "page" else "sheet")
                coded = what == "page" or tickets
                take(slot, coded)
                if rng.random() < twice:
                    take(slot, coded)
    if not ordered:
        rng.shuffle(brought)
    students = tuple(Student(k, f"{k:02d}") for k in range(1, STUDENTS + 1))
    exercise = study_of(Picture("sky.png", "0" * 64), Bands(1.0, (0.5,)))
    empty = new_class_set("7b", ClassList(TAG, students), exercise)
    class_set = ClassSet(
        empty.title, empty.class_list, empty.exercise, tuple(brought), empty.entries
    )
    return class_set, truth


def outcome_of(class_set: ClassSet, truth: dict[str, Slot]) -> Tally:
    """What the rules made of it."""
    placement = place_all(class_set)
    right = sum(truth[p.digest] == p.slot for p in placement.places.values())
    proposed = sum(a.proposal == truth[a.digest] for a in placement.asked)
    return Tally(
        len(class_set.brought),
        right,
        len(placement.asked),
        proposed,
        len(placement.places) - right,
    )

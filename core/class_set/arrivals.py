"""What bringing in added, apart from what the teacher did meanwhile.

Both change the class set at the same time: pictures arrive while marks are typed, and typing may
be undone. So what arrived is kept as a value of its own and put into any state of the class set.
"""

from __future__ import annotations

from dataclasses import dataclass, replace

from core.class_set.edits import with_worksheet
from core.class_set.model import Brought, ClassSet
from core.worksheet.worksheet import Worksheet


@dataclass(frozen=True)
class Arrival:
    """The difference of two class sets that bringing in makes.

    Attributes
    ----------
    pictures : tuple of Brought
        New ones, and those of which more is known now, as they are now.
    was : tuple of (Brought or None)
        What was known of each before; None where it is new.
    worksheets : tuple of (int, Worksheet, Worksheet)
        A student's number, with the worksheet before and after.
    """

    pictures: tuple[Brought, ...] = ()
    was: tuple[Brought | None, ...] = ()
    worksheets: tuple[tuple[int, Worksheet, Worksheet], ...] = ()


def arrival_of(before: ClassSet, after: ClassSet) -> Arrival:
    """What is in `after` and was not in `before`: pictures and worksheets alone are looked at."""
    known = {each.digest: each for each in before.brought}
    changed = [each for each in after.brought if known.get(each.digest) != each]
    worksheets = [
        (new.number, old.worksheet, new.worksheet)
        for old, new in zip(before.entries, after.entries, strict=True)
        if old.worksheet != new.worksheet
    ]
    was = tuple(known.get(each.digest) for each in changed)
    return Arrival(tuple(changed), was, tuple(worksheets))


def with_arrival(class_set: ClassSet, arrival: Arrival) -> ClassSet:
    """The class set with what arrived; what was changed by hand since stays as it is."""
    wanted = {each.digest: each for each in arrival.pictures}
    before = {
        each.digest: old for each, old in zip(arrival.pictures, arrival.was, strict=True) if old
    }
    brought = [
        wanted[each.digest] if before.get(each.digest) == each else each
        for each in class_set.brought
    ]
    there = {each.digest for each in brought}
    brought += [each for each in arrival.pictures if each.digest not in there]
    if tuple(brought) != class_set.brought:
        class_set = replace(class_set, brought=tuple(brought))
    for number, old, new in arrival.worksheets:
        if class_set.entry(number).worksheet == old:
            class_set = with_worksheet(class_set, number, new)
    return class_set

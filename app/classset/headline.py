"""How the class stands, in a few words."""

from __future__ import annotations

from core.class_set.model import ClassSet
from core.class_set.questions import Sorted
from core.class_set.standing import state_of
from core.class_set.ticket import Slot
from core.i18n import translate


def students_in(class_set: ClassSet, found: Sorted) -> str:
    """How many students have something in."""
    there = sum(
        any(found.placement.digest_at(Slot(each.number, index)) for index in (0, 1))
        for each in class_set.students
    )
    text = translate("class set page", "{n} of {all} students in")
    return text.format(n=there, all=len(class_set.students))


def pictures_placed(class_set: ClassSet, found: Sorted) -> str:
    """How many pictures have their place."""
    of = sum(not each.aside for each in class_set.brought)
    text = translate("class set page", "{n} of {all} pictures have found their place")
    return text.format(n=of - len(found.placement.asked), all=of)


def what_is_not(class_set: ClassSet, found: Sorted) -> str:
    """What is missing, late or excused; empty where nothing is."""
    counts = {"missing": 0, "late": 0, "excused": 0}
    excused = 0
    for each in class_set.students:
        states = [state_of(class_set, found.placement, each.number, index) for index in (0, 1)]
        if states == ["excused", "excused"]:
            excused += 1
            continue
        for state in states:
            if state in counts:
                counts[state] += 1
    parts = []
    if counts["missing"]:
        one, more = (
            translate("class set page", "{n} sheet missing"),
            translate("class set page", "{n} sheets missing"),
        )
        parts.append((one if counts["missing"] == 1 else more).format(n=counts["missing"]))
    if counts["late"]:
        one, more = (
            translate("class set page", "{n} sheet late"),
            translate("class set page", "{n} sheets late"),
        )
        parts.append((one if counts["late"] == 1 else more).format(n=counts["late"]))
    if counts["excused"]:
        one, more = (
            translate("class set page", "{n} sheet excused"),
            translate("class set page", "{n} sheets excused"),
        )
        parts.append((one if counts["excused"] == 1 else more).format(n=counts["excused"]))
    if excused:
        one, more = (
            translate("class set page", "{n} student excused"),
            translate("class set page", "{n} students excused"),
        )
        parts.append((one if excused == 1 else more).format(n=excused))
    return ", ".join(parts)


def marked(class_set: ClassSet) -> str:
    """How many are marked."""
    done = sum(entry.marking.done for entry in class_set.entries)
    text = translate("class set page", "{n} of {all} marked")
    return text.format(n=done, all=len(class_set.students))

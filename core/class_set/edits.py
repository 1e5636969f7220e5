"""Edits of a class set: pure functions that return a new one."""

from __future__ import annotations

from dataclasses import replace

from core.class_set.model import STATES, Brought, ClassSet, Entry, Marking, State
from core.class_set.ticket import Slot
from core.errors import ClassSetError
from core.i18n import translate
from core.sheet.options import SheetOptions
from core.study import Study
from core.worksheet.worksheet import Worksheet


def with_title(class_set: ClassSet, title: str) -> ClassSet:
    """What the class is called."""
    return replace(class_set, title=" ".join(title.split()))


def with_exercise(class_set: ClassSet, exercise: Study) -> ClassSet:
    """Another photo, lines or box for all; what was checked before counts no more."""
    return replace(class_set, exercise=exercise)


def with_brought(class_set: ClassSet, brought: Brought) -> ClassSet:
    """One more picture; one that is there already takes over what is now known of it."""
    for number, each in enumerate(class_set.brought):
        if each.digest == brought.digest:
            known = replace(each, order=brought.order or each.order)
            all_of_them = list(class_set.brought)
            all_of_them[number] = known
            return replace(class_set, brought=tuple(all_of_them))
    return replace(class_set, brought=(*class_set.brought, brought))


def without_picture(class_set: ClassSet, digest: str) -> ClassSet:
    """The picture taken out altogether."""
    kept = tuple(each for each in class_set.brought if each.digest != digest)
    return replace(class_set, brought=kept)


def place(class_set: ClassSet, digest: str, slot: Slot) -> ClassSet:
    """Put a picture where the teacher says; another put there by hand loses its place.

    Raises
    ------
    ClassSetError
        No student has that number.
    KeyError
        There is no such picture.
    """
    if class_set.class_list.student(slot.number) is None:
        raise ClassSetError(
            translate("class set", "There is no student {number} in this class.").format(
                number=slot.number
            )
        )
    class_set.picture(digest)
    moved = []
    for each in class_set.brought:
        if each.digest == digest:
            moved.append(replace(each, hand=slot, aside=False))
        elif each.hand == slot:
            moved.append(replace(each, hand=None))
        else:
            moved.append(each)
    return replace(class_set, brought=tuple(moved))


def lay_aside(class_set: ClassSet, digest: str) -> ClassSet:
    """The picture has no place and is not asked about any more; it stays in the folder."""
    return _with_picture(class_set, replace(class_set.picture(digest), hand=None, aside=True))


def let_decide(class_set: ClassSet, digest: str) -> ClassSet:
    """Take back what was said by hand of a picture: its ticket speaks again."""
    return _with_picture(class_set, replace(class_set.picture(digest), hand=None, aside=False))


def with_options(class_set: ClassSet, digest: str, options: SheetOptions) -> ClassSet:
    """How the picture of a sheet is to be looked at."""
    return _with_picture(class_set, replace(class_set.picture(digest), options=options))


def with_marking(class_set: ClassSet, number: int, marking: Marking) -> ClassSet:
    """What the teacher says of a student.

    Raises
    ------
    KeyError
        No student has this number.
    """
    return _with_entry(class_set, replace(class_set.entry(number), marking=marking))


def with_state(class_set: ClassSet, number: int, index: int, state: State) -> ClassSet:
    """The state of sheet `index`, 0 or 1.

    Raises
    ------
    ValueError
        No such state.
    KeyError
        No student has this number.
    """
    if state not in STATES:
        raise ValueError(f"no such state: {state!r}")
    marking = class_set.entry(number).marking
    first, second = marking.states
    states = (state, second) if index == 0 else (first, state)
    return with_marking(class_set, number, replace(marking, states=states))


def with_worksheet(class_set: ClassSet, number: int, worksheet: Worksheet) -> ClassSet:
    """What the student says; the codes and the remark in it are the class set's own."""
    plain = replace(worksheet, student_code="", class_code="", remark="")
    return _with_entry(class_set, replace(class_set.entry(number), worksheet=plain))


def _with_entry(class_set: ClassSet, entry: Entry) -> ClassSet:
    entries = tuple(entry if each.number == entry.number else each for each in class_set.entries)
    return replace(class_set, entries=entries)


def _with_picture(class_set: ClassSet, brought: Brought) -> ClassSet:
    kept = tuple(brought if each.digest == brought.digest else each for each in class_set.brought)
    return replace(class_set, brought=kept)

"""How each student stands: what is in, what is late, missing or excused."""

from __future__ import annotations

from typing import assert_never

from core.class_set.model import ClassSet, State
from core.class_set.placing import Placement
from core.class_set.ticket import Slot
from core.i18n import translate


def state_of(class_set: ClassSet, placement: Placement, number: int, index: int) -> State:
    """The state of a student's sheet: as the teacher said, else "in" once its picture is there.

    Raises
    ------
    KeyError
        No student has this number.
    """
    said = class_set.entry(number).marking.states[index]
    if said:
        return said
    return "in" if placement.digest_at(Slot(number, index)) is not None else ""


def state_word(state: State) -> str:
    """A state in the user's language; "not yet" where nothing is in and nothing was said."""
    match state:
        case "":
            return translate("class set", "not yet")
        case "in":
            return translate("class set", "in time")
        case "late":
            return translate("class set", "late")
        case "missing":
            return translate("class set", "missing")
        case "excused":
            return translate("class set", "excused")
        case _:
            assert_never(state)

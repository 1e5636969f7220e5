"""A place as it is typed: `14 1`, `14/2`, `14 w1`."""

from __future__ import annotations

import re

from core.class_set.students import ClassList
from core.class_set.ticket import Slot
from core.errors import ClassSetError
from core.i18n import translate

_PLACE = re.compile(r"(.+?)\s*[/ ]\s*(w?)([12])", re.IGNORECASE)


def place_typed(text: str, class_list: ClassList) -> Slot | None:
    """The place that is meant; None where the text is no place at all.

    Raises
    ------
    ClassSetError
        No student has the code.
    """
    found = _PLACE.fullmatch(text.strip())
    if found is None:
        return None
    student = class_list.with_code(found[1])
    if student is None:
        raise ClassSetError(
            translate("class set", "There is no student {code} in this class.").format(
                code=found[1]
            )
        )
    return Slot(student.number, int(found[3]) - 1, "page" if found[2] else "sheet")

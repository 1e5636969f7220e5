"""What was read from a row, in words."""

from __future__ import annotations

from typing import assert_never

from core.class_set.score_marks.decide import RowReading
from core.i18n import translate


def reading_word(reading: RowReading) -> str:
    """As it stands beside the row's crop.

    >>> reading_word(RowReading("number", 7))
    'read: 7'
    """
    match reading.kind:
        case "number":
            return translate("class set", "read: {score}").format(score=reading.score)
        case "blank":
            return translate("class set", "nothing marked")
        case "cannot tell":
            return translate("class set", "cannot tell")
        case _:
            assert_never(reading.kind)

"""The words around the field of dots, on paper and on the screen, and where nothing can be said."""

from __future__ import annotations

from collections.abc import Sequence
from typing import assert_never

from core.class_set.hard import LEAST
from core.class_set.spread import Spread
from core.i18n import translate
from core.reading.quality import Quality
from core.worksheet.words import quality_title


def column_title(quality: Quality) -> str:
    """What stands over a column."""
    return translate("cards", "Line below") if quality == "placement" else quality_title(quality)


def ways(quality: Quality) -> tuple[str, str]:
    """What a dot to the left says, and one to the right."""
    match quality:
        case "hue":
            return translate("cards", "anticlockwise"), translate("cards", "clockwise")
        case "value":
            return translate("cards", "darker"), translate("cards", "lighter")
        case "intensity":
            return translate("cards", "duller"), translate("cards", "more intense")
        case "placement":
            return translate("cards", "too high"), translate("cards", "too low")
        case _:
            assert_never(quality)


def field_word(one: Spread) -> str:
    """What the grey field says: how many match, or that all do."""
    return translate("cards", "all") if one.matched == one.judged else str(one.matched)


def field_note() -> str:
    """How the field of dots is read."""
    return translate(
        "cards",
        "Upper line: first sheets; lower line: second sheets. The number in the grey field tells "
        "how many match the photo; each dot beside it is one sheet that does not, further out the "
        "more it differs. What a picture cannot tell is left out. A heavy bar marks what a third "
        "of the sheets or more missed, most of them the same way.",
    )


def cell_sentence(one: Spread, index: int) -> str:
    """A cell without its dots: "Value of band A, first sheets: 10 of 29 match; 19 lighter."."""
    if one.quality == "placement":
        name = translate("class set", "Line below {letter}")
    else:
        name = translate("class set", "{quality} of band {letter}")
    name = name.format(quality=quality_title(one.quality), letter=one.letter)
    which = (
        translate("class set", "first sheets")
        if index == 0
        else translate("class set", "second sheets")
    )
    text = translate("class set", "{name}, {which}: {n} of {all} match").format(
        name=name, which=which, n=one.matched, all=one.judged
    )
    below, above = ways(one.quality)
    for count, way in ((one.below, below), (one.above, above)):
        if count:
            text += translate("class set", "; {n} {way}").format(n=count, way=way)
    return text + "."


def why_silent(first: Sequence[Spread], second: Sequence[Spread]) -> str:
    """Why there is no sentence about the class; asked only where there is none."""
    judged = max((one.judged for one in (*first, *second)), default=0)
    if judged == 0:
        return translate("class set", "No sheet has been checked yet, so nothing can be said.")
    if judged < LEAST:
        return translate(
            "class set",
            "With fewer than {least} sheets to judge there are only counts: one sheet more or "
            "less could turn any sentence round.",
        ).format(least=LEAST)
    return translate(
        "class set",
        "Nothing was missed by a third of the class in the same direction: there is nothing to "
        "teach to all of them.",
    )

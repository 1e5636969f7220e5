"""What stands on cards word for word: headings, captions, and what stands in place of a sheet."""

from __future__ import annotations

from typing import Literal, assert_never

from core.i18n import translate

Label = Literal[
    "photo",
    "ruler",
    "wheel",
    "order",
    "notes",
    "own scores",
    "value scale",
    "to change",
    "change",
    "scores",
    "own",
    "measured",
    "second opinion",
    "remark",
    "no sheet",
    "waits",
    "provisional",
    "unreadable",
    "no change yet",
    "next change",
    "no sky",
    "not sky",
]


def label(key: Label) -> str:
    """The text of a label."""
    match key:
        case "photo":  # above the reference and its column
            return translate("cards", "The photo")
        case "ruler":  # beside the ruler at the foot
            return translate("cards", "100 mm when printed at full size")
        case "wheel":  # how to read the wheel
            return translate("cards", "Round: hue. Out from the middle: intensity.")
        case "order":  # heading of the steps
            return translate("cards", "Order of work")
        case "notes":  # heading of the lines to write on
            return translate("cards", "Notes")
        case "own scores":  # heading above the scales
            return translate("cards", "First: your own scores")
        case "value scale":  # beside the value scale
            return translate(
                "cards", "The value scale: squint, and ask which grey is as light as the band."
            )
        case "to change":  # on a blank second sheet, before a line to write on
            return translate("cards", "What you set out to change:")
        case "change":  # heading of what changed from sheet 1 to sheet 2
            return translate("cards", "The change")
        case "scores":  # heading of the table of scores
            return translate("cards", "Scores, 1 to 10")
        case "own":  # head of the student's own scores
            return translate("cards", "own")
        case "measured":  # head of the measured scores, a second opinion
            return translate("cards", "measured")
        case "second opinion":  # how the two kinds of scores belong together
            return translate(
                "cards", "Own scores come first. Measured ones are a second opinion, never a mark."
            )
        case "remark":  # heading of the teacher's words
            return translate("cards", "Your teacher's remark")
        case "no sheet":  # in place of a sheet that was not added
            return translate("cards", "Not painted yet.")
        case "provisional":  # beside a sheet's title, while its corners are not sure
            return translate("cards", "provisional")
        case "waits":  # in place of what was measured of a sheet whose own scores are missing
            return translate("cards", "What was measured waits for your own scores.")
        case "unreadable":  # in place of what was measured of one not found, or turned
            return translate(
                "cards",
                "Nothing was measured: set this sheet's corners on the Sheets page, or turn it.",
            )
        case "no change yet":  # in place of the change where one of two sheets cannot be judged
            return translate("cards", "The sheets are compared once both can be measured.")
        case "next change":  # in place of the change while there is one sheet only
            return translate("cards", "The second sheet will show what the change did.")
        case "no sky":  # a band without any sky
            return translate("cards", "No sky in this band: move its lines.")
        case "not sky":  # what is below the horizon
            return translate("cards", "not sky")
        case _:
            assert_never(key)

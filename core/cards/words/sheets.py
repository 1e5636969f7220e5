"""What the worksheet and the findings card say of sheets and their scores."""

from __future__ import annotations

from core.i18n import translate


def field_names() -> tuple[str, str, str]:
    """Labels of the worksheet's fields: a code, never a name."""
    return (
        translate("cards", "Code"),
        translate("cards", "Class"),
        translate("cards", "Date"),
    )


def scores_title() -> str:
    """Heading above the scales."""
    return translate("cards", "First: your own scores")


def scores_advice(index: int) -> str:
    """How to score sheet `index`, 0 or 1, in two or three sentences."""
    if index == 0:
        return translate(
            "cards",
            "Score before anything is measured. Put your dry sheet beside the photo, step back, "
            "and look at one thing at a time, band by band. Then mark one number in each row.",
        )
    return translate(
        "cards",
        "Score the second sheet as you did the first, before anything is measured, and without "
        "looking up your earlier scores.",
    )


def value_scale_caption() -> str:
    """Beside the value scale."""
    return translate(
        "cards", "The value scale: squint, and ask which grey is as light as the band."
    )


def reminder_label() -> str:
    """On a blank second sheet, before a line to write on."""
    return translate("cards", "What you set out to change:")


def change_heading() -> str:
    """Heading of what changed from sheet 1 to sheet 2."""
    return translate("cards", "The change")


def scores_heading() -> str:
    """Heading of the table of scores."""
    return translate("cards", "Scores, 1 to 10")


def own_word() -> str:
    """Head of the student's own scores."""
    return translate("cards", "own")


def measured_word() -> str:
    """Head of the measured scores, a second opinion."""
    return translate("cards", "measured")


def scores_note() -> str:
    """How the two kinds of scores belong together."""
    return translate(
        "cards", "Own scores come first. Measured ones are a second opinion, never a mark."
    )


def remark_heading() -> str:
    """Heading of the teacher's words."""
    return translate("cards", "Your teacher's remark")


def no_sheet_text() -> str:
    """In place of a sheet that was not added."""
    return translate("cards", "Not painted yet.")


def waits_text() -> str:
    """In place of what was measured of a sheet whose own scores are missing."""
    return translate("cards", "What was measured waits for your own scores.")


def unreadable_text() -> str:
    """In place of what was measured of a sheet that was not found, or is turned."""
    return translate(
        "cards", "Nothing was measured: set this sheet's corners on the Sheets page, or turn it."
    )


def no_change_text() -> str:
    """In place of the change where one of two sheets cannot be judged."""
    return translate("cards", "The sheets are compared once both can be measured.")


def next_change_text() -> str:
    """In place of the change while there is one sheet only."""
    return translate("cards", "The second sheet will show what the change did.")

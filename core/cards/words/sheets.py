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


def scores_advice(index: int) -> str:
    """How to score sheet `index`, 0 or 1, in two or three sentences."""
    if index == 0:
        return translate(
            "cards",
            "Score before anything is measured. Put your dry sheet beside the photo, step back, "
            "and look at one thing at a time, band by band. Then cross or tick one number in each "
            "row.",
        )
    return translate(
        "cards",
        "Score the second sheet as you did the first, before anything is measured, and without "
        "looking up your earlier scores. Cross or tick one number in each row.",
    )

"""What is said of a study file of which something is gone or cannot be right."""

from __future__ import annotations

from core.errors import StudyFileError
from core.i18n import translate


def wrong(words: str) -> StudyFileError:
    """What is said of a file that is whole, and holds what cannot be right."""
    return StudyFileError(
        translate(
            "study file",
            "This study file holds something that cannot be right ({what}); "
            "open an older copy or a backup of it.",
        ).format(what=words)
    )


def damage_notice(gone: tuple[str, ...]) -> str:
    """What to tell of a study of which not all came through; empty where nothing is gone."""
    if not gone:
        return ""
    return translate(
        "study file",
        "This study file is damaged. Not in it any more: {gone}. The rest is here: save it under "
        "another name, and look for an older copy or a backup.",
    ).format(gone=", ".join(gone))


def photo_words() -> str:
    """The photo, in a list of what is gone."""
    return translate("study file", "the photo")


def lines_words() -> str:
    """The lines of the bands, in a list of what is gone."""
    return translate("study file", "the lines of the bands")


def paints_words() -> str:
    """The paint box, in a list of what is gone."""
    return translate("study file", "the paints")


def mixes_words() -> str:
    """The wishes for the mixes, in a list of what is gone."""
    return translate("study file", "what was asked of the mixes")


def sheets_words() -> str:
    """Both sheets, in a list of what is gone."""
    return translate("study file", "the sheets")


def sheet_words(number: int) -> str:
    """A sheet, 1 or 2, in a list of what is gone."""
    return translate("study file", "sheet {n}").format(n=number)


def scraps_words() -> str:
    """The dried strokes, in a list of what is gone."""
    return translate("study file", "a scrap")


def page_words(number: int) -> str:
    """What was written of a sheet, 1 or 2, in a list of what is gone."""
    return translate("study file", "what was written of sheet {n}").format(n=number)


def hands_words() -> str:
    """The hands counted in class, in a list of what is gone."""
    return translate("study file", "the hands counted in class")


def wheel_words() -> str:
    """The wheel's place, in a list of what is gone."""
    return translate("study file", "the place of the wheel")

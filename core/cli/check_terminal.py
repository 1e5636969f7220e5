"""What the command line says otherwise than the window: which option helps, not which button."""

from __future__ import annotations

from dataclasses import replace

from core.i18n import translate
from core.photo import Photo
from core.sheet.result import SheetCheck

AS_FOUND = "auto"
"""Stands for the corners of a sheet that need not be given."""


def for_terminal(check: SheetCheck, photo: Photo, number: int) -> SheetCheck:
    """The check with texts that name options of `gradewash check`.

    Parameters
    ----------
    photo : Photo
        The sheet's, for corners in pixels.
    number : int
        Of the sheet, from 1.
    """
    texts = {}
    for notice in check.notices:
        text = _text(notice.key, check, photo, number)
        if text is not None:
            texts[notice.text] = text
    return replace(
        check,
        notices=tuple(replace(n, text=texts.get(n.text, n.text)) for n in check.notices),
        findings=tuple(replace(f, text=texts.get(f.text, f.text)) for f in check.findings),
    )


def _text(key: str, check: SheetCheck, photo: Photo, number: int) -> str | None:
    if key == "corners not found":
        return translate(
            "command line",
            "The painted rectangle could not be found. Give its corners in pixels, clockwise from "
            "the top left one: {option}.",
        ).format(option=_options("--corners", "X,Y,X,Y,X,Y,X,Y", AS_FOUND, number))
    if key == "corners unsure":
        return translate(
            "command line",
            "The corners of the painting are not sure. See whether they are where they were "
            "found, and give better ones if not: {option}.",
        ).format(option=_options("--corners", _pixels(check, photo), AS_FOUND, number))
    if key == "turn" and check.better_turn is not None:
        if (check.better_turn - check.turned) % 4 == 2:
            seen = translate("command line", "The sheet seems to be upside down.")
        else:
            seen = translate("command line", "The sheet seems to be on its side.")
        cure = translate("command line", "If it does, check it again with {option}.").format(
            option=_options("--turned", str(check.better_turn), "0", number)
        )
        return f"{seen} {cure}"
    return None


def _options(name: str, value: str, other: str, number: int) -> str:
    """The option as it is typed; an option of sheet 2 comes after one of sheet 1."""
    return " ".join([f"{name} {other}"] * (number - 1) + [f"{name} {value}"])


def _pixels(check: SheetCheck, photo: Photo) -> str:
    return ",".join(f"{x * photo.width:.0f},{y * photo.height:.0f}" for x, y in check.corners)

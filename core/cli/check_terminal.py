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
    if key == "corners not found" and check.washes.kind == "blank":
        return translate(
            "command line",
            "No paint is to be seen in this picture. If there is a painting, give its corners in "
            "pixels, clockwise from the top left one: {option}.",
        ).format(option=_options("--corners", "X,Y,X,Y,X,Y,X,Y", AS_FOUND, number))
    if key == "corners not found":
        return translate(
            "command line",
            "The painted rectangle could not be found. Give its corners in pixels, clockwise from "
            "the top left one: {option}.",
        ).format(option=_options("--corners", "X,Y,X,Y,X,Y,X,Y", AS_FOUND, number))
    if key == "corners unsure":
        return translate(
            "command line",
            "The corners of the painting are not sure, so what is found here is provisional. See "
            "whether they are where they were taken to be, and give better ones if not: {option}.",
        ).format(option=_options("--corners", _pixels(check, photo), AS_FOUND, number))
    scene = _scene_text(key)
    if scene is not None:
        option = _options("--corners", _pixels(check, photo), AS_FOUND, number)
        return scene.format(option=option)
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


def _scene_text(key: str) -> str | None:
    if key == "several":
        return translate(
            "command line",
            "There is more than one sheet in this picture: is it this one? If not, give the "
            "corners of the other: {option}.",
        )
    if key == "whole picture":
        return translate(
            "command line",
            "The painting seems to fill the whole picture, without its paper: is that so? If not, "
            "give its corners: {option}.",
        )
    if key == "paper edge":
        return translate(
            "command line",
            "The paint seems to reach the edge of the paper: is that so? If not, give better "
            "corners: {option}.",
        )
    return None


def _options(name: str, value: str, other: str, number: int) -> str:
    """The option as it is typed; an option of sheet 2 comes after one of sheet 1."""
    return " ".join([f"{name} {other}"] * (number - 1) + [f"{name} {value}"])


def _pixels(check: SheetCheck, photo: Photo) -> str:
    return ",".join(f"{x * photo.width:.0f},{y * photo.height:.0f}" for x, y in check.corners)

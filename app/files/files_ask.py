"""What is asked about files: where to save, what to do with unsaved work, whose version counts.

Every question is one function, so that a test can answer in its place.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QWidget

from app.files.file_dialogs import (
    any_files,
    ask_to_open,
    ask_to_save,
    photos,
    studies,
    studies_and_photos,
)
from app.widgets.ask_line import AskLine
from app.widgets.question import Answer, Question
from core.i18n import translate
from core.study_file.opening import SUFFIX

Act = Callable[[], object]


def ask_open_path(parent: QWidget, folder: Path) -> Path | None:
    """A study or a photo to open; None when the user thinks better of it."""
    title = translate("files", "Open a study or a photo")
    return ask_to_open(
        parent, title, folder, studies_and_photos(), studies(), photos(), any_files()
    )


def ask_save_path(parent: QWidget, suggestion: Path) -> Path | None:
    """Where to save the study; None when the user thinks better of it."""
    return ask_to_save(parent, translate("files", "Save the study"), suggestion, studies())


def file_name_for(title: str) -> str:
    """A file's name made of a title: what no disk minds."""
    name = re.sub(r"[^\w .,()+-]", " ", title).strip(" .")
    name = " ".join(name.split())[:80].rstrip(" .")
    return (name or translate("files", "study")) + SUFFIX


def ask_unsaved(parent: QWidget, title: str, save: Act, discard: Act) -> None:
    """Before unsaved work would be lost."""
    _ask(
        parent,
        translate("files", "Save your changes first?"),
        translate("files", "{title} has changes that are not saved yet.").format(title=title),
        Answer(translate("files", "&Save"), save),
        Answer(translate("files", "&Don't save"), discard, loses=True),
        Answer(translate("files", "Cancel")),
    )


def ask_changed_on_disk(parent: QWidget, name: str, overwrite: Act, elsewhere: Act) -> None:
    """Before somebody else's version would be lost."""
    _ask(
        parent,
        translate("files", "This file has changed since you opened it."),
        translate(
            "files",
            "Somebody else, or another program, has saved {name}. Save yours under another name "
            "to keep both versions, or put yours in its place.",
        ).format(name=name),
        Answer(translate("files", "Save &as..."), elsewhere),
        Answer(translate("files", "&Put mine in its place"), overwrite),
        Answer(translate("files", "Cancel")),
    )


def ask_open_elsewhere(parent: QWidget, name: str, read_only: Act, copy: Act) -> None:
    """When another window has the study open."""
    _ask(
        parent,
        translate("files", "This study is open in another window."),
        translate(
            "files",
            "{name} can be open for changes only once. Look at it here without saving, or go on "
            "with a copy that you save under its own name.",
        ).format(name=name),
        Answer(translate("files", "Open &read-only"), read_only),
        Answer(translate("files", "Open a &copy"), copy),
        Answer(translate("files", "Cancel")),
    )


def ask_which(parent: QWidget, count: int, name: str, first: Act, all_of_them: Act | None) -> None:
    """When several files were brought, and one can be open."""
    line = translate("files", "You brought {count} files.").format(count=count)
    if all_of_them is None:
        text = translate(
            "files",
            "One study or photo is open at a time. The sheets of a whole class go into a class "
            "set.",
        )
        more: tuple[Answer, ...] = ()
    else:
        text = translate(
            "files",
            "One study or photo is open at a time. If these are the sheets of a class, put them "
            "into a class set.",
        )
        more = (Answer(translate("files", "Put all into a &class set"), all_of_them),)
    only = translate("files", "&Open {name} alone").format(name=name.replace("&", "&&"))
    _ask(parent, line, text, Answer(only, first), *more, Answer(translate("files", "Cancel")))


def _ask(parent: QWidget, line: str, sentence: str, *answers: Answer) -> None:
    Question(parent, line, sentence, answers).open()


def ask_title(parent: QWidget, title: str, rename: Callable[[str], object]) -> None:
    """What the study is called, on the screen and on its cards."""
    label, button = translate("files", "Title of the study"), translate("files", "Rename")
    AskLine(parent, label, title, button, rename).open()

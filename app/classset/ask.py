"""What is asked about class sets; each question is one function, so a test can answer instead."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtWidgets import QFileDialog, QWidget

from app.files.brought import as_on_disk
from app.files.file_dialogs import (
    FileKind,
    ask_to_open,
    ask_to_save,
    pdfs,
    photos,
    studies,
)
from app.widgets.question import Answer, Question
from core.i18n import translate

Act = Callable[[], object]


def ask_pictures(parent: QWidget, folder: Path) -> tuple[Path, ...]:
    """Pictures and studies to bring in; none when the user thinks better of it."""
    kinds = FileKind(
        translate("class set page", "Pictures and studies"),
        f"{photos().patterns} {studies().patterns}",
    )
    everything = FileKind(translate("files", "All files"), "*")
    paths, _ = QFileDialog.getOpenFileNames(
        parent,
        translate("class set page", "Bring in pictures"),
        str(folder),
        f"{kinds.line};;{everything.line}",
    )
    return tuple(as_on_disk(Path(path)) for path in paths)


def ask_pdf(parent: QWidget, suggestion: Path) -> Path | None:
    """Where a print goes."""
    return ask_to_save(parent, translate("class set page", "Save as PDF"), suggestion, pdfs())


def ask_table(parent: QWidget, suggestion: Path) -> Path | None:
    """Where a mark list goes."""
    kind = FileKind(translate("class set page", "Tables"), f"*{suggestion.suffix}")
    return ask_to_save(parent, translate("class set page", "Save the mark list"), suggestion, kind)


def ask_key(parent: QWidget, folder: Path) -> Path | None:
    """The teacher's own key from codes to the school's ids."""
    kind = FileKind(translate("class set page", "Tables"), "*.csv *.txt")
    return ask_to_open(parent, translate("class set page", "Your key"), folder, kind)


def ask_with_key(parent: QWidget, choose: Act, without: Act) -> None:
    """Whether the school's ids go into the table."""
    Question(
        parent,
        translate("class set page", "Add your school's own numbers?"),
        translate(
            "class set page",
            "A gradebook knows your students by a number or a login. If you have a file with a "
            "code and that number on each line, it is read for this table and not kept.",
        ),
        (
            Answer(translate("class set page", "&Choose the file..."), choose),
            Answer(translate("class set page", "&Codes only"), without),
            Answer(translate("question", "Cancel")),
        ),
    ).open()


def ask_tidy(parent: QWidget, sheets: int, tidy: Act) -> None:
    """Before the photos around the paintings go."""
    Question(
        parent,
        translate("class set page", "Keep only the paintings?"),
        translate(
            "class set page",
            "Of {n} sheets only the straightened painting is kept: hands, desks and rooms around "
            "them go, and so do pictures laid aside. This cannot be undone.",
        ).format(n=sheets),
        (
            Answer(translate("class set page", "&Tidy"), tidy),
            Answer(translate("question", "Cancel")),
        ),
    ).open()


def ask_delete(parent: QWidget, name: str, pictures: int, checks: int, delete: Act) -> None:
    """Before a class set goes."""
    Question(
        parent,
        translate("class set page", "Delete this class set?"),
        translate(
            "class set page",
            "{pictures} pictures, {checks} files of checks, and all marks and remarks in {name} "
            "go. Other files in that folder stay. Backups and the phone keep what they have. This "
            "cannot be undone.",
        ).format(name=name, pictures=pictures, checks=checks),
        (
            Answer(translate("class set page", "&Delete for good"), delete),
            Answer(translate("question", "Cancel")),
        ),
    ).open()


def ask_replace(parent: QWidget, name: str, replace: Act) -> None:
    """Before studies that are there already go."""
    Question(
        parent,
        translate("class set page", "Replace the studies in this folder?"),
        translate("class set page", "{name} is there already, and perhaps others.").format(
            name=name
        ),
        (
            Answer(translate("class set page", "&Replace them"), replace),
            Answer(translate("question", "Cancel")),
        ),
    ).open()

"""The system's dialogs for a file's place, and the kinds of files they show.

A kind is only what the dialog lists first: files are told by their content, so any may be tried.
"""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtWidgets import QFileDialog, QWidget

from app.files.brought import as_on_disk
from core.i18n import translate
from core.study_file.opening import SUFFIX


@dataclass(frozen=True)
class FileKind:
    """A name in the user's language, and the file names it stands for: "*.png *.jpg"."""

    name: str
    patterns: str

    @property
    def line(self) -> str:
        """As Qt wants it."""
        return f"{self.name} ({self.patterns})"


def studies() -> FileKind:
    """Studies of ours."""
    return FileKind(translate("files", "Studies"), f"*{SUFFIX}")


def photos() -> FileKind:
    """Pictures that `core.photo` opens."""
    return FileKind(
        translate("files", "Photos"),
        "*.jpg *.jpeg *.png *.webp *.tif *.tiff *.heic *.heif *.avif *.gif *.bmp *.mpo",
    )


def studies_and_photos() -> FileKind:
    """Either."""
    name = translate("files", "Studies and photos")
    return FileKind(name, f"{studies().patterns} {photos().patterns}")


def boxes() -> FileKind:
    """Boxes of paints."""
    return FileKind(translate("files", "Box files"), "*.json")


def pdfs() -> FileKind:
    """Cards."""
    return FileKind(translate("files", "PDF files"), "*.pdf")


def any_files() -> FileKind:
    """Whatever there is."""
    return FileKind(translate("files", "All files"), "*")


def ask_to_open(parent: QWidget, title: str, folder: Path, *kinds: FileKind) -> Path | None:
    """A file to open; None when the user thinks better of it."""
    lines = ";;".join(kind.line for kind in kinds)
    path, _ = QFileDialog.getOpenFileName(parent, title, str(folder), lines)
    return as_on_disk(Path(path)) if path else None


def ask_for_folder(parent: QWidget, title: str, folder: Path) -> Path | None:
    """A folder; None when the user thinks better of it."""
    path = QFileDialog.getExistingDirectory(parent, title, str(folder))
    return as_on_disk(Path(path)) if path else None


def ask_to_save(parent: QWidget, title: str, suggestion: Path, kind: FileKind) -> Path | None:
    """Where to save; the dialog asks before it gives a file that is there already."""
    dialog = QFileDialog(parent, title)
    dialog.setAcceptMode(QFileDialog.AcceptMode.AcceptSave)
    dialog.setDefaultSuffix(kind.patterns.removeprefix("*."))
    dialog.setNameFilter(kind.line)
    dialog.setDirectory(str(suggestion.parent))
    dialog.selectFile(suggestion.name)
    chosen = dialog.selectedFiles() if dialog.exec() else []
    dialog.deleteLater()
    return Path(chosen[0]) if chosen else None

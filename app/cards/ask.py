"""What is asked of the system about a card: where to save it, and which printer to use.

Every question is one function, so that a test can answer in its place.
"""

from __future__ import annotations

from pathlib import Path

from PySide6.QtPrintSupport import QPrintDialog, QPrinter, QPrinterInfo
from PySide6.QtWidgets import QWidget

from app.files.file_dialogs import ask_to_save, pdfs
from core.i18n import translate


def ask_pdf_path(parent: QWidget, suggestion: Path) -> Path | None:
    """Where to save a PDF; None when the user thinks better of it."""
    return ask_to_save(parent, translate("cards", "Save the card"), suggestion, pdfs())


def has_printer() -> bool:
    """Whether the system knows any printer."""
    return bool(QPrinterInfo.availablePrinterNames())


def ask_printer(parent: QWidget, printer: QPrinter) -> bool:
    """The system's own dialog; False when the user thinks better of it."""
    dialog = QPrintDialog(printer, parent)
    accepted = bool(dialog.exec())
    dialog.deleteLater()
    return accepted

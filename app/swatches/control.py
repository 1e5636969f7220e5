"""Where the box's menu asks for a swatch card, or for one to be read."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtWidgets import QWidget

from app.cards.paper import PAPERS, Paper
from app.files.file_dialogs import ask_to_open, photos
from app.services.notices import Notices
from app.state.document import Document
from core import mixing
from core.i18n import translate
from core.paint.box.box import Box


class SwatchControl:
    """Opens the dialogs, and puts what comes of them into the study's box."""

    def __init__(self, page: QWidget, document: Document, notices: Notices) -> None:
        self._page, self._document, self._notices = page, document, notices
        self._paper: Paper = PAPERS["a4"]

    def print(self) -> QWidget:
        """Ask which paints go on a card."""
        # deferred: start-up time - most starts print nothing
        from app.swatches.print_dialog import PrintCardDialog

        box = self._document.study.box
        dialog = PrintCardDialog(self._page, box, self._paper, self._keep_printed)
        dialog.open()
        return dialog

    def read(self) -> QWidget | None:
        """Ask for a picture, and read the card on it."""
        title = translate("swatches", "A picture of the painted card")
        path = ask_to_open(self._page, title, Path.home(), photos())
        return None if path is None else self.read_from(path)

    def read_from(self, path: Path) -> QWidget:
        """Read the card on a picture."""
        # deferred: start-up time
        from app.swatches.read_dialog import ReadCardDialog

        dialog = ReadCardDialog(self._page, self._document.study.box, path, self._take)
        dialog.open()
        return dialog

    def _keep_printed(self, box: Box, name: str) -> None:
        self._change(translate("undo", "print a swatch card"), box)
        if name:
            text = translate("swatches", "Wrote {name}. The box remembers this card: keep the box.")
            self._notices.note(text.format(name=name), "swatches")

    def _take(self, box: Box) -> None:
        self._change(translate("undo", "put paints into the box"), box)
        self._notices.note(
            translate(
                "swatches", "The paints of the card are in the box: keep the box under a name."
            ),
            "swatches",
        )

    def _change(self, text: str, box: Box) -> None:
        with self._notices.reporting():
            self._document.change(text, mixing.choose_box(self._document.study, box))

"""The box used last: a new study begins with it, so that nobody ticks the class's paints twice."""

from __future__ import annotations

from dataclasses import replace
from pathlib import Path

from PySide6.QtCore import QObject

from app.services.notices import Notices
from app.state.boxes import SavedBoxes
from app.state.document import Document
from app.state.settings import read_json, write_json
from core.errors import BoxError
from core.i18n import translate
from core.paint.box.box import DEFAULT_BOX, Box
from core.paint.box.box_file import box_from_json, box_to_json
from core.paint.box.names import box_name
from core.study import Study

VERSION = 1


class LastBox(QObject):
    """Follows the edits of the study's box, in a small file beside the settings.

    A study that is only opened brings its own box and changes nothing here.
    """

    def __init__(
        self, document: Document, saved: SavedBoxes, notices: Notices, folder: Path, parent: QObject
    ) -> None:
        """`folder` need not exist yet."""
        super().__init__(parent)
        self._document = document
        self._saved = saved
        self._notices = notices
        self._path = folder / "last_box.json"
        self._seen = document.study.box
        document.begun.connect(self._on_begun)
        document.stack.indexChanged.connect(lambda index: self._on_edit())

    def empty_study(self) -> Study:
        """An empty study with the box used last; says so where that cannot be had any more."""
        try:
            box = self._box()
        except BoxError as error:
            self._path.unlink(missing_ok=True)  # said once
            self._notices.note(str(error))
            return Study()
        return Study() if box is None else replace(Study(), box=box)

    def _box(self) -> Box | None:
        if not self._path.exists():
            return None
        found = read_json(self._path)
        try:
            box = box_from_json(found.get("box"))
        except BoxError as error:
            raise BoxError(
                translate(
                    "box", "The box used last cannot be read: this study begins with the {box}."
                ).format(box=box_name(DEFAULT_BOX))
            ) from error
        if found.get("kept") is True and not self._is_kept(box):
            raise BoxError(
                translate(
                    "box",
                    "The box {name}, used last, is not kept any more: this study begins with the "
                    "{box}.",
                ).format(name=box.name, box=box_name(DEFAULT_BOX))
            )
        return box

    def _is_kept(self, box: Box) -> bool:
        return any(other.name == box.name for other in self._saved.boxes())

    def _on_begun(self) -> None:
        self._seen = self._document.study.box

    def _on_edit(self) -> None:
        box = self._document.study.box
        if box == self._seen:
            return
        self._seen = box
        kept = self._is_kept(box)
        write_json({"version": VERSION, "kept": kept, "box": box_to_json(box)}, self._path)

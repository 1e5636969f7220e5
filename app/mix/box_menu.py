"""The box's menu: keep it, save and open box files, add a paint of one's own."""

from __future__ import annotations

from collections.abc import Callable
from pathlib import Path

from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QMenu, QWidget

from app.files.file_dialogs import ask_to_open, ask_to_save, boxes
from app.mix.edits import MixEdits
from app.mix.left_out import add_left_out
from app.mix.own_paint import OwnPaintDialog
from app.services.notices import Notices
from app.state.boxes import SavedBoxes
from app.state.document import Document
from app.swatches.control import SwatchControl
from app.widgets.ask_line import AskLine
from core import mixing
from core.i18n import translate
from core.paint.box.box import GENERIC_BOXES
from core.paint.box.box_file import open_box, save_box
from core.paint.box.names import box_name
from core.paint.box.own_paint import own_paint


class BoxMenu:
    """What can be done with the box as a whole; made once by the page."""

    def __init__(
        self,
        page: QWidget,
        document: Document,
        notices: Notices,
        saved: SavedBoxes,
        shelf_changed: Callable[[], None],
        edits: MixEdits,
    ) -> None:
        self._page = page
        self._document = document
        self._notices = notices
        self._saved = saved
        self._shelf_changed = shelf_changed
        self._edits = edits
        self.swatches = SwatchControl(page, document, notices)

    def open(self, place: QPoint) -> QMenu:
        """Show the menu at a place on the screen."""
        menu = QMenu(self._page)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        own = translate("mix page", "Add a paint of your own...")
        menu.addAction(own).triggered.connect(self.add_paint)
        add_left_out(menu, self._document.study, self._edits)
        menu.addSeparator()
        card = translate("mix page", "Print a swatch card...")
        menu.addAction(card).triggered.connect(lambda: self.swatches.print())
        read = translate("mix page", "Read a swatch card...")
        menu.addAction(read).triggered.connect(lambda: self.swatches.read())
        menu.addSeparator()
        keep = translate("mix page", "Keep this box as...")
        menu.addAction(keep).triggered.connect(self.keep)
        save = translate("mix page", "Save the box to a file...")
        menu.addAction(save).triggered.connect(self.save)
        load = translate("mix page", "Open a box file...")
        menu.addAction(load).triggered.connect(self.load)
        name = self._document.study.box.name
        if any(box.name == name for box in self._saved.boxes()):
            menu.addSeparator()
            text = translate("mix page", "Forget the box {name}").format(name=name)
            menu.addAction(text).triggered.connect(lambda: self.forget(name))
        menu.popup(place)
        return menu

    def keep(self) -> None:
        """Ask for a name and keep the box under it."""
        label = translate("mix page", "What do you call it? For example: Our cupboard")
        box = self._document.study.box
        generic = {other.name for other in GENERIC_BOXES.values()}
        text = "" if box.name in generic else box.name
        keep = translate("mix page", "Keep this box")
        AskLine(self._page, label, text, keep, self.keep_as).open()

    def keep_as(self, name: str) -> None:
        """Keep the box under a name."""
        with self._notices.reporting():
            named = mixing.name_box(self._document.study, name)
            self._saved.save(named.box)
            self._document.change(translate("undo", "name the box"), named)
            self._shelf_changed()

    def save(self) -> None:
        """Ask for a place and write the box there."""
        box = self._document.study.box
        title = translate("mix page", "Save the box to a file")
        suggestion = Path.home() / f"{box_name(box)}.box.json"
        path = ask_to_save(self._page, title, suggestion, boxes())
        if path is not None:
            with self._notices.reporting():
                save_box(box, path)

    def load(self) -> None:
        """Ask for a file and take its box."""
        title = translate("mix page", "Open a box file")
        path = ask_to_open(self._page, title, Path.home(), boxes())
        if path is not None:
            self.load_from(path)

    def load_from(self, path: Path) -> None:
        """Take the box of a file."""
        with self._notices.reporting():
            after = mixing.choose_box(self._document.study, open_box(path))
            self._document.change(translate("undo", "open box"), after)

    def forget(self, name: str) -> None:
        """Take a kept box off the list; the study keeps its paints."""
        self._saved.remove(name)
        self._shelf_changed()

    def add_paint(self) -> None:
        """Ask for a paint's name and what it behaves like."""
        OwnPaintDialog(self.put, self._page).open()

    def put(self, name: str, like: str) -> None:
        """Put a paint of one's own into the box."""
        with self._notices.reporting():
            after = mixing.put_paint(self._document.study, own_paint(name, like))
            self._document.change(translate("undo", "add paint"), after)

"""What every page is, and what it works with."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING, Literal

from PySide6.QtCore import QMimeData, QSize, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QWidget

from app.cards.control import CardControl
from app.files.opening import Opener
from app.files.study_files import StudyFiles
from app.services.checker import Checker
from app.services.notices import Notices
from app.services.planner import Planner
from app.services.reader import Reader
from app.state.boxes import SavedBoxes
from app.state.document import Document
from app.state.settings import Preferences
from app.state.speech import Speech
from core.pictures import PictureStore

if TYPE_CHECKING:
    from app.services.class_set.desk import ClassDesk

Menu = Literal["study", "edit", "view", "help"]


@dataclass(frozen=True)
class Workspace:
    """What the pages share; made once by the window.

    Attributes
    ----------
    pictures : PictureStore
        The bytes of the photo and the sheets, by the digest the study names them with.
    files : StudyFiles
        Where the study is on disk.
    boxes : SavedBoxes
        The teacher's own paint boxes.
    cards : CardControl
        Where a card is asked for: `cards.open("worksheet")`.
    make_desk : callable
        Gives the `desk`, made when it is first wanted: most starts open no class set.
    show_student : callable
        `show_student(place, key)` shows a student of the class set, counted from 0 in the list's
        order, on the page "sheets" or "worksheet".
    """

    document: Document
    reader: Reader
    preferences: Preferences
    notices: Notices
    opener: Opener
    pictures: PictureStore
    files: StudyFiles
    planner: Planner
    boxes: SavedBoxes
    checker: Checker
    speech: Speech
    cards: CardControl
    make_desk: Callable[[], ClassDesk]
    show_student: Callable[[int, str], None]

    @property
    def desk(self) -> ClassDesk:
        """The class set that is open, if one is."""
        return self.make_desk()


class Page(QWidget):
    """One page of the window. Pages know the workspace and never each other.

    Signals
    -------
    page_wanted(key: str)
        The way goes on on another page.
    """

    page_wanted = Signal(str)

    def actions_for(self, menu: Menu) -> tuple[QAction, ...]:
        """Actions this page puts into a menu; they are only there while it is shown."""
        return ()

    def least_size(self) -> QSize:
        """What the page needs at the present text size; a smaller window scrolls it."""
        return QSize(0, 0)

    def heightForWidth(self, width: int) -> int:
        # A page fills the height it is given; the wish of its layout would make it scroll.
        return self.minimumSizeHint().height()

    def take_focus(self) -> None:
        """The page was brought up, not chosen by its tab: give the keyboard to what is wanted."""

    def show_to_class(self) -> bool:
        """Show the class what this page has for it (F5); False leaves it to the window."""
        return False

    def take_card(self, path: Path) -> None:
        """Read a picture of a swatch card, on the page that does."""

    def take(self, mime: QMimeData) -> bool:
        """Use what is pasted while this page is shown; False leaves it to the window."""
        return False

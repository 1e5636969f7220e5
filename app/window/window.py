"""The main window: it puts the parts together and owns what belongs to the whole."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import cached_property, partial
from importlib import import_module
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QByteArray, QMimeData, QSize
from PySide6.QtGui import (
    QCloseEvent,
    QDragEnterEvent,
    QDropEvent,
    QGuiApplication,
    QKeySequence,
    QResizeEvent,
    QUndoGroup,
)
from PySide6.QtWidgets import QMainWindow, QStackedWidget, QVBoxLayout, QWidget

from app.cards.control import CardControl
from app.classview.room import ClassRoom
from app.errors import install_hook
from app.files.files_ask import ask_title
from app.files.last_box import LastBox
from app.files.opening import Opener, can_open
from app.files.recent import Recent
from app.files.study_files import StudyFiles
from app.read.page import ReadPage
from app.services.checker import Checker
from app.services.notices import NoticeDisplay, Notices
from app.services.planner import Planner
from app.services.reader import Reader
from app.state.boxes import SavedBoxes
from app.state.document import Document
from app.state.settings import Preferences, config_folder, data_folder, read_json, write_json
from app.state.speech import Speech
from app.state.tasks import cancel_all, wait_for_tasks
from app.widgets.focus import FocusRing
from app.widgets.notice import NoticeBar
from app.window.appearance import Appearance
from app.window.first_run import FirstRun
from app.window.header import Header
from app.window.page_scroll import PageScroll
from app.window.pages import PAGES
from app.window.preferences import PreferencesControl
from app.window.warmup import Warmup
from app.window.window_menus import Commands, WindowMenus
from app.workspace import Page, Workspace
from core.file_sentences import shown_name
from core.i18n import translate
from core.pictures import PictureStore
from core.study import with_title

if TYPE_CHECKING:
    from app.classset.actions import ClassActions
    from app.services.class_set.desk import ClassDesk
    from app.window.student import StudentControl

CLASS_PAGE = "classset"
"""The page that is there only while a class set is open."""


_LEAST = QSize(960, 600)
_WANTED, _FRAME = QSize(1366, 768), QSize(4, 40)


def _first_size(available: QSize) -> QSize:
    """How large the first window is: with its title bar it stays on the screen.

    Where the screen holds no page at all, what is wanted stays: the desktop decides.
    """
    room = available - _FRAME
    if room.width() < _LEAST.width() or room.height() < _LEAST.height():
        return _WANTED
    return _WANTED.boundedTo(room)


class Window(QMainWindow):
    """Header, notice bar and pages around one document."""

    def __init__(self, folder: Path | None = None, data: Path | None = None) -> None:
        """`folder` keeps settings, recent files and the window's geometry; `data` unsaved work."""
        super().__init__()
        self._folder = folder or config_folder()
        self.preferences = Preferences(self._folder, self)
        self._appearance = Appearance(self.preferences, self)
        self.document = Document(self)
        self.notices = Notices(self)
        self.pictures = PictureStore()
        self.reader = Reader(self.document, self.notices, self)
        recent = Recent(self._folder)
        self._data = data = data or (self._folder / "data" if folder else data_folder())
        boxes = SavedBoxes(self._folder / "boxes")
        last_box = LastBox(self.document, boxes, self.notices, self._folder, self)
        self.files = StudyFiles(
            self.document, self.reader, self.pictures, self.notices, recent, last_box, data, self
        )
        self.opener = Opener(self.files, recent, self.notices, self)
        self.planner = Planner(self.document, self.reader, self.notices, self)
        self.checker = Checker(self.document, self.reader, self.pictures, self.notices, self)
        self.speech = Speech(self)
        self.speech.look_soon()
        self.cards = CardControl(
            self.document,
            self.reader,
            self.planner,
            self.checker,
            self.pictures,
            self.preferences,
            self.files,
            self,
        )
        self.workspace = Workspace(
            document=self.document,
            reader=self.reader,
            preferences=self.preferences,
            notices=self.notices,
            opener=self.opener,
            pictures=self.pictures,
            files=self.files,
            planner=self.planner,
            boxes=boxes,
            checker=self.checker,
            speech=self.speech,
            cards=self.cards,
            make_desk=lambda: self.desk,
            show_student=lambda place, key: self._show_student(place, key),
        )
        self.class_room = ClassRoom(self.workspace, self)
        self._may_close = False
        self._student: StudentControl | None = None
        self._warmup: Warmup | None = None
        self._pages: dict[int, Page] = {}
        self._scrolls: dict[int, PageScroll] = {}
        install_hook(self.notices.problem)

        # A study and a class set are undone apart: by the page that is shown.
        self._undo = QUndoGroup(self)
        self._undo.addStack(self.document.stack)
        undo = self._undo.createUndoAction(self, translate("menu", "&Undo"))
        undo.setShortcut(QKeySequence(QKeySequence.StandardKey.Undo))
        redo = self._undo.createRedoAction(self, translate("menu", "&Redo"))
        # The same keys on every system, as the guide lists them; the first stands in the menu.
        redo.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
        self.header = Header(undo, redo, self)
        self.notice_bar = NoticeBar(self)
        self.notice_display = NoticeDisplay(self.notices, self.notice_bar)
        self._stack = QStackedWidget(self)
        self._assemble()
        self.preferences_control = PreferencesControl(self.preferences, self)
        self.opener.take_many = lambda paths: self.class_actions.take_many(paths)
        self.opener.take_class = lambda path: self.class_actions.open_path(path)
        self.opener.take_folder = self.choose_sky
        self.opener.take_card = self._read_swatch_card
        self._menus = WindowMenus(
            self,
            self.header,
            self.workspace,
            Commands(
                ask_for_title=self.ask_for_title,
                choose_sky=self.choose_sky,
                close=self.close,
                paste=self.paste,
                print_card=self.cards.open,
                show_preferences=self.preferences_control.show,
                toggle_class_view=self._toggle_class_view,
                fill_class_menu=lambda menu: self.class_actions.fill_menu(menu),
            ),
        )
        self.help = self._menus.help
        for kind in PAGES:
            self.header.add_tab(kind.title())
        self.header.page_chosen.connect(self.show_page)
        self.header.set_tab_shown(self._class_index, False)
        self.document.study_changed.connect(lambda before, after: self._show_title())
        self.document.study_changed.connect(lambda before, after: self.notices.move_on())
        self.document.unsaved_changed.connect(lambda unsaved: self._show_title())
        self.files.place_changed.connect(self._show_title)
        self.setAcceptDrops(True)
        self.setMinimumSize(_LEAST)
        self.resize(_first_size(QGuiApplication.primaryScreen().availableSize()))
        self._restore_geometry()
        self.show_page(0)
        self._show_title()
        self._focus_ring = FocusRing(self)

    def show_page(self, index: int) -> None:
        """Show a page; it is made when it is first shown."""
        self._make_page(index)
        if self._stack.currentWidget() is not self._scrolls[index]:
            self.notices.move_on()
        page = self._pages[index]
        self._stack.setCurrentWidget(self._scrolls[index])
        self.header.show_page(index)
        self._menus.show_page(page)
        of_class = index == self._class_index
        self._undo.setActiveStack((self.desk.document if of_class else self.document).stack)
        if self._student is not None:
            self._student.page_shown(PAGES[index].key)
        self._show_title()

    def page(self, key: str) -> Page:
        """The page of a key, made if need be."""
        index = next(i for i, kind in enumerate(PAGES) if kind.key == key)
        if index not in self._pages:
            self.show_page(index)
        return self._pages[index]

    def warm_up(self) -> None:
        """Make the other pages ready while nobody waits for anything."""
        self._warmup = Warmup(self._steps_ahead(), lambda: wait_for_tasks(0), self)
        self._warmup.begin()

    @cached_property
    def desk(self) -> ClassDesk:
        """The class set that is open; made when it is first wanted."""
        from app.services.class_set.desk import ClassDesk  # deferred: start-up time

        desk = ClassDesk(self.notices, self._data, self)
        self._undo.addStack(desk.document.stack)
        desk.opened.connect(self._on_class_set)
        desk.changed.connect(lambda before, after: self._show_title())
        self._student = self._make_student(desk)
        return desk

    def _make_student(self, desk: ClassDesk) -> StudentControl:
        from app.window.student import StudentControl  # deferred: start-up time

        student = StudentControl(
            desk, self.document, self.pictures, self.files, self.checker, self.header, self
        )
        student.page_asked.connect(self._show_page_of)
        student.title_changed.connect(self._show_title)
        return student

    def _show_student(self, place: int, key: str) -> None:
        if self._student is not None:
            self._student.show(place, key)

    def _show_page_of(self, key: str) -> None:
        index = next(i for i, kind in enumerate(PAGES) if kind.key == key)
        self.show_page(index)
        self._pages[index].take_focus()

    @cached_property
    def class_actions(self) -> ClassActions:
        """What is asked of class sets."""
        from app.classset.actions import ClassActions  # deferred: start-up time

        return ClassActions(self.workspace, self)

    @property
    def _class_index(self) -> int:
        return next(i for i, kind in enumerate(PAGES) if kind.key == CLASS_PAGE)

    @property
    def _holds_class(self) -> bool:
        """Whether a class set is open; asking makes no desk."""
        return "desk" in self.__dict__ and self.desk.class_set is not None

    @property
    def _of_class(self) -> bool:
        """Whether what is shown is the class set's."""
        return "desk" in self.__dict__ and self._undo.activeStack() is self.desk.document.stack

    def _on_class_set(self) -> None:
        """Another class set is open, or none: its tab comes or goes."""
        index = self._class_index
        self.header.set_tab_shown(index, self._holds_class)
        if self._holds_class:
            self.show_page(index)
            self._pages[index].take_focus()
        elif self._of_class:
            self.show_page(0)

    def _toggle_class_view(self) -> None:
        """The page shown may have something for the class; else it is the class view."""
        scroll = self._stack.currentWidget()
        if self.class_room.is_open or not (
            isinstance(scroll, PageScroll) and scroll.page.show_to_class()
        ):
            self.class_room.toggle()

    def _steps_ahead(self) -> Iterator[Callable[[], object]]:
        for index, kind in enumerate(PAGES):
            if index not in self._pages and kind.key != CLASS_PAGE:
                yield partial(import_module, kind.module)
                yield partial(self._make_page, index)

    def _make_page(self, index: int) -> None:
        if index not in self._pages:
            self._pages[index] = PAGES[index].make(self.workspace)
            self._pages[index].page_wanted.connect(self._go_to)
            self._scrolls[index] = PageScroll(self._pages[index], self._stack)
            self._stack.addWidget(self._scrolls[index])

    def greet(self) -> None:
        """Show a newcomer, on the sample sky, where to begin."""
        page = self.page("read")
        assert isinstance(page, ReadPage)
        first_run = FirstRun(page, self._menus.class_button, self._folder, self)
        self.header.page_chosen.connect(first_run.end)
        self.reader.photo_changed.connect(first_run.on_photo)
        first_run.begin()

    # Putting together

    def _assemble(self) -> None:
        body = QWidget(self)
        column = QVBoxLayout(body)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        for part in (self.header, self.notice_bar):
            column.addWidget(part)
        column.addWidget(self._stack, 1)
        self.setCentralWidget(body)

    def ask_for_title(self) -> None:
        """Ask what the study is called."""
        study = self.document.study

        def rename(title: str) -> None:
            self.document.change(translate("undo", "rename study"), with_title(study, title))

        ask_title(self, study.title, rename)

    def choose_sky(self, folder: Path | None = None) -> None:
        """Look through a folder of photos; asks for it where none is given."""
        # deferred: start-up time
        from app.choosing.window import ask_and_show

        ask_and_show(
            self,
            folder,
            self.document.study.box,
            self.preferences.settings.wording,
            self.opener.open_path,
            self.notices.problem,
        )

    def _close_now(self) -> None:
        """Close without asking: that has been done."""
        self._may_close = True
        self.close()

    def _show_title(self) -> None:
        if self._of_class:
            self._show_class_title()
            return
        if self._student is not None and self._student.title:
            self._show_kept_title(self._student.title)
            return
        title, unsaved = self.document.study.title, self.document.unsaved
        shown, path = title, self.files.path
        if self.files.read_only:
            shown = translate("window", "{title}, read-only").format(title=title)
        self.header.show_title(shown, unsaved)
        if path is not None and path.stem != title:
            shown = translate("window", "{title} ({file})").format(
                title=shown, file=shown_name(path)
            )
        name = translate("window", "Gradewash")
        shown = shown.replace("[*]", "[ * ]")  # Qt's own mark
        # The mark that Qt itself sets before the program's name in the titles of dialogs.
        self.setWindowTitle(f"{shown}[*] \u2014 {name}" if shown else f"{name}[*]")
        if unsaved != self.isWindowModified():  # Qt tells every widget of it
            self.setWindowModified(unsaved)

    def _show_class_title(self) -> None:
        """A class set is saved after each edit: nothing of it is ever unsaved for long."""
        class_set = self.desk.class_set
        named = () if class_set is None else (class_set.title, class_set.exercise.title)
        self._show_kept_title(", ".join(filter(None, named)))

    def _show_kept_title(self, title: str) -> None:
        self.header.show_title(title, False)
        name = translate("window", "Gradewash")
        self.setWindowTitle(f"{title.replace('[*]', '[ * ]')} - {name}" if title else name)
        self.setWindowModified(False)

    def _read_swatch_card(self, path: Path) -> None:
        """A picture of a swatch card was brought: it is read on the Mix page."""
        self._go_to("mix")
        self.page("mix").take_card(path)

    def _go_to(self, key: str) -> None:
        self.show_page(next(i for i, kind in enumerate(PAGES) if kind.key == key))

    def paste(self) -> None:
        """The page shown has the first say; else it is a photo to open."""
        scroll, mime = self._stack.currentWidget(), QGuiApplication.clipboard().mimeData()
        if mime is not None and isinstance(scroll, PageScroll) and scroll.page.take(mime):
            return
        self.opener.paste()

    # Qt

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._appearance.set_window_width(self.width())

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if can_open(event.mimeData()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        mime: QMimeData = event.mimeData()
        if self.opener.open_mime(mime):
            event.acceptProposedAction()

    def closeEvent(self, event: QCloseEvent) -> None:
        if self.files.must_ask and not self._may_close:
            event.ignore()
            self.files.leaving(self._close_now)
            return
        if self._holds_class:
            event.ignore()
            self.desk.close(self._close_now)
            return
        geometry = bytes(self.saveGeometry().toHex().data()).decode("ascii")
        write_json({"geometry": geometry}, self._folder / "window.json")
        if self._warmup is not None:
            self._warmup.stop()
        cancel_all()
        wait_for_tasks()
        self.files.finish()
        self._focus_ring.stop()
        super().closeEvent(event)

    def _restore_geometry(self) -> None:
        geometry = read_json(self._folder / "window.json").get("geometry")
        if isinstance(geometry, str):
            self.restoreGeometry(QByteArray.fromHex(geometry.encode("ascii", "replace")))

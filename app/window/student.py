"""The student of the class set that is shown on the other pages, and the ways to the next one."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QObject, Signal
from PySide6.QtGui import QAction
from PySide6.QtWidgets import QWidget

from app.files.study_files import StudyFiles
from app.services.checker import Checker
from app.services.class_set.desk import ClassDesk
from app.services.class_set.visit import StudentVisit
from app.state.document import Document
from app.widgets.actions import make_action
from app.widgets.question import Answer, Question
from app.window.header import Header
from core.i18n import translate
from core.pictures import PictureStore

WORK_PAGES = ("sheets", "worksheet")
"""Where a student's own work is shown; the other pages show what is the class's."""


class StudentControl(QObject):
    """Arrows in the header, keys, and the study that follows them; made with the desk.

    Signals
    -------
    page_asked(key: str)
        A page is to be shown.
    title_changed()
    """

    page_asked = Signal(str)
    title_changed = Signal()

    def __init__(
        self,
        desk: ClassDesk,
        document: Document,
        pictures: PictureStore,
        files: StudyFiles,
        checker: Checker,
        header: Header,
        window: QWidget,
    ) -> None:
        super().__init__(window)
        self._desk, self._files, self._header, self._window = desk, files, header, window
        self._page = ""
        self.visit = StudentVisit(desk, document, pictures, files.show_kept, self._ask_lines, self)
        files.kept_elsewhere = lambda: self.visit.number is not None
        checker.known_elsewhere = self.visit.known_check
        self.visit.changed.connect(self._follow)
        self.visit.changed.connect(files.keeper_changed)
        files.place_changed.connect(self._on_place)
        header.student_step.connect(self.step)
        self._actions = self._make_actions(window)
        desk.opened.connect(self._follow)
        self._follow()

    def page_shown(self, key: str) -> None:
        """Another page is shown."""
        self._page = key
        if key in WORK_PAGES:
            self.visit.refresh()
        self._follow()

    @property
    def title(self) -> str:
        """What the window is called while a student is in the study; empty while none is."""
        class_set = self._desk.class_set
        if class_set is None or not self.visit.title:
            return ""
        if self._page in WORK_PAGES:
            return self.visit.title
        # Photo, lines and paints are the whole class's.
        return ", ".join(filter(None, (class_set.title, class_set.exercise.title)))

    def show(self, place: int, key: str) -> None:
        """Show a student's work on a page."""

        def there() -> None:
            self.page_asked.emit(key)

        if place == self.visit.place:
            there()  # and what is out of date is fetched with the page
        else:
            self._files.leaving(partial(self.visit.begin, place, there))

    def step(self, way: int) -> None:
        """To the student before or after, on the page that is shown."""
        if self._page in WORK_PAGES:
            self.visit.step(way)

    def _make_actions(self, window: QWidget) -> tuple[QAction, ...]:
        def to(key: str) -> None:
            if self._page == "classset" or self.visit.place is None:
                self.show(self._desk.place, key)
            else:
                self.page_asked.emit(key)

        # Without letters of their own: the menu has none left, and each has its key.
        make = partial(make_action, window)
        sheets = make(translate("menu", "This student's sheets"), partial(to, "sheets"), "F7")
        words = make(translate("menu", "This student's worksheet"), partial(to, "worksheet"), "F8")
        back = make(
            translate("menu", "Back to the class"), lambda: self.page_asked.emit("classset"), "F9"
        )
        before = make(translate("menu", "Student before"), lambda: self.step(-1), "Alt+Left")
        after = make(translate("menu", "Next student"), lambda: self.step(1), "Alt+Right")
        actions = (sheets, words, back, before, after)
        menu = self._header.menu("view")
        first = menu.actions()[1]
        menu.insertSeparator(first)
        menu.insertActions(first, actions)
        window.addActions(actions)
        return actions

    def _on_place(self) -> None:
        """Saved as a file, the study is that file's from now on."""
        if self._files.path is not None:
            self.visit.leave()

    def _follow(self) -> None:
        open_set = self._desk.class_set is not None
        shown = self.visit.place is not None and self._page in WORK_PAGES
        ways = (open_set, open_set, open_set, shown, shown)
        for action, there in zip(self._actions, ways, strict=True):
            action.setEnabled(there)
            action.setVisible(there)
        may = (self.visit.may_step(-1), self.visit.may_step(1))
        self._header.show_student_steps(may if shown else None, self.visit.code)
        self.title_changed.emit()

    def _ask_lines(self, count: int, yes: Callable[[], None], no: Callable[[], None]) -> None:
        sentence = translate("class set page", "All {n} sheets will be checked again with them.")
        Question(
            self._window,
            translate("class set page", "These lines are the whole class's."),
            sentence.format(n=count),
            (
                Answer(translate("class set page", "&Check them again"), yes),
                Answer(translate("class set page", "&Put the lines back"), no),
            ),
        ).open()

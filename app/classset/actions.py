"""What menus and buttons ask of class sets: new, open, bring in, check, print, export, delete."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import QObject, QUrl
from PySide6.QtGui import QAction, QDesktopServices
from PySide6.QtWidgets import QMenu, QWidget

from app.classset import ask, exports
from app.classset.new_class import NewClass, NewClassDialog
from app.files.file_dialogs import ask_for_folder
from app.services.notices import Notice
from app.state.language import language_in_use
from app.widgets.actions import make_action
from app.workspace import Workspace
from core.class_set.checking import to_check
from core.class_set.deleting import Ours, written_by
from core.class_set.folder import FILE_NAME, ClassFolder
from core.class_set.model import new_class_set
from core.class_set.next_lesson import next_lesson
from core.class_set.tidying import Tidied
from core.file_sentences import shown_name
from core.i18n import translate
from core.study import Study, without_work


class ClassActions(QObject):
    """The window's and the page's way to everything about class sets."""

    def __init__(self, workspace: Workspace, window: QWidget) -> None:
        super().__init__(window)
        self._workspace = workspace
        self._desk = workspace.desk
        self._window = window
        self._last: Path | None = None

    # Menus

    def fill_menu(self, menu: QMenu) -> None:
        """The submenu of the window's first menu; a second time nothing is added."""
        if menu.actions():
            return
        add = partial(self._add, menu)
        add(translate("menu", "&New class set..."), self.new)
        add(translate("menu", "&Open a class set..."), self.choose)
        again = add(translate("menu", "New &lesson from this one..."), self.next_lesson)
        menu.addSeparator()
        within: list[QAction] = [
            again,
            add(translate("menu", "&Bring in pictures..."), self.bring_in),
            add(translate("menu", "Bring in a &folder..."), self.bring_in_folder),
            add(translate("menu", "Chec&k the sheets"), self._desk.check),
            add(translate("menu", "&Stop"), self._desk.stop),
        ]
        menu.addSeparator()
        menus = [
            self._fill(menu.addMenu(translate("menu", "&Print")), self.print_actions),
            self._fill(menu.addMenu(translate("menu", "&Tables")), self.table_actions),
        ]
        within += [
            add(translate("menu", "&Give out studies..."), self.give_out),
            add(translate("menu", "Take studies &in..."), self.bring_in),
        ]
        menu.addSeparator()
        within += [
            add(translate("menu", "Ti&dy..."), self.tidy),
            add(translate("menu", "Delete this class set..."), self.delete),
            add(translate("menu", "&Close the class set"), self._desk.close),
        ]

        def follow() -> None:
            there = self._desk.class_set is not None
            for action in (*within, *(each.menuAction() for each in menus)):
                action.setEnabled(there)

        menu.aboutToShow.connect(follow)
        self._desk.opened.connect(follow)
        follow()

    def print_actions(self, menu: QMenu) -> tuple[QAction, ...]:
        """One for each print."""
        return tuple(
            make_action(menu, exports.print_name(kind) + "...", partial(self.print, kind))
            for kind in exports.PRINTS
        )

    def table_actions(self, menu: QMenu) -> tuple[QAction, ...]:
        """One for each table."""
        return tuple(
            make_action(menu, exports.table_name(kind) + "...", partial(self.write_table, kind))
            for kind in exports.TABLES
        )

    def print_menu(self, parent: QWidget) -> QMenu:
        """For the page's Print button."""
        return self._fill(QMenu(parent), self.print_actions)

    # New and open

    def new(self, pictures: Sequence[Path] = ()) -> None:
        """Ask for a new class set of the study that is open; then bring pictures in."""
        self._workspace.files.once_stored(partial(self._new, pictures))

    def _new(self, pictures: Sequence[Path]) -> None:
        study = self._workspace.document.study
        photo = study.photo
        if photo is None or study.bands is None or photo.digest not in self._workspace.pictures:
            self._workspace.notices.hint(
                translate(
                    "class set page",
                    "Open the lesson's photo or study first: a class set takes its photo, lines "
                    "and paints.",
                )
            )
            return
        data = self._workspace.pictures[photo.digest]
        exercise = without_work(study)

        def make(wanted: NewClass) -> None:
            self._last = wanted.folder.parent
            class_set = new_class_set(wanted.title, wanted.class_list, exercise)
            then = partial(self._desk.add, tuple(pictures)) if pictures else None
            self._desk.create(wanted.folder, class_set, data, then)

        self._dialog(exercise, make).open()

    def next_lesson(self) -> None:
        """Ask for a new class set of the same exercise; the students' work is left out."""
        before = self._desk.class_set
        photo = None if before is None else before.exercise.photo
        if before is None or photo is None:
            return
        digest = photo.digest

        def ask_for_it(data: bytes) -> None:
            def make(wanted: NewClass) -> None:
                self._last = wanted.folder.parent
                class_set = next_lesson(before, wanted.class_list, wanted.title)
                self._desk.create(wanted.folder, class_set, data)

            self._dialog(before.exercise, make).open()

        self._desk.with_folder(lambda folder: folder.read_picture(digest), ask_for_it)

    def choose(self) -> None:
        """Ask for a class set's folder."""
        title = translate("class set page", "Open a class set: choose its folder")
        path = ask_for_folder(self._window, title, self._home())
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> None:
        """Open a class set."""
        self._last = path.parent
        self._workspace.opener.recent.add(path / FILE_NAME)
        self._desk.open(path)

    def take_many(self, paths: Sequence[Path]) -> None:
        """Several files were brought: into the class set that is open, or into a new one."""
        if self._desk.class_set is None:
            self.new(paths)
        else:
            self._desk.add(paths)

    # With the one that is open

    def bring_in(self) -> None:
        """Ask for pictures and studies."""
        paths = ask.ask_pictures(self._window, self._home())
        if paths:
            self._last = paths[0].parent
            self._desk.add(paths)

    def bring_in_folder(self) -> None:
        """Ask for a folder of them."""
        title = translate("class set page", "Bring in all pictures of a folder")
        path = ask_for_folder(self._window, title, self._home())
        if path is not None:
            self._desk.add((path,))

    def print(self, kind: exports.Print) -> None:
        """Ask where, then write a print."""
        name = f"{self._title()} {exports.print_name(kind).lower()}.pdf"
        path = ask.ask_pdf(self._window, self._home() / _as_file(name))
        if path is not None:
            paper = self._workspace.preferences.settings.card_paper
            work = exports.print_to(path, kind, paper, language_in_use())
            self._desk.with_folder(work, self._wrote)

    def write_table(self, kind: exports.Table) -> None:
        """Ask where, then write the mark list."""
        suffix = ".xlsx" if kind == "xlsx" else ".csv"

        def write(key: Path | None) -> None:
            name = f"{self._title()} {translate('class set', 'marks')}{suffix}"
            found = self._desk.sorted
            path = ask.ask_table(self._window, self._home() / _as_file(name))
            if path is not None and found is not None:
                self._desk.with_folder(exports.table_to(path, kind, found, key), self._wrote)

        def with_key() -> None:
            key = ask.ask_key(self._window, self._home())
            if key is not None:
                write(key)

        if kind == "import":
            ask.ask_with_key(self._window, with_key, partial(write, None))
        else:
            write(None)

    def give_out(self) -> None:
        """Write a study for each student into a folder."""
        title = translate("class set page", "Where do the students' studies go?")
        target = ask_for_folder(self._window, title, self._home())
        if target is None:
            return

        def look(folder: ClassFolder) -> tuple[Path, ...]:
            return tuple(path for path in exports.studies_in(target, folder) if path.exists())

        def write() -> None:
            self._desk.with_folder(exports.studies_to(target), wrote)

        def looked(there: tuple[Path, ...]) -> None:
            if there:
                ask.ask_replace(self._window, shown_name(there[0]), write)
            else:
                write()

        def wrote(count: int) -> None:
            text = translate("class set page", "Wrote {n} studies, one a student, into {name}.")
            self._workspace.notices.note(text.format(n=count, name=shown_name(target)))

        self._desk.with_folder(look, looked)

    def tidy(self) -> None:
        """Ask, then keep of each sheet its painting alone."""
        class_set = self._desk.class_set
        if class_set is not None:
            ask.ask_tidy(
                self._window, len(to_check(class_set)), partial(self._desk.tidy, self._tidied)
            )

    def delete(self) -> None:
        """Ask, then remove the class set."""
        path = self._desk.path
        if path is None:
            return

        def asked(ours: Ours) -> None:
            ask.ask_delete(
                self._window,
                shown_name(path),
                len(ours.pictures),
                len(ours.checks),
                partial(self._desk.delete, partial(self._deleted, shown_name(path))),
            )

        self._desk.with_folder(lambda folder: written_by(folder.path), asked)

    # Within

    def _dialog(self, exercise: Study, make: Callable[[NewClass], object]) -> NewClassDialog:
        known = self._desk.class_set
        class_list = None if known is None else (known.title, known.class_list)
        title = exercise.title or translate("files", "Your study")
        return NewClassDialog(self._window, title, self._home(), class_list, make)

    def _add(self, menu: QMenu, text: str, run: Callable[[], object]) -> QAction:
        action = make_action(menu, text, run)
        menu.addAction(action)
        return action

    def _fill(self, menu: QMenu, actions: Callable[[QMenu], tuple[QAction, ...]]) -> QMenu:
        menu.addActions(list(actions(menu)))
        return menu

    def _home(self) -> Path:
        if self._last is not None:
            return self._last
        if self._desk.path is not None:
            return self._desk.path.parent
        path = self._workspace.files.path
        return Path.home() if path is None else path.parent

    def _title(self) -> str:
        class_set = self._desk.class_set
        title = "" if class_set is None else class_set.title
        return title or translate("class set page", "class")

    def _wrote(self, path: Path) -> None:
        self._last = path.parent

        def show() -> None:
            QDesktopServices.openUrl(QUrl.fromLocalFile(str(path)))

        text = translate("class set page", "Saved {name}.").format(name=shown_name(path))
        self._workspace.notices.show(
            Notice(text, "note", button=translate("class set page", "Show it"), act=show)
        )

    def _tidied(self, tidied: Tidied) -> None:
        text = translate("class set page", "Of {n} sheets only the painting is kept now.")
        text = text.format(n=tidied.straightened)
        if tidied.left:
            more = translate("class set page", "{n} stay as they are: no painting was found.")
            text = f"{text} {more.format(n=tidied.left)}"
        self._workspace.notices.note(text)

    def _deleted(self, name: str, ours: Ours) -> None:
        text = translate("class set page", "The class set in {name} is gone. Its folder stays.")
        self._workspace.notices.note(text.format(name=name))


def _as_file(name: str) -> str:
    """A name no disk minds."""
    kept = "".join(c if c.isalnum() or c in " ._-()" else " " for c in name)
    return " ".join(kept.split())

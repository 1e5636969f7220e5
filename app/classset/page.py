"""The Class page: sort, pin up, find what was hard, write the marks."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Literal, assert_never

from PySide6.QtCore import QMimeData, QSize, Qt, QTimer
from PySide6.QtGui import QAction, QDragEnterEvent, QDropEvent, QResizeEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QStackedWidget, QVBoxLayout, QWidget

from app.cards.class_command import score_forms
from app.classset import headline
from app.classset.actions import ClassActions
from app.classset.corners import ClassCorners
from app.classset.exports import TABLES
from app.classset.found_hard import FoundHardPart
from app.classset.mark_list import MarkListPart
from app.classset.part import ClassPart
from app.classset.pin_up import PinUpPart
from app.classset.progress import WorkProgress
from app.classset.sort import SortPart
from app.files.brought import paths_in
from app.look import look
from app.look.space import GROUP, MARGIN, WITHIN
from app.widgets.actions import make_action
from app.widgets.buttons import EdgeButton
from app.widgets.notice import EmptyState
from app.widgets.segmented import SegmentedControl
from app.workspace import Menu, Page, Workspace
from core.class_set.model import ClassSet
from core.class_set.questions import Sorted
from core.i18n import translate

PICTURES_MS = 40
"""Images that come faster are shown together."""

PartKey = Literal["sort", "pin_up", "found_hard", "mark_list"]

PARTS: dict[PartKey, type[ClassPart]] = {
    "sort": SortPart,
    "pin_up": PinUpPart,
    "found_hard": FoundHardPart,
    "mark_list": MarkListPart,
}
"""The parts in the order of an evening."""


def part_title(key: PartKey) -> str:
    """What a part is called."""
    match key:
        case "sort":
            return translate("class set page", "Sort")
        case "pin_up":
            return translate("class set page", "Pin-up")
        case "found_hard":
            return translate("class set page", "Found hard")
        case "mark_list":
            return translate("class set page", "Mark list")
        case _:
            assert_never(key)


class ClassSetPage(Page):
    """A row above, a part below."""

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._workspace = workspace
        self.desk = workspace.desk
        self.desk.scores.read_with(score_forms)
        self.actions_of_class = ClassActions(workspace, self)
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAcceptDrops(True)
        self._parts: dict[PartKey, ClassPart] = {}
        keys = [key for key, kind in PARTS.items() if kind.ready]
        self.choice = SegmentedControl(
            [(key, part_title(key)) for key in keys],
            translate("class set page", "Part of the class set"),
            self,
        )
        self.line = QLabel(self)
        self.line.setProperty("role", "strong")
        self.second = QLabel(self)
        self.second.setProperty("role", "second")
        self.second.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        self.progress = WorkProgress(self)
        self.bring = EdgeButton(translate("class set page", "Bring in pictures"), "plus", self)
        self.print_button = EdgeButton(translate("class set page", "Print"), "print", self)
        self._texts = {each: each.text() for each in (self.bring, self.print_button)}
        for each, text in self._texts.items():
            each.setAccessibleName(text)
        self._widths: dict[EdgeButton, tuple[int, int]] = {}
        self.stack = QStackedWidget(self)
        self.empty = EmptyState("", "", "", "plus", self.stack)
        self.stack.addWidget(self.empty)
        self.corners = ClassCorners(workspace, self.stack)
        self.stack.addWidget(self.corners.editor)
        self._key: PartKey = "sort"
        self._second = ""
        self._seen: tuple[ClassSet | None, Sorted | None] = (None, None)
        self._actions = {
            "view": tuple(
                make_action(self, part_title(key), self._showing(key), f"Alt+{number}")
                for number, key in enumerate(keys, 1)
            ),
            "edit": tuple(
                make_action(
                    self,
                    translate("sheets page", "Corners of sheet {number}...").format(
                        number=index + 1
                    ),
                    partial(self._set_corners_of, index),
                    f"Ctrl+Shift+{index + 1}",
                )
                for index in (0, 1)
            ),
        }
        self._lay_out()
        self._connect()
        self._on_opened()

    @property
    def part(self) -> ClassPart | None:
        """The part that is shown; None while there is nothing to show."""
        now = self.stack.currentWidget()
        return now if isinstance(now, ClassPart) else None

    def set_corners(self, digest: str) -> None:
        """Show a picture whole with its corners; Enter or Escape comes back."""
        self.stack.setCurrentWidget(self.corners.editor)
        self.corners.begin(digest)

    def show_part(self, key: PartKey) -> ClassPart:
        """Show a part; it is made when it is first shown."""
        self._key = key
        if self._sets_corners:
            self.corners.put_away()
        self.choice.set_chosen(key)
        if key not in self._parts:
            self._parts[key] = part = PARTS[key](self._workspace, self.stack)
            part.corners_asked.connect(self.set_corners)
            if isinstance(part, MarkListPart):
                part.save_asked.connect(self._save_table)
            self.stack.addWidget(self._parts[key])
            self._parts[key].begin()
        if self._holds_something:
            self.stack.setCurrentWidget(self._parts[key])
        self._refresh()
        return self._parts[key]

    def actions_for(self, menu: Menu) -> tuple[QAction, ...]:
        return self._actions.get(menu, ())

    def least_size(self) -> QSize:
        return QSize(look().type.grow(860), look().type.grow(480))

    def take_focus(self) -> None:
        if self.part is not None:
            self.part.take_focus()
        else:
            self.empty.button.setFocus(Qt.FocusReason.OtherFocusReason)

    def show_to_class(self) -> bool:
        return self.part is not None and self.part.show_to_class()

    def take(self, mime: QMimeData) -> bool:
        """Files that are pasted are brought in."""
        paths = paths_in(mime)
        if not paths or self.desk.class_set is None:
            return False
        self.desk.add(paths)
        return True

    # Within

    def _save_table(self, kind: str) -> None:
        self.actions_of_class.write_table(next(each for each in TABLES if each == kind))

    @property
    def _holds_something(self) -> bool:
        class_set = self.desk.class_set
        return class_set is not None and bool(class_set.brought)

    def _lay_out(self) -> None:
        self._row = QHBoxLayout()
        self._row.setContentsMargins(MARGIN, 0, MARGIN, 0)
        self._row.setSpacing(GROUP)
        self._row.addWidget(self.choice)
        self._row.addWidget(self.line)
        self._row.addWidget(self.second, 1)
        self._row.addWidget(self.progress, 2)
        self._row.addWidget(self.bring)
        self._row.addSpacing(WITHIN - GROUP)
        self._row.addWidget(self.print_button)
        self._head = QWidget(self)
        self._head.setLayout(self._row)
        self._rule = QWidget(self)
        self._rule.setFixedHeight(1)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self._head)
        column.addWidget(self._rule)
        column.addWidget(self.stack, 1)
        self._fit()

    def _connect(self) -> None:
        desk = self.desk
        self.choice.chosen.connect(lambda key: self.show_part(_part_key(key)))
        self.bring.clicked.connect(self.actions_of_class.bring_in)
        self.print_button.setMenu(self.actions_of_class.print_menu(self.print_button))
        self.progress.stop_asked.connect(desk.stop)
        self.progress.go_on_asked.connect(desk.check)
        self.empty.asked.connect(self._begin_or_bring)
        self.corners.closed.connect(self._close_corners)
        desk.opened.connect(self._on_opened)
        desk.changed.connect(lambda before, after: self._follow())
        desk.sorted_changed.connect(self._follow)
        # In a turn of its own: a bar that moves is painted at once, with all that waits for it.
        self._later = QTimer(self, singleShot=True, interval=0)
        self._later.timeout.connect(self._show_progress)
        desk.underway_changed.connect(self._later.start)
        self._pictures = QTimer(self, singleShot=True, interval=PICTURES_MS)
        self._pictures.timeout.connect(self._on_pictures)
        desk.pictures.ready.connect(self._wait_for_pictures)

    def _begin_or_bring(self) -> None:
        if self.desk.class_set is None:
            self.actions_of_class.new()
        else:
            self.actions_of_class.bring_in()

    def _showing(self, key: PartKey) -> Callable[[], None]:
        def show() -> None:
            if self.desk.class_set is not None:
                self.show_part(key).take_focus()

        return show

    def _set_corners_of(self, index: int) -> None:
        if self.part is None:
            return
        digest = self.part.sheet_meant(index)
        if digest is not None:
            self.set_corners(digest)
        elif self.desk.class_set is not None:
            self._workspace.notices.hint(
                translate("class set page", "There is no picture of this sheet.")
            )

    def _close_corners(self) -> None:
        if self._sets_corners:
            self.show_part(self._key).take_focus()

    @property
    def _sets_corners(self) -> bool:
        return self.stack.currentWidget() is self.corners.editor

    def _on_opened(self) -> None:
        for part in self._parts.values():
            part.begin()
        class_set = self.desk.class_set
        if class_set is None:
            self.empty.set_texts(
                translate("class set page", "No class set is open."),
                translate(
                    "class set page",
                    "A class set keeps the sheets of one class, with what you say of them.",
                ),
                translate("class set page", "New class set"),
            )
        else:
            self.empty.set_texts(
                translate("class set page", "No picture yet."),
                translate(
                    "class set page",
                    "Print the tickets and lay one beside each sheet when you photograph it. Then "
                    "drop all pictures here, in any order, sideways too.",
                ),
                translate("class set page", "Bring in pictures"),
            )
        asked = self.desk.sorted is not None and bool(self.desk.sorted.questions)
        if self._holds_something:
            self.show_part("sort" if asked else "pin_up")
        else:
            self.stack.setCurrentWidget(self.empty)
            self._refresh()

    def _refresh(self) -> None:
        class_set, found = self._seen = (self.desk.class_set, self.desk.sorted)
        for widget in (self.choice, self.bring, self.print_button):
            widget.setEnabled(class_set is not None)
        if class_set is None or found is None:
            self._show_progress()
            self.line.clear()
            self.second.clear()
            return
        if self._holds_something and self.part is None and not self._sets_corners:
            self._show_progress()
            self.show_part(self._key)
            return
        asked = len(found.questions)
        spoken = part_title("sort")
        if asked:
            spoken = translate("class set page", "Sort, {n} to look at").format(n=asked)
        self.choice.set_count("sort", asked, spoken)
        sorting = self._key == "sort"
        say = headline.pictures_placed if sorting else headline.students_in
        self.line.setText(say(class_set, found) if class_set.brought else "")
        self._second = "" if sorting else headline.what_is_not(class_set, found)
        self.second.setToolTip(self._second)
        self._show_progress()
        if self.part is not None:
            self.part.refresh()

    def _follow(self) -> None:
        """The desk says twice what changes the class set and what is asked: shown once."""
        seen = (self.desk.class_set, self.desk.sorted)
        if seen[0] is not self._seen[0] or seen[1] is not self._seen[1]:
            self._refresh()

    def _wait_for_pictures(self) -> None:
        if not self._pictures.isActive():
            self._pictures.start()

    def _on_pictures(self) -> None:
        if self.part is not None:
            self.part.refresh()

    def _show_progress(self) -> None:
        underway = self.desk.underway
        self.progress.show_work(underway, 0 if underway else self.desk.unchecked)
        self.second.setVisible(self.progress.isHidden())
        self._make_room()

    def _measure(self) -> None:
        """How wide the buttons are with their words and without: asked once a style, as every
        text that is set lays the row out anew."""
        self._widths = {}
        for button, text in self._texts.items():
            now = button.text()
            button.setText(text)
            whole = button.sizeHint().width()
            button.setText("")
            self._widths[button] = (whole, button.sizeHint().width())
            button.setText(now)

    def _fit(self) -> None:
        self._head.setFixedHeight(look().type.grow(53))
        self._rule.setStyleSheet(f"background: {look().theme.rule};")
        self._measure()

    # Qt

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._make_room()

    def changeEvent(self, event: object) -> None:
        super().changeEvent(event)  # type: ignore[arg-type]
        if hasattr(self, "_rule"):
            self._fit()
            self._make_room()

    def _make_room(self) -> None:
        """With large text or long words the buttons keep their icons alone; then progress takes
        the place of how the class stands."""
        working = not self.progress.isHidden()
        least = self.choice.sizeHint().width() + 2 * MARGIN + 5 * GROUP
        beside = self.progress.least_width() if working else look().type.grow(260)
        room = self.width() - least - beside - self.line.sizeHint().width()
        buttons = sum(whole for whole, _ in self._widths.values())
        for button in (self.print_button, self.bring):
            whole, icon = self._widths[button]
            narrow = buttons > room
            text = "" if narrow else self._texts[button]
            buttons -= whole - icon if narrow else 0
            if button.text() != text:
                button.setText(text)
                button.setToolTip(self._texts[button] if narrow else "")
        self.line.setVisible(not working or buttons <= room)
        self._row.activate()
        shown = self.second.fontMetrics().elidedText(
            self._second, Qt.TextElideMode.ElideRight, self.second.width()
        )
        self.second.setText(shown)

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if self.desk.class_set is not None and paths_in(event.mimeData()):
            event.acceptProposedAction()

    def dropEvent(self, event: QDropEvent) -> None:
        if self.take(event.mimeData()):
            event.acceptProposedAction()


def _part_key(text: str) -> PartKey:
    return next(key for key in PARTS if key == text)

"""Pin-up: all sheets level beside the photo, and the marking of one student."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from itertools import pairwise

from PySide6.QtCore import QEvent, Qt
from PySide6.QtGui import QKeySequence, QResizeEvent, QShortcut, QShowEvent
from PySide6.QtWidgets import QHBoxLayout, QLabel, QVBoxLayout, QWidget

from app.classset.marking import MarkingColumn
from app.classset.marking_view import (
    Drafts,
    another,
    draft,
    drafts_of,
    marking_view,
    with_words,
)
from app.classset.own_words import OwnWords
from app.classset.part import ClassPart
from app.classset.read_scores import TAKE_KEYS
from app.classset.views import WHOLE, letters_of, wall_view
from app.classset.wall import PinUpWall
from app.look import look
from app.look.space import MARGIN, WITHIN
from app.state.document import Gesture
from app.widgets.segmented import SegmentedControl
from app.workspace import Workspace
from core.class_set import edits
from core.class_set.kept_scores import taken
from core.class_set.model import STATES, ClassSet, Marking
from core.class_set.questions import found_options, shown_slot
from core.class_set.ticket import Slot
from core.i18n import translate
from core.reading.quality import Quality

_SHARE, _LEAST, _MOST = 0.3, 408, 560
_LARGE_SHARE = 0.4


class PinUpPart(ClassPart):
    """Left the wall, right the marking column."""

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(workspace, parent)
        self._place = 0
        self._shown = WHOLE
        self._gesture: Gesture | None = None
        self._cleared: frozenset[str] = frozenset()
        self._drafts, self._drafts_of = Drafts(), object()
        self._own_words = OwnWords(self.desk, workspace.preferences.settings.card_paper)
        self.wall = PinUpWall(self)
        self.marking = MarkingColumn(self)
        self.show_row = QWidget(self)
        self.show_row.setProperty("ground", "wall")
        self.show_row.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._show_layout = QHBoxLayout(self.show_row)
        self.show_choice: SegmentedControl | None = None
        self._letters: tuple[str, ...] = ()
        self._lay_out()
        self._connect()

    @property
    def student(self) -> int:
        """The chosen student, counted from 0 in the list's order."""
        return self._place

    @property
    def shown(self) -> str:
        """The letter of the band that is lit, or WHOLE."""
        return self._shown

    # What the user asks for

    def choose(self, place: int) -> None:
        """Show a student in the marking column."""
        class_set = self.desk.class_set
        if class_set is None or not 0 <= place < len(class_set.students):
            return
        self.desk.place = place
        self.refresh()

    def show_band(self, key: str) -> None:
        """Light one band across the class, or show whole sheets."""
        self._shown = key
        if self.show_choice is not None:
            self.show_choice.set_chosen(key)
        self.refresh()

    def go_on(self) -> None:
        """This student is marked, with what stands in the fields; on to the next."""
        class_set = self.desk.class_set
        if class_set is None:
            return
        marking = replace(
            self._marking(class_set),
            strength=self.marking.strength.field.text.strip(),
            next_step=self.marking.next_step.field.text.strip(),
            done=True,
        )
        self._gesture = None
        self._change(class_set, marking)
        if self._place + 1 < len(class_set.students):
            had = self.focusWidget()
            self.choose(self._place + 1)
            if had is self.marking.mark:
                self.marking.take_focus()

    def edit(self, name: str, text: str) -> None:
        """What stands in a field is another text."""
        class_set = self.desk.class_set
        if class_set is None:
            return
        if not text and name in ("strength", "next_step"):
            self._cleared = self._cleared | {name}
        self._gesture = self._gesture or Gesture()
        self._change(class_set, with_words(self._marking(class_set), name, text))

    def take_another(self, name: str) -> None:
        """The next draft."""
        class_set = self.desk.class_set
        if class_set is None:
            return
        drafts = self._drafts.strengths if name == "strength" else self._drafts.next_steps
        marking = self._marking(class_set)
        now = draft(marking, name, drafts, cleared=self._cleared).text
        self._gesture = None
        self._change(class_set, with_words(marking, name, another(now, drafts)))

    def set_state(self, index: int, state: str) -> None:
        """A sheet is in time, late, missing or excused."""
        class_set = self.desk.class_set
        known = next((each for each in STATES if each == state), None)
        if class_set is None or known is None:
            return
        number = class_set.students[self._place].number
        after = edits.with_state(class_set, number, index, known)
        self.desk.change(translate("undo", "state of a sheet"), after)

    def take_scores(self, index: int, scores: Mapping[Quality, int | None]) -> None:
        """What was read of a worksheet page is the student's own, as if typed."""
        class_set = self.desk.class_set
        if class_set is None:
            return
        student = class_set.students[self._place]
        self._gesture = None
        text = translate("undo", "own scores of student {code}").format(code=student.code)
        self.desk.change(text, taken(class_set, student.number, index, scores))

    def set_corners(self, index: int) -> None:
        """Set the corners of a sheet by hand."""
        digest = self.sheet_meant(index)
        if digest is not None:
            self.corners_asked.emit(digest)

    def keep_corners(self, index: int) -> None:
        """The corners that were found for a sheet are right."""
        class_set, digest = self.desk.class_set, self.sheet_meant(index)
        kept = self.desk.checks.get(digest or "")
        if class_set is None or digest is None or kept is None or kept.check is None:
            return
        options = found_options(class_set.picture(digest), kept.check)
        where = shown_slot(self._slot(class_set, index), class_set)
        text = translate("undo", "corners of {where}").format(where=where)
        self.desk.change(text, edits.with_options(class_set, digest, options))

    # A part

    def sheet_meant(self, index: int) -> str | None:
        class_set, found = self.desk.class_set, self.desk.sorted
        if class_set is None or found is None:
            return None
        return found.placement.digest_at(self._slot(class_set, index))

    def begin(self) -> None:
        paper = self.workspace.preferences.settings.card_paper
        self._own_words = OwnWords(self.desk, paper)
        self._place, self._shown, self._cleared = 0, WHOLE, frozenset()

    def take_focus(self) -> None:
        self.wall.setFocus(Qt.FocusReason.TabFocusReason)

    def refresh(self) -> None:
        class_set, found = self.desk.class_set, self.desk.sorted
        if class_set is None or found is None:
            return
        place = min(self.desk.place, len(class_set.students) - 1)
        if place != self._place:
            self._place, self._cleared, self._gesture = place, frozenset(), None
            self.marking.middle_scroll.verticalScrollBar().setValue(0)
        self._offer_bands(class_set)
        self.wall.set_view(wall_view(self.desk, self._place, self._shown))
        number = class_set.students[self._place].number
        basis = (number, found, len(self.desk.checks), class_set.entry(number).worksheet)
        if basis != self._drafts_of:
            self._drafts = drafts_of(self.desk, class_set, found, number)
            self._drafts_of = basis
        self.marking.show_marking(
            marking_view(
                self.desk,
                class_set,
                found,
                self._place,
                self._drafts,
                cleared=self._cleared,
                crop=self._own_words.crop(class_set, found, number),
            )
        )

    # Within

    def _slot(self, class_set: ClassSet, index: int) -> Slot:
        return Slot(class_set.students[self._place].number, index)

    def _marking(self, class_set: ClassSet) -> Marking:
        return class_set.entry(class_set.students[self._place].number).marking

    def _change(self, class_set: ClassSet, marking: Marking) -> None:
        student = class_set.students[self._place]
        after = edits.with_marking(class_set, student.number, marking)
        text = translate("undo", "marking of student {code}").format(code=student.code)
        self.desk.change(text, after, self._gesture)

    def _left(self) -> None:
        self._gesture = None

    def _offer_bands(self, class_set: ClassSet) -> None:
        letters = letters_of(class_set)
        if letters == self._letters and self.show_choice is not None:
            return
        self._letters = letters
        if self.show_choice is not None:
            self._show_layout.removeWidget(self.show_choice)
            self.show_choice.deleteLater()
        options = [(WHOLE, translate("class set page", "whole sheets"))]
        options += [(letter, letter) for letter in letters]
        self.show_choice = SegmentedControl(
            options, translate("class set page", "What of the sheets is shown"), self.show_row
        )
        self.show_choice.set_chosen(self._shown)
        self.show_choice.chosen.connect(self.show_band)
        self._show_layout.insertWidget(1, self.show_choice)
        self.show_choice.show()  # the layout would do so a moment later, when keys may have come
        self._order_tabs()
        self._fit()

    def _order_tabs(self) -> None:
        """As it is read: what is shown, the wall, the marking."""
        segments = () if self.show_choice is None else self.show_choice.segments
        for before, after in pairwise([*segments, self.wall, *self.marking.tab_order]):
            QWidget.setTabOrder(before, after)

    def _lay_out(self) -> None:
        self._show_layout.setContentsMargins(MARGIN, WITHIN, MARGIN, WITHIN)
        self._show_layout.setSpacing(WITHIN + 4)
        show = QLabel(translate("class set page", "Show"), self.show_row)
        note = self._note = QLabel(
            translate(
                "class set page", "first left, second right; every row begins with the photo"
            ),
            self.show_row,
        )
        for label in (show, note):
            label.setProperty("role", "strong")
            label.setProperty("on", "wall")
        self._show_layout.addWidget(show)
        self._show_layout.addWidget(note)
        self._show_layout.addStretch(1)
        left = QVBoxLayout()
        left.setSpacing(0)
        left.addWidget(self.show_row)
        left.addWidget(self.wall, 1)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(0)
        row.addLayout(left, 1)
        row.addWidget(self.marking)
        self._fit()

    def _connect(self) -> None:
        self.wall.chosen.connect(self.choose)
        self.wall.opened.connect(self.marking.take_focus)
        marking = self.marking
        marking.edited.connect(self.edit)
        marking.left.connect(self._left)
        marking.another_asked.connect(self.take_another)
        marking.state_chosen.connect(self.set_state)
        marking.step_asked.connect(lambda way: self.choose(self._place + way))
        marking.go_on_asked.connect(self.go_on)
        marking.work_asked.connect(lambda key: self.workspace.show_student(self._place, key))
        marking.scores_taken.connect(self.take_scores)
        self.desk.scores.read.connect(self._on_read)
        marking.corners_asked.connect(self.set_corners)
        marking.corners_kept.connect(self.keep_corners)
        for keys in ("Ctrl+Return", "Ctrl+Enter"):
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(self.go_on)

        take = QShortcut(QKeySequence(TAKE_KEYS), self)
        take.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
        take.activated.connect(marking.read.take_them)

    def _on_read(self) -> None:
        if self.isVisible():
            self.refresh()

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._fit()

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        self.refresh()  # another student may have been gone to on another page

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "marking"):
            self._fit()

    def _fit(self) -> None:
        grow = look().type.grow
        wanted = max(grow(_LEAST), min(grow(_MOST), round(_SHARE * self.width())))
        wanted = min(wanted, max(_LEAST, round(_LARGE_SHARE * self.width())))
        self.marking.setFixedWidth(wanted)
        if self.show_choice is not None:
            # The hint gives way: with large text the choice needs the row.
            room = self.width() - wanted - self.show_choice.sizeHint().width() - grow(60)
            self._note.setVisible(room - 2 * MARGIN > self._note.sizeHint().width())

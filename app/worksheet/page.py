"""The Worksheet page: own scores, own words, then what was measured."""

from __future__ import annotations

from dataclasses import replace
from functools import partial
from typing import Any, Literal

from PySide6.QtCore import QEvent, Qt, QTimer
from PySide6.QtGui import QAction, QResizeEvent
from PySide6.QtWidgets import (
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from app.look import look
from app.look.space import GROUP, INSIDE, WITHIN
from app.state.document import Gesture
from app.widgets.actions import make_action
from app.widgets.buttons import EdgeButton
from app.worksheet.codes import CodesRow
from app.worksheet.fields import AnswerBox
from app.worksheet.half import SheetHalf
from app.worksheet.measured import Rule
from app.worksheet.views import measured_scores, measured_view, pair_of
from app.workspace import Menu, Page, Workspace
from core.i18n import translate
from core.reading.quality import ChangeFirst, Quality
from core.sheet.findings.words import quality_word
from core.study import Study, with_worksheet
from core.worksheet.worksheet import MOST_ANSWER, Worksheet, with_page, with_score

SIDE_BY_SIDE_FROM = 1200

_REMARK = 400
"""Width the remark with its label wants beside the codes."""
_REST, _PICTURES, _PICTURES_STACKED = 430, 0.58, 0.9
"""Of the page's height what goes to words and scales first, and the pictures' share of the rest."""


class WorksheetPage(Page):
    """Two sheets side by side or one above the other; at the head whose they are, and a remark."""

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._workspace = workspace
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._sheet = QWidget(self)
        self._sheet.setProperty("ground", "paper")
        self.codes = CodesRow(self._sheet)
        self.halves = (SheetHalf(0, self._sheet), SheetHalf(1, self._sheet))
        self.remark = AnswerBox(
            translate("worksheet", "Teacher's remark"), MOST_ANSWER, self._sheet, lines=2
        )
        self.remark.setPlaceholderText(
            translate("worksheet", "A strength first, then one next step.")
        )
        # Made last, so that Tab comes to it last: the order of the work.
        self.print_button = EdgeButton(
            translate("worksheet", "Print the worksheet"), "print", self._sheet
        )
        self._show_anyway = make_action(
            self, translate("menu", "Show &measured findings before own scores"), self._open_anyway
        )
        self._show_anyway.setCheckable(True)
        self._lay_out()
        self._connect()
        self._show_all()

    def actions_for(self, menu: Menu) -> tuple[QAction, ...]:
        return (self._show_anyway,) if menu == "view" else ()

    # What the user asks for

    @property
    def _worksheet(self) -> Worksheet:
        return self._workspace.document.study.worksheet

    def _change(self, text: str, worksheet: Worksheet, gesture: Gesture | None = None) -> None:
        document = self._workspace.document
        document.change(text, with_worksheet(document.study, worksheet), gesture)

    def _change_page(
        self, text: str, index: int, gesture: Gesture | None = None, **values: Any
    ) -> None:
        page = replace(self._worksheet.pages[index], **values)
        text = text.format(number=index + 1)
        self._change(text, with_page(self._worksheet, index, page), gesture)

    def _score(self, index: int, quality: Quality, score: int | None, gesture: Gesture) -> None:
        if score is None:
            text = translate("undo", "take back the score for {quality}, sheet {number}")
        else:
            text = translate("undo", "score {quality} of sheet {number}")
        text = text.format(quality=quality_word(quality), number=index + 1)
        self._change(text, with_score(self._worksheet, index, quality, score), gesture)

    def _answer(self, index: int, answer: str, gesture: Gesture) -> None:
        text = translate("undo", "write the answer for sheet {number}")
        self._change_page(text, index, gesture, answer=answer)

    def _date(self, index: int, date: str | None, gesture: Gesture) -> None:
        self._change_page(translate("undo", "date sheet {number}"), index, gesture, date=date)

    def _choose_change(self, change: ChangeFirst | None) -> None:
        text = translate("undo", "choose what to change first")
        self._change_page(text, 0, None, change_first=change)

    def _write_code(
        self, name: Literal["student_code", "class_code"], code: str, gesture: Gesture
    ) -> None:
        text = (
            translate("undo", "write the student code")
            if name == "student_code"
            else translate("undo", "write the class code")
        )
        changed = (
            replace(self._worksheet, student_code=code)
            if name == "student_code"
            else replace(self._worksheet, class_code=code)
        )
        self._change(text, changed, gesture)

    def _fix_codes(self) -> None:
        self.codes.set_fixed(self._workspace.files.kept_elsewhere())

    def _write_remark(self, remark: str, gesture: Gesture) -> None:
        text = translate("undo", "write the teacher's remark")
        self._change(text, replace(self._worksheet, remark=remark), gesture)

    def _open_anyway(self) -> None:
        self._workspace.checker.show_measured = self._show_anyway.isChecked()

    def _tell_full(self) -> None:
        text = translate("worksheet", "There is room for {count} characters and no more.")
        self._workspace.notices.hint(text.format(count=MOST_ANSWER))

    # What is shown

    def _on_study(self, before: Study, after: Study) -> None:
        if (
            before.worksheet != after.worksheet
            or before.sheets != after.sheets
            or before.bands != after.bands
            or (before.photo is None) != (after.photo is None)
        ):
            self._show_all()

    def _show_all(self) -> None:
        worksheet = self._worksheet
        self.codes.set_codes(worksheet.student_code, worksheet.class_code)
        self._fix_codes()
        self.remark.set_text(worksheet.remark)
        for index in range(len(self.halves)):
            self._show_half(index)
        self._show_anyway.setChecked(self._workspace.checker.show_measured)

    def _show_half(self, index: int) -> None:
        checker, study = self._workspace.checker, self._workspace.document.study
        half, page = self.halves[index], study.worksheet.pages[index]
        half.scores.pair.set_pictures(
            *pair_of(study, checker, self._workspace.reader.opened, index)
        )
        half.scores.set_page(page, measured_scores(checker, index))
        half.answer.set_page(page, study.worksheet.pages[0].change_first)
        half.measured.set_view(measured_view(study, checker, index))

    def _connect(self) -> None:
        document, checker = self._workspace.document, self._workspace.checker
        for index, half in enumerate(self.halves):
            half.scores.scored.connect(partial(self._score, index))
            half.scores.dated.connect(partial(self._date, index))
            half.answer.answered.connect(partial(self._answer, index))
            half.answer.full.connect(self._tell_full)
        self.halves[0].answer.change_chosen.connect(self._choose_change)
        self.codes.written.connect(self._write_code)
        self._workspace.files.keeper_changed.connect(self._fix_codes)
        self.print_button.clicked.connect(lambda: self._workspace.cards.open("worksheet"))
        self.remark.edited.connect(self._write_remark)
        self.remark.full.connect(self._tell_full)
        document.study_changed.connect(self._on_study)
        self._workspace.reader.photo_changed.connect(lambda opened: self._show_all())
        checker.checks_changed.connect(self._show_all)
        checker.opened_changed.connect(self._show_all)
        checker.busy.connect(lambda index, text, share: self._show_half(index))
        checker.idle.connect(self._show_half)
        self._workspace.preferences.changed.connect(lambda before, after: self._show_all())

    # Layout

    def _lay_out(self) -> None:
        self._rule = Rule(self._sheet, down=True)
        remark = QLabel(translate("worksheet", "Teacher's remark"), self._sheet)
        remark.setProperty("role", "label")
        remark.setBuddy(self.remark)
        self._remark_label = remark
        self._grid = QGridLayout()
        self._grid.setHorizontalSpacing(INSIDE)
        self._grid.setVerticalSpacing(WITHIN)
        column = QVBoxLayout(self._sheet)
        column.setContentsMargins(INSIDE, 10, INSIDE, 6)
        column.setSpacing(WITHIN)
        self._note = QWidget(self._sheet)
        note = QHBoxLayout(self._note)
        note.setContentsMargins(0, 0, 0, 0)
        note.setSpacing(WITHIN)
        top = Qt.AlignmentFlag.AlignTop
        note.addWidget(remark, 0, top)
        note.addWidget(self.remark, 1)
        self._head = QGridLayout()
        self._head.setHorizontalSpacing(GROUP)
        self._head.setVerticalSpacing(WITHIN)
        self._head.setColumnStretch(1, 1)
        self._head.addWidget(self.codes, 0, 0, top)
        self._head_rows = ""
        self._place_head("row")
        column.addLayout(self._head)
        column.addLayout(self._grid, 1)
        self._scroll = QScrollArea(self)
        self._scroll.setWidget(self._sheet)
        self._scroll.setWidgetResizable(True)
        self._scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self._scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self._scroll)
        self._stacked: bool | None = None
        self._arrange()

    def _arrange(self) -> None:
        room = self.width() - 3 * INSIDE  # the scroll bar has the third
        beside = self.codes.minimumSizeHint().width() + self.print_button.sizeHint().width()
        wanted = beside + look().type.grow(_REMARK)
        self._place_head("row" if wanted <= room else "two" if beside <= room else "three")
        stacked = self.width() < look().type.grow(SIDE_BY_SIDE_FROM)
        share = _PICTURES_STACKED if stacked else _PICTURES
        pictures = round(share * (self.height() - _REST))
        self._remark_label.setFixedHeight(self.print_button.sizeHint().height())
        for half in self.halves:
            half.scores.set_room(self.height(), pictures)
        if stacked == self._stacked:
            return
        self._stacked = stacked
        while self._grid.count():
            self._grid.takeAt(0)
        count = len(self.halves[0].parts)
        for index, half in enumerate(self.halves):
            for number, part in enumerate(half.parts):
                if stacked:
                    self._grid.addWidget(part, index * count + number, 0)
                else:
                    self._grid.addWidget(part, number, 2 * index)
        self._rule.setVisible(not stacked)
        if not stacked:
            self._grid.addWidget(self._rule, 0, 1, count, 1)
        for column in (0, 2):
            self._grid.setColumnStretch(column, 1 if column == 0 or not stacked else 0)
        for row in range(2 * count):
            # Words take what height there is; the scales never stretch.
            used = row < count or stacked
            self._grid.setRowStretch(row, row % count if used else 0)

    def _place_head(self, rows: Literal["row", "two", "three"]) -> None:
        """Codes, remark and button in one row, or below each other where they lack room."""
        if rows == self._head_rows:
            return
        self._head_rows = rows
        for part in (self._note, self.print_button):
            self._head.removeWidget(part)
        self._head.addWidget(self._note, *((0, 1, 1, 1) if rows == "row" else (1, 0, 1, 3)))
        left, top = Qt.AlignmentFlag.AlignLeft, Qt.AlignmentFlag.AlignTop
        if rows == "three":
            self._head.addWidget(self.print_button, 2, 0, left | top)
        else:
            self._head.addWidget(self.print_button, 0, 2, top)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._arrange()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_grid"):
            self._arrange()
            # Once more when the fields have taken their new sizes too.
            QTimer.singleShot(0, self, self._arrange)

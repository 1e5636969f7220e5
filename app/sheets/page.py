"""The Sheets page: the sky beside both sheets, level, and what was found of them."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QEvent, QMimeData, QSize, Qt
from PySide6.QtGui import (
    QAction,
    QDragEnterEvent,
    QDragLeaveEvent,
    QDragMoveEvent,
    QDropEvent,
    QResizeEvent,
)
from PySide6.QtWidgets import QStackedLayout, QVBoxLayout, QWidget

from app.drawing.sheets.views import spoken_lines
from app.files.opening import can_open
from app.look import look
from app.look.space import INSIDE
from app.sheets.actions import sheet_actions
from app.sheets.adding import SheetAdder
from app.sheets.asking import findings_view, place_view
from app.sheets.board import SheetBoard
from app.sheets.corner_edits import CornerEdits
from app.sheets.drops import SheetDrops
from app.sheets.lower import LowerPart
from app.sheets.showing import board_of
from app.widgets.layouts import layout_of
from app.widgets.sky_wall import SkyWall
from app.workspace import Menu, Page, Workspace
from core.i18n import translate
from core.sheet.findings.planned import Planned
from core.sheet.result import SheetOptions
from core.study import Study, with_sheet

INDEXES = (0, 1)


class SheetsPage(Page):
    """Above three pictures, below findings and the bands of each sheet in the same columns."""

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._workspace = workspace
        self._chosen: int | None = None
        self._wanted = ""
        self.setProperty("ground", "wall")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self.setAcceptDrops(True)
        self._body = QWidget(self)
        self.board = SheetBoard(self._body)
        self.lower_part = LowerPart(self._body)
        self.findings, self.columns = self.lower_part.findings, self.lower_part.columns
        self.teach = self.lower_part.teach
        self.empty = SkyWall(
            translate("sheets page", "No photo yet."),
            translate(
                "sheets page",
                "Sheets are checked against the sky of a photo: open one, or press one of these.",
            ),
            workspace.opener.samples(),
            self,
            tell=workspace.opener.tell_of,
        )
        checker = workspace.checker
        self.adder = SheetAdder(
            workspace.document, workspace.pictures, checker.jobs, workspace.notices, self
        )
        self._drops = SheetDrops(self, self.board, self.adder, workspace)
        self.corners = CornerEdits(workspace, self)
        self._lay_out()
        self._actions = sheet_actions(
            self, self._toggle_measured, self.adder.choose, self.set_corners
        )
        self._connect()
        self._refresh()

    @property
    def chosen(self) -> int | None:
        """The band whose rows are open."""
        return self._chosen

    def least_size(self) -> QSize:
        return QSize(look().type.grow(900), look().type.grow(500))

    def minimumSizeHint(self) -> QSize:
        """Three pictures and their words need this width at any text size; less scrolls."""
        least = super().minimumSizeHint()
        return QSize(max(least.width(), look().type.grow(860)), least.height())

    def actions_for(self, menu: Menu) -> tuple[QAction, ...]:
        return self._actions.get(menu, ())

    # What the user asks for

    def choose(self, band: int) -> None:
        """Open the rows of a band, or close them again."""
        self._chosen = None if band == self._chosen else band
        self._refresh()

    def show_findings(self, key: str) -> None:
        """Show the findings of a sheet ("0", "1"), or the "change"."""
        self._wanted = key
        self._refresh()

    def set_corners(self, index: int) -> None:
        """Show the whole photo of a sheet with its corners."""
        if self._workspace.document.study.sheets[index] is not None:
            self.corners.begin(index)
            self._top.setCurrentWidget(self.corners.editor)

    def take(self, mime: QMimeData) -> bool:
        """Add what was pasted as the first sheet that is missing; False when it is no picture."""
        if self._workspace.reader.photo is None or not can_open(mime):
            return False
        free = [i for i in INDEXES if self._workspace.document.study.sheets[i] is None]
        if not free:
            self._workspace.notices.hint(
                translate(
                    "sheets page",
                    "Both sheets are there: drop the picture onto the one it should replace.",
                )
            )
            return True
        return self.adder.add_mime(free[0], mime)

    def ask(self, index: int, key: str) -> None:
        """Do what a button or menu of a sheet says; keys as in `SheetTitle` and `PlaceView`."""
        sheet = self._workspace.document.study.sheets[index]
        if key in ("add", "replace"):
            self.adder.choose(index)
        elif key == "corners":
            self.set_corners(index)
        elif key == "cancel":
            self.adder.cancel(index)
            self._workspace.checker.cancel(index)
        elif key == "check":
            self._workspace.checker.check_now(index)
        elif sheet is not None and key == "remove":
            text = translate("undo", "remove sheet {number}").format(number=index + 1)
            self._change(text, with_sheet(self._study, index, None))
        elif sheet is not None:
            self._set_options(index, key, sheet.options)

    def _set_options(self, index: int, key: str, options: SheetOptions) -> None:
        if key == "scan":
            self.corners.set_scan(index, not options.scan)
        elif key == "turn":
            self.corners.turn(index, 1)
        elif key == "confirm":
            self.corners.confirm(index)
        elif key == "accept":
            self.corners.accept_turn(index)

    # In step

    def _connect(self) -> None:
        work = self._workspace
        self.empty.asked.connect(work.opener.choose)
        self.empty.sky_chosen.connect(work.opener.open_sample)
        work.files.began.connect(lambda: self.empty.set_opening(True))
        work.files.idle.connect(lambda: self.empty.set_opening(False))
        self.empty.set_opening(work.files.opening)
        for index in INDEXES:
            for speaker in (
                self.board.titles[index],
                self.board.places[index],
                self.columns[index].strip,
            ):
                speaker.asked.connect(self.ask)
            self.columns[index].bands.band_chosen.connect(self.choose)
        self._lefts: list[float] = []
        self.board.band_chosen.connect(self.choose)
        self.board.corners_asked.connect(self.set_corners)
        self.board.moved.connect(self._follow_board)
        self.findings.chosen.connect(self.show_findings)
        self.findings.show_asked.connect(lambda: self._show_measured(True))
        self.findings.score_asked.connect(lambda: self.page_wanted.emit("worksheet"))
        self.findings.hide_asked.connect(lambda: self._show_measured(False))
        self.corners.closed.connect(self._close_corners)
        for source in (work.checker, self.adder):
            source.busy.connect(self._show_busy)
            source.idle.connect(self._show_idle)
        work.checker.checks_changed.connect(self._refresh)
        work.planner.plan_changed.connect(lambda plan: self._refresh())
        work.checker.opened_changed.connect(self._refresh)
        work.document.study_changed.connect(self._on_study)
        work.document.begun.connect(self._close_corners)
        work.reader.photo_changed.connect(lambda opened: self._refresh())
        work.reader.photo_closed.connect(self._refresh)

    @property
    def _study(self) -> Study:
        return self._workspace.document.study

    def _change(self, text: str, after: Study) -> None:
        self._workspace.document.change(text, after)

    def _on_study(self, before: Study, after: Study) -> None:
        if before.sheets != after.sheets:
            self._wanted = ""
        if (
            before.sheets != after.sheets
            or before.bands != after.bands
            or before.worksheet != after.worksheet
        ):
            self._refresh()

    def _show_measured(self, show: bool) -> None:
        self._workspace.checker.show_measured = show

    def _toggle_measured(self) -> None:
        self._show_measured(not self._workspace.checker.show_measured)

    def _close_corners(self) -> None:
        if self._top.currentWidget() is self.corners.editor:
            self._top.setCurrentWidget(self._body)
            index = self.corners.index
            if self._study.sheets[index] is not None:
                self.board.titles[index].corners.setFocus(Qt.FocusReason.OtherFocusReason)

    def _show_busy(self, index: int, text: str, share: float) -> None:
        self.board.titles[index].show_busy(text, share)

    def _show_idle(self, index: int) -> None:
        if not (self.adder.running(index) or self._workspace.checker.running(index)):
            self.board.titles[index].show_idle()

    # What is shown

    def _refresh(self) -> None:
        opened = self._workspace.reader.opened
        if opened is None:
            self._top.setCurrentWidget(self.empty)
        elif self._top.currentWidget() is self.empty:
            self._top.setCurrentWidget(self._body)
        count = self._study.bands.count if self._study.bands else 0
        if self._chosen is not None and self._chosen >= count:
            self._chosen = None
        self._show_board()
        self._show_lower()
        self._actions["view"][0].setChecked(self._workspace.checker.show_measured)

    def _show_board(self) -> None:
        opened, bands = self._workspace.reader.opened, self._study.bands
        checker = self._workspace.checker
        if opened is None:
            return
        shown = tuple(self._is_shown(index) for index in INDEXES)
        view = board_of(opened, bands, checker.checks, checker.pictures, shown)
        ratio = self.devicePixelRatioF()
        first, second = (place_view(self._study, checker, index) for index in INDEXES)
        self.board.set_view(
            replace(view, chosen=self._chosen, aimed=self._drops.aimed, ratio=ratio),
            (first, second),
        )
        spoken = []
        for index in INDEXES:
            sheet, check = self._study.sheets[index], checker.checks[index]
            scan = sheet is not None and sheet.options.scan
            self.board.titles[index].show_sheet(sheet is not None, scan)
            if check is not None and shown[index]:
                name = translate("sheets page", "Sheet {number}").format(number=index + 1)
                spoken.append(f"{name}. {spoken_lines(check)}")
        self.board.setAccessibleName(
            translate("sheets page", "The sky of the photo beside the sheets")
        )
        self.board.setAccessibleDescription(" ".join(spoken))

    def _is_shown(self, index: int) -> bool:
        """Whether lines, marks and verdicts of a sheet are shown."""
        check = self._workspace.checker.checks[index]
        return check is not None and check.readable and self._workspace.checker.is_open(index)

    def _show_lower(self) -> None:
        checker, study = self._workspace.checker, self._study
        badge, chip = self.board.chip_widths
        for index, column in enumerate(self.columns):
            column.show_check(
                checker.checks[index],
                study.bands.count if study.bands else 0,
                shown=self._is_shown(index),
                is_open=checker.is_open(index),
                heading=self._heading(index),
                chosen=self._chosen,
                badge=badge,
                chip=chip,
            )
        self.lower_part.show_findings(
            findings_view(study, checker, self._wanted, self._planned()),
            nothing=not any(study.sheets),
        )
        pictures = self.board.shape.pictures
        self._lefts = [picture.left() for picture in pictures]
        room = self.width() - pictures[-1].left() - INSIDE
        self.teach.arrange(self._lefts, room)
        self.lower_part.arrange([self.board.column(index).left() - badge for index in INDEXES])

    def _follow_board(self) -> None:
        """The board was laid out only now, as it was hidden: what is below stands under it."""
        if [picture.left() for picture in self.board.shape.pictures] != self._lefts:
            self._show_lower()

    def _planned(self) -> Planned:
        """What the sheets were painted by, as far as it is planned by now."""
        work = self._workspace
        return Planned(
            work.planner.plan, self._study.mix.sheet, work.preferences.settings.wording.units
        )

    def _heading(self, index: int) -> str:
        if index == 0 or self._workspace.checker.checks[0] is None:
            return translate("sheets page", "Band by band")
        return translate("sheets page", "After the change")

    # Layout

    def _lay_out(self) -> None:
        self._top = QStackedLayout(self)
        self._top.addWidget(self.empty)
        self._top.addWidget(self._body)
        self._top.addWidget(self.corners.editor)
        column = QVBoxLayout(self._body)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.board)
        column.addWidget(self.lower_part, 1)

    # Qt

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self.board.set_room(self.height())
        layout_of(self._body).activate()
        self._refresh()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "_actions"):
            self._refresh()

    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        self._drops.enter(event)

    def dragMoveEvent(self, event: QDragMoveEvent) -> None:
        self._drops.move(event)

    def dragLeaveEvent(self, event: QDragLeaveEvent) -> None:
        self._drops.leave()

    def dropEvent(self, event: QDropEvent) -> None:
        self._drops.drop(event)

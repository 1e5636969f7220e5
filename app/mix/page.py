"""The Mix page: the box, a row of mixes beside the sky, and the plan."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QMimeData, QPoint, QSize, Qt, QTimer
from PySide6.QtGui import QAction, QResizeEvent, QShowEvent
from PySide6.QtWidgets import QMenu, QStackedLayout, QWidget

from app.drawing.painting import PaintedView
from app.drawing.washes import wash_views
from app.look import look
from app.mix.band_detail import Toner, detail_view, toners_of
from app.mix.box_control import BoxControl
from app.mix.box_panel import BoxPanel
from app.mix.drying_menu import DryingMenu
from app.mix.edits import MixEdits
from app.mix.meeting_view import meeting_view
from app.mix.page_places import BAR_LEAST, plan_place, widths
from app.mix.painted import PAINT_BEGINS, PaintedSky
from app.mix.plan_bar import PlanBar
from app.mix.plan_panel import PlanPanel
from app.mix.plan_view import plan_view
from app.mix.rows import MixRows, RowsContent
from app.mix.views import about_text, band_view, first_to_open
from app.mix.wishes import WishesMenu
from app.widgets.sky_wall import SkyWall
from app.workspace import Menu, Page, Workspace
from core.i18n import translate
from core.paint.planned import BandMix, MixPlan
from core.study import Study

if TYPE_CHECKING:
    from app.mix.scrap_control import ScrapControl


class MixPage(Page):
    """Box at the left, rows beside the sky in the middle, the plan at the right or at the foot."""

    def __init__(self, workspace: Workspace, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._workspace = workspace
        self._row = 0
        self._fresh = True  # of a sky seen for the first time the band most in need opens
        self._toner: Toner | None = None
        self.setProperty("ground", "paper")
        self.setAttribute(Qt.WidgetAttribute.WA_StyledBackground)
        self._body = QWidget(self)
        self.box = BoxPanel(self._body)
        self.rows = MixRows(self._body)
        self.painted = PaintedSky(self._body)
        self.plan_bar = PlanBar(self._body)
        self.plan = PlanPanel(self._body)
        self.empty = SkyWall(
            translate("mix page", "No sky to mix for yet."),
            translate(
                "mix page",
                "Open a photo of a sky or press one of these: its mixes are planned from your box.",
            ),
            workspace.opener.samples(),
            self,
            tell=workspace.opener.tell_of,
        )
        self._top = QStackedLayout(self)
        self._top.addWidget(self.empty)
        self._top.addWidget(self._body)
        self.edits = MixEdits(workspace.document, workspace.notices)
        self.box_edits = BoxControl(self.box, workspace, self.edits)
        self._wishes = WishesMenu(workspace.document, workspace.notices, self.edits)
        self._wishes_action = QAction(self)
        self.drying = DryingMenu(workspace.document, self)
        self._scrap: ScrapControl | None = None
        self._plan_open = False
        self._connect()
        self._show_plan(workspace.planner.plan)

    @property
    def scrap(self) -> ScrapControl:
        """The scraps, made when they are first looked at."""
        if self._scrap is None:
            from app.mix.scrap_control import ScrapControl  # deferred: start-up time

            self._scrap = ScrapControl(self.rows, self._workspace, self)
            self._scrap.set_plan(self._plan_now(), self._letter(self.chosen))
        return self._scrap

    @property
    def chosen(self) -> int:
        """Number of the band that is open, or whose meeting with the next is."""
        return self._row // 2

    def least_size(self) -> QSize:
        return QSize(look().type.grow(760), look().type.grow(440))

    def actions_for(self, menu: Menu) -> tuple[QAction, ...]:
        return (self._wishes_action, self.drying.action) if menu == "edit" else ()

    # What the user asks for

    def choose_row(self, number: int) -> None:
        """Open a row: an even number is a band, an odd one its meeting with the next."""
        plan = self._plan_now()
        if plan is None:
            return
        number = min(max(number, 0), 2 * len(plan.bands) - 2)
        if number != self._row:
            self._row, self._toner = number, None
            self._show_rows()
        self.rows.reveal()

    def choose(self, band: int) -> None:
        """Open a band."""
        self.choose_row(2 * band)

    def menu_of(self, band: int) -> QMenu:
        """The menu of a band's wishes."""
        return self._wishes.menu(self._letter(band), lambda: self._set_by_hand(band), self)

    def show_plan(self, shown: bool) -> None:
        """Lay the plan over the page, or take it away, where there is no column for it."""
        self._plan_open = shown
        self._place()
        if shown and self.plan.isVisible():
            self.plan.close_button.setFocus(Qt.FocusReason.TabFocusReason)
        elif self.plan_bar.isVisible():
            self.plan_bar.button.setFocus(Qt.FocusReason.TabFocusReason)

    def take_card(self, path: Path) -> None:
        self.box_edits.menu.swatches.read_from(path)

    def take(self, mime: QMimeData) -> bool:
        return self.rows.detail.scrap.isVisible() and self.scrap.take(mime)

    # Connections

    def _connect(self) -> None:
        workspace = self._workspace
        workspace.planner.plan_changed.connect(self._show_plan)
        workspace.document.study_changed.connect(self._on_study)
        workspace.reader.photo_changed.connect(lambda opened: self._show_plan(None))
        workspace.preferences.changed.connect(
            lambda before, after: self._show_plan(workspace.planner.plan)
        )
        self.empty.asked.connect(workspace.opener.choose)
        self.empty.sky_chosen.connect(workspace.opener.open_sample)
        workspace.files.began.connect(lambda: self.empty.set_opening(True))
        workspace.files.idle.connect(lambda: self.empty.set_opening(False))
        self.empty.set_opening(workspace.files.opening)
        self.rows.row_chosen.connect(self.choose_row)
        self.rows.menu_asked.connect(self._open_menu)
        detail = self.rows.detail
        detail.mix_asked.connect(lambda mix: self.edits.use_mix(self._letter(self.chosen), mix))
        detail.part_asked.connect(self._set_part)
        detail.load_asked.connect(self._set_load)
        detail.back_asked.connect(lambda: self._wishes.search_again(self._letter(self.chosen)))
        detail.wishes_asked.connect(self._open_wishes)
        detail.toner_asked.connect(self._look_at_toner)
        detail.stage_chosen.connect(lambda key: self.scrap if key == "scrap" else None)
        self.plan_bar.asked.connect(lambda: self.show_plan(True))
        self.plan.print_asked.connect(lambda: workspace.cards.open("plan"))
        self.plan.closed.connect(lambda: self.show_plan(False))
        self.plan.sheet_chosen.connect(self.edits.choose_sheet)
        self.plan.figure_asked.connect(self.edits.set_figure)

    @property
    def _study(self) -> Study:
        return self._workspace.document.study

    def _plan_now(self) -> MixPlan | None:
        return self._workspace.planner.plan

    def _letter(self, band: int) -> str:
        plan = self._plan_now()
        return plan.bands[band].letter if plan is not None else chr(ord("A") + band)

    def _band(self) -> BandMix | None:
        plan = self._plan_now()
        if plan is None or self.chosen >= len(plan.bands):
            return None
        return plan.bands[self.chosen]

    def _set_part(self, key: str, count: int) -> None:
        band = self._band()
        if band is not None and band.classroom is not None:
            self.edits.set_part(band.letter, band.classroom.mix, key, count)

    def _set_load(self, steps: int) -> None:
        band = self._band()
        if band is not None and band.classroom is not None:
            self.edits.set_load(band.letter, band.classroom.mix, steps)

    def _look_at_toner(self, number: int) -> None:
        plan, band = self._plan_now(), self._band()
        if plan is not None and band is not None:
            self._toner = toners_of(plan, band)[number]
            self._show_rows()

    def _set_by_hand(self, band: int) -> None:
        self.choose(band)
        self.rows.detail.show_stage("hand")
        self._show_rows()
        self.rows.reveal()

    def _open_menu(self, band: int, x: int, y: int) -> None:
        self.choose(band)
        menu = self.menu_of(band)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.popup(QPoint(x, y))

    def _open_wishes(self) -> None:
        button = self.rows.detail.wishes
        spot = button.mapToGlobal(QPoint(0, button.height() + 2))
        self._open_menu(self.chosen, spot.x(), spot.y())

    # What is shown

    def _on_study(self, before: Study, after: Study) -> None:
        if before.mix != after.mix and self._plan_now() is not None:
            band = self._band()
            parts = after.mix.choice(band.letter).parts if band is not None else None
            if parts is not None:
                # The next press counts from here, even before the plan has followed.
                self.rows.detail.hand.set_counts(dict(parts))

    def _show_plan(self, plan: MixPlan | None) -> None:
        opened = self._workspace.reader.opened is not None
        self._top.setCurrentWidget(self._body if opened else self.empty)
        if plan is not None:
            fresh, self._fresh = self._fresh, False
            if fresh:
                self._row = 2 * first_to_open(plan)
            self._row = min(self._row, 2 * len(plan.bands) - 2)
            units = self._workspace.preferences.settings.wording.units
            view = plan_view(plan, self._study.mix, units)
            self.plan.set_view(view)
            self.plan_bar.set_line(view.line)
        else:
            self._row, self._fresh = 0, True
            self.plan_bar.set_line(translate("mix page", "The mixes are being planned."))
        self._show_painted(plan)
        self._show_rows()
        self._place()
        if plan is not None and fresh:
            self._reveal_soon()
        self.box_edits.look_ahead_soon()

    def _show_painted(self, plan: MixPlan | None) -> None:
        """The sky as the mixes are predicted to dry, beside the photo."""
        reader = self._workspace.reader
        opened, readings = reader.opened, reader.readings
        if plan is None or opened is None or not readings:
            self.painted.set_view(None)
            return
        edges = (readings[0].top, *(reading.bottom for reading in readings))
        view = PaintedView(opened.picture, edges[-1], wash_views(plan, edges), PAINT_BEGINS)
        aspect = opened.photo.width / (opened.photo.height * max(edges[-1], 1e-6))
        self.painted.set_view(view, aspect)

    def _show_rows(self) -> None:
        plan = self._plan_now()
        self._show_action()
        if self._scrap is not None:
            self._scrap.set_plan(plan, self._letter(self.chosen))
        if plan is None:
            self.rows.set_content(RowsContent(), 0)
            return
        options, transitions = self._study.mix, self._workspace.planner.transitions
        bands = tuple(band_view(plan, band, options) for band in plan.bands)
        abouts = tuple(about_text(plan, band) for band in plan.bands)
        meetings = tuple(
            meeting_view(
                band,
                plan.bands[number + 1],
                transitions[number] if number < len(transitions) else None,
            )
            for number, band in enumerate(plan.bands[:-1])
        )
        detail = None
        if self._row % 2 == 0 and self.chosen < len(bands):
            band = plan.bands[self.chosen]
            detail = detail_view(plan, band, bands[self.chosen], options, self._toner)
        self.rows.set_content(RowsContent(bands, abouts, meetings), self._row, detail)

    def _show_action(self) -> None:
        plan = self._plan_now()
        self._wishes_action.setEnabled(plan is not None)
        old = self._wishes_action.menu()
        letter = self._letter(self.chosen)
        self._wishes_action.setText(
            translate("mix page", "Pai&nts of band {letter}").format(letter=letter)
        )
        if plan is not None:
            self._wishes_action.setMenu(self.menu_of(self.chosen))
        if old is not None:
            old.deleteLater()

    # Layout

    def showEvent(self, event: QShowEvent) -> None:
        super().showEvent(event)
        if self.focusWidget() is None:
            self.rows.focus_chosen(Qt.FocusReason.OtherFocusReason)
        self.box_edits.look_ahead_soon()
        self._reveal_soon()

    def _reveal_soon(self) -> None:
        """Once everything has its place: the first band that is open is seen whole."""
        QTimer.singleShot(0, self, self.rows.reveal)

    def resizeEvent(self, event: QResizeEvent) -> None:
        super().resizeEvent(event)
        self._place()

    def _place(self) -> None:
        width, height = self.width(), self.height()
        share = widths(width, self.rows.wall_width())
        wide, bar = share.column > 0, 0
        if not wide:
            bar = max(self.plan_bar.heightForWidth(share.middle), look().type.grow(BAR_LEAST))
        planned = self._plan_now() is not None
        self._body.setGeometry(0, 0, width, height)
        painted = self.painted.height_at(share.box, height)
        self.painted.setVisible(painted > 0)
        self.painted.setGeometry(0, 0, share.box, painted)
        self.box.setGeometry(0, painted, share.box, height - painted)
        self.rows.setGeometry(share.box, 0, share.middle, height - bar)
        self.plan_bar.setVisible(not wide)
        self.plan_bar.button.setVisible(planned)
        self.plan_bar.setGeometry(share.box, height - bar, share.middle, bar)
        self.plan.set_overlay(not wide)
        self.plan.setVisible(planned and (wide or self._plan_open))
        self.plan.setGeometry(plan_place(width, height, share.column))
        self.plan.raise_()

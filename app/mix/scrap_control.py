"""Joins the stage of scraps to the desk: what is asked there, and what it then shows."""

from __future__ import annotations

from PySide6.QtCore import QMimeData, QObject
from PySide6.QtWidgets import QWidget

from app.mix.rows import MixRows
from app.mix.scrap_desk import ScrapDesk
from app.mix.scrap_view import scrap_view
from app.workspace import Workspace
from core.paint.planned import MixPlan


class ScrapControl(QObject):
    """The scraps of the Mix page.

    Attributes
    ----------
    desk : ScrapDesk
    """

    def __init__(self, rows: MixRows, workspace: Workspace, page: QWidget) -> None:
        super().__init__(page)
        self._rows, self._preferences = rows, workspace.preferences
        self._plan: MixPlan | None = None
        self._letter = "A"
        self._busy = False
        files = workspace.files
        self.desk = ScrapDesk(
            workspace.document,
            workspace.pictures,
            workspace.notices,
            lambda: not files.kept_elsewhere(),
            page,
        )
        files.keeper_changed.connect(self._show)
        desk, stage = self.desk, rows.detail.scrap
        desk.changed.connect(self._show)
        desk.busy.connect(lambda share: self._set_busy(True))
        desk.idle.connect(lambda: self._set_busy(False))
        stage.picture_asked.connect(desk.choose)
        stage.cancelled.connect(desk.cancel)
        stage.stroke_chosen.connect(desk.look_at)
        stage.band_chosen.connect(desk.assign)
        stage.left_out.connect(desk.leave_out)
        stage.drawn.connect(desk.draw)
        stage.fresh_asked.connect(desk.set_fresh)
        stage.kept.connect(desk.keep)
        stage.taught.connect(desk.teach)
        stage.taken_out.connect(self._take_out)
        stage.dropped.connect(desk.add_mime)

    def set_plan(self, plan: MixPlan | None, letter: str) -> None:
        """The plan now, and the band whose row is open."""
        self._plan, self._letter = plan, letter
        self.desk.set_plan(plan, letter)
        self._show()

    def take(self, mime: QMimeData) -> bool:
        """A pasted picture, while the stage is shown."""
        stage = self._rows.detail.scrap
        return stage.isVisible() and self.desk.add_mime(mime)

    def _take_out(self) -> None:
        self.desk.take_out(self.desk.on_desk.letter or self._letter)

    def _set_busy(self, busy: bool) -> None:
        self._busy = busy
        self._show()

    def _show(self) -> None:
        plan = self._plan
        if plan is None or self._letter not in {band.letter for band in plan.bands}:
            return
        wording = self._preferences.settings.wording
        view = scrap_view(self.desk, plan, self._letter, wording, busy=self._busy)
        self._rows.detail.scrap.set_view(view)
        if self._rows.detail.stage == "scrap":
            self._rows.detail.resized.emit()

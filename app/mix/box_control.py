"""Keeps the box panel in step with the study, and passes on what is asked there."""

from __future__ import annotations

from contextlib import suppress

from PySide6.QtCore import QObject, QPoint, Qt, QTimer

from app.mix.box_menu import BoxMenu
from app.mix.box_panel import BoxPanel
from app.mix.box_view import box_view, boxes_to_choose
from app.mix.edits import MixEdits
from app.mix.left_out import paint_menu
from app.workspace import Workspace
from core import mixing
from core.errors import BoxError
from core.paint.box.box import Box
from core.study import Study

AHEAD_MS = 80
"""So long after a plan the paints likely to be ticked next are planned for."""


class BoxControl(QObject):
    """One for the page's panel."""

    def __init__(self, panel: BoxPanel, workspace: Workspace, edits: MixEdits) -> None:
        super().__init__(panel)
        self._panel = panel
        self._workspace = workspace
        self._edits = edits
        self._order: list[str] = []
        self._shown: Box | None = None
        self._boxes: tuple[Box, ...] = ()
        self.menu = BoxMenu(
            panel, workspace.document, workspace.notices, workspace.boxes, self.show, edits
        )
        self._ahead = QTimer(self, singleShot=True, interval=AHEAD_MS)
        self._ahead.timeout.connect(self._look_ahead)
        panel.box_chosen.connect(self._choose)
        panel.paint_ticked.connect(edits.tick)
        panel.white_asked.connect(edits.allow_white)
        panel.menu_asked.connect(self.menu.open)
        panel.paint_menu_asked.connect(self._open_paint_menu)
        workspace.document.study_changed.connect(self._on_study)
        self.show()

    @property
    def _study(self) -> Study:
        return self._workspace.document.study

    def show(self) -> None:
        """Show the study's box."""
        study = self._study
        self._boxes, current = boxes_to_choose(self._workspace.boxes.boxes(), study.box)
        if self._shown is None or self._shown.name != study.box.name:
            self._order = []
        self._shown = study.box
        view = box_view(self._boxes, current, self._order, study.mix)
        self._order = [paint.key for paint in view.paints]
        self._panel.set_view(view)

    def look_ahead_soon(self) -> None:
        """While the panel is looked at, have every tick of it planned before it is made."""
        self._ahead.start()

    def _look_ahead(self) -> None:
        if not self._panel.isVisible():
            return
        study, plan, ticked = self._study, self._workspace.planner.plan, []
        # What takes longest first: without a paint of the mixes much has to be found anew.
        mixes = [band.classroom.mix for band in plan.bands if band.classroom] if plan else []
        used = {key for mix in mixes for key in mix.keys}
        for key in sorted(self._order, key=lambda key: key not in used):
            with suppress(BoxError):  # the last paint stays
                ticked.append(mixing.tick_paint(study, key, key not in study.box.by_key))
        self._workspace.planner.look_ahead(ticked)

    def _choose(self, number: int) -> None:
        self._edits.choose_box(self._boxes[number])
        self.show()

    def _open_paint_menu(self, key: str, place: QPoint) -> None:
        menu = paint_menu(key, self._study, self._edits, self._panel)
        menu.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        menu.popup(place)

    def _on_study(self, before: Study, after: Study) -> None:
        white = before.mix.allow_white != after.mix.allow_white
        if before.box != after.box or white or before.mix.forbidden != after.mix.forbidden:
            self.show()

"""Between the corner editor and the study: each change is an edit that can be undone."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QObject, Signal
from PySide6.QtWidgets import QWidget

from app.corners.editor import CornerEditor, EditorView
from app.corners.standing import corners_shown, corners_status
from app.sheets.asking import strip_view
from app.state.document import Gesture
from app.workspace import Workspace
from core.i18n import translate
from core.sheet.result import Corners, SheetOptions
from core.study import Study, with_sheet


class CornerEdits(QObject):
    """Edits how a sheet is looked at; owns the editor.

    Signals
    -------
    closed()
        The editor is done with.
    """

    closed = Signal()

    def __init__(self, workspace: Workspace, page: QWidget) -> None:
        super().__init__(page)
        self._workspace = workspace
        self._index = 0
        self.editor = CornerEditor(page)
        self.editor.corners_moved.connect(self._move)
        self.editor.turn_asked.connect(lambda quarters: self.turn(self._index, quarters))
        self.editor.reset_asked.connect(self._reset)
        self.editor.scan_asked.connect(lambda scan: self.set_scan(self._index, scan))
        self.editor.question_asked.connect(self._answer)
        self.editor.done.connect(self.closed)
        workspace.checker.checks_changed.connect(self._show)
        workspace.document.study_changed.connect(self._on_study)

    @property
    def index(self) -> int:
        """The sheet that is edited."""
        return self._index

    def begin(self, index: int) -> None:
        """Edit a sheet."""
        self._index = index
        self._show()
        self.editor.begin()

    def turn(self, index: int, quarters: int) -> None:
        """Turn a sheet by quarter turns clockwise."""
        options = self._options(index)
        if options is not None:
            turned = replace(options, turned=(options.turned + quarters) % 4)
            self._change(translate("undo", "turn sheet {number}"), index, turned)

    def accept_turn(self, index: int) -> None:
        """Turn a sheet the way that fits the sky better."""
        options, check = self._options(index), self._workspace.checker.checks[index]
        if options is not None and check is not None and check.better_turn is not None:
            turned = replace(options, turned=check.better_turn)
            self._change(translate("undo", "turn sheet {number}"), index, turned)

    def confirm(self, index: int) -> None:
        """Keep the corners that were proposed for a sheet."""
        options, check = self._options(index), self._workspace.checker.checks[index]
        if options is not None and check is not None:
            kept = replace(options, corners=check.corners)
            self._change(translate("undo", "corners of sheet {number}"), index, kept)

    def set_scan(self, index: int, scan: bool) -> None:
        """Whether a sheet is a flat scan."""
        options = self._options(index)
        if options is not None:
            text = translate("undo", "flat scan of sheet {number}")
            self._change(text, index, replace(options, scan=scan))

    def _move(self, corners: Corners, gesture: Gesture) -> None:
        options = self._options(self._index)
        if options is not None:
            text = translate("undo", "corners of sheet {number}")
            self._change(text, self._index, replace(options, corners=corners), gesture)

    def _reset(self) -> None:
        options = self._options(self._index)
        if options is not None:
            text = translate("undo", "proposed corners of sheet {number}")
            self._change(text, self._index, replace(options, corners=None))

    def _answer(self, key: str) -> None:
        if key == "accept":
            self.accept_turn(self._index)

    def _options(self, index: int) -> SheetOptions | None:
        sheet = self._workspace.document.study.sheets[index]
        return sheet.options if sheet else None

    def _change(
        self, text: str, index: int, options: SheetOptions, gesture: Gesture | None = None
    ) -> None:
        study = self._workspace.document.study
        sheet = study.sheets[index]
        if sheet is not None:
            after = with_sheet(study, index, replace(sheet, options=options))
            self._workspace.document.change(text.format(number=index + 1), after, gesture)

    def _on_study(self, before: Study, after: Study) -> None:
        if before.sheets != after.sheets:
            if after.sheets[self._index] is None:
                self.closed.emit()
            else:
                self._show()

    def _show(self) -> None:
        checker = self._workspace.checker
        options, opened = self._options(self._index), checker.opened(self._index)
        if options is None or opened is None:
            self.editor.canvas.set_photo(None, (4, 3), 0)
            return
        check = checker.checks[self._index]
        height, width = opened.photo.pixels.shape[:2]
        canvas = self.editor.canvas
        canvas.set_photo(opened.picture, (width, height), options.turned)
        canvas.set_corners(corners_shown(options, check))
        self.editor.set_view(
            EditorView(
                translate("sheets page", "Corners of sheet {number}").format(
                    number=self._index + 1
                ),
                corners_status(options, check),
                options.scan,
                options.corners is not None,
                strip_view(check, buttons_for_corners=False),
                checker.pictures[self._index],
            )
        )

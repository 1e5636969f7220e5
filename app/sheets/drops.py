"""Pictures dropped on the Sheets page: onto a sheet's place, or onto the sky."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtGui import QDragEnterEvent, QDragMoveEvent, QDropEvent
from PySide6.QtWidgets import QWidget

from app.files.opening import can_open
from app.sheets.adding import SheetAdder
from app.sheets.board import SheetBoard
from app.workspace import Workspace


class SheetDrops:
    """Shows where a picture that is held over the page would land, and takes it."""

    def __init__(
        self, page: QWidget, board: SheetBoard, adder: SheetAdder, workspace: Workspace
    ) -> None:
        self._page, self._board, self._adder = page, board, adder
        self._workspace = workspace
        self._aimed: int | None = None

    @property
    def aimed(self) -> int | None:
        """The sheet's place a picture is held over."""
        return self._aimed

    def enter(self, event: QDragEnterEvent) -> None:
        """Something is brought over the page."""
        if self._workspace.reader.photo is not None and can_open(event.mimeData()):
            event.acceptProposedAction()

    def move(self, event: QDragMoveEvent) -> None:
        """It is moved there."""
        self._aim(self._place_under(event))
        event.acceptProposedAction()

    def leave(self) -> None:
        """It is taken away again."""
        self._aim(None)

    def drop(self, event: QDropEvent) -> None:
        """Take it: a sheet, or over the sky another photo."""
        index = self._place_under(event)
        self._aim(None)
        if index is None:
            taken = self._workspace.opener.open_mime(event.mimeData())
        else:
            taken = self._adder.add_mime(index, event.mimeData())
        if taken:
            event.acceptProposedAction()

    def _place_under(self, event: QDropEvent) -> int | None:
        at = self._board.mapFrom(self._page, event.position())
        return self._board.place_at(at.x(), at.y())

    def _aim(self, index: int | None) -> None:
        if index != self._aimed:
            self._aimed = index
            self._board.set_view(replace(self._board.view, aimed=index))

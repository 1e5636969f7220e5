"""Holds a page, and scrolls it where large text needs more room than the window has."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget

from app.look import look
from app.workspace import Page

_MOST_TURNS = 4
_NORMAL = 1.5
"""Up to this text size pages rearrange themselves; from here they also scroll."""


class PageScroll(QScrollArea):
    """One page, as large as the window or as large as its text needs, whichever is more."""

    def __init__(self, page: Page, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.page = page
        self._turns = 0
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(page)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "page"):
            self._fit()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Qt fits the page anew inside each resize of the page. While large text comes into force,
        the page may ask for one height at one width and for another at the next, back and forth
        until the stack is full and the program ends: after a few turns the size stands."""
        if event.type() != QEvent.Type.Resize:
            return super().eventFilter(watched, event)
        if self._turns >= _MOST_TURNS:
            return False
        self._turns += 1
        try:
            return super().eventFilter(watched, event)
        finally:
            self._turns -= 1

    def _fit(self) -> None:
        large = look().type.scale > _NORMAL
        self.page.setMinimumSize(self.page.least_size() if large else QSize(0, 0))

"""Holds a page, and scrolls it where large text needs more room than the window has."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt
from PySide6.QtWidgets import QFrame, QScrollArea, QWidget

from app.look import look
from app.workspace import Page

_NORMAL = 1.5
"""Up to this text size pages rearrange themselves; from here they also scroll."""


class PageScroll(QScrollArea):
    """One page, as large as the window or as large as its text needs, whichever is more."""

    def __init__(self, page: Page, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.page = page
        self.setFrameShape(QFrame.Shape.NoFrame)
        self.setWidgetResizable(True)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setWidget(page)
        self._fit()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange and hasattr(self, "page"):
            self._fit()

    def _fit(self) -> None:
        large = look().type.scale > _NORMAL
        self.page.setMinimumSize(self.page.least_size() if large else QSize(0, 0))

"""The magnifier over a corner that is held."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QRectF, Qt
from PySide6.QtGui import (
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QWidget

from app.drawing.sheets.corners import LensView, paint_lens


class Lens(QWidget):
    """The magnifier over the canvas; the mouse goes through it."""

    def __init__(self, view: Callable[[int], LensView | None], canvas: QWidget) -> None:
        """`view` gives what is shown of a corner."""
        super().__init__(canvas)
        self._view = view
        self._spot = 0
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.hide()

    def show_corner(self, spot: int) -> None:
        """Magnify another corner."""
        self._spot = spot
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        view = self._view(self._spot)
        if view is not None:
            painter = QPainter(self)
            paint_lens(painter, QRectF(self.rect()).adjusted(3, 3, -3, -3), view)
            painter.end()

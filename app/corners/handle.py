"""One corner of a sheet, to be dragged or moved by keys."""

from __future__ import annotations

from PySide6.QtCore import QPoint, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import (
    QFocusEvent,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPaintEvent,
)
from PySide6.QtWidgets import QWidget

from app.drawing.sheets.corners import HandleView, paint_handle
from core.i18n import translate

_KEYS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}


def corner_names() -> tuple[str, str, str, str]:
    """What the corners are called, as seen on the screen."""
    return (
        translate("sheets page", "Top left corner"),
        translate("sheets page", "Top right corner"),
        translate("sheets page", "Bottom right corner"),
        translate("sheets page", "Bottom left corner"),
    )


class CornerHandle(QWidget):
    """One corner to take hold of; `spot` counts clockwise from the top left of the screen.

    Signals
    -------
    moved(spot: int, point: QPointF)
        Dragged to a point of the canvas.
    stepped(spot: int, right: int, down: int)
        Moved by so many pixels of the photo.
    taken(spot: int), let_go(spot: int), looked_at(spot: int, looked: bool)
    """

    moved = Signal(int, QPointF)
    stepped = Signal(int, int, int)
    taken = Signal(int)
    let_go = Signal(int)
    looked_at = Signal(int, bool)

    def __init__(self, spot: int, parent: QWidget) -> None:
        super().__init__(parent)
        self._spot = spot
        self._offset: QPointF | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.SizeAllCursor)
        self.setProperty("own_focus", True)
        self.setAccessibleName(corner_names()[spot])
        self.setAccessibleDescription(
            translate(
                "sheets page", "Arrow keys move it by one pixel of the photo, with Shift by ten."
            )
        )

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._offset = event.position() - QPointF(self.width() / 2, self.height() / 2)
            self.setFocus(Qt.FocusReason.MouseFocusReason)
            self.taken.emit(self._spot)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._offset is not None:
            at = QPointF(self.mapToParent(QPoint(0, 0))) + event.position() - self._offset
            self.moved.emit(self._spot, at)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._offset is not None:
            self._offset = None
            self.let_go.emit(self._spot)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        step = _KEYS.get(Qt.Key(event.key()))
        if step is None:
            super().keyPressEvent(event)
            return
        by = 10 if event.modifiers() & Qt.KeyboardModifier.ShiftModifier else 1
        self.stepped.emit(self._spot, by * step[0], by * step[1])

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self.looked_at.emit(self._spot, True)
        self.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        self.looked_at.emit(self._spot, False)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        paint_handle(painter, QRectF(self.rect()), HandleView(self.hasFocus()))
        painter.end()

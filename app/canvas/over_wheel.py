"""The wheel laid over the photo: dragged by its face, sized by its rim, never read through."""

from __future__ import annotations

import math
import time
from dataclasses import replace

from PySide6.QtCore import QEvent, QPointF, Qt, Signal
from PySide6.QtGui import QEnterEvent, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QWheelEvent
from PySide6.QtWidgets import QWidget

from app.drawing.wheel.layout import wheel_hit
from app.drawing.wheel.over import Spot, on_rim, on_wheel, paint_over_wheel
from app.drawing.wheel.shape import WheelGeometry, WheelMarker, WheelView
from app.look import look
from app.state.document import Gesture
from core.i18n import translate

_KEYS = Qt.Key
_ARROWS = {
    _KEYS.Key_Up: (0, -1),
    _KEYS.Key_Down: (0, 1),
    _KEYS.Key_Left: (-1, 0),
    _KEYS.Key_Right: (1, 0),
}
_STEP_PX = 12
_RUN_S = 1.0
"""Presses and turns closer together than this are one undo step."""

_GROW = 1.06


class OverWheel(QWidget):
    """A disc within a square widget: beside the disc the mouse reaches what is below.

    Signals
    -------
    put(spot: Spot, gesture: Gesture)
        It is wanted there, in the parent's pixels.
    band_chosen(band: int)
    entered()
        The mouse has come onto it: what is below is not pointed at any more.
    """

    put = Signal(object, object)
    band_chosen = Signal(int)
    entered = Signal()

    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self._view: WheelView | None = None
        self._point: WheelMarker | None = None
        self._geometry: WheelGeometry | None = None
        self._spot: Spot | None = None
        self._gesture: Gesture | None = None
        self._run = Gesture()
        self._run_at = -math.inf
        self._grip = QPointF()
        self._sizing = False
        self.setMouseTracking(True)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setAccessibleName(translate("canvas", "Colour wheel over the photo"))
        self.setAccessibleDescription(
            translate("canvas", "Arrows move it, plus and minus change its size.")
        )
        self.hide()

    @property
    def spot(self) -> Spot | None:
        """Where it lies, in the parent's pixels; None while it is not shown."""
        return self._spot if not self.isHidden() else None

    def set_view(self, view: WheelView | None) -> None:
        """What it shows."""
        self._view = None if view is None else replace(view, text=look().type.scale)
        self.update()

    def set_point(self, point: WheelMarker | None) -> None:
        """The place of the point under the mouse."""
        if point != self._point:
            self._point = point
            self.update()

    def place(self, spot: Spot | None) -> None:
        """Lie there; None hides it."""
        self._spot = spot
        self.setVisible(spot is not None and self._view is not None)
        if spot is not None:
            half = spot.size / 2
            left, top = math.floor(spot.x - half), math.floor(spot.y - half)
            side = math.ceil(spot.size) + 2
            self.setGeometry(left, top, side, side)
            self.update()

    def changeEvent(self, event: QEvent) -> None:
        super().changeEvent(event)
        if event.type() == QEvent.Type.StyleChange:
            self.set_view(self._view)

    def paintEvent(self, event: QPaintEvent) -> None:
        spot = self._inside()
        if spot is None or self._view is None:
            return
        painter = QPainter(self)
        self._geometry = paint_over_wheel(painter, spot, self._view, self._point)
        painter.end()

    def _inside(self) -> Spot | None:
        """The disc in its own pixels."""
        if self._spot is None:
            return None
        return Spot(self._spot.x - self.x(), self._spot.y - self.y(), self._spot.size)

    # Mouse

    def mousePressEvent(self, event: QMouseEvent) -> None:
        spot, at = self._inside(), event.position()
        if spot is None or not on_wheel(spot, at.x(), at.y()):
            event.ignore()
            return
        if event.button() != Qt.MouseButton.LeftButton:
            return
        marker = self._marker_at(at)
        if marker is not None:
            self.band_chosen.emit(marker)
            return
        self._gesture = Gesture()
        self._sizing = on_rim(spot, at.x(), at.y())
        self._grip = at - QPointF(spot.x, spot.y)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        spot, at = self._inside(), event.position()
        if spot is None:
            return
        if self._gesture is None:
            if not on_wheel(spot, at.x(), at.y()):
                event.ignore()
                return
            self.entered.emit()
            self._show_cursor(spot, at)
            return
        here = QPointF(self.x(), self.y()) + at
        assert self._spot is not None
        if self._sizing:
            away = here - QPointF(self._spot.x, self._spot.y)
            size = 2 * math.hypot(away.x(), away.y())
            self.put.emit(Spot(self._spot.x, self._spot.y, size), self._gesture)
        else:
            middle = here - self._grip
            self.put.emit(Spot(middle.x(), middle.y(), self._spot.size), self._gesture)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._gesture is None:
            event.ignore()
        self._gesture = None

    def mouseDoubleClickEvent(self, event: QMouseEvent) -> None:
        spot, at = self._inside(), event.position()
        if spot is None or not on_wheel(spot, at.x(), at.y()):
            event.ignore()

    def wheelEvent(self, event: QWheelEvent) -> None:
        spot, at = self._inside(), event.position()
        if spot is None or not on_wheel(spot, at.x(), at.y()):
            event.ignore()
            return
        self._resize(_GROW ** (event.angleDelta().y() / 120))
        event.accept()

    def enterEvent(self, event: QEnterEvent) -> None:
        spot, at = self._inside(), event.position()
        if spot is not None and on_wheel(spot, at.x(), at.y()):
            self.entered.emit()

    def leaveEvent(self, event: QEvent) -> None:
        self.unsetCursor()

    def _show_cursor(self, spot: Spot, at: QPointF) -> None:
        if self._marker_at(at) is not None:
            self.setCursor(Qt.CursorShape.PointingHandCursor)
        elif on_rim(spot, at.x(), at.y()):
            self.setCursor(Qt.CursorShape.SizeFDiagCursor)
        else:
            self.setCursor(Qt.CursorShape.SizeAllCursor)

    def _marker_at(self, at: QPointF) -> int | None:
        if self._geometry is None or self._view is None:
            return None
        index = wheel_hit(self._geometry, at, slack=0.0)
        if index is None:
            return None
        band = self._view.markers[index].band
        return index if band is None else band

    # Keys

    def keyPressEvent(self, event: QKeyEvent) -> None:
        spot = self._spot
        if spot is None:
            super().keyPressEvent(event)
        elif event.key() in _ARROWS:
            across, down = _ARROWS[Qt.Key(event.key())]
            moved = Spot(spot.x + across * _STEP_PX, spot.y + down * _STEP_PX, spot.size)
            self.put.emit(moved, self._in_run())
        elif event.text() in ("+", "-"):
            self._resize(_GROW if event.text() == "+" else 1 / _GROW)
        else:
            super().keyPressEvent(event)

    def _resize(self, factor: float) -> None:
        if self._spot is not None:
            spot = self._spot
            self.put.emit(Spot(spot.x, spot.y, factor * spot.size), self._in_run())

    def _in_run(self) -> Gesture:
        """The gesture of a run of presses, a new one after a rest."""
        now = time.monotonic()
        if now - self._run_at > _RUN_S:
            self._run = Gesture()
        self._run_at = now
        return self._run

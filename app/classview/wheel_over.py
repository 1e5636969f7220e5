"""The wheel over the photo in class view: where it was put, and the mouse that moves it."""

from __future__ import annotations

import math

from PySide6.QtCore import QObject, QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QMouseEvent

from app.drawing.wheel.over import Spot, on_rim, on_wheel
from app.drawing.wheel.shape import WheelMarker
from app.state.document import Gesture
from core.study import WheelPlace, bounded_wheel


class ClassWheel(QObject):
    """Dragged by its face and sized by its rim, as on the Read page.

    Signals
    -------
    put(place: WheelPlace, gesture: Gesture)
    changed()
        It is to be drawn anew.
    """

    put = Signal(object, object)
    changed = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self.place: WheelPlace | None = None
        self.point: WheelMarker | None = None
        self._gesture: Gesture | None = None
        self._grip = QPointF()
        self._sizing = False

    def set_place(self, place: WheelPlace | None) -> None:
        """Where the study has it; None lets it find its place."""
        if place != self.place:
            self.place = place
            self.changed.emit()

    def set_point(self, point: WheelMarker | None) -> None:
        """The place of the point under the mouse."""
        if point != self.point:
            self.point = point
            self.changed.emit()

    def press(self, event: QMouseEvent, spot: Spot, photo: QRectF) -> bool:
        """Take hold of it; False where the mouse is beside it."""
        at = event.position()
        if event.button() != Qt.MouseButton.LeftButton or not on_wheel(spot, at.x(), at.y()):
            return False
        self._gesture = Gesture()
        self._sizing = on_rim(spot, at.x(), at.y())
        self._grip = at - QPointF(spot.x, spot.y)
        return True

    def move(self, event: QMouseEvent, spot: Spot, photo: QRectF) -> bool:
        """Move or size it; tells whether the mouse is on it at all."""
        at = event.position()
        if self._gesture is None:
            return on_wheel(spot, at.x(), at.y())
        if self._sizing:
            size = 2 * math.hypot(at.x() - spot.x, at.y() - spot.y)
            self._put(Spot(spot.x, spot.y, size), photo)
        else:
            middle = at - self._grip
            self._put(Spot(middle.x(), middle.y(), spot.size), photo)
        return True

    def release(self) -> None:
        """Let go of it."""
        self._gesture = None

    def _put(self, spot: Spot, photo: QRectF) -> None:
        assert self._gesture is not None
        place = WheelPlace(
            (spot.x - photo.left()) / photo.width(),
            (spot.y - photo.top()) / photo.height(),
            spot.size / photo.height(),
        )
        self.place = bounded_wheel(place)
        self.put.emit(self.place, self._gesture)
        self.changed.emit()

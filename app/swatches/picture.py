"""The card's picture: its fields outlined with their words, or its four marks set by hand."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QImage, QKeyEvent, QMouseEvent, QPainter, QPaintEvent, QPolygonF
from PySide6.QtWidgets import QSizePolicy, QWidget

from app.drawing.fields import FieldsView, Quad, paint_fields, place_in
from app.look import look
from app.look.space import WITHIN
from app.look.theme import WALL, WALL_INK
from core.i18n import translate

GRAB = 28.0
COLUMNS = 3
_STEP, _LONG_STEP = 1.0, 10.0
"""Pixels of the picture an arrow key moves a mark."""

_ARROWS = {
    Qt.Key.Key_Left: (-1, 0),
    Qt.Key.Key_Right: (1, 0),
    Qt.Key.Key_Up: (0, -1),
    Qt.Key.Key_Down: (0, 1),
}


class CardPicture(QWidget):
    """The picture on the wall.

    By keys: arrows go from field to field, Space leaves one out. While marks are set, 1 to 4
    choose one and arrows move it.

    Signals
    -------
    field_asked(number: int)
        A field was clicked, row by row from 0.
    corners_moved(corners: Quad)
    """

    field_asked = Signal(int)
    corners_moved = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._image = QImage()
        self._scaled = QImage()
        self.view = FieldsView()
        self._waiting = ""
        self._held: int | None = None
        self._by_key = False
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Expanding)
        self.setMinimumSize(240, 240)

    def sizeHint(self) -> QSize:
        return QSize(560, 600)

    def set_image(self, image: QImage) -> None:
        """Show a picture."""
        self._image, self._scaled = image, QImage()
        self._waiting = ""
        self.update()

    def wait(self, text: str) -> None:
        """Say what is being done, where no picture is shown yet."""
        self._waiting = text
        self.update()

    def set_view(self, view: FieldsView) -> None:
        """Show what lies over the picture; where the keys are stays."""
        self.view = replace(view, chosen=self.view.chosen, corner=self.view.corner)
        words = ", ".join(field.word for field in view.fields)
        name = translate("swatches", "The picture of the card")
        self.setAccessibleName(f"{name}: {words}" if words else name)
        self.update()

    def place(self) -> QRectF:
        """Where the picture is."""
        room = QRectF(self.rect()).adjusted(WITHIN, WITHIN, -WITHIN, -WITHIN)
        if self._image.isNull():
            return room
        size = self._image.size().scaled(room.size().toSize(), Qt.AspectRatioMode.KeepAspectRatio)
        place = QRectF(0, 0, size.width(), size.height())
        place.moveCenter(room.center())
        return place

    def paintEvent(self, event: QPaintEvent) -> None:
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(WALL))
        if self._image.isNull():
            painter.setPen(QColor(WALL_INK))
            painter.setFont(look().type.font("control"))
            painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, self._waiting)
            painter.end()
            return
        place = self.place()
        ratio = self.devicePixelRatioF()
        wanted = (place.size() * ratio).toSize()
        if self._scaled.size() != wanted:
            self._scaled = self._image.scaled(
                wanted,
                Qt.AspectRatioMode.IgnoreAspectRatio,
                Qt.TransformationMode.SmoothTransformation,
            )
        painter.drawImage(place, self._scaled)
        shown = replace(self.view, text=float(look().type.px("note")))
        if not (self.hasFocus() and self._by_key):
            shown = replace(shown, chosen=None, corner=None)
        paint_fields(painter, place, shown)
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        self._by_key = False
        place, at = self.place(), event.position()
        if self.view.corners is not None:
            gaps = [
                (QPointF(place_in(place, corner) - at).manhattanLength(), number)
                for number, corner in enumerate(self.view.corners)
            ]
            gap, number = min(gaps)
            self._held = number if gap < GRAB else None
            return
        for number, field in enumerate(self.view.fields):
            polygon = QPolygonF([place_in(place, corner) for corner in field.quad])
            if polygon.containsPoint(at, Qt.FillRule.OddEvenFill):
                self.field_asked.emit(number)
                return

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._held is not None:
            place, at = self.place(), event.position()
            x = (at.x() - place.left()) / place.width()
            y = (at.y() - place.top()) / place.height()
            self._move(self._held, x, y)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self._held = None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        key = Qt.Key(event.key())
        self._by_key = True
        if self.view.corners is not None and self._corner_key(event, key):
            return
        if self.view.corners is None and self.view.fields and self._field_key(key):
            return
        super().keyPressEvent(event)

    def focusInEvent(self, event: object) -> None:
        self.update()

    def focusOutEvent(self, event: object) -> None:
        self.update()

    def _field_key(self, key: Qt.Key) -> bool:
        chosen = self.view.chosen
        if key in _ARROWS:
            x, y = _ARROWS[key]
            count = len(self.view.fields)
            number = 0 if chosen is None else chosen + x + COLUMNS * y
            self.view = replace(self.view, chosen=min(max(number, 0), count - 1))
        elif key in (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter) and chosen is not None:
            self.field_asked.emit(chosen)
        else:
            return False
        self.update()
        return True

    def _corner_key(self, event: QKeyEvent, key: Qt.Key) -> bool:
        corner = self.view.corner or 0
        if event.text() in ("1", "2", "3", "4"):
            self.view = replace(self.view, corner=int(event.text()) - 1)
        elif key in _ARROWS and self.view.corners is not None and not self._image.isNull():
            shift = event.modifiers() & Qt.KeyboardModifier.ShiftModifier
            size = _LONG_STEP if shift else _STEP
            x, y = _ARROWS[key]
            at = self.view.corners[corner]
            self.view = replace(self.view, corner=corner)
            self._move(
                corner,
                at[0] + size * x / self._image.width(),
                at[1] + size * y / self._image.height(),
            )
        else:
            return False
        self.update()
        return True

    def _move(self, number: int, x: float, y: float) -> None:
        assert self.view.corners is not None
        corners = list(self.view.corners)
        corners[number] = (min(max(x, 0.0), 1.0), min(max(y, 0.0), 1.0))
        moved: Quad = tuple(corners)
        self.view = replace(self.view, corners=moved)
        self.update()
        self.corners_moved.emit(moved)

"""The picture of a scrap: click a stroke to look at it, draw a box for one that was not found."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtCore import QPointF, QRectF, Qt, Signal
from PySide6.QtGui import QKeyEvent, QMouseEvent, QPainter, QPaintEvent
from PySide6.QtWidgets import QWidget

from app.drawing.mix.scrap import (
    BADGE,
    MARGIN,
    ScrapPictureView,
    badge_rect,
    paint_scrap,
    picture_rect,
    region_rect,
)
from app.look import look
from core.i18n import translate

_DRAWN_FROM = 6.0  # pixels a press has to travel to draw a box
_STEP, _SIDE = 0.02, 0.12  # of the picture: what keys move and draw


class ScrapPicture(QWidget):
    """The picture with its strokes.

    Arrow keys go from stroke to stroke, Delete leaves one out, a letter gives it to that band.
    Insert begins a box in the middle; arrow keys then move it, with Shift they size it, Enter
    reads it and Escape lets it go.

    Signals
    -------
    chosen(number: int), left_out(), lettered(letter: str)
    drawn(region: tuple of 4 floats)
    """

    chosen = Signal(int)
    left_out = Signal()
    lettered = Signal(str)
    drawn = Signal(object)

    def __init__(self, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._view: ScrapPictureView | None = None
        self._press: QPointF | None = None
        self.setProperty("ground", "wall")
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCursor(Qt.CursorShape.CrossCursor)
        self.setAccessibleDescription(
            translate(
                "mix page",
                "Arrow keys go from stroke to stroke, Delete leaves one out, a letter gives it to "
                "that band, Insert draws a box.",
            )
        )

    def set_view(self, view: ScrapPictureView | None, said: str) -> None:
        """Show a picture; `said` is what a screen reader says of it."""
        self._view = view
        self._press = None
        self.setAccessibleName(said)
        self.update()

    def height_for(self, width: int) -> int:
        """Height the picture takes at a width."""
        if self._view is None or self._view.image.isNull():
            return 0
        image, around = self._view.image, 2 * MARGIN
        return round((width - around) * image.height() / image.width() + around)

    def paintEvent(self, event: QPaintEvent) -> None:
        if self._view is None:
            return
        painter = QPainter(self)
        paint_scrap(painter, QRectF(self.rect()), replace(self._view, size=self._badge()))
        painter.end()

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton and self._view is not None:
            self._press = event.position()

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if self._press is not None and self._view is not None:
            self._draw(self._box_to(event.position()))

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if self._press is None or self._view is None:
            return
        travelled = (event.position() - self._press).manhattanLength() >= _DRAWN_FROM
        region, at = self._box_to(event.position()), self._press
        self._press = None
        self._draw(None)
        if travelled:
            self.drawn.emit(region)
        else:
            number = self._stroke_at(at)
            if number is not None:
                self.chosen.emit(number)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if self._view is None or not self._key(event):
            super().keyPressEvent(event)

    def _key(self, event: QKeyEvent) -> bool:
        assert self._view is not None
        keys, key = Qt.Key, Qt.Key(event.key())
        step = {
            keys.Key_Left: (-1, 0),
            keys.Key_Right: (1, 0),
            keys.Key_Up: (0, -1),
            keys.Key_Down: (0, 1),
        }.get(key)
        box = self._view.drawn
        if box is not None:
            return self._box_key(box, key, step, event.modifiers())
        if step is not None:
            marks = self._view.marks
            at = next((i for i, mark in enumerate(marks) if mark.chosen), 0) + sum(step)
            if 0 <= at < len(marks):
                self.chosen.emit(at)
            return True
        if key == keys.Key_Delete:
            self.left_out.emit()
            return True
        if key == keys.Key_Insert:
            self._draw((0.5 - _SIDE, 0.5 - _SIDE, 0.5 + _SIDE, 0.5 + _SIDE))
            return True
        plain = event.modifiers() == Qt.KeyboardModifier.NoModifier
        letter = event.text().upper()
        if plain and len(letter) == 1 and "A" <= letter <= "Z":
            self.lettered.emit(letter)
            return True
        return False

    def _box_key(
        self,
        box: tuple[float, float, float, float],
        key: Qt.Key,
        step: tuple[int, int] | None,
        modifiers: Qt.KeyboardModifier,
    ) -> bool:
        if step is not None:
            x, y = _STEP * step[0], _STEP * step[1]
            left, top, right, bottom = box
            if modifiers & Qt.KeyboardModifier.ShiftModifier:
                right, bottom = max(right + x, left + _STEP), max(bottom + y, top + _STEP)
            else:
                left, top, right, bottom = left + x, top + y, right + x, bottom + y
            if min(left, top) >= -1e-9 and max(right, bottom) <= 1 + 1e-9:
                self._draw((left, top, right, bottom))
            return True
        if key in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            self._draw(None)
            self.drawn.emit(box)
            return True
        if key == Qt.Key.Key_Escape:
            self._draw(None)
            return True
        return False

    def _draw(self, region: tuple[float, float, float, float] | None) -> None:
        assert self._view is not None
        self._view = replace(self._view, drawn=region)
        self.update()

    def _badge(self) -> float:
        return float(look().type.grow(round(BADGE)))

    def _picture(self) -> QRectF:
        assert self._view is not None
        return picture_rect(QRectF(self.rect()), self._view.image)

    def _box_to(self, end: QPointF) -> tuple[float, float, float, float]:
        assert self._press is not None
        picture = self._picture()

        def place(at: QPointF) -> tuple[float, float]:
            x = (at.x() - picture.left()) / max(picture.width(), 1)
            y = (at.y() - picture.top()) / max(picture.height(), 1)
            return min(max(x, 0.0), 1.0), min(max(y, 0.0), 1.0)

        (x0, y0), (x1, y1) = place(self._press), place(end)
        return min(x0, x1), min(y0, y1), max(x0, x1), max(y0, y1)

    def _stroke_at(self, at: QPointF) -> int | None:
        """The smallest stroke under a place, or the one whose badge is there."""
        assert self._view is not None
        picture, found = self._picture(), []
        for number, mark in enumerate(self._view.marks):
            rect = region_rect(picture, mark.region)
            if badge_rect(picture, mark, self._badge()).contains(at):
                return number
            if rect.contains(at):
                found.append((rect.width() * rect.height(), number))
        return min(found)[1] if found else None

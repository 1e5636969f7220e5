"""The class view: a whole screen before the class, with answers only when they are asked for."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtGui import (
    QCloseEvent,
    QKeyEvent,
    QMouseEvent,
)

from app.classview.keys import command_of
from app.classview.screen import ClassScreen
from app.drawing.classview.layout import ClassLayout
from app.drawing.classview.photo import band_at
from app.drawing.classview.strip import strip_places
from app.drawing.classview.tally import tally_places
from core.lesson import lesson as steps

_STEPS = {
    Qt.Key.Key_Space: 1,
    Qt.Key.Key_Return: 1,
    Qt.Key.Key_Enter: 1,
    Qt.Key.Key_Right: 1,
    Qt.Key.Key_Down: 1,
    Qt.Key.Key_PageDown: 1,
    Qt.Key.Key_Left: -1,
    Qt.Key.Key_Up: -1,
    Qt.Key.Key_Backspace: -1,
    Qt.Key.Key_PageUp: -1,
}
"""What keys do while the demonstration has the screen."""


_ENDING = (Qt.Key.Key_Space, Qt.Key.Key_Return, Qt.Key.Key_Enter, Qt.Key.Key_Escape)
"""What gives the screen back to the questions once the sky has painted itself."""


class ClassView(ClassScreen):
    """One band at a time, with its questions; knows neither document nor window.

    Its signals are those of `ClassState`.
    """

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if (
            self.lesson is not None
            and (band := self.finder.press(event.key(), self._edges)) is not None
        ):
            self._set(steps.go_to(self.lesson, band))
            return
        if self.tally is not None and self.lesson is not None:
            lesson = self.tally.press(event.key(), event.text(), self.lesson)
            if lesson is not None:
                self._set(lesson)
                return
            if event.key() in (Qt.Key.Key_Escape, Qt.Key.Key_Return, Qt.Key.Key_Enter):
                self.run("tally")
                return
        if self.trying and event.key() in _ENDING:
            self.run("scraps")
            return
        if self.watching and event.key() in _ENDING:
            self._watch(False)
            return
        if self.demonstrating and event.key() in _STEPS and not self.keys_shown:
            self._step(_STEPS[Qt.Key(event.key())])
            return
        shift = bool(event.modifiers() & Qt.KeyboardModifier.ShiftModifier)
        command = command_of(event.key(), shift)
        if command is None:
            super().keyPressEvent(event)
        elif command == "leave" and self.keys_shown:
            self.run("keys")
        elif command == "leave" and self.demonstrating and event.key() == Qt.Key.Key_Escape:
            self._demonstrate(False)
        else:
            self.run(command)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        layout, point = self._layout(), event.position()
        if self.finder.shown:
            self.finder.open()
            self._changed()
            return
        if self.trying:
            self.run("scraps")
            return
        if self.watching:
            self._watch(False)
            return
        if self.keys_shown:
            self.run("keys")
            return
        spot = self._spot
        if self._is_over and spot is not None and self.wheel_over.press(event, spot, layout.photo):
            return
        if layout.strip.contains(point):
            self._press_strip(layout, event)
        elif self.demonstrating:
            self._step(-1 if event.button() == Qt.MouseButton.RightButton else 1)
        elif layout.paper.contains(point):
            self._press_paper(layout, event)
        elif self.lesson is not None and self._picture is not None:
            band = band_at(layout, self._photo_view(self._picture, self.lesson), point)
            if band is not None:
                self._set(steps.go_to(self.lesson, band))

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        spot = self._spot
        if not self._is_over or spot is None:
            return
        layout, at = self._layout(), event.position()
        if self.wheel_over.move(event, spot, layout.photo):
            self.pointed.emit(None)
            return
        told = self.lesson is not None and self.lesson.is_answered("intensity")
        photo = layout.photo
        if told and photo.contains(at) and not layout.paper.contains(at):
            x, y = (at.x() - photo.left()) / photo.width(), (at.y() - photo.top()) / photo.height()
            self.pointed.emit((x, y))
        else:
            self.pointed.emit(None)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        self.wheel_over.release()

    def _press_strip(self, layout: ClassLayout, event: QMouseEvent) -> None:
        places = strip_places(layout.strip, self._strip_view(), layout.height)
        for number, place in enumerate(places):
            if place is not None and place.contains(event.position()):
                self.pacing.go_to(number)
                self._demonstrate(True)

    def _press_paper(self, layout: ClassLayout, event: QMouseEvent) -> None:
        taking = event.button() == Qt.MouseButton.RightButton
        if self.tally is None or self.lesson is None:
            self.run("take back" if taking else "answer")
            return
        places = tally_places(layout.paper, layout.height, len(self.tally.keys))
        for row, place in enumerate(places):
            if place.contains(event.position()):
                self.tally.choose(row)
                self._set(self.tally.add(self.lesson, -1 if taking else 1))

    def closeEvent(self, event: QCloseEvent) -> None:
        self.pacing.stop()
        super().closeEvent(event)
        self.left.emit()

"""One score of a scale: takes mouse, keys and focus, and leaves the drawing to the scale."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Protocol

from PySide6.QtCore import Qt
from PySide6.QtGui import QFocusEvent, QKeyEvent, QMouseEvent, QPaintEvent
from PySide6.QtWidgets import QApplication, QRadioButton, QWidget


class TargetKeeper(Protocol):
    """What a target tells its scale."""

    @property
    def targets(self) -> Sequence[QWidget]: ...

    def point_at(self, score: int | None) -> None:
        """The mouse is over a score, or over none."""

    def stroke_to(self, x: float) -> None:
        """The mouse is drawn along the strip; `x` in the scale's pixels."""

    def lift(self) -> None:
        """The mouse button went up: the stroke ends where it is."""

    def end_run(self) -> None:
        """The focus left."""

    def press(self, key: Qt.Key, at: int) -> bool:
        """A key on a target; False if it means nothing here."""

    def update(self) -> None:
        """Draw anew."""


class ScoreTarget(QRadioButton):
    """One score; a radio button to a screen reader, drawn by the scale around it."""

    def __init__(self, score: int, scale: TargetKeeper, parent: QWidget) -> None:
        super().__init__(str(score), parent)
        self.score = score
        self._scale = scale
        self.setCursor(Qt.CursorShape.PointingHandCursor)
        self.setFocusPolicy(Qt.FocusPolicy.ClickFocus)

    def hitButton(self, pos: object) -> bool:
        return True

    def nextCheckState(self) -> None:
        """A click asks; the tick comes back with the study."""

    def mousePressEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._scale.stroke_to(self.mapToParent(event.position()).x())
        else:
            super().mousePressEvent(event)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        if event.buttons() & Qt.MouseButton.LeftButton:
            self._scale.stroke_to(self.mapToParent(event.position()).x())

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        if event.button() == Qt.MouseButton.LeftButton:
            self._scale.lift()

    def enterEvent(self, event: object) -> None:
        self._scale.point_at(self.score)

    def leaveEvent(self, event: object) -> None:
        self._scale.point_at(None)

    def focusInEvent(self, event: QFocusEvent) -> None:
        super().focusInEvent(event)
        self._scale.update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        super().focusOutEvent(event)
        if QApplication.focusWidget() not in self._scale.targets:
            self._scale.end_run()
        self._scale.update()

    def keyPressEvent(self, event: QKeyEvent) -> None:
        if event.modifiers() & ~Qt.KeyboardModifier.KeypadModifier or not self._scale.press(
            Qt.Key(event.key()), self.score
        ):
            event.ignore()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The scale draws all ten at once."""

"""The one motion of the program: rows that open slide to their new heights in a moment."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QEasingCurve, QObject, QVariantAnimation, Signal
from PySide6.QtGui import QGuiApplication
from PySide6.QtWidgets import QApplication, QStyle

from app.look.space import OPEN_MS


def wants_motion() -> bool:
    """Whether anybody watches, and the system does not ask for stillness."""
    if QGuiApplication.platformName() == "offscreen":
        return False
    return QApplication.style().styleHint(QStyle.StyleHint.SH_Widget_Animation_Duration) > 0


class Slide(QObject):
    """Numbers on their way to others, such as the heights of rows.

    Signals
    -------
    moved()
        `values` are others now.
    """

    moved = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._from: tuple[float, ...] = ()
        self._to: tuple[float, ...] = ()
        self._at = 1.0
        self._motion = QVariantAnimation(self)
        self._motion.setDuration(OPEN_MS)
        self._motion.setStartValue(0.0)
        self._motion.setEndValue(1.0)
        self._motion.setEasingCurve(QEasingCurve.Type.OutCubic)
        self._motion.valueChanged.connect(self._step)

    @property
    def values(self) -> tuple[float, ...]:
        """Where they are now."""
        if self._at >= 1.0:
            return self._to
        pairs = zip(self._from, self._to, strict=True)
        return tuple(start + self._at * (end - start) for start, end in pairs)

    @property
    def running(self) -> bool:
        """Whether they are on their way."""
        return self._at < 1.0

    def to(self, values: Sequence[float], *, slide: bool) -> None:
        """Go to other values, at once unless they are to slide there and the system lets them."""
        values = tuple(values)
        if values == self._to:
            return
        here = self.values
        self._motion.stop()
        if slide and len(here) == len(values) and wants_motion():
            self._from, self._to, self._at = here, values, 0.0
            self._motion.start()
        else:
            self._from = self._to = values
            self._at = 1.0
        self.moved.emit()

    def _step(self, at: float) -> None:
        self._at = float(at)
        self.moved.emit()

"""The sky paints itself: which bands the brush has laid, and where it is now."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject, QVariantAnimation, Signal

from app.widgets.slide import wants_motion

BAND_MS = 900
"""One band, from edge to edge: as slow as the class can follow."""


class Brush(QObject):
    """Lays bands one after another; all at once where the system asks for stillness.

    Signals
    -------
    moved()
        `laid` or `now` are others.
    """

    moved = Signal()

    def __init__(self, parent: QObject) -> None:
        super().__init__(parent)
        self._letters: tuple[str, ...] = ()
        self._at = 0.0
        self._motion = QVariantAnimation(self)
        self._motion.setStartValue(0.0)
        self._motion.valueChanged.connect(self._step)

    @property
    def laid(self) -> tuple[str, ...]:
        """The bands that are done."""
        return self._letters[: int(self._at)]

    @property
    def now(self) -> tuple[str, float] | None:
        """The band under the brush, and how much of it is covered; None when it rests."""
        whole = int(self._at)
        return None if whole >= len(self._letters) else (self._letters[whole], self._at - whole)

    @property
    def running(self) -> bool:
        """Whether it is on its way."""
        return self.now is not None

    def lay(self, letters: Sequence[str]) -> None:
        """Lay these bands, from the first on; what was laid before is gone."""
        self._motion.stop()
        self._letters = tuple(letters)
        self._at = 0.0
        if letters and wants_motion():
            self._motion.setEndValue(float(len(letters)))
            self._motion.setDuration(BAND_MS * len(letters))
            self._motion.start()
        else:
            self._at = float(len(letters))
        self.moved.emit()

    def stop(self) -> None:
        """Done at once."""
        self._motion.stop()
        self._at = float(len(self._letters))

    def _step(self, at: float) -> None:
        self._at = float(at)
        self.moved.emit()

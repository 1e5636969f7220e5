"""The demonstration's steps, and the clocks of its wet edge and of the drying."""

from __future__ import annotations

from PySide6.QtCore import QElapsedTimer, QObject, QTimer, Signal
from PySide6.QtWidgets import QApplication

from core.i18n import translate
from core.lesson.demonstration import Pace
from core.paint.wash.order import DRY_MIN


class Pacing(QObject):
    """Which step the demonstration is at, and what is left of the drying.

    Signals
    -------
    changed()
        Something on the strip reads differently now.
    dried()
        The drying time is over.
    """

    changed = Signal()
    dried = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.steps: tuple[Pace, ...] = ()
        self.present: int | None = None
        self.minutes = DRY_MIN[1]
        self.bell = False
        self._since = QElapsedTimer()
        self._wet = QElapsedTimer()
        self._over = False
        self._tick = QTimer(self, interval=500)
        self._tick.timeout.connect(self._on_tick)

    def set_steps(self, steps: tuple[Pace, ...]) -> None:
        """Other steps; where the class is stays, as far as it can."""
        if steps == self.steps:
            return
        self.steps = steps
        if self.present is not None and self.present >= len(steps):
            self.go_to(len(steps) - 1)
        self.changed.emit()

    def go_to(self, step: int | None) -> None:
        """Be at a step; wetting the sheet starts the wet edge's clock, the drying its own."""
        self.present = step
        stage = None if step is None else self.steps[step].stage
        if stage is None or stage == "dry":
            self._wet.invalidate()
        elif stage == "wet" or not self._wet.isValid():
            self._wet.start()
        self._since.invalidate()
        if stage == "dry":
            self._since.start()
            self._over = False
        if stage is None:
            self._tick.stop()
        else:
            self._tick.start()
        self.changed.emit()

    def go(self, by: int) -> None:
        """Go on (+1) or back (-1); before the first step is the beginning."""
        at = -1 if self.present is None else self.present
        at = min(max(at + by, -1), len(self.steps) - 1)
        if at != self.present:
            self.go_to(None if at < 0 else at)

    def change_minutes(self, by: int) -> None:
        """A longer or shorter drying, 1 to 60 minutes; a running clock keeps running."""
        self.minutes = min(max(self.minutes + by, 1), 60)
        self._over = False
        self.changed.emit()

    def toggle_bell(self) -> None:
        """Ring when the drying is over, or do not."""
        self.bell = not self.bell
        self.changed.emit()

    @property
    def left_s(self) -> int | None:
        """Seconds left of the drying; None while it is not running."""
        if not self._since.isValid():
            return None
        return max(60 * self.minutes - self._since.elapsed() // 1000, 0)

    @property
    def wet_s(self) -> int | None:
        """Seconds since the sheet was wetted; None before, and while it dries."""
        return self._wet.elapsed() // 1000 if self._wet.isValid() else None

    def texts(self) -> tuple[str, ...]:
        """The steps as shown; the drying with its time."""
        return tuple(self._text(step) for step in self.steps)

    def stop(self) -> None:
        """No clock runs on."""
        self._tick.stop()

    def _text(self, step: Pace) -> str:
        if step.stage != "dry":
            return step.text
        left = self.left_s
        if left is None:
            text = translate("class view", "{step} {minutes} min").format(
                step=step.text, minutes=self.minutes
            )
        else:
            text = f"{step.text} {left // 60}:{left % 60:02d}"
            if left == 0:
                text = translate("class view", "Feel it. Cool? 5 min more")
        return text if not self.bell else translate("class view", "{step}, bell").format(step=text)

    def _on_tick(self) -> None:
        if self.left_s == 0 and not self._over:
            self._over = True
            if self.bell:
                QApplication.beep()
            self.dried.emit()
        self.changed.emit()

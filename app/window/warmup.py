"""Makes the other pages ready in small steps once the first stands still.

The first look at a page would else take a tenth of a second or two, while it is imported and built.
Between two steps the window lives; while a mouse button is held, nothing is done.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator

from PySide6.QtCore import QObject, Qt, QTimer
from PySide6.QtGui import QGuiApplication

PAUSE_MS = 120
QUIET_MS = 700
"""So long it waits before it looks again whether it may go on."""


class Warmup(QObject):
    """Takes steps one at a time, when nobody would notice.

    Parameters
    ----------
    steps : iterator of callable
        Each takes at most some hundredths of a second.
    ready : callable
        Whether the window's own work is done.
    """

    def __init__(
        self,
        steps: Iterator[Callable[[], object]],
        ready: Callable[[], bool],
        parent: QObject | None = None,
    ) -> None:
        super().__init__(parent)
        self._steps = steps
        self._ready = ready
        self._timer = QTimer(self, singleShot=True)
        self._timer.timeout.connect(self._take)

    def begin(self) -> None:
        """Take the first step soon."""
        self._timer.start(QUIET_MS)

    def stop(self) -> None:
        """Take no further step."""
        self._timer.stop()

    @property
    def running(self) -> bool:
        """Whether there may be steps to take."""
        return self._timer.isActive()

    def _take(self) -> None:
        held = QGuiApplication.mouseButtons() != Qt.MouseButton.NoButton
        if held or not self._ready():
            self._timer.start(QUIET_MS)
            return
        step = next(self._steps, None)
        if step is None:
            self.stop()
            return
        step()
        self._timer.start(PAUSE_MS)

"""The first run: three hints on the sample sky, until they are closed for good."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, QTimer
from PySide6.QtWidgets import QWidget

from app.read.page import ReadPage
from app.state.settings import read_json, write_json
from app.widgets.hints import Hint, HintTags
from core.i18n import translate

_FILE = "seen.json"
SETTLE_MS = 400
"""The hints point at places that move while the window is being filled."""


class FirstRun(QObject):
    """Shows the hints while the Read page shows the sample, unless they were closed before."""

    def __init__(
        self, page: ReadPage, class_button: QWidget, folder: Path, window: QWidget
    ) -> None:
        super().__init__(window)
        self._page, self._class_button, self._window = page, class_button, window
        self._path = folder / _FILE
        self.tags: HintTags | None = None
        self._placed = False
        self._settle = QTimer(self, singleShot=True, interval=SETTLE_MS)
        self._settle.timeout.connect(self._place)

    @property
    def wanted(self) -> bool:
        """Whether the hints were never closed."""
        return read_json(self._path).get("hints") is not True

    def begin(self) -> None:
        """Show the hints once the page has its lines."""
        if self.wanted and self.tags is None:
            self.tags = HintTags(self._window)
            self.tags.dismissed.connect(self._close_for_good)
            for watched in (self._page.canvas, self._window):
                watched.installEventFilter(self)
            self._settle.start()

    def end(self) -> None:
        """Another page or photo: the hints step aside, and come back at the next start."""
        if self.tags is not None:
            for watched in (self._page.canvas, self._window):
                watched.removeEventFilter(self)
            self._settle.stop()
            self.tags.hide()
            self.tags.deleteLater()
            self.tags = None

    def on_photo(self) -> None:
        """A photo has come; the first is the sample itself."""
        if self._placed:
            self.end()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Move) and self.tags is not None:
            self._settle.start()
        return False

    def _place(self) -> None:
        if self.tags is None or not self._page.isVisible():
            return
        grips = self._page.canvas.grips
        if not grips:
            self._settle.start()  # not read yet
            return
        self._placed = True
        strip = self._page.strip
        self.tags.set_hints(
            [
                Hint(
                    translate("hints", "Drag a line by its grip: everything beside it follows."),
                    self._at(grips[len(grips) // 2], 0.0, 0.5),
                    "left",
                ),
                Hint(
                    translate("hints", "Read these words aloud to the class."),
                    self._at(strip, 0.5, 0.0),
                    "above",
                ),
                Hint(
                    translate("hints", "Class view asks the questions and keeps the answers back."),
                    self._at(self._class_button, 0.5, 1.0),
                    "below",
                    self._charts(),
                ),
            ]
        )

    def _charts(self) -> QRect:
        """Wheel and ladder, in the window."""
        found = QRect()
        for part in (self._page.wheel, self._page.ladder):
            found = found.united(QRect(part.mapTo(self._window, QPoint(0, 0)), part.size()))
        return found

    def _at(self, widget: QWidget, x: float, y: float) -> QPoint:
        spot = QPoint(round(x * widget.width()), round(y * widget.height()))
        return widget.mapTo(self._window, spot)

    def _close_for_good(self) -> None:
        write_json({"hints": True}, self._path)
        self.end()

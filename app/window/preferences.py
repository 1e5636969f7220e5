"""Shows the preferences, one window at a time."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QWidget

from app.state.settings import Preferences

if TYPE_CHECKING:
    from app.window.preferences_window import PreferencesWindow


class PreferencesControl:
    """Makes the window when it is asked for; it is gone once closed."""

    def __init__(self, preferences: Preferences, window: QWidget) -> None:
        self._preferences = preferences
        self._window = window
        self.shown: PreferencesWindow | None = None

    def show(self) -> None:
        """Open it, or bring it to the front."""
        from app.window.preferences_window import PreferencesWindow  # deferred: start-up time

        if self.shown is None:
            self.shown = PreferencesWindow(self._preferences, self._window)
            self.shown.closed.connect(self._forget)
        self.shown.show()
        self.shown.activateWindow()

    def _forget(self) -> None:
        self.shown = None

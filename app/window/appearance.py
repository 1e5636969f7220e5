"""Puts the look in force that preferences, the desktop and the window's width ask for."""

from __future__ import annotations

from PySide6.QtCore import QObject
from PySide6.QtWidgets import QApplication

from app.look import Look, TypeScale, apply_look, look, theme_for
from app.look.type import WIDE_FROM
from app.state.settings import Preferences


class Appearance(QObject):
    """Theme and text size of the whole application."""

    def __init__(self, preferences: Preferences, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._preferences = preferences
        self._wide = False
        preferences.changed.connect(lambda before, after: self.update())
        app = _application()
        app.styleHints().colorSchemeChanged.connect(self.update)
        wanted = self._wanted()
        # To set the same look again would style every widget there is anew.
        if wanted != look() or not app.styleSheet():
            apply_look(app, wanted)

    def set_window_width(self, width: int) -> None:
        """A wide window gets larger words."""
        self._wide = width >= WIDE_FROM
        self.update()

    def update(self) -> None:
        """Put another look in force if another one is wanted."""
        wanted = self._wanted()
        if wanted != look():
            apply_look(_application(), wanted)

    def _wanted(self) -> Look:
        settings = self._preferences.settings
        scale = TypeScale(scale=settings.text_percent / 100, wide=self._wide)
        return Look(theme_for(settings.theme), scale)


def _application() -> QApplication:
    application = QApplication.instance()
    assert isinstance(application, QApplication)
    return application

"""Which screen the class looks at."""

from __future__ import annotations

from PySide6.QtGui import QScreen


def class_screen(own: QScreen, screens: list[QScreen]) -> QScreen:
    """The screen for the class: another than the window's, where there is one."""
    return next((screen for screen in screens if screen is not own), own)

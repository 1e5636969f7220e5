"""Which screen the class looks at, and how much of one a window takes."""

from __future__ import annotations

from PySide6.QtCore import QSize
from PySide6.QtGui import QScreen
from PySide6.QtWidgets import QWidget

_OF_SCREEN = (0.94, 0.9)
"""Of width and height: the frame and its title bar want the rest."""


def class_screen(own: QScreen, screens: list[QScreen]) -> QScreen:
    """The screen for the class: another than the window's, where there is one."""
    return next((screen for screen in screens if screen is not own), own)


def open_large(window: QWidget) -> None:
    """Give a window the size it asks for, as far as its screen has it.

    Qt would make it no larger than two thirds of the screen, which cuts a page of reading.
    """
    room = window.screen().availableSize()
    most = QSize(round(_OF_SCREEN[0] * room.width()), round(_OF_SCREEN[1] * room.height()))
    window.resize(window.sizeHint().boundedTo(most).expandedTo(window.minimumSize()))

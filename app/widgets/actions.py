"""An entry of a menu, made in one line."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QObject
from PySide6.QtGui import QAction, QKeySequence

Keys = QKeySequence | QKeySequence.StandardKey | str


def make_action(
    parent: QObject, text: str, run: Callable[[], object], keys: Keys | None = None
) -> QAction:
    """An action that calls `run`."""
    action = QAction(text, parent)
    if keys is not None:
        action.setShortcut(QKeySequence(keys))
    action.triggered.connect(lambda _checked=False: run())
    return action

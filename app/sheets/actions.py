"""What the Sheets page puts into the menus."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtGui import QAction
from PySide6.QtWidgets import QWidget

from app.widgets.actions import make_action
from app.workspace import Menu
from core.i18n import translate

_SHEETS = (0, 1)


def sheet_actions(
    page: QWidget,
    toggle_measured: Callable[[], None],
    add: Callable[[int], None],
    set_corners: Callable[[int], None],
) -> dict[Menu, tuple[QAction, ...]]:
    """The actions of each menu; the last of "view" is ticked while what was measured is shown."""
    show = make_action(
        page,
        translate("sheets page", "Show what was &measured before own scores"),
        toggle_measured,
    )
    show.setCheckable(True)
    adding = tuple(
        make_action(
            page,
            translate("sheets page", "Add or replace sheet &{number}...").format(number=index + 1),
            partial(add, index),
            f"Ctrl+{index + 1}",
        )
        for index in _SHEETS
    )
    corners = tuple(
        make_action(
            page,
            translate("sheets page", "Corners of sheet {number}...").format(number=index + 1),
            partial(set_corners, index),
            f"Ctrl+Shift+{index + 1}",
        )
        for index in _SHEETS
    )
    return {"edit": (*adding, *corners), "view": (show,)}

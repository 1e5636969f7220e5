"""Every dialog ends with one row of buttons in the platform's order, its deed by name in ink."""

from __future__ import annotations

import importlib
import pkgutil
from pathlib import Path

import pytest
from card_tools import plan_data, wish_of
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QPushButton, QWidget
from shiboken6 import isValid

import app
from app.cards.card import CardChoice
from app.cards.dialog import CardDialog
from app.cards.paper import PAPERS
from app.classset.new_class import NewClassDialog
from app.files.files_ask import ask_title, ask_unsaved
from app.files.recovery import RecoveryDialog
from app.mix.own_paint import OwnPaintDialog
from app.swatches.print_dialog import PrintCardDialog
from app.swatches.read_dialog import ReadCardDialog
from app.widgets.answers import Answers
from app.widgets.buttons import InkButton
from app.window.help_menu import show_about
from app.window.preferences_window import PreferencesWindow
from core.paint.box.box import DEFAULT_BOX
from core.study_file.contents import Contents
from core.study_file.recovery import Recovered

ROLES = QDialogButtonBox.ButtonRole
WINDOWS, GNOME = 0, 3
"""As a style sheet's `button-layout` counts the platforms: QDialogButtonBox.ButtonLayout."""


def nothing(*_args: object) -> None:
    pass


def found(folder: Path) -> tuple[Recovered, ...]:
    return (Recovered("1", "Dusk", folder / "dusk.gradewash", 1.8e9, Contents(b"", {})),)


MADE = {
    "AskLine": lambda parent, folder: ask_title(parent, "Dusk", nothing),
    "Question": lambda parent, folder: ask_unsaved(parent, "Dusk", nothing, nothing),
    "RecoveryDialog": lambda parent, folder: RecoveryDialog(
        parent, found(folder), nothing, nothing
    ),
    "OwnPaintDialog": lambda parent, folder: OwnPaintDialog(nothing, parent),
    "CardDialog": lambda parent, folder: CardDialog(
        parent, wish_of(plan_data(3)), CardChoice(), folder
    ),
    "PreferencesWindow": lambda parent, folder: PreferencesWindow(parent.preferences, parent),
    "NewClassDialog": lambda parent, folder: NewClassDialog(parent, "dusk", folder, None, nothing),
    "PrintCardDialog": lambda parent, folder: PrintCardDialog(
        parent, DEFAULT_BOX, PAPERS["a4"], nothing
    ),
    "ReadCardDialog": lambda parent, folder: ReadCardDialog(
        parent, DEFAULT_BOX, folder / "none.png", nothing
    ),
    "about": lambda parent, folder: show_about(parent, nothing),
}
"""A way to make each kind of dialog there is."""


def dialog_classes() -> set[str]:
    names = set()
    for found_module in pkgutil.walk_packages(app.__path__, "app."):
        if found_module.name.endswith("__main__"):
            continue
        module = importlib.import_module(found_module.name)
        for value in vars(module).values():
            is_dialog = isinstance(value, type) and issubclass(value, QDialog)
            if is_dialog and value.__module__ == module.__name__:
                names.add(value.__name__)
    return names


def test_no_dialog_is_left_out() -> None:
    assert dialog_classes() == set(MADE) - {"about"}


@pytest.fixture(params=sorted(MADE))
def dialog(request, window, tmp_path, qtbot):
    MADE[request.param](window, tmp_path)
    shown = next(child for child in window.findChildren(QDialog))
    shown.show()
    qtbot.waitUntil(lambda: not getattr(shown, "working", False), timeout=20_000)
    yield shown
    if isValid(shown):  # its window takes it along, and it deletes itself when it is closed
        shown.close()


def reads_before(one: QWidget, other: QWidget) -> bool:
    """Left of the other, or above it in a column."""
    first, second = one.geometry(), other.geometry()
    return (first.y(), first.x()) < (second.y(), second.x())


def test_the_deed_is_the_default_and_in_ink(dialog) -> None:
    (answers,) = dialog.findChildren(Answers)
    shown = [button for button in answers.buttons() if button.isVisible()]
    deeds = [b for b in shown if answers.buttonRole(b) == ROLES.AcceptRole]
    leaving = [b for b in shown if answers.buttonRole(b) == ROLES.RejectRole]
    assert len(deeds) <= 1
    assert len(leaving) == 1
    defaults = [b for b in dialog.findChildren(QPushButton) if b.isDefault() and b.isVisible()]
    assert len(defaults) == 1
    if deeds:
        assert defaults == deeds
    assert isinstance(defaults[0], InkButton)
    for button in shown:
        words = button.text().replace("&", "").strip(".").lower()
        assert words not in ("ok", "okay", "yes", "no", "apply"), "named by what it does"


def test_the_platform_orders_the_buttons(dialog, qtbot) -> None:
    """Windows puts leaving last, the Gnome guidelines put it before the deed."""
    (answers,) = dialog.findChildren(Answers)
    shown = [button for button in answers.buttons() if button.isVisible()]
    deeds = [b for b in shown if answers.buttonRole(b) == ROLES.AcceptRole]
    leaving = next(b for b in shown if answers.buttonRole(b) == ROLES.RejectRole)
    if not deeds:
        pytest.skip("one way out only")
    across = answers.orientation() == Qt.Orientation.Horizontal
    for platform, deed_first in ((WINDOWS, True), (GNOME, not across)):
        answers.setStyleSheet(f"QDialogButtonBox {{ button-layout: {platform}; }}")
        qtbot.wait(10)
        assert reads_before(deeds[0], leaving) is deed_first


def test_escape_leaves_and_nothing_is_done(dialog, qtbot) -> None:
    heard = []
    dialog.rejected.connect(lambda: heard.append("rejected"))
    dialog.finished.connect(lambda _: heard.append("finished"))
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert "finished" in heard
    assert not isValid(dialog) or not dialog.isVisible()

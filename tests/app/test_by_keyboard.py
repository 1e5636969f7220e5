"""The whole job by keys alone: from a photo to a saved study, the mouse never touched.

The system's own file dialogs are answered in their place: they are the system's to test.
"""

from __future__ import annotations

from collections.abc import Callable

import sheet_tools
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QApplication, QFileDialog, QWidget
from window_tools import wait_until_still

from app.canvas.grip import Grip
from app.files import files_ask
from app.widgets.tabs import PageTabs
from app.window.pages import PAGES
from app.worksheet.scale import ScoreScale

KEYS = Qt.Key
CONTROL = Qt.KeyboardModifier.ControlModifier


def press(window, key, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    """A key, to whatever has the focus."""
    QTest.keyClick(QApplication.focusWidget() or window, key, modifiers)


def tab_to(window, wanted: Callable[[QWidget], bool], most: int = 120) -> QWidget:
    """Tab until a wanted control has the focus."""
    for _ in range(most):
        press(window, KEYS.Key_Tab)
        at = QApplication.focusWidget()
        if at is not None and wanted(at):
            return at
    raise AssertionError(f"not reached by Tab; last at {QApplication.focusWidget()!r}")


def named(text: str) -> Callable[[QWidget], bool]:
    """A button of this text."""
    return lambda at: isinstance(at, QAbstractButton) and at.text().replace("&", "") == text


def go_to_page(window, qtbot, key: str) -> None:
    """By the tabs in the header."""
    tabs = tab_to(window, lambda at: isinstance(at, PageTabs))
    wanted = [kind.key for kind in PAGES].index(key)
    while tabs.currentIndex() != wanted:
        press(window, KEYS.Key_Right if tabs.currentIndex() < wanted else KEYS.Key_Left)
    qtbot.waitUntil(lambda: not window.planner.working and not window.checker.working)


def test_the_whole_job_by_keyboard(window, qtbot, tmp_path, monkeypatch):
    case = sheet_tools.painted(raised=0.05)
    photo, sheet, saved = (tmp_path / name for name in ("sky.png", "sheet.jpg", "sky.gradewash"))
    Image.fromarray(case.reference[::2, ::2]).save(photo)
    sheet.write_bytes(case.jpeg)
    monkeypatch.setattr(files_ask, "ask_open_path", lambda *args, **kwargs: photo)
    monkeypatch.setattr(files_ask, "ask_save_path", lambda *args, **kwargs: saved)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", lambda *args, **kwargs: (str(sheet), ""))
    window.activateWindow()
    document = window.document

    # Read: open, move a line, split, put back.
    with qtbot.waitSignal(window.reader.photo_changed, timeout=20_000):
        press(window, KEYS.Key_O, CONTROL)
    wait_until_still(window, qtbot)
    before = document.study.bands
    tab_to(window, lambda at: isinstance(at, Grip))
    press(window, KEYS.Key_Down)
    assert document.study.bands.edges[1] == before.edges[1] + 0.002
    press(window, KEYS.Key_Insert)
    assert document.study.bands.count == before.count + 1
    press(window, KEYS.Key_Z, CONTROL)
    assert document.study.bands.count == before.count
    wait_until_still(window, qtbot)

    # Mix: take a paint out of the box.
    go_to_page(window, qtbot, "mix")
    box = document.study.box
    paint = tab_to(window, lambda at: isinstance(at, QAbstractButton) and at.isCheckable()
                   and "yellow" in at.accessibleName())  # fmt: skip
    press(window, KEYS.Key_Space)
    assert document.study.box != box, paint.accessibleName()
    qtbot.waitUntil(lambda: not window.planner.working)

    # Sheets: add one and move a corner.
    go_to_page(window, qtbot, "sheets")
    tab_to(window, named("Add a sheet"))
    press(window, KEYS.Key_Space)
    qtbot.waitUntil(lambda: document.study.sheets[0] is not None, timeout=20_000)
    sheet_tools.wait_for_checks(window, qtbot)
    assert window.checker.checks[0] is not None
    tab_to(window, named("Corners"))
    press(window, KEYS.Key_Space)
    corners = window.checker.checks[0].corners
    for _ in range(30):
        press(window, KEYS.Key_Right)
        if document.study.sheets[0].options.corners is not None:
            break
        press(window, KEYS.Key_Tab)
    assert document.study.sheets[0].options.corners not in (None, corners)
    tab_to(window, named("Done"))
    press(window, KEYS.Key_Space)
    sheet_tools.wait_for_checks(window, qtbot)

    # Worksheet: own scores open what was measured.
    go_to_page(window, qtbot, "worksheet")
    assert not window.checker.is_open(0)
    for key in (KEYS.Key_6, KEYS.Key_7, KEYS.Key_0):
        scored: list[QWidget] = []

        def unscored(at: QWidget, scored: list[QWidget] = scored) -> bool:
            parent = at.parentWidget()
            return isinstance(parent, ScoreScale) and parent.score is None

        tab_to(window, unscored)
        press(window, key)
    scores = document.study.worksheet.pages[0].scores
    assert (scores.hue, scores.value, scores.intensity) == (6, 7, 10)
    assert window.checker.is_open(0)

    # Class view: ask and answer.
    press(window, KEYS.Key_F5)
    view = window.class_room.view
    assert view.isVisible()
    for _ in range(5):
        QTest.keyClick(view, KEYS.Key_Space)
    assert view.lesson.question is None
    QTest.keyClick(view, KEYS.Key_Escape)
    window.activateWindow()

    # Save.
    press(window, KEYS.Key_S, CONTROL)
    qtbot.waitUntil(lambda: saved.exists() and not document.unsaved, timeout=20_000)

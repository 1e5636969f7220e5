"""The whole evening by keys alone, from the open study to the written list; no mouse, no calls.

The system's own file dialogs are answered in their place: they are the system's to test.
"""

from __future__ import annotations

import csv
from collections.abc import Callable
from pathlib import Path

import pytest
from class_set_tools import cut_sheet_jpeg, sheet_jpeg, sky_photo
from classset_tools import check_in_order
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLineEdit,
    QMenu,
    QPlainTextEdit,
    QWidget,
)

from app.canvas.grip import Grip
from app.classset import ask
from app.classset.hard_screen import HardScreen
from app.classset.mark_list import MarkView
from app.classset.new_class import NewClassDialog
from app.classset.wall import PinUpWall
from app.corners.handle import CornerHandle
from app.files import files_ask
from app.worksheet.score_target import ScoreTarget
from core.class_set.folder import read_class_set
from core.class_set.ticket import Slot, Ticket

KEYS = Qt.Key
CONTROL, ALT, SHIFT = (
    Qt.KeyboardModifier.ControlModifier,
    Qt.KeyboardModifier.AltModifier,
    Qt.KeyboardModifier.ShiftModifier,
)


class Hands:
    """Ten fingers on the keyboard: each key goes to whatever has it."""

    def __init__(self, window: QWidget, qtbot) -> None:
        self.window, self._qtbot = window, qtbot

    def press(self, key, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
        QTest.keyClick(self._at(), key, modifiers)

    def type(self, text: str) -> None:
        QTest.keyClicks(self._at(), text)

    def tab_to(self, wanted: Callable[[QWidget], bool], most: int = 60, back: bool = False):
        """Tab, or Shift+Tab, until a wanted control has the focus."""
        met = []
        for _ in range(most):
            if back:
                self.press(KEYS.Key_Backtab, SHIFT)
            else:
                self.press(KEYS.Key_Tab)
            at = QApplication.focusWidget()
            if at is not None and wanted(at):
                return at
            met.append(f"{type(at).__name__} {'' if at is None else at.accessibleName()}")
        raise AssertionError(f"not reached by Tab, but {', '.join(dict.fromkeys(met))}")

    def menu(self, *texts: str) -> None:
        """Through the menus by their letters, from the bar to an entry."""
        assert self._at() is not None
        QTest.keyClick(self.window, KEYS.Key_S, ALT)
        for text in texts:
            self._qtbot.waitUntil(
                lambda: isinstance(QApplication.activePopupWidget(), QMenu), timeout=20_000
            )
            popup = QApplication.activePopupWidget()
            for _ in popup.actions():
                active = popup.activeAction()
                if active is not None and active.text().replace("&", "").startswith(text):
                    break
                QTest.keyClick(popup, KEYS.Key_Down)
            else:
                raise AssertionError(f"no {text} in {[a.text() for a in popup.actions()]}")
            QTest.keyClick(popup, KEYS.Key_Return)

    def _at(self) -> QWidget:
        at = QApplication.activeWindow()
        if at is None or not at.isVisible():
            self.window.activateWindow()  # as a desktop does when what was over it has gone
            self._qtbot.waitUntil(self.window.isActiveWindow, timeout=20_000)
        popup = QApplication.activePopupWidget()
        return popup or QApplication.focusWidget() or self.window


def named(text: str) -> Callable[[QWidget], bool]:
    """A button of this text."""
    return lambda at: isinstance(at, QAbstractButton) and at.text().replace("&", "") == text


def is_a(*kinds: type) -> Callable[[QWidget], bool]:
    return lambda at: isinstance(at, kinds)


def called(text: str) -> Callable[[QWidget], bool]:
    """A field or box by what a screen reader says of it."""
    return lambda at: at.accessibleName().startswith(text)


def write_evening(folder: Path, tag: str) -> tuple[Path, ...]:
    """01 both sheets, 02 the first without its lower edge, one without a ticket."""
    folder.mkdir()
    (folder / "IMG_1.jpg").write_bytes(sheet_jpeg(Ticket(tag, 1, "1"), seed=1))
    (folder / "IMG_2.jpg").write_bytes(sheet_jpeg(Ticket(tag, 1, "2"), seed=2))
    (folder / "IMG_3.jpg").write_bytes(cut_sheet_jpeg(Ticket(tag, 2, "1"), seed=3))
    (folder / "IMG_4.jpg").write_bytes(sheet_jpeg(None, seed=4))
    return tuple(sorted(folder.iterdir()))


@pytest.mark.qt_log_ignore("This plugin does not support", extend=True)
def test_the_whole_evening_by_keyboard(window, qtbot, tmp_path, monkeypatch) -> None:
    check_in_order(monkeypatch)
    (tmp_path / "sky.png").write_bytes(sky_photo())
    tickets, table = tmp_path / "tickets.pdf", tmp_path / "marks.csv"
    monkeypatch.setattr(files_ask, "ask_open_path", lambda *_: tmp_path / "sky.png")
    monkeypatch.setattr(ask, "ask_pdf", lambda *_: tickets)
    monkeypatch.setattr(ask, "ask_table", lambda *_: table)
    monkeypatch.setattr(ask, "ask_pictures", lambda *_: brought)
    window.activateWindow()
    hands = Hands(window, qtbot)
    desk = window.desk

    def calm() -> None:
        qtbot.waitUntil(lambda: not desk.working, timeout=240_000)

    # The lesson's photo.
    hands.press(KEYS.Key_O, CONTROL)
    qtbot.waitUntil(lambda: bool(window.reader.readings), timeout=20_000)
    qtbot.waitUntil(lambda: not window.reader.working, timeout=20_000)
    hands.tab_to(is_a(Grip))

    # A new class set, and its tickets.
    window.class_actions._last = tmp_path
    hands.menu("Class set", "New class set")
    qtbot.waitUntil(lambda: isinstance(QApplication.activeWindow(), NewClassDialog), timeout=20_000)
    hands.type("7b")
    codes = hands.tab_to(called("Codes"))
    assert isinstance(codes, QLineEdit)
    hands.press(KEYS.Key_A, CONTROL)
    hands.type("01-04")
    hands.press(KEYS.Key_Return)
    qtbot.waitUntil(lambda: desk.class_set is not None, timeout=20_000)
    page = window.page("classset")
    assert page.isVisible()
    assert [each.code for each in desk.class_set.students] == ["01", "02", "03", "04"]
    hands.menu("Class set", "Print", "Tickets")
    qtbot.waitUntil(tickets.is_file, timeout=20_000)
    calm()

    # The pictures: the button of the empty page has the keyboard, or Tab finds it.
    brought = write_evening(tmp_path / "in", desk.class_set.class_list.tag)
    if not named("Bring in pictures")(QApplication.focusWidget()):
        hands.tab_to(named("Bring in pictures"))
    hands.press(KEYS.Key_Space)
    qtbot.waitUntil(lambda: len(desk.class_set.brought) == 4, timeout=240_000)
    qtbot.waitUntil(lambda: desk.unchecked == 0, timeout=240_000)
    calm()

    # Sort: one is not sure of its corners, one has no ticket.
    hands.press(KEYS.Key_1, ALT)
    sort = page.part
    assert sort.field.hasFocus()
    assert [each.reason for each in sort._questions] == ["corners unsure", "no ticket"]
    hands.press(KEYS.Key_1, CONTROL | SHIFT)
    qtbot.waitUntil(lambda: isinstance(QApplication.focusWidget(), CornerHandle), timeout=20_000)
    hands.press(KEYS.Key_Tab)
    hands.press(KEYS.Key_Right, SHIFT)
    hands.press(KEYS.Key_Return)
    assert page.part is sort
    calm()
    assert [each.reason for each in sort._questions] == ["no ticket"]
    hands.type("2 2")
    hands.press(KEYS.Key_Return)
    calm()
    assert sort._questions == ()
    assert desk.sorted.placement.digest_at(Slot(2, 1)) is not None

    # Pin-up: walk over the wall, light a band, take a strength and a step, write a remark.
    hands.press(KEYS.Key_2, ALT)
    part = page.part
    assert isinstance(QApplication.focusWidget(), PinUpWall)
    hands.press(KEYS.Key_Right)
    assert part.student == 1
    hands.press(KEYS.Key_Left)
    hands.tab_to(lambda at: part.show_choice.isAncestorOf(at), back=True)
    hands.press(KEYS.Key_Right)
    assert part.shown == "A"
    hands.press(KEYS.Key_Left)
    assert part.shown == "whole"
    drafted = part.marking.strength.field.text
    assert drafted
    if part.marking.strength.button.isEnabled():
        hands.tab_to(called("One strength: another"))
        hands.press(KEYS.Key_Space)
        assert part.marking.strength.field.text != drafted
    hands.tab_to(lambda at: isinstance(at, QPlainTextEdit) and at.accessibleName() == "Remark")
    hands.type("Calm washes.")
    hands.tab_to(called("Mark"))
    hands.type("7")
    hands.press(KEYS.Key_Return, CONTROL)
    first = desk.class_set.entry(1).marking
    assert (first.mark, first.remark, first.done) == ("7", "Calm washes.", True)
    assert first.strength
    assert part.student == 1

    # The next one's own scores, on the Worksheet page; then back, and on.
    hands.press(KEYS.Key_F8)
    qtbot.waitUntil(lambda: window.header.title == "7b, student 02", timeout=20_000)
    hands.tab_to(is_a(ScoreTarget))
    hands.press(KEYS.Key_6)
    calm()
    assert desk.class_set.entry(2).worksheet.pages[0].scores.hue == 6
    hands.press(KEYS.Key_Right, ALT)
    qtbot.waitUntil(lambda: window.header.title == "7b, student 03", timeout=20_000)
    hands.press(KEYS.Key_Left, ALT)
    qtbot.waitUntil(lambda: window.header.title == "7b, student 02", timeout=20_000)
    hands.press(KEYS.Key_F9)
    assert page.isVisible()
    assert part.student == 1

    # Late, missing, excused, and in time again, in the boxes over the sheets.
    hands.press(KEYS.Key_2, ALT)
    box = hands.tab_to(
        lambda at: isinstance(at, QComboBox) and at.accessibleName()[:7] == "Sheet 2"
    )
    for state in ("late", "missing", "excused"):
        hands.press(KEYS.Key_Down)
        assert desk.class_set.entry(2).marking.states[1] == state
    for _ in range(3):
        hands.press(KEYS.Key_Up)
    assert desk.class_set.entry(2).marking.states[1] == "in"
    assert box.isVisible()
    hands.press(KEYS.Key_Down)
    hands.tab_to(called("Mark"))
    hands.type("B+")
    hands.press(KEYS.Key_Return, CONTROL)
    assert desk.class_set.entry(2).marking.mark == "B+"
    hands.press(KEYS.Key_Z, CONTROL)
    hands.press(KEYS.Key_Y, CONTROL)
    assert desk.class_set.entry(2).marking.done

    # Found hard, before the class.
    hands.press(KEYS.Key_3, ALT)
    hands.press(KEYS.Key_F5)
    qtbot.waitUntil(lambda: isinstance(QApplication.activeWindow(), HardScreen), timeout=10_000)
    hands.press(KEYS.Key_Escape)
    qtbot.waitUntil(lambda: QApplication.activeWindow() is window, timeout=10_000)

    # The mark list: write into a cell, then the file.
    hands.press(KEYS.Key_4, ALT)
    assert isinstance(QApplication.focusWidget(), MarkView)
    for _ in range(2):
        hands.press(KEYS.Key_Down)
    hands.type("9")
    hands.press(KEYS.Key_Return)
    qtbot.waitUntil(lambda: desk.class_set.entry(3).marking.mark == "9", timeout=20_000)
    hands.tab_to(named("Save as CSV"))
    hands.press(KEYS.Key_Space)
    qtbot.waitUntil(table.is_file, timeout=20_000)
    calm()
    with table.open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(file))
    assert [row["mark"] for row in rows] == ["7", "B+", "9", ""]
    assert [row["sheet 2"] for row in rows][:2] == ["in time", "late"]
    assert read_class_set(desk.path) == desk.class_set

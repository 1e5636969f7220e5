"""Corners of the class's sheets set by hand, from Sort and from Pin-up, by mouse and by keys."""

from __future__ import annotations

from pathlib import Path

import pytest
from class_set_tools import TAG, cut_sheet_jpeg, sheet_jpeg
from classset_tools import checked_class_of, open_copy, settle
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication

from core.class_set.bringing import files_in
from core.class_set.folder import read_class_set
from core.class_set.ticket import Slot, Ticket

KEYS = Qt.Key
BOTH = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier


@pytest.fixture(scope="module")
def unsure_class(tmp_path_factory) -> Path:
    """Sheet 1 of 01 without its lower edge, sheet 2 of 01 whole; both checked."""
    where = tmp_path_factory.mktemp("class")
    (where / "in").mkdir()
    (where / "in" / "IMG_1.jpg").write_bytes(cut_sheet_jpeg(Ticket(TAG, 1, "1")))
    (where / "in" / "IMG_2.jpg").write_bytes(sheet_jpeg(Ticket(TAG, 1, "2"), seed=2))
    return checked_class_of(where, files_in([where / "in"]))


@pytest.fixture
def page(window, qtbot, tmp_path, monkeypatch, unsure_class):
    page = open_copy(window, qtbot, monkeypatch, unsure_class, tmp_path / "7b")
    window.activateWindow()
    return page


def picture_at(page, index: int) -> str:
    return page.desk.sorted.placement.digest_at(Slot(1, index))


def check_of(page, index: int):
    return page.desk.checks[picture_at(page, index)].check


def opened(page, qtbot):
    """The editor, once its picture is decoded."""
    editor = page.corners.editor
    qtbot.waitUntil(editor.canvas.handles[0].isVisible, timeout=20_000)
    return editor


def test_what_is_not_sure_is_asked_and_can_be_said_to_be_right(page, window, qtbot) -> None:
    part = page.show_part("sort")
    assert part.current.reason == "corners unsure"
    assert check_of(page, 0).provisional
    before = check_of(page, 0).corners
    part.take_focus()
    qtbot.keyClick(part.field, KEYS.Key_Return)  # the first answer: they are right
    assert page.desk.sorted.questions == ()
    settle(window, qtbot)
    check = check_of(page, 0)
    assert not check.provisional
    assert check.corners == before
    assert page.desk.unchecked == 0
    assert read_class_set(page.desk.path).picture(picture_at(page, 0)).options.corners == before
    window.desk.document.stack.undo()
    settle(window, qtbot)
    assert check_of(page, 0).provisional
    assert len(page.desk.sorted.questions) == 1


def test_corners_are_set_from_sort_by_keys_alone(page, window, qtbot) -> None:
    part = page.show_part("sort")
    part.take_focus()
    qtbot.keyClick(part.field, KEYS.Key_1, BOTH)
    editor = opened(page, qtbot)
    assert page.stack.currentWidget() is editor
    corners = editor.canvas.corners
    # The keyboard is at the first ring; Tab goes to the third, arrows move it.
    ring = QApplication.focusWidget()
    assert ring is editor.canvas.handles[0]
    for _ in range(2):
        qtbot.keyClick(QApplication.focusWidget(), KEYS.Key_Tab)
    for _ in range(3):
        qtbot.keyClick(QApplication.focusWidget(), KEYS.Key_Up, Qt.KeyboardModifier.ShiftModifier)
    digest = picture_at(page, 0)
    moved = page.desk.class_set.picture(digest).options.corners
    height = 720  # pixels of the picture
    assert moved[2][1] == pytest.approx(corners[2][1] - 30 / height)
    assert moved[:2] == corners[:2]
    settle(window, qtbot)
    assert check_of(page, 0).corners == moved
    qtbot.keyClick(QApplication.focusWidget(), KEYS.Key_Escape)
    assert page.part is part
    assert part.field.hasFocus() or part.places.hasFocus()
    # One run of arrows is one step of undo.
    window.desk.document.stack.undo()
    assert page.desk.class_set.picture(digest).options.corners is None


def test_the_column_says_what_is_not_sure_and_settles_it(page, window, qtbot) -> None:
    part = page.show_part("pin_up")
    strip = part.marking.doubts[0]
    assert strip.isVisible()
    assert not part.marking.doubts[1].isVisible()
    assert "corners are not sure" in strip.view.text
    qtbot.mouseClick(strip.button("corners"), Qt.MouseButton.LeftButton)
    editor = opened(page, qtbot)
    qtbot.mouseClick(editor.question.button("keep"), Qt.MouseButton.LeftButton)
    settle(window, qtbot)
    assert editor.question.view is None
    assert editor.reset.isEnabled()
    qtbot.keyClick(editor, KEYS.Key_Return)
    assert page.part is part
    assert not strip.isVisible()
    assert not check_of(page, 0).provisional


def test_found_corners_are_kept_with_one_press_in_the_column(page, window, qtbot) -> None:
    part = page.show_part("pin_up")
    before = check_of(page, 0).corners
    qtbot.mouseClick(part.marking.doubts[0].button("keep"), Qt.MouseButton.LeftButton)
    assert "checked again" in part.marking.doubts[0].view.text
    settle(window, qtbot)
    assert page.desk.class_set.picture(picture_at(page, 0)).options.corners == before
    assert part.marking.doubts[0].view is None


def test_any_sheet_can_be_looked_at_and_turned(page, window, qtbot) -> None:
    part = page.show_part("pin_up")
    qtbot.keyClick(part.wall, KEYS.Key_2, BOTH)
    editor = opened(page, qtbot)
    digest = picture_at(page, 1)
    assert page.corners.digest == digest
    found = check_of(page, 1)
    qtbot.mouseClick(editor.round, Qt.MouseButton.LeftButton)
    settle(window, qtbot)
    # What the teacher says of the turn holds, though it fits the sky less.
    options = page.desk.class_set.picture(digest).options
    assert (options.turned, options.corners) == (2, found.corners)
    assert check_of(page, 1).turned == 2
    qtbot.mouseClick(editor.reset, Qt.MouseButton.LeftButton)
    settle(window, qtbot)
    assert check_of(page, 1).turned == 0


def test_another_part_leaves_the_editor(page, window, qtbot) -> None:
    part = page.show_part("pin_up")
    part.set_corners(0)
    opened(page, qtbot)
    mark_list = page.show_part("mark_list")
    assert page.part is mark_list
    assert page.corners.digest == ""
    settle(window, qtbot)


def test_a_picture_that_is_gone_is_told(page, window, qtbot) -> None:
    part = page.show_part("pin_up")
    page.desk.picture_path(picture_at(page, 0)).unlink()
    part.set_corners(0)
    qtbot.waitUntil(window.notice_bar.isVisible, timeout=10_000)
    assert page.part is part


def test_corners_set_survive_closing_at_once(page, window, qtbot) -> None:
    part = page.show_part("pin_up")
    part.set_corners(0)
    editor = opened(page, qtbot)
    digest, path = picture_at(page, 0), page.desk.path
    qtbot.keyClick(editor.canvas.handles[2], KEYS.Key_Up)
    wanted = page.desk.class_set.picture(digest).options
    window.desk.close()
    qtbot.waitUntil(lambda: window.desk.class_set is None, timeout=20_000)
    assert read_class_set(path).picture(digest).options == wanted
    assert page.corners.digest == ""

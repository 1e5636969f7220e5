from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtWidgets import QApplication
from sheet_tools import add_sheet, open_sky, painted, wait_for_checks

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def editor(window, qtbot, tmp_path):
    """The corner editor open on a checked sheet."""
    open_sky(window, tmp_path, qtbot)
    page = window.page("sheets")
    add_sheet(window, 0, painted())
    wait_for_checks(window, qtbot)
    page.set_corners(0)
    assert page.corners.editor.isVisible()
    return page.corners.editor


def corners(window):
    return window.document.study.sheets[0].options.corners


def test_it_begins_with_the_proposed_corners(editor, window) -> None:
    check = window.checker.checks[0]
    assert editor.canvas.corners == check.corners
    assert corners(window) is None
    assert not editor.reset.isEnabled()
    # The keyboard stands at the first corner, under the magnifier.
    assert QApplication.focusWidget() is editor.canvas.handles[0]
    assert editor.canvas.lens.isVisible()


def test_dragging_a_corner_is_one_undo_step_and_checked_anew(editor, window, qtbot) -> None:
    document, before = window.document, window.checker.checks[0]
    steps = document.stack.count()
    handle = editor.canvas.handles[2]
    middle = QPoint(handle.width() // 2, handle.height() // 2)
    place = editor.canvas.placed
    start = place.to_screen(before.corners[2])
    qtbot.mousePress(handle, LEFT, pos=middle)
    for _ in range(3):
        qtbot.mouseMove(handle, middle + QPoint(-10, -5))
    qtbot.mouseRelease(handle, LEFT, pos=middle)
    assert document.stack.count() == steps + 1
    assert document.stack.undoText() == "corners of sheet 1"
    end = place.to_screen(corners(window)[2])
    assert end[0] < start[0] - 20
    assert end[1] < start[1] - 10
    assert corners(window)[0] == before.corners[0]
    wait_for_checks(window, qtbot)
    assert window.checker.checks[0].corner_confidence == 1.0
    assert editor.reset.isEnabled()
    qtbot.mouseClick(editor.reset, LEFT)
    assert corners(window) is None
    document.stack.undo()
    document.stack.undo()
    wait_for_checks(window, qtbot)
    assert window.checker.checks[0] is before


def test_arrow_keys_move_one_pixel_of_the_photo_and_shift_ten(editor, window, qtbot) -> None:
    before = editor.canvas.corners
    handle = editor.canvas.handles[0]
    qtbot.keyClick(handle, Qt.Key.Key_Right)
    qtbot.keyClick(handle, Qt.Key.Key_Down, Qt.KeyboardModifier.ShiftModifier)
    width, height = 800, 600
    assert corners(window)[0][0] == pytest.approx(before[0][0] + 1 / width)
    assert corners(window)[0][1] == pytest.approx(before[0][1] + 10 / height)
    undo = window.document.stack
    undo.undo()
    assert corners(window) is None  # one run of arrows


def test_tab_goes_round_the_corners_then_to_the_panel(editor, qtbot) -> None:
    handles = editor.canvas.handles
    for handle in handles:
        assert QApplication.focusWidget() is handle
        assert handle.accessibleName()
        qtbot.keyClick(handle, Qt.Key.Key_Tab)
    assert editor.isAncestorOf(QApplication.focusWidget())
    assert not editor.canvas.lens.isVisible()
    reached = set()
    for _ in range(8):
        reached.add(QApplication.focusWidget())
        qtbot.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    assert {editor.left, editor.right, editor.round, editor.scan, editor.finish} <= reached


def test_turning_turns_the_picture_and_keeps_the_corners(editor, window, qtbot) -> None:
    canvas = editor.canvas
    proposed = canvas.corners
    qtbot.mouseClick(editor.right, LEFT)
    assert window.document.study.sheets[0].options.turned == 1
    assert canvas.placed.turned == 1
    # The handle of the top left corner sits on the photo's bottom left one now.
    middle = canvas.handles[0].geometry().center()
    x, y = canvas.placed.to_screen(proposed[3])
    assert (middle.x(), middle.y()) == (pytest.approx(x, abs=2), pytest.approx(y, abs=2))
    qtbot.mouseClick(editor.round, LEFT)
    assert window.document.study.sheets[0].options.turned == 3
    qtbot.mouseClick(editor.right, LEFT)
    assert window.document.study.sheets[0].options.turned == 0
    wait_for_checks(window, qtbot)


def test_the_turn_is_asked_about_here_too(editor, window, qtbot) -> None:
    qtbot.mouseClick(editor.round, LEFT)
    wait_for_checks(window, qtbot)
    assert "upside down" in editor.question.view.text
    qtbot.mouseClick(editor.question.button("accept"), LEFT)
    assert window.document.study.sheets[0].options.turned == 0
    wait_for_checks(window, qtbot)
    assert editor.question.view is None


def test_a_flat_scan_is_a_switch(editor, window, qtbot) -> None:
    editor.scan.click()
    assert window.document.study.sheets[0].options.scan
    window.document.stack.undo()
    assert not editor.scan.isChecked()
    wait_for_checks(window, qtbot)


@pytest.mark.parametrize("key", [Qt.Key.Key_Escape, Qt.Key.Key_Return])
def test_escape_and_return_go_back_to_the_page(editor, window, qtbot, key) -> None:
    page = window.page("sheets")
    qtbot.keyClick(editor.canvas.handles[0], key)
    assert not editor.isVisible()
    assert page.board.isVisible()


def test_it_closes_when_its_sheet_goes(editor, window) -> None:
    window.document.stack.undo()
    assert window.document.study.sheets[0] is None
    assert not editor.isVisible()

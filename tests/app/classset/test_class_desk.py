"""The open class set: edits, undo, saving, bringing in, checking, stopping."""

from __future__ import annotations

import time

import pytest
from class_set_tools import plain_class_set
from classset_tools import bring_in, check_in_order, make_class, settle, write_pictures

from app.services.class_set import bringer as bringer_module
from app.services.class_set.document import ClassDocument
from app.state.document import Gesture
from core.class_set import edits
from core.class_set.arrivals import arrival_of
from core.class_set.folder import read_class_set
from core.class_set.model import Brought, Marking
from core.class_set.ticket import Slot
from core.pictures import Picture


@pytest.fixture(autouse=True)
def in_order(monkeypatch) -> None:
    check_in_order(monkeypatch)


def with_mark(class_set, mark: str, number: int = 1):
    return edits.with_marking(class_set, number, Marking(mark=mark))


# The document


def test_letters_of_one_gesture_are_one_step_of_undo(qapp) -> None:
    document = ClassDocument()
    document.begin(plain_class_set()[0])
    gesture = Gesture()
    for mark in ("1", "10"):
        document.change("mark", with_mark(document.open_set, mark), gesture)
    document.change("mark", with_mark(document.open_set, "9"), Gesture())
    assert document.stack.count() == 2
    document.stack.undo()
    assert document.open_set.entry(1).marking.mark == "10"
    document.stack.undo()
    assert document.open_set.entry(1).marking.mark == ""


def test_what_arrived_stays_when_an_edit_before_it_is_undone(qapp) -> None:
    document = ClassDocument()
    document.begin(plain_class_set()[0])
    document.change("mark", with_mark(document.open_set, "7"))
    now = document.open_set
    fresh = edits.with_brought(now, Brought(Picture("IMG_1.jpg", "1" * 64)))
    document.arrive(arrival_of(now, fresh))
    document.stack.undo()
    assert document.open_set.entry(1).marking.mark == ""
    assert len(document.open_set.brought) == 1


# In the window


def test_the_tab_is_there_while_a_class_set_is_open(window, qtbot, tmp_path) -> None:
    tabs = window.header.findChild(type(window.header._tabs))
    assert not tabs.isTabVisible(4)
    make_class(window, qtbot, tmp_path / "7b")
    assert tabs.isTabVisible(4)
    assert tabs.tabRect(0).left() >= 0  # and the first one is still in sight
    assert tabs.currentIndex() == 4
    window.desk.close()
    qtbot.waitUntil(lambda: window.desk.class_set is None)
    assert not tabs.isTabVisible(4)
    assert tabs.currentIndex() == 0


def test_every_edit_reaches_the_disk(window, qtbot, tmp_path) -> None:
    make_class(window, qtbot, tmp_path / "7b")
    desk = window.desk
    desk.change("mark", with_mark(desk.class_set, "B+"))
    settle(window, qtbot)
    assert read_class_set(tmp_path / "7b").entry(1).marking.mark == "B+"
    desk.document.stack.undo()
    settle(window, qtbot)
    assert read_class_set(tmp_path / "7b").entry(1).marking.mark == ""


def test_closing_at_once_saves_what_was_typed_last(window, qtbot, tmp_path) -> None:
    make_class(window, qtbot, tmp_path / "7b")
    window.desk.change("mark", with_mark(window.desk.class_set, "8"))
    window.desk.close()
    qtbot.waitUntil(lambda: window.desk.class_set is None)
    assert read_class_set(tmp_path / "7b").entry(1).marking.mark == "8"
    window.desk.open(tmp_path / "7b")  # and the folder is free
    qtbot.waitUntil(lambda: window.desk.class_set is not None)


def test_undo_belongs_to_the_page_that_is_shown(sky_window, qtbot, tmp_path) -> None:
    window = sky_window
    window.document.change("title", window.document.study.__class__(title="other"))
    make_class(window, qtbot, tmp_path / "7b")
    window.desk.change("mark", with_mark(window.desk.class_set, "8"))
    window.header.undo.trigger()
    assert window.desk.class_set.entry(1).marking.mark == ""
    assert window.document.study.title == "other"
    window.show_page(0)
    window.header.undo.trigger()
    assert window.document.study.title != "other"


def test_pictures_are_brought_in_placed_and_checked(window, qtbot, tmp_path) -> None:
    make_class(window, qtbot, tmp_path / "7b")
    bring_in(window, qtbot, write_pictures(tmp_path / "in"))
    desk = window.desk
    assert len(desk.class_set.brought) == 4
    assert desk.unchecked == 0
    at = desk.sorted.placement.digest_at
    assert None not in (at(Slot(1, 0)), at(Slot(1, 1)), at(Slot(2, 0)))
    assert [each.reason for each in desk.sorted.questions] == ["no ticket"]
    desk.painting(at(Slot(1, 0)))  # asked for
    settle(window, qtbot)
    assert desk.painting(at(Slot(1, 0))) is not None


def test_marks_typed_while_pictures_come_in_are_kept(window, qtbot, tmp_path) -> None:
    make_class(window, qtbot, tmp_path / "7b")
    desk, typed = window.desk, []

    def type_a_mark(before, after) -> None:
        if after is not None and len(after.brought) in (1, 3) and len(after.brought) not in typed:
            typed.append(len(after.brought))
            number = len(typed)
            desk.change("mark", with_mark(desk.class_set, f"{number}", number))

    desk.changed.connect(type_a_mark)
    bring_in(window, qtbot, write_pictures(tmp_path / "in"))
    kept = read_class_set(tmp_path / "7b")
    assert [kept.entry(n).marking.mark for n in (1, 2)] == ["1", "2"]
    assert len(kept.brought) == 4
    assert kept == desk.class_set
    while desk.document.stack.canUndo():
        desk.document.stack.undo()
    settle(window, qtbot)
    assert len(read_class_set(tmp_path / "7b").brought) == 4


def test_bringing_in_stops_and_keeps_what_was_told(window, qtbot, tmp_path) -> None:
    make_class(window, qtbot, tmp_path / "7b")
    desk = window.desk
    paths = write_pictures(tmp_path / "in")

    def stop_after_two() -> None:
        one = next((each for each in desk.underway if each.what == "bringing"), None)
        if one is not None and one.done == 2:
            desk.stop()

    desk.underway_changed.connect(stop_after_two)
    desk.add(paths)
    settle(window, qtbot)
    here = len(desk.class_set.brought)
    assert 2 <= here < 4
    assert len(read_class_set(tmp_path / "7b").brought) == here
    desk.underway_changed.disconnect(stop_after_two)
    bring_in(window, qtbot, paths)
    assert len(desk.class_set.brought) == 4


def test_a_file_that_is_no_picture_is_told_and_the_others_come_in(window, qtbot, tmp_path) -> None:
    page = make_class(window, qtbot, tmp_path / "7b")
    paths = write_pictures(tmp_path / "in")
    paths[1].write_bytes(b"not a picture")
    bring_in(window, qtbot, paths)
    assert len(window.desk.class_set.brought) == 3
    assert window.notice_bar.isVisible()
    assert page.progress.isHidden()


def test_a_full_disk_is_told_and_what_was_told_is_kept(
    window, qtbot, tmp_path, monkeypatch
) -> None:
    make_class(window, qtbot, tmp_path / "7b")
    real, calls = bringer_module.bring_in, []

    def full(folder, files, **rest):
        for told in real(folder, files, **rest):
            yield told
            calls.append(told)
            if len(calls) == 2:
                from core.errors import ClassSetError

                raise ClassSetError("The disk is full: make room, then try again.")

    monkeypatch.setattr(bringer_module, "bring_in", full)
    bring_in(window, qtbot, write_pictures(tmp_path / "in"))
    assert len(window.desk.class_set.brought) == 2
    assert "disk is full" in window.notice_bar.sentence


def test_a_check_stops_within_two_seconds_and_goes_on_later(
    window, qtbot, tmp_path, monkeypatch
) -> None:
    make_class(window, qtbot, tmp_path / "7b")
    desk = window.desk
    monkeypatch.setattr(desk, "check", lambda: None)
    bring_in(window, qtbot, write_pictures(tmp_path / "in"))
    monkeypatch.undo()
    check_in_order(monkeypatch)
    assert desk.unchecked == 4
    desk.check()
    qtbot.waitUntil(lambda: desk.unchecked < 4, timeout=30_000)
    began = time.monotonic()
    desk.stop()
    assert desk.underway == ()
    assert time.monotonic() - began < 2
    desk.check()
    qtbot.waitUntil(lambda: desk.unchecked == 0, timeout=60_000)


def test_closing_the_window_closes_the_class_set(window, qtbot, tmp_path) -> None:
    make_class(window, qtbot, tmp_path / "7b")
    window.desk.change("mark", with_mark(window.desk.class_set, "6"))
    window.close()
    qtbot.waitUntil(lambda: not window.isVisible())
    assert read_class_set(tmp_path / "7b").entry(1).marking.mark == "6"


def test_processes_check_beside_the_window(window, qtbot, tmp_path, monkeypatch) -> None:
    monkeypatch.undo()
    make_class(window, qtbot, tmp_path / "7b")
    bring_in(window, qtbot, write_pictures(tmp_path / "in"))
    qtbot.waitUntil(lambda: window.desk.unchecked == 0, timeout=120_000)
    assert all(kept.check is not None for kept in window.desk.checks.values())

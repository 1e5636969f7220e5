"""The way from the window into the class view and back."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.state.document import Gesture
from app.widgets.screens import class_screen
from core.study import WheelPlace


def test_f5_opens_it_and_escape_leaves(sky_window, qtbot):
    room = sky_window.class_room
    QTest.keyClick(sky_window, Qt.Key.Key_F5)
    assert room.is_open
    view = room.view
    assert len(sky_window.reader.readings) == view.lesson.bands
    view.run("answer")
    QTest.keyClick(view, Qt.Key.Key_Escape)
    assert not room.is_open
    room.open()
    assert view.lesson.shown == 0
    room.close()


def test_it_follows_lines_and_words(sky_window, qtbot):
    room = sky_window.class_room
    room.open()
    page = sky_window.page("read")
    page.split(0)
    qtbot.waitUntil(
        lambda: room.view.lesson.bands == len(sky_window.document.study.bands.edges) - 1
    )
    sky_window.preferences.set(tertiary="intermediate")
    assert room.view._wording.tertiary == "intermediate"
    room.close()


def test_without_a_photo_it_says_what_to_do(window):
    window.class_room.open()
    assert not window.class_room.is_open
    assert "Open a photo" in window.notice_display.text


def test_the_class_gets_the_other_screen():
    own, other = object(), object()
    assert class_screen(own, [own]) is own
    assert class_screen(own, [own, other]) is other


def test_hands_are_kept_in_the_study_and_come_back(sky_window, qtbot):
    room, document = sky_window.class_room, sky_window.document
    room.open()
    QTest.keyClick(room.view, Qt.Key.Key_T)
    QTest.keyClicks(room.view, "12")
    QTest.keyClick(room.view, Qt.Key.Key_Down)
    QTest.keyClicks(room.view, "7")
    counted = document.study.hands
    assert [(h.band, h.question, h.count) for h in counted] == [(0, "hue", 12), (0, "hue", 7)]
    assert document.unsaved
    room.close()
    room.open()
    assert room.view.lesson.hands == counted
    assert room.view.lesson.shown == 0
    document.stack.undo()
    assert document.study.hands == ()
    assert room.view.lesson.hands == ()
    document.stack.redo()
    assert room.view.lesson.hands == counted
    room.close()


def test_the_wheels_place_is_one_for_window_and_class(sky_window, qtbot):
    room, document = sky_window.class_room, sky_window.document
    room.open()
    view = room.view
    QTest.keyClick(view, Qt.Key.Key_F6)
    view.run("answer")
    place = WheelPlace(0.3, 0.85, 0.4)
    view.wheel_put.emit(place, Gesture())
    assert document.study.wheel == place
    assert view.wheel_over.place == place
    document.stack.undo()
    assert view.wheel_over.place is None
    for _ in range(4):
        view.run("answer")
    view.pointed.emit((0.5, 0.1))
    assert view.wheel_over.point is not None
    view.pointed.emit(None)
    assert view.wheel_over.point is None
    room.close()

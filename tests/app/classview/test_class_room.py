"""The way from the window into the class view and back."""

from __future__ import annotations

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from app.widgets.screens import class_screen


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

"""A notice that a later act makes untrue leaves with that act; others stay until closed."""

from __future__ import annotations

from dataclasses import replace

from PySide6.QtWidgets import QApplication
from window_tools import read_page


def said(window) -> str:
    QApplication.processEvents()
    return window.notice_display.text


def test_open_a_photo_first_leaves_with_the_page(window) -> None:
    window.class_room.toggle()
    assert said(window).startswith("Open a photo first")
    window.show_page(1)
    assert said(window) == ""
    assert not window.notice_bar.isVisible()


def test_open_a_photo_first_leaves_when_one_is_opened(window, qtbot) -> None:
    window.class_room.toggle()
    assert said(window)
    window.opener.open_sample("dusk")
    qtbot.waitUntil(lambda: bool(window.reader.readings), timeout=30_000)
    assert said(window) == ""


def test_what_an_edit_was_not_allowed_for_leaves_with_the_next_edit(sky_window) -> None:
    page, document = read_page(sky_window), sky_window.document
    page.lines.remove(document.study.bands.count - 1)
    assert "horizon" in said(sky_window)
    page.lines.split(0)
    assert said(sky_window) == ""


def test_a_notice_said_with_an_edit_outlives_that_edit(sky_window) -> None:
    document = sky_window.document
    sky_window.notices.hint("There is room for so many characters.")
    document.change("typed", replace(document.study, title="another"))
    assert said(sky_window)
    document.change("typed", replace(document.study, title="one more"))
    assert said(sky_window) == ""


def test_other_notices_stay(sky_window) -> None:
    sky_window.notices.note("This photo was reduced.")
    sky_window.show_page(1)
    read_page(sky_window).lines.split(0)
    assert said(sky_window) == "This photo was reduced."

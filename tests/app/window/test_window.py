from __future__ import annotations

import sys
import threading
import time
from concurrent.futures import Future
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QThreadPool, QUrl
from PySide6.QtGui import QDragEnterEvent, QDropEvent, QGuiApplication, QImage
from PySide6.QtWidgets import QApplication, QMenu
from window_tools import (
    HORIZON,
    LINES,
    answer,
    draw_sky,
    open_and_wait,
    read_page,
    wait_until_still,
)

import app.errors
import app.files.files_ask
import sample_scenes
from app.look import look
from app.state.tasks import Task
from app.window.pages import PAGES
from app.window.window import Window
from core.errors import Cancelled, PhotoError
from core.study import Study, split_band
from core.study_file.opening import open_file


def actions_of(menu: QMenu) -> dict[str, object]:
    return {
        action.text().replace("&", ""): action
        for action in menu.actions()
        if not action.isSeparator()
    }


def test_empty_window_teaches_and_shows_only_pages_that_exist(window: Window, qtbot) -> None:
    page = read_page(window)
    assert page.empty.isVisible()
    assert not page.canvas.isVisible()
    assert next(kind.key for kind in PAGES) == "read"
    assert window.document.study == Study()
    assert window.windowTitle().startswith("Gradewash")


def test_opening_a_photo_proposes_and_reads_its_bands(sky_window: Window) -> None:
    bands = sky_window.document.study.bands
    assert bands.lines == pytest.approx(LINES, abs=0.02)
    assert bands.horizon == pytest.approx(HORIZON, abs=0.02)
    assert [reading.letter for reading in sky_window.reader.readings] == ["A", "B", "C", "D"]
    assert not sky_window.document.unsaved
    assert sky_window.document.stack.count() == 0
    assert sky_window.header.title == "test sky"
    assert sky_window.opener.recent.paths()[0].name == "test_sky.png"
    assert not read_page(sky_window).empty.isVisible()


def test_a_photo_that_cannot_be_opened_keeps_the_study(sky_window, qtbot, tmp_path) -> None:
    study, readings = sky_window.document.study, sky_window.reader.readings
    broken = tmp_path / "broken.jpg"
    broken.write_bytes(b"no picture at all")
    sky_window.opener.open_path(broken)
    qtbot.waitUntil(lambda: sky_window.notice_bar.isVisible())
    assert sky_window.document.study == study
    assert sky_window.reader.readings == readings
    assert "picture" in sky_window.notice_display.text
    assert "\n" not in sky_window.notice_display.text
    assert "Traceback" not in sky_window.notice_display.text
    assert broken not in sky_window.opener.recent.paths()


def test_a_missing_file_is_one_sentence(window, qtbot, tmp_path) -> None:
    window.opener.open_path(tmp_path / "gone.jpg")
    qtbot.waitUntil(lambda: window.notice_bar.isVisible())
    assert read_page(window).empty.isVisible()


def test_a_second_photo_begins_anew(sky_window, qtbot, tmp_path) -> None:
    sky_window.document.change("split", split_band(sky_window.document.study, 0))
    assert sky_window.header.title == "test sky, unsaved"
    assert sky_window.isWindowModified()
    sky_window.opener.open_path(draw_sky(tmp_path / "other.png", size=(200, 300)))
    with qtbot.waitSignal(sky_window.reader.photo_changed):
        answer(qtbot, "Don't save")
    wait_until_still(sky_window, qtbot)
    assert sky_window.document.stack.count() == 0
    assert not sky_window.isWindowModified()
    assert sky_window.document.study.title == "other"


def test_the_last_of_two_quick_openings_wins(window, qtbot, tmp_path) -> None:
    first, second = draw_sky(tmp_path / "first.png"), draw_sky(tmp_path / "second.png")
    window.opener.open_path(first)
    window.opener.open_path(second)
    wait_until_still(window, qtbot)
    assert window.document.study.photo_name == "second.png"


def drop(window: Window, mime: QMimeData) -> QDropEvent:
    arguments = (
        Qt.DropAction.CopyAction,
        mime,
        Qt.MouseButton.LeftButton,
        Qt.KeyboardModifier.NoModifier,
    )
    enter = QDragEnterEvent(QPoint(50, 200), *arguments)
    enter.ignore()
    window.dragEnterEvent(enter)
    event = QDropEvent(QPointF(50, 200), *arguments)
    event.ignore()
    if enter.isAccepted():
        window.dropEvent(event)
    return event


def test_a_file_can_be_dropped(window, qtbot, tmp_path) -> None:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(draw_sky(tmp_path / "dropped.png")))])
    assert drop(window, mime).isAccepted()
    wait_until_still(window, qtbot)
    assert window.document.study.photo_name == "dropped.png"


def test_text_cannot_be_dropped(window) -> None:
    mime = QMimeData()
    mime.setText("hello")
    assert not drop(window, mime).isAccepted()


def test_a_picture_can_be_pasted(window, qtbot, tmp_path) -> None:
    QGuiApplication.clipboard().setImage(
        QImage(str(draw_sky(tmp_path / "copied.png", size=(300, 200))))
    )
    window.setFocus()
    qtbot.keyClick(window, Qt.Key.Key_V, Qt.KeyboardModifier.ControlModifier)
    wait_until_still(window, qtbot)
    assert window.document.study.title == "pasted picture"
    assert len(window.reader.readings) == 4


def test_pasting_nothing_says_so(window, qtbot) -> None:
    QGuiApplication.clipboard().clear()
    window.opener.paste()
    assert "clipboard" in window.notice_display.text


def test_recent_photos_stand_in_the_menu(sky_window, qtbot, tmp_path) -> None:
    open_and_wait(sky_window, draw_sky(tmp_path / "salt & sky.png"), qtbot)
    menu = sky_window.header.menu("study")
    menu.aboutToShow.emit()
    recent = next(a.menu() for a in menu.actions() if a.text() == "Open &recent")
    texts = [action.text() for action in recent.actions() if not action.isSeparator()]
    assert texts == ["salt && sky.png", "test_sky.png", "Forget these"]
    recent.actions()[1].trigger()
    qtbot.waitUntil(lambda: sky_window.document.study.photo_name == "test_sky.png")
    wait_until_still(sky_window, qtbot)


def test_every_sample_sky_opens_with_its_title(window, qtbot) -> None:
    name = sample_scenes.names()[0]
    window.opener.open_sample(name)
    wait_until_still(window, qtbot)
    assert window.document.study.title == sample_scenes.title(name)
    assert window.opener.recent.paths() == ()


def test_a_photo_begun_before_the_window_is_taken_over(window, qtbot, tmp_path) -> None:
    path = draw_sky(tmp_path / "early.png")
    early: Future = Future()
    window.opener.open_early(early, path, None)
    threading.Timer(0.05, lambda: early.set_result(open_file(path))).start()
    wait_until_still(window, qtbot)
    assert window.document.study.photo_name == "early.png"
    assert window.opener.recent.paths() == (path,)


def test_a_photo_that_failed_early_is_told(window, qtbot, tmp_path) -> None:
    early: Future = Future()
    early.set_exception(PhotoError("This is no picture: choose another."))
    window.opener.open_early(early, tmp_path / "x.png", None)
    qtbot.waitUntil(lambda: window.notice_bar.isVisible())
    assert window.notice_display.text == "This is no picture: choose another."


def test_undo_and_redo_by_key_and_button(sky_window, qtbot) -> None:
    page, before = read_page(sky_window), sky_window.document.study
    page.split(0)
    after = sky_window.document.study
    assert len(page.canvas.grips) == 5
    edit = actions_of(sky_window.header.menu("edit"))
    assert "Undo split band" in edit
    qtbot.keyClick(page.canvas, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert sky_window.document.study == before
    assert len(page.canvas.grips) == 4
    edit = actions_of(sky_window.header.menu("edit"))
    edit["Redo split band"].trigger()
    assert sky_window.document.study == after


def test_theme_and_text_size_change_at_once(sky_window, qtbot) -> None:
    view = sky_window.header.menu("view")
    menus = {a.text().replace("&", ""): a.menu() for a in view.actions() if a.menu()}
    actions_of(menus["Theme"])["Dark"].trigger()
    assert look().theme.name == "dark"
    actions_of(menus["Text size"])["150%"].trigger()
    assert look().type.scale == 1.5
    actions_of(menus["Theme"])["Light"].trigger()
    actions_of(menus["Text size"])["100%"].trigger()
    assert look().theme.name == "light"
    assert look().type.scale == 1.0


def test_a_wide_window_has_larger_words(sky_window, qtbot) -> None:
    narrow = look().type.px("aloud")
    sky_window.resize(1920, 1080)
    qtbot.waitUntil(lambda: look().type.wide)
    assert look().type.px("aloud") > narrow
    sky_window.resize(1366, 768)
    qtbot.waitUntil(lambda: not look().type.wide)


def test_geometry_is_kept(window, qtbot, tmp_path) -> None:
    window.resize(1000, 688)  # the offscreen screen is small and bounds the width
    window.close()
    again = Window(tmp_path / "settings")
    qtbot.addWidget(again)
    assert again.height() == 688
    again.close()


class Stubborn:
    """Work that ends only when it is called off, and then takes a moment to put things away."""

    def __init__(self) -> None:
        self.began, self.ended = threading.Event(), threading.Event()
        self.given_up = threading.Event()

    def __call__(self, _progress, should_stop) -> None:
        self.began.set()
        while not should_stop() and not self.given_up.is_set():
            time.sleep(0.005)
        time.sleep(0.1)
        self.ended.set()


def test_closing_calls_off_the_work_and_waits_for_it(window, qtbot) -> None:
    work = Stubborn()
    try:
        Task(work).start()
        qtbot.waitUntil(work.began.is_set)
        started = time.monotonic()
        window.close()
        # Called off, or it would still run; and waited for, or it would not have ended yet.
        assert work.ended.is_set()
        assert time.monotonic() - started < 4, "the wait ran out: nothing was called off"
    finally:
        work.given_up.set()


def test_closing_while_a_photo_opens_leaves_nothing_running(window, qtbot, tmp_path) -> None:
    window.opener.open_path(draw_sky(tmp_path / "sky.png"))
    window.close()
    assert QThreadPool.globalInstance().activeThreadCount() == 0


def test_the_hook_shows_one_sentence_and_keeps_the_window(window, monkeypatch, caplog) -> None:
    monkeypatch.setattr(sys, "excepthook", sys.excepthook)
    app.errors.install_hook(window.notices.problem)

    def raised(error: BaseException) -> str:
        try:
            raise error
        except BaseException as caught:
            sys.excepthook(type(caught), caught, caught.__traceback__)
        return window.notice_display.text

    assert raised(PhotoError("Broken: choose another.")) == "Broken: choose another."
    assert "close other programs" in raised(MemoryError())
    caplog.clear()
    window.notices.note("before")
    assert raised(Cancelled()) == "before"
    assert not caplog.records
    assert "Something went wrong" in raised(ValueError("private detail"))
    assert "private detail" not in window.notice_display.text
    assert any("uncaught" in record.message for record in caplog.records)


def test_the_help_menu_opens_the_guide_and_the_box_about_it(window, qtbot) -> None:
    actions = actions_of(window.header.menu("help"))
    actions["Keys"].trigger()
    assert window.help.guide is not None
    window.help.guide.close()
    actions["About Gradewash..."].trigger()
    QApplication.activeModalWidget().close()


def test_a_path_of_a_photo_is_returned_by_the_dialog(window, qtbot, tmp_path, monkeypatch) -> None:
    path = draw_sky(tmp_path / "chosen.png")
    monkeypatch.setattr(app.files.files_ask, "ask_open_path", lambda *arguments: path)
    window.opener.choose()
    wait_until_still(window, qtbot)
    assert window.document.study.photo_name == "chosen.png"
    monkeypatch.setattr(app.files.files_ask, "ask_open_path", lambda *arguments: None)
    window.opener.choose()
    assert window.document.study.photo_name == "chosen.png"
    assert Path(window.opener.recent.paths()[0]) == path


def test_the_photos_bytes_are_kept_and_named(sky_window, qtbot, tmp_path) -> None:
    photo = sky_window.document.study.photo
    assert photo.digest
    assert sky_window.pictures[photo.digest].startswith(b"RIFF")
    assert not sky_window.document.unsaved
    QGuiApplication.clipboard().setImage(
        QImage(str(draw_sky(tmp_path / "copied.png", size=(300, 200))))
    )
    sky_window.opener.paste()
    qtbot.waitUntil(lambda: sky_window.document.study.title == "pasted picture")
    wait_until_still(sky_window, qtbot)
    pasted = sky_window.document.study.photo.digest
    assert pasted != photo.digest
    assert sky_window.pictures[pasted].startswith(b"RIFF")

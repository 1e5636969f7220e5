"""The study as a file: new, open, save, and what is asked before anything is lost."""

from __future__ import annotations

import errno
import os
from concurrent.futures import Future
from dataclasses import replace
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, Qt, QUrl
from PySide6.QtWidgets import QApplication
from window_tools import answer, button_of, draw_sky, open_and_wait, read_page, wait_until_still

import app.files.files_ask
import app.files.saving
from app.window.window import Window
from core import files
from core.files import aside_of
from core.paint.box.box import GENERIC_BOXES
from core.sheet.result import SheetOptions
from core.study import (
    SheetEntry,
    Study,
    digests_of,
    move_line,
    split_band,
    with_sheet,
    without_work,
)
from core.study_file.document import study_from_bytes
from core.study_file.opening import open_file
from core.worksheet.worksheet import with_score


@pytest.fixture
def chosen(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """Where the save dialog will say to save."""
    path = tmp_path / "lessons" / "dusk lesson.gradewash"
    path.parent.mkdir()
    monkeypatch.setattr(app.files.files_ask, "ask_save_path", lambda parent, suggestion: path)
    return path


@pytest.fixture
def saved_window(sky_window: Window, chosen: Path, qtbot) -> Window:
    """A window whose study is at `chosen`."""
    save_and_wait(sky_window, qtbot)
    return sky_window


def save_and_wait(window: Window, qtbot) -> None:
    with qtbot.waitSignal(window.files.saver.saved):
        window.files.save()


def another_window(tmp_path: Path, qtbot) -> Window:
    """A second window of the same user."""
    window = Window(tmp_path / "settings")
    qtbot.addWidget(window, before_close_func=lambda window: window.document.mark_saved())
    with qtbot.waitExposed(window):
        window.show()
    return window


def fill(window: Window, folder: Path) -> Study:
    """Change something of everything a study holds."""
    drawn = draw_sky(folder / "first.png", size=(180, 120))
    sheet = window.pictures.add("first.png", drawn.read_bytes())
    corners = ((0.1, 0.1), (0.9, 0.1), (0.9, 0.9), (0.1, 0.9))
    study = split_band(window.document.study, 0)
    study = replace(study, box=GENERIC_BOXES["primary"], mix=replace(study.mix, allow_white=True))
    study = with_sheet(study, 0, SheetEntry(sheet, SheetOptions(corners=corners)))
    study = replace(study, worksheet=with_score(study.worksheet, 0, "hue", 7))
    window.document.change("fill", study)
    return window.document.study


def test_a_new_lesson_from_this_one_keeps_the_task_alone(
    saved_window, chosen, qtbot, tmp_path
) -> None:
    window = saved_window
    study = fill(window, tmp_path)
    save_and_wait(window, qtbot)
    wait_until_still(window, qtbot)
    readings = window.reader.readings
    window.files.new_from_this()
    wait_until_still(window, qtbot)
    assert window.document.study == without_work(study)
    assert window.document.study.bands == study.bands
    assert window.document.unsaved
    assert window.files.path is None
    assert window.reader.readings == readings
    assert set(window.pictures) == digests_of(without_work(study))
    assert study_from_bytes(chosen.read_bytes()).study == study


def test_a_saved_study_opens_as_it_was(saved_window, chosen, qtbot, tmp_path) -> None:
    study = fill(saved_window, tmp_path)
    assert saved_window.document.unsaved
    save_and_wait(saved_window, qtbot)
    assert not saved_window.document.unsaved
    wait_until_still(saved_window, qtbot)
    readings, pictures = saved_window.reader.readings, dict(saved_window.pictures)
    saved_window.close()
    again = another_window(tmp_path, qtbot)
    open_and_wait(again, chosen, qtbot)
    assert again.document.study == study
    assert not again.document.unsaved
    assert again.document.stack.count() == 0
    assert {key: again.pictures[key] for key in digests_of(study)} == {
        key: pictures[key] for key in digests_of(study)
    }
    assert again.reader.readings == readings
    assert again.files.path == chosen
    assert again.opener.recent.paths()[0] == chosen
    assert len(read_page(again).canvas.grips) == 5


def test_lines_moved_by_hand_are_not_proposed_anew(saved_window, chosen, qtbot) -> None:
    moved = move_line(saved_window.document.study, 1, 0.47)
    saved_window.document.change("move", moved)
    save_and_wait(saved_window, qtbot)
    with qtbot.waitSignal(saved_window.reader.photo_changed):
        saved_window.opener.open_path(chosen)
    wait_until_still(saved_window, qtbot)
    assert saved_window.document.study.bands == moved.bands
    assert len(saved_window.reader.readings) == moved.bands.count
    assert saved_window.reader.readings[1].bottom == pytest.approx(0.47)


def test_the_file_keeps_the_pictures_as_they_were_given(saved_window, chosen) -> None:
    opened = study_from_bytes(chosen.read_bytes())
    digest = opened.study.photo.digest
    assert opened.pictures[digest] == saved_window.pictures[digest]


def test_ctrl_s_saves_and_the_title_says_where(sky_window, chosen, qtbot) -> None:
    sky_window.document.change("split", split_band(sky_window.document.study, 0))
    assert sky_window.isWindowModified()
    with qtbot.waitSignal(sky_window.files.saver.saved):
        qtbot.keyClick(sky_window, Qt.Key.Key_S, Qt.KeyboardModifier.ControlModifier)
    assert not sky_window.isWindowModified()
    # The photo's file gave the title; the name given by hand says more.
    assert sky_window.document.study.title == "dusk lesson"
    assert sky_window.header.title == "dusk lesson"
    sky_window.document.stack.undo()
    assert sky_window.isWindowModified()
    assert sky_window.document.study.title == "dusk lesson"


def test_save_as_leaves_the_first_file_and_keeps_a_title_given_by_hand(
    saved_window, chosen, qtbot, monkeypatch
) -> None:
    first = chosen.read_bytes()
    saved_window.document.change("rename", replace(saved_window.document.study, title="My dusk"))
    other = chosen.with_name("other.gradewash")
    monkeypatch.setattr(app.files.files_ask, "ask_save_path", lambda parent, suggestion: other)
    with qtbot.waitSignal(saved_window.files.saver.saved):
        saved_window.files.save_as()
    assert chosen.read_bytes() == first
    assert saved_window.files.path == other
    assert saved_window.document.study.title == "My dusk"
    assert saved_window.windowTitle() == "My dusk (other.gradewash)[*] \u2014 Gradewash"


def test_what_the_save_dialog_suggests(sky_window, monkeypatch, tmp_path) -> None:
    suggested = []
    monkeypatch.setattr(
        app.files.files_ask,
        "ask_save_path",
        lambda parent, suggestion: suggested.append(suggestion),
    )
    sky_window.document.change("rename", replace(sky_window.document.study, title='Dusk: 1/2 "a"'))
    sky_window.files.save()
    assert suggested[0].name == "Dusk 1 2 a.gradewash"
    assert suggested[0].parent.is_dir()
    assert sky_window.document.unsaved


def test_an_edit_while_saving_stays_unsaved(saved_window, qtbot) -> None:
    saved_window.document.change("split", split_band(saved_window.document.study, 0))
    with qtbot.waitSignal(saved_window.files.saver.saved):
        saved_window.files.save()
        saved_window.document.change("split", split_band(saved_window.document.study, 0))
    assert saved_window.document.unsaved
    save_and_wait(saved_window, qtbot)
    assert not saved_window.document.unsaved


def test_saving_waits_for_the_photos_bytes(window, chosen, qtbot, tmp_path) -> None:
    path = draw_sky(tmp_path / "sky.png")
    with qtbot.waitSignal(window.reader.photo_changed):
        window.opener.open_path(path)
    assert window.files.storing
    save_and_wait(window, qtbot)
    assert study_from_bytes(chosen.read_bytes()).study.photo.digest


# Leaving


def test_new_empties_the_window(saved_window, qtbot) -> None:
    saved_window.files.new()
    assert saved_window.document.study == Study()
    assert read_page(saved_window).empty.isVisible()
    assert saved_window.files.path is None
    assert len(saved_window.pictures) == 0
    assert saved_window.reader.opened is None


def test_closing_with_unsaved_changes_asks(sky_window, chosen, qtbot) -> None:
    sky_window.document.change("split", split_band(sky_window.document.study, 0))
    sky_window.close()
    answer(qtbot, "Cancel")
    assert sky_window.isVisible()
    assert sky_window.document.unsaved
    sky_window.close()
    dialog = QApplication.activeModalWidget()
    assert "test sky" in dialog.text
    qtbot.waitUntil(lambda: QApplication.focusWidget() is button_of("Save"))
    qtbot.keyClick(dialog, Qt.Key.Key_Escape)
    assert sky_window.isVisible()
    sky_window.close()
    answer(qtbot, "Save")
    qtbot.waitUntil(lambda: not sky_window.isVisible())
    assert study_from_bytes(chosen.read_bytes()).study == sky_window.document.study


def test_closing_without_saving_leaves_the_file(saved_window, chosen, qtbot) -> None:
    before = chosen.read_bytes()
    saved_window.document.change("split", split_band(saved_window.document.study, 0))
    saved_window.close()
    answer(qtbot, "Don't save")
    assert not saved_window.isVisible()
    assert chosen.read_bytes() == before


def test_opening_over_unsaved_changes_asks_and_saves_first(saved_window, chosen, qtbot, tmp_path):
    changed = split_band(saved_window.document.study, 0)
    saved_window.document.change("split", changed)
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(draw_sky(tmp_path / "other.png")))])
    saved_window.opener.open_mime(mime)
    with qtbot.waitSignal(saved_window.reader.photo_changed):
        answer(qtbot, "Save")
    assert study_from_bytes(chosen.read_bytes()).study == changed
    assert saved_window.document.study.title == "other"
    assert saved_window.files.path is None
    wait_until_still(saved_window, qtbot)


def test_a_save_that_was_called_off_leaves_all_open(sky_window, qtbot, monkeypatch) -> None:
    monkeypatch.setattr(app.files.files_ask, "ask_save_path", lambda parent, suggestion: None)
    changed = split_band(sky_window.document.study, 0)
    sky_window.document.change("split", changed)
    sky_window.close()
    answer(qtbot, "Save")
    assert sky_window.isVisible()
    assert sky_window.document.study == changed
    assert sky_window.document.unsaved


# What goes wrong


@pytest.mark.parametrize(
    ("number", "words"), [(errno.ENOSPC, "no room"), (errno.EACCES, "may not")]
)
def test_a_disk_that_takes_nothing(saved_window, chosen, qtbot, monkeypatch, number, words) -> None:
    before = chosen.read_bytes()
    changed = split_band(saved_window.document.study, 0)
    saved_window.document.change("split", changed)

    def fail(descriptor: int) -> None:
        raise OSError(number, os.strerror(number))

    monkeypatch.setattr(files.os, "fsync", fail)
    saved_window.close()
    answer(qtbot, "Save")
    qtbot.waitUntil(lambda: words in saved_window.notice_display.text)
    assert saved_window.isVisible()
    assert saved_window.document.study == changed
    assert saved_window.document.unsaved
    assert chosen.read_bytes() == before
    assert os.listdir(chosen.parent) == [chosen.name]
    monkeypatch.undo()
    save_and_wait(saved_window, qtbot)
    assert study_from_bytes(chosen.read_bytes()).study == changed


def test_a_disk_that_has_gone(saved_window, chosen, qtbot) -> None:
    saved_window.document.change("split", split_band(saved_window.document.study, 0))
    chosen.unlink()
    chosen.parent.rmdir()
    saved_window.files.save()
    qtbot.waitUntil(lambda: "folder" in saved_window.notice_display.text)
    assert "\n" not in saved_window.notice_display.text
    assert saved_window.document.unsaved


def test_a_file_that_was_moved_away_is_written_again(saved_window, chosen, qtbot) -> None:
    saved_window.document.change("split", split_band(saved_window.document.study, 0))
    chosen.unlink()
    save_and_wait(saved_window, qtbot)
    assert study_from_bytes(chosen.read_bytes()).study == saved_window.document.study


def test_a_damaged_study_keeps_what_is_open(sky_window, qtbot, tmp_path) -> None:
    study = sky_window.document.study
    broken = tmp_path / "broken.gradewash"
    broken.write_bytes(b"PK\x03\x04 no more than this")
    sky_window.opener.open_path(broken)
    qtbot.waitUntil(lambda: "damaged" in sky_window.notice_display.text)
    assert sky_window.document.study == study
    assert sky_window.files.path is None
    missing = tmp_path / "missing.gradewash"
    sky_window.opener.open_path(missing)
    qtbot.waitUntil(lambda: "missing.gradewash" in sky_window.notice_display.text)


# Others


def test_changed_on_disk_is_asked_about(saved_window, chosen, qtbot, monkeypatch) -> None:
    mine = split_band(saved_window.document.study, 0)
    saved_window.document.change("split", mine)
    chosen.write_bytes(b"somebody else's")
    saved_window.files.save()
    answer(qtbot, "Cancel")
    assert chosen.read_bytes() == b"somebody else's"
    assert saved_window.document.unsaved
    other = chosen.with_name("mine.gradewash")
    monkeypatch.setattr(app.files.files_ask, "ask_save_path", lambda parent, suggestion: other)
    saved_window.files.save()
    with qtbot.waitSignal(saved_window.files.saver.saved):
        answer(qtbot, "Save as...")
    assert chosen.read_bytes() == b"somebody else's"
    assert study_from_bytes(other.read_bytes()).study == mine
    other.write_bytes(b"again somebody else's")
    saved_window.document.change("split", split_band(mine, 0))
    saved_window.files.save()
    with qtbot.waitSignal(saved_window.files.saver.saved):
        answer(qtbot, "Put mine in its place")
    assert study_from_bytes(other.read_bytes()).study == saved_window.document.study
    assert not saved_window.document.unsaved


def test_a_study_open_twice_can_be_looked_at(saved_window, chosen, qtbot, tmp_path) -> None:
    second = another_window(tmp_path, qtbot)
    second.opener.open_path(chosen)
    answer(qtbot, "Cancel")
    assert second.document.study == Study()
    second.opener.open_path(chosen)
    with qtbot.waitSignal(second.reader.photo_changed):
        answer(qtbot, "Open read-only")
    wait_until_still(second, qtbot)
    assert second.files.read_only
    assert second.document.study == saved_window.document.study
    assert second.header.title == "dusk lesson, read-only"
    # Saving asks for another name, and the name in use is refused.
    second.document.change("split", split_band(second.document.study, 0))
    second.files.save()
    assert "another window" in second.notice_display.text
    assert second.document.unsaved


def test_a_copy_of_a_study_open_twice(saved_window, chosen, qtbot, tmp_path, monkeypatch) -> None:
    second = another_window(tmp_path, qtbot)
    second.opener.open_path(chosen)
    with qtbot.waitSignal(second.reader.photo_changed):
        answer(qtbot, "Open a copy")
    wait_until_still(second, qtbot)
    assert second.document.unsaved
    assert second.files.path is None
    copy = tmp_path / "copy.gradewash"
    monkeypatch.setattr(app.files.files_ask, "ask_save_path", lambda parent, suggestion: copy)
    save_and_wait(second, qtbot)
    assert study_from_bytes(copy.read_bytes()).study == saved_window.document.study


def test_a_closed_study_is_free_for_others(saved_window, chosen, qtbot, tmp_path) -> None:
    saved_window.files.new()
    second = another_window(tmp_path, qtbot)
    open_and_wait(second, chosen, qtbot)
    assert not second.files.read_only
    second.close()
    locks = list((tmp_path / "settings" / "data").rglob("*.lock"))
    assert locks == []


@pytest.mark.skipif(os.name == "nt", reason="other permissions")
def test_a_file_that_may_not_be_written_opens_read_only(
    saved_window, chosen, qtbot, monkeypatch
) -> None:
    monkeypatch.setattr("app.files.place.os.access", lambda path, mode: False)
    open_and_wait(saved_window, chosen, qtbot)
    assert saved_window.files.read_only
    assert saved_window.header.title.endswith("read-only")


# The ways in


def test_a_study_begun_before_the_window_is_taken_over(saved_window, chosen, qtbot, tmp_path):
    study = saved_window.document.study
    saved_window.close()
    early: Future = Future()
    early.set_result(open_file(chosen))
    second = another_window(tmp_path, qtbot)
    second.opener.open_early(early, chosen, None)
    wait_until_still(second, qtbot)
    assert second.document.study == study
    assert second.files.path == chosen


def test_a_study_without_a_photo_opens_empty(window, chosen, qtbot) -> None:
    window.document.change("rename", replace(window.document.study, title="Only a title"))
    save_and_wait(window, qtbot)
    window.files.new()
    window.opener.open_path(chosen)
    qtbot.waitUntil(lambda: window.document.study.title == "Only a title")
    assert read_page(window).empty.isVisible()
    assert window.files.path == chosen


def test_the_study_is_renamed_in_a_field(sky_window, qtbot) -> None:
    menu = sky_window.header.menu("study")
    next(a for a in menu.actions() if a.text() == "Rena&me the study...").trigger()
    dialog = QApplication.activeModalWidget()
    dialog.field.setText("  ")
    assert not dialog.button.isEnabled()
    dialog.field.setText(" Dusk  two ")
    qtbot.keyClick(dialog.field, Qt.Key.Key_Return)
    assert sky_window.document.study.title == "Dusk two"
    assert sky_window.document.stack.undoText() == "rename study"
    next(a for a in menu.actions() if a.text() == "Rena&me the study...").trigger()
    qtbot.keyClick(QApplication.activeModalWidget(), Qt.Key.Key_Escape)
    assert sky_window.document.study.title == "Dusk two"


def test_only_the_pictures_of_the_study_are_kept(saved_window, qtbot, tmp_path) -> None:
    fill(saved_window, tmp_path)
    save_and_wait(saved_window, qtbot)
    assert len(saved_window.pictures) == 2
    open_and_wait(saved_window, draw_sky(tmp_path / "other.png", size=(200, 300)), qtbot)
    assert set(saved_window.pictures) == digests_of(saved_window.document.study)


def test_what_a_killed_save_left_is_gone_after_the_next_start(
    saved_window, chosen, qtbot, tmp_path
):
    saved_window.close()
    aside_of(chosen).write_bytes(b"half a study")
    again = another_window(tmp_path, qtbot)
    again.files.look_for_unsaved()
    qtbot.waitUntil(lambda: os.listdir(chosen.parent) == [chosen.name])
    assert chosen.stat().st_size > 1000


def test_a_photo_joins_a_study_that_has_none(window, chosen, qtbot, tmp_path) -> None:
    study = replace(window.document.study, title="My lesson", box=GENERIC_BOXES["primary"])
    window.document.change("fill", study)
    save_and_wait(window, qtbot)
    open_and_wait(window, draw_sky(tmp_path / "sky.png"), qtbot)
    joined = window.document.study
    assert (joined.title, joined.box) == (study.title, study.box)
    assert joined.photo.name == "sky.png"
    assert len(joined.bands.lines) == 3
    assert window.document.unsaved
    save_and_wait(window, qtbot)
    assert study_from_bytes(chosen.read_bytes()).study == joined


def test_a_file_that_cannot_be_opened_asks_nothing(saved_window, qtbot, tmp_path) -> None:
    saved_window.document.change("split", split_band(saved_window.document.study, 0))
    broken = tmp_path / "broken.jpg"
    broken.write_bytes(b"no picture")
    saved_window.opener.open_path(broken)
    qtbot.waitUntil(lambda: "picture" in saved_window.notice_display.text)
    assert QApplication.activeModalWidget() is None
    assert saved_window.document.unsaved


def test_storing_lets_the_bands_go_first(window, qtbot, tmp_path) -> None:
    """Stripping the photo opens it again: that is not to take a core from the bands."""
    order = []
    window.reader.readings_changed.connect(
        lambda readings: order.append("bands") if readings else None
    )
    add = window.pictures.add

    def adding(name, data):
        order.append("storing")
        return add(name, data)

    window.pictures.add = adding
    open_and_wait(window, draw_sky(tmp_path / "sky.png"), qtbot)
    assert order[0] == "bands"
    assert "storing" in order

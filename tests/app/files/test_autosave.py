"""Unsaved work survives a window that was cut off, and nothing is left behind otherwise."""

from __future__ import annotations

import os
import signal
import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtCore import QDateTime
from PySide6.QtWidgets import QApplication
from window_tools import answer, draw_sky, open_and_wait, wait_until_still

import app.files.autosave
import app.files.files_ask
import app.files.recovery
from app.files.recovery import RecoveryDialog, place_words, when_words
from app.window.window import Window
from core.study import split_band
from core.study_file.contents import Contents
from core.study_file.document import study_from_bytes, study_from_contents
from core.study_file.recovery import Recovered, left_behind

CHILD = """
import sys
from pathlib import Path
from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QApplication
from app.window.window import Window
from core.study import split_band
photo, folder, saved = map(Path, sys.argv[1:])
qt = QApplication([])
window = Window(folder)
window.show()
window.opener.open_path(photo)

def look():
    if window.reader.working or not window.reader.readings:
        QTimer.singleShot(10, look)
        return
    if str(saved) == ".":
        change()
    else:
        import app.files.files_ask
        app.files.files_ask.ask_save_path = lambda parent, suggestion: saved
        window.files.save(change)

def change():
    window.document.change("split", split_band(window.document.study, 0))

window.files.autosave.kept.connect(lambda: print("kept", flush=True))
look()
qt.exec()
"""


def data_of(tmp_path: Path) -> Path:
    return tmp_path / "settings" / "data"


def files_in(folder: Path) -> list[Path]:
    # Unlike `rglob`, it does not mind a folder that goes while it looks.
    return [Path(at, name) for at, _, names in os.walk(folder) for name in names]


@pytest.fixture
def quick(monkeypatch: pytest.MonkeyPatch) -> None:
    """Work is kept at once, so that a test needs not wait."""
    monkeypatch.setattr(app.files.autosave, "DELAY_MS", 0)


@pytest.fixture
def quick_window(quick, window: Window, qtbot, tmp_path: Path) -> Window:
    """A window with a sky that keeps its work at once."""
    open_and_wait(window, draw_sky(tmp_path / "test_sky.png"), qtbot)
    return window


def change_and_wait(window: Window, qtbot) -> None:
    with qtbot.waitSignal(window.files.autosave.kept):
        window.document.change("split", split_band(window.document.study, 0))


def kill_a_window(tmp_path: Path, saved: Path = Path()) -> None:
    """Open a sky in a window of its own process, change it, and kill -9 once it is kept."""
    photo = draw_sky(tmp_path / "test_sky.png")
    arguments = [str(photo), str(tmp_path / "settings"), str(saved)]
    with subprocess.Popen(
        [sys.executable, "-c", CHILD, *arguments],
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
        cwd=Path(__file__).parents[3],
    ) as child:
        assert child.stdout is not None
        assert child.stdout.readline().strip() == b"kept"
        child.send_signal(signal.SIGKILL)


def test_the_delay_leaves_time_to_write_within_five_seconds() -> None:
    assert app.files.autosave.DELAY_MS <= 2500


def test_changes_do_not_put_it_off(sky_window, qtbot) -> None:
    sky_window.document.change("split", split_band(sky_window.document.study, 0))
    remaining = sky_window.files.autosave._timer.remainingTime()
    assert 0 < remaining <= 1.06 * app.files.autosave.DELAY_MS  # a coarse timer keeps to 5 %
    qtbot.waitUntil(lambda: sky_window.files.autosave._timer.remainingTime() < remaining - 20)
    sky_window.document.change("split", split_band(sky_window.document.study, 0))
    assert sky_window.files.autosave._timer.remainingTime() < remaining


def test_what_was_only_looked_at_is_not_kept(quick_window, tmp_path) -> None:
    assert not quick_window.files.autosave.waiting
    assert files_in(data_of(tmp_path)) == []


def test_a_change_is_kept_whole(quick_window, qtbot, tmp_path, monkeypatch) -> None:
    change_and_wait(quick_window, qtbot)
    unsaved = data_of(tmp_path) / "unsaved"
    study = next(unsaved.rglob("study.json"))
    assert b"test sky" in study.read_bytes()
    photo = quick_window.pictures[quick_window.document.study.photo.digest]
    assert next(unsaved.rglob("photo.webp")).read_bytes() == photo
    # A window that runs is left alone.
    assert left_behind(data_of(tmp_path)) == ()


def test_saving_and_undoing_forget_it(quick_window, qtbot, tmp_path, monkeypatch) -> None:
    saved = tmp_path / "dusk.gradewash"
    monkeypatch.setattr(app.files.files_ask, "ask_save_path", lambda parent, suggestion: saved)
    change_and_wait(quick_window, qtbot)
    quick_window.files.save()
    qtbot.waitUntil(lambda: files_in(data_of(tmp_path) / "unsaved") == [])
    change_and_wait(quick_window, qtbot)
    assert files_in(data_of(tmp_path) / "unsaved")
    quick_window.document.stack.undo()
    qtbot.waitUntil(lambda: files_in(data_of(tmp_path) / "unsaved") == [])


def test_closing_without_saving_forgets_it(quick_window, qtbot, tmp_path) -> None:
    change_and_wait(quick_window, qtbot)
    quick_window.close()
    answer(qtbot, "Don't save")
    assert files_in(data_of(tmp_path)) == []


def test_a_full_disk_is_told_once(quick_window, qtbot, monkeypatch) -> None:
    from core.errors import StudyFileError
    from core.study_file.recovery import UnsavedWork

    def full(*arguments: object) -> None:
        raise StudyFileError("no room")

    monkeypatch.setattr(UnsavedWork, "keep", full)
    told = []
    quick_window.notices.shown.connect(lambda notice: told.append(notice.text))
    for _ in range(2):
        quick_window.document.change("split", split_band(quick_window.document.study, 0))
        qtbot.waitUntil(lambda: not quick_window.files.autosave.waiting)
    (sentence,) = told
    assert "save the study soon" in sentence
    monkeypatch.undo()
    change_and_wait(quick_window, qtbot)
    assert quick_window.notice_display.text == ""


@pytest.mark.skipif(os.name == "nt", reason="no SIGKILL there")
def test_work_of_a_killed_window_is_offered_opened_and_saved(
    quick, window, qtbot, tmp_path, monkeypatch
) -> None:
    saved = tmp_path / "dusk.gradewash"
    kill_a_window(tmp_path, saved)
    before = study_from_bytes(saved.read_bytes()).study
    (left,) = left_behind(data_of(tmp_path))
    kept = study_from_contents(left.contents).study
    assert kept == split_band(before, 0)
    window.files.look_for_unsaved()
    qtbot.waitUntil(lambda: isinstance(QApplication.activeModalWidget(), RecoveryDialog))
    with qtbot.waitSignal(window.reader.photo_changed):
        answer(qtbot, "Open it")
    wait_until_still(window, qtbot)
    assert window.document.study == kept
    assert window.document.unsaved
    assert window.files.path == saved
    # Its own copy replaces the one that was found, and a save ends both.
    qtbot.waitUntil(lambda: left_behind(data_of(tmp_path)) == ())
    assert files_in(data_of(tmp_path) / "unsaved")
    with qtbot.waitSignal(window.files.saver.saved):
        window.files.save()
    assert study_from_bytes(saved.read_bytes()).study == kept
    qtbot.waitUntil(lambda: files_in(data_of(tmp_path) / "unsaved") == [])


@pytest.mark.skipif(os.name == "nt", reason="no SIGKILL there")
def test_work_of_a_killed_window_can_be_given_up_or_kept_for_later(window, qtbot, tmp_path) -> None:
    kill_a_window(tmp_path)
    window.files.look_for_unsaved()
    answer(qtbot, "Decide later")
    assert len(left_behind(data_of(tmp_path))) == 1
    window.files.look_for_unsaved()
    qtbot.waitUntil(lambda: isinstance(QApplication.activeModalWidget(), RecoveryDialog))
    dialog = QApplication.activeModalWidget()
    row = dialog.rows[0]
    row.give_up_button.click()
    assert not row.open_button.isEnabled()
    row.give_up_button.click()
    assert row.open_button.isEnabled()
    row.give_up_button.click()
    assert len(left_behind(data_of(tmp_path))) == 1
    answer(qtbot, "Decide later")
    assert left_behind(data_of(tmp_path)) == ()
    assert files_in(data_of(tmp_path)) == []


def test_nothing_left_behind_asks_nothing(window, qtbot) -> None:
    window.files.look_for_unsaved()
    qtbot.waitUntil(lambda: not window.files._looking.running)
    assert QApplication.activeModalWidget() is None


def test_when_and_where_in_words() -> None:
    now = QDateTime.fromString("2027-03-05T14:05:00", "yyyy-MM-ddTHH:mm:ss")
    then = now.toSecsSinceEpoch()
    assert when_words(then, now).startswith("today at ")
    assert when_words(then - 86_400, now).startswith("yesterday at ")
    assert "2027" in when_words(then - 9 * 86_400, now)
    assert place_words(None) == "It was never saved."
    assert "dusk.gradewash" in place_words(Path("lessons/dusk.gradewash"))


def test_only_the_newest_work_has_the_ink_button(qtbot, monkeypatch) -> None:
    monkeypatch.setattr(app.files.recovery, "when_words", lambda when: "hoy a las 7:06 p.m.")
    nothing = Contents(b"", {})
    found = tuple(Recovered(str(n), f"sky {n}", None, 1.8e9, nothing) for n in range(3))
    dialog = RecoveryDialog(None, found, lambda one: None, lambda one: None)
    qtbot.addWidget(dialog)
    assert [row.open_button.filled for row in dialog.rows] == [True, False, False]
    # An hour that ends with a stop of its own gets no second one.
    assert all(".." not in row._about.text() for row in dialog.rows)

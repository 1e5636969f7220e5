"""Files as they are met in a school: many at once, oddly named, damaged, empty."""

from __future__ import annotations

import os
from pathlib import Path

import pytest
from PySide6.QtCore import QMimeData, QUrl
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QApplication
from window_tools import answer, draw_sky, open_and_wait, wait_until_still

from app.files.brought import as_on_disk, image_in, paths_in
from app.window.window import Window
from core.bands.lines import Bands
from core.pictures import PictureStore
from core.study import SheetEntry, Study
from core.study_file.document import study_to_bytes
from core.worksheet.worksheet import Worksheet

posix = pytest.mark.skipif(os.name == "nt", reason="names of POSIX")


def dropped(*paths: Path) -> QMimeData:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path)) for path in paths])
    return mime


def test_of_many_files_it_asks_which(sky_window: Window, qtbot, tmp_path: Path) -> None:
    paths = [draw_sky(tmp_path / f"sky {n}.png") for n in range(20)]
    before = sky_window.document.study
    assert sky_window.opener.open_mime(dropped(*paths))
    assert sky_window.document.study == before
    answer(qtbot, "Cancel")
    assert sky_window.document.study == before
    sky_window.opener.open_mime(dropped(*paths))
    with qtbot.waitSignal(sky_window.reader.photo_changed):
        answer(qtbot, "Open sky 0.png alone")
    wait_until_still(sky_window, qtbot)
    assert sky_window.document.study.photo.name == "sky 0.png"


def test_many_files_go_where_somebody_takes_them(sky_window: Window, qtbot, tmp_path) -> None:
    paths = tuple(draw_sky(tmp_path / f"sky {n}.png") for n in range(3))
    taken: list[tuple[Path, ...]] = []
    sky_window.opener.take_many = taken.append
    sky_window.opener.open_mime(dropped(*paths))
    answer(qtbot, "Put all into a class set")
    assert taken == [paths]


def test_an_empty_picture_in_the_clipboard_is_said(sky_window: Window, qtbot) -> None:
    for empty in (QImage(), QImage(0, 0, QImage.Format.Format_RGB32)):
        mime = QMimeData()
        mime.setImageData(empty)
        assert image_in(mime) is None
        assert not sky_window.opener.open_mime(mime)
    QApplication.clipboard().clear()
    sky_window.opener.paste()
    assert "no picture in the clipboard" in sky_window.notice_display.text


def test_an_old_problem_leaves_when_something_succeeds(
    sky_window: Window, qtbot, tmp_path: Path
) -> None:
    broken = tmp_path / "broken.jpg"
    broken.write_bytes(b"no picture")
    sky_window.opener.open_path(broken)
    qtbot.waitUntil(lambda: "not a picture" in sky_window.notice_display.text)
    open_and_wait(sky_window, draw_sky(tmp_path / "other.png"), qtbot)
    assert "not a picture" not in sky_window.notice_display.text


@posix
def test_a_name_that_is_not_utf8_opens_and_is_listed(
    sky_window: Window, qtbot, tmp_path: Path
) -> None:
    odd = Path(os.fsdecode(os.fsencode(tmp_path) + b"/caf\xe9.png"))
    os.rename(draw_sky(tmp_path / "sky.png"), odd)
    open_and_wait(sky_window, odd, qtbot)
    assert sky_window.document.study.photo.name == "caf?.png"
    assert odd in sky_window.opener.recent.paths()
    mime = QMimeData()
    mime.setData("text/uri-list", b"file://" + os.fsencode(tmp_path) + b"/caf%E9.png\r\n")
    assert paths_in(mime) == (odd,)
    # What a dialog of Qt's gives for it.
    assert as_on_disk(tmp_path / "caf\ufffd.png") == odd
    assert as_on_disk(tmp_path / "gone\ufffd.png") == tmp_path / "gone\ufffd.png"


def test_a_recent_list_that_fails_does_not_stop_opening(
    sky_window: Window, qtbot, tmp_path: Path
) -> None:
    recent = sky_window.opener.recent._path
    recent.unlink(missing_ok=True)
    recent.mkdir(parents=True)
    open_and_wait(sky_window, draw_sky(tmp_path / "other.png"), qtbot)
    assert sky_window.document.study.title == "other"


def test_a_persons_name_becomes_no_title(sky_window: Window, qtbot, tmp_path: Path) -> None:
    open_and_wait(sky_window, draw_sky(tmp_path / "Anna Tester 7b.png"), qtbot)
    assert "Tester" not in sky_window.document.study.title
    assert "Tester" not in sky_window.document.study.photo.name
    assert "code" in sky_window.notice_display.text


@pytest.mark.parametrize("lost", ["photo", "sheet"])
def test_a_damaged_study_opens_with_what_is_whole(
    sky_window: Window, qtbot, tmp_path: Path, lost: str
) -> None:
    store = PictureStore()
    photo = store.add("sky.png", draw_sky(tmp_path / "sky.png").read_bytes())
    sheet = store.add("first.png", draw_sky(tmp_path / "one.png", size=(300, 200)).read_bytes())
    worksheet = Worksheet("7b 14", remark="A brave sky.")
    study = Study(
        "Dusk", photo, Bands(0.8, (0.3,)), sheets=(SheetEntry(sheet), None), worksheet=worksheet
    )
    data = bytearray(study_to_bytes(study, store))
    hurt = store[(photo if lost == "photo" else sheet).digest]
    data[data.index(hurt) + len(hurt) // 2] ^= 16
    path = tmp_path / "dusk.gradewash"
    path.write_bytes(bytes(data))
    sky_window.opener.open_path(path)
    qtbot.waitUntil(lambda: "damaged" in sky_window.notice_display.text)
    qtbot.waitUntil(lambda: not sky_window.reader.working)
    opened = sky_window.document.study
    assert opened.worksheet == worksheet
    assert opened.bands == study.bands
    assert (opened.photo is None) == (lost == "photo")
    assert (opened.sheets[0] is None) == (lost == "sheet")
    # Saving asks for another name: the damaged file stays as it is.
    assert sky_window.files.path is None
    assert sky_window.document.unsaved
    assert path.read_bytes() == bytes(data)
    for index in (3, 2, 1, 0):
        sky_window.show_page(index)
    qtbot.waitUntil(lambda: not sky_window.reader.working)
    if lost == "photo":
        # The photo given again finds the lines where they were.
        sky_window.opener.open_path(tmp_path / "sky.png")
        qtbot.waitUntil(lambda: sky_window.document.study.photo is not None)
        wait_until_still(sky_window, qtbot)
        assert sky_window.document.study.bands == study.bands
        assert sky_window.document.study.worksheet == worksheet

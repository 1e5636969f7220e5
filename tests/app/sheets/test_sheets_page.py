from __future__ import annotations

from dataclasses import replace

import pytest
from PySide6.QtCore import QMimeData, QPoint, QPointF, Qt, QUrl
from PySide6.QtGui import QDragEnterEvent, QDragMoveEvent, QDropEvent, QGuiApplication, QImage
from PySide6.QtWidgets import QApplication, QFileDialog, QLabel, QRadioButton
from sheet_tools import add_sheet, open_sky, painted, score_sheet, wait_for_checks
from window_tools import wait_until_still

from app.drawing.sheets.rows import row_height
from app.sheets.findings import FindingsPanel, FindingsView
from app.sheets.page import SheetsPage
from core.bands.lines import Bands
from core.sheet.result import SheetOptions
from core.study import with_bands, with_worksheet
from core.worksheet.worksheet import with_page

LEFT = Qt.MouseButton.LeftButton


@pytest.fixture
def page(window, qtbot, tmp_path) -> SheetsPage:
    """The Sheets page with a sky of four bands."""
    open_sky(window, tmp_path, qtbot)
    page = window.page("sheets")
    assert isinstance(page, SheetsPage)
    return page


@pytest.fixture
def sheet_file(tmp_path):
    path = tmp_path / "painting.jpg"
    path.write_bytes(painted(raised=0.05).jpeg)
    return path


def dropped(page: SheetsPage, mime: QMimeData, index: int | None) -> None:
    """Drop something over a sheet's place, or over the sky."""
    place = page.board.shape.pictures[0 if index is None else index + 1].center()
    at = QPointF(page.board.mapTo(page, place))
    actions, buttons, keys = Qt.DropAction.CopyAction, LEFT, Qt.KeyboardModifier.NoModifier
    enter = QDragEnterEvent(at.toPoint(), actions, mime, buttons, keys)
    page.dragEnterEvent(enter)
    assert enter.isAccepted()
    page.dragMoveEvent(QDragMoveEvent(at.toPoint(), actions, mime, buttons, keys))
    assert page.board.view.aimed == index
    page.dropEvent(QDropEvent(at, actions, mime, buttons, keys))
    assert page.board.view.aimed is None


def urls(path) -> QMimeData:
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path))])
    return mime


def test_without_a_photo_the_page_asks_for_one(window) -> None:
    page = window.page("sheets")
    assert page.empty.isVisible()
    assert not page.board.isVisible()


def test_without_a_photo_one_press_on_a_sample_sky_is_enough(window, qtbot) -> None:
    page = window.page("sheets")
    window.show_page(2)
    page.empty.skies["dusk"].click()
    wait_until_still(window, qtbot)
    assert page.board.isVisible()
    assert page.isVisible(), "the teacher stays where the teacher was"


def test_without_sheets_it_teaches(page) -> None:
    assert page.board.isVisible()
    assert page.teach.isVisible()
    assert not page.findings.isVisible()
    assert "No sheet" in page.board.places[0].view.line
    assert page.board.places[0].button("add").isVisible()
    assert page.board.view.letters == ("A", "B", "C", "D")


def test_a_sheet_from_the_dialog_is_checked_and_waits_for_own_scores(
    page, window, qtbot, sheet_file, monkeypatch
) -> None:
    monkeypatch.setattr(
        QFileDialog, "getOpenFileName", lambda *args, **kwargs: (str(sheet_file), "")
    )
    with qtbot.waitSignal(page.adder.added, timeout=20_000):
        qtbot.mouseClick(page.board.places[0].button("add"), LEFT)
    wait_for_checks(window, qtbot)
    entry = window.document.study.sheets[0]
    assert entry.picture.name == "painting.jpg"
    assert entry.picture.digest in window.pictures
    assert window.document.stack.undoText() == "add sheet 1"
    # The painting is shown, nothing measured is.
    shown = page.board.view.sheets[0]
    assert shown.picture is not None
    assert shown.lines == ()
    assert not page.teach.isVisible()
    assert page.findings.lock.isVisible()
    assert "hue, value and intensity" in page.findings.lock.text
    assert not page.findings.sentences.isVisible()
    assert not page.columns[0].bands.isVisible()
    assert page.board.accessibleDescription() == ""
    # The way on is one press: to the scales, on the other page.
    qtbot.mouseClick(page.findings.lock.score, LEFT)
    assert window.page("worksheet").isVisible()
    window.show_page(2)

    score_sheet(window, 0)
    assert not page.findings.lock.isVisible()
    assert page.findings.sentences.isVisible()
    assert [cell.own for cell in page.findings.scores.cells] == ["own 7"] * 3 + [""]
    assert page.columns[0].bands.isVisible()
    assert [row.letter for row in page.columns[0].bands.rows] == ["A", "B", "C", "D"]
    assert any(line.arrow and "high" in line.text for line in page.board.view.sheets[0].lines)
    assert "high" in page.board.accessibleDescription()


def test_the_steps_stand_under_the_columns(page, window) -> None:
    window.resize(1366, 768)
    QApplication.processEvents()
    for parts, picture in zip(page.teach._columns, page.board.shape.pictures, strict=True):
        for part in parts:
            left = part.mapTo(page, QPoint(0, 0)).x()
            assert abs(left - picture.left()) <= 2
            assert left + part.width() <= page.width()


def test_what_waits_leaves_no_paper_empty(page, window, qtbot) -> None:
    add_sheet(window, 0, painted(raised=0.05))
    wait_for_checks(window, qtbot)
    QApplication.processEvents()
    lock = page.findings.lock
    below = lock.mapTo(page.findings, QPoint(0, lock.height())).y()
    assert page.findings.height() - below < 40
    assert page.columns[0]._paper.height() < 80
    score_sheet(window, 0)
    QApplication.processEvents()
    assert page.findings.height() > 0.9 * page.lower_part.viewport().height()


def test_the_teacher_opens_and_closes_what_waits(page, window, qtbot) -> None:
    add_sheet(window, 0, painted())
    wait_for_checks(window, qtbot)
    qtbot.mouseClick(page.findings.lock.button, LEFT)
    assert window.checker.show_measured
    assert page.findings.sentences.isVisible()
    assert page.findings.hide_button.isVisible()
    (switch,) = page.actions_for("view")
    assert switch.isChecked()
    qtbot.mouseClick(page.findings.hide_button, LEFT)
    assert page.findings.lock.isVisible()
    assert not switch.isChecked()
    switch.trigger()
    assert window.checker.show_measured


def test_sheets_are_dropped_on_their_places(page, window, qtbot, sheet_file, tmp_path) -> None:
    with qtbot.waitSignal(page.adder.added, timeout=20_000):
        dropped(page, urls(sheet_file), 1)
    assert window.document.study.sheets[0] is None
    assert window.document.study.sheets[1].picture.name == "painting.jpg"
    # Dropped on a sheet, a picture takes its place; undo brings the first one back.
    wait_for_checks(window, qtbot)
    first = window.document.study.sheets[1]
    other = tmp_path / "again.jpg"
    other.write_bytes(painted().jpeg)
    with qtbot.waitSignal(page.adder.added, timeout=20_000):
        dropped(page, urls(other), 1)
    assert window.document.stack.undoText() == "replace sheet 2"
    window.document.stack.undo()
    assert window.document.study.sheets[1] == first
    wait_for_checks(window, qtbot)


def test_over_the_sky_a_photo_is_dropped(page, window, qtbot, sheet_file) -> None:
    window.document.mark_saved()  # else it is asked about first
    with qtbot.waitSignal(window.reader.photo_changed, timeout=20_000):
        dropped(page, urls(sheet_file), None)
    assert window.document.study.photo.name == "painting.jpg"
    assert window.document.study.sheets == (None, None)


@pytest.fixture
def clipboard(qapp):
    """Empty afterwards: what Python put there must not outlive Python."""
    yield QGuiApplication.clipboard()
    QGuiApplication.clipboard().clear()


def test_a_pasted_picture_becomes_the_first_missing_sheet(page, window, qtbot, clipboard) -> None:
    image = QImage.fromData(painted().jpeg)
    assert not image.isNull()
    mime = QMimeData()
    mime.setImageData(image)
    clipboard.setMimeData(mime)
    photo = window.document.study.photo
    for index in (0, 1):
        with qtbot.waitSignal(page.adder.added, timeout=20_000):
            window.paste()
        assert window.document.study.sheets[index] is not None
    assert window.document.study.photo == photo
    window.paste()
    assert "Both sheets" in window.notice_display.text
    wait_for_checks(window, qtbot)


def test_what_is_no_picture_is_refused_in_a_sentence(page, window, qtbot, tmp_path) -> None:
    path = tmp_path / "notes.jpg"
    path.write_text("not a picture")
    with qtbot.waitSignal(window.notices.shown, timeout=20_000):
        page.adder.add_path(0, path)
    assert window.document.study.sheets[0] is None
    with qtbot.waitSignal(window.notices.shown, timeout=20_000):
        page.adder.add_path(0, tmp_path / "gone.jpg")
    assert "gone.jpg" in window.notice_display.text


def test_turn_scan_remove_and_their_undo(page, window, qtbot) -> None:
    document, title = window.document, page.board.titles[0]
    add_sheet(window, 0, painted())
    wait_for_checks(window, qtbot)
    start = document.study
    title.action("turn").trigger()
    assert document.study.sheets[0].options.turned == 1
    assert document.stack.undoText() == "turn sheet 1"
    title.action("scan").trigger()
    assert document.study.sheets[0].options.scan
    assert title.action("scan").isChecked()
    title.action("remove").trigger()
    assert document.study.sheets[0] is None
    assert page.teach.isVisible()
    for _ in range(3):
        document.stack.undo()
    assert document.study == start
    wait_for_checks(window, qtbot)
    assert not title.action("scan").isChecked()


def test_an_upside_down_sheet_is_asked_about_and_turned_with_one_click(page, window, qtbot) -> None:
    window.checker.show_measured = True
    add_sheet(window, 0, painted(turn=2))
    wait_for_checks(window, qtbot)
    strip = page.columns[0].strip
    assert "upside down" in strip.view.text
    # Nothing is measured of a sheet that is wrong.
    assert page.board.view.sheets[0].lines == ()
    assert not page.columns[0].bands.isVisible()
    assert not any("upside down" in item.text for item in page.findings.sentences.items)
    qtbot.mouseClick(strip.button("accept"), LEFT)
    assert window.document.study.sheets[0].options.turned == 2
    wait_for_checks(window, qtbot)
    assert strip.view is None
    assert len(page.board.view.sheets[0].lines) == 3


def test_where_nothing_was_found_the_corners_are_asked_for(page, window, qtbot) -> None:
    window.checker.show_measured = True
    add_sheet(window, 0, painted(seen_whole=False))
    wait_for_checks(window, qtbot)
    strip = page.columns[0].strip
    assert "corners" in strip.view.text
    qtbot.mouseClick(strip.button("corners"), LEFT)
    editor = page.corners.editor
    assert editor.isVisible()
    assert editor._status.text() == "Not found: drag each ring to its corner."
    # Whether it is the same sky can only be asked of a painting that was found.
    assert not editor.question.isVisible()


def test_a_failed_check_says_why_and_offers_the_corners(page, window, qtbot) -> None:
    crossed = SheetOptions(corners=((0.1, 0.1), (0.9, 0.9), (0.9, 0.1), (0.1, 0.9)))
    add_sheet(window, 0, painted(), crossed)
    wait_for_checks(window, qtbot)
    place = page.board.places[0]
    assert "could not be checked" in place.view.line
    assert "rectangle" in place.view.sentence
    qtbot.mouseClick(place.button("corners"), LEFT)
    assert page.corners.editor.isVisible()
    qtbot.mouseClick(page.corners.editor.reset, LEFT)
    assert window.document.study.sheets[0].options.corners is None
    wait_for_checks(window, qtbot)
    assert place.view is None


def test_two_sheets_show_what_changed(page, window, qtbot) -> None:
    document = window.document
    add_sheet(window, 0, painted(raised=0.06))
    add_sheet(window, 1, painted())
    wait_for_checks(window, qtbot)
    score_sheet(window, 0)
    page.show_findings("change")
    assert page.findings.lock.isVisible()  # sheet 2 has no own scores yet
    score_sheet(window, 1)
    worksheet = document.study.worksheet
    first = replace(worksheet.pages[0], change_first="placement")
    document.change("first", with_worksheet(document.study, with_page(worksheet, 0, first)))
    page.show_findings("change")
    assert page.findings.view.tabs == ("0", "1", "change")
    assert "worked" in page.findings.sentences.items[0].text
    outcomes = {line.what: line.word for line in page.findings.table.lines}
    assert "nearer" in outcomes.values()
    assert page.findings.table.isVisible()
    page.findings.tabs.chosen.emit("0")
    assert page.findings.view.index == 0
    assert not page.findings.table.isVisible()


def test_a_band_opens_in_both_columns_by_mouse_and_keys(page, window, qtbot) -> None:
    window.checker.show_measured = True
    add_sheet(window, 0, painted(raised=0.05))
    add_sheet(window, 1, painted())
    wait_for_checks(window, qtbot)
    rows = page.columns[0].bands.row_widgets
    qtbot.mouseClick(rows[1], LEFT)
    assert page.chosen == 1
    for column in page.columns:
        assert [row.open for row in column.bands.rows] == [False, True, False, False]
        assert len(column.bands.rows[1].details) == 3
    assert page.board.view.chosen == 1
    rows[1].setFocus(Qt.FocusReason.TabFocusReason)
    qtbot.keyClick(rows[1], Qt.Key.Key_Down)
    assert page.chosen == 2
    assert QApplication.focusWidget() is rows[2]
    assert "Band C" in rows[2].accessibleName()
    assert "intensity" in rows[2].accessibleName()
    # Pressed once more it closes.
    page.choose(2)
    assert page.chosen is None
    # In a picture a band is chosen too.
    place = page.board.shape.pictures[2]
    qtbot.mouseClick(
        page.board, LEFT, pos=QPoint(round(place.center().x()), round(place.top()) + 3)
    )
    assert page.chosen == 0


def test_other_numbers_of_bands_hide_what_is_out_of_date(page, window, qtbot) -> None:
    window.checker.show_measured = True
    add_sheet(window, 0, painted())
    wait_for_checks(window, qtbot)
    document = window.document
    document.change("two bands", with_bands(document.study, Bands(1.0, (0.5,))))
    assert page.board.view.sheets[0].lines == ()
    assert not page.columns[0].bands.isVisible()
    wait_for_checks(window, qtbot)
    assert len(page.board.view.sheets[0].lines) == 1
    assert len(page.columns[0].bands.rows) == 2


def test_progress_is_shown_and_can_be_called_off(page, window, qtbot) -> None:
    title = page.board.titles[0]
    add_sheet(window, 0, painted())
    page._show_busy(0, "Checking sheet 1", 0.4)
    assert title.busy
    assert title.cancel.isVisible()
    qtbot.waitUntil(lambda: window.checker.running(0), timeout=20_000)
    qtbot.mouseClick(title.cancel, LEFT)
    assert not title.busy
    assert "stopped" in page.board.places[0].view.line
    qtbot.mouseClick(page.board.places[0].button("check"), LEFT)
    wait_for_checks(window, qtbot)
    assert page.board.places[0].view is None


def test_menus_reach_everything_by_keys(page, window) -> None:
    actions = page.actions_for("edit")
    keys = [action.shortcut().toString() for action in actions]
    assert keys == ["Ctrl+1", "Ctrl+2", "Ctrl+Shift+1", "Ctrl+Shift+2"]
    actions[2].trigger()
    assert not page.corners.editor.isVisible()  # there is no sheet


def test_it_fits_every_size(page, window, qtbot) -> None:
    window.checker.show_measured = True
    add_sheet(window, 0, painted(raised=0.05))
    wait_for_checks(window, qtbot)
    page.choose(1)
    title, bands = page.board.titles[0], page.columns[0].bands
    for percent in (100, 150):
        window.preferences.set(text_percent=percent)
        for size in ((960, 600), (1366, 768), (1920, 1080)):
            window.resize(*size)
            window.grab()
            qtbot.waitUntil(lambda: title.label.width() >= title.label.sizeHint().width())
            shape = page.board.shape
            assert shape.pictures[-1].right() <= page.width()
            assert shape.pictures[0].height() >= 90
            assert title.more.isVisible()
            # Every row keeps the height its words need.
            for row, view in zip(bands.row_widgets, bands.rows, strict=True):
                assert row.height() >= row_height(view, bands.width()) - 1


@pytest.mark.parametrize(("width", "named"), [(900, True), (300, False)])
def test_the_choice_of_findings_is_never_cut(qtbot, width, named) -> None:
    panel = FindingsPanel()
    qtbot.addWidget(panel)
    panel.set_view(FindingsView(tabs=("0", "1", "change")))
    panel.setFixedWidth(width)
    with qtbot.waitExposed(panel):
        panel.show()
    for segment in panel.tabs.findChildren(QRadioButton):
        assert segment.width() >= segment.sizeHint().width()
    heading, *_ = panel.findChildren(QLabel)
    assert heading.isVisible() is named

"""The Class page: sorting, pinning up, marking; by mouse, by typing, by keys alone."""

from __future__ import annotations

from pathlib import Path

import pytest
from classset_tools import (
    check_in_order,
    checked_class_of,
    open_copy,
    settle,
    write_pictures,
)
from PySide6.QtCore import QMimeData, QPointF, Qt, QUrl
from PySide6.QtGui import QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QDialog
from window_tools import answer, button_of

from app.classset import actions, ask
from app.classset.marking_view import another
from app.classset.new_class import NewClass, NewClassDialog
from app.classset.progress import words
from app.drawing.classset.places import PlaceRow, PlacesView, places_shape
from app.drawing.classset.tile import TileView
from app.drawing.classset.wall import StudentView, WallView, wall_shape
from app.services.class_set.underway import Underway
from core.class_set.folder import FILE_NAME, read_class_set
from core.class_set.ticket import Slot

KEYS = Qt.Key


@pytest.fixture(scope="module")
def checked_class(tmp_path_factory) -> Path:
    """A class of four with four pictures, checked: one asked about, one sheet missing."""
    where = tmp_path_factory.mktemp("class")
    return checked_class_of(where, write_pictures(where / "in"))


@pytest.fixture
def page(window, qtbot, tmp_path, monkeypatch, checked_class):
    """The same in the window, a copy for each test."""
    page = open_copy(window, qtbot, monkeypatch, checked_class, tmp_path / "7b")
    window.activateWindow()
    return page


# Sort


def test_what_is_asked_has_a_count_on_its_part(page) -> None:
    assert page.line.text() == "3 of 4 pictures have found their place"
    part = page.show_part("sort")
    assert part.current.reason == "no ticket"
    assert "Whose is this?" in part.cards[0].view.title


def test_typing_a_place_puts_the_picture_there(page, qtbot) -> None:
    part = page.show_part("sort")
    digest = part.current.digest
    part.take_focus()
    QTest.keyClicks(part.field, "2 2")
    QTest.keyClick(part.field, KEYS.Key_Return)
    assert page.desk.sorted.placement.digest_at(Slot(2, 1)) == digest
    assert page.desk.sorted.questions == ()
    assert part.done_line.isVisibleTo(part)
    page.desk.document.stack.undo()
    assert part.current.digest == digest


@pytest.mark.parametrize("text", ["two one", "77 1"])
def test_a_place_that_is_none_is_told_and_nothing_changes(page, window, text) -> None:
    part, before = page.show_part("sort"), page.desk.class_set
    part.field.setText(text)
    part.enter()
    assert window.notice_bar.isVisible()
    assert text.split()[0] in window.notice_bar.sentence
    assert page.desk.class_set == before
    assert part.field.text() == text


def test_a_picture_dragged_to_a_place_stays_there(page) -> None:
    part = page.show_part("sort")
    digest = part.current.digest
    part.places.placed.emit(digest, 2, 2)  # student 03, sheet 2
    assert page.desk.sorted.placement.digest_at(Slot(3, 1)) == digest


def test_a_picture_dragged_off_another_class_set_changes_nothing(page) -> None:
    part, before = page.show_part("sort"), page.desk.class_set
    part.places.placed.emit("f" * 64, 0, 0)
    assert page.desk.class_set == before


def test_the_places_are_walked_over_and_filled_by_keys(page, qtbot) -> None:
    part = page.show_part("sort")
    digest = part.current.digest
    part.places.setFocus(Qt.FocusReason.TabFocusReason)
    QTest.keyClick(part.places, KEYS.Key_Down)
    QTest.keyClick(part.places, KEYS.Key_Right)
    QTest.keyClick(part.places, KEYS.Key_Right)
    assert "02" in part.places.accessibleDescription()
    QTest.keyClick(part.places, KEYS.Key_Return)
    assert page.desk.sorted.placement.digest_at(Slot(2, 1)) == digest
    QTest.keyClick(part.places, KEYS.Key_Delete)
    assert page.desk.sorted.placement.digest_at(Slot(2, 1)) is None


def test_laying_aside_is_a_button_and_can_be_undone(page, qtbot) -> None:
    part = page.show_part("sort")
    part.cards[0].button("aside").click()
    assert page.desk.sorted.questions == ()
    page.desk.document.stack.undo()
    assert len(page.desk.sorted.questions) == 1


def test_every_place_has_a_rectangle_of_its_own() -> None:
    rows = tuple(PlaceRow(f"{n:02d}", (TileView(word="not yet"),) * 4) for n in range(30))
    for width in (557, 936, 1490):
        shape = places_shape(PlacesView(rows), width)
        for row in (0, 29):
            for place in range(4):
                assert shape.place_at(shape.place(row, place).center()) == (row, place)
        assert shape.place_at(QPointF(5, 5)) is None
        assert shape.state + 60 < width


# Pin-up


def wall_of(count: int, grow: float = 1.0) -> WallView:
    empty = TileView(word="not yet")
    students = tuple(StudentView(f"{n:02d}", (empty, empty)) for n in range(count))
    return WallView(students=students, grow=grow)


@pytest.mark.parametrize("width", [320, 620, 940, 1360, 2400])
@pytest.mark.parametrize("grow", [1.0, 1.5, 2.0])
def test_every_row_begins_with_the_photo_and_all_are_level(width: int, grow: float) -> None:
    view = wall_of(31, grow)
    shape = wall_shape(view, width)
    for number in range(31):
        row = number // shape.columns
        photo = shape.photo(row)
        for index in (0, 1):
            sheet = shape.sheet(number, index)
            assert (sheet.top(), sheet.height(), sheet.width()) == pytest.approx(
                (photo.top(), photo.height(), photo.width())
            )
            assert sheet.left() > photo.right()
            assert sheet.right() <= max(width, 3 * 40 + 200)
        assert shape.student_at(shape.sheet(number, 1).center(), 31) == number
    assert shape.student(30).bottom() <= shape.height


def test_at_the_sizes_of_the_design_three_and_four_students_stand_in_a_row() -> None:
    assert wall_shape(wall_of(30), 942).columns == 3
    assert wall_shape(wall_of(30), 1350).columns == 4


def test_a_draft_is_shown_and_taken_with_going_on(page, qtbot) -> None:
    part = page.show_part("pin_up")
    part.choose(0)
    drafted = part.marking.strength.field.text
    assert drafted
    assert part.marking.strength.draft.isVisibleTo(part)
    assert page.desk.class_set.entry(1).marking.strength == ""
    QTest.keyClicks(part.marking.mark, "7")
    QTest.keySequence(part.marking.mark, QKeySequence("Ctrl+Return"))
    marking = page.desk.class_set.entry(1).marking
    assert (marking.strength, marking.mark, marking.done) == (drafted, "7", True)
    assert part.student == 1
    assert page.desk.document.stack.undoText() == "marking of student 01"
    while page.desk.document.stack.canUndo():
        page.desk.document.stack.undo()
    assert page.desk.class_set.entry(1).marking.mark == ""


def test_another_takes_the_next_draft_and_comes_round() -> None:
    drafts = ("a", "b", "c")
    assert [another(now, drafts) for now in ("a", "b", "c", "my own")] == ["b", "c", "a", "a"]
    assert another("my own", ()) == "my own"


def test_a_field_that_was_emptied_stays_empty(page, qtbot) -> None:
    part = page.show_part("pin_up")
    part.choose(0)
    field = part.marking.strength.field
    field.selectAll()
    QTest.keyClick(field, KEYS.Key_Delete)
    assert field.text == ""
    part.go_on()
    part.choose(0)
    assert part.marking.strength.field.text == ""
    assert page.desk.class_set.entry(1).marking.strength == ""


def test_letters_typed_into_one_field_are_one_step_of_undo(page, qtbot) -> None:
    part = page.show_part("pin_up")
    part.choose(0)
    before = page.desk.document.stack.count()
    part.marking.remark.setFocus()
    QTest.keyClicks(part.marking.remark, "Calm")
    assert page.desk.class_set.entry(1).marking.remark == "Calm"
    assert page.desk.document.stack.count() == before + 1
    page.desk.document.stack.undo()
    assert part.marking.remark.text == ""


def test_a_state_is_chosen_and_told_on_the_wall_and_in_the_head(page, qtbot) -> None:
    part = page.show_part("pin_up")
    part.choose(1)
    part.marking.state_chosen.emit(1, "missing")
    assert page.desk.class_set.entry(2).marking.states == ("", "missing")
    assert part.wall.view.students[1].tiles[1].word == "missing"
    assert "1 sheet missing" in page.second.text()
    part.choose(2)
    for index in (0, 1):
        part.marking.state_chosen.emit(index, "excused")
    assert "1 student excused" in page.second.text()


def test_no_mark_is_ever_made_up(page) -> None:
    part = page.show_part("pin_up")
    for _ in range(6):
        part.go_on()
    assert [entry.marking.mark for entry in page.desk.class_set.entries] == [""] * 4


def test_one_band_is_lit_across_the_class(page, qtbot) -> None:
    part = page.show_part("pin_up")
    settle(page.window(), qtbot)
    part.show_band("B")
    view = part.wall.view
    assert view.photo.lit == pytest.approx((1 / 3, 2 / 3))
    lit = [tile.lit for student in view.students for tile in student.tiles if tile.picture]
    assert len(lit) >= 3
    assert all(band == pytest.approx((1 / 3, 2 / 3), abs=0.03) for band in lit)
    part.show_band("whole")
    assert part.wall.view.photo.lit is None


def test_the_wall_is_walked_over_by_keys(page) -> None:
    part = page.show_part("pin_up")
    part.take_focus()
    assert QApplication.focusWidget() is part.wall
    for key, at in ((KEYS.Key_Right, 1), (KEYS.Key_End, 3), (KEYS.Key_Home, 0)):
        QTest.keyClick(part.wall, key)
        assert part.student == at
    QTest.keyClick(part.wall, KEYS.Key_Return)
    assert QApplication.focusWidget() is part.marking.mark


def test_the_order_is_the_lists_and_nothing_is_ranked(page) -> None:
    codes = [student.code for student in page.show_part("pin_up").wall.view.students]
    assert codes == ["01", "02", "03", "04"]


# The page


def test_parts_are_chosen_by_keys(page, window) -> None:
    page.show_part("sort")
    action = next(each for each in page.actions_for("view") if each.text() == "Pin-up")
    action.trigger()
    assert page.part is page.show_part("pin_up")
    assert action.shortcut() == QKeySequence("Alt+2")


def test_pictures_dropped_on_the_page_are_brought_in(page, window, qtbot, tmp_path) -> None:
    from class_set_tools import TAG, sheet_jpeg

    from core.class_set.ticket import Ticket

    path = tmp_path / "IMG_9.jpg"
    path.write_bytes(sheet_jpeg(Ticket(TAG, 4, "1"), seed=9))
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path))])
    assert page.take(mime)
    settle(window, qtbot)
    assert page.desk.sorted.placement.digest_at(Slot(4, 0)) is not None


def test_progress_tells_count_and_time_left() -> None:
    text = words(Underway("checking", 10, 60, 8.0))
    assert text == "Checking: 10 of 60, about 40 seconds left"
    assert "left" not in words(Underway("checking", 0, 60, 0.0))
    assert "left" not in words(Underway("checking", 60, 60, 48.0))
    assert words(Underway("bringing", 3, 9, 1.0, stopping=True)) == "Stopping..."


# New, exports, delete


def test_a_class_set_is_made_of_the_study_that_is_open(
    sky_window, qtbot, tmp_path, monkeypatch
) -> None:
    check_in_order(monkeypatch)
    window = sky_window
    window.class_actions._last = tmp_path
    pictures = write_pictures(tmp_path / "in")
    mime = QMimeData()
    mime.setUrls([QUrl.fromLocalFile(str(path)) for path in pictures])
    window.opener.open_mime(mime)
    answer(qtbot, "Put all into a class set")
    dialog = window.findChild(NewClassDialog)
    dialog.title.setText("8c")
    dialog.codes.setText("01-04")
    dialog.accept()
    qtbot.waitUntil(lambda: window.desk.class_set is not None, timeout=20_000)
    settle(window, qtbot)
    made = window.desk.class_set
    assert (made.title, len(made.students), len(made.brought)) == ("8c", 4, 4)
    assert made.exercise.bands == window.document.study.bands
    assert (tmp_path / "8c" / FILE_NAME).is_file()


def test_without_a_photo_a_class_set_is_not_begun(window) -> None:
    window.class_actions.new()
    assert window.findChild(NewClassDialog) is None
    assert "Open the lesson" in window.notice_bar.sentence


@pytest.mark.parametrize(
    ("codes", "said"),
    [
        ("Anna Berg, Ben Cole", "looks like a name"),
        ("09-03", "backwards"),
        ("nowhere.txt", ""),
        ("K7, K7", "twice"),
    ],
)
def test_codes_that_cannot_be_taken_are_told_before_anything_is_made(
    qtbot, tmp_path, codes, said
) -> None:
    made: list[NewClass] = []
    dialog = NewClassDialog(None, "dusk", tmp_path, None, made.append)
    qtbot.addWidget(dialog)
    dialog.codes.setText(codes)
    assert said in dialog.problem.text()
    assert dialog.problem.text()
    assert not dialog.button.isEnabled()
    dialog.accept()
    assert made == []
    assert dialog.result() != QDialog.DialogCode.Accepted


def test_codes_that_only_look_like_names_can_be_taken(qtbot, tmp_path) -> None:
    made: list[NewClass] = []
    dialog = NewClassDialog(None, "dusk", tmp_path, None, made.append)
    qtbot.addWidget(dialog)
    dialog.codes.setText("Red Otter, Blue Hare")
    dialog.names.setChecked(True)
    dialog.accept()
    assert [student.code for student in made[0].class_list.students] == ["Red Otter", "Blue Hare"]


@pytest.mark.parametrize("kind", ["tickets", "contact", "slips", "hard", "kit", "worksheets"])
def test_every_print_is_written(page, window, qtbot, tmp_path, monkeypatch, kind) -> None:
    target = tmp_path / "out.pdf"
    monkeypatch.setattr(ask, "ask_pdf", lambda parent, suggestion: target)
    page.actions_of_class.print(kind)
    qtbot.waitUntil(lambda: "out.pdf" in window.notice_bar.sentence, timeout=60_000)
    assert target.read_bytes().startswith(b"%PDF")


@pytest.mark.parametrize("kind", ["csv", "xlsx", "import"])
def test_every_table_is_written(page, window, qtbot, tmp_path, monkeypatch, kind) -> None:
    target = tmp_path / ("out.xlsx" if kind == "xlsx" else "out.csv")
    monkeypatch.setattr(ask, "ask_table", lambda parent, suggestion: target)
    page.show_part("pin_up").edit("mark", "=7")
    page.actions_of_class.write_table(kind)
    if kind == "import":
        answer(qtbot, "Codes only")
    qtbot.waitUntil(lambda: target.exists() and "Saved" in window.notice_bar.sentence)
    if kind != "xlsx":
        assert b"'=7" in target.read_bytes()


def test_studies_are_given_out_and_taken_in(page, window, qtbot, tmp_path, monkeypatch) -> None:
    target = tmp_path / "studies"
    target.mkdir()
    monkeypatch.setattr(actions, "ask_for_folder", lambda *args: target)
    page.actions_of_class.give_out()
    qtbot.waitUntil(lambda: len(list(target.iterdir())) == 4, timeout=20_000)
    page.actions_of_class.give_out()  # a second time it asks
    qtbot.waitUntil(lambda: button_of("Cancel") is not None)
    answer(qtbot, "Cancel")
    monkeypatch.setattr(ask, "ask_pictures", lambda *args: tuple(target.iterdir()))
    before = len(page.desk.class_set.brought)
    page.actions_of_class.bring_in()
    settle(window, qtbot)
    assert len(page.desk.class_set.brought) == before


def test_tidying_keeps_the_paintings_alone(page, window, qtbot, tmp_path) -> None:
    page.actions_of_class.tidy()
    answer(qtbot, "Tidy")
    qtbot.waitUntil(lambda: "painting is kept" in window.notice_bar.sentence, timeout=20_000)
    kept = read_class_set(tmp_path / "7b")
    assert sum(each.options.corners is not None for each in kept.brought) == 3
    assert not page.desk.document.stack.canUndo()
    assert page.desk.unchecked == 0


def test_deleting_asks_and_leaves_a_foreign_file(page, window, qtbot, tmp_path) -> None:
    folder = tmp_path / "7b"
    (folder / "mine.txt").write_text("keep me")
    page.actions_of_class.delete()
    qtbot.waitUntil(lambda: button_of("Delete for good") is not None)
    answer(qtbot, "Cancel")
    assert (folder / FILE_NAME).exists()
    page.actions_of_class.delete()
    answer(qtbot, "Delete for good")
    qtbot.waitUntil(lambda: "is gone" in window.notice_bar.sentence, timeout=20_000)
    assert [each.name for each in folder.iterdir()] == ["mine.txt"]
    assert window.desk.class_set is None


def test_a_folder_that_is_no_class_set_is_told(window, qtbot, tmp_path: Path) -> None:
    window.desk.open(tmp_path)
    qtbot.waitUntil(lambda: window.notice_bar.isVisible())
    assert "no class set" in window.notice_bar.sentence


def test_a_class_set_opens_from_the_recent_files(page, window, qtbot, tmp_path) -> None:
    window.opener.recent.add(tmp_path / "7b" / FILE_NAME)
    window.desk.close()
    qtbot.waitUntil(lambda: window.desk.class_set is None)
    window.opener.open_path(window.opener.recent.paths()[0])
    qtbot.waitUntil(lambda: window.desk.class_set is not None)
    assert len(window.desk.class_set.brought) == 4


def test_the_students_words_are_a_crop_of_the_worksheet_page(page, window, qtbot, tmp_path) -> None:
    """A page as it is printed, painted and brought in: the crop holds its writing lines alone."""
    from PySide6.QtGui import QImage, QPainter

    from app.cards.class_command import _data
    from app.cards.class_pages import lay_out_worksheets
    from app.cards.page import paint_page
    from app.cards.paper import MM, PAPERS

    class_set = page.desk.class_set
    class_list = class_set.class_list
    data = _data(page.desk.path, class_set, "worksheet")
    paper = window.preferences.settings.card_paper
    printed = lay_out_worksheets(data, class_list.tag, class_list.students[:1], PAPERS[paper])[1]
    per_mm = 7.0
    image = QImage(
        round(printed.paper.width_mm * per_mm),
        round(printed.paper.height_mm * per_mm),
        QImage.Format.Format_RGB32,
    )
    image.fill(0xFFFFFFFF)
    painter = QPainter(image)
    painter.scale(per_mm / MM, per_mm / MM)
    paint_page(painter, printed)
    painter.end()
    image.save(str(tmp_path / "IMG_20.png"))
    part = page.show_part("pin_up")
    page.desk.add((tmp_path / "IMG_20.png",))
    settle(window, qtbot)
    assert page.desk.sorted.placement.digest_at(Slot(1, 1, "page")) is not None
    part.choose(0)
    qtbot.waitUntil(lambda: part.marking.crop.picture is not None, timeout=20_000)
    assert "sheet 2" in part.marking.words_title.text()
    crop = part.marking.crop.picture.levels[0]
    assert crop.width() > 2 * crop.height()
    dark = [
        y for y in range(crop.height()) if crop.pixelColor(crop.width() // 2, y).lightness() < 225
    ]
    assert len(dark) >= 3  # lines to write on
    assert len(dark) < crop.height() / 3  # and white paper between

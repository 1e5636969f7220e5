"""The mark list in the window: as it will be exported, written in by keys alone, nothing ranked."""

from __future__ import annotations

import csv
import io
import shutil
from pathlib import Path

import pytest
from class_set_tools import TAG, made_folder, sheet_jpeg
from PySide6.QtCore import Qt
from PySide6.QtWidgets import QApplication, QComboBox, QLineEdit

from app.classset import ask
from app.classset.mark_editing import WordsEditor
from app.classset.mark_list import MarkListPart
from app.classset.mark_table import STATE_COLUMNS, WRITTEN, columns_of
from core.class_set import edits
from core.class_set.bringing import bring_in, files_in
from core.class_set.checking import check_folder
from core.class_set.folder import read_class_set
from core.class_set.model import Marking
from core.class_set.table import COLUMNS, IMPORT, heading, mark_list, table_as_csv
from core.class_set.ticket import Ticket
from core.worksheet.worksheet import OwnScores, SheetPage, Worksheet

Key = Qt.Key


@pytest.fixture(scope="module")
def four_students(tmp_path_factory) -> Path:
    """Four students; the first has a sheet in, checked, own scores and words."""
    where = tmp_path_factory.mktemp("class")
    (where / "in").mkdir()
    (where / "in" / "IMG_1.jpg").write_bytes(sheet_jpeg(Ticket(TAG, 1, "1")))
    with made_folder(where) as folder:
        list(bring_in(folder, files_in([where / "in"])))
        page = SheetPage(OwnScores(7, 8, 6, 4))
        class_set = edits.with_worksheet(folder.class_set, 1, Worksheet(pages=(page, SheetPage())))
        said = Marking("Good greys.", "Wetter paper.", "First line.\nSecond line.", "B+")
        folder.save(edits.with_marking(class_set, 1, said))
        list(check_folder(folder))
    return where / "7b"


@pytest.fixture
def part(window, qtbot, tmp_path: Path, four_students: Path) -> MarkListPart:
    """Their mark list; every test has a copy of the folder."""
    desk = window.desk
    desk.open(shutil.copytree(four_students, tmp_path / "7b"))
    qtbot.waitUntil(lambda: desk.class_set is not None and not desk.working, timeout=30_000)
    made = window.page("classset").show_part("mark_list")
    assert isinstance(made, MarkListPart)
    made.take_focus()
    return made


def at(part: MarkListPart, row: int, column: str):
    return part.model.index(row, part.model.columns.index(column))


def go_to(part: MarkListPart, row: int, column: str) -> None:
    part.table.setCurrentIndex(at(part, row, column))


def marking(part: MarkListPart, number: int) -> Marking:
    return part.desk.class_set.entry(number).marking


def editor(part: MarkListPart, kind: type):
    found = [each for each in part.table.findChildren(kind) if each.isVisible()]
    return found[-1]


def test_every_cell_is_as_it_will_be_exported(part) -> None:
    rows = mark_list(part.desk.class_set, part.desk.sorted.placement)
    shown = [[heading("code"), *(heading(column) for column in part.model.columns)]]
    for y in range(part.model.rowCount()):
        code = part.model.headerData(y, Qt.Orientation.Vertical)
        cells = [part.model.index(y, x).data() for x in range(part.model.columnCount())]
        shown.append([code, *cells])
    assert shown == [list(row) for row in rows]
    exported = csv.reader(io.StringIO(table_as_csv(rows).decode(), newline=""))
    assert shown == list(exported)


def test_choices_are_the_exports_columns() -> None:
    assert ("code", *columns_of("all")) == tuple(c for c in COLUMNS if c != "id")
    assert ("code", *columns_of("import")) == IMPORT


def test_marks_are_typed_by_keys_alone_and_enter_goes_down(part, qtbot) -> None:
    assert part.table.hasFocus()
    assert part.table.currentIndex() == at(part, 0, "mark")
    for number, text in enumerate(("7", "B+", "0"), start=2):
        qtbot.keyClick(part.table, Key.Key_Down) if number == 2 else None
        qtbot.keyClicks(part.table, text[0])  # typing begins to write
        line = editor(part, QLineEdit)
        qtbot.keyClicks(line, text[1:])
        qtbot.keyClick(line, Key.Key_Return)
        qtbot.waitUntil(lambda n=number, t=text: marking(part, n).mark == t)
    assert part.table.currentIndex().row() == 3
    assert part.count.text() == "4 of 4 have a mark"


def test_every_edit_is_one_undo_step_and_comes_back(part, window, qtbot) -> None:
    go_to(part, 0, "mark")
    qtbot.keyClick(part.table, Key.Key_Delete)
    assert marking(part, 1).mark == ""
    assert part.count.text() == "0 of 4 have a mark"
    go_to(part, 0, "sheet2")
    qtbot.keyClick(part.table, Key.Key_Return)
    box = editor(part, QComboBox)
    box.setCurrentIndex(box.findData("excused"))
    box.activated.emit(box.currentIndex())
    assert marking(part, 1).states == ("", "excused")
    assert at(part, 0, "sheet2").data() == "excused"
    stack = part.desk.document.stack
    assert stack.count() == 2
    window.header.undo.trigger()
    window.header.undo.trigger()
    assert marking(part, 1).mark == "B+"
    assert at(part, 0, "mark").data() == "B+"
    assert at(part, 0, "sheet2").data() == ""
    window.header.redo.trigger()
    assert marking(part, 1).mark == ""


def test_words_are_written_in_lines(part, qtbot) -> None:
    go_to(part, 0, "remark")
    qtbot.keyClick(part.table, Key.Key_F2)
    words = editor(part, WordsEditor)
    assert words.toPlainText() == "First line.\nSecond line."
    qtbot.keyClick(words, Key.Key_End, Qt.KeyboardModifier.ControlModifier)
    qtbot.keyClick(words, Key.Key_Return, Qt.KeyboardModifier.ShiftModifier)
    qtbot.keyClicks(words, "Third.")
    assert part.table.viewport().rect().contains(words.geometry())
    qtbot.keyClick(words, Key.Key_Return)
    assert marking(part, 1).remark == "First line.\nSecond line.\nThird."
    go_to(part, 0, "strength")
    qtbot.keyClick(part.table, Key.Key_F2)
    words = editor(part, WordsEditor)
    qtbot.keyClicks(words, "gone")
    qtbot.keyClick(words, Key.Key_Escape)
    assert marking(part, 1).strength == "Good greys."


def test_opening_a_cell_and_leaving_it_changes_nothing(part, qtbot) -> None:
    for column in WRITTEN:
        go_to(part, 0, column)
        qtbot.keyClick(part.table, Key.Key_Return)
        written = QApplication.focusWidget()
        assert written is not part.table
        qtbot.keyClick(written, Key.Key_Escape if column in STATE_COLUMNS else Key.Key_Return)
        qtbot.waitUntil(part.table.hasFocus)
    assert part.desk.document.stack.count() == 0


def test_codes_and_own_scores_cannot_be_written(part, qtbot) -> None:
    before = part.desk.class_set
    for column in part.model.columns:
        editable = bool(at(part, 0, column).flags() & Qt.ItemFlag.ItemIsEditable)
        assert editable == (column in WRITTEN)
    go_to(part, 0, "own_hue_1")
    qtbot.keyClicks(part.table, "9")
    qtbot.keyClick(part.table, Key.Key_Return)
    qtbot.keyClick(part.table, Key.Key_Delete)
    assert not part.model.setData(at(part, 0, "own_hue_1"), "9")
    assert part.desk.class_set == before


def test_nothing_is_ranked_averaged_or_filled_in(part, qtbot) -> None:
    part.model.setData(at(part, 1, "mark"), "1")
    part.model.setData(at(part, 2, "mark"), "9")
    assert not part.table.isSortingEnabled()
    assert not part.table.horizontalHeader().sectionsClickable()
    marks = [at(part, y, "mark").data() for y in range(part.model.rowCount())]
    assert marks == ["B+", "1", "9", ""]
    assert part.model.rowCount() == len(part.desk.class_set.students)
    said = " ".join(heading(column) for column in part.model.columns)
    assert not any(word in said for word in ("average", "mean", "rank", "sum"))


def test_what_is_typed_is_kept_as_typed(part) -> None:
    for text in ("=1+1", "-2", "007", "3-4", "½", "7,5"):
        part.model.setData(at(part, 1, "mark"), text)
        assert marking(part, 2).mark == text


def test_for_a_gradebook(part, qtbot, window, tmp_path, monkeypatch) -> None:
    asked: list[str] = []
    target = tmp_path / "marks.csv"
    monkeypatch.setattr(ask, "ask_table", lambda parent, suggestion: target)
    monkeypatch.setattr(ask, "ask_with_key", lambda parent, choose, without: without())
    part.save_asked.connect(asked.append)
    part.choose("import")
    assert part.model.columns == ("mark", "remark")
    assert part.model.rowCount() == 4
    part.csv.click()
    qtbot.waitUntil(target.exists, timeout=30_000)
    qtbot.waitUntil(lambda: not window.desk.working, timeout=30_000)
    rows = list(csv.reader(io.StringIO(target.read_text(encoding="utf-8"), newline="")))
    assert rows[:2] == [["code", "mark", "remark"], ["01", "B+", "First line.\nSecond line."]]
    part.choose("all")
    part.csv.click()
    part.xlsx.click()
    assert asked == ["import", "csv", "xlsx"]


def test_marks_are_on_disk_when_the_class_set_is_closed(part, window, qtbot, tmp_path) -> None:
    part.model.setData(at(part, 3, "mark"), "9")
    window.desk.close()
    qtbot.waitUntil(lambda: window.desk.class_set is None, timeout=30_000)
    assert read_class_set(tmp_path / "7b").entry(4).marking.mark == "9"


def test_a_screen_reader_hears_whose_cell_it_is(part) -> None:
    said = at(part, 0, "mark").data(Qt.ItemDataRole.AccessibleTextRole)
    assert said == "01, mark: B+"
    assert at(part, 1, "mark").data(Qt.ItemDataRole.AccessibleTextRole) == "02, mark: empty"
    assert part.table.accessibleName() == "Mark list"


@pytest.mark.parametrize("percent", [100, 150])
def test_columns_fill_the_width_and_words_keep_room(part, window, qtbot, percent) -> None:
    window.preferences.set(text_percent=percent)
    qtbot.wait(0)
    table = part.table
    widths = [table.columnWidth(x) for x in range(part.model.columnCount())]
    assert sum(widths) >= table.viewport().width() - 3
    if percent == 100:
        assert table.horizontalScrollBar().maximum() == 0
    assert min(widths) >= 70 * percent / 100

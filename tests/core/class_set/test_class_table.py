"""Tables: no cell is a formula, no nought where nothing was typed, and ids only with a key."""

from __future__ import annotations

import csv
import io
import re
import xml.etree.ElementTree as ET
import zipfile
from dataclasses import replace
from pathlib import Path

import pytest
from class_set_tools import plain_class_set
from hypothesis import given, settings
from hypothesis import strategies as st

from core.class_set import edits
from core.class_set.key_file import key_from
from core.class_set.model import ClassSet, Marking
from core.class_set.placing import place_all
from core.class_set.students import turned_by_spreadsheets
from core.class_set.table import COLUMNS, IMPORT, guarded, mark_list, table_as_csv, table_as_xlsx
from core.errors import ClassSetError

# What spreadsheets take for a formula or a command: OWASP Application Security Verification
# Standard 5.0, 1.2.10, and OWASP "CSV Injection".
HOSTILE = (
    "=1+1", "+1", "-1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "\0=1", "  =1", "\ufeff=1",
    "\uff1d1+1", "\uff0b1", "=cmd|' /C calc'!A0", "\u00a0-2+3", "x;=1+1", "a\n=1", 'a";=1',
)  # fmt: skip
MAIN = "{http://schemas.openxmlformats.org/spreadsheetml/2006/main}"


def marked(text: str) -> ClassSet:
    class_set = plain_class_set()[0]
    said = Marking(strength=text, next_step=text, remark=text, mark=text)
    return edits.with_marking(class_set, 1, said)


def rows_of(class_set: ClassSet, *columns: str):
    return mark_list(class_set, place_all(class_set), columns or None)


def cells_of_csv(data: bytes, mark: str = ",") -> list[str]:
    text = data.decode("utf-8")
    return [
        cell for row in csv.reader(io.StringIO(text, newline=""), delimiter=mark) for cell in row
    ]


def starts_a_formula(cell: str) -> bool:
    bare = cell.lstrip(" \t\r\n\0\u00a0\u3000\ufeff\u200b\u200c\u200d\u2060")
    return bare[:1] in tuple("=+-@\uff1d\uff0b\uff0d\uff20") and bool(bare)


texts = (
    st.text(max_size=40)
    | st.sampled_from(HOSTILE)
    | st.builds(str.__add__, st.sampled_from("=+-@\t\r\n \ufeff\uff1d;"), st.text(max_size=20))
)


@settings(deadline=None, max_examples=200)
@given(texts)
def test_no_cell_of_a_csv_is_a_formula(text: str) -> None:
    data = table_as_csv(rows_of(marked(text)))
    for mark in ",;\t":  # whatever a spreadsheet takes for the mark between cells
        assert not any(starts_a_formula(cell) for cell in cells_of_csv(data, mark))


@settings(deadline=None, max_examples=60)
@given(texts)
def test_no_cell_of_a_workbook_is_a_formula(text: str) -> None:
    rows = rows_of(marked(text))
    data = table_as_xlsx(rows, [c for c in COLUMNS if c != "id"], text)
    with zipfile.ZipFile(io.BytesIO(data)) as book:
        page = ET.fromstring(book.read("xl/worksheets/sheet1.xml"))
        assert page.find(f".//{MAIN}f") is None
        assert "xl/externalLinks" not in "".join(book.namelist())
        assert not any("hyperlink" in name for name in book.namelist())
        properties = book.read("docProps/core.xml").decode()
    assert re.search(r"<dc:creator>[^<]+</dc:creator>", properties) is None


@pytest.mark.parametrize("letter", ["x", "\N{LOWER LEFT PAINTBRUSH}", "\N{LOWER LEFT PAINTBRUSH}x"])
@pytest.mark.parametrize("before", ["", "7", "7b"])
def test_a_long_title_with_picture_letters_names_a_page(before: str, letter: str) -> None:
    """A workbook counts a letter beyond the first 65,536 twice."""
    rows = (("code", "mark"), ("01", before + 20_000 * letter))
    data = table_as_xlsx(rows, ["code", "mark"], before + 40 * letter)
    with zipfile.ZipFile(io.BytesIO(data)) as book:
        sheet = ET.fromstring(book.read("xl/workbook.xml")).find(f".//{MAIN}sheet")
        words = ET.fromstring(book.read("xl/sharedStrings.xml"))
    assert sheet is not None
    assert sheet.attrib["name"].startswith((before + 40 * letter)[:15])
    assert before + 10_000 * letter in "".join(words.itertext())


@pytest.mark.parametrize("text", HOSTILE)
def test_hostile_texts_begin_with_an_apostrophe_or_hold_one(text: str) -> None:
    assert "'" in guarded(text)


@pytest.mark.parametrize("text", ["7", "B+", "good work, 3 of 4", "a - b", "6.5", ""])
def test_ordinary_texts_stay(text: str) -> None:
    assert guarded(text) == text


def test_no_nought_where_no_mark_was_typed() -> None:
    class_set = edits.with_marking(plain_class_set()[0], 2, Marking(mark="0"))
    rows = rows_of(class_set)
    marks = [row[rows[0].index("mark")] for row in rows[1:]]
    assert marks == ["", "0", "", ""]
    assert "0" not in {cell for row in (rows[1], rows[3], rows[4]) for cell in row}
    columns = [c for c in COLUMNS if c != "id"]
    with zipfile.ZipFile(io.BytesIO(table_as_xlsx(rows, columns, "7b"))) as book:
        page = ET.fromstring(book.read("xl/worksheets/sheet1.xml"))
    numbers = [v.text for c in page.iter(f"{MAIN}c") if c.get("t") is None for v in c]
    assert numbers == ["0"]


def test_codes_stay_text_in_a_workbook() -> None:
    """ "3-4", "1E5" and "007" are codes; a CSV cannot say so, a workbook can."""
    assert all(map(turned_by_spreadsheets, ("3-4", "1E5", "007", "1/2", "2027-03-18")))
    class_set = plain_class_set()[0]
    students = tuple(
        replace(student, code=code)
        for student, code in zip(class_set.students, ("3-4", "1E5", "007", "=1"), strict=True)
    )
    class_set = replace(class_set, class_list=replace(class_set.class_list, students=students))
    rows = rows_of(class_set, "code", "mark")
    data = table_as_xlsx(rows, ("code", "mark"), "7b")
    with zipfile.ZipFile(io.BytesIO(data)) as book:
        strings = book.read("xl/sharedStrings.xml").decode()
        page = ET.fromstring(book.read("xl/worksheets/sheet1.xml"))
    for code in ("3-4", "1E5", "007", "=1"):
        assert f">{code}<" in strings
    assert {cell.get("t") for cell in page.iter(f"{MAIN}c")} == {"s"}


def test_three_columns_for_a_gradebook() -> None:
    class_set = edits.with_marking(plain_class_set()[0], 2, Marking(mark="7", remark="Well."))
    rows = rows_of(class_set, *IMPORT)
    assert rows[0] == ("code", "mark", "remark")
    assert rows[2] == ("02", "7", "Well.")


def test_states_stand_in_words() -> None:
    class_set = edits.with_state(plain_class_set()[0], 1, 0, "late")
    rows = rows_of(class_set, "code", "sheet1", "sheet2")
    assert rows[1] == ("01", "late", "")


def test_ids_come_from_the_key_and_from_nowhere_else(tmp_path: Path) -> None:
    class_set = plain_class_set()[0]
    key = tmp_path / "key.csv"
    key.write_text("code;id\n1;s-1001\n02;s-1002\nzz;s-9\n", encoding="utf-8-sig")
    ids = key_from(key, class_set.class_list)
    assert ids == {1: "s-1001", 2: "s-1002"}
    rows = mark_list(class_set, place_all(class_set), ("id", "mark"), ids)
    assert [row[0] for row in rows] == ["id", "s-1001", "s-1002", "", ""]
    with pytest.raises(ClassSetError, match="--key"):
        rows_of(class_set, "id")
    with pytest.raises(ClassSetError, match="no column grade"):
        rows_of(class_set, "grade")


@pytest.mark.parametrize("text", ["", "zz,1\n", "1,a\n01,b\n"])
def test_a_key_that_is_none_is_refused(tmp_path: Path, text: str) -> None:
    key = tmp_path / "key.csv"
    key.write_text(text, encoding="utf-8")
    with pytest.raises(ClassSetError):
        key_from(key, plain_class_set()[0].class_list)

"""The mark list as rows, and as the bytes of a CSV or XLSX file.

Marks are what was typed: an empty one stays empty, and is never a nought. Nothing is added up.
"""

from __future__ import annotations

import csv
import io
import re
from collections.abc import Mapping, Sequence
from typing import Literal, assert_never, get_args

from core.class_set.model import ClassSet
from core.class_set.placing import Placement
from core.class_set.standing import state_of, state_word
from core.errors import ClassSetError
from core.i18n import translate
from core.reading.quality import QUALITIES, Quality

Plain = Literal["code", "id", "sheet1", "sheet2", "strength", "next_step", "remark", "mark"]
"""The columns that stand once."""

COLUMNS: tuple[str, ...] = (
    "code",
    "id",
    "sheet1",
    "sheet2",
    *(f"own_{quality}_{n}" for n in (1, 2) for quality in QUALITIES),
    "strength",
    "next_step",
    "remark",
    "mark",
)
"""All columns there are, in their usual order; `id` only where a key is given."""

IMPORT = ("code", "mark", "remark")
"""What a gradebook takes in: whose, how many, and a comment."""

_LEADS = "=+-@\t\r\n\0\uff1d\uff0b\uff0d\uff20"
"""What makes a spreadsheet take a text for a formula (OWASP ASVS 4.0, 1.2.10 in 5.0), the
full-width forms of it too."""
_BLANK = " \u00a0\u3000\ufeff\u200b\u200c\u200d\u2060"
_INNER = re.compile(rf"([;\t\r\n][\s{_BLANK}\"]*)([=+@\uff1d\uff0b\uff20\uff0d-])")
_CONTROL = re.compile(r"[\x00-\x08\x0b\x0c\x0e-\x1f\x7f\ud800-\udfff\ufffe\uffff]")
_NUMBER = re.compile(r"(?:0|[1-9]\d{0,5})(?:\.\d{1,4})?", re.ASCII)
_NUMBERED = ("mark", *(column for column in COLUMNS if column.startswith("own_")))
_MOST_CELL = 32_000  # characters an XLSX cell takes: 32 767
_MOST_NAME = 31

Rows = tuple[tuple[str, ...], ...]


def mark_list(
    class_set: ClassSet,
    placement: Placement,
    columns: Sequence[str] | None = None,
    ids: Mapping[int, str] | None = None,
) -> Rows:
    """The mark list: a row of headings, then one a student in the list's order.

    Parameters
    ----------
    class_set : ClassSet
    placement : Placement
        From `core.class_set.placing.place_all`.
    columns : sequence of str, optional
        Some of COLUMNS; all of them otherwise, `id` only with `ids`.
    ids : mapping of int to str, optional
        The school's own number or login by the student's number, from `key_from`.

    Raises
    ------
    ClassSetError
        A column nobody knows, or `id` without a key.
    """
    chosen = tuple(columns) if columns else tuple(c for c in COLUMNS if c != "id" or ids)
    for column in chosen:
        if column not in COLUMNS:
            raise ClassSetError(
                translate("class set", "There is no column {name}: use some of {names}.").format(
                    name=column, names=", ".join(COLUMNS)
                )
            )
    if "id" in chosen and ids is None:
        raise ClassSetError(
            translate("class set", "The column id needs your key: give its file with --key.")
        )
    rows = [tuple(heading(column) for column in chosen)]
    for student in class_set.students:
        cells = _cells(class_set, placement, student.number)
        cells["code"] = student.code
        cells["id"] = (ids or {}).get(student.number, "")
        rows.append(tuple(cells[column] for column in chosen))
    return tuple(rows)


def heading(column: str) -> str:
    """What stands over a column."""
    own = {own_column(quality, n): (quality, n) for n in (1, 2) for quality in QUALITIES}
    if column in own:
        return own_heading(*own[column])
    plain: tuple[Plain, ...] = get_args(Plain)
    return next(plain_heading(one) for one in plain if one == column)


def own_column(quality: Quality, n: int) -> str:
    """The name of the column of an own score on sheet 1 or 2."""
    return f"own_{quality}_{n}"


def own_heading(quality: Quality, n: int) -> str:
    """What stands over an own score on sheet 1 or 2."""
    match quality:
        case "hue":
            text = translate("class set", "own hue, sheet {n}")
        case "value":
            text = translate("class set", "own value, sheet {n}")
        case "intensity":
            text = translate("class set", "own intensity, sheet {n}")
        case "placement":
            text = translate("class set", "own placement, sheet {n}")
        case _:
            assert_never(quality)
    return text.format(n=n)


def plain_heading(column: Plain) -> str:
    """What stands over any other column."""
    match column:
        case "code":
            return translate("class set", "code")
        case "id":
            return translate("class set", "id")
        case "sheet1":
            return translate("class set", "sheet 1")
        case "sheet2":
            return translate("class set", "sheet 2")
        case "strength":
            return translate("class set", "strength")
        case "next_step":
            return translate("class set", "next step")
        case "remark":
            return translate("class set", "remark")
        case "mark":
            return translate("class set", "mark")
        case _:
            assert_never(column)


def table_as_csv(rows: Rows) -> bytes:
    """UTF-8 with a comma between, by RFC 4180; no cell is a formula to any spreadsheet."""
    out = io.StringIO(newline="")
    csv.writer(out).writerows([guarded(cell) for cell in row] for row in rows)
    return out.getvalue().encode("utf-8")


def table_as_xlsx(rows: Rows, columns: Sequence[str], title: str) -> bytes:
    """A workbook with one page; every cell is text, or a number that was typed as one.

    Parameters
    ----------
    columns : sequence of str
        Of the rows, as in COLUMNS: they say which cells may be numbers.
    title : str
        The page's name, as far as a workbook takes it.
    """
    import xlsxwriter  # deferred: start-up time

    out = io.BytesIO()
    options = {"in_memory": True, "strings_to_formulas": False, "strings_to_urls": False}
    with xlsxwriter.Workbook(out, options) as book:
        page = book.add_worksheet(_page_name(title))
        bold = book.add_format({"bold": True, "text_wrap": True, "valign": "top"})
        wrapped = book.add_format({"text_wrap": True, "valign": "top"})
        for y, row in enumerate(rows):
            for x, (cell, column) in enumerate(zip(row, columns, strict=True)):
                text = _cut(without_control(cell), _MOST_CELL)
                if not text:
                    continue
                if y and column in _NUMBERED and _NUMBER.fullmatch(text):
                    page.write_number(y, x, float(text), wrapped)
                else:
                    page.write_string(y, x, text, wrapped if y else bold)
        for x, column in enumerate(columns):
            page.set_column(x, x, 44 if column in ("strength", "next_step", "remark") else 11)
        page.freeze_panes(1, 1)
        book.set_properties({"title": without_control(title)[:120], "author": ""})
    return out.getvalue()


def guarded(cell: str) -> str:
    """A cell that no spreadsheet takes for a formula: an apostrophe comes before what could be.

    >>> guarded("=1+1"), guarded(" -2"), guarded("B+")
    ("'=1+1", "' -2", 'B+')
    """
    text = without_control(cell)
    bare = text.lstrip(_BLANK + "\t\r\n")
    leads = tuple(_LEADS)
    danger = cell[:1] in leads or cell.lstrip(_BLANK)[:1] in leads or bare[:1] in leads
    # Where a semicolon or a tab parts the cells, what stands after one in a text is a cell too.
    text = _INNER.sub(r"\1'\2", text)
    return f"'{text}" if danger else text


def without_control(cell: str) -> str:
    """Without characters that no table can hold; line breaks and tabs stay."""
    return _CONTROL.sub("", cell)


def _cells(class_set: ClassSet, placement: Placement, number: int) -> dict[str, str]:
    entry = class_set.entry(number)
    marking = entry.marking
    cells = {
        "strength": marking.strength,
        "next_step": marking.next_step,
        "remark": marking.remark,
        "mark": marking.mark,
    }
    for index, page in enumerate(entry.worksheet.pages):
        state = state_of(class_set, placement, number, index)
        cells[f"sheet{index + 1}"] = state_word(state) if state else ""
        for quality in QUALITIES:
            score = page.scores.of(quality)
            cells[f"own_{quality}_{index + 1}"] = "" if score is None else str(score)
    return cells


def _page_name(title: str) -> str:
    """None too long for a workbook, and without the characters that it refuses."""
    name = re.sub(r"[\[\]:*?/\\']", " ", without_control(title))
    name = _cut(" ".join(name.split()), _MOST_NAME).strip()
    return name if name and name.casefold() != "history" else translate("class set", "marks")


def _cut(text: str, most: int) -> str:
    """The beginning of a text, as long as a workbook takes: it counts in units of UTF-16, of which
    a picture letter has two, and half of one is left out."""
    return text.encode("utf-16-le", "surrogatepass")[: 2 * most].decode("utf-16-le", "ignore")

"""What leaves the class set: prints, tables, studies. Each runs in the folder's thread."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path
from typing import Literal, assert_never

from app.cards.class_command import class_pdf
from core.class_set.folder import ClassFolder
from core.class_set.key_file import key_from
from core.class_set.questions import Sorted
from core.class_set.studies import file_stem, study_bytes
from core.class_set.table import COLUMNS, IMPORT, mark_list, table_as_csv, table_as_xlsx
from core.errors import ClassSetError
from core.file_sentences import why_not_written
from core.files import write_file
from core.i18n import translate
from core.study_file.opening import SUFFIX

Print = Literal["tickets", "worksheets", "kit", "contact", "slips", "hard"]
PRINTS: tuple[Print, ...] = ("tickets", "worksheets", "kit", "contact", "slips", "hard")

Table = Literal["csv", "xlsx", "import"]
TABLES: tuple[Table, ...] = ("csv", "xlsx", "import")

Work = Callable[[ClassFolder], object]


def print_name(kind: Print) -> str:
    """A print in the menu and as a file's name."""
    match kind:
        case "tickets":
            return translate("class set page", "Tickets")
        case "worksheets":
            return translate("class set page", "Worksheets with codes")
        case "kit":
            return translate("class set page", "Kit list")
        case "contact":
            return translate("class set page", "Contact pages")
        case "slips":
            return translate("class set page", "Slips to give out")
        case "hard":
            return translate("class set page", "What the class found hard")
        case _:
            assert_never(kind)


def table_name(kind: Table) -> str:
    """A table in the menu."""
    match kind:
        case "csv":
            return translate("class set page", "Mark list as CSV")
        case "xlsx":
            return translate("class set page", "Mark list as XLSX")
        case "import":
            return translate("class set page", "Table for a gradebook")
        case _:
            assert_never(kind)


def print_to(path: Path, kind: Print, paper: str, language: str) -> Work:
    """Work that writes a print as PDF."""

    def work(folder: ClassFolder) -> Path:
        _write(path, class_pdf(folder.path, kind, paper, bw=False, language=language))
        return path

    return work


def table_to(path: Path, kind: Table, found: Sorted, key: Path | None = None) -> Work:
    """Work that writes the mark list, or of it what a gradebook takes in."""

    def work(folder: ClassFolder) -> Path:
        class_set = folder.class_set
        ids: Mapping[int, str] | None = None if key is None else key_from(key, class_set.class_list)
        columns: tuple[str, ...]
        if kind == "import":
            columns = ("id", *IMPORT[1:]) if ids else IMPORT
        else:
            columns = tuple(c for c in COLUMNS if c != "id" or ids)
        rows = mark_list(class_set, found.placement, columns, ids)
        if kind == "xlsx":
            data = table_as_xlsx(rows, columns, class_set.title)
        else:
            data = table_as_csv(rows)
        _write(path, data)
        return path

    return work


def studies_in(target: Path, folder: ClassFolder) -> tuple[Path, ...]:
    """Where each student's study goes."""
    return tuple(
        target / f"{file_stem(each.code, each.number)}{SUFFIX}"
        for each in folder.class_set.students
    )


def studies_to(target: Path) -> Work:
    """Work that writes a study a student."""

    def work(folder: ClassFolder) -> int:
        paths = studies_in(target, folder)
        for student, path in zip(folder.class_set.students, paths, strict=True):
            _write(path, study_bytes(folder, student.number))
        return len(paths)

    return work


def _write(path: Path, data: bytes) -> None:
    try:
        write_file(path, data)
    except OSError as error:
        raise ClassSetError(why_not_written(path, error)) from error

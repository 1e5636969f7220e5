"""The teacher's key from codes to the school's ids: read for one export, never kept."""

from __future__ import annotations

import csv
import io
from pathlib import Path

from core.class_set.students import ClassList
from core.errors import ClassSetError
from core.file_sentences import shown_name, why_not_read
from core.files import read_file
from core.i18n import translate

_MOST = 1 << 20


def key_from(path: Path, class_list: ClassList) -> dict[int, str]:
    """The school's id of each student, by the student's number.

    Parameters
    ----------
    path : Path
        A CSV with the code first and the id second; a heading may stand above, and commas,
        semicolons or tabs between.

    Raises
    ------
    ClassSetError
        It cannot be read, names a code twice, or none of the class's codes.
    """
    try:
        text = read_file(path, _MOST).decode("utf-8-sig")
    except OSError as error:
        raise ClassSetError(why_not_read(path, error)) from error
    except UnicodeDecodeError as error:
        raise ClassSetError(
            translate("class set", "{name} is not UTF-8: save it as CSV in UTF-8.").format(
                name=shown_name(path)
            )
        ) from error
    first = text.split("\n", 1)[0]
    mark = max(",;\t", key=first.count)
    ids: dict[int, str] = {}
    try:
        rows = [row for row in csv.reader(io.StringIO(text), delimiter=mark) if len(row) >= 2]
    except csv.Error as error:
        raise ClassSetError(_not_a_key(path)) from error
    for row in rows:
        student = class_list.with_code(row[0].strip())
        if student is None:
            continue
        if student.number in ids:
            raise ClassSetError(
                translate(
                    "class set", "The key names the code {code} twice: leave one of them."
                ).format(code=student.code)
            )
        ids[student.number] = row[1].strip()
    if not ids:
        raise ClassSetError(_not_a_key(path))
    return ids


def _not_a_key(path: Path) -> str:
    return translate(
        "class set",
        "{name} names none of this class's codes: write a code and an id on each line, with a "
        "comma between.",
    ).format(name=shown_name(path))

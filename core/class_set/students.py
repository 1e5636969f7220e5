"""The class list: codes that stand for students, given by the teacher, never names."""

from __future__ import annotations

import re
from dataclasses import dataclass
from pathlib import Path

from core.class_set.ticket import MOST_STUDENTS, new_tag
from core.errors import ClassSetError
from core.file_sentences import shown_name, why_not_read
from core.files import read_file
from core.i18n import translate
from core.worksheet.worksheet import MOST_CODE

_RANGE = re.compile(r"(\d{1,2})\s*(?:-|\.\.|–)\s*(\d{1,2})", re.ASCII)
_MOST_FILE = 1 << 20
_NAME = re.compile(r"[^\W\d_]{2,}")
_TURNS = re.compile(
    r"\d{1,4}[-/.]\d{1,2}(?:[-/.]\d{1,4})?|\d+[eE]\d+|0\d+|\d{12,}|[+-]?\d+\.\d*", re.ASCII
)


@dataclass(frozen=True)
class Student:
    """A student of the class.

    Attributes
    ----------
    number : int
        Stands in the printed code, 1..99; never given twice in a list.
    code : str
        What the teacher calls the student by: "14", "K7", "otter".
    """

    number: int
    code: str


@dataclass(frozen=True)
class ClassList:
    """Who is in the class.

    Attributes
    ----------
    tag : str
        Four letters and digits that tell this list's tickets from every other's.
    students : tuple of Student
        In the order of the list, which is never changed to anything measured.
    """

    tag: str
    students: tuple[Student, ...]

    def student(self, number: int) -> Student | None:
        """The student with this number; None where the list has none."""
        return next((each for each in self.students if each.number == number), None)

    def with_code(self, code: str) -> Student | None:
        """The student of a code, whatever its case and leading noughts."""
        wanted = _plain(code)
        return next((each for each in self.students if _plain(each.code) == wanted), None)


def class_list_of(codes: tuple[str, ...], *, names_too: bool = False) -> ClassList:
    """A fresh list with a tag of its own.

    Parameters
    ----------
    codes : tuple of str
        In order. Codes that are all numbers keep them as numbers where they can.
    names_too : bool
        Take codes that look like a person's name all the same.

    Raises
    ------
    ClassSetError
        No codes, too many, one twice, one too long, or one that looks like a name.
    """
    codes = tuple(" ".join(code.split()) for code in codes)
    _refuse(codes, names_too)
    own = [int(code) if re.fullmatch(r"\d{1,2}", code, re.ASCII) else 0 for code in codes]
    numbers = own if all(own) and len(set(own)) == len(own) else list(range(1, len(codes) + 1))
    students = tuple(Student(n, code) for n, code in zip(numbers, codes, strict=True))
    return ClassList(new_tag(), students)


def codes_from(text: str) -> tuple[str, ...]:
    """Codes as they are given: a range, a list with commas, or a file with one a line.

    Raises
    ------
    ClassSetError
        Neither, or a file that cannot be read.

    Examples
    --------
    >>> codes_from("08-11")
    ('08', '09', '10', '11')
    >>> codes_from("K7, otter")
    ('K7', 'otter')
    """
    if found := _RANGE.fullmatch(text.strip()):
        first, last = int(found[1]), int(found[2])
        if not 1 <= first <= last:
            raise ClassSetError(
                translate(
                    "class set", "The codes {text} run backwards: give the first one first."
                ).format(text=text)
            )
        width = max(len(found[1]), len(found[2]))
        return tuple(f"{number:0{width}d}" for number in range(first, last + 1))
    path = Path(text)
    if "," in text and not path.exists():
        return tuple(piece.strip() for piece in text.split(",") if piece.strip())
    return _codes_in(path)


def looks_like_name(code: str) -> bool:
    """Whether a code is written as a person's name is: two words, both with a capital.

    >>> looks_like_name("Anna Berg"), looks_like_name("K 7"), looks_like_name("red otter")
    (True, False, False)
    """
    words = re.split(r"[\s,.]+", code.strip())
    named = [word for word in words if _NAME.fullmatch(word.replace("-", "").replace("'", ""))]
    return len(named) >= 2 and all(word[0].isupper() for word in named)


def turned_by_spreadsheets(code: str) -> bool:
    """Whether a spreadsheet that opens a CSV makes a date or another number of it.

    >>> [turned_by_spreadsheets(code) for code in ("3-4", "1E5", "007", "K7")]
    [True, True, True, False]
    """
    return _TURNS.fullmatch(code.strip()) is not None


def _codes_in(path: Path) -> tuple[str, ...]:
    try:
        data = read_file(path, _MOST_FILE)
    except OSError as error:
        raise ClassSetError(why_not_read(path, error)) from error
    try:
        text = data.decode("utf-8-sig")
    except UnicodeDecodeError as error:
        raise ClassSetError(
            translate(
                "class set",
                "{name} is not a plain text: save it as UTF-8 with one code on each line.",
            ).format(name=shown_name(path))
        ) from error
    lines = (re.split(r"[,;\t]", line)[0].strip().strip('"') for line in text.splitlines())
    codes = [line for line in lines if line and not line.startswith("#")]
    if codes and codes[0].casefold() in ("code", "codes", "student", "código", "alumno"):
        del codes[0]
    return tuple(codes)


def _refuse(codes: tuple[str, ...], names_too: bool) -> None:
    if not codes or not all(codes):
        raise ClassSetError(
            translate(
                "class set",
                "There is no code for any student: give a range such as 01-30, or a file with one "
                "on each line.",
            )
        )
    if len(codes) > MOST_STUDENTS:
        raise ClassSetError(
            translate(
                "class set", "A class set takes {most} students, not {n}: make two of them."
            ).format(most=MOST_STUDENTS, n=len(codes))
        )
    seen: set[str] = set()
    for code in codes:
        if len(code) > MOST_CODE or not code.isprintable():
            raise ClassSetError(
                translate(
                    "class set", "The code {code} is too long, or cannot be printed: shorten it."
                ).format(code=code[:MOST_CODE])
            )
        if _plain(code) in seen:
            raise ClassSetError(
                translate(
                    "class set",
                    "The code {code} is there twice: give each student one of their own.",
                ).format(code=code)
            )
        seen.add(_plain(code))
        if not names_too and looks_like_name(code):
            raise ClassSetError(
                translate(
                    "class set",
                    "{code} looks like a name, and names stay with you: give a code instead, or "
                    "say --names if it is none.",
                ).format(code=code)
            )


def _plain(code: str) -> str:
    text = " ".join(code.split()).casefold()
    return text.lstrip("0") if text.isdecimal() and text.strip("0") else text

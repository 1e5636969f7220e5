"""An invented class for `tools.screenshots`: every part of the Class tab, its screens and dialogs.

The sheets are painted by the simulator of the tests, so this needs a checkout. Painting and
checking them takes minutes: the folder is made once, and kept in the system's temporary folder.
"""

from __future__ import annotations

import io
import shutil
import sys
import tempfile
from dataclasses import replace
from functools import partial
from pathlib import Path

import numpy as np
from PIL import Image
from PySide6.QtWidgets import QApplication, QWidget

from app.classset.page import ClassSetPage, PartKey
from app.state.language import language_in_use, speak_without_window
from core.bands.lines import Bands
from core.class_set import edits
from core.class_set.bringing import bring_in, files_in
from core.class_set.checking import check_folder, still_to_check
from core.class_set.folder import (
    ClassFolder,
    create_folder,
    holds_class_set,
    open_folder,
    read_class_set,
)
from core.class_set.kept_checks import CHECK_VERSION
from core.class_set.model import ClassSet, Marking, State, new_class_set
from core.class_set.next_lesson import begin_next_lesson, next_lesson
from core.class_set.pool import CheckingPool
from core.class_set.students import ClassList, Student
from core.class_set.ticket import Slot, Ticket
from core.photo import strip_private
from core.pictures import Picture, digest_of
from core.study import study_of, with_title
from core.worksheet.worksheet import SheetPage, Worksheet, with_page, with_score
from tools.screenshot_stage import PLAIN, WIDE, Stage, Variation, scene

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "tests"))

from simulator.evening import class_scene, class_sheet

TAG, STUDENTS, SEED = "7K3Q", 16, 5003
_SIZE = (1280, 960)

LOOKS = (
    PLAIN,
    WIDE,
    Variation((1366, 768), "dark", 150, "en"),
    Variation((1366, 768), "light", 150, "es"),
    Variation((1920, 1080), "light", 150, "es"),
    Variation((1366, 768), "dark", 100, "es"),
)
"""Every size, theme, text and language at least twice."""


_CUT = {4: 0.55, 7: 0.7}
"""Photographed without the lower edge: so much of the picture's height is left."""


def _cut(data: bytes, share: float) -> bytes:
    buffer = io.BytesIO()
    with Image.open(io.BytesIO(data)) as whole:
        whole.crop((0, 0, whole.width, round(whole.height * share))).save(
            buffer, "JPEG", quality=92
        )
    return buffer.getvalue()


def _write_pictures(folder: Path) -> bytes:
    """What the phone holds after the lesson; gives the class's photo.

    First sheets are painted too pale. 06 is excused, 09 has no second sheet, 12's second one was
    photographed twice, two pictures have no ticket, and 04's and 07's first ones lack an edge.
    """
    base = class_scene(SEED)
    for number in range(1, STUDENTS + 1):
        for index in (0, 1):
            if number == 6 or (number == 9 and index == 1):
                continue
            seed = SEED + 10 * number + index
            ticket = Ticket(TAG, number, "12"[index])
            data, _ = class_sheet(
                base,
                seed,
                None if (number, index) in ((11, 1), (15, 1)) else ticket,
                turn=(number + index) % 3 % 2,
                size=_SIZE,
                stronger=(0.55, 0.95)[index],
            )
            if index == 0 and number in _CUT:
                data = _cut(data, _CUT[number])
            name = f"IMG_{2000 + 2 * number + index}.jpg"
            (folder / name).write_bytes(data)
            if (number, index) == (12, 1):
                again, _ = class_sheet(base, seed, ticket, size=_SIZE, stronger=0.95, turn=2)
                (folder / "IMG_2099.jpg").write_bytes(again)
    buffer = io.BytesIO()
    Image.fromarray(base.reference).save(buffer, "PNG")
    return strip_private(buffer.getvalue())


def _said(class_set: ClassSet) -> ClassSet:
    """Scores, answers, marks and remarks of some."""
    for number in range(1, STUDENTS + 1):
        worksheet = Worksheet()
        for index in (0, 1):
            page = SheetPage(
                answer=(
                    "My blue went pale at once. I want more paint in the water.",
                    "The second wash is stronger, and the pink stayed clean.",
                )[index]
            )
            worksheet = with_page(worksheet, index, page)
            for k, quality in enumerate(("hue", "value", "intensity", "placement")):
                score = 4 + (number * 3 + k) % 3 + 2 * index
                worksheet = with_score(worksheet, index, quality, score)  # type: ignore[arg-type]
        worksheet = with_page(worksheet, 0, replace(worksheet.pages[0], change_first="value"))
        if number not in (6, 9, 14):
            class_set = edits.with_worksheet(class_set, number, worksheet)
    marks = {1: "7", 2: "8+", 3: "6", 5: "B"}
    for number, mark in marks.items():
        states: tuple[State, State] = ("", "late") if number == 3 else ("", "")
        said = Marking(
            "Every line is in its place on the second sheet.",
            "Mix a little more blue before you begin: a wash dries lighter than it looks.",
            "The top wash is calmer now." if number % 2 else "",
            mark,
            states,
            done=True,
        )
        class_set = edits.with_marking(class_set, number, said)
    for index in (0, 1):
        class_set = edits.with_state(class_set, 6, index, "excused")
    return edits.place(class_set, _named(class_set, "IMG_2031.jpg"), Slot(15, 1))


def _named(class_set: ClassSet, name: str) -> str:
    return next(each.digest for each in class_set.brought if each.picture.name == name)


def _make(folder: Path) -> ClassFolder:
    pictures = folder / "pictures"
    pictures.mkdir(parents=True)
    photo = _write_pictures(pictures)
    students = tuple(Student(k, f"{k:02d}") for k in range(1, STUDENTS + 1))
    study = study_of(Picture("sky.png", digest_of(photo)), Bands(1.0, class_scene(SEED).lines))
    exercise = with_title(study, "Dusk over the Linnet Moor")
    class_set = new_class_set("7b", ClassList(TAG, students), exercise)
    made = create_folder(folder / "7b", class_set, photo, folder / "data")
    for _ in bring_in(made, files_in([pictures])):
        pass
    made.save(_said(made.class_set))
    return made


def whole_class(language: str) -> Path:
    """The class set's folder, checked in a language; made when it is first wanted."""
    where = Path(tempfile.gettempdir()) / f"gradewash-invented-class-{CHECK_VERSION}"
    if not holds_class_set(where / "7b"):
        shutil.rmtree(where, ignore_errors=True)
        _make(where).close()
    with open_folder(where / "7b", where / "data") as folder:
        if still_to_check(folder, language):
            begin = partial(speak_without_window, language)
            with CheckingPool(begin=begin) as pool:
                for _ in check_folder(folder, language, pool.executor, renew=pool.renew):
                    pass
    return where / "7b"


def open_class(stage: Stage) -> ClassSetPage:
    """A copy of it in the window, with its page shown."""
    shutil.copytree(whole_class(language_in_use()), stage.folder / "7b")
    stage.window.desk.open(stage.folder / "7b")
    wait(stage)
    page = stage.window.page("classset")
    assert isinstance(page, ClassSetPage)
    return page


def wait(stage: Stage) -> None:
    """Until the class set is open, checked and painted."""
    desk = stage.window.desk
    stage.settle()
    while desk.class_set is None or desk.working:
        stage.process()
    stage.process(300)


def part_of(stage: Stage, key: PartKey) -> ClassSetPage:
    """A part of the page, with its pictures."""
    page = open_class(stage)
    page.show_part(key)
    wait(stage)
    return page


@scene(*LOOKS)
def class_sort(stage: Stage) -> None:
    """What is to be placed."""
    part_of(stage, "sort")


@scene(*LOOKS)
def class_pin_up(stage: Stage) -> None:
    """The wall, and one student's marking."""
    part_of(stage, "pin_up").part.choose(7)  # type: ignore[union-attr]
    wait(stage)


@scene(PLAIN, LOOKS[3])
def class_pin_up_band(stage: Stage) -> None:
    """One band lit across the class, a student whose corners are not sure."""
    part = part_of(stage, "pin_up").part
    part.choose(3)  # type: ignore[union-attr]
    part.show_band("B")  # type: ignore[union-attr]
    wait(stage)


@scene(*LOOKS)
def class_read_scores(stage: Stage) -> None:
    """Scores that were read from a worksheet and wait to be taken."""
    language = language_in_use()
    page = part_of(stage, "pin_up")
    picture = stage.folder / "IMG_2200.jpg"
    picture.write_bytes(_worksheet_picture(14))
    speak_without_window(language)  # printing spoke English
    stage.window.desk.add((picture,))
    wait(stage)
    page.part.choose(13)  # type: ignore[union-attr]
    wait(stage)


def _worksheet_picture(number: int) -> bytes:
    """The first page of a student's worksheet, marked; one answer was corrected, one is missing."""
    # They need Qt.
    from simulator.page_camera import photographed
    from simulator.pen_marks import Paper, Row, draw_row
    from simulator.printed_pages import printed_pages

    sheets = printed_pages("a4", "en", TAG, number)
    rng = np.random.default_rng(SEED)
    paper = Paper(sheets.greys[0], rng)
    rows = (
        Row("one", 7, "cross", "ball pen"),
        Row("corrected", 4, "cross", "ball pen", (9,)),
        Row("one", 10, "tick", "pencil"),
        Row("blank", None, "-", "pencil"),
    )
    for boxes, row in zip(sheets.boxes[0], rows, strict=True):
        draw_row(paper, boxes, row)
    return photographed(paper.done(), "1600", "usual", rng)


@scene(*LOOKS)
def class_hard(stage: Stage) -> None:
    """What the class found hard."""
    part_of(stage, "found_hard")


@scene(PLAIN, WIDE, LOOKS[3])
def class_hard_screen(stage: Stage) -> QWidget | None:
    """The same before the class."""
    before = set(QApplication.topLevelWidgets())
    part_of(stage, "found_hard").show_to_class()
    stage.process(200)
    shown = [w for w in set(QApplication.topLevelWidgets()) - before if w.isVisible()]
    shown[0].resize(*stage.size)
    stage.process(200)
    return shown[0]


@scene(*LOOKS)
def class_marks(stage: Stage) -> None:
    """The mark list."""
    part_of(stage, "mark_list")


@scene(*LOOKS)
def class_corners(stage: Stage) -> None:
    """The corners of a sheet that was not sure of them."""
    page = part_of(stage, "pin_up")
    page.part.choose(3)  # type: ignore[union-attr]
    page.part.set_corners(0)  # type: ignore[union-attr]
    wait(stage)
    stage.process(500)


@scene(*LOOKS)
def class_empty(stage: Stage) -> None:
    """A class set without a picture."""
    folder = stage.folder / "7b"
    shutil.copytree(whole_class("en"), stage.folder / "whole")

    class_set = next_lesson(read_class_set(stage.folder / "whole"), None, None)
    begin_next_lesson(stage.folder / "whole", class_set, folder, stage.folder / "data").close()
    stage.window.desk.open(folder)
    wait(stage)


@scene(PLAIN, LOOKS[3])
def class_checking(stage: Stage) -> None:
    """While the sheets are checked."""
    shutil.copytree(whole_class("en"), stage.folder / "7b")
    for file in sorted((stage.folder / "7b" / "checks").iterdir())[::2]:
        file.unlink()
    stage.window.desk.open(stage.folder / "7b")
    while not stage.window.desk.underway:
        stage.process()
    stage.window.page("classset")
    while not any(one.done for one in stage.window.desk.underway):
        stage.process()


@scene(*LOOKS)
def class_student_sheets(stage: Stage) -> None:
    """A student of the class on the Sheets page."""
    _visit(stage, "sheets")


@scene(PLAIN, LOOKS[3])
def class_student_worksheet(stage: Stage) -> None:
    """The same on the Worksheet page."""
    _visit(stage, "worksheet")


def _visit(stage: Stage, key: str) -> None:
    part_of(stage, "pin_up")
    stage.window.workspace.show_student(7, key)
    while stage.window.document.study.worksheet.student_code != "08":
        stage.process()
    wait(stage)
    stage.window.checker.show_measured = True
    stage.process(300)

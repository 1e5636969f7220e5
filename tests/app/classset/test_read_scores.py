"""Scores crossed on a printed worksheet: read in the window, taken by the teacher, taken back."""

from __future__ import annotations

from functools import lru_cache
from pathlib import Path

import numpy as np
import pytest
from class_set_tools import TAG
from classset_tools import make_class, settle
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from simulator.page_camera import photographed
from simulator.pen_marks import Paper, Row, draw_row
from simulator.printed_pages import printed_pages

from app.classset.page import ClassSetPage
from app.window.pages import PAGES
from core.class_set.folder import read_class_set
from core.class_set.score_marks.read import read_scores
from core.cli import run as run_command
from core.photo import open_photo
from core.worksheet.worksheet import OwnScores

ROWS = (
    Row("one", 7, "cross", "ball pen"),
    Row("corrected", 4, "cross", "ball pen", (9,)),
    Row("one", 10, "tick", "pencil"),
    Row("one", 1, "fill", "pencil"),
)


@lru_cache(maxsize=4)
def page_picture(paper: str, language: str, index: int, size: str = "1600") -> bytes:
    """A marked page of student 2 as a phone takes it."""
    sheets = printed_pages(paper, language, TAG, 2)
    rng = np.random.default_rng(3)
    page = Paper(sheets.greys[index], rng)
    for boxes, row in zip(sheets.boxes[index], ROWS, strict=True):
        draw_row(page, boxes, row)
    return photographed(page.done(), size, "usual", rng)


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_the_page_that_is_printed_tells_where_its_boxes_are(qapp, paper: str) -> None:
    for language in ("en", "es"):
        sheets = printed_pages(paper, language)
        for grey, rows in zip(sheets.greys, sheets.boxes, strict=True):
            assert [len(row) for row in rows] == [10, 10, 10, 10]
            for box in (box for row in rows for box in row):
                left, top, right, bottom = (
                    round(v * 8) for v in (box.x, box.y, box.x + box.width, box.y + box.height)
                )
                # Its outline is inked at mid-side; white lies inside it and outside.
                middle = (top + bottom) // 2
                assert grey[middle, left : left + 4].min() < 160
                assert grey[middle, right - 4 : right].min() < 160
                assert grey[middle, left + 8 : left + 16].min() > 240
                assert grey[middle, right + 1 : right + 5].min() > 240


@pytest.mark.parametrize(("paper", "language", "index"), [("letter", "en", 1), ("a4", "es", 0)])
def test_a_page_on_other_paper_or_in_another_language_is_read(
    qapp, paper: str, language: str, index: int
) -> None:
    pixels = open_photo(page_picture(paper, language, index)).pixels
    found = read_scores(pixels, printed_pages("a4").forms(index))
    assert found is not None
    assert [row.score for row in found.rows] == [7, None, 10, 1]


@pytest.fixture
def pin_up(window, qtbot, tmp_path: Path):
    page = make_class(window, qtbot, tmp_path / "7b")
    picture = tmp_path / "page.jpg"
    picture.write_bytes(page_picture("a4", "en", 0))
    window.desk.add((picture,))
    settle(window, qtbot)
    window.show_page(next(k for k, kind in enumerate(PAGES) if kind.key == "classset"))
    assert isinstance(page, ClassSetPage)
    part = page.show_part("pin_up")
    part.choose(1)
    settle(window, qtbot)
    return part


def own(part) -> OwnScores:
    return part.desk.class_set.entry(2).worksheet.pages[0].scores


def test_a_page_is_offered_beside_its_crops_and_taken_with_one_key(
    window, qtbot, pin_up, capsys
) -> None:
    read = pin_up.marking.read
    assert not read.isHidden()
    assert [label.text() for label in read.said] == [
        "read: 7",
        "cannot tell",
        "read: 10",
        "read: 1",
    ]
    assert [field.text() for field in read.fields] == ["7", "", "10", "1"]
    qtbot.waitUntil(lambda: not read.crops[0].isHidden(), timeout=20_000)
    assert all(not crop.isHidden() and crop.height() > 10 for crop in read.crops)
    assert own(pin_up) == OwnScores()
    path = window.desk.path
    run_command(["class", "show", str(path)])
    assert "02, sheet 1: hue read: 7, value cannot tell" in capsys.readouterr().out

    read.fields[1].setText("4")
    read.fields[1].setFocus()
    QTest.keyClick(read.fields[1], Qt.Key.Key_T, Qt.KeyboardModifier.ControlModifier)
    assert own(pin_up) == OwnScores(7, 4, 10, 1)
    assert read.isHidden()
    settle(window, qtbot)
    assert read_class_set(path).entry(2).worksheet.pages[0].scores == OwnScores(7, 4, 10, 1)
    run_command(["class", "show", str(path)])
    assert "not yet taken" not in capsys.readouterr().out

    window.desk.document.stack.undo()
    assert own(pin_up) == OwnScores()
    assert not read.isHidden()


def test_an_empty_field_takes_nothing_and_other_students_are_left_alone(pin_up) -> None:
    read = pin_up.marking.read
    for field in read.fields:
        field.clear()
    assert not read.take.isEnabled()
    read.take_them()
    assert own(pin_up) == OwnScores()
    read.fields[0].setText("11")  # no score
    assert not read.take.isEnabled()
    read.fields[0].setText("3")
    read.take.click()
    assert own(pin_up) == OwnScores(hue=3)
    pin_up.choose(0)
    assert read.isHidden()
    assert pin_up.desk.class_set.entry(1).worksheet.pages[0].scores == OwnScores()


def test_a_page_is_read_once(window, qtbot, pin_up, monkeypatch) -> None:
    path = window.desk.path
    assert len(list((path / "checks").glob("*.jpg"))) == 1
    monkeypatch.setattr("app.services.class_set.score_reader.read_page", None)
    window.desk.open(path)
    qtbot.waitUntil(lambda: window.desk.sorted is not None, timeout=20_000)
    settle(window, qtbot)
    pin_up.choose(1)
    assert [field.text() for field in pin_up.marking.read.fields] == ["7", "", "10", "1"]

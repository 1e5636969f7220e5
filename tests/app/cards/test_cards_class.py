"""Tickets and worksheets of a class: every code on a page is read, sizes are true on paper."""

from __future__ import annotations

import io
import re
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest
from card_tools import outside, overlaps, page_texts
from class_set_tools import TAG, class_list, made_folder, sheet_jpeg
from PIL import Image
from PySide6.QtCore import Qt
from PySide6.QtGui import QImage, QPainter

import core.cli
from app.cards.class_pages import CODE, PAGE_CODE, TICKET, lay_out_tickets, lay_out_worksheets
from app.cards.class_prints import lay_out_contact, lay_out_hard, lay_out_slips
from app.cards.page import Page, paint_page
from app.cards.paper import A4, LETTER, MM, Paper
from app.drawing.cards.code import paint_code
from app.main import COMMANDS
from core.bands.lines import Bands
from core.cards.data import CardData
from core.class_set import edits
from core.class_set.bringing import bring_in, files_in
from core.class_set.checking import check_folder
from core.class_set.codes import QUIET, SIDE, read_tickets
from core.class_set.hard import found_hard
from core.class_set.kept_checks import found_checks
from core.class_set.placing import place_all
from core.class_set.prints import ShownScore, ShownStudent, shown_students
from core.class_set.spread import Spread, told_apart
from core.class_set.students import Student
from core.class_set.ticket import PAGE_KINDS, Slot, Ticket
from core.study import Study
from core.worksheet.worksheet import QUALITIES, OwnScores, SheetPage, Worksheet

_PX_PER_MM = 6


def raster(page: Page) -> np.ndarray:
    """The page in grey, as it would be scanned."""
    paper = page.paper
    image = QImage(
        round(paper.width_mm * _PX_PER_MM),
        round(paper.height_mm * _PX_PER_MM),
        QImage.Format.Format_Grayscale8,
    )
    image.fill(Qt.GlobalColor.white)
    painter = QPainter(image)
    painter.scale(_PX_PER_MM / MM, _PX_PER_MM / MM)
    paint_page(painter, page)
    painter.end()
    rows = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), -1)
    return rows[:, : image.width()].copy()


@pytest.mark.parametrize("paper", [A4, LETTER])
def test_every_ticket_printed_is_read(qapp, paper: Paper) -> None:
    students = class_list(30).students
    pages = lay_out_tickets(TAG, "7b", students, paper)
    found = [ticket for page in pages for ticket in read_tickets(raster(page))]
    wanted = {Ticket(TAG, student.number, kind) for student in students for kind in "12"}
    assert set(found) == wanted
    if paper is A4:
        assert len(pages) == 2  # 33 on a page


def test_a_code_is_20_mm_with_white_around_it(qapp) -> None:
    (page,) = lay_out_tickets(TAG, "7b", class_list(1).students, A4)
    codes = [piece.rect for piece in page.pieces if piece.paint is paint_code]
    assert {round(rect.width() / MM, 3) for rect in codes} == {20.0}
    quiet = QUIET * CODE / SIDE
    for piece in page.pieces:
        if piece.text:
            for code in codes:
                assert not piece.rect.intersects(code.adjusted(-quiet, -quiet, quiet, quiet))
    assert (TICKET[0] / MM, TICKET[1] / MM) == pytest.approx((60.0, 26.0))


@pytest.mark.parametrize("code", ["14", "a very long code that goes on and on", "Ω≈ç√∫"])
def test_words_stay_on_their_ticket(qapp, code: str) -> None:
    (page,) = lay_out_tickets(TAG, "a class with a long name, too", (Student(1, code),), A4)
    tickets = [piece.rect for piece in page.pieces if piece.layer == "ground"]
    for piece in page.pieces:
        if piece.text:
            assert any(ticket.contains(piece.rect) for ticket in tickets)


@pytest.mark.parametrize("paper", [A4, LETTER])
def test_four_codes_on_each_worksheet_page_are_read(qapp, paper: Paper) -> None:
    data = CardData(Study(title="dusk", worksheet=Worksheet(class_code="7b")))
    pages = lay_out_worksheets(data, TAG, class_list(2).students, paper)
    assert len(pages) == 4
    for number, page in enumerate(pages):
        kinds = PAGE_KINDS[number % 2]
        wanted = {Ticket(TAG, number // 2 + 1, kind) for kind in kinds}
        assert set(read_tickets(raster(page))) == wanted
        assert f"{number // 2 + 1:02d}" in [piece.text for piece in page.pieces]


@pytest.mark.parametrize("paper", [A4, LETTER])
def test_nothing_comes_near_a_worksheets_codes(qapp, paper: Paper) -> None:
    data = CardData(Study(title="dusk over the lake", worksheet=Worksheet(class_code="7b")))
    quiet = QUIET * PAGE_CODE / SIDE
    for page in lay_out_worksheets(data, TAG, class_list(1).students, paper):
        codes = [piece.rect for piece in page.pieces if piece.paint is paint_code]
        others = [piece.rect for piece in page.pieces if piece.paint is not paint_code]
        for code in codes:
            near = code.adjusted(-quiet, -quiet, quiet, quiet)
            assert not any(near.intersects(rect) for rect in others)


def test_command_prints_a_folder(qapp, tmp_path: Path, capsys: pytest.CaptureFixture[str]) -> None:
    with made_folder(tmp_path):
        pass
    for kind in ("tickets", "worksheets", "contact", "slips", "hard"):
        target = tmp_path / f"{kind}.pdf"
        argv = ["card", str(tmp_path / "7b"), "--kind", kind, "-o", str(target)]
        assert core.cli.run(argv, COMMANDS) == 0, capsys.readouterr().err
        assert target.read_bytes().startswith(b"%PDF")
    assert (
        core.cli.run(["card", str(tmp_path / "7b"), "--kind", "plan", "-o", "x.pdf"], COMMANDS) == 2
    )
    assert "tickets, worksheets, contact" in capsys.readouterr().err


def shown(number: int, **changes: object) -> ShownStudent:
    """A student with long words and one painting."""
    buffer = io.BytesIO()
    Image.new("RGB", (80, 60), (120, 140, 200)).save(buffer, "JPEG")
    scores = tuple(ShownScore(quality, 7, 9) for quality in QUALITIES)
    plain = ShownStudent(
        Student(number, f"{number:02d}"),
        (buffer.getvalue(), None),
        ("in", "missing"),
        "Value of bands B to E matches the photo, and every line is in its place.",
        "Band A is lighter than the photo. Put more paint into the same water: it dries lighter.",
        "The top wash is calmer now. " * 3,
        scores,
        0,
    )
    return replace(plain, **changes)


def sky() -> QImage:
    image = QImage(60, 50, QImage.Format.Format_RGB32)
    image.fill(Qt.GlobalColor.blue)
    return image


def spreads() -> tuple[Spread, ...]:
    gaps = (0.0,) * 8 + (2.5,) * 12 + (9.0,)
    return told_apart([Spread(letter, q, gaps) for letter in "AB" for q in QUALITIES])


@pytest.mark.parametrize("paper", [A4, LETTER])
def test_prints_stay_on_the_page_and_nothing_overlaps(qapp, paper: Paper) -> None:
    students = [shown(k) for k in range(1, 16)]
    pages = [
        *lay_out_contact("Class 7b: dusk", "18 March", sky(), students, paper),
        *lay_out_slips("Dusk over the lake " * 4, "7b", sky(), students, paper),
        *lay_out_hard(
            "dusk", ["Class 7b"], sky(), Bands(1.0, (0.4,)), (spreads(), spreads()),
            found_hard(spreads(), ()), paper,
        ),
    ]  # fmt: skip
    assert len(pages) == 2 + 8 + 1
    for page in pages:
        assert set(outside(page)) <= {"paint_stroke"}  # the line to cut along
        assert overlaps(page) == []


def test_no_print_bears_a_mark_and_found_hard_no_code(qapp) -> None:
    pages = lay_out_hard(
        "dusk", [], sky(), Bands(1.0, (0.4,)), (spreads(), ()), found_hard(spreads(), ()), A4
    )
    texts = page_texts(pages)
    assert "Band A came" in texts
    assert "01" not in texts
    slip = page_texts(lay_out_slips("dusk", "7b", sky(), [shown(1)], A4))
    assert "Next step." in slip
    assert set(re.findall(r"\d+", slip)) == {"01", "1", "2", "7", "9"}  # code, sheets, scores


def test_measured_scores_wait_for_the_students_own(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        (tmp_path / "in").mkdir()
        (tmp_path / "in" / "IMG_1.jpg").write_bytes(sheet_jpeg(Ticket(TAG, 1, "1")))
        list(bring_in(folder, files_in([tmp_path / "in"])))
        list(check_folder(folder))
        checks = found_checks(folder.path, folder.class_set)
        for own, waits in ((OwnScores(), True), (OwnScores(7, 7, 7), False)):
            page = SheetPage(own)
            worksheet = Worksheet(pages=(page, SheetPage()))
            class_set = edits.with_worksheet(folder.class_set, 1, worksheet)
            first, *_ = shown_students(folder.path, class_set, place_all(class_set), checks)
            assert all(one.measured is None for one in first.scores) == waits
            assert (first.paintings[0] or b"").startswith(b"\xff\xd8")
            assert first.paintings[1] is None


def test_what_was_around_a_painting_that_was_not_found_is_on_no_print(tmp_path: Path) -> None:
    with made_folder(tmp_path) as folder:
        (tmp_path / "in").mkdir()
        grey = Image.new("RGB", (800, 600), (150, 150, 150))
        grey.save(tmp_path / "in" / "IMG_1.jpg")
        list(bring_in(folder, files_in([tmp_path / "in"])))
        placed = edits.place(folder.class_set, folder.class_set.brought[0].digest, Slot(1, 0))
        folder.save(placed)
        list(check_folder(folder))
        checks = found_checks(folder.path, placed)
        first, *_ = shown_students(folder.path, placed, place_all(placed), checks)
        assert first.paintings == (None, None)
        assert first.not_found == (True, False)
    texts = page_texts(lay_out_contact("dusk", "7b", sky(), [first], A4))
    assert "no painting found" in texts

"""Pages printed of a class list: tickets to lay beside the sheets, worksheets with codes.

A ticket holds a code of 20 mm and says in words whose it is; it belongs to the class list, so one
print serves all year.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace
from typing import Final

from PySide6.QtCore import QRectF

from app.cards.page import Page
from app.cards.paper import MM, PT, Paper
from app.cards.worksheet import lay_out_worksheet
from app.cards.write import GREY, NOTE, THIN, elided, fitting_size, put_line
from app.drawing.cards.code import CodeView, paint_code
from app.drawing.cards.marks import BoxView, paint_box
from app.drawing.cards.text import Run, line_height, line_width
from app.look.type import CHOSEN, FIRST
from core.cards import words as words_of_cards
from core.cards.data import CardData
from core.class_set.codes import code_modules
from core.class_set.students import Student
from core.class_set.ticket import PAGE_KINDS, SHEET_KINDS, Ticket
from core.worksheet.words import sheet_title

TICKET: Final = (60.0 * MM, 26.0 * MM)
CODE: Final = 20.0 * MM
PAGE_CODE: Final = 14.0 * MM
INSET: Final = 8.0 * MM
"""From the paper's edge to a worksheet's codes."""

CODES_BAND_MM: Final = 11.5
"""What the codes take from a worksheet's height, above and below."""


def lay_out_tickets(
    tag: str, title: str, students: Sequence[Student], paper: Paper
) -> tuple[Page, ...]:
    """Two tickets for each student, sheet 1 and sheet 2, cut apart along the lines.

    Parameters
    ----------
    tag : str
        Of the class list.
    title : str
        What the class is called; may be empty.
    students : sequence of Student
    """
    columns = int(paper.rect.width() / TICKET[0])
    rows = int((paper.rect.height() - 8 * MM) / TICKET[1])
    left = (paper.rect.width() - columns * TICKET[0]) / 2
    top = (paper.rect.height() - rows * TICKET[1]) / 2
    wanted = [(student, kind) for student in students for kind in SHEET_KINDS]
    pages: list[Page] = []
    for number, (student, kind) in enumerate(wanted):
        place = number % (rows * columns)
        if place == 0:
            pages.append(Page(paper))
        x = left + (place % columns) * TICKET[0]
        y = top + (place // columns) * TICKET[1]
        _put_ticket(
            pages[-1], QRectF(x, y, *TICKET), Ticket(tag, student.number, kind), student, title
        )
    return tuple(pages)


def lay_out_worksheets(
    data: CardData, tag: str, students: Sequence[Student], paper: Paper, *, bw: bool = False
) -> tuple[Page, ...]:
    """Each student's two worksheet pages, with a code in every corner and their own code filled in.

    Parameters
    ----------
    data : CardData
        Of the exercise; the class's code is taken from its worksheet.
    """
    room = replace(paper, codes_mm=CODES_BAND_MM)
    pages: list[Page] = []
    for student in students:
        sheet = replace(data.study.worksheet, student_code=student.code)
        own = replace(data, study=replace(data.study, worksheet=sheet))
        for index, page in enumerate(lay_out_worksheet(own, room, bw=bw)):
            _put_page_codes(page, tag, student.number, PAGE_KINDS[index])
            pages.append(page)
    return tuple(pages)


def _put_ticket(page: Page, rect: QRectF, ticket: Ticket, student: Student, title: str) -> None:
    page.put(rect, paint_box, BoxView(THIN), layer="ground")
    edge = (rect.height() - CODE) / 2
    code = QRectF(rect.left() + edge + 0.8 * MM, rect.top() + edge, CODE, CODE)
    page.put(code, paint_code, code_view(ticket))
    x = code.right() + 4.6 * MM
    room = rect.right() - 2.5 * MM - x
    size = fitting_size(student.code, (26 * PT, 20 * PT, 15 * PT, 11 * PT), room, CHOSEN)
    words: tuple[Run, ...] = (Run(student.code, CHOSEN),)
    if line_width(words, size) > room:
        words = elided(words, size, room)
    label, foot = 12 * PT, NOTE
    height = line_height(size) + line_height(label) + line_height(foot)
    y = rect.center().y() - height / 2
    put_line(page, x, y, words, size)
    y += line_height(size)
    put_line(page, x, y, sheet_title(SHEET_KINDS.index(ticket.kind)), label, weight=FIRST)
    y += line_height(label)
    if title:
        text = words_of_cards.class_text(title)
        shown: tuple[Run, ...] = (Run(text),)
        if line_width(shown, foot) > room:
            shown = elided(shown, foot, room)
        put_line(page, x, y, shown, foot, colour=GREY)


def _put_page_codes(page: Page, tag: str, number: int, kinds: str) -> None:
    right = page.paper.rect.right() - INSET - PAGE_CODE
    bottom = page.paper.rect.bottom() - INSET - PAGE_CODE
    corners = ((INSET, INSET), (right, INSET), (right, bottom), (INSET, bottom))
    for kind, (x, y) in zip(kinds, corners, strict=True):
        page.put(
            QRectF(x, y, PAGE_CODE, PAGE_CODE), paint_code, code_view(Ticket(tag, number, kind))
        )


def code_view(ticket: Ticket) -> CodeView:
    """A ticket's code, to be painted."""
    return CodeView(tuple(tuple(bool(v) for v in row) for row in code_modules(ticket)))

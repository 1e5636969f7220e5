"""Contact pages, slips to be given out, and what the class found hard, as printed pages."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QRectF
from PySide6.QtGui import QImage

from app.cards.figures import printable
from app.cards.foot import FOOT, put_foot
from app.cards.page import Page
from app.cards.paper import MM, PT, Paper
from app.cards.write import (
    BODY,
    GREY,
    NOTE,
    SECOND_BODY,
    THIN,
    put_head,
    put_line,
    put_paragraph,
    put_rule,
)
from app.drawing.cards.marks import BoxView, StrokeView, WritingView, paint_box, paint_stroke
from app.drawing.cards.marks import paint_writing as paint_lines
from app.drawing.cards.picture import PictureView, paint_picture
from app.drawing.cards.text import Run, line_height
from app.drawing.dots import DotsView, paint_dots
from app.look.type import CHOSEN, FIRST
from core.bands.lines import Bands
from core.cards import words
from core.class_set.field_words import column_title, field_note, field_word, ways
from core.class_set.hard import Hard
from core.class_set.prints import ShownStudent
from core.class_set.spread import Spread
from core.class_set.standing import state_word
from core.i18n import translate
from core.reading.quality import QUALITIES
from core.worksheet.words import quality_title, sheet_title

CONTACT_ROWS: Final = 7
_GAP: Final = 2.4 * MM


def lay_out_contact(
    title: str, date: str, sky: QImage, students: Sequence[ShownStudent], paper: Paper
) -> tuple[Page, ...]:
    """Every student's two paintings, two students a row with the photo between them."""
    area = paper.inside
    width = (area.width() - 4 * _GAP) / 5
    pages: list[Page] = []
    each = 2 * CONTACT_ROWS
    for start in range(0, len(students), each):
        page = Page(paper)
        top = put_head(page, title, [date] if date else []) + 3 * MM
        pitch = (area.bottom() - FOOT - 2 * MM - top) / CONTACT_ROWS
        label = line_height(SECOND_BODY)
        height = min(pitch - label - 2.2 * MM, width / 1.2)
        for number, shown in enumerate(students[start : start + each]):
            row, side = divmod(number, 2)
            y = top + row * pitch
            if side == 0:
                middle = QRectF(area.left() + 2 * (width + _GAP), y + label, width, height)
                put_line(page, middle.center().x(), y, words.label("photo"), NOTE, align=0.5)
                _put_picture(page, middle, sky)
            x = area.left() + (3 * (width + _GAP) if side else 0.0)
            put_line(page, x, y, shown.student.code, SECOND_BODY, weight=CHOSEN)
            for index in (0, 1):
                place = QRectF(x + index * (width + _GAP), y + label, width, height)
                _put_painting(page, place, shown, index)
        pages.append(page)
    for number, page in enumerate(pages, start=1):
        put_foot(page, number, len(pages))
    return tuple(pages)


def lay_out_slips(
    title: str, class_code: str, sky: QImage, students: Sequence[ShownStudent], paper: Paper
) -> tuple[Page, ...]:
    """Two students' slips a page, to be cut apart: paintings, a strength, a next step, a remark."""
    pages: list[Page] = []
    half = paper.rect.height() / 2
    for number, shown in enumerate(students):
        if number % 2 == 0:
            pages.append(Page(paper))
            cut = QRectF(0.0, half, paper.rect.width(), 0.0)
            pages[-1].put(cut, paint_stroke, StrokeView(THIN, GREY), layer="ground")
        _put_slip(pages[-1], (number % 2) * half, half, title, class_code, sky, shown)
    return tuple(pages)


def lay_out_hard(
    title: str,
    info: Sequence[str],
    sky: QImage,
    bands: Bands,
    spreads: tuple[Sequence[Spread], Sequence[Spread]],
    sentences: Sequence[Hard],
    paper: Paper,
) -> tuple[Page, ...]:
    """One page: the sentences, then every band's dots. It bears no code."""
    page, area = Page(paper), paper.inside
    heading = translate("cards", "What the class found hard")
    y = put_head(page, heading, [title, *info] if title else info) + 3 * MM
    for one in sentences:
        sign = "✓" if one.kind == "praise" else "→"
        put_line(page, area.left(), y, sign, BODY, weight=CHOSEN)
        x = area.left() + 7 * MM
        room = area.right() - x
        y += put_paragraph(page, x, y, room, one.text, BODY, weight=FIRST)
        if one.teach:
            y += put_paragraph(page, x, y, room, one.teach, SECOND_BODY, colour=GREY)
        y += 1.6 * MM
    y = _put_dots(page, y + 2 * MM, sky, bands, spreads)
    put_paragraph(page, area.left(), y + 1.5 * MM, area.width(), field_note(), NOTE, colour=GREY)
    put_foot(page)
    return (page,)


def _put_dots(
    page: Page,
    top: float,
    sky: QImage,
    bands: Bands,
    spreads: tuple[Sequence[Spread], Sequence[Spread]],
) -> float:
    """The field of dots; gives its lower end."""
    area = page.paper.inside
    cells = [{(one.letter, one.quality): one for one in each} for each in spreads]
    left = area.left() + 32 * MM
    gap = 5.5 * MM
    width = (area.right() - left - 3 * gap) / 4
    for number, quality in enumerate(QUALITIES):
        x = left + number * (width + gap)
        put_line(page, x + width / 2, top, column_title(quality), BODY, weight=FIRST, align=0.5)
        y = top + line_height(BODY)
        one_way, other = ways(quality)
        put_line(page, x, y, one_way, NOTE, colour=GREY)
        put_line(page, x + width, y, other, NOTE, align=1.0, colour=GREY)
    y = top + line_height(BODY) + line_height(NOTE) + 1 * MM
    room = area.bottom() - FOOT - 20 * MM - y
    pitch = min(room / bands.count, 30 * MM)
    height = (pitch - 3 * MM) / 2
    for row, letter in enumerate(bands.letters):
        base = y + row * pitch
        middle = base + height - line_height(BODY) / 2
        put_line(page, area.left() + 3 * MM, middle, letter, BODY, weight=CHOSEN)
        strip = QRectF(area.left() + 11 * MM, base, 14 * MM, 2 * height)
        _put_picture(page, strip, _band_of(sky, bands, row))
        for number, quality in enumerate(QUALITIES):
            x = left + number * (width + gap)
            for line, each in enumerate(cells):
                one = each.get((letter, quality))
                if one is None:
                    continue
                text = field_word(one)
                view = DotsView(one.gaps, text, line == 1, one.told, NOTE)
                place = QRectF(x, base + line * height, width, height - 0.6 * MM)
                page.put(place, paint_dots, view, text=text)
    return y + bands.count * pitch - 3 * MM


def _band_of(sky: QImage, bands: Bands, row: int) -> QImage:
    """One band of the sky: as tall as every other on the page, whatever its share."""
    edges = [round(edge / bands.horizon * sky.height()) for edge in bands.edges]
    return sky.copy(0, edges[row], sky.width(), max(1, edges[row + 1] - edges[row]))


def _put_slip(
    page: Page,
    top: float,
    height: float,
    title: str,
    class_code: str,
    sky: QImage,
    shown: ShownStudent,
) -> None:
    area = page.paper.inside
    y, bottom = top + 14 * MM, top + height - 14 * MM
    info = words.student_text(shown.student.code)
    if class_code:
        info += "      " + words.class_text(class_code)
    put_line(page, area.right(), y + 0.8 * MM, info, SECOND_BODY, align=1.0)
    put_paragraph(page, area.left(), y, 0.62 * area.width(), title, 15 * PT, weight=CHOSEN, most=1)
    y += line_height(15 * PT) + 1 * MM
    put_rule(page, area.left(), y, area.width(), THIN)
    y += 2 * MM
    width = (area.width() - 2 * _GAP) / 3
    for number, name in enumerate((words.label("photo"), sheet_title(0), sheet_title(1))):
        x = area.left() + number * (width + _GAP)
        put_line(page, x, y, name, NOTE, weight=FIRST)
        place = QRectF(x, y + line_height(NOTE) + 0.6 * MM, width, 40 * MM)
        if number == 0:
            _put_picture(page, place, sky)
        else:
            _put_painting(page, place, shown, number - 1)
    y += line_height(NOTE) + 43 * MM
    table = 56 * MM
    room = area.width() - table - 8 * MM
    left = _put_words(page, y, room, shown)
    right = _put_scores(page, y, area.right() - table, table, shown)
    y = max(left, right) + 2 * MM
    label = put_line(page, area.left(), y, translate("cards", "Remark"), SECOND_BODY, weight=FIRST)
    if shown.remark:
        x = label.right() + 3 * MM
        y += put_paragraph(page, x, y, area.right() - x, shown.remark, SECOND_BODY, most=5)
    lines = int((bottom - y) / (8 * MM))
    if lines > 0:
        rect = QRectF(area.left(), y, area.width(), lines * 8 * MM)
        page.put(rect, paint_lines, WritingView(8 * MM, THIN), layer="ground")


def _put_words(page: Page, y: float, room: float, shown: ShownStudent) -> float:
    area = page.paper.inside
    said = (
        (translate("cards", "Strength."), shown.strength),
        (
            translate("cards", "Next step."),
            shown.next_step or translate("cards", "Choose one yourself."),
        ),
    )
    for name, text in said:
        if not text:
            continue
        runs = (Run(f"{name} ", FIRST), Run(text))
        y += put_paragraph(page, area.left(), y, room, runs, SECOND_BODY, most=4) + 1.6 * MM
    return y


def _put_scores(page: Page, y: float, x: float, width: float, shown: ShownStudent) -> float:
    own, measured = x + 0.62 * width, x + width
    put_line(page, own, y, translate("cards", "own"), NOTE, align=1.0, colour=GREY)
    put_line(page, measured, y, translate("cards", "measured"), NOTE, align=1.0, colour=GREY)
    y += line_height(NOTE)
    for one in shown.scores:
        put_line(page, x, y, quality_title(one.quality), SECOND_BODY)
        for place, score in ((own, one.own), (measured, one.measured)):
            text = "–" if score is None else str(score)
            put_line(page, place - 3 * MM, y, text, SECOND_BODY, align=1.0)
        y += line_height(SECOND_BODY)
    put_line(page, x, y, sheet_title(shown.last), NOTE, colour=GREY)
    return y + line_height(NOTE)


def _put_painting(page: Page, rect: QRectF, shown: ShownStudent, index: int) -> None:
    data = shown.paintings[index]
    image = QImage.fromData(data) if data else QImage()
    if not image.isNull():
        _put_picture(page, rect, image)
        return
    page.put(rect, paint_box, BoxView(THIN, dashed=True), layer="ground")
    text = state_word(shown.states[index])
    if shown.not_found[index]:
        text = translate("class set", "no painting found")
    y = rect.center().y() - line_height(NOTE) / 2
    put_line(page, rect.center().x(), y, text, NOTE, align=0.5, colour=GREY)


def _put_picture(page: Page, rect: QRectF, image: QImage) -> None:
    page.put(rect, paint_picture, PictureView(printable(image, rect.width())))
    # A pale sky must not end in the white of the page.
    page.put(rect, paint_box, BoxView(0.4 * PT), layer="ground")

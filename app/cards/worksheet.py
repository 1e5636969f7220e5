"""The worksheet: for each of the two sheets own scores first, then own words, by hand or filled in.

A page a sheet. An answer longer than its lines goes on to a further page, so nothing is cut.
"""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRectF

from app.cards.dates import date_text
from app.cards.figures import GUTTER, PX, marks_without_hue, photo_image, photo_view
from app.cards.foot import FOOT, put_foot
from app.cards.page import Page
from app.cards.paper import MM, PT, Paper
from app.cards.write import (
    BODY,
    GREY,
    MEDIUM_PEN,
    NOTE,
    SECOND_BODY,
    THIN,
    elided,
    fitting_size,
    put_head,
    put_heading,
    put_line,
    put_paragraph,
    put_rule,
)
from app.drawing.cards.marks import BoxView, WritingView, paint_box, paint_writing
from app.drawing.cards.photo import paint_photo, photo_rect
from app.drawing.cards.text import (
    LineView,
    Run,
    balanced,
    broken,
    line_height,
    line_width,
    paint_text_line,
)
from app.drawing.ladder import paint_ladder
from app.drawing.score_scale import ScoreScaleView, paint_score_scale, score_boxes
from app.drawing.views import ladder_view
from app.look.type import FIRST, SECOND
from core.cards import words
from core.cards.data import CardData
from core.sheet.findings.words import score_meaning
from core.worksheet.words import (
    ANCHORS,
    PROMPTS,
    anchor_word,
    change_question,
    change_reminder,
    change_title,
    prompt_question,
    prompt_word,
    quality_title,
    question,
    sheet_title,
)
from core.worksheet.worksheet import CHANGES, QUALITIES, SheetPage

WRITING: Final = 8.0 * MM
FIGURES: Final = 50.0 * MM
LABEL: Final = 26.0 * MM
BOX: Final = 7.6 * MM
GAP: Final = 4.0 * MM
LADDER: Final = 22.0 * MM


def lay_out_worksheet(
    data: CardData, paper: Paper, *, bw: bool = False, blank: bool = False
) -> tuple[Page, ...]:
    """Both sheets' worksheet.

    Parameters
    ----------
    data : CardData
    paper : Paper
    bw : bool
        The photo in its values.
    blank : bool
        Leave out what the study already holds of the student's.

    Returns
    -------
    tuple of Page
        Two, and more where an answer is long.
    """
    pages: list[Page] = []
    for index in range(2):
        page = SheetPage() if blank else data.study.worksheet.pages[index]
        pages += _sheet(data, paper, index, page, bw=bw, blank=blank)
    for number, page_done in enumerate(pages, start=1):
        put_foot(page_done, number, len(pages))
    return tuple(pages)


def _sheet(
    data: CardData, paper: Paper, index: int, filled: SheetPage, *, bw: bool, blank: bool
) -> list[Page]:
    page = Page(paper)
    area = paper.inside
    y = put_head(page, words.worksheet_title(data.study), [sheet_title(index)]) + 2.0 * MM
    y = _put_fields(page, data, filled, y, blank=blank) + 3.0 * MM
    y = _put_figures(page, data, index, y, bw=bw) + GAP
    y = _put_scales(page, filled, y)
    y += put_heading(page, area.left(), y, question(index))
    y = _put_prompts(page, index, y)
    bottom = area.bottom() - FOOT - 3.0 * MM
    change = _change_height(index)
    count = max(int((bottom - change - y) / WRITING), 1)
    lines = _answer_lines(filled.answer, area.width())
    _put_answer(page, QRectF(area.left(), y, area.width(), count * WRITING), lines[:count])
    _put_change(page, data, index, filled, bottom - change + 3.0 * MM, blank=blank)
    return [page, *_more(data, paper, index, lines[count:])]


def _put_fields(page: Page, data: CardData, filled: SheetPage, y: float, *, blank: bool) -> float:
    """Code, class and date, each on a line to write on."""
    area, sheet = page.paper.inside, data.study.worksheet
    texts = ("", "") if blank else (sheet.student_code, sheet.class_code)
    date = date_text(filled.date) if filled.date else ""
    gap, x = 5.0 * MM, area.left()
    room = area.width() - 2 * gap
    bottom = y + WRITING
    for name, text, share in zip(
        words.field_names(), (*texts, date), (0.42, 0.28, 0.30), strict=True
    ):
        width = share * room
        top = bottom - line_height(SECOND_BODY) - 0.3 * MM
        label = put_line(page, x, top, name, SECOND_BODY, weight=FIRST)
        left = label.right() + 2 * MM
        put_rule(page, left, bottom, x + width - left, THIN)
        if text:
            space = x + width - left
            size = fitting_size(text, (SECOND_BODY, 10 * PT, NOTE), space, SECOND)
            runs: tuple[Run, ...] = (Run(text),)
            if line_width(runs, size) > space:
                runs = elided(runs, size, space)
            put_line(page, left, bottom - line_height(size) - 0.3 * MM, runs, size)
        x += width + gap
    return bottom


def _put_figures(page: Page, data: CardData, index: int, top: float, *, bw: bool) -> float:
    """The photo, the value scale with both ends in words, and how to score."""
    area = page.paper.inside
    x = area.left()
    image = photo_image(data, 80 * MM, bw=bw)
    if image is not None:
        view = photo_view(data, image, gutter=GUTTER)
        picture = photo_rect(QRectF(x, top, 84 * MM, FIGURES), view)
        rect = QRectF(x, top, picture.right() - x, picture.height())
        page.put(rect, paint_photo, view)
        x = rect.right() + 6 * MM
    ladder = QRectF(area.right() - LADDER, top, LADDER, FIGURES)
    page.put(ladder, paint_ladder, marks_without_hue(ladder_view((), data.wording, px=PX)))
    width = ladder.left() - 6 * MM - x
    y = top + put_heading(page, x, top, words.label("own scores"))
    y += put_paragraph(page, x, y, width, words.scores_advice(index), SECOND_BODY)
    y += 2.0 * MM
    put_paragraph(page, x, y, width, words.label("value scale"), NOTE, colour=GREY)
    return top + FIGURES


def _put_scales(page: Page, filled: SheetPage, y: float) -> float:
    """A scale for each quality, with what its numbers mean."""
    area = page.paper.inside
    left, width = area.left() + LABEL, area.width() - LABEL
    for row, quality in enumerate(QUALITIES):
        anchors = tuple((score, anchor_word(score)) for score in ANCHORS) if row == 0 else ()
        view = ScoreScaleView(own=filled.scores.of(quality))
        boxes = score_boxes(QRectF(left, 0, width, BOX))
        columns = _anchor_columns(boxes, left, width)
        if anchors:
            for (x, _, align), (_, text) in zip(columns, anchors, strict=True):
                put_line(page, x, y, text, NOTE, weight=FIRST, align=align)
            y += line_height(NOTE) + 0.5 * MM
        rect = QRectF(left, y, width, BOX)
        page.put(rect, paint_score_scale, view)
        label = y + (BOX - line_height(BODY)) / 2
        put_line(page, area.left(), label, quality_title(quality), BODY, weight=FIRST)
        y += BOX + 0.8 * MM
        tall = 0
        for (x, room, align), score in zip(columns, ANCHORS, strict=True):
            lines = balanced([Run(score_meaning(quality, score))], NOTE, room)
            for number, line in enumerate(lines):
                at = y + number * line_height(NOTE)
                put_line(page, x, at, line, NOTE, align=align, colour=GREY)
            tall = max(tall, len(lines))
        y += tall * line_height(NOTE) + 2.6 * MM
    return y + 1.0 * MM


def _anchor_columns(
    boxes: tuple[QRectF, ...], left: float, width: float
) -> list[tuple[float, float, float]]:
    """Where the words of 1, 4, 7 and 10 stand: x, room, alignment."""
    ends, room = 0.215 * width, 0.24 * width
    columns = []
    for score in ANCHORS:
        middle = boxes[score - 1].center().x()
        if score == 1:
            columns.append((left, ends, 0.0))
        elif score == 10:
            columns.append((left + width, ends, 1.0))
        else:
            columns.append((middle, room, 0.5))
    return columns


def _put_prompts(page: Page, index: int, y: float) -> float:
    """What to think of, in two columns."""
    area = page.paper.inside
    half = area.width() / 2
    heights = [0.0, 0.0]
    for number, prompt in enumerate(PROMPTS):
        column = number % 2
        text = (
            Run(prompt_word(prompt) + ": ", FIRST),
            Run(prompt_question(prompt, index), SECOND),
        )
        x = area.left() + column * half
        heights[column] += put_paragraph(page, x, y + heights[column], half - 4 * MM, text, NOTE)
    return y + max(heights) + 0.5 * MM


def _answer_lines(answer: str, width: float) -> list[tuple[Run, ...]]:
    if not answer.strip():
        return []
    return list(broken([Run(answer.strip())], SECOND_BODY, width))


def _put_answer(page: Page, rect: QRectF, lines: list[tuple[Run, ...]]) -> None:
    """Lines to write on, 8 mm apart, and the answer standing on them."""
    page.put(rect, paint_writing, WritingView(WRITING, THIN), layer="ground")
    for number, line in enumerate(lines):
        y = rect.top() + (number + 1) * WRITING - line_height(SECOND_BODY) - 0.6 * MM
        box = QRectF(rect.left(), y, line_width(line, SECOND_BODY), line_height(SECOND_BODY))
        text = "".join(run.text for run in line)
        if text.strip():
            page.put(box, paint_text_line, LineView(line, SECOND_BODY), text=text)


def _change_height(index: int) -> float:
    return (16.0 if index == 0 else 12.0) * MM


def _put_change(
    page: Page, data: CardData, index: int, filled: SheetPage, y: float, *, blank: bool
) -> None:
    """Sheet 1: the one thing to change first. Sheet 2: what it was."""
    area = page.paper.inside
    if index == 1:
        named = None if blank else data.study.worksheet.pages[0].change_first
        if named is not None:
            put_line(page, area.left(), y + 1.5 * MM, change_reminder(named), SECOND_BODY)
            return
        top = y + WRITING - line_height(SECOND_BODY) - 0.3 * MM
        label = put_line(
            page, area.left(), top, words.label("to change"), SECOND_BODY, weight=FIRST
        )
        left = label.right() + 2 * MM
        put_rule(page, left, y + WRITING, area.right() - left, THIN)
        return
    put_line(page, area.left(), y, change_question(), SECOND_BODY, weight=FIRST)
    y += line_height(SECOND_BODY) + 1.2 * MM
    pitch = area.width() / len(CHANGES)
    side = 4.4 * MM
    for number, change in enumerate(CHANGES):
        x = area.left() + number * pitch
        ticked = change == filled.change_first
        page.put(QRectF(x, y, side, side), paint_box, BoxView(MEDIUM_PEN, ticked=ticked))
        text = change_title(change)
        room = pitch - side - 3 * MM
        size = fitting_size(text, (SECOND_BODY, 10 * PT, NOTE, 8 * PT), room, SECOND)
        put_line(page, x + side + 1.8 * MM, y + (side - line_height(size)) / 2, text, size)


def _more(data: CardData, paper: Paper, index: int, lines: list[tuple[Run, ...]]) -> list[Page]:
    """Further pages for a long answer."""
    pages: list[Page] = []
    while lines:
        page = Page(paper)
        title = words.continued(words.worksheet_title(data.study))
        y = put_head(page, title, [sheet_title(index)]) + 2.0 * MM
        room = paper.inside.bottom() - FOOT - 3.0 * MM - y
        count = int(room / WRITING)
        rect = QRectF(paper.inside.left(), y, paper.inside.width(), count * WRITING)
        _put_answer(page, rect, lines[:count])
        lines = lines[count:]
        pages.append(page)
    return pages

"""The findings page: both sheets beside the photo, what was measured, own scores, the remark.

What was measured of a sheet stays closed until the student's own scores are in, unless the
teacher shows it. One page for most; long findings and a long remark go on to another.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from app.canvas.images import Pyramid, image_of
from app.cards.dates import date_text
from app.cards.figures import printable
from app.cards.findings_rows import (
    MEASURES,
    Measure,
    band_rows,
    put_band_row,
    row_height,
    table_shape,
)
from app.cards.flow import Flow
from app.cards.page import Page
from app.cards.paper import MM, PT, Paper
from app.cards.write import (
    BODY,
    GREY,
    NOTE,
    SECOND_BODY,
    THICK,
    THIN,
    as_runs,
    paragraph_height,
    put_head,
    put_heading,
    put_line,
    put_paragraph,
    put_rule,
)
from app.look.icons import paint_icon
from app.look.type import CHOSEN, FIRST
from app.paint.card_marks import RULE, WritingView, paint_writing
from app.paint.card_text import broken, line_height
from app.paint.ink import BLACK
from app.paint.sheet_board import paint_board
from app.paint.sheet_shape import BoardView, PictureOnBoard, board_shape
from app.sheets.views import aspect_of, sheet_on_board, sky_on_board
from core.cards import words
from core.cards.data import CardData
from core.sheet.result import Finding
from core.views import values_view
from core.worksheet import QUALITIES
from core.worksheet_compare import shown_score
from core.worksheet_words import change_reminder, quality_title, sheet_title, waiting_sentence

BOARD_TEXT: Final = 8 * PT
"""Size of the words between the pictures."""

ICON: Final = 4.0 * MM
WRITING: Final = 8.0 * MM
HEADING: Final = 12 * PT
LARGE: Final = 55.0 * MM
MOST_BOARD: Final = 50.0 * MM
_PIXELS_PER_UNIT: Final = 300 / 720

_ICONS: Final = {"praise": "check", "step": "arrow_right", "note": "info"}


def lay_out_findings(data: CardData, paper: Paper, *, bw: bool = False) -> tuple[Page, ...]:
    """The findings page.

    Parameters
    ----------
    data : CardData
        With the photo, its readings, and a check for every sheet.
    paper : Paper
    bw : bool
        Without swatches, pictures in their values.
    """
    if data.photo is None or data.study.bands is None:
        raise ValueError("a findings page needs a photo with bands")
    tries = []
    for measure in MEASURES:
        flow = Flow(paper, lambda page, number: _put_title(page, data, number))
        _put_board(flow, data, measure, bw=bw)
        _put_table(flow, data, measure, bw=bw)
        _put_findings(flow, data, measure)
        _put_scores(flow, data, measure)
        _put_remark(flow, data)
        if len(flow.pages) == 1:
            return flow.end()
        tries.append(flow)
    return tries[0].end()


def _put_title(page: Page, data: CardData, number: int) -> float:
    sheet = data.study.worksheet
    info = [words.student_text(sheet.student_code)] if sheet.student_code else []
    info += [words.class_text(sheet.class_code)] if sheet.class_code else []
    info += [date_text(data.date)] if data.date else []
    title = words.findings_title(data.study)
    if number:
        return put_head(page, words.continued(title), ()) + 3.0 * MM
    return put_head(page, title, info) + 3.0 * MM


# Pictures


def _put_board(flow: Flow, data: CardData, measure: Measure, *, bw: bool) -> None:
    bands = data.study.bands
    assert data.photo is not None
    assert bands is not None
    page, area = flow.page, flow.page.paper.inside
    count = 2 if data.checks[1] is None else 3
    check = next((one for one in data.checks if one is not None), None)
    height, width = data.photo.shape[:2]
    sky_aspect = width / max(bands.horizon * height, 1.0)
    aspect = aspect_of(check, sky_aspect)
    top = flow.y + line_height(BODY) + 0.8 * MM
    shape = board_shape(
        QRectF(area.left(), top, area.width(), MOST_BOARD), aspect, BOARD_TEXT, count
    )
    board = QRectF(area.left(), top, area.width(), shape.pictures[0].height())
    sky = _picture(data.photo, shape.pictures[0].width(), bw=bw)
    sheets = tuple(
        _sheet_picture(data, index, shape.pictures[0].width(), bw=bw) for index in range(count - 1)
    )
    view = BoardView(
        sky_on_board(sky, sky_aspect, bands.horizon, aspect),
        sheets,
        bands.letters,
        tuple(line / bands.horizon for line in bands.lines),
        aspect,
        BOARD_TEXT,
        ratio=_PIXELS_PER_UNIT,
    )
    page.put(board, paint_board, view)
    _put_picture_heads(page, data, [rect.left() for rect in shape.pictures], flow.y)
    flow.y = board.bottom() + measure.gap


def _put_picture_heads(page: Page, data: CardData, lefts: list[float], y: float) -> None:
    put_line(page, lefts[0], y, words.photo_word(), BODY, weight=FIRST)
    for index, left in enumerate(lefts[1:]):
        title = put_line(page, left, y, sheet_title(index), BODY, weight=FIRST)
        date = data.study.worksheet.pages[index].date
        if date:
            drop = 0.5 * (line_height(BODY) - line_height(NOTE)) + 0.36 * (BODY - NOTE)
            x = title.right() + 3 * MM
            put_line(page, x, y + drop, date_text(date), NOTE, colour=GREY)


def _sheet_picture(data: CardData, index: int, width: float, *, bw: bool) -> PictureOnBoard:
    check, bands = data.checks[index], data.study.bands
    if check is None or bands is None:
        return PictureOnBoard()
    picture = _picture(check.picture, width, bw=bw)
    shown = sheet_on_board(check, picture, measured=data.is_open(index), lines=len(bands.lines))
    # Tags would cover so small a picture; the sentences tell of all.
    return replace(shown, marks=shown.marks[: 3 if width > LARGE else 0])


def _picture(pixels: object, width: float, *, bw: bool) -> Pyramid:
    image = image_of(values_view(pixels) if bw else pixels)
    return Pyramid((printable(image, width),))


# The table


def _put_table(flow: Flow, data: CardData, measure: Measure, *, bw: bool) -> None:
    shape = table_shape(flow.page.paper.inside)
    rows = band_rows(data, bw=bw)
    flow.need(HEADS + row_height(rows[0], shape, measure))
    flow.y = _put_table_heads(flow.page, data, flow.y)
    for number, row in enumerate(rows):
        height = row_height(row, shape, measure)
        if height > flow.room:
            flow.next_page()
            flow.y = _put_table_heads(flow.page, data, flow.y)
        elif number:
            area = flow.page.paper.inside
            put_rule(flow.page, area.left(), flow.y, area.width(), THIN, RULE)
        put_band_row(flow.page, row, shape, measure, flow.y, height)
        flow.y += height
    area = flow.page.paper.inside
    put_rule(flow.page, area.left(), flow.y, area.width(), THICK)
    flow.y += measure.gap


HEADS: Final = 1.22 * NOTE + 1.0 * MM


def _put_table_heads(page: Page, data: CardData, y: float) -> float:
    area = page.paper.inside
    shape = table_shape(area)
    put_line(page, shape.lefts[0], y, words.photo_word(), NOTE, colour=GREY)
    for index, check in enumerate(data.checks):
        if check is not None:
            left = shape.lefts[index + 1]
            put_line(page, left, y, sheet_title(index), NOTE, colour=GREY)
    y += HEADS
    put_rule(page, area.left(), y, area.width(), THICK)
    return y


# Findings


def _put_findings(flow: Flow, data: CardData, measure: Measure) -> None:
    """Each sheet's sentences, in the sheet's own half of the page."""
    area = flow.page.paper.inside
    half = (area.width() - 6 * MM) / 2
    items = [_sentences(data, index) for index in range(2)]
    heights = [_list_height(item, half, measure.size) for item in items]
    flow.need(line_height(HEADING) + 1.0 * MM + max(heights))
    top = flow.y
    for index, item in enumerate(items):
        x = area.left() + index * (half + 6 * MM)
        y = top + put_heading(flow.page, x, top, sheet_title(index), HEADING)
        _put_list(flow.page, x, y, half, item, measure.size)
    flow.y = top + line_height(HEADING) + 1.0 * MM + max(heights) + measure.gap


def _sentences(data: CardData, index: int) -> list[tuple[str, str]]:
    """Icon and text."""
    check = data.checks[index]
    if check is None:
        return [("minus", words.no_sheet_text())]
    if not data.is_open(index):
        missing = data.study.worksheet.pages[index].scores.missing
        return [("lock", f"{words.waits_text()} {waiting_sentence(missing, True)}")]
    return [_item(finding) for finding in check.findings]


def _item(finding: Finding) -> tuple[str, str]:
    return _ICONS[finding.kind], finding.text


def _list_height(items: list[tuple[str, str]], width: float, size: float) -> float:
    room = width - ICON - 2 * MM
    return sum(paragraph_height(text, size, room) + 1.2 * MM for _, text in items)


def _put_list(
    page: Page, x: float, y: float, width: float, items: list[tuple[str, str]], size: float
) -> None:
    for icon, text in items:
        spot = QRectF(x, y + 0.5 * (line_height(size) - ICON), ICON, ICON)
        page.put(spot, _paint_sign, icon)
        left = x + ICON + 2 * MM
        y += put_paragraph(page, left, y, width - ICON - 2 * MM, text, size) + 1.2 * MM


def _paint_sign(painter: QPainter, rect: QRectF, icon: str) -> None:
    paint_icon(painter, rect, icon, BLACK)


# Scores and change


def _put_scores(flow: Flow, data: CardData, measure: Measure) -> None:
    area = flow.page.paper.inside
    half = (area.width() - 6 * MM) / 2
    change = _change_items(data)
    table = line_height(HEADING) + 1.0 * MM + 2 * line_height(NOTE) + 4 * 5.4 * MM
    note = paragraph_height(words.scores_note(), NOTE, half)
    list_height = line_height(HEADING) + 1.0 * MM + _list_height(change, half, measure.size)
    height = max(table + note + 1.0 * MM, list_height)
    flow.need(height)
    page, top = flow.page, flow.y
    y = _put_score_table(page, data, area.left(), top, half, measure.size)
    put_paragraph(page, area.left(), y, half, words.scores_note(), NOTE, colour=GREY)
    x = area.left() + half + 6 * MM
    y = top + put_heading(page, x, top, words.change_heading(), HEADING)
    _put_list(page, x, y, half, change, measure.size)
    flow.y = top + height + measure.gap


def _put_score_table(
    page: Page, data: CardData, x: float, y: float, width: float, size: float
) -> float:
    y += put_heading(page, x, y, words.scores_heading(), HEADING)
    first, pitch = x + 0.44 * width, 0.16 * width
    # Right ends of four columns: own and measured of each sheet.
    ends = [first, first + 1.1 * pitch, first + 2.35 * pitch, first + 3.45 * pitch]
    for index in range(2):
        own, measured = ends[2 * index], ends[2 * index + 1]
        put_line(page, measured, y, sheet_title(index), NOTE, align=1.0, weight=FIRST)
        low = y + line_height(NOTE)
        put_line(page, own, low, words.own_word(), NOTE, align=1.0, colour=GREY)
        put_line(page, measured, low, words.measured_word(), NOTE, align=1.0, colour=GREY)
    y += 2 * line_height(NOTE) + 0.3 * MM
    for quality in QUALITIES:
        put_rule(page, x, y, width, THIN, RULE)
        row = y + 0.5 * (5.4 * MM - line_height(size))
        put_line(page, x, row, quality_title(quality), size)
        for index in range(2):
            own = data.study.worksheet.pages[index].scores.of(quality)
            check = data.checks[index]
            measured = None
            if check is not None and data.is_open(index):
                measured = shown_score(getattr(check.scores, quality))
            for end, score, weight in (
                (ends[2 * index], own, CHOSEN),
                (ends[2 * index + 1], measured, FIRST),
            ):
                text = "–" if score is None else str(score)
                put_line(page, end, row, text, size, weight=weight, align=1.0)
        y += 5.4 * MM
    put_rule(page, x, y, width, THIN, RULE)
    return y + 0.7 * MM


def _change_items(data: CardData) -> list[tuple[str, str]]:
    if data.checks[0] is None or data.checks[1] is None:
        return [("minus", words.next_change_text())]
    if data.change is None or not (data.is_open(0) and data.is_open(1)):
        return [("lock", words.waits_text())]
    items = [_item(finding) for finding in data.change.findings]
    if data.change.intended is None:
        items.insert(0, ("minus", change_reminder(None)))
    return items


# The remark


def _put_remark(flow: Flow, data: CardData) -> None:
    """The teacher's remark, or lines to write it on."""
    area = flow.page.paper.inside
    heading = line_height(HEADING) + 1.0 * MM
    remark = data.study.worksheet.remark.strip()
    if not remark:
        flow.need(heading + 2 * WRITING)
        flow.y += put_heading(flow.page, area.left(), flow.y, words.remark_heading(), HEADING)
        count = min(int((flow.room + 2 * MM) / WRITING), 6)
        rect = QRectF(area.left(), flow.y - 2 * MM, area.width(), count * WRITING)
        flow.page.put(rect, paint_writing, WritingView(WRITING, THIN), layer="ground")
        return
    lines = broken(as_runs(remark), SECOND_BODY, area.width())
    flow.need(heading + min(len(lines), 3) * line_height(SECOND_BODY))
    flow.y += put_heading(flow.page, area.left(), flow.y, words.remark_heading(), HEADING)
    for line in lines:
        flow.need(line_height(SECOND_BODY))
        put_line(flow.page, area.left(), flow.y, line, SECOND_BODY)
        flow.y += line_height(SECOND_BODY)

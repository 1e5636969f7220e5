"""The findings page: both sheets beside the photo, what was measured, own scores, the remark.

What was measured of a sheet stays closed until the student's own scores are in, unless the
teacher shows it. One page for most; long findings and a long remark go on to another.
"""

from __future__ import annotations

from dataclasses import replace
from typing import Final

import numpy as np
from numpy.typing import NDArray
from PySide6.QtCore import QRectF

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
from app.cards.findings_words import put_findings, put_remark, put_scores
from app.cards.flow import Flow
from app.cards.page import Page
from app.cards.paper import MM, PT, Paper
from app.cards.write import (
    BODY,
    GREY,
    NOTE,
    THICK,
    THIN,
    put_head,
    put_line,
    put_rule,
)
from app.drawing.cards.marks import RULE, BoxView, paint_box
from app.drawing.cards.text import line_height
from app.drawing.pyramid import Pyramid, image_of
from app.drawing.sheets.board import paint_board
from app.drawing.sheets.shape import BoardView, PictureOnBoard, board_shape
from app.drawing.sheets.views import aspect_of, sheet_on_board, sky_on_board
from app.look.type import FIRST
from core.cards import words
from core.cards.data import CardData
from core.photo.views import values_view
from core.worksheet.words import sheet_title

BOARD_TEXT: Final = 8 * PT
"""Size of the words between the pictures."""

LARGE: Final = 55.0 * MM
MOST_BOARD: Final = 50.0 * MM
_PIXELS_PER_UNIT: Final = 300 / 720


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
        put_findings(flow, data, measure)
        put_scores(flow, data, measure)
        put_remark(flow, data)
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
    for rect, shown in zip(shape.pictures, (view.sky, *sheets), strict=False):
        if shown.picture is not None:  # a pale sky must not end in the white of the card
            page.put(rect, paint_box, BoxView(0.4 * PT), layer="ground")
    _put_picture_heads(page, data, [rect.left() for rect in shape.pictures], flow.y)
    flow.y = board.bottom() + measure.gap


def _put_picture_heads(page: Page, data: CardData, lefts: list[float], y: float) -> None:
    put_line(page, lefts[0], y, words.label("photo"), BODY, weight=FIRST)
    for index, left in enumerate(lefts[1:]):
        title = put_line(page, left, y, sheet_title(index), BODY, weight=FIRST)
        date, check = data.study.worksheet.pages[index].date, data.checks[index]
        told = [date_text(date)] if date else []
        if check is not None and check.provisional and data.shows(index):
            told.append(words.label("provisional"))
        if told:
            drop = 0.5 * (line_height(BODY) - line_height(NOTE)) + 0.36 * (BODY - NOTE)
            x = title.right() + 3 * MM
            put_line(page, x, y + drop, ", ".join(told), NOTE, colour=GREY)


def _sheet_picture(data: CardData, index: int, width: float, *, bw: bool) -> PictureOnBoard:
    check, bands = data.checks[index], data.study.bands
    if check is None or bands is None:
        return PictureOnBoard()
    picture = _picture(check.picture, width, bw=bw)
    shown = sheet_on_board(check, picture, measured=data.shows(index), lines=len(bands.lines))
    # Tags would cover so small a picture; the sentences tell of all.
    return replace(shown, marks=shown.marks[: 3 if width > LARGE else 0])


def _picture(pixels: NDArray[np.uint8], width: float, *, bw: bool) -> Pyramid:
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
    put_line(page, shape.lefts[0], y, words.label("photo"), NOTE, colour=GREY)
    for index, check in enumerate(data.checks):
        if check is not None:
            left = shape.lefts[index + 1]
            put_line(page, left, y, sheet_title(index), NOTE, colour=GREY)
    y += HEADS
    put_rule(page, area.left(), y, area.width(), THICK)
    return y

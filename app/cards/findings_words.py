"""The findings page's words: sentences for each sheet, scores, the change, the remark."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRectF
from PySide6.QtGui import QPainter

from app.cards.findings_rows import Measure
from app.cards.flow import Flow
from app.cards.page import Page
from app.cards.paper import MM, PT
from app.cards.write import (
    GREY,
    NOTE,
    SECOND_BODY,
    THIN,
    as_runs,
    paragraph_height,
    put_heading,
    put_line,
    put_paragraph,
    put_rule,
)
from app.drawing.cards.marks import RULE, WritingView, paint_writing
from app.drawing.cards.text import broken, line_height
from app.drawing.ink import BLACK
from app.look.icons import paint_icon
from app.look.type import CHOSEN, FIRST
from core.cards import words
from core.cards.data import CardData
from core.sheet.result import Finding
from core.worksheet.compare import shown_score
from core.worksheet.words import change_reminder, quality_title, sheet_title, waiting_sentence
from core.worksheet.worksheet import QUALITIES

ICON: Final = 4.0 * MM
WRITING: Final = 8.0 * MM
HEADING: Final = 12 * PT

_ICONS: Final = {"praise": "check", "step": "arrow_right", "note": "info"}


def put_findings(flow: Flow, data: CardData, measure: Measure) -> None:
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
        return [("minus", words.label("no sheet"))]
    if not data.is_open(index):
        missing = data.study.worksheet.pages[index].scores.missing
        return [("lock", f"{words.label('waits')} {waiting_sentence(missing, True)}")]
    if not check.readable:
        return [("info", words.label("unreadable"))]
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


def put_scores(flow: Flow, data: CardData, measure: Measure) -> None:
    area = flow.page.paper.inside
    half = (area.width() - 6 * MM) / 2
    change = _change_items(data)
    table = line_height(HEADING) + 1.0 * MM + 2 * line_height(NOTE) + 4 * 5.4 * MM
    note = paragraph_height(words.label("second opinion"), NOTE, half)
    list_height = line_height(HEADING) + 1.0 * MM + _list_height(change, half, measure.size)
    height = max(table + note + 1.0 * MM, list_height)
    flow.need(height)
    page, top = flow.page, flow.y
    y = _put_score_table(page, data, area.left(), top, half, measure.size)
    put_paragraph(page, area.left(), y, half, words.label("second opinion"), NOTE, colour=GREY)
    x = area.left() + half + 6 * MM
    y = top + put_heading(page, x, top, words.label("change"), HEADING)
    _put_list(page, x, y, half, change, measure.size)
    flow.y = top + height + measure.gap


def _put_score_table(
    page: Page, data: CardData, x: float, y: float, width: float, size: float
) -> float:
    y += put_heading(page, x, y, words.label("scores"), HEADING)
    first, pitch = x + 0.44 * width, 0.16 * width
    # Right ends of four columns: own and measured of each sheet.
    ends = [first, first + 1.1 * pitch, first + 2.35 * pitch, first + 3.45 * pitch]
    for index in range(2):
        left, right = ends[2 * index], ends[2 * index + 1]
        put_line(page, right, y, sheet_title(index), NOTE, align=1.0, weight=FIRST)
        low = y + line_height(NOTE)
        put_line(page, left, low, words.label("own"), NOTE, align=1.0, colour=GREY)
        put_line(page, right, low, words.label("measured"), NOTE, align=1.0, colour=GREY)
    y += 2 * line_height(NOTE) + 0.3 * MM
    for quality in QUALITIES:
        put_rule(page, x, y, width, THIN, RULE)
        row = y + 0.5 * (5.4 * MM - line_height(size))
        put_line(page, x, row, quality_title(quality), size)
        for index in range(2):
            own = data.study.worksheet.pages[index].scores.of(quality)
            check = data.checks[index]
            measured = None
            if check is not None and data.shows(index):
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
        return [("minus", words.label("next change"))]
    if not (data.is_open(0) and data.is_open(1)):
        return [("lock", words.label("waits"))]
    if data.change is None:
        return [("info", words.label("no change yet"))]
    items = [_item(finding) for finding in data.change.findings]
    if data.change.intended is None:
        items.insert(0, ("minus", change_reminder(None)))
    return items


# The remark


def put_remark(flow: Flow, data: CardData) -> None:
    """The teacher's remark, or lines to write it on."""
    area = flow.page.paper.inside
    heading = line_height(HEADING) + 1.0 * MM
    remark = data.study.worksheet.remark.strip()
    if not remark:
        flow.need(heading + 2 * WRITING)
        flow.y += put_heading(flow.page, area.left(), flow.y, words.label("remark"), HEADING)
        count = min(int((flow.room + 2 * MM) / WRITING), 6)
        rect = QRectF(area.left(), flow.y - 2 * MM, area.width(), count * WRITING)
        flow.page.put(rect, paint_writing, WritingView(WRITING, THIN), layer="ground")
        return
    lines = broken(as_runs(remark), SECOND_BODY, area.width())
    flow.need(heading + min(len(lines), 3) * line_height(SECOND_BODY))
    flow.y += put_heading(flow.page, area.left(), flow.y, words.label("remark"), HEADING)
    for line in lines:
        flow.need(line_height(SECOND_BODY))
        put_line(flow.page, area.left(), flow.y, line, SECOND_BODY)
        flow.y += line_height(SECOND_BODY)

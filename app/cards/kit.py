"""The kit list: what to lay out for so many students, one page, each thing with a box to tick."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF

from app.cards.dates import date_text
from app.cards.foot import FOOT, put_foot
from app.cards.page import Page
from app.cards.paper import MM, PT, Paper
from app.cards.write import (
    GREY,
    MEDIUM_PEN,
    NOTE,
    SECOND_BODY,
    THIN,
    paragraph_height,
    put_head,
    put_line,
    put_paragraph,
    put_rule,
)
from app.drawing.cards.marks import RULE, BoxView, StrokeView, paint_box, paint_caution
from app.drawing.cards.text import line_height
from app.drawing.ink import BLACK
from app.drawing.marks import ChipView, paint_chip
from app.look.type import CHOSEN, FIRST
from core.cards import words
from core.cards.data import CardData
from core.paint.kit import kit_for
from core.paint.mixture.swatch import paint_colour
from core.paint.planned import MixPlan

TICK: Final = 3.8 * MM
ITEM: Final = 7.5 * MM
CHIP: Final = 9.0 * MM
EACH: Final = 34.0 * MM
"""From the right edge to the right end of the middle column."""
AMOUNTS: Final = 66.0 * MM
"""What the two columns of amounts take."""


@dataclass(frozen=True)
class Fill:
    """How full the page is.

    Attributes
    ----------
    item, note, heading : float
        Sizes of letters.
    row, group : float
        Space after a line, and before a heading.
    """

    item: float
    note: float
    heading: float
    row: float
    group: float


FILLS: Final = (
    Fill(SECOND_BODY, NOTE, 13 * PT, 1.5 * MM, 3.4 * MM),
    Fill(SECOND_BODY, NOTE, 13 * PT, 0.8 * MM, 2.2 * MM),
    Fill(10 * PT, NOTE, 12 * PT, 0.5 * MM, 1.6 * MM),
    Fill(9.5 * PT, 8.5 * PT, 11 * PT, 0.2 * MM, 1.0 * MM),
    Fill(9 * PT, 8 * PT, 10 * PT, 0.0, 0.5 * MM),
)
"""From the loosest to the tightest; the page takes the first that fits."""


def lay_out_kit(
    data: CardData, students: int, paper: Paper, *, bw: bool = False
) -> tuple[Page, ...]:
    """The kit list.

    Parameters
    ----------
    data : CardData
        With a plan.
    students : int
    paper : Paper
    bw : bool
        Without swatches: paints by name alone.

    Returns
    -------
    tuple of Page
        One.
    """
    if data.plan is None:
        raise ValueError("a kit list needs a plan")
    kit = kit_for(data.plan, students)
    groups = words.kit_groups(kit, data.plan, data.wording.units)
    page, area = Page(paper), paper.inside
    code = data.study.worksheet.class_code
    info = [words.class_text(code)] if code else []
    info += [date_text(data.date)] if data.date else []
    top = put_head(page, words.kit_title(data.study), info) + 2.5 * MM
    room = area.bottom() - FOOT - 1 * MM - top
    fill = next((fill for fill in FILLS if _height(groups, fill, paper) <= room), FILLS[-1])
    each, whole = words.kit_heads(kit)
    put_line(page, area.left(), top, words.kit_intro(kit), fill.item)
    put_line(page, area.right() - EACH, top, each, fill.note, align=1.0, colour=GREY)
    put_line(page, area.right(), top, whole, fill.note, align=1.0, colour=GREY)
    y = top + line_height(fill.item)
    for group in groups:
        y = _put_group(page, group, data.plan, fill, y, bw=bw)
    put_foot(page)
    return (page,)


def _put_group(
    page: Page, group: words.KitGroup, plan: MixPlan, fill: Fill, y: float, *, bw: bool
) -> float:
    area = page.paper.inside
    y += fill.group
    put_line(page, area.left(), y, group.heading, fill.heading, weight=FIRST)
    y += line_height(fill.heading)
    put_rule(page, area.left(), y, area.width(), MEDIUM_PEN)
    y += 1.0 * MM
    for number, line in enumerate(group.lines):
        if number:
            put_rule(page, area.left() + ITEM, y - fill.row / 2, area.width() - ITEM, THIN, RULE)
        y = _put_item(page, line, plan, fill, y, bw=bw)
    left = area.left() + ITEM
    if group.caution:
        sign = QRectF(area.left(), y - 0.2 * MM, 4.2 * MM, 4.2 * MM)
        page.put(sign, paint_caution, StrokeView(0.35 * MM))
    for note in group.notes:
        colour = GREY if group.lines else BLACK
        y += put_paragraph(page, left, y, area.right() - left, note, fill.note, colour=colour)
    return y


def _put_item(
    page: Page, line: words.KitLine, plan: MixPlan, fill: Fill, y: float, *, bw: bool
) -> float:
    area = page.paper.inside
    height = line_height(fill.item)
    page.put(QRectF(area.left(), y + (height - TICK) / 2, TICK, TICK), paint_box, BoxView(THIN))
    x = area.left() + ITEM
    if line.paint and not bw:
        chip = QRectF(x, y + 0.12 * height, CHIP - 2 * MM, 0.76 * height)
        page.put(chip, paint_chip, ChipView(paint_colour(plan.box.paint(line.paint))))
        x += CHIP
    put_line(page, area.right() - EACH, y, line.each, fill.item, align=1.0)
    put_line(page, area.right(), y, line.whole, fill.item, align=1.0, weight=CHOSEN)
    room = area.right() - AMOUNTS - x
    y += put_paragraph(page, x, y, room, line.item, fill.item)
    if line.note:
        y += put_paragraph(page, x, y, room, line.note, fill.note, colour=GREY)
    return y + fill.row


def _height(groups: tuple[words.KitGroup, ...], fill: Fill, paper: Paper) -> float:
    """What the list takes from the top down."""
    area = paper.inside
    height = line_height(fill.item)
    for group in groups:
        height += fill.group + line_height(fill.heading) + 1.0 * MM
        for line in group.lines:
            room = area.width() - AMOUNTS - ITEM - (CHIP if line.paint else 0.0)
            height += paragraph_height(line.item, fill.item, room) + fill.row
            if line.note:
                height += paragraph_height(line.note, fill.note, room)
        for note in group.notes:
            height += paragraph_height(note, fill.note, area.width() - ITEM)
    return height

"""The lower part of the plan card: the order of work with boxes to tick, and cautions."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF

from app.cards.page import Page
from app.cards.paper import MM, PT
from app.cards.write import MEDIUM_PEN, NOTE, put_heading, put_line, put_paragraph
from app.drawing.cards.marks import BoxView, StrokeView, paint_box, paint_caution
from app.drawing.cards.text import LEADING, Run, broken, line_height
from app.drawing.ink import BLACK
from app.look.type import CHOSEN, SECOND
from core.cards import words
from core.paint.planned import MixPlan
from core.reading.units import Units

TICK: Final = 3.8 * MM
INDENT: Final = 12.0 * MM
HEADING: Final = 13 * PT


@dataclass(frozen=True)
class Work:
    """The steps, what holds for all parts, and cautions, broken to the page's width.

    Attributes
    ----------
    steps, notes, cautions : tuple of str
    width : float
    size : float
        Of the steps.
    gap : float
        Between two steps.
    """

    steps: tuple[str, ...]
    notes: tuple[str, ...]
    cautions: tuple[str, ...]
    width: float
    size: float
    gap: float


def work_of(plan: MixPlan, units: Units, width: float, size: float, gap: float) -> Work:
    """What the plan says of the work."""
    return Work(
        words.order_lines(plan.order, plan.sheet, units),
        words.measure_lines(plan),
        words.caution_lines(plan.box, plan.cautions),
        width,
        size,
        gap,
    )


def work_height(work: Work) -> float:
    """Height of all of it."""
    steps = sum(_lines(text, work.size, work.width) for text in work.steps)
    height = line_height(HEADING) + 1.0 * MM
    height += steps * LEADING * work.size + len(work.steps) * work.gap
    if work.notes:
        notes = sum(_lines(text, NOTE, work.width) for text in work.notes)
        height += 1.5 * MM + notes * LEADING * NOTE
    if work.cautions:
        cautions = sum(_lines(text, NOTE, work.width) for text in work.cautions)
        height += 1.5 * MM + cautions * LEADING * NOTE
    return height


def put_work(page: Page, work: Work, y: float) -> float:
    """Draw it from `y` down; gives the lower end."""
    left = page.paper.inside.left()
    y += put_heading(page, left, y, words.label("order"), HEADING)
    for number, text in enumerate(work.steps, start=1):
        line = line_height(work.size)
        page.put(QRectF(left, y + (line - TICK) / 2, TICK, TICK), paint_box, BoxView(MEDIUM_PEN))
        put_line(page, left + 9.5 * MM, y, str(number), work.size, weight=CHOSEN, align=1.0)
        y += put_paragraph(page, left + INDENT, y, work.width - INDENT, text, work.size)
        y += work.gap
    if work.notes:
        y += 1.5 * MM
        for text in work.notes:
            y += put_paragraph(page, left + INDENT, y, work.width - INDENT, text, NOTE)
    if work.cautions:
        y += 1.5 * MM
        side = 4.2 * MM
        page.put(
            QRectF(left, y - 0.2 * MM, side, side), paint_caution, StrokeView(0.35 * MM, BLACK)
        )
        for text in work.cautions:
            y += put_paragraph(page, left + INDENT, y, work.width - INDENT, text, NOTE)
    return y


def _lines(text: str, size: float, width: float) -> int:
    return len(broken([Run(text, SECOND)], size, width - INDENT))

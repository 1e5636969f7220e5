"""The foot of every card: a ruler that shows whether the page was printed at full size."""

from __future__ import annotations

from typing import Final

from PySide6.QtCore import QRectF

from app.cards.page import Page
from app.cards.paper import MM
from app.cards.write import GREY, MEDIUM_PEN, NOTE, put_line
from app.drawing.cards.marks import RulerView, paint_ruler
from app.drawing.cards.text import line_height
from core.cards import words

RULER_MM: Final = 100.0
FOOT: Final = 6.0 * MM
"""Height of the foot, within the margins."""


def put_foot(page: Page, number: int = 1, total: int = 1) -> None:
    """The ruler, what it is for, and the page's number when there are several."""
    area = page.paper.inside
    ruler = QRectF(area.left(), area.bottom() - 2.6 * MM, RULER_MM * MM, 2.6 * MM)
    page.put(ruler, paint_ruler, RulerView(10, MEDIUM_PEN))
    y = area.bottom() - line_height(NOTE)
    put_line(page, ruler.right() + 3 * MM, y, words.label("ruler"), NOTE, colour=GREY)
    if total > 1:
        text = words.page_text(number, total)
        put_line(page, area.right(), y, text, NOTE, align=1.0, colour=GREY)

"""The swatch card: rows of fields to be painted, four marks and a code to be found again by.

Everything stands where `core.swatches.layout` says, on A4 and Letter alike.
"""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QRectF

from app.cards.page import Page
from app.cards.paper import MM, PT, Paper
from app.cards.write import GREY, NOTE, elided, put_line, put_paragraph
from app.drawing.cards.code import CodeView, paint_code
from app.drawing.cards.marks import BoxView, RulerView, paint_box, paint_ruler
from app.drawing.cards.text import Run, line_width
from app.look.type import CHOSEN, FIRST
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.swatch_card import SwatchCard, SwatchRow
from core.swatches import layout
from core.swatches.asking import partner_name
from core.swatches.code import card_code_modules

OUTLINE_GREY: Final = "#999999"
_HEAD: Final = 8.5 * PT
_LABEL: Final = 10.5 * PT


def card_title(cards: Sequence[SwatchCard]) -> str:
    """For the PDF's own description, and the name of its file."""
    return translate("swatches", "Swatch card")


def lay_out_swatches(cards: Sequence[SwatchCard], box: Box, paper: Paper) -> tuple[Page, ...]:
    """One page for each card.

    Parameters
    ----------
    cards : sequence of SwatchCard
    box : Box
        Says what partners are called that are on no row.
    paper : Paper
    """
    return tuple(
        _page(card, number, len(cards), box, paper) for number, card in enumerate(cards, start=1)
    )


def _page(card: SwatchCard, number: int, of: int, box: Box, paper: Paper) -> Page:
    page = Page(paper)
    for place, (x, y) in enumerate(layout.MARKS.tolist()):
        _put_mark(page, x, y, solid=place == layout.SOLID)
    _put_code(page, card)
    x, y = (v * MM for v in layout.TITLE_AT)
    title = translate("swatches", "Swatch card")
    if of > 1:
        title = translate("swatches", "Swatch card, page {number} of {of}").format(
            number=number, of=of
        )
    put_line(page, x, y, title, 18 * PT, weight=CHOSEN)
    x, y = (v * MM for v in layout.EXPLAINED_AT)
    put_paragraph(page, x, y, 112 * MM, _how(), 9.5 * PT)
    _put_heads(page, card, box)
    for row, paint in enumerate(card.rows):
        _put_row(page, card, row, paint, box)
    _put_foot(page)
    return page


def _how() -> str:
    return translate(
        "swatches",
        "Three strokes a row, from thick on the left to water on the right, within the outlines. "
        "Mixes: as many full brush loads of each.",
    )


def _put_mark(page: Page, x: float, y: float, *, solid: bool) -> None:
    far = [max(abs(row - 3), abs(column - 3)) for row in range(7) for column in range(7)]
    black = [solid or steps != 2 for steps in far]
    rows = tuple(tuple(black[7 * row : 7 * row + 7]) for row in range(7))
    half = layout.MARK / 2
    rect = QRectF((x - half) * MM, (y - half) * MM, layout.MARK * MM, layout.MARK * MM)
    page.put(rect, paint_code, CodeView(rows))


def _put_code(page: Page, card: SwatchCard) -> None:
    modules = card_code_modules(card.code)
    x, y = layout.CODE_AT
    side = layout.CODE_SIDE * MM
    view = CodeView(tuple(tuple(bool(v) for v in row) for row in modules))
    page.put(QRectF(x * MM, y * MM, side, side), paint_code, view)
    x, y = layout.CODE_NOTE_AT
    text = translate("swatches", "Card {code}").format(code=card.code)
    put_line(page, x * MM, y * MM, text, 8 * PT, colour=GREY)


def _put_heads(page: Page, card: SwatchCard, box: Box) -> None:
    usual = _usual_partners(card)
    heads = [translate("swatches", "alone")]
    for number, key in enumerate(usual):
        text = (
            translate("swatches", "3 brush loads + 3 of {partner}")
            if number == 0
            else translate("swatches", "3 + 3 of {partner}")
        )
        heads.append(text.format(partner=partner_name(key, card, box)))
    noted = [first != head for first, head in zip(card.rows[0].partners, usual, strict=True)]
    for (left, width), text, note in zip(layout.COLUMNS, heads, (False, *noted), strict=True):
        # A word of its own above the first row's field takes the second line's place.
        most = 1 if note else 2
        if note and line_width((Run(text),), _HEAD) > width * MM:
            partner = partner_name(usual[0], card, box)
            text = translate("swatches", "3 + 3 of {partner}").format(partner=partner)
        put_paragraph(page, left * MM, layout.HEADS_Y * MM, width * MM, text, _HEAD, most=most)


def _put_row(page: Page, card: SwatchCard, row: int, paint: SwatchRow, box: Box) -> None:
    usual = _usual_partners(card)
    for field in range(3):
        x, y, w, h = layout.field_rect(row, field)
        rect = QRectF(x * MM, y * MM, w * MM, h * MM)
        page.put(rect, paint_box, BoxView(layout.OUTLINE * MM, colour=OUTLINE_GREY))
        if field and paint.partners[field - 1] != usual[field - 1]:
            partner = partner_name(paint.partners[field - 1], card, box)
            text = translate("swatches", "3 + 3 of {partner}").format(partner=partner)
            words: tuple[Run, ...] = (Run(text, FIRST),)
            if line_width(words, 7.5 * PT) > w * MM:
                words = elided(words, 7.5 * PT, w * MM)
            put_line(page, x * MM, (y - layout.NOTE_ABOVE) * MM, words, 7.5 * PT)
    top = layout.field_rect(row, 0)[1]
    label = translate("swatches", "{number} {paint}").format(number=row + 1, paint=paint.name)
    put_paragraph(
        page,
        layout.LABEL_AT * MM,
        (top + 2.0) * MM,
        layout.LABEL_WIDTH * MM,
        label,
        _LABEL,
        weight=FIRST,
        most=2,
    )


def _put_foot(page: Page) -> None:
    text = translate(
        "swatches", "Thick on the left, water on the right. Dry. By a window, lamps off."
    )
    x, y = layout.RULER_AT
    put_line(page, x * MM, layout.FOOT_Y * MM, text, 11 * PT, weight=FIRST)
    height = 2.2 * MM
    page.put(
        QRectF(x * MM, y * MM - height, layout.RULER_MM * MM, height),
        paint_ruler,
        RulerView(10, 0.6 * PT),
    )
    put_line(
        page,
        (x + layout.RULER_MM + 2) * MM,
        y * MM - 3.4 * MM,
        translate("swatches", "10 cm"),
        NOTE,
        colour=GREY,
    )


def _usual_partners(card: SwatchCard) -> tuple[str, str]:
    """The partners that stand in the heads: those of most rows; the others' are at the field."""
    first, second = ([row.partners[n] for row in reversed(card.rows)] for n in range(2))
    return max(first, key=first.count), max(second, key=second.count)

"""The plan card: what to mix for each band, where it ends, and in which order to work.

One page for up to seven bands. What yields, in this order: lines for notes, the height of photo
and wheel down to the least at which the wheel's names stay readable, what is told of wet edges,
the bars of parts, a point or two of size, and at last what the measures mean. More bands go on
to a second page.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from itertools import product
from typing import Final

from PySide6.QtCore import QRectF

from app.cards.dates import date_text
from app.cards.figures import LEAST_WHEEL, MOST_WHEEL, put_figures
from app.cards.foot import FOOT, put_foot
from app.cards.page import Page
from app.cards.paper import MM, PT, Paper
from app.cards.patterns import key_height, patterns_of, put_key
from app.cards.plan_rows import (
    BW_DENSITIES,
    DENSITIES,
    Density,
    RowView,
    columns,
    least_height,
    put_row,
)
from app.cards.plan_work import Work, put_work, work_height, work_of
from app.cards.write import (
    GREY,
    NOTE,
    SECOND_BODY,
    THICK,
    THIN,
    put_head,
    put_heading,
    put_line,
    put_rule,
)
from app.drawing.cards.marks import RULE, WritingView, paint_writing
from app.drawing.cards.text import Run, line_height, line_width
from core.cards import words
from core.cards.data import CardData
from core.colour.contrast import ink_on
from core.paint.mixture.swatch import paint_colour
from core.paint.planned import BandMix, MixPlan, PlannedMix
from core.paint.words.mix import mix_text
from core.reading.reading import BandReading
from core.reading.units import Units, length_number

HEADS: Final = 1.22 * NOTE + 1.2 * MM
MOST_ROW: Final = 26.0 * MM
WRITING: Final = 8.0 * MM
"""Room for handwriting, line to line."""

GAP: Final = 4.0 * MM


@dataclass(frozen=True)
class _Fit:
    """How a page's height is shared out."""

    density: Density
    work: Work
    figures: float
    rows: tuple[float, ...]
    key: bool = False


def lay_out_plan(data: CardData, paper: Paper, *, bw: bool = False) -> tuple[Page, ...]:
    """The plan card.

    Parameters
    ----------
    data : CardData
        With a plan.
    paper : Paper
    bw : bool
        Without swatches: hues by name, paints by pattern.

    Returns
    -------
    tuple of Page
        One, unless there are more bands than a page holds.
    """
    if data.plan is None:
        raise ValueError("a plan card needs a plan")
    rows = tuple(
        _row(data, data.plan, reading, band, number, bw=bw)
        for number, (reading, band) in enumerate(zip(data.readings, data.plan.bands, strict=True))
    )
    page = Page(paper)
    top = _put_title(page, data)
    fit = _fit(data, data.plan, rows, paper, top, bw=bw)
    if fit is None:
        return _several(data, data.plan, rows, page, top, bw=bw)
    put_figures(page, data, top, fit.figures, bw=bw)
    y = top + fit.figures + GAP
    y = _put_rows(page, rows, fit.rows, fit.density, y, units=data.wording.units, bw=bw)
    total = y
    y = _put_total(page, data.plan, y)
    if fit.key:
        area = paper.inside
        room = _beside_total(data.plan, area.width())
        y = max(y, put_key(page, data.plan, area.left(), total, room))
    y = put_work(page, fit.work, y + GAP)
    _put_notes(page, y + GAP)
    put_foot(page)
    return (page,)


def _put_title(page: Page, data: CardData) -> float:
    code = data.study.worksheet.class_code
    info = [words.class_text(code)] if code else []
    info += [date_text(data.date)] if data.date else []
    return put_head(page, words.plan_title(data.study), info) + 3.5 * MM


def _fit(
    data: CardData,
    plan: MixPlan,
    rows: tuple[RowView, ...],
    paper: Paper,
    top: float,
    *,
    bw: bool,
) -> _Fit | None:
    """Share the page out; None when even the barest rows do not fit."""
    area = paper.inside
    room = area.bottom() - FOOT - top - 3 * GAP - HEADS - 1.22 * SECOND_BODY - 1.5 * MM
    fullest = BW_DENSITIES if bw else DENSITIES
    for density, notes in (*product(fullest, [True]), *product(DENSITIES[-2:], [False])):
        # Without bars there are no patterns, and nothing for a key to say.
        keyed = _key_height(plan, area.width()) if bw and density.bar else 0.0
        work = work_of(plan, data.wording.units, area.width(), density.work_size, density.work_gap)
        work = work if notes else replace(work, notes=())
        place = columns(area, density, chips=not bw)
        width = place.text_right - place.text
        heights = [least_height(row, density, width) for row in rows]
        left = room - keyed - work_height(work) - sum(heights) - LEAST_WHEEL
        if left >= 0:
            return replace(_shared(density, work, heights, left), key=bw and density.bar)
    return None


def _beside_total(plan: MixPlan, width: float) -> float:
    """Room for the key of the patterns, beside the total."""
    return width - line_width((Run(words.amounts_text(plan)),), NOTE) - 6 * MM


def _key_height(plan: MixPlan, width: float) -> float:
    """What the key takes beyond the line of the total beside it."""
    return max(key_height(plan, _beside_total(plan, width)) - line_height(NOTE), 0.0)


def _shared(density: Density, work: Work, heights: list[float], left: float) -> _Fit:
    """Give what is left to the rows first, evenly, then to the figures."""
    more = min(0.55 * left, MOST_WHEEL - LEAST_WHEEL)
    left -= more
    rows = _levelled(heights, left)
    left -= sum(rows) - sum(heights)
    return _Fit(density, work, LEAST_WHEEL + more, rows)


def _levelled(heights: list[float], left: float) -> tuple[float, ...]:
    """Heights raised to one level, as far as `left` goes: rows that need more keep more."""
    level = min(heights)
    for step in [*sorted(heights)[1:], MOST_ROW]:
        step = min(step, MOST_ROW)
        cost = sum(max(0.0, step - max(height, level)) for height in heights)
        if cost > left:
            low = sum(height <= level + 1e-9 for height in heights)
            level += left / max(low, 1)
            break
        left -= cost
        level = max(level, step)
    return tuple(max(height, level) for height in heights)


def _several(
    data: CardData,
    plan: MixPlan,
    rows: tuple[RowView, ...],
    page: Page,
    top: float,
    *,
    bw: bool,
) -> tuple[Page, ...]:
    """More bands than one page holds: rows go on, the work comes last."""
    paper, density = page.paper, DENSITIES[3]
    area = paper.inside
    place = columns(area, density, chips=not bw)
    width = place.text_right - place.text
    put_figures(page, data, top, LEAST_WHEEL, bw=bw)
    pages, y = [page], top + LEAST_WHEEL + GAP
    waiting = [(row, least_height(row, density, width)) for row in rows]
    while waiting:
        room = area.bottom() - FOOT - y - HEADS - 2 * MM
        taken: list[tuple[RowView, float]] = []
        while waiting and sum(height for _, height in taken) + waiting[0][1] <= room:
            taken.append(waiting.pop(0))
        if taken:
            now, heights = zip(*taken, strict=True)
            y = _put_rows(pages[-1], now, heights, density, y, units=data.wording.units, bw=bw)
        if waiting:
            y = _next_page(pages, data)
    work = work_of(plan, data.wording.units, area.width(), density.work_size, density.work_gap)
    if y + work_height(work) + 3 * GAP + 1.22 * SECOND_BODY > area.bottom() - FOOT:
        y = _next_page(pages, data)
    y = _put_total(pages[-1], plan, y)
    put_work(pages[-1], work, y + GAP)
    for number, each in enumerate(pages, start=1):
        put_foot(each, number, len(pages))
    return tuple(pages)


def _next_page(pages: list[Page], data: CardData) -> float:
    page = Page(pages[0].paper)
    pages.append(page)
    return put_head(page, words.continued(words.plan_title(data.study)), []) + 3.5 * MM


def _put_rows(
    page: Page,
    rows: tuple[RowView, ...],
    heights: tuple[float, ...],
    density: Density,
    top: float,
    *,
    units: Units,
    bw: bool,
) -> float:
    """Heads, then the rows with rules between; gives the lower end."""
    area = page.paper.inside
    place = columns(area, density, chips=not bw)
    heads = words.table_heads(units)
    centred = [(place.own + place.own_width / 2, "own")]
    if not bw:
        centred += [
            (x + place.chip_width / 2, key)
            for x, key in ((place.photo, "photo"), (place.mix, "mix"))
        ]
    for x, key in centred:
        put_line(page, x, top, heads[key], NOTE, align=0.5, colour=GREY)
    put_line(page, place.text, top, heads["band"], NOTE, colour=GREY)
    put_line(page, place.down, top, heads["down"], NOTE, align=1.0, colour=GREY)
    put_line(page, place.ml, top, heads["ml"], NOTE, align=1.0, colour=GREY)
    y = top + HEADS
    put_rule(page, area.left(), y, area.width(), THICK)
    for number, (row, height) in enumerate(zip(rows, heights, strict=True)):
        if number:
            put_rule(page, area.left(), y, area.width(), THIN, RULE)
        put_row(page, row, density, place, y, height)
        y += height
    put_rule(page, area.left(), y, area.width(), THICK)
    return y + 1.5 * MM


def _put_total(page: Page, plan: MixPlan, y: float) -> float:
    area = page.paper.inside
    text = words.amounts_text(plan)
    put_line(page, area.right(), y, text, NOTE, align=1.0, colour=GREY)
    return y + line_height(NOTE)


def _put_notes(page: Page, y: float) -> None:
    """Lines to write on, where at least three fit."""
    area = page.paper.inside
    bottom = area.bottom() - FOOT - 3 * MM
    heading = line_height(13 * PT) + 1.0 * MM
    count = int((bottom - y - heading + 2 * MM) / WRITING)
    if count < 3:
        return
    y += put_heading(page, area.left(), y, words.label("notes")) - 2 * MM
    rect = QRectF(area.left(), y, area.width(), count * WRITING)
    page.put(rect, paint_writing, WritingView(WRITING, THIN), layer="ground")


def _row(
    data: CardData,
    plan: MixPlan,
    reading: BandReading,
    band: BandMix,
    number: int,
    *,
    bw: bool,
) -> RowView:
    colour, planned = reading.colour, band.classroom
    amount = plan.amounts.bands[number]
    down = length_number(amount.ends_mm, data.wording.units)
    if colour is None or planned is None:
        return RowView(reading.letter, words.label("no sky"), down_mm=down)
    hue, near = words.hue_pieces(colour, data.wording)
    row = RowView(
        letter=reading.letter,
        hue=hue,
        near=near,
        scales=words.scale_piece(colour, data.wording),
        second=words.second_piece(reading, data.wording),
        mix=mix_text(plan.box, planned),
        nearness=_nearness(data, planned, band),
        wet_edge=words.wet_edge_text(plan, number),
        down_mm=down,
        ml=f"{band.amount_ml:g}" if band.amount_ml and plan.each_ml is None else "",
        parts=tuple(_part(plan, key, count) for key, count in planned.mix.parts),
    )
    if bw:
        told = patterns_of(plan)
        return replace(row, patterns=tuple(told[key] for key, _ in planned.mix.parts))
    second = reading.second
    return replace(
        row,
        chips=(colour.hex, planned.mix.colour.hex),
        second_chip=None if second is None else (second.colour.hex, second.share),
    )


def _nearness(data: CardData, planned: PlannedMix, band: BandMix) -> str:
    """How near the mix should come, and what its scrap came to."""
    said = (words.nearness_text(planned, band), words.tried_text(data.study.scraps, band))
    return ". ".join(filter(None, said))


def _part(plan: MixPlan, key: str, count: int) -> tuple[int, str, str]:
    colour = paint_colour(plan.box.paint(key))
    return count, colour, ink_on(colour)

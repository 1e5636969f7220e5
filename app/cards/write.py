"""Puts text on a page: single lines, paragraphs, headings that fit their line."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from PySide6.QtCore import QRectF

from app.cards.page import Page
from app.cards.paper import MM, PT
from app.drawing.cards.marks import StrokeView, paint_stroke
from app.drawing.cards.text import (
    LEADING,
    LineView,
    Run,
    broken,
    letters_that_fit,
    line_height,
    line_width,
    paint_text_line,
)
from app.drawing.ink import BLACK
from app.look.type import CHOSEN, FIRST, SECOND

TITLE: Final = 20 * PT
BODY: Final = 12 * PT
SECOND_BODY: Final = 11 * PT
NOTE: Final = 9 * PT

GREY: Final = "#3d3d3d"
"""Second text, as on light paper: 10 to 1 on white."""

THIN, MEDIUM_PEN, THICK = 0.5 * PT, 0.8 * PT, 1.1 * PT

Words = str | Sequence[Run]


def as_runs(words: Words, weight: int = SECOND) -> tuple[Run, ...]:
    """Text or runs as runs."""
    return (Run(words, weight),) if isinstance(words, str) else tuple(words)


def put_line(
    page: Page,
    x: float,
    y: float,
    words: Words,
    size: float,
    *,
    weight: int = SECOND,
    align: float = 0.0,
    colour: str = BLACK,
) -> QRectF:
    """One line whose top is `y`; of its width, `x` is the share `align`.

    Returns
    -------
    QRectF
        Where it is: exactly as wide as the text.
    """
    runs = as_runs(words, weight)
    wide = line_width(runs, size)
    rect = QRectF(x - align * wide, y, wide, line_height(size))
    text = "".join(run.text for run in runs)
    if text.strip():
        page.put(rect, paint_text_line, LineView(runs, size, 0.0, colour), text=text)
    return rect


def put_paragraph(
    page: Page,
    x: float,
    y: float,
    width: float,
    words: Words,
    size: float,
    *,
    weight: int = SECOND,
    leading: float = LEADING,
    most: int | None = None,
    colour: str = BLACK,
) -> float:
    """Text broken into lines from `y` down; gives its height.

    Parameters
    ----------
    leading : float
        Distance of two lines, in sizes.
    most : int, optional
        No more lines than that; the last one then ends in an ellipsis.
    """
    lines = broken(as_runs(words, weight), size, width)
    if most is not None and len(lines) > most:
        lines = (*lines[: most - 1], elided(lines[most - 1], size, width))
    for number, line in enumerate(lines):
        top = y + number * leading * size + 0.5 * (leading - LEADING) * size
        put_line(page, x, top, line, size, colour=colour)
    return len(lines) * leading * size


def paragraph_height(words: Words, size: float, width: float, weight: int = SECOND) -> float:
    """Height `put_paragraph` will need."""
    return len(broken(as_runs(words, weight), size, width)) * line_height(size)


def elided(line: Sequence[Run], size: float, width: float) -> tuple[Run, ...]:
    """A line that ends in an ellipsis."""
    runs = list(line)
    weight = runs[-1].weight if runs else SECOND
    room = width - line_width([Run("…", weight)], size)
    kept: list[Run] = []
    for run in runs:
        fits = letters_that_fit(run.text, size, run.weight, room)
        if fits:
            kept.append(Run(run.text[:fits], run.weight))
        if fits < len(run.text):
            break
        room -= line_width([run], size)
    return (*kept, Run("…", kept[-1].weight if kept else weight))


def fitting_size(words: Words, sizes: Sequence[float], width: float, weight: int) -> float:
    """The largest of some sizes at which a line fits; the smallest when none does."""
    runs = as_runs(words, weight)
    for size in sizes:
        room = width
        for run in runs:
            if letters_that_fit(run.text, size, run.weight, room) < len(run.text):
                break
            room -= line_width([run], size)
        else:
            return size
    return sizes[-1]


def put_head(page: Page, title: str, info: Sequence[str]) -> float:
    """The title, what else belongs beside it, and a rule below; gives the lower end.

    The title shrinks, then breaks, before it is cut; the info goes below it when it must.
    """
    area = page.paper.inside
    beside = "      ".join(info)
    info_width = line_width(as_runs(beside), SECOND_BODY) if beside else 0.0
    room = area.width() - (info_width + 8 * MM if beside else 0.0)
    size = fitting_size(title, (TITLE, 18 * PT, 16 * PT), room, CHOSEN)
    below = line_width(as_runs(title, CHOSEN), size) > room
    if below:
        room = area.width()
        size = fitting_size(title, (TITLE, 18 * PT, 16 * PT, 14 * PT), room, CHOSEN)
    y = area.top()
    height = put_paragraph(page, area.left(), y, room, title, size, weight=CHOSEN, most=2)
    if beside and below:
        height += put_paragraph(
            page, area.left(), y + height + 0.5 * MM, area.width(), beside, SECOND_BODY, most=2
        )
    elif beside:
        # On the title's line of writing: capitals are centred in their line's height.
        drop = 0.5 * line_height(size) + 0.36 * size - 0.5 * line_height(SECOND_BODY)
        put_line(page, area.right(), y + drop - 0.36 * SECOND_BODY, beside, SECOND_BODY, align=1.0)
    bottom = y + height + 1.2 * MM
    put_rule(page, area.left(), bottom, area.width(), THICK)
    return bottom


def put_rule(page: Page, x: float, y: float, width: float, pen: float, colour: str = BLACK) -> None:
    """A line across; it counts as ground."""
    page.put(QRectF(x, y, width, 0.0), paint_stroke, StrokeView(pen, colour), layer="ground")


def put_heading(page: Page, x: float, y: float, text: str, size: float = 13 * PT) -> float:
    """A heading; gives its height with the space below."""
    put_line(page, x, y, text, size, weight=FIRST)
    return line_height(size) + 1.0 * MM

"""The rows of the plan card: what is said of a band, as full as the page has room for."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF

from app.cards.page import Page
from app.cards.paper import MM, PT
from app.cards.write import BODY, GREY, MEDIUM_PEN, NOTE, SECOND_BODY, put_line
from app.drawing.cards.marks import BoxView, paint_box
from app.drawing.cards.patterns import Pattern, PatternBarView, paint_pattern_bar
from app.drawing.cards.text import Run, broken, line_height, line_width
from app.drawing.ink import BLACK
from app.drawing.marks import (
    GAP,
    PART,
    BadgeView,
    ChipView,
    PartsBarView,
    paint_badge,
    paint_chip,
    paint_parts_bar,
)
from app.look.type import CHOSEN, FIRST, SECOND

PAD: Final = 1.3 * MM
BAR: Final = 4.4 * MM
BADGE: Final = 8.0 * MM
LEAST_OWN: Final = 10.0 * MM


@dataclass(frozen=True)
class RowView:
    """What is said of one band.

    Attributes
    ----------
    letter : str
    hue : str
        Hue family and class.
    near : str
        ", near violet"; empty for most.
    scales : str
        Value and intensity.
    second : str
        The second colour, of a band that holds two.
    second_chip : (str, float) or None
        Its colour and its share of the band; None on a black-and-white card.
    mix : str
        Parts and strength; empty for a band without sky.
    nearness : str
        How near the mix comes.
    wet_edge : str
        What happens where it meets the next band.
    down_mm : str
    ml : str
    chips : (str, str) or None
        Colours of the photo and of the mix; None on a black-and-white card.
    parts : tuple of (count, colour, ink)
    patterns : tuple of Pattern
        Of the parts, on a black-and-white card.
    """

    letter: str
    hue: str
    near: str = ""
    scales: str = ""
    second: str = ""
    second_chip: tuple[str, float] | None = None
    mix: str = ""
    nearness: str = ""
    wet_edge: str = ""
    down_mm: str = ""
    ml: str = ""
    chips: tuple[str, str | None] | None = None
    parts: tuple[tuple[int, str, str], ...] = ()
    patterns: tuple[Pattern, ...] = ()


@dataclass(frozen=True)
class Density:
    """How full a row is.

    Attributes
    ----------
    hue, body : float
        Sizes of the first line, and of value, intensity and mix.
    bar : bool
        The parts bar has a line of its own.
    edges : bool
        The wet edge is told.
    flowing : bool
        Value and intensity follow the hue instead of standing at the right.
    pad : float
        Above and below.
    work_gap, work_size : float
        Of the order of work below the rows.
    chip, own : float
        Widths of a swatch, and of the place for the class's own.
    """

    hue: float
    body: float
    bar: bool = True
    edges: bool = True
    flowing: bool = False
    pad: float = PAD
    work_gap: float = 1.4 * MM
    work_size: float = SECOND_BODY
    chip: float = 12.0 * MM
    own: float = 18.0 * MM


DENSITIES: Final = (
    Density(BODY, SECOND_BODY),
    Density(BODY, SECOND_BODY, edges=False),
    Density(BODY, SECOND_BODY, edges=False, pad=1.0 * MM, work_gap=0.6 * MM),
    Density(BODY, SECOND_BODY, bar=False, edges=False, work_gap=0.6 * MM),
    Density(11 * PT, 10 * PT, False, False, pad=1.0 * MM, work_gap=0.4 * MM),
    Density(11 * PT, 10 * PT, False, False, True, 0.8 * MM, 0.3 * MM, 10 * PT),
    Density(9.5 * PT, 9 * PT, False, False, True, 0.7 * MM, 0.2 * MM, 10 * PT, 9 * MM, 13 * MM),
)
"""From the fullest to the barest; the page takes the first that fits."""

BW_DENSITIES: Final = (
    *DENSITIES[:3],
    Density(11 * PT, 10 * PT, True, False, True, 0.8 * MM, 0.3 * MM, 10 * PT),
    *DENSITIES[3:],
)
"""Without swatches the bars, told by patterns, are the last to go."""


@dataclass(frozen=True)
class Columns:
    """Where the columns begin and end, in units."""

    badge: float
    photo: float
    mix: float
    own: float
    text: float
    text_right: float
    down: float
    """Right end."""
    ml: float
    """Right end."""
    chip_width: float
    own_width: float


def columns(area: QRectF, density: Density, *, chips: bool) -> Columns:
    """The columns of a page's inside."""
    photo = area.left() + BADGE + 2.5 * MM
    mix = photo + density.chip if chips else photo
    own = mix + density.chip + 3 * MM if chips else photo
    ml = area.right()
    down = ml - 11.5 * MM
    return Columns(
        badge=area.left(),
        photo=photo,
        mix=mix,
        own=own,
        text=own + density.own + 4 * MM,
        text_right=down - 14.5 * MM,
        down=down,
        ml=ml,
        chip_width=density.chip,
        own_width=density.own,
    )


@dataclass(frozen=True)
class RowLine:
    """One line of a row's text: at the left, and at the right end if anything stands there."""

    left: tuple[Run, ...]
    size: float
    right: str = ""
    bar: bool = False
    grey: bool = False

    @property
    def height(self) -> float:
        """Its height on the page."""
        return max(line_height(self.size), BAR + 0.8 * MM if self.bar else 0.0)


def row_lines(row: RowView, density: Density, width: float) -> tuple[RowLine, ...]:
    """The text of a row, broken to a width.

    Parameters
    ----------
    row : RowView
    density : Density
    width : float
        Of the text column, in units.
    """
    lines = _readout(row, density, width)
    if row.second:
        lines += [RowLine(line, NOTE) for line in broken([Run(row.second)], NOTE, width)]
    if not row.mix:
        return tuple(lines)
    lines += [RowLine(line, density.body) for line in broken([Run(row.mix)], density.body, width)]
    if density.bar and row.parts:
        bar_width = _bar_width(row.parts, width)
        lines.append(_beside_bar(row.nearness, width - bar_width - 4 * MM))
        if not lines[-1].right and row.nearness:
            lines += [RowLine(x, NOTE, grey=True) for x in broken([Run(row.nearness)], NOTE, width)]
    elif density.bar and row.nearness:
        lines += [RowLine(x, NOTE, grey=True) for x in broken([Run(row.nearness)], NOTE, width)]
    if density.edges and row.wet_edge:
        lines += [RowLine(x, NOTE, grey=True) for x in broken([Run(row.wet_edge)], NOTE, width)]
    return tuple(lines)


def _readout(row: RowView, density: Density, width: float) -> list[RowLine]:
    head = [Run(row.hue, FIRST)]
    if row.near:
        head.append(Run(row.near, SECOND))
    if not row.scales:
        return [RowLine(line, density.hue) for line in broken(head, density.hue, width)]
    if density.flowing:
        head.append(Run("; " + row.scales, SECOND))
        return [RowLine(line, density.hue) for line in broken(head, density.hue, width)]
    scales = line_width([Run(row.scales)], density.body)
    if line_width(head, density.hue) + scales + 4 * MM <= width:
        return [RowLine(tuple(head), density.hue, right=row.scales)]
    lines = [RowLine(line, density.hue) for line in broken(head, density.hue, width)]
    return [*lines, RowLine((Run(row.scales),), density.body)]


def _beside_bar(nearness: str, room: float) -> RowLine:
    fits = nearness and line_width([Run(nearness)], NOTE) <= room
    return RowLine((), NOTE, right=nearness if fits else "", bar=True)


def _bar_width(parts: Sequence[tuple[int, str, str]], most: float) -> float:
    cells = PART * sum(count for count, _, _ in parts) + GAP * (len(parts) - 1)
    return min(cells * BAR, most)


def least_height(row: RowView, density: Density, width: float) -> float:
    """The height a row needs, its padding included."""
    text = sum(line.height for line in row_lines(row, density, width))
    return max(text, LEAST_OWN) + 2 * density.pad


def put_row(
    page: Page, row: RowView, density: Density, place: Columns, top: float, height: float
) -> None:
    """Draw one band between `top` and `top + height`."""
    pad = density.pad
    middle = top + height / 2
    badge = QRectF(place.badge, middle - BADGE / 2, BADGE, BADGE)
    page.put(badge, paint_badge, BadgeView(row.letter), text=row.letter)
    inner = QRectF(0.0, top + pad, 0.0, height - 2 * pad)
    if row.chips is not None:
        photo, mix = row.chips
        chip = QRectF(place.photo, inner.top(), place.chip_width, inner.height())
        page.put(chip, paint_chip, ChipView(photo))
        if row.second_chip is not None:  # away from the mix, which is for the main colour
            other, share = row.second_chip
            part = QRectF(chip.left(), chip.top(), share * chip.width(), chip.height())
            page.put(part, paint_chip, ChipView(other))
        if mix is not None:  # touching: a difference shows as an edge
            page.put(chip.translated(place.chip_width, 0.0), paint_chip, ChipView(mix))
    side = min(place.own_width, inner.height())
    own = QRectF(place.own, inner.top(), place.own_width, side)
    own.moveTop(middle - side / 2)
    page.put(own, paint_box, BoxView(MEDIUM_PEN, dashed=True))
    _put_text(page, row, density, place, top, height)
    if row.down_mm:
        _put_number(page, row.down_mm, place.down, middle)
    if row.ml:
        _put_number(page, row.ml, place.ml, middle)


def _put_number(page: Page, text: str, right: float, middle: float) -> None:
    put_line(page, right, middle - line_height(BODY) / 2, text, BODY, weight=CHOSEN, align=1.0)


def _put_text(
    page: Page, row: RowView, density: Density, place: Columns, top: float, height: float
) -> None:
    width = place.text_right - place.text
    lines = row_lines(row, density, width)
    y = top + (height - sum(line.height for line in lines)) / 2
    for line in lines:
        if line.bar:
            bar = QRectF(
                place.text, y + 0.5 * (line.height - BAR), _bar_width(row.parts, width), BAR
            )
            if row.chips is None:
                counts = (count for count, _, _ in row.parts)
                told = tuple(zip(counts, row.patterns, strict=True))
                page.put(bar, paint_pattern_bar, PatternBarView(told))
            else:
                page.put(bar, paint_parts_bar, PartsBarView(row.parts))
        drop = 0.5 * (line.height - line_height(line.size))
        if line.left:
            put_line(page, place.text, y + drop, line.left, line.size, colour=_tone(line))
        if line.right:
            size = NOTE if line.bar else density.body
            # On the same line of writing as the larger words at the left.
            sink = 0.5 * (line_height(line.size) - line_height(size)) + 0.36 * (line.size - size)
            put_line(page, place.text_right, y + drop + sink, line.right, size, align=1.0)
        y += line.height


def _tone(line: RowLine) -> str:
    return GREY if line.grey else BLACK

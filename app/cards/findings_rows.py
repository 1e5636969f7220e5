"""The findings page's table: every band of the photo, and beside it what each sheet made of it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QRectF

from app.cards.page import Page
from app.cards.paper import MM, PT
from app.cards.write import GREY, NOTE, put_line
from app.drawing.cards.marks import BoxView, paint_box
from app.drawing.cards.text import Run, broken, line_height
from app.drawing.ink import BLACK, WHITE
from app.drawing.marks import (
    BadgeView,
    ChipView,
    VerdictView,
    paint_badge,
    paint_chip,
    paint_verdict,
)
from app.look.type import FIRST, SECOND
from core.cards import words
from core.cards.data import CardData
from core.reading.quality import Verdict
from core.sheet.result import BandCheck
from core.words.verdicts import verdict_word

BADGE: Final = 6.6 * MM
CHIP: Final = 8.0 * MM
SIGN: Final = 3.6 * MM
PHOTO_SHARE: Final = 0.28
"""The photo's column, of the page's width; the sheets share the rest."""


@dataclass(frozen=True)
class Measure:
    """How tightly the page is set.

    Attributes
    ----------
    size : float
        Of sentences and verdicts.
    pad : float
        Above and below a row.
    gap : float
        Between blocks.
    """

    size: float
    pad: float
    gap: float


MEASURES: Final = (
    Measure(10 * PT, 1.3 * MM, 5.0 * MM),
    Measure(9.5 * PT, 0.9 * MM, 3.6 * MM),
    Measure(9 * PT, 0.6 * MM, 2.8 * MM),
)
"""From the widest to the tightest; the page takes the first that is one page."""

Line = tuple[tuple[Run, ...], float, str]
"""Runs, size, colour."""


@dataclass(frozen=True, eq=False)
class CellView:
    """What stands in one sheet's column beside a band.

    Attributes
    ----------
    kind : Verdict or None
        The verdict; None for a cell without one.
    chips : (str, str) or None
        Photo and sheet; None on a black-and-white card.
    said : tuple of Run
        The verdict's word and what differs.
    readout : str
        The sheet's own colour in words.
    """

    kind: Verdict | None = None
    chips: tuple[str | None, str | None] | None = None
    said: tuple[Run, ...] = ()
    readout: str = ""


@dataclass(frozen=True, eq=False)
class BandRow:
    """A row of the table."""

    letter: str
    hue: str
    scales: str
    cells: tuple[CellView, CellView]


def band_rows(data: CardData, *, bw: bool) -> tuple[BandRow, ...]:
    """The rows of the study's bands."""
    rows = []
    for reading in data.readings:
        colour = reading.colour
        rows.append(
            BandRow(
                reading.letter,
                words.label("no sky")
                if colour is None
                else words.hue_pieces(colour, data.wording)[0],
                "" if colour is None else words.scales_short(colour, data.wording),
                (
                    _cell(data, 0, reading.letter, bw=bw),
                    _cell(data, 1, reading.letter, bw=bw),
                ),
            )
        )
    return tuple(rows)


def _cell(data: CardData, index: int, letter: str, *, bw: bool) -> CellView:
    check = data.checks[index]
    if check is None or not data.shows(index):
        return CellView()
    band: BandCheck | None = next((b for b in check.band_checks if b.letter == letter), None)
    if band is None:
        return CellView()
    said = [Run(verdict_word(band.overall), FIRST if band.overall != "cannot tell" else SECOND)]
    if band.remark and band.overall != "cannot tell":
        said.append(Run(": " + band.remark, SECOND))
    found, aim = band.sheet.colour, band.reference.colour
    return CellView(
        band.overall,
        None if bw else (aim.hex if aim else None, found.hex if found else None),
        tuple(said),
        words.sheet_readout(found, data.wording) if found else "",
    )


@dataclass(frozen=True)
class TableShape:
    """Left ends and widths of the three columns."""

    lefts: tuple[float, float, float]
    widths: tuple[float, float, float]


def table_shape(area: QRectF) -> TableShape:
    """The columns of a page's inside."""
    gap = 4.0 * MM
    photo = PHOTO_SHARE * area.width()
    sheet = (area.width() - photo - 2 * gap) / 2
    first = area.left() + photo + gap
    return TableShape((area.left(), first, first + sheet + gap), (photo, sheet, sheet))


def row_height(row: BandRow, shape: TableShape, measure: Measure) -> float:
    """The height a row needs."""
    photo = _photo_lines(row, shape.widths[0] - BADGE - 2 * MM, measure.size)
    heights = [_height(photo)]
    heights += [_height(_cell_lines(cell, shape.widths[1], measure.size)) for cell in row.cells]
    return max(*heights, BADGE) + 2 * measure.pad


def put_band_row(
    page: Page, row: BandRow, shape: TableShape, measure: Measure, top: float, height: float
) -> None:
    """Draw one band."""
    middle = top + height / 2
    left = shape.lefts[0]
    page.put(
        QRectF(left, middle - BADGE / 2, BADGE, BADGE),
        paint_badge,
        BadgeView(row.letter),
        text=row.letter,
    )
    x = left + BADGE + 2 * MM
    _put_lines(page, x, middle, _photo_lines(row, shape.widths[0] - BADGE - 2 * MM, measure.size))
    for cell, x, width in zip(row.cells, shape.lefts[1:], shape.widths[1:], strict=True):
        if cell.kind is None:
            continue
        if cell.chips is not None:
            chip = QRectF(x, top + measure.pad, CHIP, height - 2 * measure.pad)
            page.put(chip, paint_chip, ChipView(cell.chips[0]))
            page.put(chip.translated(CHIP, 0.0), paint_chip, ChipView(cell.chips[1]))
            both = chip.adjusted(0.0, 0.0, CHIP, 0.0)
            page.put(both, paint_box, BoxView(0.4 * PT), layer="ground")
            x += 2 * CHIP + 2 * MM
        lines = _cell_lines(cell, width, measure.size)
        if cell.kind != "cannot tell":
            sign = QRectF(x, middle - _height(lines) / 2, SIGN, SIGN)
            sign.moveTop(sign.top() + 0.5 * (line_height(measure.size) - SIGN))
            page.put(sign, paint_verdict, VerdictView(cell.kind, "", BLACK, WHITE))
        _put_lines(page, x + SIGN + 1.4 * MM, middle, lines)


def _photo_lines(row: BandRow, width: float, size: float) -> list[Line]:
    lines: list[Line] = [(x, size, BLACK) for x in broken([Run(row.hue, FIRST)], size, width)]
    if row.scales:
        lines += [(x, NOTE, GREY) for x in broken([Run(row.scales)], NOTE, width)]
    return lines


def _cell_lines(cell: CellView, width: float, size: float) -> list[Line]:
    room = width - SIGN - 1.4 * MM
    if cell.chips is not None:
        room -= 2 * CHIP + 2 * MM
    lines: list[Line] = []
    if cell.said:
        lines += [(x, size, BLACK) for x in broken(cell.said, size, room)]
    if cell.readout:
        lines += [(x, NOTE, GREY) for x in broken([Run(cell.readout)], NOTE, room)]
    return lines


def _height(lines: list[Line]) -> float:
    return sum(line_height(size) for _, size, _ in lines)


def _put_lines(page: Page, x: float, middle: float, lines: list[Line]) -> None:
    y = middle - _height(lines) / 2
    for runs, size, colour in lines:
        put_line(page, x, y, runs, size, colour=colour)
        y += line_height(size)

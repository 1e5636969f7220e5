"""From a sheet's check to what the board, the rows and the findings show."""

from __future__ import annotations

from typing import Final

from app.drawing.pyramid import Pyramid
from app.drawing.sheets.rows import BandRowView, Detail
from app.drawing.sheets.shape import (
    LEAST_ASPECT,
    MOST_ASPECT,
    BoardView,
    LineOnSheet,
    MarkOnSheet,
    PictureOnBoard,
)
from app.look.current import Look
from core.i18n import translate
from core.sheet.findings.words import line_remark, quality_remark
from core.sheet.result import BandCheck, LineCheck, SheetCheck
from core.words.verdicts import verdict_word

MOST_MARKS: Final = 7
"""Tags on one painting: more would cover it."""


def aspect_of(check: SheetCheck | None, sky_aspect: float) -> float:
    """Width over height the pictures are shown with: a sheet's own, else the sky's."""
    if check is not None:
        height, width = check.picture.shape[:2]
        sky_aspect = width / height
    return min(max(sky_aspect, LEAST_ASPECT), MOST_ASPECT)


def sky_on_board(
    picture: Pyramid | None, sky_aspect: float, horizon: float, aspect: float
) -> PictureOnBoard:
    """The sky of the photo, cut to a sheet's shape.

    Parameters
    ----------
    picture : Pyramid or None
        Of the whole photo.
    sky_aspect : float
        Width over height of its sky.
    horizon : float
        Where the sky ends, share of the photo's height.
    aspect : float
        The shape to cut it to. What is too wide loses at both sides; what is too narrow is
        drawn wider, since its bands must keep their heights.
    """
    share = min(1.0, aspect / sky_aspect)
    return PictureOnBoard(picture, (0.5 - share / 2, 0.0, 0.5 + share / 2, horizon))


def sheet_on_board(
    check: SheetCheck | None, picture: Pyramid | None, *, measured: bool, lines: int
) -> PictureOnBoard:
    """A sheet on the board.

    Parameters
    ----------
    measured : bool
        Whether lines and marks may be shown.
    lines : int
        How many the sky has now; a check made with another number shows none.
    """
    if check is None or picture is None:
        return PictureOnBoard()
    if not measured or len(check.lines) != lines:
        return PictureOnBoard(picture)
    return PictureOnBoard(
        picture,
        lines=tuple(_line(line) for line in check.lines),
        marks=_marks(check),
    )


def _line(line: LineCheck) -> LineOnSheet:
    if line.shift_pct is None:
        return LineOnSheet(None, line_remark(line))
    shifted = line.verdict != "matches"
    return LineOnSheet(line.at, line_remark(line) if shifted else "", shifted)


def _marks(check: SheetCheck) -> tuple[MarkOnSheet, ...]:
    marks = [
        MarkOnSheet(
            "edge",
            (max(edge.start, 0.0) + min(edge.end, 1.0)) / 2,
            edge.at,
            translate("sheets page", "hard edge"),
            start=max(edge.start, 0.0),
            end=min(edge.end, 1.0),
        )
        for edge in sorted(check.hard_edges, key=lambda edge: edge.start - edge.end)
    ]
    marks += [
        MarkOnSheet(
            "bloom", bloom.x, bloom.y, translate("sheets page", "bloom"), radius=bloom.radius
        )
        for bloom in check.blooms
    ]
    for corner in check.pale_corners:
        x = 0.0 if "left" in corner.corner else 1.0
        y = 0.0 if "top" in corner.corner else 1.0
        marks.append(MarkOnSheet("corner", x, y, translate("sheets page", "pale corner")))
    return tuple(marks[:MOST_MARKS])


def board_text(look: Look) -> float:
    """Size of the words in the gutters."""
    return look.type.grow(17 if look.type.wide else 13)


def row_sizes(look: Look) -> tuple[float, float]:
    """Sizes of a row's verdict and of its remark."""
    if look.type.wide:
        return look.type.grow(21), look.type.grow(18)
    return look.type.grow(18), look.type.grow(15)


def band_rows(
    check: SheetCheck,
    look: Look,
    chosen: int | None,
    *,
    badge_width: float | None = None,
    chip_width: float | None = None,
) -> tuple[BandRowView, ...]:
    """The rows of a sheet's bands in the look of the window."""
    text, second = row_sizes(look)
    theme = look.theme
    return tuple(
        BandRowView(
            letter=band.letter,
            photo=band.reference.colour.hex if band.reference.colour else None,
            sheet=band.sheet.colour.hex if band.sheet.colour else None,
            kind=band.overall,
            word=verdict_word(band.overall),
            remark=band.remark,
            details=details_of(band),
            spoken=spoken_of(band),
            open=number == chosen,
            text=text,
            second=second,
            ink=theme.ink,
            second_ink=theme.second,
            ground=theme.raised if number == chosen else theme.paper,
            badge_width=badge_width,
            chip_width=chip_width,
        )
        for number, band in enumerate(check.band_checks)
    )


def details_of(band: BandCheck) -> tuple[Detail, ...]:
    """Every quality of a band, in the order they are asked for."""
    return (
        Detail(band.hue, quality_remark(band, "hue")),
        Detail(band.value, quality_remark(band, "value")),
        Detail(band.intensity, quality_remark(band, "intensity")),
    )


def spoken_of(band: BandCheck) -> str:
    """A band in one sentence, for a screen reader."""
    text = translate("sheets page", "Band {letter}: {verdict}; {hue}, {value}, {intensity}.")
    word = verdict_word(band.overall)
    return text.format(
        letter=band.letter,
        verdict=word[:1].lower() + word[1:],
        hue=quality_remark(band, "hue"),
        value=quality_remark(band, "value"),
        intensity=quality_remark(band, "intensity"),
    )


def spoken_lines(check: SheetCheck) -> str:
    """Where a sheet's lines are, and its marks, for a screen reader."""
    parts = [
        translate("sheets page", "Line below {letter}: {remark}.").format(
            letter=line.letter, remark=line_remark(line)
        )
        for line in check.lines
    ]
    counts = (
        (
            len(check.hard_edges),
            translate("sheets page", "{number} hard edges."),
            translate("sheets page", "One hard edge."),
        ),
        (
            len(check.blooms),
            translate("sheets page", "{number} blooms."),
            translate("sheets page", "One bloom."),
        ),
        (
            len(check.pale_corners),
            translate("sheets page", "{number} pale corners."),
            translate("sheets page", "One pale corner."),
        ),
    )
    for count, many, one in counts:
        if count:
            parts.append(one if count == 1 else many.format(number=count))
    return " ".join(parts)


def board_view(
    sky: PictureOnBoard,
    sheets: tuple[PictureOnBoard, ...],
    letters: tuple[str, ...],
    lines: tuple[float, ...],
    aspect: float,
    look: Look,
    *,
    chosen: int | None = None,
    aimed: int | None = None,
    ratio: float = 1.0,
) -> BoardView:
    """The board in the look of the window."""
    return BoardView(sky, sheets, letters, lines, aspect, board_text(look), chosen, aimed, ratio)

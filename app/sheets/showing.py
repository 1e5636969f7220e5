"""The board of the Sheets page, out of the photo, its bands and the checks."""

from __future__ import annotations

from collections.abc import Sequence

from app.drawing.pyramid import Pyramid
from app.drawing.sheets.shape import BoardView
from app.drawing.sheets.views import aspect_of, board_view, sheet_on_board, sky_on_board
from app.look import look
from app.services.photo_jobs import OpenedPhoto
from core.bands.lines import Bands
from core.sheet.result import SheetCheck


def board_of(
    opened: OpenedPhoto,
    bands: Bands | None,
    checks: Sequence[SheetCheck | None],
    pictures: Sequence[Pyramid | None],
    shown: Sequence[bool],
) -> BoardView:
    """The sky and both sheets, nothing chosen.

    Parameters
    ----------
    bands : Bands or None
        Of the photo; None before it was read.
    shown : sequence of bool
        For each sheet, whether its lines and marks may be seen.
    """
    horizon = bands.horizon if bands else 1.0
    lines = tuple(y / horizon for y in bands.lines) if bands else ()
    letters = bands.letters if bands else ("A",)
    sky_aspect = opened.photo.width / (horizon * opened.photo.height)
    aspect = aspect_of(next((check for check in checks if check is not None), None), sky_aspect)
    sheets = tuple(
        sheet_on_board(check, picture, measured=measured, lines=len(lines))
        for check, picture, measured in zip(checks, pictures, shown, strict=True)
    )
    sky = sky_on_board(opened.picture, sky_aspect, horizon, aspect)
    return board_view(sky, sheets, letters, lines, aspect, look())

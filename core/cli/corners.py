"""Corners and turns of a sheet as they are written on the command line."""

from __future__ import annotations

from core.errors import UsageError
from core.i18n import translate
from core.sheet.options import Corners

_NEAR = (-2.0, 3.0)
"""A corner may be outside the photo by so many of its sides, as in a study."""


def corners_from(text: str, width: int, height: int) -> Corners:
    """Corners written as eight numbers, for a photo of this size in pixels.

    Raises
    ------
    UsageError
        They are no four corners near the photo.
    """
    try:
        numbers = [float(piece) for piece in text.replace(";", ",").split(",")]
    except ValueError:
        numbers = []
    sides = (width, height) * 4
    near = all(
        _NEAR[0] * side <= number <= _NEAR[1] * side
        for number, side in zip(numbers, sides, strict=False)
    )
    if len(numbers) != 8 or not near:
        raise UsageError(
            translate(
                "command line",
                "--corners {text} does not list four corners: give eight numbers with commas "
                "between, x and y in pixels from the top left corner clockwise, near the photo.",
            ).format(text=text)
        )
    a, b, c, d = ((x / width, y / height) for x, y in zip(numbers[::2], numbers[1::2], strict=True))
    return (a, b, c, d)


def turned_from(text: str) -> int:
    """Quarter turns as they are written.

    Raises
    ------
    UsageError
        Not 0 to 3.
    """
    if text not in ("0", "1", "2", "3"):
        raise UsageError(
            translate(
                "command line", "--turned {text} is not a number of quarter turns: give 0 to 3."
            ).format(text=text)
        )
    return int(text)

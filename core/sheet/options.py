"""How the picture of a sheet is to be looked at: its corners, which way up, photo or scan."""

from __future__ import annotations

from dataclasses import dataclass

Point = tuple[float, float]
Corners = tuple[Point, Point, Point, Point]
"""Top left, top right, bottom right, bottom left as they are in the photo; may be outside it."""


@dataclass(frozen=True)
class SheetOptions:
    """How a sheet is to be looked at.

    Attributes
    ----------
    corners : Corners or None
        Set by hand; None to have them found.
    turned : int
        Quarter turns clockwise that bring the sheet upright, 0..3.
    scan : bool
        The picture is a flat scan: tolerances tighten.
    aspect : float or None
        Width over height of the painted rectangle when upright, if it is known: a rectangle
        of another shape is then remarked on.
    """

    corners: Corners | None = None
    turned: int = 0
    scan: bool = False
    aspect: float | None = None

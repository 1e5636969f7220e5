"""Corners of a sheet on the screen: plain arithmetic, no Qt.

Corners are fractions of the photo as it is; on the screen the photo is turned by quarter turns
clockwise, so that the sheet stands upright.
"""

from __future__ import annotations

from dataclasses import dataclass

from core.errors import SheetError
from core.sheet.light.straighten import upright_quad
from core.sheet.result import Corners, Point

WHOLE: Corners = ((0.04, 0.04), (0.96, 0.04), (0.96, 0.96), (0.04, 0.96))
"""Where corners begin when nothing was found."""

_OUTSIDE = 0.05
"""How far outside the photo a corner may be, as a share of its sides."""


@dataclass(frozen=True)
class PhotoOnScreen:
    """A photo fitted into an area of the screen, turned.

    Attributes
    ----------
    width, height : float
        Of the photo as it is, pixels.
    turned : int
        Quarter turns clockwise.
    left, top, room_width, room_height : float
        The area.
    """

    width: float
    height: float
    turned: int
    left: float
    top: float
    room_width: float
    room_height: float

    @property
    def scale(self) -> float:
        """Screen pixels a pixel of the photo."""
        across, down = self.width, self.height
        if self.turned % 2:
            across, down = down, across
        return min(self.room_width / across, self.room_height / down)

    @property
    def middle(self) -> Point:
        """Of the photo on the screen."""
        return self.left + self.room_width / 2, self.top + self.room_height / 2

    def to_screen(self, point: Point) -> Point:
        """Where a point of the photo, in fractions, is on the screen."""
        dx = (point[0] - 0.5) * self.width * self.scale
        dy = (point[1] - 0.5) * self.height * self.scale
        for _ in range(self.turned % 4):
            dx, dy = -dy, dx
        return self.middle[0] + dx, self.middle[1] + dy

    def to_photo(self, point: Point) -> Point:
        """Which point of the photo is there: `to_screen` undone."""
        dx, dy = point[0] - self.middle[0], point[1] - self.middle[1]
        for _ in range(self.turned % 4):
            dx, dy = dy, -dx
        return dx / (self.width * self.scale) + 0.5, dy / (self.height * self.scale) + 0.5

    def stepped(self, point: Point, right: float, down: float) -> Point:
        """A point of the photo moved by pixels of the photo, as seen on the screen."""
        for _ in range(self.turned % 4):
            right, down = down, -right
        return point[0] + right / self.width, point[1] + down / self.height


def screen_order(turned: int) -> tuple[int, int, int, int]:
    """Which of the photo's corners is seen at the top left, top right, bottom right, bottom left.

    A quarter turn clockwise brings the photo's bottom left corner to the top left.
    """
    first = -turned % 4
    return first, (first + 1) % 4, (first + 2) % 4, (first + 3) % 4


def with_corner(
    corners: Corners, number: int, point: Point, width: int, height: int
) -> Corners | None:
    """The corners with one of them moved, kept near the photo.

    Returns
    -------
    Corners or None
        None where the four would not make a rectangle seen in perspective any more.
    """
    kept = (
        min(max(point[0], -_OUTSIDE), 1 + _OUTSIDE),
        min(max(point[1], -_OUTSIDE), 1 + _OUTSIDE),
    )
    first, second, third, fourth = (kept if k == number else c for k, c in enumerate(corners))
    moved: Corners = (first, second, third, fourth)
    try:
        upright_quad(moved, 0, width, height)
    except SheetError:
        return None
    return moved


def lens_place(
    corner: Point, middle: Point, radius: float, area: tuple[float, float, float, float]
) -> Point:
    """Centre of the magnifier: beside the corner, towards the sheet's middle, inside `area`.

    Parameters
    ----------
    area : (left, top, right, bottom)
    """
    away = 1.42 * radius
    x = corner[0] + (away if middle[0] >= corner[0] else -away)
    y = corner[1] + (away if middle[1] >= corner[1] else -away)
    left, top, right, bottom = area
    return (
        min(max(x, left + radius), right - radius),
        min(max(y, top + radius), bottom - radius),
    )

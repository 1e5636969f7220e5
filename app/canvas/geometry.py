"""Where photo, lines and grips are on the canvas: plain arithmetic, no Qt.

Heights of the photo are fractions, 0 top .. 1 bottom, as in `core.bands.lines`; the canvas counts
in pixels. "Edge i" is the lower edge of band i: a line, or for the last band the horizon.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, replace

MOST_ZOOM = 24.0
LEAST_HEIGHT = 0.4
"""Share of the area's height that a photo has at first, however wide it is."""
GRAB_PX = 6.0
"""A line can be grabbed this far to either side."""


@dataclass(frozen=True)
class Viewport:
    """How the photo lies in the area kept free for it.

    Attributes
    ----------
    photo_width, photo_height : float
        Any unit: only their ratio counts.
    left, top, width, height : float
        The area, in pixels of the canvas.
    zoom : float
        1 fits the photo into the area.
    centre_x, centre_y : float
        The point of the photo in the middle of the area, as fractions.
    """

    photo_width: float
    photo_height: float
    left: float
    top: float
    width: float
    height: float
    zoom: float = 1.0
    centre_x: float = 0.5
    centre_y: float = 0.5

    @property
    def shown_width(self) -> float:
        """Width of the whole photo at this zoom, pixels."""
        return self._fit * self.photo_width * self.zoom

    @property
    def shown_height(self) -> float:
        """Height of the whole photo at this zoom, pixels."""
        return self._fit * self.photo_height * self.zoom

    @property
    def photo_left(self) -> float:
        """x of the photo's left edge; outside the area when zoomed in."""
        return self.left + self.width / 2 - self.centre_x * self.shown_width

    @property
    def photo_top(self) -> float:
        """y of the photo's top edge; outside the area when zoomed in."""
        return self.top + self.height / 2 - self.centre_y * self.shown_height

    @property
    def visible(self) -> tuple[float, float, float, float]:
        """What is seen of the photo: left, top, right, bottom in pixels."""
        return (
            max(self.left, self.photo_left),
            max(self.top, self.photo_top),
            min(self.left + self.width, self.photo_left + self.shown_width),
            min(self.top + self.height, self.photo_top + self.shown_height),
        )

    def y_px(self, y: float) -> float:
        """Pixel row of a height of the photo."""
        return self.photo_top + y * self.shown_height

    def x_of(self, x_px: float) -> float:
        """Fraction of the photo's width at a pixel column."""
        return (x_px - self.photo_left) / self.shown_width

    def y_of(self, y_px: float) -> float:
        """Fraction of the photo's height at a pixel row."""
        return (y_px - self.photo_top) / self.shown_height

    def resized(self, left: float, top: float, width: float, height: float) -> Viewport:
        """The same view in another area."""
        return replace(self, left=left, top=top, width=width, height=height)._bounded()

    def zoomed(self, factor: float, x_px: float, y_px: float) -> Viewport:
        """Larger or smaller; the point of the photo at (x_px, y_px) stays where it is."""
        zoom = min(max(self.zoom * factor, 1.0), MOST_ZOOM)
        x, y = self.x_of(x_px), self.y_of(y_px)
        after = replace(self, zoom=zoom)
        centre_x = x - (x_px - self.left - self.width / 2) / after.shown_width
        centre_y = y - (y_px - self.top - self.height / 2) / after.shown_height
        return replace(after, centre_x=centre_x, centre_y=centre_y)._bounded()

    def panned(self, dx_px: float, dy_px: float) -> Viewport:
        """The photo pushed by so many pixels, as far as it goes."""
        return replace(
            self,
            centre_x=self.centre_x - dx_px / self.shown_width,
            centre_y=self.centre_y - dy_px / self.shown_height,
        )._bounded()

    def fitted(self) -> Viewport:
        """The whole photo."""
        return replace(self, zoom=1.0, centre_x=0.5, centre_y=0.5)

    def opened(self) -> Viewport:
        """The photo as it is first seen: whole, or the middle of a panorama too flat to work on."""
        whole = self.fitted()
        zoom = min(max(1.0, LEAST_HEIGHT * self.height / whole.shown_height), MOST_ZOOM)
        return replace(whole, zoom=zoom)._bounded()

    @property
    def _fit(self) -> float:
        return min(self.width / self.photo_width, self.height / self.photo_height)

    def _bounded(self) -> Viewport:
        return replace(
            self,
            centre_x=_bound_centre(self.centre_x, self.width, self.shown_width),
            centre_y=_bound_centre(self.centre_y, self.height, self.shown_height),
        )


def _bound_centre(centre: float, area: float, shown: float) -> float:
    # No wall shows beside a photo that is larger than the area; a smaller one stays centred.
    if shown <= area:
        return 0.5
    half = area / shown / 2
    return min(max(centre, half), 1 - half)


@dataclass(frozen=True)
class Drag:
    """A line under the mouse: it keeps its distance from the pointer, so it does not jump.

    Attributes
    ----------
    edge : int
        The edge that is dragged.
    start : float
        Where it was, as a fraction of the photo's height.
    offset_px : float
        Pointer's row minus the line's row when the button went down.
    """

    edge: int
    start: float
    offset_px: float

    @classmethod
    def begin(cls, viewport: Viewport, edge: int, y: float, pointer_px: float) -> Drag:
        """Take hold of `edge`, at height `y`, with the pointer at row `pointer_px`."""
        return cls(edge, y, pointer_px - viewport.y_px(y))

    def height_at(self, viewport: Viewport, pointer_px: float) -> float:
        """Where the line is wanted; its neighbours are minded by `core.bands.lines`."""
        if pointer_px - self.offset_px == viewport.y_px(self.start):
            return self.start  # exactly: a drag back to its beginning leaves no undo step
        return min(max(viewport.y_of(pointer_px - self.offset_px), 0.0), 1.0)


def edge_at(viewport: Viewport, heights: Sequence[float], x_px: float, y_px: float) -> int | None:
    """The edge within `GRAB_PX` of a point on the photo; the nearest, None when there is none."""
    left, top, right, bottom = viewport.visible
    if not (left <= x_px <= right and top - GRAB_PX <= y_px <= bottom + GRAB_PX):
        return None
    distances = [abs(viewport.y_px(y) - y_px) for y in heights]
    nearest = min(range(len(distances)), key=distances.__getitem__, default=None)
    return nearest if nearest is not None and distances[nearest] <= GRAB_PX else None


def spread(wanted: Sequence[float], sizes: Sequence[float], gap: float) -> list[float]:
    """Middles of things in a column that must not overlap, each as near to its place as can be.

    Parameters
    ----------
    wanted : sequence of float
        Where each middle would like to be, ascending.
    sizes : sequence of float
        Height of each.
    gap : float
        Least distance between two neighbours.

    Returns
    -------
    list of float
        The middles, ascending; the sum of squared shifts is the least possible.

    Notes
    -----
    Isotonic regression by pooling neighbours that would overlap (pool adjacent violators;
    Ayer et al. 1955), on places from which the heights of those above are taken off.
    """
    before = [0.0] * bool(wanted)
    for i in range(1, len(wanted)):
        before.append(before[-1] + (sizes[i - 1] + sizes[i]) / 2 + gap)
    pools: list[list[float]] = []  # [sum, count]
    for place, offset in zip(wanted, before, strict=True):
        pools.append([place - offset, 1])
        while len(pools) > 1 and pools[-2][0] / pools[-2][1] > pools[-1][0] / pools[-1][1]:
            total, count = pools.pop()
            pools[-1][0] += total
            pools[-1][1] += count
    means = [total / count for total, count in pools for _ in range(int(count))]
    return [mean + offset for mean, offset in zip(means, before, strict=True)]


def spread_within(
    wanted: Sequence[float], sizes: Sequence[float], gap: float, low: float, high: float
) -> list[float]:
    """`spread`, kept between `low` and `high` as long as everything fits there."""
    middles = spread(wanted, sizes, gap)
    floor = low
    for i, size in enumerate(sizes):
        middles[i] = max(middles[i], floor + size / 2)
        floor = middles[i] + size / 2 + gap
    ceiling = high
    for i in range(len(sizes) - 1, -1, -1):
        middles[i] = min(middles[i], ceiling - sizes[i] / 2)
        ceiling = middles[i] - sizes[i] / 2 - gap
    return middles

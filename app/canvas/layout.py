"""Where letters and grips stand beside the photo: plain arithmetic, no Qt."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from app.canvas.geometry import Viewport, spread_within
from core.bands.lines import Bands

GAP = 4.0
_EDGE = 4.0


@dataclass(frozen=True)
class LetterRow:
    """One band's place left of the photo.

    Attributes
    ----------
    band : int
    upper, lower : float
        What is seen of the band, pixel rows.
    middle : float
        Row of its letter; beside the band, or moved aside where bands are thin.
    """

    band: int
    upper: float
    lower: float
    middle: float


def letter_rows(
    viewport: Viewport, bands: Bands, radius: float, height: float
) -> tuple[LetterRow, ...]:
    """The letters of the bands that are in view.

    Parameters
    ----------
    radius : float
        Of a letter's disc, pixels.
    height : float
        Of the canvas, pixels.
    """
    _, top, _, bottom = viewport.visible
    seen = []
    for band in range(bands.count):
        upper = max(viewport.y_px(bands.edges[band]), top)
        lower = min(viewport.y_px(bands.edges[band + 1]), bottom)
        if lower - upper >= 1:
            seen.append((band, upper, lower))
    middles = spread_within(
        [(upper + lower) / 2 for _, upper, lower in seen],
        [2 * radius] * len(seen),
        GAP,
        _EDGE,
        height - _EDGE,
    )
    return tuple(
        LetterRow(band, upper, lower, middle)
        for (band, upper, lower), middle in zip(seen, middles, strict=True)
    )


def grip_rows(
    viewport: Viewport,
    places: Sequence[float],
    sizes: Sequence[float],
    height: float,
    below: Sequence[float] = (),
) -> tuple[float | None, ...]:
    """Rows of the grips' middles; None for those whose line is out of view.

    Parameters
    ----------
    places : sequence of float
        Heights of the lines, fractions of the photo's height, in any order.
    sizes : sequence of float
        Heights of the grips, pixels.
    height : float
        Of the canvas, pixels.
    below : sequence of float
        Room for words under each grip, pixels.
    """
    _, top, _, bottom = viewport.visible
    under = below or (0.0,) * len(places)
    rows = [viewport.y_px(y) for y in places]
    order = sorted(
        (i for i, row in enumerate(rows) if top - 1 <= row <= bottom + 1), key=rows.__getitem__
    )
    middles = spread_within(
        [rows[i] + under[i] / 2 for i in order],
        [sizes[i] + under[i] for i in order],
        GAP,
        _EDGE,
        height - _EDGE,
    )
    result: list[float | None] = [None] * len(rows)
    for i, middle in zip(order, middles, strict=True):
        result[i] = middle - under[i] / 2
    return tuple(result)

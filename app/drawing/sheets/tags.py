"""Where the tags of marks on a painting stand: plain arithmetic of layout, no Qt."""

from __future__ import annotations

import math
from collections.abc import Sequence

Box = tuple[float, float, float, float]
"""Left, top, right, bottom."""

# Directions a tag may be in from its mark, the liked ones first.
_WAYS = (
    (0.75, -1.0), (-0.75, -1.0), (0.75, 1.0), (-0.75, 1.0),
    (1.5, 0.0), (-1.5, 0.0), (0.0, -1.4), (0.0, 1.4),
)  # fmt: skip
_REACHES = (1.3, 2.1, 3.0, 4.2, 5.6)


def place_tags(
    anchors: Sequence[tuple[float, float]],
    widths: Sequence[float],
    height: float,
    area: Box,
    keep_clear: Sequence[Box] = (),
    better_clear: Sequence[Box] = (),
) -> tuple[tuple[float, float] | None, ...]:
    """Centres of tags near their anchors, inside `area`, covering nothing they need not cover.

    Parameters
    ----------
    anchors : sequence of (x, y)
        What each tag speaks of.
    widths : sequence of float
        The tags' widths.
    height : float
        Of every tag.
    area : Box
        Tags stay inside it.
    keep_clear : sequence of Box
        What tags should not cover.
    better_clear : sequence of Box
        What they may cover rather than stand far off.

    Returns
    -------
    tuple of (x, y) or None
        In the order given. Where nothing fits, the place that covers least is taken; None for
        a tag that would be on another: a small picture has room for the first ones only.
    """
    placed: list[Box] = []
    centres: list[tuple[float, float] | None] = []
    stems: list[Box] = []
    for anchor, width in zip(anchors, widths, strict=True):
        best, centre = math.inf, anchor
        others = [*placed, *(_around(other, 0.25 * height) for other in anchors), *keep_clear]
        for reach in _REACHES:
            for across, down in _WAYS:
                x = anchor[0] + across * (0.5 * width + 0.3 * height) * min(reach, 2.4)
                y = anchor[1] + down * height * reach
                x = min(max(x, area[0] + width / 2), area[2] - width / 2)
                y = min(max(y, area[1] + height / 2), area[3] - height / 2)
                box = _box((x, y), width, height)
                grown = (box[0] - 4, box[1] - 4, box[2] + 4, box[3] + 4)
                cost = sum(_shared(grown, other) for other in others)
                cost += 0.1 * sum(_shared(box, other) for other in better_clear)
                cost += sum(_shared(grown, other) for other in stems)
                cost += sum(
                    _shared(piece, other) for piece in _stem(anchor, (x, y)) for other in placed
                )
                cost += 0.03 * height * math.dist((x, y), anchor)
                if cost < best:
                    best, centre = cost, (x, y)
        box = _box(centre, width, height)
        if any(_shared(box, other) > 0 for other in placed):
            centres.append(None)
            continue
        placed.append(box)
        stems += _stem(anchor, centre)
        centres.append(centre)
    return tuple(centres)


def _stem(start: tuple[float, float], end: tuple[float, float]) -> list[Box]:
    """Small boxes along a stem, so that it crosses no tag and no tag covers it."""
    pieces = 8
    return [
        _around(
            (
                start[0] + (end[0] - start[0]) * k / pieces,
                start[1] + (end[1] - start[1]) * k / pieces,
            ),
            5.0,
        )
        for k in range(pieces)
    ]


def _box(centre: tuple[float, float], width: float, height: float) -> Box:
    x, y = centre
    return x - width / 2, y - height / 2, x + width / 2, y + height / 2


def _around(point: tuple[float, float], reach: float) -> Box:
    return point[0] - reach, point[1] - reach, point[0] + reach, point[1] + reach


def _shared(a: Box, b: Box) -> float:
    """Area two boxes share."""
    width = min(a[2], b[2]) - max(a[0], b[0])
    height = min(a[3], b[3]) - max(a[1], b[1])
    return max(width, 0.0) * max(height, 0.0)

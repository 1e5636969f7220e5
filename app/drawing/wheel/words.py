"""The intensity words' places: the direction freest of markers."""

from __future__ import annotations

import math
from typing import Final

from PySide6.QtCore import QPointF, QRectF

from app.drawing.ink import text_size
from app.drawing.wheel.shape import (
    LEAST_NAME_PX,
    Placed,
    WheelView,
    Word,
    disc_of,
    inner_of,
)
from core.reading.reading import INTENSITY_RINGS

# Directions tried for the intensity words, never near horizontal, the quieter ones first.
_WORD_DIRECTIONS: Final = (
    *(320, 40, 220, 140, 330, 30, 210, 150, 310, 50, 230, 130, 340, 20, 200, 160),
    *(0, 180, 300, 60, 240, 120),
)
# Where each word may be, as fractions of the disc: the middle of its ring first.
_WORD_PLACES: Final = ((0.29, 0.32, 0.26), (0.56, 0.53, 0.60), (0.85, 0.80, 0.88))
# Clearance beyond this, in fractions of R, is no better: so the words stay where they are.
_ENOUGH: Final = 0.03
# What a word counts that is seen at all, and the most it can count.
_SEEN: Final = 10.0
_MOST: Final = _SEEN + _ENOUGH * 10.0


_Obstacle = tuple[float, float, float]


def place_words(
    view: WheelView,
    centre: QPointF,
    radius: float,
    size: float,
    placed: tuple[Placed, ...],
    way: tuple[QPointF, QPointF] | None,
    onward: tuple[QPointF, QPointF] | None,
) -> tuple[Word, ...]:
    """The intensity words in the direction freest of markers; a crossed word is left out.

    Larger text than there is room for gives way before a word does.
    """
    if len(view.intensity_words) != 3:
        return ()
    obstacles = _obstacles(view, size, placed, way, onward)
    plain = max(0.075 * radius, LEAST_NAME_PX * view.px)
    best: tuple[Word, ...] = ()
    for text in sorted({view.text, (1 + view.text) / 2, 1.0}, reverse=True):
        words = _of_size(view, centre, radius, plain * text, obstacles)
        if len(words) > len(best):
            best = words
        if len(best) == 3:
            break
    return best


def _of_size(
    view: WheelView,
    centre: QPointF,
    radius: float,
    letter: float,
    obstacles: list[_Obstacle],
) -> tuple[Word, ...]:
    inner, disc = inner_of(view.text) * radius, disc_of(view.text) * radius
    if disc * (INTENSITY_RINGS[3] - INTENSITY_RINGS[2]) < 0.95 * letter:
        return ()
    best: tuple[float, tuple[Word, ...]] = (0.0, ())
    widths = [text_size(text, letter)[0] for text in view.intensity_words]
    for direction in _WORD_DIRECTIONS:
        turn = math.radians(direction)
        words, score, to_come = [], 0.0, 3 * _MOST
        for text, width, shares in zip(view.intensity_words, widths, _WORD_PLACES, strict=True):
            if score + to_come <= best[0] + 1e-9:
                break
            to_come -= _MOST
            for share in shares:
                x = centre.x() + share * disc * math.sin(turn)
                y = centre.y() - share * disc * math.cos(turn)
                reach = math.hypot(
                    abs(x - centre.x()) + width / 2, abs(y - centre.y()) + letter / 2
                )
                if reach > inner:
                    continue
                free = _least_clearance(x, y, width / 2, letter / 2, obstacles)
                if free >= 0.0:
                    rect = QRectF(x - width / 2, y - letter / 2, width, letter)
                    words.append(Word(text, rect, letter))
                    score += _SEEN + min(free / radius, _ENOUGH) * 10.0
                    break
        if score > best[0] + 1e-9:
            best = (score, tuple(words))
        if score >= 3 * _MOST - 1e-9:
            break
    return best[1]


def _obstacles(
    view: WheelView,
    size: float,
    placed: tuple[Placed, ...],
    way: tuple[QPointF, QPointF] | None,
    onward: tuple[QPointF, QPointF] | None,
) -> list[_Obstacle]:
    """Discs (x, y, radius) that no word may touch; lines as rows of small discs."""
    px = view.px
    result = [
        (p.disc.x(), p.disc.y(), px + size * (1.3 if i == view.chosen else 1.0))
        for i, p in enumerate(placed)
    ]
    for place in placed:
        if place.moved:
            result.append((place.dot.x(), place.dot.y(), 4.5 * px))
            middle = (place.dot + place.disc) / 2
            result.append((middle.x(), middle.y(), 3.0 * px))
    for line in (way, onward):
        if line is not None:
            for k in range(8):
                spot = line[0] + (line[1] - line[0]) * (k / 7)
                result.append((spot.x(), spot.y(), 5.0 * px))
    return result


def _least_clearance(
    x: float, y: float, half_width: float, half_height: float, obstacles: list[_Obstacle]
) -> float:
    least = math.inf
    for index, (ox, oy, reach) in enumerate(obstacles):
        dx = abs(ox - x) - half_width
        dy = abs(oy - y) - half_height
        if dx > dy:
            free = dx - reach if dy <= 0.0 else math.hypot(dx, dy) - reach
        else:
            free = dy - reach if dx <= 0.0 else math.hypot(dx, dy) - reach
        if free < 0.0:
            # What stood in the way once is likely to again, so it is tried first from now on.
            obstacles.insert(0, obstacles.pop(index))
            return free
        if free < least:
            least = free
    return least

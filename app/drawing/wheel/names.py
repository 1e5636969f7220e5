"""Fitting the hues' names into their wedges, upright, in any language."""

from __future__ import annotations

import math
from functools import lru_cache
from typing import Final

from PySide6.QtCore import QPointF

from app.drawing.ink import text_size
from app.drawing.wheel.shape import (
    GAP_DEG,
    LEAST_NAME_PX,
    STEP_DEG,
    WEDGES,
    inner_of,
    outer_of,
    polar,
)

NAME: Final = 0.083
# Widths a name of least size is squeezed to before it is broken or left out.
_SQUEEZES: Final = (1.0, 0.9, 0.82)
_LAST_SQUEEZE: Final = 0.76
_FIRST_TERTIARY: Final = 1

PlacedLine = tuple[str, float, float, float, float, float, float]
"""A line of a name with left, top, width, height, size and squeeze."""


# benchmarks/cache_hits.py: 31 calls, 2 misses of 0.8 ms: each in a repaint.
@lru_cache(maxsize=64)
def placed_names(
    names: tuple[str, ...], radius: float, px: float, text: float = 1.0
) -> tuple[tuple[PlacedLine, ...], ...]:
    """Lines of each name with left, top, width, height, size and squeeze, round (0, 0)."""
    result: list[tuple[PlacedLine, ...]] = []
    found = [_fitting(wedge, name, radius, px, text) for wedge, name in enumerate(names)]
    if not all(found[_FIRST_TERTIARY::2]):
        # On a very small wheel some of these do not fit: then none is named.
        found[_FIRST_TERTIARY::2] = [None] * (WEDGES // 2)
    for wedge, fitting in enumerate(found):
        if fitting is None:
            result.append(())
            continue
        lines, size, middle, squeeze = fitting
        spot = polar(QPointF(0, 0), middle, wedge * STEP_DEG)
        pitch = 1.04 * size
        top = spot.y() - pitch * len(lines) / 2
        placed = []
        for row, line in enumerate(lines):
            width = text_size(line, size)[0] * squeeze
            placed.append(
                (line, spot.x() - width / 2, top + row * pitch, width, pitch, size, squeeze)
            )
        result.append(tuple(placed))
    return tuple(result)


def _fitting(
    wedge: int, name: str, radius: float, px: float, text: float
) -> tuple[tuple[str, ...], float, float, float] | None:
    """Lines, size, distance and squeeze of a name; None when it cannot be got into its wedge."""
    least = LEAST_NAME_PX * px
    lines = broken_name(name)
    for squeeze in _SQUEEZES:
        fitting = _fitting_size(wedge, lines, radius, px, squeeze, text)
        if fitting is not None:
            return (lines, *fitting, squeeze)
    # Some languages have names too long for a small wheel: break the longest word.
    longest = max(lines, key=lambda line: text_size(line, least)[0])
    pieces = syllables(longest)
    if pieces is None:
        return None
    at = lines.index(longest)
    broken = (*lines[:at], *pieces, *lines[at + 1 :])
    tries = [(broken, squeeze) for squeeze in _SQUEEZES] + [(lines, _LAST_SQUEEZE)]
    for attempt, squeeze in tries:
        fitting = _fitting_size(wedge, attempt, radius, px, squeeze, text)
        if fitting is not None:
            return (attempt, *fitting, squeeze)
    return None


def broken_name(name: str) -> tuple[str, ...]:
    """Two lines at the hyphen, or at the space nearest the middle."""
    if "-" in name:
        first, second = name.split("-", 1)
        return first + "-", second
    if " " in name:
        spaces = [i for i, letter in enumerate(name) if letter == " "]
        cut = min(spaces, key=lambda i: abs(i - len(name) / 2))
        return name[:cut], name[cut + 1 :]
    return (name,)


def syllables(word: str) -> tuple[str, str] | None:
    """A word in two at the syllable's end nearest its middle; None for a short one.

    Before the last consonant between two vowels, the rule of Spanish and most languages near it.

    >>> syllables("anaranjado")
    ('anaran-', 'jado')
    """
    vowels = "aeiouyáéíóúàèìòùäëïöüâêîôûãõå"
    cuts = [
        i
        for i in range(2, len(word) - 1)
        if word[i] not in vowels
        and word[i + 1] in vowels
        and any(letter in vowels for letter in word[:i])
    ]
    if not cuts or len(word) < 6:
        return None
    cut = min(cuts, key=lambda i: abs(i - len(word) / 2))
    return word[:cut] + "-", word[cut:]


def _fitting_size(
    wedge: int, lines: tuple[str, ...], radius: float, px: float, squeeze: float, text: float
) -> tuple[float, float] | None:
    """Largest size and its distance from the middle; None when not even the least fits."""
    least = LEAST_NAME_PX * px
    size, inner = text * max(NAME * radius, least), inner_of(text)
    while size >= least - 1e-9:
        half_height = (0.98 * len(lines) - 0.28) * size / 2
        half_width = squeeze * max(text_size(line, size)[0] for line in lines) / 2
        for share in (0.5, 0.47, 0.55, 0.6, 0.44, 0.65):
            middle = radius * (inner + share * (outer_of(wedge) - inner))
            margin = (0.004 if size == least else 0.018) * radius
            if _inside_wedge(wedge, middle, half_width, half_height, radius, inner, margin):
                return size, middle
        if size == least:
            return None
        size = max(size * 0.96, least)
    return None


def _inside_wedge(
    wedge: int,
    middle: float,
    half_width: float,
    half_height: float,
    radius: float,
    inner: float,
    margin: float,
) -> bool:
    spot = polar(QPointF(0, 0), middle, wedge * STEP_DEG)
    half_angle = math.radians(STEP_DEG / 2 - GAP_DEG / 2)
    for sx in (-1, 1):
        for sy in (-1, 1):
            x, y = spot.x() + sx * half_width, spot.y() + sy * half_height
            distance = math.hypot(x, y)
            off = math.atan2(x, -y) - math.radians(wedge * STEP_DEG)
            off = (off + math.pi) % (2 * math.pi) - math.pi
            side = distance * math.sin(half_angle - abs(off))
            if side < margin or distance > outer_of(wedge) * radius - margin:
                return False
    # The inner edge is an arc: the box comes nearest to the middle at one of its edges.
    near_x = max(abs(spot.x()) - half_width, 0.0)
    near_y = max(abs(spot.y()) - half_height, 0.0)
    return math.hypot(near_x, near_y) >= inner * radius + margin

"""Fitting words into a width: step the size down, then wrap; never clip."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache

from PySide6.QtCore import Qt
from PySide6.QtGui import QFontMetricsF

from app.look.type import font


@dataclass(frozen=True)
class Fitted:
    """Lines of text, their size in pixels, and what they take."""

    lines: tuple[str, ...]
    size: int
    weight: int
    width: float
    pitch: float
    """Height of one line."""

    @property
    def height(self) -> float:
        """Height of all lines."""
        return self.pitch * len(self.lines)


# benchmarks/cache_hits.py: 1,867 calls, 19 misses of 0.02 ms.
@lru_cache(maxsize=128)
def _metrics(size: int, weight: int) -> QFontMetricsF:
    return QFontMetricsF(font(size, weight))


# benchmarks/cache_hits.py: 17,284 calls, 1,350 misses of 0.01 ms.
@lru_cache(maxsize=2048)
def advance(text: str, size: int, weight: int) -> float:
    """Width of one line of text in pixels."""
    return _metrics(size, weight).horizontalAdvance(text)


def pitch_of(size: int, weight: int) -> float:
    """Height of a line of text in pixels."""
    return _metrics(size, weight).height()


def elided(text: str, size: float, width: float, weight: int) -> str:
    """A name cut with three dots where it must stay on one line; words are wrapped instead."""
    cut = Qt.TextElideMode.ElideRight
    return _metrics(max(1, round(size)), weight).elidedText(text, cut, max(width, 0.0))


def wrap(text: str, size: int, weight: int, width: float) -> tuple[str, ...]:
    """Lines no wider than `width`, broken at spaces, and after hyphens in long words."""
    lines: list[str] = []
    line = ""
    for word in re.split("[ \n]+", text.strip()):  # not at spaces that hold words together
        for piece in _pieces(word, size, weight, width):
            glue = "" if line.endswith("-") and piece in word.split("-", 1)[-1] else " "
            joined = f"{line}{glue}{piece}" if line else piece
            if line and advance(joined, size, weight) > width:
                lines.append(line)
                line = piece
            else:
                line = joined
    return (*lines, line) if line or not lines else tuple(lines)


def _pieces(word: str, size: int, weight: int, width: float) -> list[str]:
    if "-" in word and advance(word, size, weight) > width:
        first, second = word.split("-", 1)
        return [first + "-", second]
    return [word]


# benchmarks/cache_hits.py: 15,469 calls, 467 misses of 0.05 ms.
@lru_cache(maxsize=1024)
def fit(
    text: str, sizes: tuple[int, ...], weight: int, width: float, most_lines: int = 2
) -> Fitted:
    """The largest size at which text fits on one line; else the least size, wrapped.

    Parameters
    ----------
    sizes : tuple of int
        Pixel sizes, the largest first.
    width : float
        Pixels.
    most_lines : int
        Of the wrapped text; a middle size is taken when it fits into so many lines.
    """
    for size in sizes:
        if advance(text, size, weight) <= width:
            return _fitted((text,), size, weight)
    for size in sizes:
        lines = wrap(text, size, weight, width)
        if len(lines) <= most_lines and all(advance(n, size, weight) <= width for n in lines):
            return _fitted(lines, size, weight)
    return _fitted(wrap(text, sizes[-1], weight, width), sizes[-1], weight)


def _fitted(lines: Sequence[str], size: int, weight: int) -> Fitted:
    widest = max(advance(line, size, weight) for line in lines)
    return Fitted(tuple(lines), size, weight, widest, pitch_of(size, weight))

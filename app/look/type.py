"""The type scale: a few sizes, three weights, one factor for the reader's eyes."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache
from threading import get_ident
from typing import Final, Literal

from PySide6.QtGui import QFont

from app.fonts import FAMILY

Role = Literal["note", "control", "label", "row", "row_second", "heading", "aloud", "aloud_second"]

# Pixels at 100 %. Nothing is set under 13.
_BASE: Final[dict[str, float]] = {
    "note": 13,
    "control": 15,
    "label": 18,
    "row": 20,
    "row_second": 15,
    "heading": 24,
    "aloud": 34,
    "aloud_second": 18,
}
# At 1920 wide the read-out grows, since there is room and the class stands further away.
_WIDE: Final[dict[str, float]] = {"row": 24, "row_second": 18, "aloud": 45, "aloud_second": 23}

SECOND: Final = 400
MEDIUM: Final = 500
FIRST: Final = 600
CHOSEN: Final = 700

LEAST_SCALE: Final = 1.0
MOST_SCALE: Final = 2.0
WIDE_FROM: Final = 1920


def font(size: float, weight: int = SECOND, *, columns: bool = False) -> QFont:
    """The program's face at `size` pixels.

    Parameters
    ----------
    size : float
        Pixels; rounded, at least 1.
    weight : int
        400, 500, 600 or 700.
    columns : bool
        Figures of one width, for numbers under each other.
    """
    # A copy, since the caller may change it; the copy shares what Qt has worked out about it.
    return QFont(shared_font(size, weight, columns=columns))


def shared_font(size: float, weight: int = SECOND, *, columns: bool = False) -> QFont:
    """The same as `font`, not to be changed: a painter copies it."""
    return _made(get_ident(), max(1, round(size)), weight, columns)


# benchmarks/cache_hits.py: 9,654 calls, 49 misses of 0.02 ms.
@lru_cache(maxsize=512)
def _made(thread: int, pixels: int, weight: int, columns: bool) -> QFont:
    # One for each thread: workers draw cards while the window draws itself.
    result = QFont(FAMILY)
    result.setPixelSize(pixels)
    result.setWeight(QFont.Weight(weight))
    if columns:
        result.setFeature(QFont.Tag("tnum"), 1)
    return result


@dataclass(frozen=True)
class TypeScale:
    """Text sizes in pixels.

    Attributes
    ----------
    scale : float
        The reader's factor, 1.0..2.0.
    wide : bool
        The window is at least 1920 wide: rows 1.2 times, read-aloud words 45.
    """

    scale: float = 1.0
    wide: bool = False

    def __post_init__(self) -> None:
        if not LEAST_SCALE <= self.scale <= MOST_SCALE:
            raise ValueError(f"text scale {self.scale} outside {LEAST_SCALE}..{MOST_SCALE}")

    def px(self, role: Role) -> int:
        """The size of a role in pixels."""
        base = _WIDE.get(role, _BASE[role]) if self.wide else _BASE[role]
        return round(base * self.scale)

    def font(self, role: Role, weight: int = SECOND, *, columns: bool = False) -> QFont:
        """The font of a role."""
        return font(self.px(role), weight, columns=columns)

    def grow(self, length: float) -> int:
        """A length that holds text, grown with the text."""
        return round(length * self.scale)

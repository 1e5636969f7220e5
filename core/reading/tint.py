"""Pale is not dull: how intense a clean, thinned wash of a hue can still be.

Paint thinned with water loses intensity as it nears the white of the paper. A weak colour that is
as intense as such a wash is pale, and wants more water; one that is weaker is greyed, and wants
its complement.
"""

from __future__ import annotations

from types import MappingProxyType

from core.reading.wheel import family_of

WHITE_VALUE = 9.6
"""Munsell value at which a wash has become white paper; paper measures about 9.5."""

CHROMA_PER_STEP: MappingProxyType[str, float] = MappingProxyType(
    {
        "red": 3.7,
        "red-orange": 3.8,
        "orange": 4.1,
        "yellow-orange": 7.0,
        "yellow": 10.0,
        "yellow-green": 8.0,
        "green": 4.6,
        "blue-green": 2.9,
        "blue": 3.5,
        "blue-violet": 2.1,
        "violet": 2.3,
        "red-violet": 3.4,
    }
)
"""Munsell chroma that a clean wash gains with each step of value below white paper.

From the film of the measured paints, single and in pairs, between value 8 and 9 (rounded); what
they give is worked out again in `tests/core/reading/test_tint.py`."""

MOST_CHROMA = 11.0
"""No wash is more intense than full paint; yellow comes there while it is still light."""

PALE_FROM_VALUE = 7.0
CLEAN_SHARE = 0.6
"""A colour with this share of a clean wash's chroma is thin rather than greyed."""


def clean_chroma(hue: float, value: float) -> float:
    """Munsell chroma of a clean wash of a hue (hundred-steps) that is as light as `value`."""
    steps = max(WHITE_VALUE - value, 0.1)
    return min(MOST_CHROMA, CHROMA_PER_STEP[family_of(hue)] * steps)


def is_pale(hue: float | None, value: float, chroma: float) -> bool:
    """Whether a colour is weak because it is thin, not because it is greyed."""
    if hue is None or value < PALE_FROM_VALUE:
        return False
    return chroma >= CLEAN_SHARE * clean_chroma(hue, value)

"""A mix in words: parts, strength, how near it comes, why it is built so, what else would do."""

from __future__ import annotations

from core.paint.words.fit import (
    band_reach_text,
    reach_text,
    shortfall_text,
)
from core.paint.words.parts import (
    mix_text,
    parts_text,
    strength_note,
    strength_text,
)
from core.paint.words.reasons import alternative_text, closest_text, reason_text, why_text

__all__ = [
    "alternative_text",
    "band_reach_text",
    "closest_text",
    "mix_text",
    "parts_text",
    "reach_text",
    "reason_text",
    "shortfall_text",
    "strength_note",
    "strength_text",
    "why_text",
]

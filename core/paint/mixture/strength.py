"""How strong a wash is, in a kitchen's words.

The measured loads are no doses: another maker's tube is stronger or weaker. What can be said is
how far a wash has gone from the paper towards full colour. A mix is compared with its own half
load, the load at which half the light of its strongest band is gone; one step of the words is
about three times the paint. A rule of thumb (tea, coffee, milk and cream: common practice).
"""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType
from typing import Literal

from core.paint.box.box import Box
from core.paint.mixture.mix import Mix

Strength = Literal["paper", "weak tea", "tea", "coffee", "milk", "cream"]

STRENGTHS: tuple[Strength, ...] = ("paper", "weak tea", "tea", "coffee", "milk", "cream")
"""From bare paper to the thickest wash."""

WATER_TO_ONE: MappingProxyType[Strength, float] = MappingProxyType(
    {"weak tea": 25.0, "tea": 15.0, "coffee": 8.0, "milk": 4.0, "cream": 1.0}
)
"""Parts of water to one of tube paint, where a strength is thickest: rules of thumb, said by
`core.paint.words.parts.strength_note`."""

_BEGINS = (0.0, 0.7, 2.5, 8.0, 24.0)
"""Half loads at which each word after "paper" begins."""


def mix_half_load(box: Box, parts: Mapping[str, int]) -> float:
    """Load, in millilitres, at which a mix has taken half the light, estimated by its parts."""
    total = sum(parts.values())
    return total / sum(count / box.paint(key).half_load_ml for key, count in parts.items())


def strength_of(box: Box, mix: Mix) -> Strength:
    """The word for a mix's wash; rises with its load and never falls."""
    if not mix.parts or mix.load_ml <= 0:
        return "paper"
    times = mix.load_ml / mix_half_load(box, dict(mix.parts))
    return STRENGTHS[sum(times >= begin for begin in _BEGINS)]

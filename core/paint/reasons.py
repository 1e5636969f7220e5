"""What can be said of a mix, as codes; `core.paint.words.reasons` makes the words."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal, NamedTuple

from core.reading.wheel import Family

ReasonCode = Literal[
    # how a mix is built
    "at hue",
    "either side",
    "two primaries",
    "toned",
    "paper",
    "by hand",
    "pinned",
    "no neighbours",
    "greys",
    "three primaries",
    "toned by orange",
    "steers",
    "toned and turned",
    "toned by earth",
    "holds",
    "same mix",
    "same mix thinner",
    "same mix stronger",
    # what is odd about a closest mix
    "black",
    "white",
    "hard to steer",
    "tiny strong",
    "many parts",
    # why to prefer an alternative
    "closer",
    "fewer paints",
    "fewer parts",
    "forgiving",
    # why it is not the band's mix all the same
    "further",
    "more paints",
    "more parts",
    "thick",
    "far",
    "wide",
    "leans",
    "earth",
    "fights green",
    "turns hue",
    "to green",
    "same side",
    "beside",
    "greys less cleanly",
    "not shared",
    "new paint",
    "changes",
    # why to avoid one
    "one part too many",
    "too hue",
    "too light",
    "too dark",
    "too dull",
    "too intense",
    "too weak",
    # what to know of either
    "granulates",
    "covers",
    "stains",
]

MERITS: frozenset[ReasonCode] = frozenset({"closer", "fewer paints", "fewer parts", "forgiving"})
"""What speaks for another mix; everything else that is said of it is a warning."""


SAME_MIX: frozenset[ReasonCode] = frozenset({"same mix", "same mix thinner", "same mix stronger"})


@dataclass(frozen=True)
class Reason:
    """One thing to say of a mix.

    Attributes
    ----------
    code : ReasonCode
    paints : tuple of str
        Paint keys it is about.
    hue : str or None
        A hue family or main hue it is about.
    letter : str or None
        Another band it is about.
    letters : tuple of str
        Several bands it is about.
    """

    code: ReasonCode
    paints: tuple[str, ...] = ()
    hue: Family | None = None
    letter: str | None = None
    letters: tuple[str, ...] = ()


class Cost(NamedTuple):
    """What stands against a mix for one reason, on the scale of delta E 2000."""

    code: ReasonCode
    price: float
    paints: tuple[str, ...] = ()

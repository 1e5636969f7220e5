"""The painter's twelve-step wheel: hue families, classes, complements and angles.

Families are bounded in Munsell hue. The bounds answer to three judges at once: the ISCC-NBS
centroids, the names people gave to colours in the XKCD survey, and common sense (a sky blue is
blue, pure red is red, pure yellow is yellow). Complements are opposites on this wheel, never
Munsell's: those would pair red with blue-green.
"""

from __future__ import annotations

from bisect import bisect_right
from dataclasses import dataclass
from types import MappingProxyType
from typing import Literal

from core.colour.munsell import Munsell

HueClass = Literal["primary", "secondary", "tertiary"]
HUE_CLASSES: tuple[HueClass, ...] = ("primary", "secondary", "tertiary")
Neutral = Literal["white", "grey", "black"]
Family = Literal[
    "yellow",
    "yellow-orange",
    "orange",
    "red-orange",
    "red",
    "red-violet",
    "violet",
    "blue-violet",
    "blue",
    "blue-green",
    "green",
    "yellow-green",
]

FAMILIES: tuple[Family, ...] = (
    "yellow",
    "yellow-orange",
    "orange",
    "red-orange",
    "red",
    "red-violet",
    "violet",
    "blue-violet",
    "blue",
    "blue-green",
    "green",
    "yellow-green",
)
"""In wheel order, clockwise from yellow at the top; 30 degrees each."""

LOWER_BOUND: MappingProxyType[Family, float] = MappingProxyType(
    {
        "red": 1.0,
        "red-orange": 8.05,
        "orange": 12.0,
        "yellow-orange": 17.6,
        "yellow": 21.5,
        "yellow-green": 31.3,
        "green": 37.7,
        "blue-green": 49.1,
        "blue": 66.0,
        "blue-violet": 77.3,
        "violet": 79.9,
        "red-violet": 90.3,
    }
)
"""Munsell hue in hundred-steps at which a family begins; it ends where the next begins."""

FAMILY_SRGB: MappingProxyType[Family, str] = MappingProxyType(
    {
        "yellow": "#f6d80c",
        "yellow-orange": "#fbae00",
        "orange": "#f5821f",
        "red-orange": "#e5532d",
        "red": "#d02937",
        "red-violet": "#a83c86",
        "violet": "#7a4a9e",
        "blue-violet": "#4f52ad",
        "blue": "#1f6fb8",
        "blue-green": "#128f96",
        "green": "#2c9a52",
        "yellow-green": "#9cc42a",
    }
)
"""Colours to draw the wedges in; each reads as its own family."""

NEAR_NEUTRAL_CHROMA = 1.5
"""Below this a colour has no hue family, only a leaning. ISCC-NBS names such colours as tinted
greys (Kelly and Judd 1976, NBS Special Publication 440)."""

NEUTRAL_CHROMA = 0.5
"""Below this it has no leaning either: ISCC-NBS calls it plainly white, grey or black."""

WHITE_VALUE = 8.5
BLACK_VALUE = 2.5

CLOSE_SHARE = 0.15
"""Within this share of a family's width from its bound a reading names both families."""

_BY_HUE = sorted(LOWER_BOUND, key=LOWER_BOUND.__getitem__)
_BOUNDS = [LOWER_BOUND[family] for family in _BY_HUE]
_PRIMARY: tuple[Family, ...] = ("yellow", "red", "blue")
_SECONDARY: tuple[Family, ...] = ("orange", "violet", "green")


@dataclass(frozen=True)
class HueReading:
    """What the wheel says of a colour.

    Attributes
    ----------
    family : Family or None
        None when the colour is near neutral.
    also : str or None
        The neighbour family, when the hue is close to its bound.
    leaning : str or None
        The family a near neutral leans to; None when it has no hue at all, or a family.
    neutral : "white", "grey", "black" or None
        What kind of neutral; None when there is a family.
    hue_class : "primary", "secondary", "tertiary" or None
    wheel_deg : float or None
        Angle on the wheel, 0..360 clockwise from yellow; None without any hue.
    """

    family: Family | None
    also: Family | None
    leaning: Family | None
    neutral: Neutral | None
    hue_class: HueClass | None
    wheel_deg: float | None


def _place(hue: float) -> tuple[Family, float, float]:
    """Family, its width, and how far into it the hue is, as a share of the width."""
    hue = hue % 100
    index = bisect_right(_BOUNDS, hue) - 1  # -1 is the last family, which crosses the seam
    start = _BOUNDS[index]
    width = (_BOUNDS[(index + 1) % len(_BOUNDS)] - start) % 100
    return _BY_HUE[index], width, ((hue - start) % 100) / width


def family_of(hue: float) -> Family:
    """The family of a Munsell hue in hundred-steps; 100 is 0 again.

    >>> family_of(72.0)
    'blue'
    """
    return _place(hue)[0]


def wheel_deg(hue: float) -> float:
    """Angle on the wheel of a Munsell hue in hundred-steps.

    Piecewise linear: the middle of each family is at its wedge's middle and each bound at the
    wedge's edge, so that a marker always stands in the wedge it is named by.

    Returns
    -------
    float
        Degrees, 0 <= angle < 360, clockwise from yellow; falls as Munsell hue rises.
    """
    family, _, share = _place(hue)
    angle = (FAMILIES.index(family) * 30 + 15 - 30 * share) % 360
    return 0.0 if angle >= 360 else angle


def hue_of_wheel_deg(angle: float) -> float:
    """Munsell hue in hundred-steps, 0..100, at an angle on the wheel: `wheel_deg` undone."""
    turned = (angle + 15) % 360
    index = min(int(turned // 30), 11)
    family = FAMILIES[index]
    start = LOWER_BOUND[family]
    share = 1 - (turned - 30 * index) / 30
    width = (_BOUNDS[(_BY_HUE.index(family) + 1) % 12] - start) % 100
    return (start + share * width) % 100


def hue_class(family: Family) -> HueClass:
    """Primary, secondary or tertiary."""
    if family in _PRIMARY:
        return "primary"
    if family in _SECONDARY:
        return "secondary"
    if family in FAMILIES:
        return "tertiary"
    raise ValueError(f"not a hue family: {family!r}")


def complement(family: Family) -> Family:
    """The family opposite on the wheel.

    >>> complement("red-orange")
    'blue-green'
    """
    return FAMILIES[(FAMILIES.index(family) + 6) % 12]


def wheel_distance(family1: Family, family2: Family) -> int:
    """Steps between two families the shorter way round, 0..6."""
    steps = abs(FAMILIES.index(family1) - FAMILIES.index(family2))
    return min(steps, 12 - steps)


def _neighbour_close_by(hue: float) -> Family | None:
    family, _, share = _place(hue)
    index = _BY_HUE.index(family)
    if share < CLOSE_SHARE:
        return _BY_HUE[index - 1]
    if share > 1 - CLOSE_SHARE:
        return _BY_HUE[(index + 1) % 12]
    return None


def read_hue(munsell: Munsell) -> HueReading:
    """Family, neighbour, leaning, class and angle of a colour."""
    hue = munsell.hue
    if hue is not None and munsell.chroma >= NEAR_NEUTRAL_CHROMA:
        family = family_of(hue)
        also = _neighbour_close_by(hue)
        return HueReading(family, also, None, None, hue_class(family), wheel_deg(hue))

    neutral: Neutral = "grey"
    if munsell.value >= WHITE_VALUE:
        neutral = "white"
    elif munsell.value < BLACK_VALUE:
        neutral = "black"
    if hue is None or munsell.chroma < NEUTRAL_CHROMA:
        return HueReading(None, None, None, neutral, None, None)
    return HueReading(None, None, family_of(hue), neutral, None, wheel_deg(hue))

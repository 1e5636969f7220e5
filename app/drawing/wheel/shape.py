"""The wheel's measures, what it shows, and the places that come out of laying it out.

All lengths are fractions of R, the outer radius of the primaries' wedges; a few have a floor in
pixels. Angles run clockwise from yellow on top.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import Final

from PySide6.QtCore import QPointF, QRectF

WEDGES: Final = 12
STEP_DEG: Final = 30.0
INNER: Final = 0.655
# Class by shape: primaries reach furthest, tertiaries least.
OUTER_OF_CLASS: Final = (1.0, 0.95, 0.975, 0.95)
GAP_DEG: Final = 1.5
DISC: Final = 0.62
MARKER: Final = 0.078
LEAST_MARKER_PX: Final = 11.0
CLEAR_PX: Final = 6.0
WAITING_CLEAR: Final = 1.12
"""From the disc's edge to the middle of a marker that waits, in its radii."""

LEAST_NAME_PX: Final = 12.0

# The wedges reach this much further in for each unit of larger text, so that their names can grow.
_YIELDS_TO_TEXT: Final = 0.2
_MOST_TEXT: Final = 1.6


@dataclass(frozen=True)
class WheelMarker:
    """One band on the wheel.

    Attributes
    ----------
    letter : str
    wheel_deg : float or None
        Clockwise from yellow; None has no direction at all and is in the middle.
    place : float
        Distance from the middle as a fraction of the disc, from `intensity_place`:
        a marker stands in the ring whose word it is given.
    colour, ink : str
        "#rrggbb" of the disc and of its letter.
    family, complement : int or None
        Number of its own wedge, and of the opposite one, from yellow; None when near neutral.
    band : int or None
        Number of the band; None: the marker's own number.
    second : bool
        The band's second colour: a smaller disc with the same letter.
    """

    letter: str
    wheel_deg: float | None
    place: float
    colour: str
    ink: str
    family: int | None = None
    complement: int | None = None
    band: int | None = None
    second: bool = False


@dataclass(frozen=True)
class WheelView:
    """What the wheel shows.

    Attributes
    ----------
    markers : tuple of WheelMarker
    colours, inks, names : tuple of str, 12 each
        Fill of each wedge, black or white upon it, and its name, from yellow clockwise.
    chosen : int or None
        The marker whose way to the neutral middle is shown.
    intensity_words : (str, str, str)
        Dull, moderate, intense; () leaves them out.
    px : float
        One pixel in the rectangle's unit: the floors of text and marker follow it.
    lit : tuple of int or None
        Wedges in full colour, the others greyed; None lights all.
    muted : tuple of str, 12, or ()
        The greyed fills; only needed with `lit`.
    show_names : bool
    waiting : bool
        The intensity is not told yet: markers wait inside, at the foot of their wedge, on a
        plain disc that has no rings to read one from.
    show_way : bool
        The arrow to the middle and the dashes on to the complement.
    marker : float
        Radius of a marker as a fraction of R.
    letter : float
        Size of a marker's letter as a fraction of its radius.
    text : float
        The reader's factor on names, words and letters: from 1, as far as there is room.
    """

    markers: tuple[WheelMarker, ...]
    colours: tuple[str, ...]
    inks: tuple[str, ...]
    names: tuple[str, ...]
    chosen: int | None = None
    intensity_words: tuple[str, ...] = ()
    px: float = 1.0
    lit: tuple[int, ...] | None = None
    muted: tuple[str, ...] = ()
    show_names: bool = True
    waiting: bool = False
    show_way: bool = True
    marker: float = MARKER
    letter: float = 1.02
    text: float = 1.0


@dataclass(frozen=True)
class Placed:
    """A marker's disc and its true place, which has a dot of its own once the disc left it."""

    disc: QPointF
    dot: QPointF
    moved: bool


@dataclass(frozen=True)
class Word:
    """A word with its place and size; `squeeze` is its width, 1 as the face has it."""

    text: str
    rect: QRectF
    size: float
    squeeze: float = 1.0


@dataclass(frozen=True)
class WheelGeometry:
    """Everything's place, in the rectangle's coordinates."""

    centre: QPointF
    radius: float
    marker_radius: float
    placed: tuple[Placed, ...]
    names: tuple[tuple[Word, ...], ...]
    words: tuple[Word, ...]
    way: tuple[QPointF, QPointF] | None
    """From the chosen band's place to the edge of the neutral core."""
    onward: tuple[QPointF, QPointF] | None
    """From the middle to the complement's wedge."""
    inner: float
    """Inner radius of the wedges, as a fraction of R."""
    disc: float
    """Radius of the disc that bears the markers, as a fraction of R."""


def outer_of(wedge: int) -> float:
    """Outer radius of a wedge, as a fraction of R."""
    return OUTER_OF_CLASS[wedge % 4]


def inner_of(text: float) -> float:
    """Inner radius of the wedges, as a fraction of R: larger names want broader wedges."""
    return INNER - _YIELDS_TO_TEXT * (min(max(text, 1.0), _MOST_TEXT) - 1.0)


def disc_of(text: float) -> float:
    """Radius of the disc within the wedges, as a fraction of R."""
    return DISC - INNER + inner_of(text)


def polar(centre: QPointF, distance: float, deg: float) -> QPointF:
    """The point at a distance and an angle clockwise from straight up."""
    turn = math.radians(deg)
    return QPointF(centre.x() + distance * math.sin(turn), centre.y() - distance * math.cos(turn))

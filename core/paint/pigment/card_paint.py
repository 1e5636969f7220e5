"""What a painted swatch card says of one paint."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

Trust = Literal["known well", "roughly", "stands in"]
"""How well a card fixes a paint: see `core.paint.own.known`."""

Light = Literal["window", "lamps", "scan"]
"""What the card's picture was taken by."""

TRUSTS: tuple[Trust, ...] = ("known well", "roughly", "stands in")
LIGHTS: tuple[Light, ...] = ("window", "lamps", "scan")


@dataclass(frozen=True)
class Reading:
    """The colour of one piece of a painted field.

    Attributes
    ----------
    field : int
        0 for the paint alone; 1 and 2 for its mixes with the row's partners.
    at : float
        Where in the field's course from dark to pale, 0..1.
    Lab : tuple of 3 floats
        Beside the card's own paper, under D65.
    partner : str
        Key of the partner, a paint of the catalogue or of the card; "" for the paint alone.
    """

    field: int
    at: float
    Lab: tuple[float, float, float]
    partner: str = ""


MOST_TAUGHT = 40
"""Scraps a paint remembers having learned from: the last ones."""


@dataclass(frozen=True)
class TaughtScrap:
    """A dried stroke of a mix that taught the box what its paints are.

    Attributes
    ----------
    parts : tuple of (paint key, parts)
        Of the puddle, with what was added to it.
    Lab : tuple of 3 floats
        Beside its paper, under D65.
    """

    parts: tuple[tuple[str, float], ...]
    Lab: tuple[float, float, float]


@dataclass(frozen=True)
class CardPaint:
    """A paint as it was fitted to its fields of a swatch card.

    Attributes
    ----------
    K, S : tuple of 41 floats
        Absorption and scattering per hundredth of a millilitre, 380..780 nm in 10 nm steps.
    directions : tuple of tuples of 82 floats
        Standard deviations of log K and log S along the directions that move mixes most; up to
        four, independent of one another.
    spread : float
        Median spread of the reference mixes, CIEDE2000.
    trust : Trust
    light : Light
    prior : int
        Version of what was taken for likely before the card was seen.
    readings : tuple of Reading
        What it was fitted to, so that it can be fitted again.
    scraps : tuple of TaughtScrap
        What it learned from since.
    """

    K: tuple[float, ...]
    S: tuple[float, ...]
    directions: tuple[tuple[float, ...], ...]
    spread: float
    trust: Trust
    light: Light
    prior: int
    readings: tuple[Reading, ...] = ()
    scraps: tuple[TaughtScrap, ...] = ()

    def __hash__(self) -> int:
        # A box is hashed often: forty numbers tell two paints apart as well as a thousand do.
        return hash(self.K)

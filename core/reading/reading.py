"""What was measured of a colour and of a band, before it becomes words."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike

from core.colour.lab import Lab_to_srgb
from core.colour.munsell import Lab_to_munsell, Munsell, munsell_of
from core.colour.srgb import srgb_to_hex
from core.reading.tint import is_pale
from core.reading.wheel import NEAR_NEUTRAL_CHROMA, Family, HueReading, complement, read_hue

ValueWord = Literal["very dark", "dark", "middle", "light", "very light"]
IntensityWord = Literal["near neutral", "dull", "moderate", "intense"]
IntensitySaid = Literal["pale", "near neutral", "dull", "moderate", "intense"]

VALUE_WORDS: tuple[ValueWord, ...] = ("very dark", "dark", "middle", "light", "very light")
INTENSITY_WORDS: tuple[IntensityWord, ...] = ("near neutral", "dull", "moderate", "intense")

_VALUE_BOUNDS = (2.5, 4.5, 6.5, 8.5)


@dataclass(frozen=True)
class ColourReading:
    """One colour on every scale the program speaks of.

    Attributes
    ----------
    srgb : tuple of 3 floats
        Encoded sRGB, 0..1.
    Lab : tuple of 3 floats
        CIELAB, D65.
    munsell : Munsell
    hue : HueReading
    value_word : one of VALUE_WORDS
    intensity_word : one of INTENSITY_WORDS
    complement : str or None
        The family opposite; of a near neutral, opposite to its leaning; None without any hue.
    """

    srgb: tuple[float, float, float]
    Lab: tuple[float, float, float]
    munsell: Munsell
    hue: HueReading
    value_word: ValueWord
    intensity_word: IntensityWord
    complement: Family | None

    @cached_property
    def pale(self) -> bool:
        """Weak in intensity because it is thin, as a clean wash is, not because it is greyed."""
        if self.hue.family is None and self.hue.leaning is None:
            return False
        if self.intensity_word in ("moderate", "intense"):
            return False
        return is_pale(self.munsell.hue, self.munsell.value, self.munsell.chroma)

    @property
    def intensity_said(self) -> IntensitySaid:
        """The intensity word, or "pale" for what is dull by number only because it is thin."""
        return "pale" if self.intensity_word == "dull" and self.pale else self.intensity_word

    @cached_property
    def hex(self) -> str:
        """`#rrggbb`."""
        return srgb_to_hex(self.srgb)


@dataclass(frozen=True)
class SecondColour:
    """What is between a band's main colour: a cloud, or a glow between clouds.

    Attributes
    ----------
    colour : ColourReading
    share : float
        What it covers of the band's sky, 0..0.5.
    soft : bool
        Whether it melts into the main colour rather than ending at an edge.
    """

    colour: ColourReading
    share: float
    soft: bool


@dataclass(frozen=True)
class BandReading:
    """One band of the sky.

    Attributes
    ----------
    letter : str
        "A" is the top band.
    top, bottom : float
        Fractions of the photo's height.
    colour : ColourReading or None
        Its main colour; None only when the band has no pixel of sky at all.
    left, centre, right : ColourReading or None
        Its thirds.
    spread : float
        How far the band's pixels are from its colour, in delta E 2000.
    stacked : bool
        Whether two colours are above each other in it, so that one more line would split them.
    clipped_share : float
        Share of its pixels, 0..1, in which a channel stands at its end.
    pixel_share : float
        Share of the band's pixels, 0..1, that are sky and opaque.
    second : SecondColour or None
        A second colour, which no line across could part from the main one.
    overall : ColourReading or None
        The colour of all its pixels together, where there is a second one; else None.
    """

    letter: str
    top: float
    bottom: float
    colour: ColourReading | None
    left: ColourReading | None
    centre: ColourReading | None
    right: ColourReading | None
    spread: float
    stacked: bool
    clipped_share: float
    pixel_share: float
    second: SecondColour | None = None
    overall: ColourReading | None = None

    @property
    def as_one(self) -> ColourReading | None:
        """Its colour if it must be one: of all its pixels together."""
        return self.colour if self.overall is None else self.overall


def value_word(value: float) -> ValueWord:
    """The word for a Munsell value, one of VALUE_WORDS."""
    return VALUE_WORDS[sum(value >= bound for bound in _VALUE_BOUNDS)]


def intensity_bounds(value: float) -> tuple[float, float, float]:
    """Chroma at which "dull", "moderate" and "intense" begin, for a Munsell value.

    Dark colours reach their words at a lower chroma, as the ISCC-NBS modifiers have it (Kelly and
    Judd 1976, NBS Special Publication 440): the bounds rise from value 1 to 5.5.
    """
    share = min(max((value - 1) / 4.5, 0.0), 1.0)
    return (NEAR_NEUTRAL_CHROMA, 2.0 + 2.5 * share, 5.5 + 1.75 * share)


INTENSITY_RINGS = (0.0, 0.16, 0.42, 0.70, 0.97)
"""Where the four words begin on the wheel's disc, centre 0, rim 1, and where the last ends."""

_MOST_CHROMA = 14.0


def intensity_place(value: float, chroma: float) -> float:
    """How far from the centre of the wheel's disc a colour stands, 0..0.97.

    Piecewise linear between the bounds of the words at this value, so that a marker always
    stands in the ring whose word it is given.
    """
    chromas = (0.0, *intensity_bounds(value), _MOST_CHROMA)
    return float(np.interp(chroma, chromas, INTENSITY_RINGS))


def intensity_word(value: float, chroma: float) -> IntensityWord:
    """The word for a Munsell chroma, one of INTENSITY_WORDS."""
    return INTENSITY_WORDS[sum(chroma >= bound for bound in intensity_bounds(value))]


def read_colours(Lab: ArrayLike) -> tuple[ColourReading, ...]:
    """Read several colours at once: for a few dozen much faster than one by one.

    Parameters
    ----------
    Lab : array_like, shape (n, 3), float
        CIELAB, D65.

    Raises
    ------
    ValueError
        Another shape, or a number that is not finite.
    """
    Lab = np.asarray(Lab, dtype=np.float64)
    if Lab.ndim != 2 or Lab.shape[1] != 3:
        raise ValueError(f"colours to read need the shape (n, 3), not {Lab.shape}")
    if not np.isfinite(Lab).all():
        raise ValueError("a colour to read is not finite: leave bands without pixels out")
    return tuple(
        _reading(rgb, lab, munsell_of(hvc))
        for rgb, lab, hvc in zip(
            Lab_to_srgb(Lab).tolist(), Lab.tolist(), Lab_to_munsell(Lab).tolist(), strict=True
        )
    )


def read_colour(Lab: ArrayLike) -> ColourReading:
    """Read one colour, CIELAB of shape (3,); see `read_colours`."""
    return read_colours(np.asarray(Lab, dtype=np.float64)[None])[0]


def _reading(rgb: list[float], Lab: list[float], munsell: Munsell) -> ColourReading:
    hue = read_hue(munsell)
    own = hue.family or hue.leaning
    red, green, blue = rgb
    L, a, b = Lab
    return ColourReading(
        srgb=(red, green, blue),
        Lab=(L, a, b),
        munsell=munsell,
        hue=hue,
        value_word=value_word(munsell.value),
        intensity_word=intensity_word(munsell.value, munsell.chroma),
        complement=None if own is None else complement(own),
    )

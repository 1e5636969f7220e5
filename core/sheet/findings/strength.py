"""Strength: whether the whole sheet has too little or too much of the right paint.

The commonest fault of a first try is one of water, not of colour: every band has its hue, all of
them are too pale. So one strength is looked for that explains the whole sheet (the optical density
of a wash grows with its paint), and what a band still lacks beyond it is judged against the photo
at that strength. A pale wash may lean towards a neighbouring hue by itself; that is not held
against its hue.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from core.colour import XYZ_to_Lab, delta_E_2000, linear_to_XYZ
from core.colour.lab import Lab_to_XYZ, XYZ_to_linear
from core.colour.working_space import Floats
from core.reading.reading import BandReading, ColourReading, read_colour
from core.sheet.match.pairing import like_with_like
from core.sheet.measuring import CHROMA_STEP, VALUE_STEP
from core.sheet.result import BandCheck, Strength

TOO_PALE, TOO_STRONG = 0.84, 1.2
"""Paint over the photo's from which the strength itself is spoken of."""

_TRIED = np.exp(np.linspace(np.log(0.2), np.log(4.0), 61))
_EXPLAINED = 0.65  # what the strength must leave of the difference, as a share
_CHROMAS = np.exp(np.linspace(np.log(0.3), np.log(2.0), 25))[:, None, None]
_BETTER = 1.0  # dE00 by which paint greyed or purer throughout must not explain it better
_FLOOR = 3.0  # dE00 that no sheet falls below: so much remains of a good explanation
_SAME_WAY = 0.6  # of the bands that so much paint would change
_DIFFERS = 0.25  # value steps
_LIGHTNESS = 10.0  # of CIELAB to a value step, near enough
_SEEN_IN = 0.4  # of the bands that would show it


def strength_of(wanted: tuple[BandReading, ...], found: tuple[BandReading, ...]) -> Strength:
    """The strength that explains the sheet best.

    Parameters
    ----------
    wanted, found : tuple of BandReading
        The photo's bands and the sheet's.
    """
    pairs = [pair for a, b in zip(wanted, found, strict=True) for pair in _alike(a, b)]
    if not pairs:
        return Strength()
    aims = np.array([a.Lab for a, _ in pairs])
    sheet = np.array([b.Lab for _, b in pairs])
    tried = stronger_Lab(aims[None], _TRIED[:, None, None])
    apart = np.minimum(delta_E_2000(tried, sheet[None]), 25.0).mean(axis=1)
    best = int(np.argmin(apart + 0.2 * np.abs(np.log(_TRIED))))
    share = float(_TRIED[best])
    if TOO_PALE <= share <= TOO_STRONG:
        return Strength(share)
    plain = float(np.minimum(delta_E_2000(aims, sheet), 25.0).mean())
    duller = aims * np.concatenate([np.ones((len(_CHROMAS), 1, 1)), _CHROMAS, _CHROMAS], axis=2)
    greyed = float(np.minimum(delta_E_2000(duller, sheet[None]), 25.0).mean(axis=1).min())
    explains = apart[best] <= min(max(_EXPLAINED * plain, _FLOOR), greyed + _BETTER)
    steps = np.array([b.munsell.value - a.munsell.value for a, b in pairs])
    way = steps > _DIFFERS if share < 1 else steps < -_DIFFERS
    # What is nearly white, or nearly black, hardly shows how much paint is in it.
    shows = np.abs(tried[best, :, 0] - aims[:, 0]) > _LIGHTNESS * _DIFFERS
    same = bool(way.any()) and float((way & shows).sum()) >= _SAME_WAY * float(shows.sum())
    return Strength(share, bool(explains) and same)


def _alike(wanted: BandReading, found: BandReading) -> list[tuple[ColourReading, ColourReading]]:
    """The photo's colours of a band beside the sheet's: cloud beside cloud, sky beside sky, and
    all of the photo's band beside a single wash."""
    found = like_with_like(wanted, found)
    if wanted.colour is None or found.colour is None:
        return []
    if wanted.second is None:
        return [(wanted.colour, found.colour)]
    if found.second is None:
        return [(wanted.as_one or wanted.colour, found.colour)]
    return [(wanted.colour, found.colour), (wanted.second.colour, found.second.colour)]


def stronger_Lab(Lab: Floats, share: Floats | float) -> Floats:
    """CIELAB (..., 3) of washes with so many times the paint."""
    linear = np.clip(XYZ_to_linear(Lab_to_XYZ(Lab)), 0.003, 1.0)
    return np.asarray(XYZ_to_Lab(linear_to_XYZ(linear**share)))


def at_strength(colour: ColourReading, share: float) -> ColourReading:
    """The reading of a colour with so many times its paint."""
    L, a, b = stronger_Lab(np.array(colour.Lab), share).tolist()
    return read_colour((L, a, b))


def reading_at(reading: BandReading, share: float) -> BandReading:
    """A band's reading with so many times its paint."""

    def at(colour: ColourReading | None) -> ColourReading | None:
        return None if colour is None else at_strength(colour, share)

    second = reading.second
    if second is not None:
        second = replace(second, colour=at_strength(second.colour, share))
    return replace(
        reading,
        colour=at(reading.colour),
        left=at(reading.left),
        centre=at(reading.centre),
        right=at(reading.right),
        overall=at(reading.overall),
        second=second,
    )


def is_seen(strength: Strength, bands: tuple[BandCheck, ...]) -> bool:
    """Whether so many bands differ in value or intensity that the strength is worth a word."""
    if not strength.told:
        return False
    off = sum(max(band.value_gap or 0.0, band.intensity_gap or 0.0) > 1 for band in bands)
    off += sum(bool({band.second.value, band.second.intensity} & {"close", "off"})
               for band in bands if band.second is not None)  # fmt: skip
    shows = sum(_would_show(colour, strength.share) for colour in _colours(bands))
    return off >= max(1, round(_SEEN_IN * shows))


def _colours(bands: tuple[BandCheck, ...]) -> list[ColourReading]:
    """The photo's colours, a band's second one too."""
    found = [band.reference.colour for band in bands]
    found += [band.reference.second.colour for band in bands if band.reference.second is not None]
    return [colour for colour in found if colour is not None]


def hardly_shows(bands: tuple[BandCheck, ...]) -> bool:
    """Whether the photo is so pale that half the paint, or twice as much, would still match."""
    return not any(_would_show(colour, k) for colour in _colours(bands) for k in (0.5, 2.0))


def _would_show(colour: ColourReading, share: float) -> bool:
    """Whether so many times its paint takes a colour further than what still matches."""
    other = at_strength(colour, share).munsell
    steps = abs(other.value - colour.munsell.value) / VALUE_STEP
    return max(steps, abs(other.chroma - colour.munsell.chroma) / CHROMA_STEP) > 1

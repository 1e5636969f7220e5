"""Toning down: what the complement does to a mix, a little at a time."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

import numpy as np

from core.colour import delta_E_2000
from core.paint.box import Box
from core.paint.classroom import Built, classroom_mixes
from core.paint.hues import turn
from core.paint.measured import FULL_LOAD_ML, load_Lab
from core.paint.mix import Mix, make_mix
from core.paint.roles import offsets
from core.paint.shortfall import CLOSE_WITHIN
from core.reading import BandReading, ColourReading, read_colour
from core.wheel import complement

FRACTIONS: tuple[Fraction, ...] = (
    Fraction(0),
    Fraction(1, 20),
    Fraction(1, 10),
    Fraction(1, 5),
    Fraction(1, 3),
)
"""Share of all paint that is complement: 1/20 is one part to nineteen of the mix."""

MUD_CHROMA = 2.0
"""Munsell chroma below which a colour that was to have a hue has become mud."""

TONER_WITHIN_DEG = 75.0

StepNote = Literal["more intense", "matches", "nearest", "duller", "mud"]


@dataclass(frozen=True)
class LadderStep:
    """One rung.

    Attributes
    ----------
    fraction : Fraction
        Share of all paint that is toner.
    colour : ColourReading
    note : StepNote
    hue_drift_deg : float or None
        On the wheel, from the untoned mix, clockwise positive; None where there is no hue.
    value_drift : float
        Munsell steps from the untoned mix; negative is darker.
    """

    fraction: Fraction
    colour: ColourReading
    note: StepNote
    hue_drift_deg: float | None
    value_drift: float


@dataclass(frozen=True)
class Ladder:
    """A mix with more and more of its toner.

    Attributes
    ----------
    base : Mix
        The mix without toner.
    toner : tuple of (paint key, parts)
    steps : tuple of LadderStep
    matched : int or None
        The step nearest the band; None when no step comes close.
    complement : str or None
        The family truly opposite the untoned mix.
    toner_family : str or None
        The toner's own family on the wheel.
    """

    base: Mix
    toner: tuple[tuple[str, int], ...]
    steps: tuple[LadderStep, ...]
    matched: int | None
    complement: str | None
    toner_family: str | None


@dataclass(frozen=True)
class TonerTried:
    """What one toner does to a mix.

    Attributes
    ----------
    parts : tuple of (paint key, parts)
    halves_at : float or None
        Share of all paint at which half the chroma is gone; None if it never is, up to a half.
    hue_drift_deg : float
        How far the hue has turned by then, degrees in CIELAB, unsigned.
    value_drift : float
        Munsell steps by then; negative is darker.
    chroma_kept_at_tenth : float
        Share of chroma left when one tenth is toner.
    touchy : bool
        A strong stainer: a speck too many is too much.
    """

    parts: tuple[tuple[str, int], ...]
    halves_at: float | None
    hue_drift_deg: float
    value_drift: float
    chroma_kept_at_tenth: float
    touchy: bool


def toned_Lab(box: Box, base: Mix, toner: dict[str, int], fractions: np.ndarray) -> np.ndarray:
    """The mix with its own paint left as it is and toner added, shape (n, 3).

    Parameters
    ----------
    base : Mix
    toner : dict of paint key to parts
    fractions : ndarray, shape (n,), float
        Share of all paint that is toner, 0..<1.
    """
    base_vector = box.load_vector(base.loads_ml)
    total = sum(toner.values())
    unit = box.load_vector({key: count / total for key, count in toner.items()})
    fractions = np.asarray(fractions, float)
    added = base.load_ml * fractions / (1 - fractions)
    return load_Lab(base_vector + added[:, None] * unit)


def tone_down_ladder(
    box: Box, base: Mix, toner: dict[str, int], target: ColourReading | None = None
) -> Ladder:
    """The rungs for any mix and any toner.

    Parameters
    ----------
    box : Box
    base : Mix
    toner : dict of paint key to parts
        One paint or a mix.
    target : ColourReading, optional
        The band; marks the matching step.
    """
    shares = np.array([float(fraction) for fraction in FRACTIONS])
    colours = [read_colour(Lab) for Lab in toned_Lab(box, base, toner, shares)]
    matched, wanted_chroma, exact = None, None, False
    if target is not None:
        wanted_chroma = target.munsell.chroma
        gaps = delta_E_2000(np.array([c.Lab for c in colours]), np.array(target.Lab))
        nearest = int(np.argmin(gaps))
        matched = nearest if gaps[nearest] <= CLOSE_WITHIN else None
        exact = bool(gaps[nearest] <= CLOSE_WITHIN / 2)
    first = colours[0]
    steps = []
    for number, (fraction, colour) in enumerate(zip(FRACTIONS, colours, strict=True)):
        note = _note(number, matched, exact, colour, wanted_chroma)
        start, end = first.hue.wheel_deg, colour.hue.wheel_deg
        drift = None if start is None or end is None else turn(start, end)
        steps.append(
            LadderStep(fraction, colour, note, drift, colour.munsell.value - first.munsell.value)
        )
    own = first.hue.family or first.hue.leaning
    toner_mix = make_mix(box, toner, base.load_ml)
    toner_hue = toner_mix.colour.hue
    return Ladder(
        base,
        toner_mix.parts,
        tuple(steps),
        matched,
        None if own is None else complement(own),
        toner_hue.family or toner_hue.leaning,
    )


def _note(
    number: int,
    matched: int | None,
    exact: bool,
    colour: ColourReading,
    wanted_chroma: float | None,
) -> StepNote:
    if number == matched:
        return "matches" if exact else "nearest"
    if matched is not None and number < matched:
        return "more intense"
    is_mud = colour.munsell.chroma < MUD_CHROMA
    if number and is_mud and (wanted_chroma is None or wanted_chroma >= MUD_CHROMA):
        return "mud"
    if wanted_chroma is not None and colour.munsell.chroma > wanted_chroma:
        return "more intense"
    return "duller"


def try_toner(box: Box, base: Mix, toner: dict[str, int]) -> TonerTried:
    """Measure what a toner does to a mix."""
    shares = np.concatenate([np.linspace(0, 0.5, 101)])
    Lab = toned_Lab(box, base, toner, shares)
    chroma = np.hypot(Lab[:, 1], Lab[:, 2])
    halved = np.flatnonzero(chroma <= chroma[0] / 2)
    at = int(halved[0]) if halved.size else len(shares) - 1
    angle = np.degrees(np.arctan2(Lab[:, 2], Lab[:, 1]))
    first, then = read_colour(Lab[0]), read_colour(Lab[at])
    return TonerTried(
        tuple(toner.items()),
        float(shares[at]) if halved.size else None,
        abs(float((angle[at] - angle[0] + 180) % 360 - 180)),
        then.munsell.value - first.munsell.value,
        float(chroma[20] / max(chroma[0], 1e-9)),
        any(box.paint(key).is_strong for key in toner),
    )


def toners(box: Box, base: Mix) -> tuple[TonerTried, ...]:
    """The box's paints from across the wheel, the cleanest toner first.

    A good toner halves the intensity and hardly turns the hue; one that stains strongly is put
    behind the others.
    """
    hue = base.colour.hue.wheel_deg
    if hue is None:
        return ()
    tried = []
    for key, away in offsets(box.paints, hue).items():
        if key not in base.keys and 180 - abs(away) <= TONER_WITHIN_DEG:
            tried.append(try_toner(box, base, {key: 1}))
    useful = [item for item in tried if item.halves_at is not None]
    return tuple(sorted(useful, key=lambda item: item.hue_drift_deg + 20 * item.touchy))


def true_complement(box: Box, base: Mix) -> dict[str, int] | None:
    """Parts that make the family truly opposite a mix; None when the box cannot.

    A paint that stands there, or the two on either side of it, in the parts that come nearest.
    """
    hue = base.colour.hue.wheel_deg
    if hue is None:
        return None
    opposite = (hue + 180) % 360
    off = offsets(box.paints, opposite)
    near = [key for key, away in off.items() if abs(away) <= 12]
    if near:
        return {min(near, key=lambda key: abs(off[key])): 1}
    left = [key for key, away in off.items() if -70 < away < 0]
    right = [key for key, away in off.items() if 0 < away < 70]
    if not left or not right:
        return None
    one, other = max(left, key=lambda key: off[key]), min(right, key=lambda key: off[key])
    best: tuple[float, dict[str, int]] | None = None
    for a, b in ((1, 1), (2, 1), (1, 2), (3, 1), (1, 3), (4, 1), (1, 4)):
        mix = make_mix(box, {one: a, other: b}, min(0.01, FULL_LOAD_ML))
        angle = mix.colour.hue.wheel_deg
        gap = 180.0 if angle is None else abs(turn(opposite, angle))
        if best is None or gap < best[0] - 1e-9:
            best = (gap, {one: a, other: b})
    return best[1] if best else None


@dataclass(frozen=True)
class ToneDownParts:
    """What to say of a band's toning down, in parts from the box.

    Attributes
    ----------
    base : tuple of (paint key, parts)
        What makes the hue.
    toner : str
        Paint key.
    base_parts, toner_parts : int
        Parts of the base together, and of the toner.
    """

    base: tuple[tuple[str, int], ...]
    toner: str
    base_parts: int
    toner_parts: int


def tone_down_parts(reading: BandReading | ColourReading, box: Box) -> ToneDownParts | None:
    """Parts for the sentence about toning a band down.

    Returns
    -------
    ToneDownParts or None
        None when the band has no colour, or its classroom mix needs no toning down.
    """
    colour = reading.colour if isinstance(reading, BandReading) else reading
    if colour is None:
        return None
    paints = tuple(paint for paint in box.paints if paint.group not in ("black", "white"))
    built = classroom_mixes(box, paints, colour)
    if not built or built[0].structure.toner is None:
        return None
    return parts_of(built[0])


def parts_of(built: Built) -> ToneDownParts | None:
    """The same from a mix already built."""
    toner = built.structure.toner
    if toner is None:
        return None
    counts = dict(built.mix.parts)
    toner_parts = counts.pop(toner)
    return ToneDownParts(tuple(counts.items()), toner, sum(counts.values()), toner_parts)

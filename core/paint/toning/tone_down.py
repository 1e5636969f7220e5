"""Toning down: what the complement does to a mix, a little at a time."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour import delta_E_2000
from core.paint.box.box import Box
from core.paint.mixture.mix import Mix, make_mix
from core.paint.mixture.shortfall import CLOSE_WITHIN, MATCHES_WITHIN
from core.paint.pigment.hues import paint_deg, turn
from core.reading.reading import ColourReading, read_colours
from core.reading.wheel import (
    NEAR_NEUTRAL_CHROMA,
    Family,
    complement,
    family_of,
    hue_of_wheel_deg,
    wheel_distance,
)

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

TURNED_DEG = 50.0
"""Further round the wheel than this a dulled colour is no longer the one toned down."""

StepNote = Literal["more intense", "matches", "nearest", "mix", "duller", "mud"]
"""What a rung is for the band; "mix" is the band's own mix where another rung comes nearer."""


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
        The step that is the band's mix, where the ladder is made for one; else the nearest to the
        band. None when no step comes close.
    complement : Family or None
        The family truly opposite the band; without a band, opposite the untoned mix.
    toner_family : Family or None
        The toner's own family on the wheel.
    """

    base: Mix
    toner: tuple[tuple[str, int], ...]
    steps: tuple[LadderStep, ...]
    matched: int | None
    complement: Family | None
    toner_family: Family | None


def toned_Lab(
    box: Box, base: Mix, toner: dict[str, int], fractions: ArrayLike
) -> NDArray[np.float64]:
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
    return box.pigments.Lab(base_vector + added[:, None] * unit)


def tone_down_ladder(
    box: Box,
    base: Mix,
    toner: dict[str, int],
    target: ColourReading | None = None,
    share: Fraction | None = None,
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
    share : Fraction, optional
        The toner's share in the band's mix: takes the place of the nearest step, and is marked.
    """
    fractions, mixed = rungs(share)
    shares = np.array([float(fraction) for fraction in fractions])
    colours = read_colours(toned_Lab(box, base, toner, shares))
    first = colours[0]
    matched, nearest, wanted_chroma = mixed, None, None
    exact: set[int] = set()
    if target is not None:
        wanted_chroma = target.munsell.chroma
        gaps = delta_E_2000(np.array([c.Lab for c in colours]), np.array(target.Lab))
        exact = set(np.flatnonzero(gaps <= MATCHES_WITHIN).tolist())
        nearest = int(np.argmin(gaps))
        if gaps[nearest] > CLOSE_WITHIN:
            nearest = None
        matched = nearest if mixed is None else mixed
    steps: list[LadderStep] = []
    for number, (fraction, colour) in enumerate(zip(fractions, colours, strict=True)):
        if number in exact:
            note: StepNote = "matches"
        elif number == matched:
            note = "nearest" if number == nearest else "mix"
        else:
            note = _note(number, matched, first, colour, wanted_chroma)
        if steps and steps[-1].note == "mud":
            note = "mud"  # beyond mud another hue may come up: not the one that was toned down
        start, end = first.hue.wheel_deg, colour.hue.wheel_deg
        drift = None if start is None or end is None else turn(start, end)
        steps.append(
            LadderStep(fraction, colour, note, drift, colour.munsell.value - first.munsell.value)
        )
    wanted = first if target is None else target
    own = wanted.hue.family or wanted.hue.leaning or first.hue.family or first.hue.leaning
    toner_mix = make_mix(box, toner, base.load_ml)
    toner_family = _family(box, toner_mix)
    opposite = None if own is None else complement(own)
    if wanted.hue.family is None and not _beside(toner_family, opposite):
        opposite = None  # a grey is made by any pair that cancels, opposite or not
    return Ladder(
        base,
        toner_mix.parts,
        tuple(steps),
        matched,
        opposite,
        toner_family,
    )


def _beside(one: Family | None, other: Family | None) -> bool:
    return one is not None and other is not None and wheel_distance(one, other) <= 1


def _family(box: Box, toner: Mix) -> Family | None:
    """A paint's family by its full wash; a mix's by its own colour."""
    if len(toner.parts) == 1:
        place = paint_deg(box.paint(toner.keys[0]))
        return None if place is None else family_of(hue_of_wheel_deg(place))
    return toner.colour.hue.family or toner.colour.hue.leaning


def rungs(share: Fraction | None) -> tuple[tuple[Fraction, ...], int | None]:
    """The ladder's shares, and which of them is the mix's own.

    >>> rungs(Fraction(1, 6))[0][3], rungs(Fraction(1, 6))[1]
    (Fraction(1, 6), 3)
    """
    if share is None:
        return FRACTIONS, None
    if not share:
        return FRACTIONS, 0
    nearest = min(range(1, len(FRACTIONS)), key=lambda n: abs(FRACTIONS[n] - share))
    return (*FRACTIONS[:nearest], share, *FRACTIONS[nearest + 1 :]), nearest


def _note(
    number: int,
    matched: int | None,
    first: ColourReading,
    colour: ColourReading,
    wanted_chroma: float | None,
) -> StepNote:
    if matched is not None and number < matched:
        return "more intense"
    if number and _is_mud(colour, first, wanted_chroma):
        return "mud"
    if matched is not None:
        return "duller"
    if wanted_chroma is not None and colour.munsell.chroma > wanted_chroma:
        return "more intense"
    return "duller"


def _is_mud(colour: ColourReading, first: ColourReading, wanted_chroma: float | None) -> bool:
    """Whether toning down has gone so far that neither hue is left, or another has come up."""
    if wanted_chroma is not None and wanted_chroma < NEAR_NEUTRAL_CHROMA:
        return False  # a grey is what was wanted
    limit = MUD_CHROMA if wanted_chroma is None else min(MUD_CHROMA, wanted_chroma / 2)
    if colour.munsell.chroma < limit:
        return True
    start, end = first.hue.wheel_deg, colour.hue.wheel_deg
    turned = start is not None and end is not None and abs(turn(start, end)) > TURNED_DEG
    return turned and colour.munsell.chroma < first.munsell.chroma / 2

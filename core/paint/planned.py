"""What a plan is made of: numbers and keys; `core.paint.words.mix` makes the sentences."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from core.paint.box.box import Box
from core.paint.box.cautions import Caution
from core.paint.mixture.mix import Mix
from core.paint.mixture.shortfall import Fault, MainHue, Shortfall
from core.paint.mixture.strength import Strength
from core.paint.pigment.primaries import Primary
from core.paint.reasons import Reason
from core.paint.toning.tone_down import Ladder
from core.paint.wash.amounts import Amounts, PaintSheet
from core.paint.wash.meeting import Meeting
from core.paint.wash.order import Order
from core.reading.quality import Verdict
from core.reading.reading import ColourReading, SecondColour

Kind = Literal["classroom", "closest", "by hand", "paper"]

Reach = Literal[
    "reached", "lacks", "too intense", "too light", "too dark", "too dull", "out of reach"
]
"""Whether the box reaches a band, or in what the band goes beyond every mix; "lacks" where the
box has no paint of a primary that the hue is made of."""


@dataclass(frozen=True)
class PlannedMix:
    """A mix proposed for a band.

    Attributes
    ----------
    kind : Kind
    mix : Mix
    base : tuple of str
        Paints that make the hue.
    toners : tuple of str
        Paints that tone it down, mostly one; two where a red and a yellow or a brown are the
        orange of a blue. Empty where nothing is toned down.
    strength : Strength
    delta_E_2000 : float
    verdict : Verdict
    falls_short : Shortfall
    faults : tuple of Fault
        Those the eye would notice.
    too : MainHue or None
        The main hue it errs towards.
    why : tuple of Reason
    lacks : tuple of Primary
        Primaries that the hue is made of and the box has no paint of, where that shows: then
        nothing else needs to be said of what is off.
    """

    kind: Kind
    mix: Mix
    base: tuple[str, ...]
    toners: tuple[str, ...]
    strength: Strength
    delta_E_2000: float
    verdict: Verdict
    falls_short: Shortfall
    faults: tuple[Fault, ...]
    too: MainHue | None
    why: tuple[Reason, ...]
    lacks: tuple[Primary, ...] = ()

    @property
    def toner_share(self) -> Fraction:
        """Share of all paint that is toner."""
        parts = dict(self.mix.parts)
        return Fraction(sum(parts[key] for key in self.toners), max(self.mix.total, 1))


@dataclass(frozen=True)
class Alternative:
    """Another mix for the same band, with the reasons for or against it."""

    planned: PlannedMix
    prefer: bool
    reasons: tuple[Reason, ...]


Way = Literal[
    "dropped in wet", "laid after drying", "first, main dropped in wet", "first, main after drying"
]
"""When the second colour of a band is laid: after the main one, or before it."""


@dataclass(frozen=True)
class SecondMix:
    """What to mix for a band's second colour, and how to lay it.

    Attributes
    ----------
    target : SecondColour
        As read.
    planned : PlannedMix
        As for a band; bare paper where it is as light as that.
    way : Way
    """

    target: SecondColour
    planned: PlannedMix
    way: Way


@dataclass(frozen=True)
class BandMix:
    """Everything planned for one band.

    Attributes
    ----------
    letter : str
    target : ColourReading or None
        None when the band holds no sky; then nothing else is planned.
    classroom : PlannedMix or None
        The mix to use: as a teacher would write it, or as set by hand.
    closest : PlannedMix or None
        Only when it is clearly closer; none where the paper does.
    alternatives : tuple of Alternative
        Up to three.
    tone_down : Ladder or None
    reach : Reach
    meets_below : Meeting or None
        The wet edge with the band below.
    amount_ml : float
    second : SecondMix or None
        For the band's second colour, where it has one.
    """

    letter: str
    target: ColourReading | None
    classroom: PlannedMix | None
    closest: PlannedMix | None
    alternatives: tuple[Alternative, ...]
    tone_down: Ladder | None
    reach: Reach
    meets_below: Meeting | None = None
    amount_ml: float = 0.0
    second: SecondMix | None = None

    @property
    def closest_to_show(self) -> PlannedMix | None:
        """The closest mix, where the eye would see what it gains.

        Beside a mix that matches in hue, value and intensity it would only be one more thing to
        read.
        """
        chosen = self.classroom
        if chosen is None or chosen.verdict != "matches" or chosen.faults or chosen.too:
            return self.closest
        return None


@dataclass(frozen=True)
class MixPlan:
    """The plan for a whole sky."""

    box: Box
    bands: tuple[BandMix, ...]
    order: Order
    amounts: Amounts
    cautions: tuple[Caution, ...]
    sheet: PaintSheet
    drying_steps: float

    @property
    def different_mixes(self) -> int:
        """How many mixes to prepare: bands that share their parts take one, thinned."""
        return len({band.classroom.mix.parts for band in self.bands if band.classroom} - {()})

    @property
    def chosen_mixes(self) -> tuple[Mix, ...]:
        """The mixes shown as chosen, from the top band down."""
        return tuple(band.classroom.mix for band in self.bands if band.classroom is not None)

    @property
    def each_ml(self) -> float | None:
        """What every mix takes, where all of several take the same; None where they differ."""
        amounts = [band.amount_ml for band in self.bands if band.amount_ml]
        return amounts[0] if len(amounts) > 1 and len(set(amounts)) == 1 else None

    def band(self, letter: str) -> BandMix:
        """The band of a letter; KeyError when there is none."""
        for band in self.bands:
            if band.letter == letter:
                return band
        raise KeyError(letter)

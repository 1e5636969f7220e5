"""What a plan is made of: numbers and keys; `core.paint.words_mix` makes the sentences."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from core.paint.amounts import Amounts, PaintSheet
from core.paint.box import Box
from core.paint.cautions import Caution
from core.paint.compare import Fault
from core.paint.meeting import Meeting
from core.paint.mix import Mix
from core.paint.order import Order
from core.paint.shortfall import Shortfall, Verdict
from core.paint.strength import Strength
from core.paint.tone_down import Ladder
from core.reading import ColourReading

Kind = Literal["classroom", "closest", "by hand", "paper"]

Reach = Literal["reached", "too intense", "too light", "too dark", "too dull", "out of reach"]
"""Whether the box reaches a band, or in what the band goes beyond every mix."""

ReasonCode = Literal[
    # how a mix is built
    "at hue",
    "either side",
    "toned",
    "paper",
    "by hand",
    "pinned",
    "no neighbours",
    "greys",
    "steers",
    "toned and turned",
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
    """

    code: ReasonCode
    paints: tuple[str, ...] = ()
    hue: str | None = None
    letter: str | None = None


@dataclass(frozen=True)
class PlannedMix:
    """A mix proposed for a band.

    Attributes
    ----------
    kind : Kind
    mix : Mix
    base : tuple of str
        Paints that make the hue.
    toner : str or None
        Paint that tones it down.
    strength : Strength
    delta_E_2000 : float
    verdict : Verdict
    falls_short : Shortfall
    faults : tuple of Fault
        Those the eye would notice.
    too : str or None
        The main hue it errs towards.
    why : tuple of Reason
    """

    kind: Kind
    mix: Mix
    base: tuple[str, ...]
    toner: str | None
    strength: Strength
    delta_E_2000: float
    verdict: Verdict
    falls_short: Shortfall
    faults: tuple[Fault, ...]
    too: str | None
    why: tuple[Reason, ...]


@dataclass(frozen=True)
class Alternative:
    """Another mix for the same band, with the reasons for or against it."""

    planned: PlannedMix
    prefer: bool
    reasons: tuple[Reason, ...]


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
        Shown only when it is clearly closer.
    alternatives : tuple of Alternative
        Up to three.
    tone_down : Ladder or None
    reach : Reach
    meets_below : Meeting or None
        The wet edge with the band below.
    amount_ml : float
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

    def band(self, letter: str) -> BandMix:
        """The band of a letter; KeyError when there is none."""
        for band in self.bands:
            if band.letter == letter:
                return band
        raise KeyError(letter)

"""What is found on a sheet, piece by piece: light, lines, bands, edges, blooms, scores, findings.

Positions are fractions of the painted rectangle, as in `core.sheet.result`, which hands these
names on.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from core.reading.quality import ColourQuality, Verdict
from core.reading.reading import BandReading

VALUE_STEP = 0.5
"""Munsell value steps that still match; twice that is close."""
CHROMA_STEP = 1.0
"""The same of Munsell chroma."""

Corner = Literal["top left", "top right", "bottom right", "bottom left"]


@dataclass(frozen=True)
class Notice:
    """Something the user should know about the picture of the sheet.

    Attributes
    ----------
    key : str
        Stable name: "corners unsure", "corners not found", "several",
        "whole picture", "paper edge", "turn", "mirrored", "other sky",
        "aspect", "no border", "warm light", "coloured light", "shadow", "glare",
        "over-exposed", "dark", "tape", "phone".
    text : str
        One plain sentence in the user's language.
    """

    key: str
    text: str


@dataclass(frozen=True)
class Light:
    """The light on the sheet, judged from the unpainted border.

    Attributes
    ----------
    residual : float or None
        What is left of the border's unevenness after correction, natural log units (.03 is
        3%); None without a border.
    sides_compared : bool
        Left and right may be compared.
    white : tuple of float
        Linear RGB the border has in the photo, the mean.
    """

    residual: float | None
    sides_compared: bool
    white: tuple[float, float, float]
    notices: tuple[Notice, ...] = ()


@dataclass(frozen=True)
class LineCheck:
    """Where one line is and where it should be.

    Attributes
    ----------
    letter : str
        The band that ends at this line.
    should, at : float
        In the reference and on the sheet; `at` is the best guess even when unsure.
    shift_pct : float or None
        `at` minus `should` in percent of the height, positive = too low; None: cannot tell.
    allowed_pct : float
        Displacement that still matches: a line washes melt across has no sharp place.
    """

    letter: str
    should: float
    at: float
    shift_pct: float | None
    verdict: Verdict
    allowed_pct: float = 2.0

    @property
    def gap(self) -> float | None:
        """The displacement in tolerances, None when it cannot be told."""
        return None if self.shift_pct is None else abs(self.shift_pct) / self.allowed_pct


@dataclass(frozen=True)
class Difference:
    """Sheet minus reference for a band or a third of it.

    Attributes
    ----------
    hue_steps : float or None
        Steps of 30 degrees on the painter's wheel, positive clockwise (yellow to red); None
        where one of the two is too grey to have a hue.
    value_steps, chroma_steps : float
        Munsell value and chroma: positive is lighter, more intense.
    """

    hue_steps: float | None
    value_steps: float
    chroma_steps: float
    delta_E_2000: float


@dataclass(frozen=True)
class SecondCheck:
    """The second colour of a band on the sheet beside the photo's.

    Attributes
    ----------
    whole : Difference or None
        None where the sheet's band shows one colour only.
    hue, value, intensity : Verdict
    verdict : Verdict
        The worst of the three.
    remark : str
        What differs, in a few words; empty when it matches.
    """

    whole: Difference | None
    hue: Verdict
    value: Verdict
    intensity: Verdict
    verdict: Verdict
    remark: str

    def is_right(self, quality: ColourQuality) -> bool:
        """Whether nothing stands against a quality; where one colour is missing, something does."""
        told = {"hue": self.hue, "value": self.value, "intensity": self.intensity}[quality]
        return self.whole is not None and told in ("matches", "cannot tell")


@dataclass(frozen=True)
class BandCheck:
    """One band of the sheet beside the reference's.

    Attributes
    ----------
    top, bottom : float
        On the sheet.
    hue_gap, value_gap, intensity_gap : float or None
        The difference in tolerances: up to 1 it matches, up to 2 it is close, beyond it is off;
        None: cannot tell.
    remark : str
        What differs, in a few words ("lighter by 1, duller by 3"); empty when it matches.
    second : SecondCheck or None
        None where the photo's band holds one colour.
    """

    letter: str
    top: float
    bottom: float
    reference: BandReading
    sheet: BandReading
    whole: Difference | None
    left: Difference | None
    centre: Difference | None
    right: Difference | None
    hue: Verdict
    value: Verdict
    intensity: Verdict
    overall: Verdict
    hue_gap: float | None
    value_gap: float | None
    intensity_gap: float | None
    remark: str
    second: SecondCheck | None = None

    def is_right(self, quality: ColourQuality) -> bool:
        """Whether a quality matches, that of a second colour too."""
        told = {"hue": self.hue, "value": self.value, "intensity": self.intensity}[quality]
        return told == "matches" and (self.second is None or self.second.is_right(quality))


@dataclass(frozen=True)
class HardEdge:
    """A line where paint stopped.

    Attributes
    ----------
    at, start, end : float
        Height (mean), and from where to where across the width.
    width_pct : float
        10-90% width in percent of the height.
    full : bool
        It runs across (nearly) the whole width.
    letters : tuple of str
        The two bands it is between, or the one it is in.
    cause : str
        "dried before the next wash", "stiff or dry brush", or "wash ran out and dried".
    """

    at: float
    start: float
    end: float
    width_pct: float
    full: bool
    letters: tuple[str, ...]
    cause: str


@dataclass(frozen=True)
class Bloom:
    """A backrun; `radius` is a fraction of the height."""

    x: float
    y: float
    radius: float
    letter: str


@dataclass(frozen=True)
class PaleCorner:
    """A corner with less paint than the middle: "top left" and so on, paint share 0..1."""

    corner: Corner
    share: float


@dataclass(frozen=True)
class Strength:
    """How much paint the whole sheet has, over what the photo has.

    Attributes
    ----------
    share : float
        Below 1 it is too pale, above 1 too strong.
    told : bool
        It is off so far, and explains so much, that it is spoken of.
    """

    share: float = 1.0
    told: bool = False


@dataclass(frozen=True)
class Washes:
    """What was laid on the sheet.

    Attributes
    ----------
    kind : "blank" or "one" or "some" or "all"
        "blank": no paint; "one": a single even wash where the photo has several bands; "some":
        some bands are missing; "all": none is.
    missing : tuple of int
        Numbers of the bands that are not there, from 0; only of "some".
    """

    kind: Literal["blank", "one", "some", "all"] = "all"
    missing: tuple[int, ...] = ()


@dataclass(frozen=True)
class Scores:
    """1-10 for each quality, a second opinion; None where it cannot be judged."""

    hue: float | None
    value: float | None
    intensity: float | None
    placement: float | None


@dataclass(frozen=True)
class Finding:
    """One plain sentence, and one thing to try.

    Attributes
    ----------
    kind : "praise" or "step" or "note"
    about : str
        A quality, "edges", "blooms", "corners", "sky" or "light".
    letters : tuple of str
        The bands it speaks of.
    text : str
        All of it in one line: the observation, then what to try.
    """

    kind: Literal["praise", "step", "note"]
    about: str
    letters: tuple[str, ...]
    text: str

"""One cure a band: what to do about its colour, and which bands share it.

A band that is lighter and duller wants one thing, not two. The widest of its gaps decides which,
and bands that want the same are spoken of together, so that every band that is off is named once.
What to try is common practice: more or less water for strength, a clean mix for intensity, a
speck of the complement to tone down, a touch of the next primary to turn a hue.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from core.reading.reading import BandReading
from core.reading.wheel import FAMILIES, Family
from core.sheet.findings.facts import Facts
from core.sheet.result import BandCheck

Way = Literal[
    "paint", "water", "enough", "less paint", "less water", "clean", "tone", "hue", "green"
]

WEIGHTS = {"value": 1.1, "hue": 1.0, "intensity": 0.95}
MOST_GAP = 6.0
_BEYOND = 1.6  # tolerances that a band must be off beyond what the sheet's strength explains
_PRIMARIES = (0, 4, 8)  # yellow, red, blue on the wheel
_GREENS = ("yellow-green", "green", "blue-green")
_WARM = ("yellow-orange", "yellow", "orange")
_COOL = ("blue", "blue-violet")

Kind = tuple[int, int]
"""Signs of the difference in value and in intensity: (1, -1) is lighter and duller."""


@dataclass(frozen=True)
class Cure:
    """What to do about some bands.

    Attributes
    ----------
    way : Way
        "paint": more of it; "water": more of it; "enough", "less paint" and "less water": where
        the strength of the whole sheet is cured, this band needs nothing of that, or less of it;
        "clean": mix afresh from fewer paints; "tone": tone down; "hue": a touch of the next
        primary; "green": keep yellow and blue apart.
    touch : str
        The family to take a touch of, for "hue".
    bands : tuple of BandCheck
    weight : float
        How far off the worst of them is, in tolerances.
    """

    way: Way
    touch: Family | None
    bands: tuple[BandCheck, ...]
    weight: float


def cures_of(facts: Facts) -> list[Cure]:
    """The cures of all bands that are off, the weightiest first."""
    least = _BEYOND if facts.too_much else 0.0
    groups: dict[tuple[Way, Family | None], list[BandCheck]] = {}
    for band in facts.to_cure:
        cure = _way_of(facts, band)
        if cure is not None and weight_of(band) > least:
            groups.setdefault(cure, []).append(band)
    cures = []
    for (way, touch), bands in groups.items():
        weight = max(weight_of(band) for band in bands)
        # Many bands with the same fault weigh a little more than one.
        weight *= 1 + 0.05 * (len(bands) - 1)
        cures.append(Cure(way, touch, tuple(bands), weight))
    return sorted(cures, key=lambda cure: -cure.weight)


def weight_of(band: BandCheck) -> float:
    """How far off a band is, in tolerances, times how much that matters."""
    return max(
        (
            min(gap, MOST_GAP) * WEIGHTS[quality]
            for quality, gap in (
                ("hue", band.hue_gap),
                ("value", band.value_gap),
                ("intensity", band.intensity_gap),
            )
            if gap is not None
        ),
        default=0.0,
    )


def kind_of(band: BandCheck) -> Kind:
    """In which way value and intensity are off."""
    if band.whole is None:
        return (0, 0)

    def sign(gap: float | None, difference: float) -> int:
        if gap is None or gap <= 1:
            return 0
        return 1 if difference > 0 else -1

    return (
        sign(band.value_gap, band.whole.value_steps),
        sign(band.intensity_gap, band.whole.chroma_steps),
    )


def hue_is_off(band: BandCheck) -> bool:
    """Whether the hue of a band is another, and in which way is known."""
    if band.hue_gap is None or band.hue_gap <= 1 or band.whole is None:
        return False
    return band.whole.hue_steps is not None


def _way_of(facts: Facts, band: BandCheck) -> tuple[Way, Family | None] | None:
    kind = kind_of(band)
    if hue_is_off(band):
        hue = min(band.hue_gap or 0.0, MOST_GAP) * WEIGHTS["hue"]
        other = max(
            min(band.value_gap or 0.0, MOST_GAP) * WEIGHTS["value"] if kind[0] else 0.0,
            min(band.intensity_gap or 0.0, MOST_GAP) * WEIGHTS["intensity"] if kind[1] else 0.0,
        )
        # A hue far off means another mix: then its strength comes right or wrong with that.
        if hue >= other or (band.hue_gap or 0.0) > 2:
            return _hue_way(facts, band)
    if kind == (0, 0):
        return None
    if kind in ((1, 0), (1, -1)):
        return _beside_strength(facts, band, "paint"), None
    if kind in ((-1, 0), (-1, 1)):
        return _beside_strength(facts, band, "water"), None
    return ("clean" if kind[1] < 0 else "tone"), None


def _beside_strength(facts: Facts, band: BandCheck, way: Way) -> Way:
    """More paint or water for a band; where the whole sheet is told to take more of the other, and
    the band by itself wants no such thing, what to make of that."""
    if facts.too_much == 0 or way == ("paint" if facts.too_much < 0 else "water"):
        return way
    plain = next(each for each in facts.bands if each.letter == band.letter)
    lighter, stronger = kind_of(plain)
    if (lighter, stronger) == (0, 0):
        return "enough"
    # Lighter as the whole sheet is, only less so.
    if (lighter or -stronger) != -facts.too_much:
        return way
    return "less paint" if facts.too_much < 0 else "less water"


def _hue_way(facts: Facts, band: BandCheck) -> tuple[Way, Family | None]:
    wanted, found = family_of(band.reference), family_of(band.sheet)
    if wanted is None or found is None or band.whole is None or band.whole.hue_steps is None:
        raise ValueError(f"band {band.letter} has a hue difference without a hue")
    if wanted not in _GREENS and found in _GREENS and _between_yellow_and_blue(facts, band):
        return "green", None
    return "hue", primary_beyond(found, wanted, band.whole.hue_steps)


def family_of(reading: BandReading) -> Family | None:
    """The hue family of a band's reading; None without one."""
    return None if reading.colour is None else reading.colour.hue.family


def primary_beyond(found: Family, wanted: Family, steps: float) -> Family:
    """The primary that is in the direction from the hue found to the one wanted."""
    start = FAMILIES.index(found)
    way = -1 if steps > 0 else 1  # the sheet went clockwise: come back the other way
    reach = (FAMILIES.index(wanted) - start) * way % 12
    for ahead in range(max(1, reach), 12):
        if (start + way * ahead) % 12 in _PRIMARIES:
            return FAMILIES[(start + way * ahead) % 12]
    return wanted


def _between_yellow_and_blue(facts: Facts, band: BandCheck) -> bool:
    number = [reading.letter for reading in facts.reference].index(band.letter)
    near = facts.reference[max(0, number - 1) : number + 2]
    around = [family_of(reading) for reading in near]
    return any(f in _WARM for f in around) and any(f in _COOL for f in around)

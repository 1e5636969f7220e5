"""Band by band: how the sheet's colours differ from the reference's, and what may be claimed.

Differences are measured in tolerances ("gaps"): up to 1 a band matches, up to 2 it is close,
beyond it is off.
"""

from __future__ import annotations

import math
from dataclasses import replace

from core.colour import delta_E_2000
from core.i18n import translate
from core.reading.quality import Verdict
from core.reading.reading import BandReading, ColourReading
from core.reading.wheel import NEAR_NEUTRAL_CHROMA, wheel_distance
from core.sheet.findings.strength import at_strength
from core.sheet.findings.words import remark_of, second_remark
from core.sheet.match.pairing import like_with_like
from core.sheet.measuring import CHROMA_STEP, VALUE_STEP
from core.sheet.result import BandCheck, Difference, SecondCheck

HUE_STEP = 15.0
"""Hundred-steps of Munsell hue times chroma that still match: Nickerson 1936 weighs one value
step as 15/C hue steps, so that a pale colour's hue is judged loosely."""
COLOUR_STEP = 5.0
"""dE00 of a band that still matches; twice that is close."""

PHOTO_FLOOR = 5.0
"""dE00 below which a phone picture supports no claim at all."""
SCAN_FLOOR = 2.0
"""The same for a flat scan."""
UNCORRECTED = 1.5
"""Tolerances grow by this where the border could not undo the light."""
_SIDE_FLOOR = 3.0
_IN_SIGHT = 0.5  # share of a band's pixels that the photo shows as sky


def compare_bands(
    reference: tuple[BandReading, ...],
    sheet: tuple[BandReading, ...],
    *,
    scan: bool,
    corrected: bool,
    sides: bool,
    strength: float = 1.0,
) -> tuple[BandCheck, ...]:
    """Compare readings band by band.

    Parameters
    ----------
    reference, sheet : tuple of BandReading
        Of the same bands.
    scan : bool
        A flat scan: smaller differences may be claimed.
    corrected : bool
        The light was undone by a border.
    sides : bool
        Left, centre and right may be compared.
    strength : float
        Paint on the whole sheet over the photo's: a hue that comes from that alone matches.
    """
    widen = 1.0 if corrected else UNCORRECTED
    floor = SCAN_FLOOR if scan else PHOTO_FLOOR * widen
    checks = []
    for wanted, read in zip(reference, sheet, strict=True):
        found = like_with_like(wanted, read)
        second = _second(wanted, found, widen, floor)
        aim, seen = _nearest(wanted, found)
        whole = difference(aim, seen)
        gaps = _gaps(aim, seen, whole, widen, floor)
        if strength != 1.0 and aim is not None and seen is not None:
            other = _hue_gap(at_strength(aim, strength), seen, widen)
            gaps = (_less(gaps[0], other), *gaps[1:])
        hue, value, intensity = (_verdict(gap) for gap in gaps)
        overall: Verdict = "cannot tell"
        if whole is not None:
            overall = _verdict(whole.delta_E_2000 / (COLOUR_STEP * widen))
            # A band all of whose qualities match is not called off for their sum.
            if all(gap is None or gap <= 1 for gap in gaps):
                overall = "matches"
            elif overall == "matches":
                overall = "close"
        thirds = [
            difference(getattr(wanted, name), getattr(found, name)) if sides else None
            for name in ("left", "centre", "right")
        ]
        checks.append(
            BandCheck(
                letter=wanted.letter,
                top=found.top,
                bottom=found.bottom,
                reference=wanted,
                sheet=found,
                whole=whole,
                left=thirds[0],
                centre=thirds[1],
                right=thirds[2],
                hue=hue,
                value=value,
                intensity=intensity,
                overall=overall,
                hue_gap=gaps[0],
                value_gap=gaps[1],
                intensity_gap=gaps[2],
                remark=_remark(remark_of(seen, whole, gaps), second),
                second=second,
            )
        )
    return tuple(checks)


def _remark(first: str, second: SecondCheck | None) -> str:
    facts = [text for text in (first, second.remark if second is not None else "") if text]
    return translate("sheet", "; ").join(facts)


def _second(
    wanted: BandReading, found: BandReading, widen: float, floor: float
) -> SecondCheck | None:
    """The second colours side by side; None where the photo's band has none, or where it hides
    so much of the band that a sheet without one may have it there."""
    if wanted.second is None or (found.second is None and wanted.pixel_share < _IN_SIGHT):
        return None
    one, other = wanted.second.colour, None if found.second is None else found.second.colour
    whole = difference(one, other)
    gaps = _gaps(one, other, whole, widen, floor)
    hue, value, intensity = (_verdict(gap) for gap in gaps)
    told = (hue, value, intensity)
    order: tuple[Verdict, ...] = ("off", "close", "matches", "cannot tell")
    worst = next(verdict for verdict in order if verdict in told)
    return SecondCheck(whole, hue, value, intensity, worst, second_remark(other, whole, gaps))


def more_lenient(
    checks: tuple[BandCheck, ...], others: tuple[BandCheck, ...]
) -> tuple[BandCheck, ...]:
    """Of two checks of each band the one that finds less; places are the first's.

    Where a line cannot be told, a band is read with the line as found and as it should be: only
    what shows both ways may be said of it.
    """
    kept = []
    for check, other in zip(checks, others, strict=True):
        if worst_gap(other) < worst_gap(check):
            there = replace(other.sheet, top=check.sheet.top, bottom=check.sheet.bottom)
            check = replace(other, top=check.top, bottom=check.bottom, sheet=there)
        kept.append(check)
    return tuple(kept)


def difference(wanted: ColourReading | None, found: ColourReading | None) -> Difference | None:
    """Sheet minus reference; None when one of them has no colour."""
    if wanted is None or found is None:
        return None
    hue = None
    if wanted.hue.family and found.hue.family:
        a, b = wanted.hue.wheel_deg, found.hue.wheel_deg
        if a is not None and b is not None:
            hue = ((b - a + 180) % 360 - 180) / 30
    return Difference(
        hue_steps=hue,
        value_steps=found.munsell.value - wanted.munsell.value,
        chroma_steps=found.munsell.chroma - wanted.munsell.chroma,
        delta_E_2000=float(delta_E_2000(wanted.Lab, found.Lab)),
    )


def uneven_sides(check: BandCheck) -> str | None:
    """The side ("left" or "right") that differs from the other more than the reference's does."""
    if check.left is None or check.right is None:
        return None
    turn = check.left.value_steps - check.right.value_steps
    apart = abs(check.left.delta_E_2000 - check.right.delta_E_2000)
    if abs(turn) < 0.5 or apart < _SIDE_FLOOR:
        return None
    return "left" if check.left.delta_E_2000 > check.right.delta_E_2000 else "right"


def _verdict(gap: float | None) -> Verdict:
    if gap is None:
        return "cannot tell"
    if gap <= 1:
        return "matches"
    return "close" if gap <= 2 else "off"


def _gaps(
    wanted: ColourReading | None,
    found: ColourReading | None,
    whole: Difference | None,
    widen: float,
    floor: float,
) -> tuple[float | None, float | None, float | None]:
    if wanted is None or found is None or whole is None:
        return None, None, None
    hue = _hue_gap(wanted, found, widen)
    value: float | None = abs(whole.value_steps) / (VALUE_STEP * widen)
    intensity: float | None = abs(whole.chroma_steps) / (CHROMA_STEP * widen)
    if whole.delta_E_2000 < floor:
        # Within what the picture can support nothing is claimed, whatever the single number says.
        hue = None if hue is None else min(hue, 1.0)
        value, intensity = min(value or 0.0, 1.0), min(intensity or 0.0, 1.0)
    return hue, value, intensity


def _nearest(
    wanted: BandReading, found: BandReading
) -> tuple[ColourReading | None, ColourReading | None]:
    """The colours to compare: where the photo's band holds two, such as sky and cloud, a sheet that
    shows one may have the main one, or what both come to together."""
    if found.colour is None or wanted.colour is None or wanted.overall is None or found.second:
        return wanted.colour, found.colour
    seen = found.colour
    aims = (wanted.colour, wanted.overall)
    return min(aims, key=lambda aim: float(delta_E_2000(aim.Lab, seen.Lab))), seen


def _less(gap: float | None, other: float | None) -> float | None:
    return gap if other is None else other if gap is None else min(gap, other)


def _hue_gap(wanted: ColourReading, found: ColourReading, widen: float) -> float | None:
    a, b = wanted.munsell, found.munsell
    if wanted.hue.family is None and found.hue.family is None:
        return 0.0
    if wanted.hue.family is None or found.hue.family is None or a.hue is None or b.hue is None:
        return None  # grey beside a colour: that is its intensity, not its hue
    apart = abs((b.hue - a.hue + 50) % 100 - 50)
    chroma = max(min(a.chroma, b.chroma), NEAR_NEUTRAL_CHROMA)
    gap = apart * chroma / (HUE_STEP * widen)
    steps = wheel_distance(wanted.hue.family, found.hue.family)
    if steps == 0:
        return min(gap, 1.0)
    return min(gap, 2.0) if steps == 1 else gap


def worst_gap(check: BandCheck) -> float:
    """The largest of a band's gaps; 0 when nothing can be told."""
    gaps = (check.hue_gap, check.value_gap, check.intensity_gap)
    return max((gap for gap in gaps if gap is not None and math.isfinite(gap)), default=0.0)

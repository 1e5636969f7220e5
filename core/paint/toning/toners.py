"""Which paint tones a mix down best, and what the true complement would be."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import lru_cache

import numpy as np

from core.colour import Lab_to_XYZ, munsell_value
from core.paint.box.box import Box
from core.paint.mixture.mix import Mix, make_mix
from core.paint.pigment.hues import offsets, turn
from core.paint.toning.tone_down import Ladder, toned_Lab

TONER_WITHIN_DEG = 75.0
COMPARED_AT_ML = 0.01
STRONG_COUNTS_AS_DEG, NEVER_COUNTS_AS_DEG = 20.0, 20.0
"""How many degrees on the wheel it is worth, when toners are compared, that one is touchy, or too
weak."""

DRIFT_COUNTS = 0.25
"""How much a degree of drift counts beside a degree away from the true complement."""

DULLS_BELOW = 0.97
"""Share of chroma left at one tenth, above which a paint does not tone down at all."""

SHARES = 26


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
    astray_deg : float
        How far it stands from the true complement on the wheel; 0 when nobody asked.
    """

    parts: tuple[tuple[str, int], ...]
    halves_at: float | None
    hue_drift_deg: float
    value_drift: float
    chroma_kept_at_tenth: float
    touchy: bool
    astray_deg: float = 0.0


def try_toners(box: Box, base: Mix, toners: list[dict[str, int]]) -> list[TonerTried]:
    """Measure what some toners do to a mix.

    Parameters
    ----------
    box : Box
    base : Mix
    toners : list of dict of paint key to parts
    """
    return [
        _try_toner(box.only((*base.keys, *toner)), base, tuple(toner.items())) for toner in toners
    ]


# benchmarks/cache_hits.py: 377 calls, 104 misses of 0.25 ms.
@lru_cache(maxsize=1024)
def _try_toner(box: Box, base: Mix, toner: tuple[tuple[str, int], ...]) -> TonerTried:
    shares = np.linspace(0, 0.5, SHARES)
    tenth = round((SHARES - 1) / 5)
    Lab = toned_Lab(box, base, dict(toner), shares)
    chroma = np.hypot(Lab[:, 1], Lab[:, 2])
    halved = np.flatnonzero(chroma <= chroma[0] / 2)
    at = int(halved[0]) if halved.size else SHARES - 1
    angle = np.degrees(np.arctan2(Lab[:, 2], Lab[:, 1]))
    Y = float(np.clip(Lab_to_XYZ(Lab[at])[1], 0, 1)) * 100
    return TonerTried(
        toner,
        float(shares[at]) if halved.size else None,
        abs(float((angle[at] - angle[0] + 180) % 360 - 180)),
        float(munsell_value(Y)) - base.colour.munsell.value,
        float(chroma[tenth] / max(chroma[0], 1e-9)),
        any(box.paint(key).is_strong for key, _ in toner),
    )


def toners(box: Box, base: Mix, hue_deg: float | None = None) -> tuple[TonerTried, ...]:
    """The box's paints from across the wheel, the best toner first.

    The best stands nearest the complement; one that turns the hue more, stains strongly or never
    halves the intensity is put behind.

    Parameters
    ----------
    box : Box
    base : Mix
    hue_deg : float, optional
        Whose complement is wanted, on the wheel; the mix's own hue without it.
    """
    hue = base.colour.hue.wheel_deg if hue_deg is None else hue_deg
    if hue is None:
        return ()
    astray = {
        key: 180 - abs(away)
        for key, away in offsets(box.paints, hue).items()
        if key not in base.keys and 180 - abs(away) <= TONER_WITHIN_DEG
    }
    tried = [
        replace(item, astray_deg=astray[item.parts[0][0]])
        for item in try_toners(box, base, [{key: 1} for key in astray])
        if item.chroma_kept_at_tenth < DULLS_BELOW
    ]
    return tuple(sorted(tried, key=_behind_deg))


def _behind_deg(tried: TonerTried) -> float:
    never = tried.halves_at is None
    return (
        tried.astray_deg
        + DRIFT_COUNTS * tried.hue_drift_deg
        + STRONG_COUNTS_AS_DEG * tried.touchy
        + NEVER_COUNTS_AS_DEG * never
    )


GREENS_TONE = ("green", "blue-green", "yellow-green")


def compare_toners(box: Box, ladder: Ladder) -> tuple[TonerTried, ...]:
    """The ladder's toner, the true complement mixed for it, and the box's green, side by side.

    Parameters
    ----------
    box : Box
    ladder : Ladder

    Returns
    -------
    tuple of TonerTried
        The ladder's toner first; then, where the complement is a green or beside it, the true
        complement if it takes two paints, and a green of the box. One entry when there is
        nothing to compare.
    """
    candidates = [dict(ladder.toner)]
    if ladder.complement in GREENS_TONE:
        true = true_complement(box, ladder.base)
        if true is not None and len(true) > 1 and not set(true) & set(ladder.base.keys):
            candidates.append(true)
        candidates += [
            {paint.key: 1}
            for paint in box.paints
            if paint.group == "green" and paint.key not in ladder.base.keys
        ][:1]
    different = {frozenset(toner.items()): toner for toner in candidates}
    return tuple(try_toners(box, ladder.base, list(different.values())))


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
        mix = make_mix(box, {one: a, other: b}, COMPARED_AT_ML)
        angle = mix.colour.hue.wheel_deg
        gap = 180.0 if angle is None else abs(turn(opposite, angle))
        if best is None or gap < best[0] - 1e-9:
            best = (gap, {one: a, other: b})
    return best[1] if best else None

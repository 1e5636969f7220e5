"""Which paint tones a mix down best, and what the true complement would be."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.paint.box import Box
from core.paint.hues import turn
from core.paint.mix import Mix, make_mix
from core.paint.roles import offsets
from core.paint.tone_down import toned_Lab
from core.reading import read_colour

TONER_WITHIN_DEG = 75.0
COMPARED_AT_ML = 0.01
STRONG_COUNTS_AS_DEG = 20.0
"""How much hue drift a strong stainer's touchiness is worth when toners are compared."""


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


def try_toner(box: Box, base: Mix, toner: dict[str, int]) -> TonerTried:
    """Measure what a toner does to a mix."""
    shares = np.linspace(0, 0.5, 101)
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
    return tuple(
        sorted(useful, key=lambda item: item.hue_drift_deg + STRONG_COUNTS_AS_DEG * item.touchy)
    )


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

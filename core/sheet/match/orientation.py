"""Whether the sheet lies upright, and whether it is the same sky at all."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.colour.working_space import Floats
from core.sheet.match.order import band_colours, order_bands, profile_of
from core.sheet.match.reference import Reference, side_colours

_BETTER = 0.6  # another way up must cost at most this share of the present one
_LEAST_GAIN = 6.0  # and this many squared working units a sample less
OTHER_SKY = 12.0
"""Working units between the bands' colours beyond which it is hardly the same sky."""
OTHER_HUES = 5.5
"""The same of their hue and intensity alone, when the bands also follow another pattern."""
_SAME_PATTERN = 0.85  # a sheet painted too pale or too strong keeps its pattern of hues
_MIRRORED_SIDES = 2.0  # working units between left and right for a mirror to show


@dataclass(frozen=True)
class Lie:
    """How the sheet seems to lie.

    Attributes
    ----------
    turn : int
        Further quarter turns clockwise that fit better; 0 when it lies right.
    mirrored : bool
    other_sky : bool
    distance : float
        Mean distance between the bands' colours, working units.
    """

    turn: int
    mirrored: bool
    other_sky: bool
    distance: float


def judge_lie(reference: Reference, W: Floats, rows: Floats, light_undone: bool) -> Lie:
    """Compare the sheet with the reference in four ways up.

    Parameters
    ----------
    reference : Reference
    W : (h, w, 3) float64
        The sheet in working colours.
    rows : (SAMPLES, 3) float64
        Its profile, see `order.profile_of`.
    light_undone : bool
        Left against right, and hues, say something only then.
    """
    lines = reference.bands.lines
    wanted = band_colours(reference.profile, lines)
    columns = profile_of(W.swapaxes(0, 1))
    # Turned a quarter clockwise, the left edge comes to the top.
    ways = {0: rows, 1: columns, 2: rows[::-1], 3: columns[::-1]}
    costs, found = {}, {}
    for turn, profile in ways.items():
        search = order_bands(wanted, lines, profile)
        costs[turn] = search.cost(search.ways[0])
        found[turn] = band_colours(profile, search.ways[0])
    best = min(costs, key=lambda turn: costs[turn])
    turn = 0
    if best and costs[best] < _BETTER * costs[0] and costs[0] - costs[best] > _LEAST_GAIN:
        turn = best
    gap = found[turn] - wanted
    distance = float(np.linalg.norm(gap, axis=1).mean())
    other = distance > OTHER_SKY or (light_undone and _other_hues(wanted, found[turn]))
    mirrored = light_undone and turn == 0 and _is_mirrored(reference, W, lines)
    return Lie(turn, mirrored, other, distance)


def _other_hues(wanted: Floats, found: Floats) -> bool:
    """Whether the bands (bands, 3) differ in hue and intensity, and in how these follow from band
    to band: a whole sheet too pale or too strong is the same sky still."""
    a, b = wanted[:, 1:], found[:, 1:]
    apart = float(np.linalg.norm(b - a, axis=1).mean())
    both = float(np.linalg.norm(a) * np.linalg.norm(b))
    return apart > OTHER_HUES and float((a * b).sum()) < _SAME_PATTERN * both


def _is_mirrored(reference: Reference, W: Floats, lines: tuple[float, ...]) -> bool:
    wanted = reference.sides[:, 2] - reference.sides[:, 0]
    found = side_colours(W, lines)
    slope = found[:, 2] - found[:, 0]
    usable = np.isfinite(wanted).all(axis=1) & np.isfinite(slope).all(axis=1)
    if not usable.any():
        return False
    size = float(np.sqrt((wanted[usable] ** 2).sum(axis=1).mean()))
    if size < _MIRRORED_SIDES:
        return False
    along = float((wanted[usable] * slope[usable]).sum())
    both = float(np.linalg.norm(wanted[usable]) * np.linalg.norm(slope[usable]))
    # As strong as the reference's, and the same in every band but for its sign.
    return along < -0.6 * float((wanted[usable] ** 2).sum()) and along < -0.75 * both

"""Whether the sheet is upright, and whether it is the same sky at all."""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats
from core.sheet.match.likeness import apart_band_by_band, likeness, likenesses
from core.sheet.match.order import profile_of
from core.sheet.match.reference import Reference, side_colours

_BETTER = ((0.6, 2.5), (0.35, 1.2))
"""Another way up must be at most this share of the present distance away, and so many working units
nearer: a sky of one colour differs little whichever way it lies."""
_AS_NEAR = 0.5  # working units: this much further away, the way up it is stays the likelier one
OTHER_SKY = 6.2
"""Working units between the rows, at the strength that suits best, from which another order of
hues or other lines are likelier than a beginner's: on pairs of 37 skies nine in ten are further
apart, on sheets of the same sky with washes half a step off and lines 5% off one in fifty."""
SAME_PAINT = 4.2
"""The same with a strength for each band, up to which bands too pale or too strong are all that is
wrong: on 37 skies at most 2.4 for one band at .35 to .45 and another at 1.8 to 2.2 times the paint,
at least 4.9 for another of these skies."""
LIGHT_LEFT = 1.4
"""Times as far where the light could not be undone."""
_MIRRORED_SIDES = 2.0  # working units between left and right for a mirror to show


@dataclass(frozen=True)
class Orientation:
    """Which way up the sheet seems to be.

    Attributes
    ----------
    turn : int
        Further quarter turns clockwise that fit better; 0 when it is upright.
    mirrored : bool
    other_sky : bool
    distance : float
        Mean distance of the rows, working units, at the strength that suits best.
    strength : float
        Paint on the sheet over what the photo has, the way up that is likelier.
    strength_as_seen : float
        The same, the way up it is in the picture.
    """

    turn: int
    mirrored: bool
    other_sky: bool
    distance: float
    strength: float = 1.0
    strength_as_seen: float = 1.0


def judge_orientation(
    reference: Reference,
    W: Floats,
    rows: Floats,
    light_undone: bool,
    where: NDArray[np.bool_] | None = None,
) -> Orientation:
    """Compare the sheet with the reference in four ways up, whatever the strength of its paint.

    Parameters
    ----------
    reference : Reference
    W : (h, w, 3) float64
        The sheet in working colours.
    rows : (SAMPLES, 3) float64
        Its profile, see `order.profile_of`.
    light_undone : bool
        Left against right, and hues, say something only then.
    where : (h, w) bool, optional
        What of the sheet is compared, see `foreground.compared`.
    """
    ways = {0: rows}
    like = {0: likeness(reference.profile, rows)}
    if like[0].apart > min(least for _, least in _BETTER):  # else no way up is so much nearer
        columns = profile_of(W.swapaxes(0, 1))
        # Turned a quarter clockwise, the left edge comes to the top.
        others = {1: columns, 2: rows[::-1], 3: columns[::-1]}
        ways |= others
        found = likenesses(reference.profile, list(others.values()))
        like |= dict(zip(others, found, strict=True))
    best = min(like, key=lambda turn: like[turn].apart)
    gain = like[0].apart - like[best].apart
    share = like[best].apart / max(like[0].apart, 1e-6)
    turn = best if any(share < most and gain > least for most, least in _BETTER) else 0
    lines = reference.bands.lines

    def by_bands(way: int) -> float:
        return apart_band_by_band(reference.profile, lines, ways[way], like[way].strength)

    if turn and by_bands(0) < like[turn].apart + _AS_NEAR:
        turn = 0  # some of its washes are too pale or too strong, no more
    distance = like[turn].apart
    widen = 1.0 if light_undone else LIGHT_LEFT
    other = distance > OTHER_SKY * widen and by_bands(turn) > SAME_PAINT * widen
    mirrored = light_undone and turn == 0 and _is_mirrored(reference, W, lines, where)
    return Orientation(turn, mirrored, other, distance, like[turn].strength, like[0].strength)


def _is_mirrored(
    reference: Reference, W: Floats, lines: tuple[float, ...], where: NDArray[np.bool_] | None
) -> bool:
    wanted = reference.sides[:, 2] - reference.sides[:, 0]
    found = side_colours(W, lines, where)
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

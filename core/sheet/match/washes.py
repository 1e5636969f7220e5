"""Which of the photo's bands are on the sheet at all: a beginner may lay three washes for five.

Every row of the sheet goes to the band whose colour it is nearest to, in order from the top, at the
strength that suits the whole sheet. A band that no rows are left for, or hardly any, is missing;
so is a wash that only shows where two others melt into each other.
"""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from core.colour.working_space import Floats, linear_to_W, shrunk
from core.sheet.match.likeness import STRENGTHS, density_rows, stronger
from core.sheet.match.order import band_colours, order_bands
from core.sheet.measuring import Washes

_ROWS = 100
_ALIKE, _SHARE, _PRESSED = 2.0, 0.25, 0.35
_APART = 6.0  # working units: bands nearer than this to a neighbour cannot be missed
_FEWEST = 2  # bands
_NO_PAINT = 0.15  # density, the three channels together
_MUCH_PAINT = 0.45  # of the photo, for a sheet to be called blank beside it
_EVEN = 5.0  # working units between the rows of a single wash
_TINT = 11.0  # working units
_VARIED = 2.5  # times as much, at the sheet's own strength, in the photo
_LEAST_VARIED = 9.0


def washes_of(
    reference: Floats, lines: tuple[float, ...], sheet: Floats, white: bool, strength: float
) -> Washes:
    """Compare two profiles (SAMPLES, 3) in working colours.

    Parameters
    ----------
    reference, sheet : (SAMPLES, 3) float64
    lines : tuple of float
        The reference's.
    white : bool
        The sheet's colours are over the white of its paper, so that no paint is known from little.
    strength : float
        Paint on the sheet over the photo's, see `likeness.likeness`.
    """
    wanted, found = density_rows(reference), density_rows(sheet)[2:-2]
    paint = float(np.median(found.sum(axis=1)))
    usual = float(np.median(wanted.sum(axis=1)))
    span = _span(linear_to_W(np.exp(-found)))
    if white and paint < _NO_PAINT and usual > _MUCH_PAINT and span < _EVEN:
        return Washes("blank")
    if not lines:
        return Washes()
    share = float(np.clip(paint / max(usual, 1e-3), STRENGTHS[0], STRENGTHS[-1]))
    varied = _span(linear_to_W(np.exp(-np.clip(share * wanted, 0.0, 6.0))))
    if span < _EVEN and varied > max(_LEAST_VARIED, _VARIED * span):
        return Washes("one")
    missing = _missing(reference, lines, sheet, strength)
    # One band alike to its neighbour is more likely one that went wrong: its cure says more.
    return Washes("some", missing) if len(missing) >= _FEWEST else Washes()


def is_even(painted: NDArray[np.float32]) -> bool:
    """Whether linear light (h, w, 3) is one colour all over, but for grain and the light."""
    W = linear_to_W(shrunk(painted, 64)[0].astype(np.float64)[3:-3, 3:-3])
    return _span(W.reshape(-1, 3)) < 2 * _EVEN


def is_coloured(painted: NDArray[np.float32]) -> bool:
    """Whether the middle colour of linear light (h, w, 3) is more than a paper's tint."""
    W = np.median(linear_to_W(shrunk(painted, 64)[0].astype(np.float64)).reshape(-1, 3), axis=0)
    return float(np.linalg.norm(W[1:])) > _TINT


def _span(rows: Floats) -> float:
    """How far the rows are from their middle at most, twice, strays left out."""
    middle = np.median(rows, axis=0)
    return 2.0 * float(np.quantile(np.linalg.norm(rows - middle, axis=1), 0.92))


def _missing(
    reference: Floats, lines: tuple[float, ...], sheet: Floats, strength: float
) -> tuple[int, ...]:
    wanted = stronger(band_colours(reference, lines), strength)
    places = order_bands(wanted, lines, sheet).ways[0]
    found = band_colours(sheet, places)
    heights = np.diff([0.0, *places, 1.0]) / np.diff([0.0, *lines, 1.0])
    steps = np.linalg.norm(np.diff(wanted, axis=0), axis=1)
    seen = np.linalg.norm(np.diff(found, axis=0), axis=1)
    alike = (steps > _APART) & (seen < np.maximum(_ALIKE, _SHARE * steps))
    runs: list[list[int]] = [[0]]
    for k in range(1, len(wanted)):
        if alike[k - 1]:
            runs[-1].append(k)
        else:
            runs.append([k])
    missing: list[int] = []
    for run in runs:
        if len(run) > 1:
            colour = found[run].mean(axis=0)
            one = min(run, key=lambda k: float(np.linalg.norm(wanted[k] - colour)))
            missing += [k for k in run if k != one]
    for k in range(1, len(wanted) - 1):
        above, below = steps[k - 1], steps[k]
        if heights[k] < _PRESSED and min(above, below) > _APART and k not in missing:
            missing.append(k)
    return tuple(sorted(missing))

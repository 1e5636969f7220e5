"""Finding the card: its four marks, put together and held against what is printed."""

from __future__ import annotations

from itertools import permutations

import numpy as np
from numpy.typing import NDArray

from core.progress import ShouldStop, step
from core.swatches.candidates import mark_candidates
from core.swatches.layout import MARKS, MODULE, SOLID, Floats
from core.swatches.projective import card_map, seen_at, through

ACCEPT = 0.75
"""The least likeness (correlation) of the worst of four marks: right ones were .91 to 1.0, the one
wrong one that was ever put together .495."""

PLAUSIBLE = 0.5
_GREY = np.array([0.25, 0.6, 0.15], dtype=np.float32)
_HALVE_ABOVE = 1400
_MOST_RINGS, _TRIED = 14, 12
_SHIFTS_MM = (0.6, 0.3, 0.12)
_SHIFTED = np.arange(-3.0, 4.0)


def grey_of(pixels: NDArray[np.uint8]) -> NDArray[np.float32]:
    """Encoded grey, (h, w), of a picture, (h, w, 3): contrast is all that matters here."""
    return pixels.astype(np.float32) @ _GREY


def find_marks(grey: NDArray[np.float32], should_stop: ShouldStop | None = None) -> Floats | None:
    """The centres of the card's marks.

    Parameters
    ----------
    grey : ndarray, shape (h, w), float32
        See `grey_of`.
    should_stop : callable, optional

    Returns
    -------
    ndarray, shape (4, 2), float64, or None
        Pixels, in the order of `layout.MARKS`; None where no four marks look as printed.
    """
    for by in (2, 1) if max(grey.shape) > _HALVE_ABOVE else (1,):
        small = _shrunk(grey, by)
        for rings, solids in mark_candidates(small):
            step(0.0, None, should_stop)
            quad = _arranged(rings[:_MOST_RINGS], solids, small)
            if quad is None:
                continue
            quad = refined(grey, (quad + 0.5) * by - 0.5)
            if likeness(grey, quad) >= ACCEPT:
                return quad
    return None


def likeness(grey: NDArray[np.float32], quad: Floats) -> float:
    """How well the marks look as printed: correlation of ink and darkness, of the worst."""
    try:
        H = card_map(MARKS, quad)
    except np.linalg.LinAlgError:
        return -1.0
    found = []
    for number, centre in enumerate(MARKS):
        ink, clear = _PRINTED[number == SOLID]
        seen = -seen_at(grey, through(H, _AROUND + centre))[clear].astype(np.float64)
        found.append(_correlation(seen[None], ink[clear])[0])
    return float(min(found))


def refined(grey: NDArray[np.float32], quad: Floats) -> Floats:
    """Each mark moved to where the printed pattern fits the picture best, to a tenth of a mm."""
    for size in _SHIFTS_MM:
        try:
            H = card_map(MARKS, quad)
        except np.linalg.LinAlgError:
            return quad
        shifts = _SHIFTED * size
        quad = np.array([_best_place(grey, H, number, shifts) for number in range(len(MARKS))])
    return quad


def _best_place(grey: NDArray[np.float32], H: Floats, number: int, shifts: Floats) -> Floats:
    # With all points, edges too: a sharp picture fits equally well anywhere near without them.
    ink = _PRINTED[number == SOLID][0].ravel()
    points = _AROUND.reshape(-1, 2) + MARKS[number]
    moves = np.stack(np.meshgrid(shifts, shifts), axis=-1).reshape(-1, 1, 2)
    seen = -seen_at(grey, through(H, points[None] + moves)).astype(np.float64)
    fits = _correlation(seen, ink).reshape(len(shifts), len(shifts))
    row, column = np.unravel_index(fits.argmax(), fits.shape)
    dy = _summit(fits[:, column], int(row))
    dx = _summit(fits[row], int(column))
    gap = shifts[1] - shifts[0]
    move = np.array([shifts[column] + dx * gap, shifts[row] + dy * gap])
    return through(H, MARKS[number] + move)


def _correlation(seen: Floats, ink: Floats) -> Floats:
    """Of rows (n, points) with a pattern (points,)."""
    x = seen - seen.mean(axis=-1, keepdims=True)
    y = ink - ink.mean()
    found: Floats = x @ y / np.sqrt((x**2).sum(axis=-1) * (y**2).sum() + 1e-9)
    return found


def _summit(values: Floats, at: int) -> float:
    """Where between its neighbours the greatest value really lies, by a parabola."""
    if not 0 < at < len(values) - 1:
        return 0.0
    below, here, above = values[at - 1 : at + 2].tolist()
    bend = below - 2 * here + above
    return 0.0 if bend >= 0 else 0.5 * (below - above) / bend


def _arranged(rings: Floats, solids: Floats, grey: NDArray[np.float32]) -> Floats | None:
    """Three rings and a solid square that stand as the card's marks do; None for none."""
    ways = []
    for a, b, c in permutations(range(len(rings)), 3):  # top left, top right, bottom left
        first, along, down = rings[a, :2], rings[b, :2] - rings[a, :2], rings[c, :2] - rings[a, :2]
        if along[0] * down[1] - along[1] * down[0] <= 0:
            continue
        width, height = np.linalg.norm(along), np.linalg.norm(down)
        sides = rings[[a, b, c], 2]
        side, ratio = sides.mean(), height / width
        if not 0.6 < ratio < 3.0 or sides.max() / sides.min() > 2.2:
            continue
        if abs(along @ down) / (width * height) > 0.6 or not 5 < width / side < 24:
            continue
        off = np.linalg.norm(solids[:, :2] - (first + along + down), axis=1) / width
        near = (off < 0.45) & (solids[:, 2] > 0.45 * side) & (solids[:, 2] < 1.9 * side)
        for k in np.flatnonzero(near):
            cost = off[k] + abs(np.log(solids[k, 2] / side)) + 0.3 * abs(np.log(ratio / 1.405))
            quad = np.array([first, first + along, solids[k, :2], first + down])
            ways.append((float(cost), quad))
    ways.sort(key=lambda way: way[0])
    best, found = PLAUSIBLE, None
    for _, quad in ways[:_TRIED]:
        like = likeness(grey, quad)
        if like > best:
            best, found = like, quad
        if like > 0.9:
            break
    return found


def _shrunk(grey: NDArray[np.float32], by: int) -> NDArray[np.float32]:
    if by == 1:
        return grey
    rows, columns = grey.shape[0] // by, grey.shape[1] // by
    small: NDArray[np.float32] = (
        grey[: rows * by, : columns * by].reshape(rows, by, columns, by).mean(axis=(1, 3))
    )
    return small


def _printed(solid: bool) -> tuple[Floats, NDArray[np.bool_]]:
    """Ink at the points around a mark, and whether a point is clear of edges."""
    far = np.abs(_AROUND).max(axis=-1) / MODULE
    clear = np.abs(far - 3.5) > 0.3
    if solid:
        return np.where(far < 3.5, 1.0, 0.0), clear
    ink = np.where(far < 1.5, 1.0, np.where(far < 2.5, 0.0, np.where(far < 3.5, 1.0, 0.0)))
    return ink, clear & (np.abs(far - 1.5) > 0.3) & (np.abs(far - 2.5) > 0.3)


_STEPS = (np.arange(-4.5, 4.5, 0.25) + 0.125) * MODULE
_AROUND: Floats = np.stack(np.meshgrid(_STEPS, _STEPS), axis=-1)
"""Points of an 18 mm square, millimetres from a mark's centre."""

_PRINTED = {solid: _printed(solid) for solid in (False, True)}

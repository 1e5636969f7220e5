"""Laying a photographed row on the printed one, box by box: a page is never quite flat.

One shift for a whole row puts its ends on wrong boxes where the page is bent; so each box is laid
on its outline alone, and a curve through those shifts carries the row.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from core.class_set.page_crop import Box
from core.class_set.score_marks.form import PX_PER_MM, ScoreRow
from core.class_set.score_marks.ink import ink_of
from core.class_set.score_marks.rows import straightened

Floats = NDArray[np.float32]

REACH_X, REACH_Y = 2.5, 5.5
"""Millimetres a row may lie from where the codes say: a bent page moves it by 2, another language
or a longer title printed above it by 4. Rows are 18 mm apart, so no row is taken for the next."""

BOX_REACH, STEP_REACH, LAST_REACH = 2.2, 1.2, 0.7
"""Millimetres a single box may lie from the row's common shift; the next box from where this one
lies, as the end of a slanted row is far from the common shift; and, at last, a box from the curve
through all of them."""

RIM = 0.6
"""Millimetres around a box that belong to its outline."""

_STEP = 3
_ENOUGH = 0.5
"""Ink darker than this counts as this: a felt pen must not pull the outlines."""

_ROUNDS = 4
_BEND = 3  # the degree of that curve


_Part = tuple[int, int, Floats]
_Laid = tuple[int, int, float]


@dataclass(frozen=True)
class Settled:
    """A row laid on its print.

    Attributes
    ----------
    ink : (h, w) float32
        Over the row's `area`.
    fit : float
        Mean ink under the printed outlines, less that beside them: near 0 where none were found.
    x, y : (h, w) float32
        Where each of its pixels lies on the page as the codes tell it, in mm.
    """

    ink: Floats
    fit: float
    x: Floats
    y: Floats


def settled(light: Floats, H: NDArray[np.float64], row: ScoreRow) -> Settled:
    """Straighten a row by the page's codes, then by its own outlines."""
    from scipy.ndimage import map_coordinates  # deferred: start-up time

    area, px = row.area, PX_PER_MM
    pad_x, pad_y = round(REACH_X * px), round(REACH_Y * px)
    wide = Box(
        area.x - pad_x / px,
        area.y - pad_y / px,
        area.width + 2 * pad_x / px,
        area.height + 2 * pad_y / px,
    )
    ink = ink_of(straightened(light, H, wide))
    outlines = outlines_of(row)
    soft = np.minimum(ink, np.float32(_ENOUGH))
    dy, dx, _ = _shift(soft, outlines, pad_y, pad_x)
    y, x = np.mgrid[0 : outlines.shape[0], 0 : outlines.shape[1]].astype(np.float32)
    at = np.stack([y + (dy + pad_y), x + (dx + pad_x)])
    parts = _parts(outlines, row)
    at += _curves(_walk(soft, parts, dy + pad_y, dx + pad_x), parts, outlines.shape[1])
    laid = np.asarray(map_coordinates(soft, at, order=1, mode="nearest"))
    near = [_lay(laid, part, 0, 0, round(LAST_REACH * px)) for part in parts]
    at += _curves(near, parts, outlines.shape[1])
    laid = np.asarray(map_coordinates(ink, at, order=1, mode="nearest"))
    fit = float(np.vdot(np.minimum(laid, np.float32(_ENOUGH)), _balanced(outlines)))
    down, right = (at + 0.5) / np.float32(px)
    x, y = right + np.float32(wide.x), down + np.float32(wide.y)
    return Settled(laid, fit, np.asarray(x, np.float32), np.asarray(y, np.float32))


def outlines_of(row: ScoreRow) -> Floats:
    """The printed boxes and numbers alone, 0 to 1: words around them differ with the language."""
    printed = 1 - row.printed.astype(np.float32) / 255
    kept: Floats = np.zeros(printed.shape, np.float32)
    for left, top, right, bottom in boxes_px(row, RIM):
        part = np.s_[max(0, round(top)) : round(bottom), max(0, round(left)) : round(right)]
        kept[part] = printed[part]
    return kept


def boxes_px(row: ScoreRow, more: float = 0.0) -> list[tuple[float, float, float, float]]:
    """Left, top, right, bottom of each box in pixels of the row's area, `more` mm larger."""
    area, px = row.area, PX_PER_MM
    return [
        (
            (box.x - area.x - more) * px,
            (box.y - area.y - more) * px,
            (box.x + box.width - area.x + more) * px,
            (box.y + box.height - area.y + more) * px,
        )
        for box in row.boxes
    ]


def _shift(soft: Floats, outlines: Floats, pad_y: int, pad_x: int) -> tuple[int, int, float]:
    """The one shift at which the outlines lie best: in steps of three pixels, then of one."""
    small, seen = _blocks(outlines), _blocks(soft)
    weights = _balanced(small)
    high, wide = small.shape
    tries = np.lib.stride_tricks.sliding_window_view(seen, (high, wide))
    scores = np.einsum("abij,ij->ab", tries, weights)
    at_y, at_x = np.unravel_index(int(scores.argmax()), scores.shape)
    rough = int(at_y) * _STEP, int(at_x) * _STEP
    weights = _balanced(outlines)
    best, at = -1.0, (pad_y, pad_x)
    for y in range(rough[0] - _STEP, rough[0] + _STEP + 1):
        for x in range(rough[1] - _STEP, rough[1] + _STEP + 1):
            if not (0 <= y <= 2 * pad_y and 0 <= x <= 2 * pad_x):
                continue
            part = soft[y : y + outlines.shape[0], x : x + outlines.shape[1]]
            score = float(np.vdot(part, weights))
            if score > best:
                best, at = score, (y, x)
    return at[0] - pad_y, at[1] - pad_x, best


def _parts(outlines: Floats, row: ScoreRow) -> list[_Part]:
    """The outlines of each box, and where they are: the first row and column."""
    parts = []
    for x0, y0, x1, y1 in boxes_px(row, RIM):
        top, left = max(0, round(y0)), max(0, round(x0))
        parts.append((top, left, outlines[top : round(y1), left : round(x1)]))
    return parts


def _walk(soft: Floats, parts: list[_Part], top: int, left: int) -> list[_Laid]:
    """Lay the box that lies surest, then from it each next one near the one before."""
    reach, step = round(BOX_REACH * PX_PER_MM), round(STEP_REACH * PX_PER_MM)
    first = [_lay(soft, part, top, left, reach) for part in parts]
    start = int(np.argmax([score for *_, score in first]))
    found = {start: first[start]}
    for way, last in ((1, len(parts)), (-1, -1)):
        for k in range(start + way, last, way):
            down, right, _ = found[k - way]
            y, x, score = _lay(soft, parts[k], top + down, left + right, step)
            found[k] = down + y, right + x, score
    return [found[k] for k in range(len(parts))]


def _lay(soft: Floats, part: _Part, top: int, left: int, reach: int) -> _Laid:
    """How far a box's outlines lie from where they should: down, right, and how surely."""
    i, j, box = part
    rows = np.clip(np.arange(-reach, box.shape[0] + reach) + top + i, 0, soft.shape[0] - 1)
    columns = np.clip(np.arange(-reach, box.shape[1] + reach) + left + j, 0, soft.shape[1] - 1)
    return _shift(soft[np.ix_(rows, columns)], box, reach, reach)


def _curves(laid: list[_Laid], parts: list[_Part], width: int) -> Floats:
    """Smooth curves through the boxes' shifts, down and right, for each column: (2, 1, w)."""
    at = np.array([left + box.shape[1] / 2 for _, left, box in parts])
    sure, columns = np.array([score for *_, score in laid]), np.arange(width)
    curves = [_curve(at, np.array([one[k] for one in laid], float), sure, columns) for k in (0, 1)]
    return np.stack(curves)[:, None, :].astype(np.float32)


def _curve(
    at: NDArray[np.float64],
    shifts: NDArray[np.float64],
    sure: NDArray[np.float64],
    columns: NDArray[np.int_],
) -> NDArray[np.float32]:
    """A smooth curve through the boxes' shifts; those far from it count less, round by round."""
    middle, spread = at.mean(), at.std()
    u = (at - middle) / spread
    base = np.maximum(sure, 1e-3)
    weights = base
    factors = np.zeros(_BEND + 1)
    for _ in range(_ROUNDS):
        factors = np.polyfit(u, shifts, _BEND, w=np.sqrt(weights))
        weights = base / (1 + (np.polyval(factors, u) - shifts) ** 2)
    x = np.clip((columns - middle) / spread, u.min() - 0.2, u.max() + 0.2)
    return np.polyval(factors, x).astype(np.float32)


def _balanced(outlines: Floats) -> Floats:
    """Weights that give the mean under the outlines less the mean beside them."""
    dark = outlines > 0.3
    on, off = max(int(dark.sum()), 1), max(int((~dark).sum()), 1)
    return np.where(dark, np.float32(1 / on), np.float32(-1 / off))


def _blocks(values: Floats) -> Floats:
    high, wide = values.shape[0] // _STEP, values.shape[1] // _STEP
    cut = values[: high * _STEP, : wide * _STEP]
    return np.asarray(cut.reshape(high, _STEP, wide, _STEP).mean(axis=(1, 3)))

"""Whether two pictures show the same painting: by what is left of it without its bands.

Students paint the same bands of the same sky, so bands tell nothing. Blooms, edges, brush marks
and the paper's grain are each painting's own.
"""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

WIDTH, HEIGHT = 128, 88
"""The painting is looked at this small, whatever its shape."""

SAME = 0.4
"""Correlation from which two paintings are the same: see DEVELOPERS.md for how far both kinds
are from it."""

_SMOOTH = 5.0  # pixels: what is wider is light, or a wash
_ROW = 49  # pixels: bands lie across, but not quite level
_EDGE = 4  # pixels left out along the edges, where corners are found a little differently
_SHIFT = 2  # pixels either way
_MOST = 4.0  # standard deviations

Floats = NDArray[np.float32]


def grain_of(picture: NDArray[np.uint8]) -> bytes:
    """What is left of a straightened painting without its bands.

    Parameters
    ----------
    picture : (h, w, 3) uint8

    Returns
    -------
    bytes
        HEIGHT * WIDTH signed bytes; empty for a picture with nothing in it.
    """
    from PIL import Image  # deferred: start-up time
    from scipy.ndimage import gaussian_filter, uniform_filter1d  # deferred: start-up time

    grey = Image.fromarray(picture).convert("L").resize((WIDTH, HEIGHT), Image.Resampling.BOX)
    left = np.log(np.asarray(grey, dtype=np.float64) + 8.0)
    left = left - uniform_filter1d(left, _ROW, axis=1, mode="nearest")
    left = left - gaussian_filter(left, _SMOOTH)
    spread = float(left.std())
    if spread < 1e-6:
        return b""
    grain = np.round(np.clip(left / spread, -_MOST, _MOST) * 31).astype(np.int8)
    return bytes(grain.tobytes())


def alike(one: bytes, other: bytes) -> float:
    """How far two grains agree, -1..1; 0 where one of them is empty."""
    if not (_sound(one) and _sound(other)):
        return 0.0
    return float((_moved(other) @ _middle(one)).max())


def same_grains(grains: Sequence[tuple[str, bytes]]) -> dict[str, str]:
    """Which of the paintings were there before: the later one's key, and the first one's.

    Parameters
    ----------
    grains : sequence of (key, grain)
        In the order the pictures came. Those of another length are left out.
    """
    sound = [(key, grain) for key, grain in grains if _sound(grain)]
    if len(sound) < 2:
        return {}
    middles = np.stack([_middle(grain) for _, grain in sound])
    first: dict[str, str] = {}
    for number, (key, grain) in enumerate(sound):
        if number == 0:
            continue
        agree = (_moved(grain) @ middles[:number].T).max(axis=0)
        best = int(agree.argmax())
        if agree[best] >= SAME:
            other = sound[best][0]
            first[key] = first.get(other, other)
    return first


def _sound(grain: bytes) -> bool:
    return len(grain) == WIDTH * HEIGHT


def _middle(grain: bytes) -> Floats:
    """Without its edges, as a vector of length 1."""
    trim = _EDGE + _SHIFT
    return _unit(_grid(grain)[trim:-trim, trim:-trim])


def _moved(grain: bytes) -> Floats:
    """The same, moved each way: one row a way."""
    trim, grid, ways = _EDGE + _SHIFT, _grid(grain), range(-_SHIFT, _SHIFT + 1)
    return np.stack(
        [
            _unit(grid[trim + y : HEIGHT - trim + y, trim + x : WIDTH - trim + x])
            for y in ways
            for x in ways
        ]
    )


def _unit(part: Floats) -> Floats:
    flat = (part - part.mean()).ravel()
    size = float(np.linalg.norm(flat))
    return np.asarray(flat / size if size > 0 else flat, dtype=np.float32)


def _grid(grain: bytes) -> Floats:
    return np.frombuffer(grain, dtype=np.int8).reshape(HEIGHT, WIDTH).astype(np.float32)

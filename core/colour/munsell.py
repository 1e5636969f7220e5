"""Munsell hue, value and chroma of every sRGB colour.

Hue and chroma come from a table over the sRGB cube that tools/build_munsell_table.py makes
from the renotation; value comes from Y by the formula, not from the table. Hue is written in
hundred-steps, 0..100 around the circle: 5R is 5, 5YR is 15, 5RP is 95.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray

from core.colour.lab import Lab_to_srgb, Lab_to_XYZ
from core.colour.value import fast_value, value_of_Y

Floats = NDArray[np.float64]

TABLE_PATH = Path(__file__).with_name("munsell_table.npz")

HUE_LETTERS = ("R", "YR", "Y", "GY", "G", "BG", "B", "PB", "P", "RP")

NO_HUE_CHROMA = 0.05
"""Below this chroma, which prints as 0.0, a colour has no hue and is written N."""


@dataclass(frozen=True)
class Munsell:
    """One colour on Munsell's three scales.

    Attributes
    ----------
    hue : float or None
        Hundred-steps, 0..100; None when there is no chroma to speak of.
    value : float
        0 black .. 10 white.
    chroma : float
        0 neutral, upwards.
    """

    hue: float | None
    value: float
    chroma: float

    @property
    def notation(self) -> str:
        """As Munsell colours are written.

        >>> Munsell(75.2, 4.1, 8.3).notation
        '5.2PB 4.1/8.3'
        >>> Munsell(None, 5.2, 0.0).notation
        'N 5.2'
        """
        if self.hue is None:
            return f"N {self.value:.1f}"
        tenths = round(self.hue * 10) % 1000
        family, step = divmod(tenths, 100)
        if step == 0:  # written 10R, not 0YR
            family, step = (family - 1) % 10, 100
        digits = f"{step / 10:.1f}".removesuffix(".0")
        return f"{digits}{HUE_LETTERS[family]} {self.value:.1f}/{self.chroma:.1f}"


@cache
def _table() -> tuple[int, NDArray[np.complex64]]:
    """Nodes along one edge, and chroma times e^(i hue), flattened in the order R, G, B."""
    with np.load(TABLE_PATH) as file:
        counts = np.cumsum(file["steps"], axis=2, dtype=np.int32).astype(np.float32)
        counts *= np.float32(file["unit"])
    vectors = counts.view(np.complex64)[..., 0]
    return vectors.shape[0], np.ascontiguousarray(vectors).reshape(-1)


@cache
def _corners() -> tuple[NDArray[np.intp], NDArray[np.intp]]:
    """Steps in the flat table to the second and third corner of a pixel's tetrahedron.

    The index tells the order of the three parts within a cell: 4 if red >= green, plus 2 if
    green >= blue, plus 1 if red >= blue. The second corner is one step along the greatest
    part, the third one step short of the far corner along the least.
    """
    nodes, _ = _table()
    steps = (nodes * nodes, nodes, 1)
    second, third = np.zeros(8, np.intp), np.zeros(8, np.intp)
    for order in range(8):
        red_green, green_blue, red_blue = bool(order & 4), bool(order & 2), bool(order & 1)
        wins = (
            red_green + red_blue,
            (not red_green) + green_blue,
            (not green_blue) + (not red_blue),
        )
        second[order] = steps[wins.index(max(wins))]
        third[order] = sum(steps) - steps[2 - wins[::-1].index(min(wins))]
    return second, third


def _vectors_of(rgb: NDArray[np.float32]) -> NDArray[np.complex64]:
    """Chroma times e^(i hue) of encoded sRGB within 0..1, shape (3, n) -> (n,).

    Each cell of the table is cut into six tetrahedra along its grey diagonal, which keeps greys
    exactly grey; plain trilinear weights would not.
    """
    nodes, table = _table()
    second, third = _corners()
    parts = rgb * np.float32(nodes - 1)
    cells = np.minimum(parts.astype(np.int32), np.int32(nodes - 2))
    parts -= cells
    red, green, blue = parts
    near = (cells[0] * np.int32(nodes * nodes) + cells[1] * np.int32(nodes) + cells[2]).astype(
        np.intp
    )

    most = np.maximum(np.maximum(red, green), blue)
    least = np.minimum(np.minimum(red, green), blue)
    middle = red + green + blue - most - least
    order = (red >= green) * np.int8(4) + (green >= blue) * np.int8(2) + (red >= blue)

    result = table.take(near) * (1 - most)
    result += table.take(near + second[order]) * (most - middle)
    result += table.take(near + third[order]) * (middle - least)
    result += table.take(near + (nodes * nodes + nodes + 1)) * least
    return np.asarray(result)


def srgb_to_munsell(rgb: ArrayLike) -> Floats:
    """Munsell hue, value and chroma of any sRGB colours, fast enough for whole pictures.

    Parameters
    ----------
    rgb : array_like, shape (..., 3), float
        Encoded sRGB, 0..1; values outside are clipped.

    Returns
    -------
    ndarray, shape (..., 3), float64
        Hue in hundred-steps 0..100, value 0..10 (to 0.001), chroma. Never NaN; where chroma is
        0 the hue says nothing and is 0.

    Raises
    ------
    ValueError
        The last axis is not 3 long, or a colour is NaN.

    Notes
    -----
    Hue and chroma: the renotation of Newhall, Nickerson and Judd (1943), see
    tools/build_munsell_table.py. Value: ASTM D1535-08.
    """
    rgb = np.asarray(rgb)
    result = np.empty(rgb.shape, dtype=np.float64)
    for part, out in _chunks(rgb, result):
        out[:, 0], out[:, 2] = _hue_and_chroma(part)
        out[:, 1] = fast_value(part)
    return result


_CHUNK = 1 << 15  # the working arrays of so many pixels stay in the processor's cache


def _chunks(rgb: NDArray[Any], result: Floats) -> Iterator[tuple[NDArray[np.float32], Floats]]:
    """Parts of the colours, clipped, shape (3, n), each with its place in the result, (n, 3)."""
    if rgb.ndim == 0 or rgb.shape[-1] != 3:
        raise ValueError(f"colours need a last axis of 3, not shape {rgb.shape}")
    flat, out = rgb.reshape(-1, 3), result.reshape(-1, 3)
    for start in range(0, len(flat), _CHUNK):
        part = np.ascontiguousarray(flat[start : start + _CHUNK].T, dtype=np.float32)
        if np.isnan(part).any():
            raise ValueError("a colour is NaN: leave such pixels out before asking")
        yield np.clip(part, 0.0, 1.0, out=part), out[start : start + _CHUNK]


def _hue_and_chroma(
    rgb: NDArray[np.float32],
) -> tuple[NDArray[np.float32], NDArray[np.float32]]:
    vectors = _vectors_of(rgb)
    hue = np.arctan2(vectors.imag, vectors.real) * np.float32(50 / np.pi)
    hue[hue < 0] += 100
    hue[hue >= 100] = 0  # what rounding leaves of -1e-9
    return hue, np.abs(vectors)


def Lab_to_munsell(Lab: ArrayLike) -> Floats:
    """Munsell hue, value and chroma, shape (..., 3), of CIELAB, shape (..., 3).

    Value comes from the exact Y; hue and chroma from the nearest sRGB holds (clipped), so a
    colour beyond sRGB reads a little less chromatic than it is. NaN raises ValueError.
    """
    Lab = np.asarray(Lab, dtype=np.float64)
    result = np.empty(Lab.shape, dtype=np.float64)
    for part, out in _chunks(Lab_to_srgb(Lab), result):
        out[:, 0], out[:, 2] = _hue_and_chroma(part)
    result[..., 1] = value_of_Y(np.clip(Lab_to_XYZ(Lab)[..., 1] * 100, 0, 100))
    return result


def munsell_of(hue_value_chroma: ArrayLike) -> Munsell:
    """One row of `srgb_to_munsell` as a `Munsell`, without a hue where there is none."""
    hue, value, chroma = np.asarray(hue_value_chroma, dtype=np.float64).tolist()
    return Munsell(None if chroma < NO_HUE_CHROMA else hue, value, chroma)

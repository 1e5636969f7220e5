"""Build core/colour/munsell_table.npz: Munsell hue and chroma over the sRGB cube.

Run from the root of a checkout, with the development packages installed:

    python -m tools.build_munsell_table

Source of the numbers: the Munsell renotation (S. M. Newhall, D. Nickerson, D. B. Judd, 1943,
"Final report of the O.S.A. subcommittee on the spacing of the Munsell colors", JOSA 33(7),
385-418), with its extrapolated colours ("all.dat" of the Munsell Color Science Laboratory),
as the package colour-science carries it in MUNSELL_COLOURS_ALL.

Method: adapt D65 to illuminant C (Bradford); Munsell value from Y (ASTM D1535); inside each
value plane of the renotation interpolate linearly from (x, y) to (C cos H, C sin H) over a
Delaunay triangulation in which the white point has chroma 0; interpolate linearly between
planes. Below the darkest plane (value 0.2) chroma falls in proportion to value, down to 0 at
black.
"""

from __future__ import annotations

from pathlib import Path

import numpy as np
from numpy.typing import NDArray
from scipy.interpolate import LinearNDInterpolator

from core.colour.adaptation import D65_TO_C, WHITE_C_xy
from core.colour.lab import linear_to_XYZ
from core.colour.munsell import TABLE_PATH
from core.colour.srgb import srgb_to_linear
from core.colour.value import munsell_value

NODES = 65
UNIT = 0.002
"""Chroma of one count of the stored integers: 16 bits reach 65."""

Floats = NDArray[np.float64]
HUE_LETTERS = ("R", "YR", "Y", "GY", "G", "BG", "B", "PB", "P", "RP")


def hundred_steps(name: str) -> float:
    """7.5PB -> 77.5."""
    digits = name.rstrip("RYGBP")
    return HUE_LETTERS.index(name[len(digits) :]) * 10 + float(digits)


def renotation_planes() -> dict[float, tuple[Floats, NDArray[np.complex128]]]:
    """Value -> ((x, y) of its colours, chroma times e^(i hue))."""
    from colour.notation.datasets.munsell import MUNSELL_COLOURS_ALL  # takes 3 s

    rows: dict[float, list[tuple[float, float, complex]]] = {}
    for (hue, value, chroma), (x, y, _Y) in MUNSELL_COLOURS_ALL:
        angle = 2j * np.pi * hundred_steps(hue) / 100
        rows.setdefault(float(value), []).append((x, y, chroma * np.exp(angle)))
    planes = {}
    for value in sorted(rows):
        table = np.array([*rows[value], (*WHITE_C_xy, 0j)])
        planes[value] = (table[:, :2].real, table[:, 2])
    return planes


def munsell_vectors(linear: Floats) -> NDArray[np.complex128]:
    """Chroma times e^(i hue) of linear sRGB colours, shape (n, 3) -> (n,), complex.

    Raises
    ------
    RuntimeError
        A colour is outside the renotation: the table would have a hole.
    """
    adapted = linear_to_XYZ(linear) @ D65_TO_C.T
    value = munsell_value(np.clip(adapted[:, 1] * 100, 0, 100))
    total = adapted.sum(axis=1)
    black = total <= 0
    total[black] = 1
    xy = adapted[:, :2] / total[:, None]
    xy[black] = WHITE_C_xy

    planes = renotation_planes()
    values = np.array(list(planes))
    at_plane = [LinearNDInterpolator(points, vectors) for points, vectors in planes.values()]
    below = np.clip(np.searchsorted(values, value, side="right") - 1, 0, len(values) - 2)
    result = np.full(len(linear), np.nan + 0j)
    for i in range(len(values) - 1):
        here = below == i
        if not here.any():
            continue
        share = np.clip((value[here] - values[i]) / (values[i + 1] - values[i]), 0, 1)
        low, high = at_plane[i](xy[here]), at_plane[i + 1](xy[here])
        low = np.where(share == 1, high, low)
        high = np.where(share == 0, low, high)
        result[here] = low + share * (high - low)
    result *= np.clip(value / values[0], 0, 1)
    if np.isnan(result).any():
        first = linear[np.isnan(result)][0]
        raise RuntimeError(f"{np.isnan(result).sum()} colours outside the renotation: {first}")
    return result


def build(nodes: int = NODES) -> NDArray[np.int16]:
    """The table, shape (nodes, nodes, nodes, 2), in counts of UNIT; axes are R, G, B."""
    axis = np.linspace(0, 1, nodes)
    grid = np.stack(np.meshgrid(axis, axis, axis, indexing="ij"), axis=-1)
    vectors = munsell_vectors(srgb_to_linear(grid.reshape(-1, 3))).reshape(grid.shape[:3])
    diagonal = np.arange(nodes)
    vectors[diagonal, diagonal, diagonal] = 0  # grey has no chroma, not 1e-6
    counts = np.stack([vectors.real, vectors.imag], axis=-1) / UNIT
    if np.abs(counts).max() > np.iinfo(np.int16).max:
        raise RuntimeError("chroma does not fit: raise UNIT")
    return np.rint(counts).astype(np.int16)


def delta(table: NDArray[np.int16]) -> NDArray[np.int16]:
    """Differences along blue: smaller numbers, so that the file packs better."""
    return np.diff(table, axis=2, prepend=np.int16(0))


def main() -> None:
    table = build()
    np.savez_compressed(TABLE_PATH, steps=delta(table), unit=np.float64(UNIT))
    print(f"{Path(TABLE_PATH).name}: {Path(TABLE_PATH).stat().st_size / 1e6:.2f} MB")


if __name__ == "__main__":
    main()

"""What a paint looks like by itself: drawn out from strong to pale, and as one telling colour."""

from __future__ import annotations

from functools import cache, lru_cache

import numpy as np
from numpy.typing import NDArray

from core.colour import Lab_to_LCh, Lab_to_srgb, srgb_to_hex
from core.paint.mixture.mix import Triple
from core.paint.pigment.measured import FULL_LOAD_ML, half_load_ml, load_Lab, measured_paints

STRONGEST, PALEST = 24.0, 0.12
"""Half loads at the two ends of a drawn-out swatch: full colour, and a breath of it."""

WHITE_HALF_ML = 0.005

SIDE_BY_SIDE = 40
LEAST_L = 24.0


@cache
def drawn_out(measured_as: str, steps: int = 16) -> tuple[str, ...]:
    """A paint drawn out with water from strong to pale.

    Parameters
    ----------
    measured_as : str
        A measured paint (`Paint.measured_as`).
    steps : int

    Returns
    -------
    tuple of str
        "#rrggbb", the strongest first; each step holds the same share less paint.
    """
    half = half_load_ml(measured_as)
    # A white never takes half the light: its palest wash is set beside the other paints'.
    palest = PALEST * min(half, WHITE_HALF_ML)
    loads = np.geomspace(min(STRONGEST * half, FULL_LOAD_ML), palest, steps)
    return tuple(srgb_to_hex(rgb) for rgb in Lab_to_srgb(_washes(measured_as, loads)))


@cache
def paint_colour(measured_as: str) -> str:
    """The colour that tells a paint apart from its neighbours on a parts bar, "#rrggbb".

    Its most intense wash that is not nearly black; for a paint that is never intense, its
    strongest.
    """
    half = half_load_ml(measured_as)
    loads = np.geomspace(0.3 * half, min(STRONGEST * half, FULL_LOAD_ML), SIDE_BY_SIDE)
    Lab = _washes(measured_as, loads)
    chroma = Lab_to_LCh(Lab)[:, 1]
    telling = Lab[:, 0] >= LEAST_L
    if not telling.any() or chroma.max() < 10:
        return srgb_to_hex(Lab_to_srgb(Lab[-1]))
    return srgb_to_hex(Lab_to_srgb(Lab[int(np.argmax(np.where(telling, chroma, -1.0)))]))


def hex_of_Lab(Lab: Triple) -> str:
    """A CIELAB colour as "#rrggbb", clipped to the screen's range."""
    return hexes_of_Lab((Lab,))[0]


@lru_cache(maxsize=256)
def hexes_of_Lab(path: tuple[Triple, ...]) -> tuple[str, ...]:
    """CIELAB colours as "#rrggbb", all at once; remembered, as a plan's passages are shown often.

    Parameters
    ----------
    path : tuple of Lab triples
    """
    if not path:
        return ()
    return tuple(srgb_to_hex(rgb) for rgb in Lab_to_srgb(np.array(path)))


def _washes(measured_as: str, loads: NDArray[np.float64]) -> NDArray[np.float64]:
    data = measured_paints()
    layer = np.zeros((len(loads), len(data.keys)))
    layer[:, data.index(measured_as)] = loads
    return load_Lab(layer)

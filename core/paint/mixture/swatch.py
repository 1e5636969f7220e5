"""What a paint looks like by itself: drawn out from strong to pale, and as one telling colour."""

from __future__ import annotations

from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from core.colour import Lab_to_LCh, Lab_to_srgb, srgb_to_hex
from core.paint.mixture.mix import Triple
from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.measured import FULL_LOAD_ML, half_load_ml, load_Lab, measured_paints
from core.paint.pigment.own import card_Lab, own_half_load_ml
from core.paint.pigment.paint import Paint

STRONGEST, PALEST = 24.0, 0.12
"""Half loads at the two ends of a drawn-out swatch: full colour, and a breath of it."""

WHITE_HALF_ML = 0.005

SIDE_BY_SIDE = 40
LEAST_L = 24.0


def drawn_out(paint: Paint, steps: int = 16) -> tuple[str, ...]:
    """A paint drawn out with water from strong to pale.

    Parameters
    ----------
    paint : Paint
    steps : int

    Returns
    -------
    tuple of str
        "#rrggbb", the strongest first; each step holds the same share less paint.
    """
    return _drawn_out(paint.card or paint.measured_as, steps)


def _drawn_out(pigment: CardPaint | str, steps: int) -> tuple[str, ...]:
    half = _half_ml(pigment)
    # A white never takes half the light: its palest wash is set beside the other paints'.
    palest = PALEST * min(half, WHITE_HALF_ML)
    loads = np.geomspace(min(STRONGEST * half, FULL_LOAD_ML), palest, steps)
    return tuple(srgb_to_hex(rgb) for rgb in Lab_to_srgb(_washes(pigment, loads)))


def paint_colour(paint: Paint) -> str:
    """The colour that tells a paint apart from its neighbours on a parts bar, "#rrggbb".

    Its most intense wash that is not nearly black; for a paint that is never intense, its
    strongest.
    """
    return _paint_colour(paint.card or paint.measured_as)


# benchmarks/cache_hits.py: 155 calls, 8 misses of 0.3 ms.
@lru_cache(maxsize=256)
def _paint_colour(pigment: CardPaint | str) -> str:
    half = _half_ml(pigment)
    loads = np.geomspace(0.3 * half, min(STRONGEST * half, FULL_LOAD_ML), SIDE_BY_SIDE)
    Lab = _washes(pigment, loads)
    chroma = Lab_to_LCh(Lab)[:, 1]
    telling = Lab[:, 0] >= LEAST_L
    if not telling.any() or chroma.max() < 10:
        return srgb_to_hex(Lab_to_srgb(Lab[-1]))
    return srgb_to_hex(Lab_to_srgb(Lab[int(np.argmax(np.where(telling, chroma, -1.0)))]))


def hex_of_Lab(Lab: Triple) -> str:
    """A CIELAB colour as "#rrggbb", clipped to the screen's range."""
    return hexes_of_Lab((Lab,))[0]


def hexes_of_Lab(path: tuple[Triple, ...]) -> tuple[str, ...]:
    """CIELAB colours as "#rrggbb", all at once; remembered, as a plan's passages are shown often.

    Parameters
    ----------
    path : tuple of Lab triples
    """
    if not path:
        return ()
    return tuple(srgb_to_hex(rgb) for rgb in Lab_to_srgb(np.array(path)))


def _half_ml(pigment: CardPaint | str) -> float:
    return half_load_ml(pigment) if isinstance(pigment, str) else own_half_load_ml(pigment)


def _washes(pigment: CardPaint | str, loads: NDArray[np.float64]) -> NDArray[np.float64]:
    if not isinstance(pigment, str):
        return card_Lab(pigment, loads)
    data = measured_paints()
    layer = np.zeros((len(loads), len(data.keys)))
    layer[:, data.index(pigment)] = loads
    return load_Lab(layer)

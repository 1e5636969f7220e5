"""Whether a chip is seen on the grey it lies on."""

from __future__ import annotations

from functools import lru_cache

import numpy as np

from core.colour.lab import srgb_to_Lab

_STEP = 10.0
"""One step of Munsell value in L* (Newhall, Nickerson, Judd 1943: V is close to L* / 10)."""
_CHROMA = 12.0
"""C*ab below which a colour beside grey of its own value is lost; twice the near neutrals' 6."""


@lru_cache(maxsize=256)
def lost_on(colour: str, ground: str) -> bool:
    """Whether a colour lies within one value step of its ground and is nearly as grey.

    Parameters
    ----------
    colour, ground : str
        "#rrggbb", sRGB.

    Examples
    --------
    >>> lost_on("#8b898c", "#868686"), lost_on("#4060a0", "#868686"), lost_on("#e0e0e0", "#868686")
    (True, False, False)
    """
    Lab, wall = (
        srgb_to_Lab(np.array([int(text[i : i + 2], 16) for i in (1, 3, 5)]) / 255)
        for text in (colour, ground)
    )
    near = abs(float(Lab[0] - wall[0])) < _STEP
    return bool(near and float(np.hypot(Lab[1] - wall[1], Lab[2] - wall[2])) < _CHROMA)

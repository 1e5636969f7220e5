"""Wet paint looks darker: what a mix should look like in the palette.

The measured samples are dry, so every chip shows what a wash dries to. Measured over 75 paints
at full strength, drying lightened them by 2.3 L* on average, a quarter of a Munsell step (B.
MacEvoy, handprint.com, drying shift); weaker washes shift more.
"""

from __future__ import annotations

import numpy as np

from core.colour import Lab_to_XYZ
from core.colour.value import munsell_value, munsell_Y
from core.paint.mixture.mix import Triple

DRYING_STEPS = 0.25
"""Munsell steps a wash lightens while it dries, unless the class says otherwise."""


def wet_Lab(dry: Triple, steps: float = DRYING_STEPS) -> Triple:
    """What a wash looks like wet.

    Parameters
    ----------
    dry : Lab triple
    steps : float
        Munsell steps by which it lightens in drying; 0 gives `dry` back.
    """
    Y = float(np.clip(Lab_to_XYZ(np.array(dry))[1], 0, 1)) * 100
    wet_Y = float(munsell_Y(max(float(munsell_value(Y)) - steps, 0.0))) / 100
    wet_L = 116 * np.cbrt(wet_Y) - 16 if wet_Y > (6 / 29) ** 3 else wet_Y * (29 / 3) ** 3
    lift = float(wet_L) - dry[0] if steps else 0.0
    return max(dry[0] + lift, 0.0), dry[1], dry[2]

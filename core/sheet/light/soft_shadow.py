"""A soft shadow across a sheet, told from the unevenness that real paper and lamps have.

Light that merely falls off, and paper that cockles, leave deviations all along the border. A shadow
leaves few: the border is in the light, then in the shade, with one slope between. So a step of
light with a straight, soft edge is laid over the smooth surface, wherever it suits best: what it
explains most of was a shadow.
"""

from __future__ import annotations

import numpy as np

from core.colour.working_space import Floats

_EXPLAINED = 0.5  # of the deviations at most may be left with the step
_LEAST_STEP = 0.2  # natural log
_KEPT = 0.95  # of the stretches; strays are dents and drops
_LEAST_SEEN = 0.5  # of the step must fall on the border itself
_ANGLES = np.arange(12) * np.pi / 12  # a step and its reverse are one family
_OFFSETS = np.linspace(-0.8, 0.8, 13)  # of half the longer side
_SOFT = (0.06, 0.15, 0.3)


def is_soft_shadow(places: Floats, light: Floats, terms: Floats, aspect: float) -> bool:
    """Whether one soft step explains most of what the smooth surface leaves.

    Parameters
    ----------
    places : (n, 2) float64
        Of stretches of the border, as `light.border_blocks`.
    light : (n,) float64
        Their brightness, natural log.
    terms : (n, k) float64
        Of the smooth surface.
    aspect : float
        Width over height of the painting.
    """
    if len(light) < 2 * terms.shape[1]:
        return False
    flat = places * [aspect, 1.0]
    flat = flat / np.abs(flat).max()
    before, _ = _left(terms, light)
    least, height = before, 0.0
    for angle in _ANGLES:
        across = flat @ [np.cos(angle), np.sin(angle)]
        for offset in _OFFSETS:
            for soft in _SOFT:
                step = 1 / (1 + np.exp(-(across - offset) / soft))
                if np.ptp(step) < _LEAST_SEEN:
                    continue
                left, fit = _left(np.column_stack([terms, step]), light)
                if left < least:
                    least, height = left, float(fit[-1])
    return least < _EXPLAINED * before and abs(height) >= _LEAST_STEP


def _left(design: Floats, light: Floats) -> tuple[float, Floats]:
    """What a fit leaves, root mean square without strays, and the fit."""
    fit = np.linalg.lstsq(design, light, rcond=None)[0]
    rest = np.sort(np.abs(light - design @ fit))[: max(1, int(_KEPT * len(light)))]
    return float(np.sqrt(np.mean(rest**2))), np.asarray(fit)

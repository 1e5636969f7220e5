"""A phone's tone curve as three unknowns of the fit: contrast, brightness, saturation.

Where the partners of every mix are known already, they pin it, and much may be unknown. Where all
of a card is unknown the curve would take up what belongs to the paints: there half of it is taken
for granted, with half the spread. What phones do was assumed (DEVELOPERS.md), not measured.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np

from core.colour import Lab_to_XYZ, XYZ_to_linear, linear_to_srgb, linear_to_XYZ, srgb_to_linear
from core.paint.own.layer import Lab_slopes
from core.paint.pigment.measured import measured_paints
from core.paint.pigment.pigments import Floats

UNKNOWNS = 3
PAPER_ENCODED = 0.9
"""Where a phone puts white paper."""

GLARE = 0.006
_LUMINANCE = np.array([0.2126, 0.7152, 0.0722])
_STEP_LAB, _STEP = 0.05, 0.01

Spread = tuple[float, float]
"""Mean and standard deviation."""


@dataclass(frozen=True)
class PhonePrior:
    """What is likely of a phone's curve."""

    contrast: Spread
    brightness: Spread
    saturation: Spread


PINNED = PhonePrior((1.8, 0.9), (0.05, 0.12), (1.1, 0.07))
"""Where the partners are known."""

LOOSE = PhonePrior((1.0, 0.5), (0.03, 0.06), (1.05, 0.035))
"""Where all of a card is unknown."""


def seen_by_phone(Lab: Floats, unknowns: Floats, likely: PhonePrior) -> Floats:
    """What a picture shows of colours, shape (n, 3), beside its own white.

    Parameters
    ----------
    Lab : ndarray, shape (n, 3), float
    unknowns : ndarray, shape (3,), float
        Standard deviations from the usual phone.
    likely : PhonePrior
    """
    c = np.clip(unknowns, -3, 3)
    contrast, brightness, saturation = (
        mean + spread * float(one)
        for (mean, spread), one in zip(
            (likely.contrast, likely.brightness, likely.saturation), c, strict=True
        )
    )
    contrast, power = max(contrast, 1e-3), float(np.exp(-brightness))
    paper = _paper_linear()
    shown = XYZ_to_linear(Lab_to_XYZ(Lab)) / paper + GLARE
    luminance = shown @ _LUMINANCE
    shown = luminance[:, None] + saturation * (shown - luminance[:, None])
    exposure = srgb_to_linear(np.array(PAPER_ENCODED))

    def curve(linear: Floats) -> Floats:
        encoded = linear_to_srgb(np.clip(linear * exposure, 0.0, 1.0)) ** power
        low, high = _logistic(np.array([0.0, 1.0]), contrast)
        bent: Floats = srgb_to_linear((_logistic(encoded, contrast) - low) / (high - low))
        return bent

    white = curve(np.array([1 + GLARE]))
    out = curve(np.maximum(shown, 0.0)) / white * paper
    return Lab_slopes(linear_to_XYZ(np.maximum(out, 1e-7)))[0]


def phone_slopes(
    Lab: Floats, unknowns: Floats, likely: PhonePrior
) -> tuple[Floats, Floats, Floats]:
    """What is seen, (n, 3), and its slopes by Lab, (n, 3, 3), and by the unknowns, (n, 3, 3)."""
    seen = seen_by_phone(Lab, unknowns, likely)
    by_Lab, by_unknown = np.empty((len(Lab), 3, 3)), np.empty((len(Lab), 3, UNKNOWNS))
    for axis in range(3):
        moved = Lab.copy()
        moved[:, axis] += _STEP_LAB
        by_Lab[:, :, axis] = (seen_by_phone(moved, unknowns, likely) - seen) / _STEP_LAB
        other = np.array(unknowns, dtype=np.float64)
        other[axis] += _STEP
        by_unknown[:, :, axis] = (seen_by_phone(Lab, other, likely) - seen) / _STEP
    return seen, by_Lab, by_unknown


def _logistic(x: Floats, contrast: float) -> Floats:
    risen: Floats = 1 / (1 + np.exp(-contrast * (x - 0.5)))
    return risen


def _paper_linear() -> Floats:
    data = measured_paints()
    return XYZ_to_linear(data.paper @ data.weights)

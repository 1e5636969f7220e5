"""What a picture's numbers mean: a curve for each channel, and the colours of its primaries.

Everything meets in linear light with the primaries of sRGB, not clipped: there colours may be
averaged, and there one sees whether a colour is outside sRGB.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from core.colour.adaptation import adaptation
from core.colour.lab import xy_to_XYZ
from core.colour.srgb import linear_to_srgb, srgb_to_linear
from core.i18n import translate

Floats = NDArray[np.float64]
Curve = Callable[[Floats], Floats]

# CIE 1931 chromaticities of the whites, and of red, green and blue.
D65 = (0.3127, 0.3290)
D50_XYZ = np.array([0.9642, 1.0, 0.8249])  # ICC.1:2022, 6.3.4.3: the profiles' white
BT709 = ((0.640, 0.330), (0.300, 0.600), (0.150, 0.060))  # IEC 61966-2-1
ADOBE_RGB = ((0.640, 0.330), (0.210, 0.710), (0.150, 0.060))  # Adobe RGB (1998), 4.3.1.1
DISPLAY_P3 = ((0.680, 0.320), (0.265, 0.690), (0.150, 0.060))  # SMPTE EG 432-1
BT2020 = ((0.708, 0.292), (0.170, 0.797), (0.131, 0.046))  # ITU-R BT.2020-2, table 3


def primaries_to_XYZ_D50(
    primaries: tuple[tuple[float, float], ...], white: tuple[float, float]
) -> Floats:
    """3x3 matrix from linear RGB of these chromaticities to XYZ under D50.

    Notes
    -----
    Source: SMPTE RP 177-1993, the derivation of basic television colour equations.
    """
    columns = np.stack([xy_to_XYZ(*xy) for xy in primaries], axis=1).astype(np.float64)
    white_XYZ = xy_to_XYZ(*white)
    strengths = np.linalg.solve(columns, white_XYZ)
    return np.asarray(adaptation(white_XYZ, D50_XYZ) @ (columns * strengths), dtype=np.float64)


XYZ_D50_TO_LINEAR: Floats = np.asarray(
    np.linalg.inv(primaries_to_XYZ_D50(BT709, D65)), dtype=np.float64
)
"""3x3 matrix from XYZ under D50 to linear light with sRGB's primaries."""


@dataclass(frozen=True, eq=False)
class Encoding:
    """How the numbers of a grey or RGB picture become linear sRGB light.

    Attributes
    ----------
    curves : tuple of callables
        One, or one a channel: sample 0..1 to linear light.
    matrix : ndarray, shape (3, 3)
        Linear RGB of the picture's primaries to linear light of sRGB's.
    """

    curves: tuple[Curve, ...]
    matrix: Floats

    def is_srgb(self) -> bool:
        """Whether using sRGB's own curve and primaries instead changes nothing visible.

        The bound, 0.003, is well below one of 255 steps.
        """
        grid = np.linspace(0.0, 1.0, 256)
        same_curve = all(
            np.abs(linear_to_srgb(np.clip(curve(grid), 0, 1)) - grid).max() < 3e-3
            for curve in self.curves
        )
        return same_curve and bool(np.abs(self.matrix - np.eye(3)).max() < 3e-3)

    def curve(self, channel: int) -> Curve:
        """The curve of a channel."""
        return self.curves[min(channel, len(self.curves) - 1)]

    def table(self, channel: int, levels: int) -> NDArray[np.float32]:
        """Linear light of an integer channel's `levels` codes."""
        return self.curve(channel)(np.linspace(0.0, 1.0, levels)).astype(np.float32)


def gamma_curve(gamma: float) -> Curve:
    """The curve x ** gamma; below 0 it is 0."""
    return lambda x: np.clip(x, 0.0, None) ** gamma


def encoding_of(
    curve: Curve,
    primaries: tuple[tuple[float, float], ...] = BT709,
    white: tuple[float, float] = D65,
) -> Encoding:
    """An encoding with one curve and published chromaticities."""
    return Encoding((curve,), XYZ_D50_TO_LINEAR @ primaries_to_XYZ_D50(primaries, white))


SRGB = Encoding((srgb_to_linear,), np.eye(3))
LINEAR = Encoding((gamma_curve(1.0),), np.eye(3))


@lru_cache(maxsize=1)
def adobe_rgb() -> Encoding:
    """Adobe RGB (1998): the wide space cameras name in their EXIF instead of a profile."""
    return encoding_of(gamma_curve(563 / 256), ADOBE_RGB)  # Adobe RGB (1998), 4.3.1.2


def encoding_from_codes(primaries: int, transfer: int) -> tuple[Encoding, list[str]]:
    """The encoding that the code points of HEIF, AVIF and PNG name.

    Parameters
    ----------
    primaries, transfer : int
        ITU-T H.273 (07/2024), tables 2 and 3. Unknown ones mean sRGB.

    Returns
    -------
    Encoding, list of str
        And what the user should know.
    """
    colours = {9: BT2020, 12: DISPLAY_P3}.get(primaries, BT709)
    if transfer in (16, 18):
        curve = _pq_curve if transfer == 16 else _hlg_curve
        notice = translate(
            "photo",
            "This is a high dynamic range (HDR) picture: what is brighter than paper white is "
            "cut off, and its colours are approximate.",
        )
        return encoding_of(curve, colours), [notice]
    powers = {4: 2.2, 5: 2.8, 8: 1.0}
    if transfer in powers:
        return encoding_of(gamma_curve(powers[transfer]), colours), []
    return (SRGB if colours is BT709 else encoding_of(srgb_to_linear, colours)), []


def _pq_curve(x: Floats) -> Floats:
    """ITU-R BT.2100-2, table 4; 203 cd/m2 is white (ITU-R BT.2408, table 1)."""
    power = np.clip(x, 0.0, 1.0) ** (1 / 78.84375)
    light = np.clip(power - 0.8359375, 0.0, None) / (18.8515625 - 18.6875 * power)
    return light ** (1 / 0.1593017578125) * (10_000 / 203)


def _hlg_curve(x: Floats) -> Floats:
    """ITU-R BT.2100-2, table 5; a signal of 75% is white (ITU-R BT.2408, table 1)."""
    a, b, c = 0.17883277, 0.28466892, 0.55991073
    x = np.clip(x, 0.0, 1.0)
    light = np.where(x <= 0.5, x * x / 3, (np.exp((x - c) / a) + b) / 12)
    return light / 0.26496

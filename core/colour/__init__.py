"""Colour arithmetic: sRGB, CIELAB, differences, and Munsell hue, value and chroma.

May import nothing else of `core`; everything above imports it.
"""

from core.colour.difference import delta_E_76, delta_E_2000
from core.colour.lab import (
    Lab_to_LCh,
    Lab_to_srgb,
    Lab_to_XYZ,
    XYZ_to_Lab,
    XYZ_to_linear,
    in_srgb_gamut,
    linear_to_Oklab,
    linear_to_XYZ,
    srgb_to_Lab,
)
from core.colour.munsell import (
    Lab_to_munsell,
    Munsell,
    munsell_of,
    srgb_to_munsell,
)
from core.colour.srgb import (
    hex_to_srgb,
    linear_to_srgb,
    linear_to_srgb8,
    srgb8_to_linear,
    srgb_to_hex,
    srgb_to_linear,
)
from core.colour.value import munsell_value, munsell_Y

__all__ = [
    "Lab_to_LCh",
    "Lab_to_XYZ",
    "Lab_to_munsell",
    "Lab_to_srgb",
    "Munsell",
    "XYZ_to_Lab",
    "XYZ_to_linear",
    "delta_E_76",
    "delta_E_2000",
    "hex_to_srgb",
    "in_srgb_gamut",
    "linear_to_Oklab",
    "linear_to_XYZ",
    "linear_to_srgb",
    "linear_to_srgb8",
    "munsell_Y",
    "munsell_of",
    "munsell_value",
    "srgb8_to_linear",
    "srgb_to_Lab",
    "srgb_to_hex",
    "srgb_to_linear",
    "srgb_to_munsell",
]

"""How well text stands out from its ground.

Source: W3C, Web Content Accessibility Guidelines 2.2 (2023), "relative luminance" and
"contrast ratio"; the luminance's toe is written 0.04045 as in IEC 61966-2-1 (the guideline
prints both 0.03928 and 0.04045; no 8-bit colour is between them).
"""

from __future__ import annotations

DARK_INK = "#0b0b0b"
LIGHT_INK = "#ffffff"


def relative_luminance(colour: str) -> float:
    """Relative luminance of an sRGB colour, 0 black .. 1 white.

    Parameters
    ----------
    colour : str
        "#rrggbb".

    Raises
    ------
    ValueError
        `colour` is not of that form.
    """
    if len(colour) != 7 or colour[0] != "#":
        raise ValueError(f"not a colour of the form #rrggbb: {colour!r}")
    encoded = (int(colour[i : i + 2], 16) / 255.0 for i in (1, 3, 5))
    red, green, blue = (
        c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4 for c in encoded
    )
    return 0.2126 * red + 0.7152 * green + 0.0722 * blue


def contrast_ratio(one: str, other: str) -> float:
    """Contrast ratio of two colours, 1..21, whichever is the lighter.

    >>> round(contrast_ratio("#000000", "#ffffff"), 1)
    21.0
    """
    return _ratio(relative_luminance(one), relative_luminance(other))


def _ratio(one: float, other: float) -> float:
    darker, lighter = sorted((one, other))
    return (lighter + 0.05) / (darker + 0.05)


_DARK, _LIGHT = relative_luminance(DARK_INK), relative_luminance(LIGHT_INK)


def ink_on(ground: str) -> str:
    """Black or white, whichever stands out more from `ground`."""
    luminance = relative_luminance(ground)
    return DARK_INK if _ratio(_DARK, luminance) >= _ratio(_LIGHT, luminance) else LIGHT_INK

"""Lengths in words: millimetres inside, centimetres or inches for the reader.

Inches stand in eighths, as on a ruler: "10 7/8 in". Thousandths would claim what tape cannot keep.
"""

from __future__ import annotations

import math
from fractions import Fraction
from typing import Literal

from core.i18n import translate

Units = Literal["cm", "in"]

MM_PER_INCH = 25.4
_EIGHTHS = 8


def length_number(mm: float, units: Units) -> str:
    """A length without its unit, to the millimetre or the eighth of an inch.

    >>> length_number(277, "cm"), length_number(277, "in"), length_number(3, "in")
    ('27.7', '10 7/8', '1/8')
    """
    if units == "cm":
        text = translate("units", "{cm:.1f}").format(cm=mm / 10)
        return text.removesuffix(".0")
    eighths = math.floor(abs(mm) / MM_PER_INCH * _EIGHTHS + 0.5)
    whole, rest = divmod(eighths, _EIGHTHS)
    sign = "-" if mm < 0 and eighths else ""
    parts = [str(whole)] if whole or not rest else []
    if rest:
        parts.append(str(Fraction(rest, _EIGHTHS)))
    return sign + " ".join(parts)


def length_text(mm: float, units: Units) -> str:
    """A length with its unit.

    >>> length_text(25.4, "in"), length_text(25.4, "cm")
    ('1 in', '2.5 cm')
    """
    return _with_unit(units).format(length=length_number(mm, units))


def size_text(width_mm: float, height_mm: float, units: Units) -> str:
    """Width and height with their unit once.

    >>> size_text(277, 190, "cm"), size_text(277, 190, "in")
    ('27.7 × 19 cm', '10 7/8 × 7 1/2 in')
    """
    size = translate("units", "{width} × {height}").format(
        width=length_number(width_mm, units), height=length_number(height_mm, units)
    )
    return _with_unit(units).format(length=size)


def _with_unit(units: Units) -> str:
    if units == "cm":
        return translate("units", "{length} cm")
    return translate("units", "{length} in")

"""The teacher's choices of words and scales: what is said, never what is measured."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

from core.reading.units import Units


@dataclass(frozen=True)
class Wording:
    """Choices that change words and numbers shown, not readings.

    Attributes
    ----------
    tertiary : "tertiary" or "intermediate"
        The word for the six hues between a primary and a secondary; both are in use.
    white_is : 10 or 0
        Which end of the value scale white has. 10 is Munsell's direction; classrooms
        use both (common practice), so both ends are always printed.
    units : "cm" or "in"
        Lengths as they are shown.
    """

    tertiary: Literal["tertiary", "intermediate"] = "tertiary"
    white_is: Literal[10, 0] = 10
    units: Units = "cm"

    def shown_value(self, munsell_value: float) -> float:
        """The value on the class's own scale, 0..10."""
        return munsell_value if self.white_is == 10 else 10.0 - munsell_value

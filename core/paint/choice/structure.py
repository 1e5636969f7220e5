"""One way to build a colour: which paints make the hue, which tones it down, what it costs."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property

from core.paint.reasons import Cost


@dataclass(frozen=True)
class Structure:
    """Which paints make the hue and which tones it down.

    Attributes
    ----------
    base : tuple of str
        One or two paint keys.
    toner : str or None
    costs : tuple of Cost
        What speaks against this way of building.
    steer : str or None
        Only in a grey of blue and brown: the paint that turns it towards its leaning.
    greys : bool
        Whether base and toner are there to grey each other.
    """

    base: tuple[str, ...]
    toner: str | None
    costs: tuple[Cost, ...]
    steer: str | None = None
    greys: bool = False

    @cached_property
    def price(self) -> float:
        """All costs together."""
        return sum(cost.price for cost in self.costs)

    @cached_property
    def keys(self) -> frozenset[str]:
        """All paints together."""
        return frozenset(self.base) | {key for key in (self.toner, self.steer) if key}

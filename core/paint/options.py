"""What a teacher may ask of a plan."""

from __future__ import annotations

from dataclasses import dataclass, replace

from core.paint.mixture.drying import DRYING_STEPS
from core.paint.wash.amounts import SHEETS, PaintSheet


@dataclass(frozen=True)
class BandChoice:
    """What was asked for one band.

    Attributes
    ----------
    pinned : tuple of str
        Paints its mix has to hold.
    forbidden : tuple of str
        Paints it may not hold.
    parts : tuple of (paint key, parts) or None
        Parts set by hand; the search is then left aside.
    load_ml : float or None
        Load set by hand, for `parts`; None takes the load that serves best.
    """

    pinned: tuple[str, ...] = ()
    forbidden: tuple[str, ...] = ()
    parts: tuple[tuple[str, int], ...] | None = None
    load_ml: float | None = None


@dataclass(frozen=True)
class MixOptions:
    """What was asked for the whole plan.

    Attributes
    ----------
    sheet : PaintSheet
    own_ml_per_1000_cm2 : float or None
        What the class measured that a sheet takes, instead of the rule of thumb.
    drying_steps : float
        Munsell steps a wash lightens while it dries.
    allow_white : bool
        Paper is the white of a wash; white paint only when asked for.
    forbidden : tuple of str
        Paints of the box not to be used in any band.
    choices : tuple of (letter, BandChoice)
    """

    sheet: PaintSheet = SHEETS["A4"]
    own_ml_per_1000_cm2: float | None = None
    drying_steps: float = DRYING_STEPS
    allow_white: bool = False
    forbidden: tuple[str, ...] = ()
    choices: tuple[tuple[str, BandChoice], ...] = ()

    def choice(self, letter: str) -> BandChoice:
        """What was asked for a band; nothing, when nothing was."""
        return dict(self.choices).get(letter, BandChoice())

    def with_choice(self, letter: str, choice: BandChoice) -> MixOptions:
        """The options with another wish for one band."""
        others = tuple(item for item in self.choices if item[0] != letter)
        kept = () if choice == BandChoice() else ((letter, choice),)
        return replace(self, choices=tuple(sorted(others + kept)))

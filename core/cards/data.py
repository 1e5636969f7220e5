"""The frozen data of a card: the study, and whatever was measured or planned for it."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Literal

import numpy as np
from numpy.typing import NDArray

from core.paint.planned import MixPlan
from core.reading.reading import BandReading
from core.reading.wording import Wording
from core.sheet.result import Change, SheetCheck
from core.study import Study

Kind = Literal["plan", "worksheet", "findings", "kit"]
KINDS: tuple[Kind, ...] = ("plan", "worksheet", "findings", "kit")


@dataclass(frozen=True, eq=False)
class CardData:
    """Everything a card may show.

    Attributes
    ----------
    study : Study
    wording : Wording
        The class's own words and the direction of its value scale.
    photo : (h, w, 3) uint8 or None
        The reference photo, sRGB; None in a study without one.
    readings : tuple of BandReading
        One a band, from the top; empty without a photo.
    plan : MixPlan or None
        Only for a plan card and a kit list.
    checks : two of SheetCheck or None
        Only for a findings card.
    change : Change or None
        Sheet 2 against sheet 1, when both were checked.
    show_measured : bool
        Findings are shown even where the student's own scores are still missing.
    date : str
        The day it is printed, as "2027-03-04"; empty leaves it out.
    """

    study: Study
    wording: Wording = Wording()
    photo: NDArray[np.uint8] | None = None
    readings: tuple[BandReading, ...] = ()
    plan: MixPlan | None = None
    checks: tuple[SheetCheck | None, SheetCheck | None] = (None, None)
    change: Change | None = None
    show_measured: bool = False
    date: str = ""

    def is_open(self, index: int) -> bool:
        """Whether what was measured of sheet `index`, 0 or 1, may be shown."""
        return self.show_measured or not self.study.worksheet.pages[index].scores.missing

    def shows(self, index: int) -> bool:
        """Whether verdicts of sheet `index` are printed: they may be seen, and mean something."""
        check = self.checks[index]
        return check is not None and check.readable and self.is_open(index)

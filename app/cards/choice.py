"""Which card is wanted, and how it is to be printed."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from app.cards.paper import A4, Paper
from core.paint.wash.amounts import USUAL_STUDENTS

if TYPE_CHECKING:
    from core.cards.data import Kind


@dataclass(frozen=True)
class CardChoice:
    """Which card, and how.

    Attributes
    ----------
    kind : Kind
    paper : Paper
    bw : bool
        For a black-and-white printer: no swatches, every colour named.
    blank : bool
        A worksheet to be filled in by hand.
    students : int
        For how many a kit list is.
    """

    kind: Kind = "plan"
    paper: Paper = A4
    bw: bool = False
    blank: bool = False
    students: int = USUAL_STUDENTS

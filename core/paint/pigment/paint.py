"""One paint: what it is called, whose measurements it uses, how it behaves."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import Literal

from core.paint.pigment.card_paint import CardPaint
from core.paint.pigment.measured import half_load_ml, parts_to_tint_white
from core.paint.pigment.own import own_half_load_ml, own_parts_to_tint_white

Group = Literal["yellow", "orange", "red", "violet", "blue", "green", "brown", "black", "white"]
Transparency = Literal["transparent", "half transparent", "half opaque", "opaque"]
Lean = Literal["orange", "violet", "green", ""]
Degree = Literal["low", "medium", "high"]

STRONG_BELOW = 0.1
"""Parts that bring one part of white to L* 60; a paint that needs fewer is a strong stainer."""


@dataclass(frozen=True)
class Paint:
    """One paint of a box.

    Attributes
    ----------
    key : str
        Stable name for files.
    name : str
        English name; shown through `core.paint.box.names.paint_name`.
    measured_as : str
        Whose measurements it uses while no card tells of it, a key of `measured_paints`: the
        paint it behaves like.
    colour_index : tuple of str
        Usual Colour Index names ("PB29"); empty where usage differs too much to say.
    group : Group
        The everyday word for its colour.
    transparency, staining, granulation
        Usual behaviour; granulation "low" means none to speak of.
    lists : tuple of str
        Metals or compounds a label of such a paint commonly names ("cadmium", "cobalt").
    leans : str
        Which secondary the paint leans to, as split-primary palettes sort them: "orange",
        "violet", "green", or "" for neither (common practice).
    card : CardPaint or None
        What a painted swatch card says of it; None for a paint of the catalogue and a stand-in.
    """

    key: str
    name: str
    measured_as: str
    colour_index: tuple[str, ...]
    group: Group
    transparency: Transparency
    staining: Degree
    granulation: Degree
    lists: tuple[str, ...] = ()
    leans: Lean = ""
    card: CardPaint | None = None

    @property
    def pigment(self) -> str:
        """The row of `Box.pigments` it is computed with."""
        return self.measured_as if self.card is None else self.key

    @property
    def is_stand_in(self) -> bool:
        """Whether another paint's measurements are used."""
        return self.key != self.pigment

    @property
    def tint_parts(self) -> float:
        """Parts that bring one part of white to L* 60; small is strong."""
        if self.card is not None:
            return own_parts_to_tint_white(self.card)
        return parts_to_tint_white(self.measured_as)

    @cached_property
    def is_strong(self) -> bool:
        """Whether one part too many spoils a mix."""
        return self.tint_parts < STRONG_BELOW

    @property
    def tints_strongly(self) -> bool:
        """Whether a class adds it last, little by little: what stains also tints (common practice).

        Not what was measured: the measured crimson is weak, and a school's may be twice as strong.
        """
        return self.is_strong or (self.staining == "high" and self.group != "white")

    @property
    def half_load_ml(self) -> float:
        """Load at which half the light of its strongest band is gone."""
        return half_load_ml(self.measured_as) if self.card is None else own_half_load_ml(self.card)

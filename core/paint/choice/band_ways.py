"""What may be built for one band: the paints that may be used, the sets of them, their prices."""

from __future__ import annotations

from dataclasses import dataclass, field

import numpy as np

from core.colour import delta_E_2000
from core.errors import BoxError
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.choice.classroom import Built, classroom_mixes_kept
from core.paint.mixture.mix import Mix
from core.paint.options import BandChoice
from core.paint.pigment.catalogue import Paint
from core.paint.pigment.measured import paper_Lab
from core.reading.reading import ColourReading

TRIED_ABOVE = 4.0
"""How much dearer than a band's best a set of paints may be to be considered for a whole run."""

PAPER_WITHIN = 2.0
"""A band this near the paper needs no paint."""


def usable_paints(
    box: Box, choice: BandChoice, allow_white: bool, forbidden: tuple[str, ...]
) -> tuple[Paint, ...]:
    """Paints a search may use; pinned ones always.

    Raises
    ------
    BoxError
        A wish names a paint that is not in the box, or leaves no paint to use.
    """
    wished = {*choice.pinned, *(key for key, _ in choice.parts or ())}
    strange = [key for key in sorted(wished) if key not in box.by_key]
    if strange:
        raise BoxError(
            translate("mix", "{paint} is not in this box: choose one that is.").format(
                paint=strange[0].replace("_", " ")
            )
        )
    banned = {*forbidden, *choice.forbidden} - set(choice.pinned)
    paints = tuple(
        paint
        for paint in box.paints
        if paint.key in wished
        or (paint.key not in banned and (allow_white or paint.group != "white"))
    )
    if not paints:
        raise BoxError(translate("mix", "No paint is left to mix with: allow one again."))
    return paints


@dataclass(frozen=True)
class BandWays:
    """What may be built for one band: worked out once, then handed down.

    Attributes
    ----------
    box : Box
    target : ColourReading
    choice : BandChoice
    paints : tuple of Paint
        Those of the box that may be used.
    built : tuple of Built
        A teacher's mixes, the best of every set of paints, the best set first. It follows from
        the others, so that two are equal when these are.
    """

    box: Box
    target: ColourReading
    choice: BandChoice
    paints: tuple[Paint, ...]
    built: tuple[Built, ...] = field(compare=False, repr=False)

    def set_prices(self) -> dict[frozenset[str], float]:
        """What the best mix of each sensible set of paints costs.

        Empty when there is nothing to choose: parts set by hand, bare paper, or no sensible set.
        """
        if self.choice.parts is not None or is_paper(self.target, self.choice):
            return {}
        return {
            frozenset(item.mix.keys): item.price
            for item in self.built
            if item.price <= self.built[0].price + TRIED_ABOVE
        }

    def mix_of(self, keys: frozenset[str]) -> Mix | None:
        """The best mix of one set of paints; None when a teacher would not build it so."""
        return next((item.mix for item in self.built if frozenset(item.mix.keys) == keys), None)

    def bear(self, parts: tuple[tuple[str, int], ...]) -> bool:
        """Whether a neighbour's parts keep their roles here: no toner outweighs what it tones."""
        keys = frozenset(key for key, _ in parts)
        built = next((item for item in self.built if frozenset(item.mix.keys) == keys), None)
        if built is None:
            return False
        way, total = built.structure, sum(count for _, count in parts)
        toner = 0 if way.toner is None else dict(parts)[way.toner]
        return way.greys or 2 * toner <= total


def ways_for(
    target: ColourReading,
    box: Box,
    choice: BandChoice,
    allow_white: bool = False,
    forbidden: tuple[str, ...] = (),
) -> BandWays:
    """Work out what may be built for a band.

    Raises
    ------
    BoxError
        A wish names a paint that is not in the box, or leaves no paint to use.
    """
    paints = usable_paints(box, choice, allow_white, forbidden)
    built = classroom_mixes_kept(box, paints, target, frozenset(choice.pinned))
    return BandWays(box, target, choice, paints, built)


def is_paper(target: ColourReading, choice: BandChoice) -> bool:
    """Whether the paper itself is the band's colour, or the nearest that paint could come."""
    if choice.pinned:
        return False
    gap = float(delta_E_2000(np.array(paper_Lab()), np.array(target.Lab)))
    lighter = target.Lab[0] >= paper_Lab()[0] and target.hue.family is None
    return lighter or gap <= PAPER_WITHIN

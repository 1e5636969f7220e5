"""The mix of a band's second colour, and when it is laid: wet, or once the rest is dry.

Transparent paint only ever darkens. A second colour that is darker comes after the main one; a
lighter one comes first, over the whole band, and the main colour is laid around it. Where one
melts into the other both are laid wet; an edge wants a dry ground (common practice).
"""

from __future__ import annotations

from core.paint.box.box import Box
from core.paint.choice.band_plan import plan_colour
from core.paint.choice.band_ways import ways_for
from core.paint.options import BandChoice, MixOptions
from core.paint.planned import SecondMix, Way
from core.reading.reading import BandReading

_LIGHTER = 0.5
"""Munsell value steps from which a second colour cannot go over the main one."""


def plan_second(reading: BandReading, box: Box, options: MixOptions) -> SecondMix | None:
    """Plan the second colour of a band; None where it has none.

    Raises
    ------
    BoxError
        The wishes leave no paint to use.
    """
    if reading.second is None or reading.colour is None:
        return None
    colour, soft = reading.second.colour, reading.second.soft
    # Pins are wishes for the main colour; paints left out are left out of both.
    choice = BandChoice(forbidden=options.choice(reading.letter).forbidden)
    ways = ways_for(colour, box, choice, options.allow_white, options.forbidden)
    plan = plan_colour(ways)
    if plan.classroom is None:
        return None
    way: Way
    if colour.munsell.value > reading.colour.munsell.value + _LIGHTER:
        way = "first, main dropped in wet" if soft else "first, main after drying"
    else:
        way = "dropped in wet" if soft else "laid after drying"
    return SecondMix(reading.second, plan.classroom, way)

"""From readings to a plan: the one entry for the page, the command line and the cards."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from core.paint.amounts import amounts
from core.paint.band_plan import plan_colour
from core.paint.box import Box
from core.paint.cautions import cautions_for
from core.paint.meeting import meet
from core.paint.mix import Triple
from core.paint.options import MixOptions
from core.paint.order import order_of_work
from core.paint.planned import BandMix, MixPlan
from core.progress import ShouldStop, step
from core.reading import BandReading

Transition = Sequence[Triple]
"""Colours of the photo, CIELAB, sampled downwards across the line below a band."""


def plan_mixes(
    readings: Sequence[BandReading],
    box: Box,
    options: MixOptions | None = None,
    transitions: Sequence[Transition | None] | None = None,
    should_stop: ShouldStop | None = None,
) -> MixPlan:
    """Plan the mixes of a sky.

    Parameters
    ----------
    readings : sequence of BandReading
        From the top down.
    box : Box
    options : MixOptions, optional
    transitions : sequence of Transition or None, optional
        One for every line between two bands, from the top; checks what their wet edge becomes
        against what the photo shows there.
    should_stop : callable, optional

    Returns
    -------
    MixPlan
        Bands whose wishes did not change since an earlier call are not worked out again.

    Raises
    ------
    Cancelled
        `should_stop` answered True.
    BoxError
        A wish names a paint that is not in the box, or leaves no paint to use.
    """
    options = options or MixOptions()
    sizes = amounts(readings, options.sheet, options.own_ml_per_1000_cm2)
    bands: list[BandMix] = []
    for reading in readings:
        step(0.0, None, should_stop)
        above = bands[-1].classroom if bands else None
        bands.append(plan_band(reading, box, options, above.mix.keys if above else ()))
    transitions = list(transitions or [])
    transitions += [None] * (len(bands) - len(transitions))
    met = []
    for number, band in enumerate(bands):
        below = bands[number + 1] if number + 1 < len(bands) else None
        meeting = None
        if below and band.classroom and below.classroom:
            meeting = meet(box, band.classroom.mix, below.classroom.mix, transitions[number])
        ml = sizes.bands[number].ml if band.classroom and band.classroom.mix.parts else 0.0
        met.append(replace(band, meets_below=meeting, amount_ml=ml))
    total = sum(band.amount_ml for band in met)
    painted = [(band.letter, band.classroom.mix) for band in met if band.classroom]
    used = [key for _, mix in painted for key in mix.keys]
    return MixPlan(
        box,
        tuple(met),
        order_of_work([letter for letter, _ in painted], [mix for _, mix in painted]),
        replace(sizes, total_ml=total),
        cautions_for(box, used),
        options.sheet,
        options.drying_steps,
    )


def plan_band(
    reading: BandReading, box: Box, options: MixOptions, above: Sequence[str] = ()
) -> BandMix:
    """Plan one band by itself, without its meeting and its amount.

    Parameters
    ----------
    reading : BandReading
    box : Box
    options : MixOptions
    above : sequence of str
        Paints of the band above, used again when they do nearly as well.
    """
    if reading.colour is None:
        return BandMix(reading.letter, None, None, None, (), None, "reached")
    planned = plan_colour(
        reading.colour,
        box,
        options.choice(reading.letter),
        options.allow_white,
        options.forbidden,
        frozenset(above),
    )
    return replace(planned, letter=reading.letter)

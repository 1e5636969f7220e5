"""From readings to a plan: the one entry for the page, the command line and the cards."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from core.paint.box.box import Box
from core.paint.box.cautions import cautions_for
from core.paint.choice.band_plan import plan_colour
from core.paint.choice.band_ways import BandWays, ways_for
from core.paint.choice.runs import PaintSet, Parts, Place, choose_sets, share_mixes
from core.paint.choice.second import plan_second
from core.paint.mixture.mix import Mix
from core.paint.mixture.transition import Transitions
from core.paint.options import MixOptions
from core.paint.planned import BandMix, MixPlan
from core.paint.reasons import Reason, ReasonCode
from core.paint.wash.amounts import amounts
from core.paint.wash.meeting import meet
from core.paint.wash.order import order_of_work
from core.progress import Progress, ShouldStop, step
from core.reading.reading import BandReading

SAME_LOAD = 1.25
"""Loads that differ less than this are one strength."""


def plan_mixes(
    readings: Sequence[BandReading],
    box: Box,
    options: MixOptions | None = None,
    transitions: Transitions | None = None,
    progress: Progress | None = None,
    should_stop: ShouldStop | None = None,
) -> MixPlan:
    """Plan the mixes of a sky.

    Parameters
    ----------
    readings : sequence of BandReading
        From the top down.
    box : Box
    options : MixOptions, optional
    transitions : Transitions, optional
        One for every line between two bands, from the top; checks what their wet edge becomes
        against what the photo shows there.
    progress, should_stop : callable, optional

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
    bands = _plan_bands(readings, box, options, progress, should_stop)
    across = list(transitions or [])
    across += [None] * (len(bands) - len(across))
    met = []
    for number, band in enumerate(bands):
        below = bands[number + 1] if number + 1 < len(bands) else None
        meeting = None
        if below and band.classroom and below.classroom:
            meeting = meet(box, band.classroom.mix, below.classroom.mix, across[number])
        ml = sizes.bands[number].ml if band.classroom and band.classroom.mix.parts else 0.0
        second = plan_second(readings[number], box, options)
        met.append(replace(band, meets_below=meeting, amount_ml=ml, second=second))
    met = [_with_lender(band, met) for band in met]
    total = sum(band.amount_ml for band in met)
    painted = [(band.letter, band.classroom.mix) for band in met if band.classroom]
    shown = [mix for _, mix in painted]
    shown += [band.second.planned.mix for band in met if band.second is not None]
    used = [key for mix in shown for key in mix.keys]
    return MixPlan(
        box,
        tuple(met),
        order_of_work(
            [letter for letter, _ in painted],
            [mix for _, mix in painted],
            {
                band.letter
                for band in met
                if band.meets_below is not None and not band.meets_below.runs_together
            },
        ),
        replace(sizes, total_ml=total),
        cautions_for(box, used),
        options.sheet,
        options.drying_steps,
    )


def _with_lender(band: BandMix, bands: Sequence[BandMix]) -> BandMix:
    """Which band's mix may be between two that go grey: a third colour is one the plan has."""
    meeting = band.meets_below
    if meeting is None or meeting.keep_between is None:
        return band
    for other in bands:
        mix = other.classroom.mix if other.classroom is not None else None
        hue = mix.colour.hue.family if mix is not None and mix.parts else None
        if hue == meeting.keep_between:
            return replace(band, meets_below=replace(meeting, keep_from=other.letter))
    return band


def _plan_bands(
    readings: Sequence[BandReading],
    box: Box,
    options: MixOptions,
    progress: Progress | None,
    should_stop: ShouldStop | None,
) -> list[BandMix]:
    """All bands, chosen together so that neighbours share paints and mixes."""
    ways: list[BandWays | None] = []
    for number, reading in enumerate(readings):
        step(0.5 * number / len(readings), progress, should_stop)
        ways.append(_ways_for(reading, box, options))
    sets = choose_sets([{} if way is None else way.set_prices() for way in ways])
    own = [_own_mix(way, keys) for way, keys in zip(ways, sets, strict=True)]
    shared = share_mixes(box, [reading.colour for reading in readings], own)
    bands: list[BandMix] = []
    for reading, way, place in zip(
        readings, ways, _places(readings, ways, sets, shared), strict=True
    ):
        step(0.5 + 0.5 * len(bands) / len(readings), progress, should_stop)
        band = _plan_band(reading.letter, way, place)
        bands.append(_say_same(bands[-1], band) if bands else band)
    return bands


def _ways_for(reading: BandReading, box: Box, options: MixOptions) -> BandWays | None:
    """What may be built for a band; None for one without a colour."""
    if reading.colour is None:
        return None
    choice = options.choice(reading.letter)
    return ways_for(reading.colour, box, choice, options.allow_white, options.forbidden)


def _own_mix(ways: BandWays | None, keys: PaintSet | None) -> Mix | None:
    return None if ways is None or keys is None else ways.mix_of(keys)


def _places(
    readings: Sequence[BandReading],
    ways: Sequence[BandWays | None],
    sets: Sequence[PaintSet | None],
    shared: Sequence[Parts | None],
) -> list[Place]:
    """What its neighbours ask of every band."""
    kept: list[Parts | None] = []
    prefer: list[PaintSet] = []
    for way, keys, parts in zip(ways, sets, shared, strict=True):
        wanted = keys or frozenset()
        if parts is not None and frozenset(key for key, _ in parts) != wanted:
            others = frozenset(key for key, _ in parts)
            if _own_mix(way, others) is None:
                parts = None  # a wish for this band, or its hue, stands against the run's mix
            else:
                wanted = others
        if parts is not None and way is not None and not way.bear(parts):
            parts, wanted = None, keys or frozenset()
        kept.append(parts)
        prefer.append(wanted)
    places = []
    for number, parts in enumerate(kept):
        first = last = number
        while parts is not None and first and kept[first - 1] == parts:
            first -= 1
        while parts is not None and last + 1 < len(kept) and kept[last + 1] == parts:
            last += 1
        letters = tuple(reading.letter for reading in readings[first : last + 1])
        beside = tuple(
            prefer[other]
            for other in (number - 1, number + 1)
            if 0 <= other < len(prefer) and prefer[other]
        )
        places.append(Place(prefer[number], parts, letters, beside))
    return places


def _say_same(above: BandMix, band: BandMix) -> BandMix:
    """Say that a band takes the mix of the band above, rather than how it is built once more."""
    one, other = above.classroom, band.classroom
    if not one or not other or not one.mix.parts or one.mix.parts != other.mix.parts:
        return band
    if other.kind == "by hand":
        return band
    ratio = other.mix.load_ml / one.mix.load_ml
    code: ReasonCode = "same mix"
    if ratio < 1 / SAME_LOAD:
        code = "same mix thinner"
    elif ratio > SAME_LOAD:
        code = "same mix stronger"
    return replace(band, classroom=replace(other, why=(Reason(code, letter=above.letter),)))


def _plan_band(letter: str, ways: BandWays | None, place: Place) -> BandMix:
    """Plan one band by itself, without its meeting and its amount."""
    if ways is None:
        return BandMix(letter, None, None, None, (), None, "reached")
    return replace(plan_colour(ways, place), letter=letter)

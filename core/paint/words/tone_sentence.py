"""How the plan tones a band down: the one answer that Read, the class view and the cards give."""

from __future__ import annotations

from dataclasses import replace

from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.choice.describe import ACROSS_DEG
from core.paint.mixture.shortfall import leans_towards
from core.paint.pigment.hues import paint_deg, turn
from core.paint.planned import BandMix, PlannedMix
from core.reading.reading import ColourReading
from core.reading.wheel import family_of, hue_of_wheel_deg, wheel_distance
from core.words.lists import listed
from core.words.toning_planned import PlannedToning


def planned_toning(box: Box, band: BandMix) -> PlannedToning | None:
    """What the band's mix does to tone it down.

    Parameters
    ----------
    box : Box
        The plan's box.
    band : BandMix

    Returns
    -------
    PlannedToning or None
        None for a band without sky.
    """
    chosen, target = band.classroom, band.target
    if chosen is None or target is None:
        return None
    if not chosen.mix.parts:
        return PlannedToning("paper")
    if chosen.lacks:
        return PlannedToning("lacks", lacks=chosen.lacks)
    toners = chosen.toners or _toner_by_hand(box, chosen, target)
    names = tuple(paint_name(box.paint(key)) for key in chosen.mix.keys)
    # A thinned blue and yellow read as a hint of green, and grey nothing: no toner, no greys.
    if target.hue.family is None and len(names) > 1 and (toners or chosen.kind == "by hand"):
        return PlannedToning("greys", names)
    if not toners:
        ladder = band.tone_down
        if ladder is not None and ladder.matched:
            toner = listed([paint_name(box.paint(key)) for key, _ in ladder.toner])
            share = ladder.steps[ladder.matched].fraction
            return PlannedToning("speck", names, toner, share.numerator, share.denominator)
        weak = "too intense" in chosen.faults and target.intensity_word != "intense"
        return PlannedToning("too intense" if weak else "plain", names)
    across = len(toners) > 1 or _is_across(box, target, toners[0])
    place, away = target.hue.wheel_deg, _away(box, target, toners[0])
    share = replace(chosen, toners=toners).toner_share
    return PlannedToning(
        "toned",
        tuple(paint_name(box.paint(key)) for key in chosen.mix.keys if key not in toners),
        listed([paint_name(box.paint(key)) for key in toners]),
        share.numerator,
        share.denominator,
        across,
        None if across or place is None or away is None else leans_towards(place, away),
    )


def _is_across(box: Box, target: ColourReading, key: str) -> bool:
    """Whether a paint is the band's complement, or a step beside it."""
    place = paint_deg(box.paint(key))
    if target.complement is None or place is None:
        return False
    return wheel_distance(family_of(hue_of_wheel_deg(place)), target.complement) <= 1


def _away(box: Box, target: ColourReading, key: str) -> float | None:
    start, place = target.hue.wheel_deg, paint_deg(box.paint(key))
    return None if start is None or place is None else turn(start, place)


def _toner_by_hand(box: Box, chosen: PlannedMix, target: ColourReading) -> tuple[str, ...]:
    """Of parts set by hand, the least paint that stands across the wheel."""
    if chosen.kind != "by hand" or len(chosen.mix.parts) < 2:
        return ()
    for key in sorted(chosen.mix.keys, key=chosen.mix.share):
        away = _away(box, target, key)
        if away is not None and 180 - abs(away) <= 2 * ACROSS_DEG and chosen.mix.share(key) < 0.5:
            return (key,)
    return ()

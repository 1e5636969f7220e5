"""What the Read page's sentence about toning down takes from a plan."""

from __future__ import annotations

from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.planned import BandMix
from core.reading.wheel import wheel_distance
from core.words.toning import ToneDownParts


def sentence_parts(box: Box, band: BandMix) -> ToneDownParts | None:
    """Parts of a paint of the box for `core.words.tone_down_sentence`.

    Parameters
    ----------
    box : Box
        The plan's box.
    band : BandMix

    Returns
    -------
    ToneDownParts or None
        The toner of the band's mix; where the mix has none, the step of the ladder that matches.
        None where neither says anything: bare paper, a mix that is dull by itself, or a grey made
        by another pair than the complement the sentence names.
    """
    chosen, target = band.classroom, band.target
    if chosen is None or target is None or not chosen.mix.parts:
        return None
    own = target.hue.family or target.hue.leaning
    ladder = band.tone_down
    if own is None or ladder is None or ladder.complement is None:
        return None
    if target.hue.family is None and (
        ladder.toner_family is None or wheel_distance(ladder.toner_family, ladder.complement) > 1
    ):
        return None
    if chosen.toner is not None:
        parts = dict(chosen.mix.parts)[chosen.toner]
        return ToneDownParts(paint_name(box.paint(chosen.toner)), parts, chosen.mix.total - parts)
    if ladder.matched is None or len(ladder.toner) != 1:
        return None
    fraction = ladder.steps[ladder.matched].fraction
    if not fraction:
        return None
    return ToneDownParts(
        paint_name(box.paint(ladder.toner[0][0])),
        fraction.numerator,
        fraction.denominator - fraction.numerator,
    )

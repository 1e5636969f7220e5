"""From a plan to what a chosen row opens."""

from __future__ import annotations

from functools import lru_cache

from app.drawing.mix.compare import ComparedChip
from app.mix.detail import DetailView
from app.mix.stage_views import (
    CompareStageView,
    HandStageView,
    ToneStageView,
    compared,
    group_to_compare,
    tone_steps,
)
from app.mix.stage_why import WhyStageView
from app.mix.views import BandView, offers, why_sentences
from core.i18n import remembered, translate
from core.mixing import MOST_PARTS
from core.paint.box.box import Box
from core.paint.box.names import group_name, paint_name
from core.paint.mixture.mix import Mix
from core.paint.options import MixOptions
from core.paint.planned import BandMix, MixPlan
from core.paint.toning.tone_down import Ladder, tone_down_ladder
from core.paint.toning.toners import compare_toners, toners, true_complement
from core.paint.words.mix import mix_text, shortfall_text, strength_text
from core.paint.words.plan import ladder_title, untoned_text
from core.paint.words.second import way_text
from core.paint.words.tone import toners_text
from core.reading.reading import ColourReading
from core.words.lists import sentence_case
from core.words.names import hue_short
from core.words.verdicts import verdict_word

Toner = tuple[tuple[str, int], ...]
"""Paint keys with their parts."""


def detail_view(
    plan: MixPlan, band: BandMix, view: BandView, options: MixOptions, toner: Toner | None
) -> DetailView | None:
    """What a band opens; None where it has no mix.

    Parameters
    ----------
    toner : Toner or None
        The toner looked at; None for the one the plan proposes.
    """
    if band.classroom is None:
        return None
    group = group_to_compare(plan.box, band)
    compare = None
    word = translate("mix page", "Compare")
    if group is not None and band.target is not None:
        name = group_name(group)
        word = translate("mix page", "Compare {paints}").format(paints=name)
        title = translate(
            "mix page", "The {paints} of this box in the same place; above each, the photo"
        ).format(paints=name)
        compare = CompareStageView(title, band.target.hex, compared(plan.box, band, group))
    found = offers(plan, band)
    return DetailView(
        view,
        tuple(offer for offer in found if offer.mix is not None),
        _tone(plan, band, toner),
        compare,
        word,
        _hand(plan, band, view, options),
        WhyStageView(
            why_sentences(plan, band), tuple(offer for offer in found if offer.mix is None)
        ),
        _second(plan, band),
    )


def _second(plan: MixPlan, band: BandMix) -> CompareStageView | None:
    """The mix for the second colour, its chip under the photo's."""
    if band.second is None:
        return None
    colour, planned = band.second.target.colour, band.second.planned
    title = translate("mix page", "The photo, and the mix for it")
    chip = ComparedChip(
        translate("mix page", "Its second colour, {hue}").format(hue=hue_short(colour.hue)),
        planned.mix.colour.hex,
        mix_text(plan.box, planned),
        planned.verdict,
        verdict_word(planned.verdict),
        shortfall_text(planned),
        way_text(band.second),
        used=True,
    )
    return CompareStageView(title, colour.hex, (chip,))


def toners_of(plan: MixPlan, band: BandMix) -> tuple[Toner, ...]:
    """The toners one may look at: the proposed one, the box's others, the true complement."""
    ladder = band.tone_down
    if ladder is None:
        return ()
    return _toners(plan.box, ladder.base, ladder.toner)


def _toners(box: Box, base: Mix, proposed: Toner) -> tuple[Toner, ...]:
    found = [proposed, *(tuple(item.parts) for item in toners(box, base))]
    complement = true_complement(box, base)
    if complement is not None:
        found.append(tuple(complement.items()))
    kept: dict[frozenset[tuple[str, int]], Toner] = {}
    for item in found:
        kept.setdefault(frozenset(item), item)
    return tuple(kept.values())


def _tone(plan: MixPlan, band: BandMix, toner: Toner | None) -> ToneStageView | None:
    proposed = ladder = band.tone_down
    if proposed is None or ladder is None or band.target is None:
        return None
    choices = toners_of(plan, band)
    chosen = ladder.toner
    if toner is not None and toner in choices and toner != ladder.toner:
        chosen = toner
        ladder = _ladder(plan.box, ladder.base, toner, band.target)
    names = tuple((toner_text(plan.box, item), item == chosen) for item in choices)
    own = band.classroom
    if toner is None and own is not None and not own.toners and ladder.matched == 0:
        return ToneStageView(untoned_text(plan.box, ladder), (), names)
    title = ladder_title(plan.box, ladder)
    steps = tone_steps(plan.box, ladder, band.letter)
    return ToneStageView(title, steps, names, _comparison(plan.box, proposed))


@remembered(64)
def _comparison(box: Box, ladder: Ladder) -> str:
    return toners_text(box, compare_toners(box, ladder))


@lru_cache(maxsize=64)
def _ladder(box: Box, base: Mix, toner: Toner, target: ColourReading) -> Ladder:
    return tone_down_ladder(box, base, dict(toner), target)


def toner_text(box: Box, toner: Toner) -> str:
    """ "Burnt sienna", "1 crimson : 2 mid yellow"."""
    if len(toner) == 1:
        return sentence_case(paint_name(box.paint(toner[0][0])))
    return " : ".join(f"{count} {paint_name(box.paint(key))}" for key, count in toner)


def _hand(plan: MixPlan, band: BandMix, view: BandView, options: MixOptions) -> HandStageView:
    assert band.classroom is not None
    used = {part.key for part in view.parts}
    addable = tuple(
        (paint.key, paint_name(paint)) for paint in plan.box.paints if paint.key not in used
    )
    by_hand = options.choice(band.letter).parts is not None
    strength = sentence_case(strength_text(band.classroom.strength))
    return HandStageView(band.letter, view.parts, addable, strength, by_hand, MOST_PARTS)

"""How well paints of one's own are known, in words."""

from __future__ import annotations

from collections.abc import Iterable
from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.mixture.mix import Mix
from core.paint.own.known import MixKnown, mix_known
from core.paint.pigment.card_paint import Trust
from core.words.lists import listed, sentence_case

TRY_FROM, GUIDE_FROM = 2.0, 4.0
"""What a mix may be off by, CIEDE2000, from which it is said to try it; that it is a guide only."""


def trust_word(trust: Trust) -> str:
    """How well a card fixes a paint."""
    match trust:
        case "known well":
            return translate("mix", "known well from your card")
        case "roughly":
            return translate("mix", "known roughly from your card")
        case "stands in":
            return translate("mix", "hardly known: stands in for its nearest relative")
        case _:
            assert_never(trust)


def own_paints_text(box: Box, mix: Mix) -> str:
    """How far a mix with paints of one's own can be trusted; "" where there is nothing to say."""
    known = _worth_saying(box, mix)
    if known is None:
        return ""
    if known.hardly:
        text = (
            translate("mix", "Only a guide: {paints} is hardly known.")
            if len(known.hardly) == 1
            else translate("mix", "Only a guide: {paints} are hardly known.")
        )
        return text.format(paints=listed([paint_name(box.paint(key)) for key in known.hardly]))
    if _only_guide(known):
        return translate(
            "mix", "Only a guide: what {paint} does in this mix is not known well."
        ).format(paint=paint_name(box.paint(known.own[0])))
    name = sentence_case(paint_name(box.paint(known.own[0])))
    return translate("mix", "{paint} is known from your card: try it on a scrap first.").format(
        paint=name
    )


def own_paints_short(box: Box, mix: Mix) -> str:
    """The same in three words, for a list of mixes."""
    known = _worth_saying(box, mix)
    if known is None:
        return ""
    return (
        translate("mix", "only a guide") if _only_guide(known) else translate("mix", "try it first")
    )


def uncertain_text(box: Box, mixes: Iterable[Mix]) -> str:
    """Which own paints make mixes of a plan that want trying; "" for none. Said once for a plan."""
    keys = dict.fromkeys(
        key
        for mix in mixes
        if (known := _worth_saying(box, mix)) is not None
        for key in (known.hardly or known.own[:1])
    )
    if not keys:
        return ""
    names = listed([paint_name(box.paint(key)) for key in keys])
    return translate("mix", "Try mixes with {paints} on a scrap first.").format(paints=names)


def _worth_saying(box: Box, mix: Mix) -> MixKnown | None:
    known = mix_known(box, mix.loads_ml) if mix.parts else None
    if known is None or (known.error <= TRY_FROM and not known.hardly):
        return None
    return known


def _only_guide(known: MixKnown) -> bool:
    return bool(known.hardly) or known.error > GUIDE_FROM

"""The mix of a band's second colour in words, and how it is laid."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.planned import SecondMix
from core.paint.words.parts import mix_text
from core.words.names import hue_short


def second_mix_text(box: Box, letter: str, mix: SecondMix) -> str:
    """What to mix for a band's second colour and how to lay it, in two sentences.

    Parameters
    ----------
    box : Box
    letter : str
        The band's.
    mix : SecondMix
    """
    if not mix.planned.mix.parts:
        return translate(
            "mix", "Second colour of {letter}, {hue}: the paper's own white. {way}"
        ).format(letter=letter, hue=hue_short(mix.target.colour.hue), way=way_text(mix))
    return translate("mix", "Second colour of {letter}, {hue}: {mix}. {way}").format(
        letter=letter,
        hue=hue_short(mix.target.colour.hue),
        mix=mix_text(box, mix.planned),
        way=way_text(mix),
    )


def way_text(mix: SecondMix) -> str:
    """How a second colour is laid, in a sentence."""
    if not mix.planned.mix.parts:
        if mix.way in ("dropped in wet", "first, main dropped in wet"):
            return translate(
                "mix",
                "Leave it dry when you wet the sheet, and soften its edges with a damp brush.",
            )
        return translate("mix", "Leave it dry, and lay the main colour round it.")
    match mix.way:
        case "dropped in wet":
            return translate("mix", "Drop it in while the main colour is wet: the edges melt.")
        case "laid after drying":
            return translate("mix", "Lay it once the main colour is dry: the edges stay.")
        case "first, main dropped in wet":
            return translate(
                "mix",
                "It is the lighter one: lay it first, over the whole band, and drop the main "
                "colour in around it while it is wet.",
            )
        case "first, main after drying":
            return translate(
                "mix",
                "It is the lighter one: lay it first, over the whole band, and the main colour "
                "around it once it is dry.",
            )
        case _:
            assert_never(mix.way)

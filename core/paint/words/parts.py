"""A mix's parts and strength in words, and how words are strung together."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.mixture.mix import Mix
from core.paint.mixture.strength import Strength
from core.paint.planned import PlannedMix
from core.paint.words.own import uncertain_text


def parts_text(box: Box, mix: Mix) -> str:
    """The parts as written on a board: "5 ultramarine : 1 crimson"; one paint has no number.

    In the order they go into the mix, the paint that tints strongly last.
    """
    if not mix.parts:
        return translate("mix", "bare paper")
    if len(mix.parts) == 1:
        return paint_name(box.paint(mix.parts[0][0]))
    return " : ".join(f"{count} {paint_name(box.paint(key))}" for key, count in mix.parts)


def parts_note(box: Box, mixes: Iterable[Mix]) -> str:
    """That parts hold for the measured make or the class's own, and what to begin with less of.

    Said once for a plan; of mixes with two paints to count, and of own paints hardly known.
    """
    every = list(mixes)
    return " ".join(filter(None, (_make_note(box, every), uncertain_text(box, every))))


def _make_note(box: Box, mixes: Sequence[Mix]) -> str:
    mixed = [mix for mix in mixes if len(mix.parts) > 1]
    if not mixed:
        return ""
    used = {key for mix in mixed for key in mix.keys}
    strong = [
        paint_name(paint) for paint in box.paints if paint.key in used and paint.tints_strongly
    ]
    if all(box.paint(key).card is not None for key in used):
        return translate("mix", "Parts fit your own paints, as your card shows them.")
    if not strong:
        return translate(
            "mix", "Parts fit the paints that were measured; yours may be stronger: try a scrap."
        )
    return translate(
        "mix",
        "Parts fit the paints that were measured; yours may be stronger. Begin with less {paints} "
        "and add it last, little by little.",
    ).format(paints=_either(strong))


def _either(names: Sequence[str]) -> str:
    """ "crimson", "crimson or warm red"."""
    if len(names) < 2:
        return "".join(names)
    return translate("mix", "{first} or {last}").format(first=", ".join(names[:-1]), last=names[-1])


def strength_text(strength: Strength) -> str:
    """The wash's strength: "milk strength"."""
    match strength:
        case "paper":
            return translate("mix", "no paint")
        case "weak tea":
            return translate("mix", "weak tea strength")
        case "tea":
            return translate("mix", "tea strength")
        case "coffee":
            return translate("mix", "coffee strength")
        case "milk":
            return translate("mix", "milk strength")
        case "cream":
            return translate("mix", "cream strength")
        case _:
            assert_never(strength)


def strength_note(strength: Strength) -> str:
    """About how much water a strength takes: a rule of thumb; empty for bare paper."""
    match strength:
        case "paper":
            return ""
        case "weak tea":
            return translate("mix", "weak tea is 1 part paint to 25 or more of water")
        case "tea":
            return translate("mix", "tea is 1 part paint to 15 or 20 of water")
        case "coffee":
            return translate("mix", "coffee is 1 part paint to 8 or 10 of water")
        case "milk":
            return translate("mix", "milk is 1 part paint to about 4 of water")
        case "cream":
            return translate("mix", "cream is as much paint as water")
        case _:
            assert_never(strength)


def mix_text(box: Box, planned: PlannedMix) -> str:
    """Parts and strength: "5 ultramarine : 1 crimson, milk strength"."""
    if not planned.mix.parts:
        return parts_text(box, planned.mix)
    if len(planned.mix.parts) == 1:
        return translate("mix", "{paint} alone, {strength}").format(
            paint=parts_text(box, planned.mix), strength=strength_text(planned.strength)
        )
    return translate("mix", "{parts}, {strength}").format(
        parts=parts_text(box, planned.mix), strength=strength_text(planned.strength)
    )

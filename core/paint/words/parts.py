"""A mix's parts and strength in words, and how words are strung together."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.mixture.mix import Mix
from core.paint.mixture.strength import Strength
from core.paint.planned import PlannedMix


def parts_text(box: Box, mix: Mix) -> str:
    """The parts as written on a board: "5 ultramarine : 1 crimson"; one paint has no number."""
    if not mix.parts:
        return translate("mix", "bare paper")
    if len(mix.parts) == 1:
        return paint_name(box.paint(mix.parts[0][0]))
    return " : ".join(f"{count} {paint_name(box.paint(key))}" for key, count in mix.parts)


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

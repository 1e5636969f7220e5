"""Toners compared, in words: the true complement beside what the box holds."""

from __future__ import annotations

from collections.abc import Sequence

from core.i18n import translate
from core.paint.box import Box
from core.paint.names import paint_name
from core.paint.toners import TonerTried
from core.paint.words_mix import sentence_case

TURNS_DEG = 4.0
"""CIELAB degrees from which one toner is said to turn the hue more than another."""


def toners_text(box: Box, tried: Sequence[TonerTried]) -> str:
    """Which toner takes how much to halve the intensity, and which turns the hue most.

    "Half the intensity takes 1 part in 3 of sap green, or 1 part in 4 of 2 cerulean blue : 1 sap
    green. Sap green turns the hue most." Empty when there is nothing to compare.
    """
    if len(tried) < 2:
        return ""
    reached = [_halves(box, item) for item in tried if item.halves_at]
    never = [toner_name(box, item) for item in tried if not item.halves_at]
    texts = []
    if reached:
        takes = translate("mix", ", or ").join(reached)
        texts.append(translate("mix", "Half the intensity takes {takes}.").format(takes=takes))
    texts += [
        translate("mix", "{toner} never halves it.").format(toner=sentence_case(name))
        for name in never
    ]
    drift = [item.hue_drift_deg for item in tried]
    most = max(range(len(tried)), key=drift.__getitem__)
    if drift[most] - min(drift) < TURNS_DEG:
        texts.append(translate("mix", "They turn the hue alike."))
    else:
        name = sentence_case(toner_name(box, tried[most]))
        texts.append(translate("mix", "{toner} turns the hue most.").format(toner=name))
    return " ".join(texts)


def toner_name(box: Box, tried: TonerTried) -> str:
    """A toner's paint, or its parts: "1 cerulean blue : 1 sap green"."""
    if len(tried.parts) == 1:
        return paint_name(box.paint(tried.parts[0][0]))
    return " : ".join(f"{count} {paint_name(box.paint(key))}" for key, count in tried.parts)


def _halves(box: Box, tried: TonerTried) -> str:
    share = max(2, round(1 / tried.halves_at)) if tried.halves_at else 0
    return translate("mix", "1 part in {n} of {toner}").format(
        toner=toner_name(box, tried), n=share
    )

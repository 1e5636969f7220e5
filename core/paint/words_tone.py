"""Toners compared, in words: the true complement beside what the box holds."""

from __future__ import annotations

from collections.abc import Sequence

from core.i18n import translate
from core.paint.box import Box
from core.paint.names import paint_name
from core.paint.toners import TonerTried
from core.paint.words_mix import listed

TURNS_DEG = 4.0
"""CIELAB degrees from which one toner is said to turn the hue more than another."""


def toners_text(box: Box, tried: Sequence[TonerTried]) -> str:
    """Which toner takes how much to halve the intensity, and which turns the hue most.

    "To halve the intensity: sap green 1 part in 3 and 2 cerulean blue : 1 sap green 1 part in 4;
    sap green turns the hue most." Empty when there is nothing to compare.
    """
    if len(tried) < 2:
        return ""
    halves = listed([_halves(box, item) for item in tried])
    drift = [item.hue_drift_deg for item in tried]
    most = max(range(len(tried)), key=drift.__getitem__)
    if drift[most] - min(drift) < TURNS_DEG:
        return translate(
            "mix", "To halve the intensity: {halves}; they turn the hue alike."
        ).format(halves=halves)
    return translate("mix", "To halve the intensity: {halves}; {paint} turns the hue most.").format(
        halves=halves, paint=toner_name(box, tried[most])
    )


def toner_name(box: Box, tried: TonerTried) -> str:
    """A toner's paint, or its parts: "1 cerulean blue : 1 sap green"."""
    if len(tried.parts) == 1:
        return paint_name(box.paint(tried.parts[0][0]))
    return " : ".join(f"{count} {paint_name(box.paint(key))}" for key, count in tried.parts)


def _halves(box: Box, tried: TonerTried) -> str:
    name = toner_name(box, tried)
    if not tried.halves_at:
        return translate("mix", "{toner} never does").format(toner=name)
    return translate("mix", "{toner} 1 part in {n}").format(
        toner=name, n=max(2, round(1 / tried.halves_at))
    )

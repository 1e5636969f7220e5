"""Toners compared, in words: the true complement beside what the box holds."""

from __future__ import annotations

from collections.abc import Sequence

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.names import paint_name
from core.paint.toning.toners import TonerTried
from core.words.lists import sentence_case

TURNS_DEG = 4.0
"""CIELAB degrees from which one toner is said to turn the hue more than another."""


def toners_text(box: Box, tried: Sequence[TonerTried]) -> str:
    """Which toner takes how much to halve the intensity, and which turns the hue most.

    "Sap green halves the intensity at 1 part in 3; the true complement, 2 cerulean blue : 1 sap
    green, at 1 part in 4. Sap green turns the hue more." Empty when there is nothing to compare.
    """
    if len(tried) < 2:
        return ""
    reached = [item for item in tried if item.halves_at]
    texts = []
    if reached:
        first = translate("mix", "{toner} halves the intensity at 1 part in {n}").format(
            toner=sentence_case(_named(box, reached[0])), n=_one_in(reached[0])
        )
        others = [
            translate("mix", "{toner} at 1 part in {n}").format(
                toner=_named(box, item), n=_one_in(item)
            )
            for item in reached[1:]
        ]
        texts.append("; ".join([first, *others]) + ".")
    else:
        texts.append(translate("mix", "Not one of these halves the intensity."))
    most = _turns_most(tried)
    for item in tried if reached else ():
        if item.halves_at:
            continue
        if item is most:
            text = translate("mix", "{toner} never does, and turns the hue most.")
        else:
            text = translate("mix", "{toner} never does.")
        texts.append(text.format(toner=sentence_case(_named(box, item))))
    if most is None or most.halves_at or not reached:
        texts.append(_turning(box, tried, most))
    return " ".join(texts)


def _turns_most(tried: Sequence[TonerTried]) -> TonerTried | None:
    """The toner that turns the hue clearly more than another; None where they do it alike."""
    drift = [item.hue_drift_deg for item in tried]
    most = max(range(len(tried)), key=drift.__getitem__)
    return None if drift[most] - min(drift) < TURNS_DEG else tried[most]


def _turning(box: Box, tried: Sequence[TonerTried], most: TonerTried | None) -> str:
    if most is None:
        return translate("mix", "They turn the hue alike.")
    text = (
        translate("mix", "{toner} turns the hue more.")
        if len(tried) == 2
        else translate("mix", "{toner} turns the hue most.")
    )
    name = translate("mix", "the true complement") if len(most.parts) > 1 else toner_name(box, most)
    return text.format(toner=sentence_case(name))


def toner_name(box: Box, tried: TonerTried) -> str:
    """A toner's paint, or its parts: "1 cerulean blue : 1 sap green"."""
    if len(tried.parts) == 1:
        return paint_name(box.paint(tried.parts[0][0]))
    return " : ".join(f"{count} {paint_name(box.paint(key))}" for key, count in tried.parts)


def _named(box: Box, tried: TonerTried) -> str:
    """The same in a sentence: two paints are only tried where they make the true complement."""
    name = toner_name(box, tried)
    if len(tried.parts) == 1:
        return name
    return translate("mix", "the true complement, {parts},").format(parts=name)


def _one_in(tried: TonerTried) -> int:
    """A share as one part in so many."""
    return max(2, round(1 / tried.halves_at)) if tried.halves_at else 0

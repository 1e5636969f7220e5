"""Amounts, water, brush and strengths in words."""

from __future__ import annotations

from collections.abc import Iterable

from core.i18n import translate
from core.paint.amounts import Amounts
from core.paint.drying import DRYING_STEPS
from core.paint.strength import STRENGTHS, Strength
from core.paint.words_mix import listed, strength_note
from core.units import Units, length_text

FLAT_BRUSH_MM = 25.0
"""A flat wide enough for a class's sheet (common practice)."""


def amounts_note(amounts: Amounts) -> str:
    """Where the millilitres come from."""
    if amounts.own_figure:
        return translate("mix", "From your own figure, with about as much again to spare.")
    return translate(
        "mix", "A rule of thumb, with about as much again to spare: running out spoils a wash."
    )


def amount_text(ml: float, loads: int) -> str:
    """ "Mix 3.5 mL: one load of a large brush covers the band."; empty for bare paper."""
    if ml <= 0:
        return ""
    if loads == 1:
        text = translate("mix", "Mix {ml:g} mL: one load of a large brush covers the band.")
    else:
        text = translate("mix", "Mix {ml:g} mL: {n} loads of a large brush cover the band.")
    return text.format(ml=ml, n=loads)


def brush_text(units: Units = "cm") -> str:
    """Which brush for a wash."""
    return translate(
        "mix",
        "Brush: a large soft round, about size 12, or a flat of {width}. Synthetic hair holds "
        "less: fill it more often.",
    ).format(width=length_text(FLAT_BRUSH_MM, units))


def water_text(amounts: Amounts) -> str:
    """How much clean water wets the sheet; a rule of thumb."""
    low, high = amounts.water_ml
    return translate("mix", "Clean water to wet the sheet: {low:.0f} to {high:.0f} mL.").format(
        low=low, high=high
    )


def wet_text(drying_steps: float) -> str:
    """That wet paint looks darker; empty when the setting says it does not."""
    if drying_steps <= 0:
        return ""
    if abs(drying_steps - DRYING_STEPS) < 0.01:
        return translate(
            "mix", "The chips are dry paint. Wet, a wash looks about a quarter of a step darker."
        )
    return translate(
        "mix", "The chips are dry paint. Wet, a wash looks about {steps:g} of a step darker."
    ).format(steps=drying_steps)


def strengths_text(strengths: Iterable[Strength]) -> str:
    """What the strengths used in a plan mean in paint and water; empty when there is none."""
    used = set(strengths)
    notes = [strength_note(strength) for strength in STRENGTHS if strength in used]
    notes = [note for note in notes if note]
    if not notes:
        return ""
    return translate("mix", "Roughly, with tube paint, {notes}.").format(notes=listed(notes))

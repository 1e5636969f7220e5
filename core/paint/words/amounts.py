"""Amounts, water, brush and strengths in words."""

from __future__ import annotations

from collections.abc import Iterable
from typing import assert_never

from core.i18n import translate
from core.paint.mixture.strength import STRENGTHS, Strength
from core.paint.wash.amounts import DROPS_PER_ML, TEASPOON_ML, Amounts
from core.paint.words.parts import strength_note
from core.reading.units import Units, length_text
from core.words.lists import listed

FLAT_BRUSH_MM = 25.0
"""A flat wide enough for a class's sheet (common practice)."""


def amounts_note(amounts: Amounts) -> str:
    """Where the millilitres come from."""
    if amounts.own_figure:
        return translate("mix", "From your own figure, with about as much again to spare.")
    return translate(
        "mix", "A rule of thumb, with about as much again to spare: running out spoils a wash."
    )


def measure_text(ml: float) -> str:
    """An amount without a syringe: "about 40 drops", "about a teaspoon and a half"."""
    if ml < TEASPOON_ML / 2:
        return translate("mix", "about {n} drops").format(n=round(ml * DROPS_PER_ML))
    halves = round(2 * ml / TEASPOON_ML)
    if halves == 1:
        return translate("mix", "about half a teaspoon")
    if halves == 2:
        return translate("mix", "about a teaspoon")
    if halves == 3:
        return translate("mix", "about a teaspoon and a half")
    if halves % 2:
        return translate("mix", "about {n} and a half teaspoons").format(n=halves // 2)
    return translate("mix", "about {n} teaspoons").format(n=halves // 2)


def amount_text(ml: float) -> str:
    """ "Mix 2 mL, about 40 drops."; empty for bare paper."""
    if ml <= 0:
        return ""
    return translate("mix", "Mix {ml:g} mL, {measure}.").format(ml=ml, measure=measure_text(ml))


def amount_of_it_text(ml: float) -> str:
    """ "2 mL of it, about 40 drops.", after "The same mix as A, with more water."."""
    return translate("mix", "{ml:g} mL of it, {measure}.").format(ml=ml, measure=measure_text(ml))


def total_text(total_ml: float, each_ml: float | None) -> str:
    """ "In all 7 mL.", "Of each mix 2 mL, about 40 drops; in all 8 mL."."""
    if each_ml is None:
        return translate("mix", "In all {total:g} mL.").format(total=total_ml)
    return translate("mix", "Of each mix {each:g} mL, {measure}; in all {total:g} mL.").format(
        each=each_ml, measure=measure_text(each_ml), total=total_ml
    )


def puddle_text() -> str:
    """From parts to a puddle, with tubes and with pans: one chain of measures."""
    return translate(
        "mix",
        "A part is one measure, kept the same: a dot of tube paint, or one rub of a damp brush on "
        "a pan. Put the parts into the well first, then water up to the strength; with pans, until "
        "a stroke on scrap dries like the chip. 1 mL is about 20 drops, 5 mL a teaspoon.",
    )


def brush_text(units: Units = "cm") -> str:
    """Which brush for a wash."""
    return translate(
        "mix",
        "Brush for laying: a large soft round, about size 12, or a flat of {width}; mix with "
        "another. Synthetic hair holds less: fill it more often.",
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
    return translate(
        "mix", "The chips are dry paint. Wet, a wash looks about {steps} darker."
    ).format(steps=step_share_text(drying_steps))


def step_share_text(steps: float) -> str:
    """A share of a value step, as it is said: "a quarter of a value step"."""
    for share, text in (
        (0.25, translate("mix", "a quarter of a value step")),
        (0.5, translate("mix", "half a value step")),
        (0.75, translate("mix", "three quarters of a value step")),
        (1.0, translate("mix", "a whole value step")),
    ):
        if abs(steps - share) < 0.01:
            return text
    return translate("mix", "{steps:g} of a value step").format(steps=steps)


def strengths_text(strengths: Iterable[Strength]) -> str:
    """What the strengths used in a plan mean in paint and water; empty when there is none."""
    used = set(strengths)
    known = [strength for strength in STRENGTHS if strength in used and strength != "paper"]
    if not known:
        return ""
    first, *others = known
    notes = [strength_note(first), *(_short_note(strength) for strength in others)]
    return translate("mix", "Roughly, with tube paint: {notes}.").format(notes=listed(notes))


def _short_note(strength: Strength) -> str:
    """The same as `strength_note`, after another one."""
    match strength:
        case "paper":
            return ""
        case "weak tea":
            return translate("mix", "weak tea 1 to 25 or more")
        case "tea":
            return translate("mix", "tea 1 to 15 or 20")
        case "coffee":
            return translate("mix", "coffee 1 to 8 or 10")
        case "milk":
            return translate("mix", "milk 1 to about 4")
        case "cream":
            return translate("mix", "cream 1 to 1")
        case _:
            assert_never(strength)


def sheet_name(name: str) -> str:
    """The name of a sheet size as shown; a size the study names otherwise keeps its name."""
    names = {
        "A5": translate("mix page", "A5"),
        "A4": translate("mix page", "A4"),
        "A3": translate("mix page", "A3"),
        "letter": translate("mix page", "letter"),
        "quarter imperial": translate("mix page", "quarter imperial"),
    }
    return names.get(name, name)

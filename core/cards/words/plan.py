"""What the plan card says of mixes, meetings, amounts and the order of work."""

from __future__ import annotations

from core.colour import delta_E_2000
from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.cautions import Caution
from core.paint.box.names import box_name, paint_name
from core.paint.mixture.shortfall import verdict
from core.paint.planned import BandMix, MixPlan, PlannedMix
from core.paint.wash.amounts import PaintSheet
from core.paint.wash.order import Order, WorkStep
from core.paint.words.amounts import sheet_name
from core.paint.words.fit import reach_short_text
from core.paint.words.mix import shortfall_text
from core.paint.words.plan import (
    meeting_text,
    metal_name,
    parts_note,
    strengths_text,
    total_text,
    turn_text,
    work_step_text,
)
from core.reading.units import Units, size_text
from core.scrap.kept import ScrapEntry, same_puddle
from core.words.lists import listed, sentence_case
from core.words.verdicts import verdict_word


def nearness_text(planned: PlannedMix, band: BandMix) -> str:
    """How near the mix comes: "Close: a little duller than the photo"."""
    if planned.kind != "by hand" and not planned.lacks and band.reach != "reached":
        return reach_short_text(band.reach)
    short = shortfall_text(planned)
    said = verdict_word(planned.verdict)
    if not short:
        return said
    return translate("cards", "{verdict}: {short}").format(verdict=said, short=short)


def tried_text(scraps: tuple[ScrapEntry, ...], band: BandMix) -> str:
    """What the last scrap of a band's puddle came to: "On a scrap: close at try 2"; empty without.

    A scrap of another mix than the one planned now says nothing of it.
    """
    if band.classroom is None or band.target is None:
        return ""
    tries = same_puddle(scraps, band.letter, band.classroom.mix.parts)
    if not tries:
        return ""
    off = float(delta_E_2000(tries[-1].Lab, band.target.Lab))
    text = (
        translate("cards", "On a scrap: {verdict}")
        if len(tries) == 1
        else translate("cards", "On a scrap: {verdict} at try {n}")
    )
    said = verdict_word(verdict(off))
    return text.format(verdict=said[:1].lower() + said[1:], n=len(tries))


def wet_edge_text(plan: MixPlan, number: int) -> str:
    """What happens where a band meets the next; empty for the last."""
    band = plan.bands[number]
    if band.meets_below is None or not band.meets_below.happens or number + 1 >= len(plan.bands):
        return ""
    return meeting_text(band.letter, plan.bands[number + 1].letter, band.meets_below)


def down_head(units: Units) -> str:
    """Head of the column that says how far down a band ends."""
    return translate("cards", "cm down") if units == "cm" else translate("cards", "inches down")


def table_heads(units: Units = "cm") -> dict[str, str]:
    """Heads of the plan's columns."""
    return {
        "photo": translate("cards", "photo"),
        "mix": translate("cards", "mix"),
        "own": translate("cards", "yours"),
        "band": translate("cards", "band, and its mix"),
        "down": down_head(units),
        "ml": translate("cards", "mL"),
    }


def amounts_text(plan: MixPlan) -> str:
    """ "In all 41 mL."."""
    return total_text(plan.amounts.total_ml, plan.each_ml)


def measure_lines(plan: MixPlan) -> tuple[str, ...]:
    """What the strengths mean, how parts become a puddle, for which make they hold."""
    used = [band.classroom.strength for band in plan.bands if band.classroom is not None]
    strengths = strengths_text(used)
    if not strengths:
        return ()
    puddle = translate(
        "cards",
        "A part is a dot of tube paint, or a rub of a damp brush on a pan; then water. 1 mL is "
        "about 20 drops, 5 mL a teaspoon.",
    )
    parts = parts_note(plan.box, plan.chosen_mixes)
    return (f"{strengths} {puddle}", parts) if parts else (f"{strengths} {puddle}",)


def materials_text(box: Box, sheet: PaintSheet, units: Units = "cm") -> str:
    """Paints and paper the plan is made for."""
    return translate("cards", "For the {box}, on {paper}: {size} inside the tape.").format(
        box=box_name(box), paper=sheet_name(sheet.name), size=size_text(*sheet.painted_mm, units)
    )


def order_lines(order: Order, sheet: PaintSheet, units: Units = "cm") -> tuple[str, ...]:
    """The order of work in seven steps or eight: laying and rinsing is one of them."""
    lines: list[str] = []
    laid: list[str] = []
    for step in order.steps:
        if step.stage == "lay":
            laid.append(_lay_text(step, bool(laid)))
        elif step.stage == "peel" and lines:
            lines[-1] = f"{lines[-1]} {_step_text(step, sheet, units)}"
        elif step.stage != "rinse":
            if laid:
                lines.append(f"{'; '.join(laid)}.")
                laid = []
            lines.append(_step_text(step, sheet, units))
            if step.stage == "wet" and order.turn_sheet:
                lines.append(turn_text(order))
    return tuple(lines)


def _step_text(step: WorkStep, sheet: PaintSheet, units: Units) -> str:
    """A step on one line of the card where the plan in words has room for more."""
    low, high = step.minutes or (0, 0)
    if step.stage == "wet":
        text = translate(
            "cards",
            "Soft round brush, clean water: damp everywhere, no puddle. It shines {low} to {high} "
            "min.",
        )
    elif step.stage == "pull":
        text = translate(
            "cards",
            "Where bands should meet, pull the lower one up into the wet and the upper one down.",
        )
    elif step.stage == "dry":
        text = translate("cards", "Leave flat {low} to {high} min; still cool is still damp: wait.")
    elif step.stage == "peel":
        text = translate("cards", "Peel the tape away, slowly.")
    else:
        return work_step_text(step, sheet, units=units)
    return text.format(low=low, high=high)


def _lay_text(step: WorkStep, later: bool) -> str:
    several = len(step.letters) > 1
    if step.thinning and several:
        text = translate(
            "cards", "Lay {first}, the strongest, then {rest} with more and more water"
        )
    elif step.uneven and several:
        text = translate("cards", "Lay {first}, then {rest}, more water where a band is lighter")
    elif later and step.apart:
        text = translate("cards", "rinse, then {bands}, a strip of clean water away from {apart}")
    elif later:
        text = translate("cards", "rinse, then {bands}")
    elif several and step.outwards:
        text = translate("cards", "Lay {first}, the lightest, then outwards {rest}")
    elif several:
        text = translate("cards", "Lay {first}, the lightest, then {rest}")
    else:
        text = translate("cards", "Lay {bands}")
    return text.format(
        bands=listed(step.letters),
        first=step.letters[0],
        rest=listed(step.letters[1:]),
        apart=step.apart,
    )


def caution_lines(box: Box, cautions: tuple[Caution, ...]) -> tuple[str, ...]:
    """Cautions, paints that list the same put together, and one sentence on rinse water."""
    by_lists: dict[tuple[str, ...], list[str]] = {}
    for caution in cautions:
        by_lists.setdefault(caution.lists, []).append(paint_name(box.paint(caution.paint)))
    lines = []
    for lists, paints in by_lists.items():
        if len(paints) == 1:
            text = translate(
                "cards",
                "{paints}: The label of this paint lists what it holds, usually {lists}; your "
                "school's rules come first.",
            )
        else:
            text = translate(
                "cards",
                "{paints}: The labels of these paints list what they hold, usually {lists}; your "
                "school's rules come first.",
            )
        named = listed(paints)
        metals = listed([metal_name(name) for name in lists])
        lines.append(text.format(paints=sentence_case(named), lists=metals))
    if lines:
        lines[-1] += " " + translate(
            "cards", "Keep rinse water apart from drinking water, and wash your hands."
        )
    return tuple(lines)

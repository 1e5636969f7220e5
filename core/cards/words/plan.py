"""What the plan card says of mixes, meetings, amounts and the order of work."""

from __future__ import annotations

from core.i18n import translate
from core.paint.box.box import Box
from core.paint.box.cautions import Caution
from core.paint.box.names import box_name, paint_name
from core.paint.planned import BandMix, MixPlan, PlannedMix
from core.paint.wash.amounts import Amounts, PaintSheet
from core.paint.wash.order import Order
from core.paint.words.amounts import sheet_name
from core.paint.words.fit import reach_short_text
from core.paint.words.mix import shortfall_text, verdict_word
from core.paint.words.plan import amounts_note, meeting_text, metal_name, parts_note, work_step_text
from core.reading.units import Units, size_text
from core.words.lists import listed, sentence_case


def nearness_text(planned: PlannedMix, band: BandMix) -> str:
    """How near the mix comes: "Close: a little duller than the photo"."""
    if planned.kind != "by hand" and not planned.lacks and band.reach != "reached":
        return reach_short_text(band.reach)
    short = shortfall_text(planned)
    verdict = verdict_word(planned.verdict)
    if not short:
        return verdict
    return translate("cards", "{verdict}: {short}").format(verdict=verdict, short=short)


def wet_edge_text(plan: MixPlan, number: int) -> str:
    """What happens where a band meets the next; empty for the last."""
    band = plan.bands[number]
    if band.meets_below is None or number + 1 >= len(plan.bands):
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


def amounts_text(amounts: Amounts) -> str:
    """ "41 mL in all. A rule of thumb, ..."."""
    return translate("cards", "{ml:g} mL in all. {note}").format(
        ml=amounts.total_ml, note=amounts_note(amounts)
    )


def parts_line(plan: MixPlan) -> str:
    """That parts hold for the measured make, and which paint to begin with less of."""
    return parts_note(plan.box, plan.chosen_mixes)


def materials_text(box: Box, sheet: PaintSheet, units: Units = "cm") -> str:
    """Paints and paper the plan is made for."""
    return translate("cards", "For the {box}, on {paper}: {size} inside the tape.").format(
        box=box_name(box), paper=sheet_name(sheet.name), size=size_text(*sheet.painted_mm, units)
    )


def wheel_caption() -> str:
    """How to read the wheel."""
    return translate("cards", "Round: hue. Out from the middle: intensity.")


def order_title() -> str:
    """Heading of the steps."""
    return translate("cards", "Order of work")


def notes_title() -> str:
    """Heading of the lines to write on."""
    return translate("cards", "Notes")


def order_lines(order: Order, sheet: PaintSheet, units: Units = "cm") -> tuple[str, ...]:
    """The order of work in six steps or seven: laying and rinsing is one of them."""
    lines: list[str] = []
    laid: list[str] = []
    bands = 0
    for step in order.steps:
        if step.stage == "lay":
            bands += len(step.letters)
            if step.thinning and len(step.letters) > 1:
                text = translate(
                    "cards", "Lay {first}, the strongest, then {rest} with more and more water"
                )
            elif laid:
                text = translate("cards", "rinse, then {bands}")
            elif len(step.letters) > 1:
                text = translate("cards", "Lay {first}, the lightest, then {rest}")
            else:
                text = translate("cards", "Lay {bands}")
            laid.append(
                text.format(
                    bands=listed(step.letters),
                    first=step.letters[0],
                    rest=listed(step.letters[1:]),
                )
            )
        elif step.stage == "peel" and lines:
            lines[-1] = f"{lines[-1]} {work_step_text(step, sheet, units=units)}"
        elif step.stage != "rinse":
            if step.stage in ("leave", "stop") and laid:
                lines.append(_laying(laid, bands))
                laid, bands = [], 0
            lines.append(work_step_text(step, sheet, units=units))
            if step.stage == "wet" and order.turn_sheet:
                lines.append(
                    translate(
                        "cards", "Turn the sheet upside down: the strongest band comes first."
                    )
                    if order.kind == "graded"
                    else translate(
                        "cards", "Turn the sheet upside down: the lightest band comes first."
                    )
                )
    return tuple(lines)


def _laying(laid: list[str], bands: int) -> str:
    if bands < 2:
        return f"{laid[0]}."
    return translate("cards", "{laying}; each runs into the next.").format(laying="; ".join(laid))


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

"""What cards say beyond readings, mixes and findings."""

from __future__ import annotations

from core.i18n import translate
from core.paint.amounts import Amounts, PaintSheet
from core.paint.box import Box
from core.paint.cautions import Caution
from core.paint.names import box_name, paint_name
from core.paint.order import Order
from core.paint.planned import BandMix, MixPlan, PlannedMix, Reach
from core.paint.words_mix import listed, shortfall_text, verdict_text
from core.paint.words_plan import amounts_note, meeting_text, metal_name, work_step_text
from core.reading import ColourReading
from core.study import Study
from core.units import Units, size_text
from core.wording import Wording
from core.words import (
    class_word,
    family_name,
    hue_short,
    intensity_text,
    second_line,
    value_number,
    value_word_text,
)


def plan_title(study: Study) -> str:
    """The heading of the plan card."""
    return translate("cards", "Plan: {title}").format(title=study.title)


def worksheet_title(study: Study) -> str:
    """The heading of the worksheet."""
    if not study.title:
        return translate("cards", "Worksheet")
    return translate("cards", "Worksheet: {title}").format(title=study.title)


def findings_title(study: Study) -> str:
    """The heading of the findings page."""
    return translate("cards", "Findings: {title}").format(title=study.title)


def class_text(code: str) -> str:
    """ "Class 7b"."""
    return translate("cards", "Class {code}").format(code=code)


def student_text(code: str) -> str:
    """ "Student 7b 14": a code, never a name."""
    return translate("cards", "Student {code}").format(code=code)


def value_piece(colour: ColourReading, wording: Wording) -> str:
    """ "value 4.4, dark"."""
    return translate("cards", "value {number}, {word}").format(
        number=value_number(colour.munsell.value, wording),
        word=value_word_text(colour.value_word),
    )


def scale_piece(colour: ColourReading, wording: Wording) -> str:
    """Value and intensity: "value 4.4, dark; intense"; a near neutral says it as its hue."""
    value = value_piece(colour, wording)
    if colour.hue.family is None:
        return value
    return translate("cards", "{value}; {intensity}").format(
        value=value, intensity=intensity_text(colour.intensity_word)
    )


def hue_pieces(colour: ColourReading, wording: Wording) -> tuple[str, str]:
    """Hue and class, and what may stand behind in a lighter weight: ", near violet"."""
    hue = hue_short(colour.hue)
    if colour.hue.hue_class is not None:
        hue = translate("cards", "{hue}, {second}").format(
            hue=hue, second=class_word(colour.hue.hue_class, wording)
        )
        if colour.hue.also is None:
            return hue, ""
        near = translate("cards", ", near {hue}").format(hue=family_name(colour.hue.also))
        return hue, near
    if colour.hue.leaning is None:
        return hue, ""
    leaning = translate("cards", ", leaning {hue}").format(hue=family_name(colour.hue.leaning))
    return hue, leaning


def hue_piece(colour: ColourReading, wording: Wording) -> str:
    """ "blue-violet, tertiary, near violet"."""
    second = second_line(colour, wording)
    hue = hue_short(colour.hue)
    if not second:
        return hue
    return translate("cards", "{hue}, {second}").format(hue=hue, second=second)


def no_sky_text() -> str:
    """A band without any sky."""
    return translate("cards", "No sky in this band: move its lines.")


def not_sky_word() -> str:
    """What lies below the horizon."""
    return translate("cards", "not sky")


def nearness_text(planned: PlannedMix, band: BandMix) -> str:
    """How near the mix comes: "Close: a little duller than the photo"."""
    if band.reach != "reached":
        return _beyond(band.reach)
    short = shortfall_text(planned)
    verdict = verdict_text(planned)
    if not short:
        return verdict
    return translate("cards", "{verdict}: {short}").format(verdict=verdict, short=short)


def _beyond(reach: Reach) -> str:
    return {
        "reached": "",
        "too intense": translate("cards", "More intense than the box can reach: keep it clean."),
        "too light": translate("cards", "Lighter than the box can mix: let the paper do more."),
        "too dark": translate("cards", "Darker than the box can mix: lay it twice, dry between."),
        "out of reach": translate("cards", "The box does not reach it: this comes nearest."),
    }[reach]


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


def materials_text(box: Box, sheet: PaintSheet, units: Units = "cm") -> str:
    """Paints and paper the plan is made for."""
    return translate("cards", "For the {box}, on {paper}: {size} inside the tape.").format(
        box=box_name(box), paper=sheet.name, size=size_text(*sheet.painted_mm, units)
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
        lines.append(text.format(paints=named[:1].upper() + named[1:], lists=metals))
    if lines:
        lines[-1] += " " + translate(
            "cards", "Keep rinse water apart from drinking water, and wash your hands."
        )
    return tuple(lines)


def ruler_text() -> str:
    """Beside the ruler at the foot."""
    return translate("cards", "100 mm when printed at full size")


def page_text(number: int, total: int) -> str:
    """ "page 2 of 3"."""
    return translate("cards", "page {number} of {total}").format(number=number, total=total)


def continued(title: str) -> str:
    """The heading of a further page."""
    return translate("cards", "{title} (continued)").format(title=title)


def field_names() -> tuple[str, str, str]:
    """Labels of the worksheet's fields: a code, never a name."""
    return (
        translate("cards", "Code"),
        translate("cards", "Class"),
        translate("cards", "Date"),
    )


def scores_title() -> str:
    """Heading above the scales."""
    return translate("cards", "First: your own scores")


def scores_advice(index: int) -> str:
    """How to score sheet `index`, 0 or 1, in two or three sentences."""
    if index == 0:
        return translate(
            "cards",
            "Score before anything is measured. Put your dry sheet beside the photo, step back, "
            "and look at one thing at a time, band by band. Then mark one number in each row.",
        )
    return translate(
        "cards",
        "Score the second sheet as you did the first, before anything is measured, and without "
        "looking up your earlier scores.",
    )


def value_scale_caption() -> str:
    """Beside the value scale."""
    return translate(
        "cards", "The value scale: squint, and ask which grey is as light as the band."
    )


def reminder_label() -> str:
    """On a blank second sheet, before a line to write on."""
    return translate("cards", "What you set out to change:")


def change_heading() -> str:
    """Heading of what changed from sheet 1 to sheet 2."""
    return translate("cards", "The change")


def scores_heading() -> str:
    """Heading of the table of scores."""
    return translate("cards", "Scores, 1 to 10")


def own_word() -> str:
    """Head of the student's own scores."""
    return translate("cards", "own")


def measured_word() -> str:
    """Head of the measured scores, a second opinion."""
    return translate("cards", "measured")


def scores_note() -> str:
    """How the two kinds of scores belong together."""
    return translate(
        "cards", "Own scores come first. Measured ones are a second opinion, never a mark."
    )


def remark_heading() -> str:
    """Heading of the teacher's words."""
    return translate("cards", "Your teacher's remark")


def photo_word() -> str:
    """Above the reference and its column."""
    return translate("cards", "The photo")


def no_sheet_text() -> str:
    """In place of a sheet that was not added."""
    return translate("cards", "Not painted yet.")


def waits_text() -> str:
    """In place of what was measured of a sheet whose own scores are missing."""
    return translate("cards", "What was measured waits for your own scores.")


def next_change_text() -> str:
    """In place of the change while there is one sheet only."""
    return translate("cards", "The second sheet will show what the change did.")


def sheet_readout(colour: ColourReading, wording: Wording) -> str:
    """A band of a sheet in few words: "violet 5.4, moderate"."""
    hue = hue_short(colour.hue)
    value = value_number(colour.munsell.value, wording)
    if colour.hue.family is None:
        return translate("cards", "{hue} {value}").format(hue=hue, value=value)
    return translate("cards", "{hue} {value}, {intensity}").format(
        hue=hue, value=value, intensity=intensity_text(colour.intensity_word)
    )


def scales_short(colour: ColourReading, wording: Wording) -> str:
    """ "value 4.4, intense"; of a near neutral the value alone."""
    number = translate("cards", "value {number}").format(
        number=value_number(colour.munsell.value, wording)
    )
    if colour.hue.family is None:
        return number
    return translate("cards", "{value}, {intensity}").format(
        value=number, intensity=intensity_text(colour.intensity_word)
    )

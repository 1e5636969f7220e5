"""A plan in words: meetings, order of work; and, from their own modules, the rest of a plan."""

from __future__ import annotations

from typing import assert_never

from core.i18n import translate
from core.paint.wash.amounts import PaintSheet
from core.paint.wash.meeting import Meeting
from core.paint.wash.order import Order, WorkStep
from core.paint.words.amounts import (
    amount_of_it_text,
    amount_text,
    amounts_note,
    brush_text,
    strengths_text,
    water_text,
    wet_text,
)
from core.paint.words.box import caution_text, metal_name, paint_note, stand_ins_text
from core.paint.words.ladder import (
    drift_text,
    fraction_text,
    ladder_text,
    ladder_title,
    step_note_text,
)
from core.paint.words.parts import parts_note
from core.reading.units import Units, size_text
from core.words.lists import listed
from core.words.names import family_name

__all__ = [
    "amount_of_it_text",
    "amount_text",
    "amounts_note",
    "brush_text",
    "caution_text",
    "drift_text",
    "fraction_text",
    "kind_text",
    "ladder_text",
    "ladder_title",
    "meeting_text",
    "metal_name",
    "order_texts",
    "paint_note",
    "parts_note",
    "stand_ins_text",
    "step_note_text",
    "strengths_text",
    "water_text",
    "wet_text",
    "work_step_text",
]


def meeting_text(upper: str, lower: str, meeting: Meeting) -> str:
    """What the wet edge between two bands becomes, in a sentence or two.

    Parameters
    ----------
    upper, lower : str
        Letters of the two bands.
    meeting : Meeting
    """
    names = [
        translate("mix", "grey") if family is None else family_name(family)
        for family in meeting.families
    ]
    if len(names) == 1:
        through = translate("mix", "{only} all the way").format(only=names[0])
    elif len(names) == 2:
        through = translate("mix", "{first} to {last}").format(first=names[0], last=names[-1])
    else:
        through = translate("mix", "{first} through {middle} to {last}").format(
            first=names[0], middle=listed(names[1:-1]), last=names[-1]
        )
    hue = family_name(meeting.new_hue) if meeting.new_hue else ""
    keep = family_name(meeting.keep_between) if meeting.keep_between else ""
    return _meeting_template(meeting).format(
        upper=upper, lower=lower, through=through, hue=hue, keep=keep
    )


def _meeting_template(meeting: Meeting) -> str:
    match meeting.note:
        case "one hue":
            if meeting.photo_agrees:
                return translate("mix", "{upper} runs into {lower}: {through}, as in the photo.")
            return translate("mix", "{upper} runs into {lower}: {through}.")
        case "clean":
            if meeting.photo_agrees:
                return translate(
                    "mix", "{upper} runs into {lower}: {through}, clean, as in the photo."
                )
            return translate("mix", "{upper} runs into {lower}: {through}, clean.")
        case "paper":
            return translate(
                "mix", "{upper} and {lower}: let the wash fade out into the white paper."
            )
        case "photo has it":
            return translate(
                "mix",
                "{upper} runs into {lower}: {through}. Let them run together: the photo's {hue} "
                "needs no mix of its own.",
            )
        case "photo lacks it":
            return translate(
                "mix",
                "{upper} runs into {lower}: {through}. The photo shows no {hue} there: leave a "
                "strip of clean water between.",
            )
        case "grey":
            if set(meeting.families) == {None}:
                return translate("mix", "{upper} runs into {lower}: {through}.")
            return translate("mix", "{upper} runs into {lower}: {through}, soft and greyish.")
        case "grey in photo too":
            return translate(
                "mix",
                "{upper} runs into {lower}: {through}. It goes grey, and so does the photo: let "
                "it.",
            )
        case "mud":
            if meeting.keep_between is None:
                return translate(
                    "mix",
                    "{upper} and {lower} meet in a mud: {through}. Leave clean water between them.",
                )
            return translate(
                "mix",
                "{upper} and {lower} meet in a mud: {through}. Leave a clear {keep} between them.",
            )
        case _:
            assert_never(meeting.note)


def kind_text(order: Order) -> str:
    """Flat, graded or variegated wash."""
    match order.kind:
        case "none":
            return translate("mix", "No wash: this sky is the white of the paper.")
        case "flat":
            return translate("mix", "A flat wash: one mix, evenly.")
        case "graded":
            return translate("mix", "A graded wash: one mix, thinned from band to band.")
        case "variegated":
            return translate("mix", "A variegated wash: different mixes that run together.")
        case _:
            assert_never(order.kind)


def work_step_text(
    step: WorkStep, sheet: PaintSheet, *, first: bool = False, units: Units = "cm"
) -> str:
    """One step of the work as an instruction.

    Parameters
    ----------
    step : WorkStep
    sheet : PaintSheet
    first : bool
        The first of several bands is laid in this step.
    units : Units
    """
    low, high = step.minutes or (0, 0)
    return _step_template(step, first).format(
        size=size_text(*sheet.painted_mm, units),
        low=low,
        high=high,
        bands=listed(step.letters),
        first=step.letters[0] if step.letters else "",
        rest=listed(step.letters[1:]),
        beside=step.beside,
    )


def _step_template(step: WorkStep, first: bool) -> str:
    match step.stage:
        case "tape":
            return translate("mix", "Tape the sheet: {size}. Mark where each band ends.")
        case "mix":
            return translate("mix", "Mix everything before the sheet is wet; try each on a scrap.")
        case "wet":
            return translate(
                "mix",
                "Wet the whole sheet: even shine, no puddles. The shine lasts {low} to {high} min.",
            )
        case "lay":
            return _lay_text(step, first)
        case "leave":
            return translate("mix", "Leave {bands} without paint: the paper is its white.")
        case "rinse":
            return translate("mix", "Rinse the brush and take off the drip.")
        case "stop":
            return translate(
                "mix",
                "Stop when the shine goes. For {low} to {high} min a wet brush would leave blooms.",
            )
        case "dry":
            return translate(
                "mix", "Dry flat: {low} to {high} min, until no longer cool to the hand."
            )
        case "peel":
            return translate("mix", "Peel the tape away from the painting, slowly.")
        case _:
            assert_never(step.stage)


def _lay_text(step: WorkStep, first: bool) -> str:
    """Wet into wet only beside a band that is wet; the first goes on the wetted sheet."""
    several = len(step.letters) > 1
    if step.thinning and several:
        return translate(
            "mix",
            "Lay {first}, the strongest, on the wet sheet; then {rest} with more and more water, "
            "wet into wet.",
        )
    if step.beside:
        return (
            translate("mix", "Lay {first} beside the wet {beside}, then {rest}, wet into wet.")
            if several
            else translate("mix", "Lay {first} beside the wet {beside}, wet into wet.")
        )
    if first:
        return (
            translate(
                "mix", "Lay {first}, the lightest, on the wet sheet; then {rest}, wet into wet."
            )
            if several
            else translate("mix", "Lay {first}, the lightest, on the wet sheet.")
        )
    if several:
        return translate("mix", "Lay {first} on the wet sheet; then {rest}, wet into wet.")
    return translate("mix", "Lay {bands} on the wet sheet.")


def order_texts(order: Order, sheet: PaintSheet, units: Units = "cm") -> tuple[str, ...]:
    """The whole order of work, one instruction each."""
    texts = []
    laid = False
    several = sum(len(step.letters) for step in order.steps if step.stage == "lay") > 1
    for step in order.steps:
        first = step.stage == "lay" and not laid and several
        texts.append(work_step_text(step, sheet, first=first, units=units))
        laid = laid or step.stage == "lay"
        if step.stage == "wet" and order.turn_sheet:
            texts.append(
                translate("mix", "Turn the sheet upside down: the strongest band comes first.")
                if order.kind == "graded"
                else translate("mix", "Turn the sheet upside down: the lightest band comes first.")
            )
    return tuple(texts)
